#pragma once
/// @file
/// Where the parts of a mock-up go.

#include <cstddef>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/mockup.hpp"

namespace spotblue {

struct PlacedPart {
  std::string name;
  std::size_t part = 0;
  std::string group;
  Frame frame;
};
constexpr void describe(auto& fields, const PlacedPart*) {
  fields.value("PlacedPart", "One instance and where it went.")
      .member("name", &PlacedPart::name, "of the instance")
      .member("part", &PlacedPart::part, "number of its part, from 0")
      .member("group", &PlacedPart::group, "sub-assembly")
      .member("frame", &PlacedPart::frame, "part frame to assembly frame");
}

/// Where each instance goes, in order of the placements; exact to rounding.
/// @throws Error bad_input for unknown names, faces that look the same way, lines that are not
///         parallel, and placements that wait for each other; place is `place "Wheel"`.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<PlacedPart> place_parts(const Mockup& mockup);

}  // namespace spotblue
