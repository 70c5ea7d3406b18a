#pragma once
/// @file
/// Who stands in whose way when the parts of a group leave along their centre line.

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/outline/passing.hpp"
#include "geometry/ways/way_groups.hpp"
#include "spotblue/geometry/way_in.hpp"

namespace spotblue::proof {

/// Up and down the line, or (keys) straight out of the keyseat.
enum class Leaving { up, down, out };

/// What joins two parts, the strongest that is there. Joined ones were put together before, along
/// another direction.
enum class Bond { none, facing, keyed, seated, threaded, pressed, joined };

/// Parts are numbered as in the group.
class WayTable {
 public:
  [[nodiscard]] std::size_t size() const { return count_; }
  [[nodiscard]] const Passing& passing(Leaving leaving, std::size_t moving,
                                       std::size_t still) const;
  [[nodiscard]] Bond bond(std::size_t a, std::size_t b) const { return bonds_[a * count_ + b]; }
  [[nodiscard]] bool goes_out(std::size_t part) const { return out_[part].has_value(); }
  [[nodiscard]] Direction direction(Leaving leaving, std::size_t part) const;
  [[nodiscard]] double volume(std::size_t part) const { return volumes_[part]; }

 private:
  friend class WayTableMaker;
  std::size_t count_ = 0;
  Direction along_;
  std::vector<Passing> up_;       ///< moving * count + still
  std::vector<Passing> outward_;  ///< the same, straight out
  std::vector<Bond> bonds_;
  std::vector<std::optional<Direction>> out_;
  std::vector<double> volumes_;
};

[[nodiscard]] WayTable way_table(const Model& model, const Seats& seats,
                                 const WayInOptions& options, const WayGroup& group);

}  // namespace spotblue::proof
