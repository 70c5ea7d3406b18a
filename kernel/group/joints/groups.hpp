#pragma once
// Which parts turn or move along their axis as one, made of the joints.

#include <cstddef>
#include <vector>

#include "group/joints/joints.hpp"

namespace spotblue {

/// By occurrence the number of its group, counted from 0 in the order of the first member.
struct Groups {
  std::vector<std::size_t> turns_with;
  std::vector<std::size_t> moves_with;
  std::vector<Joint> joints;
};

/// @throws Error as joints_of.
[[nodiscard]] Groups find_groups(const DeclaredJob& declared);

}  // namespace spotblue
