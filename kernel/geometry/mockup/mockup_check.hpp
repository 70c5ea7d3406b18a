#pragma once
// What makes a part of a mock-up impossible, found before Open CASCADE sees it.

#include <string>
#include <string_view>

#include "spotblue/base/error.hpp"
#include "spotblue/geometry/mockup.hpp"

namespace spotblue {

/// Where in a mock-up an error is: file and part, to which the step is added.
struct MockupPlace {
  std::string file;
  std::string part;  ///< `part "Wheel"`

  [[nodiscard]] MockupPlace in(std::string_view step) const {
    return {file, part + ", " + std::string(step)};
  }
  [[nodiscard]] MockupPlace in(std::string_view list, std::size_t index) const {
    return in(std::string(list) + " " + std::to_string(index + 1));
  }
  [[nodiscard]] Error error(const std::string& rule, std::string cure) const {
    return {ErrorCode::bad_input, {file, part}, rule, std::move(cure)};
  }
};

[[nodiscard]] MockupPlace place_of(const Mockup& mockup, const MockupPart& part);

/// A name that goes into STEP as it is: UTF-8 without control letters and marks that turn lines.
void need_plain(const MockupPlace& place, std::string_view what, const std::string& name);

/// A length or diameter that must be above 0.
void need_positive(const MockupPlace& place, std::string_view what, double value_mm);

void check_block(const MockupPlace& place, const BlockPart& part);
/// What holds for a bore in any part.
void check_bore(const MockupPlace& place, const Bore& bore);

/// Radius that the bore takes where it is widest.
[[nodiscard]] double widest_radius(const Bore& bore);

/// Centres of a bore or circle of bores in its face's (u, v).
struct FacePoint {
  double u = 0.0, v = 0.0;
};
[[nodiscard]] std::vector<FacePoint> bore_centres(const Bore& bore);

}  // namespace spotblue
