#include "spotblue/geometry/vector.hpp"

#include <gmock/gmock.h>

#include <cmath>
#include <numbers>

#include "spotblue/base/error.hpp"
#include "support/chance.hpp"
#include "support/thrown.hpp"

namespace spotblue::test::vector_test {

Point vector_of(Chance& chance) {
  return {chance.between(-9.0, 9.0), chance.between(-9.0, 9.0), chance.between(-9.0, 9.0)};
}

TEST(Direction, LiesAlongZWhereNothingIsSaid) { EXPECT_EQ(Point(Direction()), (Point{0, 0, 1})); }

TEST(Direction, KeepsItsNumbersAsTheyAre) {
  EXPECT_EQ(Point(Direction(0.6, -0.8, 0.0)), (Point{0.6, -0.8, 0.0}));
}

TEST(Direction, OfAnotherLengthIsRefused) {
  for (const Point odd : {Point{0, 0, 0}, Point{0, 0, 2}, Point{1, 1, 0}, Point{0, 0, 1.00001}}) {
    const Error refused = error_of([&] { (void)Direction(odd); });
    EXPECT_EQ(refused.code(), ErrorCode::bad_input);
    EXPECT_THAT(refused.rule(), ::testing::HasSubstr("is not 1 long"));
  }
}

// What damaged files give is told where it comes from.
TEST(Direction, OfNoNumbersStaysSo) {
  const Direction none = unit(Point{0, 0, 0});
  EXPECT_TRUE(std::isnan(none.x()) && std::isnan(none.y()) && std::isnan(none.z()));
}

TEST(Direction, IsOneLongHoweverItIsMade) {
  Chance chance(5);
  for (int i = 0; i < 1000; ++i) {
    const Direction a = unit(vector_of(chance));
    const Direction b = any_square(a);
    const Direction c = third(a, b);
    const Direction d = turned(b, c, chance.between(-9.0, 9.0));
    for (const Direction made : {a, b, c, d, -d}) {
      EXPECT_NEAR(norm(made), 1.0, 1e-12);
    }
    EXPECT_NEAR(dot(a, d), 0.0, 1e-12);
    EXPECT_NEAR(dot(cross(a, b), c), 1.0, 1e-12);
  }
}

TEST(Direction, TurnedByAQuarterIsTheOtherOfTheTwo) {
  const Direction y = turned({1, 0, 0}, {0, 1, 0}, 0.5 * std::numbers::pi);
  EXPECT_NEAR(norm(y - Point{0, 1, 0}), 0.0, 1e-15);
}

TEST(Direction, IsTurnedByAPlacementAndNotMoved) {
  const Frame quarter{{{{0, -1, 0, 5}, {1, 0, 0, 6}, {0, 0, 1, 7}}}};
  EXPECT_EQ(Point(place_direction(quarter, {1, 0, 0})), (Point{0, 1, 0}));
}

// A placement that was rounded on its way, and axes that a file gives to five digits.
TEST(Direction, OfWhatIsAlmostSquareOrRigidIsOneLong) {
  const Frame rounded{{{{0, -1.0000001, 0, 5}, {1.0000001, 0, 0, 6}, {0, 0, 1.0000001, 7}}}};
  EXPECT_NEAR(norm(place_direction(rounded, {1, 0, 0})), 1.0, 1e-12);
  const Direction leaning = unit({0.01, 1, 0});
  EXPECT_NEAR(norm(third({1, 0, 0}, leaning)), 1.0, 1e-12);
}

TEST(Direction, OfTwoInOneLineIsRefused) {
  const Error refused = error_of([] { return third({1, 0, 0}, {1, 0, 0}); });
  EXPECT_THAT(refused.rule(), ::testing::HasSubstr("is not 1 long"));
}

}  // namespace spotblue::test::vector_test
