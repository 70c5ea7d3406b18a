#pragma once
// How one face of a group of joined parts comes to stand where it does from another: length by
// length, through faces that are held against each other.

#include <map>
#include <optional>
#include <set>
#include <utility>
#include <vector>

#include "group/axial/part_lengths.hpp"
#include "group/joints/groups.hpp"

namespace spotblue {

/// From one face to the next of the same part, or to one of a part it is joined to as set.
struct PathLength {
  FeatureRef from, to;
  double step_mm = 0.0;  ///< signed, along the line, as modelled
  KnownLength known;
};

class FacePaths {
 public:
  /// @param apart  parts whose place on others is set: no way leads over them to another part.
  FacePaths(const DeclaredJob& declared, const Groups& groups, const PartLengths& lengths,
            std::set<OccurrenceId> apart);

  /// The lengths from one face to another of the same group along the line, in order; of several
  /// ways the one whose lengths are known best together. Faces held against each other add nothing.
  /// Nothing when no chain of touching faces and joints leads there.
  [[nodiscard]] std::optional<std::vector<PathLength>> path(const FeatureRef& from,
                                                            const FeatureRef& to,
                                                            const Line& line) const;

  /// As PartLengths.
  [[nodiscard]] KnownLength as_set(Length modelled) const { return lengths_->as_set(modelled); }

 private:
  friend class PathSearch;
  const DeclaredJob* declared_;
  const PartLengths* lengths_;
  std::set<OccurrenceId> apart_;
  [[nodiscard]] std::optional<std::vector<PathLength>> search(const FeatureRef& from,
                                                              const FeatureRef& to,
                                                              const Line& line) const;

  std::map<Subject, std::vector<FeatureRef>> touching_;  // by face, within its group
  std::vector<std::vector<OccurrenceId>> joined_;        // by occurrence
  // A face that stops many bodies is asked for with each.
  mutable std::map<std::pair<Subject, Subject>, std::optional<std::vector<PathLength>>> found_;
};

}  // namespace spotblue
