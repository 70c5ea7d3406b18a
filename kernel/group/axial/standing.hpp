#pragma once
// Which group of parts on a centre line stands still, so that the play of the others is theirs.

#include <cstddef>
#include <set>
#include <vector>

#include "group/joints/groups.hpp"
#include "group/turning/turns.hpp"

namespace spotblue {

class Standing {
 public:
  Standing(const DeclaredJob& declared, const Groups& groups, const Turns& turns);

  /// Of the groups given the one with the greatest volume, leaving out, where others remain, what
  /// turns and what the job wants end play of (unless that is the greatest of the whole model that
  /// does not turn).
  [[nodiscard]] std::size_t of(const std::set<std::size_t>& groups) const;
  /// Greatest volume of all that do not turn: it always stands still.
  [[nodiscard]] std::size_t heaviest() const { return heaviest_; }

 private:
  [[nodiscard]] bool stands_before(std::size_t a, std::size_t b) const;

  std::vector<double> volumes_;  // by group
  std::set<std::size_t> turning_, wanted_;
  std::size_t heaviest_ = 0;
};

}  // namespace spotblue
