// Open CASCADE's generic algorithms as a judge that knows nothing of seats: boolean volume and
// minimum distance of two solids against the seats look() measured between them.

#include <gmock/gmock.h>

#include <BRepAlgoAPI_Common.hxx>
#include <BRepExtrema_DistShapeShape.hxx>
#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>
#include <algorithm>
#include <filesystem>

#include "geometry/truth/truth_match.hpp"

namespace spotblue::test::judge_test {

double shared_volume(const TopoDS_Shape& a, const TopoDS_Shape& b) {
  GProp_GProps properties;
  BRepGProp::VolumeProperties(BRepAlgoAPI_Common(a, b).Shape(), properties);
  return properties.Mass();
}

struct Judged {
  Assembly assembly;
  Look seen;
  std::vector<std::size_t> true_of;  ///< by found occurrence

  [[nodiscard]] TopoDS_Shape solid(std::size_t found) const {
    const TrueOccurrence& one = assembly.occurrences[true_of.at(found)];
    return moved(one.shape, one.at);
  }
};

// Pairs of one hole and one shaft, so that nothing but the seat lies between the two solids.
Judged judged(std::uint64_t seed) {
  Shop shop{Chance(seed), Chance(seed + 1), FaceStyle::plain};
  std::vector<Station> stations;
  stations.reserve(6);
  for (int i = 0; i < 6; ++i) {
    stations.push_back(running(shop));
  }
  Wrapping wrapping = wrapping_of(seed);
  wrapping.mirrored = false;
  Judged result{assemble(seed, stations, wrapping), {}, {}};
  const auto file =
      std::filesystem::temp_directory_path() / ("spotblue-judge-" + std::to_string(seed) + ".step");
  write_step(result.assembly.nodes, wrapping.schema, wrapping.unit, file);
  result.seen = look(file, {});
  std::filesystem::remove(file);
  const auto found = match_occurrences(result.seen, result.assembly);
  result.true_of.resize(result.seen.model.occurrences.size());
  for (std::size_t i = 0; i < found.size(); ++i) {
    result.true_of.at(found[i]) = i;
  }
  return result;
}

class Judge : public testing::TestWithParam<std::uint64_t> {};

TEST_P(Judge, MinimumDistanceIsTheLeastRadialGap) {
  const Judged pairs = judged(GetParam());
  ASSERT_GE(pairs.seen.seats.radial.size(), 6U);
  for (const RadialSeat& seat : pairs.seen.seats.radial) {
    SCOPED_TRACE(feature_id(pairs.seen.model, seat.hole));
    const BRepExtrema_DistShapeShape nearest(pairs.solid(seat.hole.occurrence),
                                             pairs.solid(seat.shaft.occurrence));
    ASSERT_TRUE(nearest.IsDone());
    // Past a tilted hole's end the shaft comes nearer by the square of the tilt; Open CASCADE's
    // distance of two surfaces is good to about 1e-6 mm.
    const double allowed = 2e-6 + std::max(0.0, seat.least_gap) * 2.0 * seat.tilt * seat.tilt;
    EXPECT_NEAR(nearest.Value(), std::max(0.0, seat.least_gap), allowed);
  }
}

TEST_P(Judge, BooleanVolumeIsThePressRingOrTheFoul) {
  const Judged pairs = judged(GetParam());
  for (const RadialSeat& seat : pairs.seen.seats.radial) {
    SCOPED_TRACE(feature_id(pairs.seen.model, seat.hole));
    const double volume =
        shared_volume(pairs.solid(seat.hole.occurrence), pairs.solid(seat.shaft.occurrence));
    if (seat.clearance < -1e-9) {
      const double ring = ring_area(seat.hole_diameter, seat.shaft_diameter);
      const double expected = ring * seat.engaged * seat.coverage / kFullTurn;
      // In chamfers and cross holes the ring of metal differs by less than its own thickness.
      const double edges = ring * (seat.shaft_diameter - seat.hole_diameter) + 0.03 * expected;
      EXPECT_NEAR(volume, expected, edges + 1e-6);
      continue;
    }
    double reported = 0.0;  // askew in its bore a shaft fouls at each end
    for (const Foul& one : pairs.seen.fouls.found) {
      const auto [first, second] = std::minmax(seat.hole.occurrence, seat.shaft.occurrence);
      reported += one.a == first && one.b == second ? one.volume : 0.0;
    }
    EXPECT_NEAR(volume, reported, 2e-3 * reported + 1e-3);
  }
}

INSTANTIATE_TEST_SUITE_P(Seeds, Judge, testing::Range<std::uint64_t>(2001, 2006));

}  // namespace spotblue::test::judge_test
