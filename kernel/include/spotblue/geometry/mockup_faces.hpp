#pragma once
/// @file
/// The flat faces of a mock-up's part, by which it is placed.

#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/mockup_part.hpp"

namespace spotblue {

struct MockupFace {
  std::string name;
  int axis = 2;
  double station = 0.0;
  int sense = 1;
};
constexpr void describe(auto& fields, const MockupFace*) {
  fields.value("MockupFace", "A flat face of a part by which it can be placed.")
      .member("name", &MockupFace::name, "\"first\", \"outside 2 start\"")
      .member("axis", &MockupFace::axis, "0, 1, 2: the part axis it is square to")
      .member("station_mm", &MockupFace::station, "on that axis")
      .member("sense", &MockupFace::sense,
              "1: the material is on its lower side, -1: on its upper");
}

/// "first" and "last"; "outside 2 start", "inside 1 end" and the like, or with a step's own name
/// for "outside 2", where two steps meet in a shoulder; a block's "top", "bottom", "left",
/// "right", "front", "back", "boss 1", "added 1 top" and the like.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<MockupFace> faces_of(const MockupPart& part);

}  // namespace spotblue
