#pragma once
// All stops of the model by direction: bodies on parallel centre lines stop each other along one.

#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "group/axial/stop_blocks.hpp"
#include "group/axial/stop_net.hpp"

namespace spotblue {

class StopLines {
 public:
  StopLines(const DeclaredJob& declared, const Groups& groups, const FacePaths& paths,
            std::span<const SetPart> set);

  /// Of all directions, by centre line.
  [[nodiscard]] std::vector<LineStop> all_stops() const;
  [[nodiscard]] std::size_t directions() const { return all_.size(); }
  [[nodiscard]] std::size_t direction_of(CentreLineId line) const { return direction_of_[line]; }
  /// All stops that a loop through both groups of any of the pairs can be of; nothing where none
  /// leads from one to the other.
  [[nodiscard]] std::shared_ptr<const StopNet> between(std::size_t direction,
                                                       std::span<const BodyPair> pairs);

 private:
  struct OneDirection {
    Direction along;
    std::vector<LineStop> stops;
    std::map<std::size_t, std::size_t> number_of;  // groups, as bodies of the blocks
    std::optional<StopBlocks> blocks;
    std::vector<std::vector<std::size_t>> in_block;                           // stops
    std::map<std::vector<std::size_t>, std::shared_ptr<const StopNet>> nets;  // by their blocks
  };
  void add(CentreLineId number, const CentreLine& line, const std::vector<AxialStop>& stops);

  const DeclaredJob& declared_;
  const Groups& groups_;
  const FacePaths& paths_;
  std::span<const SetPart> set_;
  std::vector<OneDirection> all_;
  std::vector<std::size_t> direction_of_;  // by centre line
};

}  // namespace spotblue
