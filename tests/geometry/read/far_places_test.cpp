// A component that stands absurdly far away has a wrong number in its place.

#include "geometry/model/far_places.hpp"

#include <gmock/gmock.h>

#include "geometry/read/finite_model.hpp"
#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"
#include "support/value_parts.hpp"

namespace spotblue::far_places_test {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

// Bars of some 28 mm, the last where it is said.
Model bars(int near, Frame last) {
  std::vector<std::pair<Product, Frame>> parts;
  for (int i = 0; i < near; ++i) {
    parts.emplace_back(test::ring_part(0, 20, 0, 20), test::shifted(50.0 * i, 0, 0));
  }
  parts.emplace_back(test::ring_part(0, 20, 0, 20), last);
  Model model = test::placed_model(parts);
  model.occurrences.back().path = "Press/Far bar";
  return model;
}

TEST(FarPlaces, AComponentFarFromTheOthersIsRefusedByHowFar) {
  for (const int near : {1, 2, 3}) {
    for (const double far : {1e8, -1e8}) {
      Model model = bars(near, test::shifted(far, 0, 0));
      const Error error = test::error_of(
          [&] { return require_finite(model, "press.step", Completeness::all_or_error); });
      EXPECT_EQ(error.code(), ErrorCode::unreadable);
      EXPECT_THAT(error.place(), HasSubstr("Far bar"));
      EXPECT_THAT(error.rule(), HasSubstr("1e+08 mm from the others"));
      EXPECT_THAT(error.rule(), HasSubstr("largest part is"));
    }
  }
}

TEST(FarPlaces, OfAPartialModelItIsLeftOutWithANote) {
  Model model = bars(2, test::shifted(0, 1e300, 0));
  require_finite(model, "press.step", Completeness::accept_partial);
  EXPECT_THAT(model.occurrences, SizeIs(2));
  ASSERT_THAT(model.notes, SizeIs(1));
  EXPECT_THAT(model.notes[0].text, HasSubstr("left out"));
}

TEST(FarPlaces, WhatAllStandsFarFromTheOriginIsTakenUpToABound) {
  const Product hall = test::block_part({0, 0, 0}, {1000, 1000, 1000});
  const auto at = [&](double far) {
    return test::placed_model(
        {{hall, test::shifted(far, 0, 0)}, {hall, test::shifted(far, 2000, 0)}});
  };
  Model surveyed = at(5e8);
  EXPECT_THAT(without_far_places(surveyed), IsEmpty());
  Model absurd = at(5e9);
  const std::vector<Note> notes = without_far_places(absurd);
  ASSERT_THAT(notes, SizeIs(2));
  EXPECT_THAT(notes[0].text, HasSubstr("5e+09 mm from the origin"));
}

TEST(FarPlaces, PartsWithoutSizeAndWithoutBoxStay) {
  Model model = bars(2, Frame{});
  for (Occurrence& one : model.occurrences) {
    one.box = {};
  }
  EXPECT_THAT(without_far_places(model), IsEmpty());
}

}  // namespace spotblue::far_places_test
