#pragma once
// How an assembly or a compound unfolds: each of its groups is looked into once, however often it
// is placed, so that what would never end is refused before anything walks through all of it.

#include <fmt/format.h>

#include <TopoDS_Shape.hxx>
#include <algorithm>
#include <map>
#include <optional>
#include <string>

#include "spotblue/base/error.hpp"

namespace spotblue {

// Error unreadable: more than `most` solids.
[[nodiscard]] Error too_many_parts(double most);

struct Unfolding {
  double leaves = 0.0;  // however often the same
  int levels = 0;       // of groups, one in the other
};

// Key names a group; what stands in it is given to count() by whoever knows.
template <typename Key>
class UnfoldingCount {
 public:
  explicit UnfoldingCount(int deepest) : deepest_(deepest) {}

  // `add_members(add)` calls add(Unfolding) for each member of the group, a leaf being {1, 0}.
  // Throws Error unreadable with `place` when the group contains itself or nests too deep.
  template <typename AddMembers>
  Unfolding count(const Key& group, const std::string& place, const AddMembers& add_members) {
    const auto [known, is_new] = known_.emplace(group, std::nullopt);
    if (!is_new) {
      return known->second ? *known->second
                           : throw Error(ErrorCode::unreadable, {"", place}, "it contains itself",
                                         "take it out of itself and save it again");
    }
    Unfolding sum;
    ++depth_;
    refuse_deep(depth_, place);
    add_members([&](const Unfolding& member) {
      sum.leaves += member.leaves;
      sum.levels = std::max(sum.levels, member.levels);
    });
    --depth_;
    ++sum.levels;
    refuse_deep(sum.levels, place);
    known->second = sum;
    return sum;
  }

  [[nodiscard]] bool knows(const Key& group) const { return known_.contains(group); }

 private:
  void refuse_deep(int levels, const std::string& place) const {
    if (levels > deepest_) {
      throw Error(ErrorCode::unreadable, {"", place},
                  fmt::format("assemblies are nested deeper than {}", deepest_),
                  "export a part of it, or raise the limit");
    }
  }

  int deepest_;
  int depth_ = 0;
  std::map<Key, std::optional<Unfolding>> known_;
};

// Throws Error unreadable with `place` when the shape's compounds nest deeper than `deepest`,
// contain themselves, or unfold to more than `most` solids and loose shapes.
void refuse_endless(const TopoDS_Shape& shape, const std::string& place, int deepest, double most);

}  // namespace spotblue
