#include "group/joints/groups.hpp"

#include "base/disjoint_sets.hpp"

namespace spotblue {

Groups find_groups(const DeclaredJob& declared) {
  Groups groups;
  groups.joints = joints_of(declared);
  const std::size_t parts = declared.look->model.occurrences.size();
  DisjointSets turning(parts);
  DisjointSets along(parts);
  for (const Joint& joint : groups.joints) {
    if (joint.turning) {
      turning.join(joint.a, joint.b);
    }
    if (joint.along) {
      along.join(joint.a, joint.b);
    }
  }
  groups.turns_with = turning.numbers();
  groups.moves_with = along.numbers();
  return groups;
}

}  // namespace spotblue
