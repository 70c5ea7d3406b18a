#include <gtest/gtest.h>

#include <functional>
#include <random>

#include "geometry/plane/region_shapes.hpp"
#include "spotblue/geometry/region.hpp"
#include "spotblue/geometry/region_inner.hpp"
#include "spotblue/geometry/region_overlay.hpp"

// Identities on random regions, and a judge that never sees an edge: membership rules written
// straight from the shapes' inequalities, counted on a fixed cloud of points.

namespace spotblue::region_random_test {

using namespace shapes;

using Member = std::function<bool(Point2)>;

struct Judged {
  Region region;
  Member member;
};

class Maker {
 public:
  explicit Maker(unsigned seed) : random_(seed) {}

  double between(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random_);
  }
  /// Coordinates on a coarse grid half of the time, so that edges and circles really coincide.
  double coordinate() { return coin() ? std::round(between(-20, 20) / 5) * 5 : between(-20, 20); }
  bool coin() { return std::bernoulli_distribution(0.5)(random_); }

  Judged primitive() {
    const Point2 c{coordinate(), coordinate()};
    const double r = coin() ? 5 * (1 + std::floor(between(0, 3))) : between(2, 18);
    if (coin()) {
      return {coin() ? disc(c, r) : split_disc(c, r, 3, between(0, 6)),
              [=](Point2 p) { return std::hypot(p.u - c.u, p.v - c.v) < r; }};
    }
    const double angle = coin() ? 0.0 : between(0, 3);
    const double h = coin() ? r : between(2, 15);
    const double cosine = std::cos(angle);
    const double sine = std::sin(angle);
    return {mapped(rectangle({-r, -h}, {r, h}), rotation(angle, c)), [=](Point2 p) {
              const double u = cosine * (p.u - c.u) + sine * (p.v - c.v);
              const double v = cosine * (p.v - c.v) - sine * (p.u - c.u);
              return std::abs(u) < r && std::abs(v) < h;
            }};
  }

  Judged shape() {
    Judged result = primitive();
    for (int i = 0; i < 3; ++i) {
      const Judged other = primitive();
      const Member was = result.member;
      result.region = subtract(result.region, other.region);
      result.member = [was, cut = other.member](Point2 p) { return was(p) && !cut(p); };
    }
    return result;
  }

  double counted_area(const Member& member) {
    constexpr int kPoints = 40000;
    constexpr double kHalf = 45.0;
    int hits = 0;
    for (int i = 0; i < kPoints; ++i) {
      hits += member({between(-kHalf, kHalf), between(-kHalf, kHalf)}) ? 1 : 0;
    }
    return 4 * kHalf * kHalf * hits / kPoints;
  }

 private:
  std::mt19937 random_;
};

class RandomRegions : public testing::TestWithParam<unsigned> {};

TEST_P(RandomRegions, PartsAddUpAndTheOrderDoesNotMatter) {
  Maker maker(GetParam());
  for (int i = 0; i < 40; ++i) {
    SCOPED_TRACE(i);
    const Region a = maker.shape().region;
    const Region b = maker.shape().region;
    const Region shared = intersect(a, b);
    const Region rest = subtract(a, b);
    ASSERT_TRUE(shared.exact && rest.exact);
    EXPECT_NEAR(area(shared) + area(rest), area(a), 1e-7);
    EXPECT_NEAR(area(shared), area(intersect(b, a)), 1e-7);
    EXPECT_NEAR(area(intersect(rest, b)), 0.0, 1e-7);
    EXPECT_NEAR(area(subtract(shared, b)), 0.0, 1e-7);
  }
}

TEST_P(RandomRegions, TurningAndMirroringChangeNoArea) {
  Maker maker(GetParam() + 1000);
  for (int i = 0; i < 20; ++i) {
    SCOPED_TRACE(i);
    const Region a = maker.shape().region;
    const Region b = maker.shape().region;
    const double truth = area(intersect(a, b));
    const double angle = maker.between(0, 6);
    const Point2 origin{maker.between(-500, 500), maker.between(-500, 500)};
    for (const PlaneMap& map : {rotation(angle, origin), mirror(angle, origin)}) {
      EXPECT_NEAR(area(intersect(mapped(a, map), mapped(b, map))), truth, 1e-7);
      EXPECT_NEAR(area(subtract(mapped(a, map), mapped(b, map))), area(a) - truth, 1e-7);
    }
  }
}

TEST_P(RandomRegions, AreaAndMembershipAgreeWithTheShapesOwnRules) {
  Maker maker(GetParam() + 2000);
  for (int i = 0; i < 6; ++i) {
    SCOPED_TRACE(i);
    const Judged a = maker.shape();
    const Judged b = maker.shape();
    const Region shared = intersect(a.region, b.region);
    const auto in_both = [&](Point2 p) { return a.member(p) && b.member(p); };
    const double counted = maker.counted_area(in_both);
    // Four standard deviations of the count: sqrt(area x box / points), box 8100, points 40000.
    EXPECT_NEAR(area(shared), counted, 4 * std::sqrt((area(shared) + 1) * 8100 / 40000));
    for (int k = 0; k < 500; ++k) {
      const Point2 p{maker.between(-45, 45), maker.between(-45, 45)};
      EXPECT_EQ(contains(shared, p), in_both(p)) << p.u << " " << p.v;
    }
    for (const Point2 p : inner_points(shared, 5)) {
      EXPECT_TRUE(in_both(p)) << p.u << " " << p.v;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomRegions, testing::Range(1U, 11U));

}  // namespace spotblue::region_random_test
