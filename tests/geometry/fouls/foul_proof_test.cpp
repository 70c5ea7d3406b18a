// Which pairs are proved clear without Open CASCADE, on parts made of plain values. Such models
// hold no solids: a pair that no proof clears comes back undecided.
#include <gmock/gmock.h>

#include <numbers>
#include <random>

#include "spotblue/geometry/foul.hpp"
#include "support/value_parts.hpp"

namespace spotblue::foul_proof_test {

using test::block_part;
using test::hexagon_part;
using test::placed_model;
using test::ring_part;
using test::rotated;
using test::shifted;
using test::turned_part;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr double kPi = std::numbers::pi;

Seats all_pairs(const Model& model) {
  Seats seats;
  for (std::size_t a = 0; a < model.occurrences.size(); ++a) {
    for (std::size_t b = a + 1; b < model.occurrences.size(); ++b) {
      seats.near_pairs.emplace_back(OccurrenceId(a), OccurrenceId(b));
    }
  }
  return seats;
}

std::vector<std::string> unsettled(const Model& model, const Seats& seats) {
  std::vector<std::string> names;
  for (const Foul& foul : find_fouls(model, seats, {}, {}).found) {
    names.push_back(model.occurrences[foul.a].id + " x " + model.occurrences[foul.b].id + ": " +
                    foul.cause);
  }
  return names;
}

/// A screw: hexagonal head above z = 0, shank below.
Product screw(double diameter, double flats, double length) {
  Product part = hexagon_part(flats, 0.0, 0.7 * diameter);
  // The underside of the head loses the shank's circle; its normal is -z.
  Plane& under = part.planes[1];
  const Point centre = Point{} - under.at;
  const Direction v = third(under.normal, under.u);
  const Point2 at{dot(centre, under.u), dot(centre, v)};
  under.outline.edges.push_back({{at.u + 0.5 * diameter, at.v},
                                 {at.u + 0.5 * diameter, at.v},
                                 -2.0 * kPi,
                                 at,
                                 0.5 * diameter});
  Product shank = ring_part(0.0, 0.5 * diameter, -length, 0.0);
  std::erase_if(shank.planes, [](const Plane& p) { return p.normal.z() > 0.0; });
  test::join(part, shank);
  return part;
}

RadialSeat radial(std::size_t hole, std::size_t shaft, double hole_diameter, double shaft_diameter,
                  double from, double to) {
  return {.hole = {OccurrenceId(hole), FeatureKind::cylinder, 0},
          .shaft = {OccurrenceId(shaft), FeatureKind::cylinder, 0},
          .hole_diameter = hole_diameter,
          .shaft_diameter = shaft_diameter,
          .clearance = hole_diameter - shaft_diameter,
          .least_gap = 0.5 * (hole_diameter - shaft_diameter),
          .engaged = to - from,
          .coverage = 2.0 * kPi,
          .axis = {{0, 0, 0.5 * (from + to)}, {0, 0, 1}},
          .from = from - 0.5 * (from + to),
          .to = to - 0.5 * (from + to)};
}

/// Housing, flanged bush pressed in, shaft, washer, retaining ring and four screws.
struct Station {
  Model model;
  Seats seats;
};

Station station_with(double hole, double screw_diameter, const Frame& pose) {
  const double at = 30.0;
  const Product housing =
      block_part({-40, -40, 0}, {40, 40, 40},
                 {{0, 0, 30}, {at, at, hole}, {at, -at, hole}, {-at, at, hole}, {-at, -at, hole}});
  // The pressed diameter is the first cylinder of the bush.
  const Product bush =
      turned_part({{15.02, 1}, {15.02, 40}, {20, 40}, {20, 44}, {10, 44}, {10, 0}, {14.02, 0}});
  const Product shaft =
      turned_part({{0, -20}, {9.98, -20}, {9.98, 46}, {14, 46}, {14, 60}, {0, 60}});
  const Product washer = ring_part(10.2, 16, 44, 46);
  const Product ring = ring_part(9.98, 14, -3, -1);
  const Product bolt = screw(screw_diameter, 1.6 * screw_diameter, 30);
  std::vector<std::pair<Product, Frame>> parts{
      {housing, pose}, {bush, pose}, {shaft, pose}, {washer, pose}, {ring, pose}};
  for (const auto& [x, y] : {std::pair{at, at}, {at, -at}, {-at, at}, {-at, -at}}) {
    parts.emplace_back(bolt, compose(pose, shifted(x, y, 40)));
  }
  Station station{placed_model(parts), {}};
  station.seats = all_pairs(station.model);
  RadialSeat press = radial(0, 1, 30, 30.04, 1, 40);
  press.axis = place_line(pose, press.axis);
  station.seats.radial.push_back(press);
  return station;
}

TEST(FoulProof, AStationOfPressedAndBoltedPartsNeedsNoBoolean) {
  for (const Frame& pose :
       {Frame{}, compose(shifted(100, -50, 20), rotated(unit({1, 2, 3}), 0.7))}) {
    const Station station = station_with(9.0, 8.0, pose);
    EXPECT_THAT(unsettled(station.model, station.seats), IsEmpty());
  }
}

TEST(FoulProof, ScrewsInTappedHolesAreAccountedForByTheirThreads) {
  Station station = station_with(6.8, 8.0, {});
  EXPECT_EQ(unsettled(station.model, station.seats).size(), 4U);
  for (std::size_t i = 0; i < 4; ++i) {
    const Point at = place_point(station.model.occurrences[5 + i].frame, {});
    station.seats.threads.push_back({.hole = {OccurrenceId(0), FeatureKind::cylinder, 1 + i},
                                     .screw = {OccurrenceId(5 + i), FeatureKind::cylinder, 0},
                                     .size = "M8",
                                     .hole_diameter = 6.8,
                                     .screw_diameter = 8.0,
                                     .engaged = 30,
                                     .axis = {at, {0, 0, 1}},
                                     .from = -30,
                                     .to = 0});
  }
  EXPECT_THAT(unsettled(station.model, station.seats), IsEmpty());
}

TEST(FoulProof, APressWithoutASeatIsNotCleared) {
  Station station = station_with(9.0, 8.0, {});
  station.seats.radial.clear();
  EXPECT_THAT(unsettled(station.model, station.seats),
              testing::ElementsAre(HasSubstr("part 1 x part 2: undecided")));
}

TEST(FoulProof, AShoulderSunkIntoAPressedBoreIsNotHiddenByThePress) {
  Station station = station_with(9.0, 8.0, {});
  // The flange goes 0.5 mm into the housing's face.
  station.model.occurrences[1].frame = shifted(0, 0, -0.5);
  EXPECT_THAT(unsettled(station.model, station.seats),
              testing::Contains(HasSubstr("part 1 x part 2: undecided")));
}

TEST(FoulProof, TouchingFacesAreClear) {
  const Product cube = block_part({0, 0, 0}, {10, 10, 10});
  const Frame pose = rotated(unit({3, 1, 2}), 1.1);
  const Model model = placed_model({{cube, pose}, {cube, compose(pose, shifted(10, 3, 0))}});
  EXPECT_THAT(unsettled(model, all_pairs(model)), IsEmpty());
}

TEST(FoulProof, ThePartInItsOwnPlaceIsNotCleared) {
  const Product cube = block_part({0, 0, 0}, {10, 10, 10});
  const Product bush = ring_part(10, 15, 0, 40);
  for (const Product& part : {cube, bush}) {
    const Model model = placed_model({{part, Frame{}}, {part, Frame{}}});
    EXPECT_EQ(unsettled(model, all_pairs(model)).size(), 1U);
  }
}

TEST(FoulProof, APartWhollyInsideAnotherIsNotCleared) {
  const Product block = block_part({-40, -40, 0}, {40, 40, 40}, {{0, 0, 30}});
  const Product pin = ring_part(0, 2, 10, 20);
  const Model model = placed_model({{block, Frame{}}, {pin, shifted(28, 0, 0)}});
  EXPECT_EQ(unsettled(model, all_pairs(model)).size(), 1U);
}

TEST(FoulProof, ATongueBetweenTwoTouchingBlocksIsClear) {
  const Product block = block_part({0, 0, 0}, {10, 10, 10});
  const Product tongue = block_part({10, 2, -5}, {14, 8, 15});
  const Model model =
      placed_model({{block, Frame{}}, {tongue, Frame{}}, {block, shifted(14, 0, 0)}});
  EXPECT_THAT(unsettled(model, all_pairs(model)), IsEmpty());
}

TEST(FoulProof, AKeyThroughAHoleWiderThanItIsClear) {
  const Product plate = block_part({-40, -40, 0}, {40, 40, 10}, {{0, 0, 30}});
  const Product key = block_part({-4, -8, -10}, {4, 8, 30});
  const Model model = placed_model({{plate, Frame{}}, {key, shifted(3, 3, 0)}});
  EXPECT_THAT(unsettled(model, all_pairs(model)), IsEmpty());
}

TEST(FoulProof, MatingTapersAreClear) {
  const Product arbor = turned_part({{0, 0}, {10, 0}, {12, 40}, {0, 40}});
  const Product socket = turned_part({{10, 0}, {30, 0}, {30, 40}, {12, 40}});
  const Model model = placed_model({{arbor, Frame{}}, {socket, Frame{}}});
  EXPECT_THAT(unsettled(model, all_pairs(model)), IsEmpty());
}

TEST(FoulProof, ATaperDrivenInIsNotClearedWithoutItsSeat) {
  const Product arbor = turned_part({{0, 0}, {10, 0}, {12, 40}, {0, 40}});
  const Product socket = turned_part({{10, 0}, {30, 0}, {30, 40}, {12, 40}});
  const Model model = placed_model({{arbor, shifted(0, 0, -0.2)}, {socket, Frame{}}});
  Seats seats = all_pairs(model);
  EXPECT_EQ(unsettled(model, seats).size(), 1U);
  seats.taper.push_back({.hole = {OccurrenceId(1), FeatureKind::cone, 0},
                         .shaft = {OccurrenceId(0), FeatureKind::cone, 0},
                         .gap = -0.01,
                         .least_gap = -0.01,
                         .engaged = 39.8,
                         .diameter = 22,
                         .axis = {{0, 0, 20}, {0, 0, 1}}});
  EXPECT_THAT(unsettled(model, seats), IsEmpty());
}

TEST(FoulProof, AnOffAxisShaftInAWideHoleIsClear) {
  const Product hub = ring_part(15, 30, 0, 40);
  const Product shaft = ring_part(0, 14.8, -10, 50);
  const Model model = placed_model({{hub, Frame{}}, {shaft, shifted(0.15, 0.1, 0)}});
  EXPECT_THAT(unsettled(model, all_pairs(model)), IsEmpty());
}

TEST(FoulProof, AlikePairsAreLookedAtOnce) {
  std::vector<std::pair<Product, Frame>> parts{{ring_part(15, 30, 0, 40), Frame{}},
                                               {ring_part(0, 14.8, -10, 50), Frame{}}};
  Model model = placed_model(parts);
  for (int i = 1; i < 50; ++i) {
    for (std::size_t part = 0; part < 2; ++part) {
      Occurrence copy = model.occurrences[part];
      copy.frame = compose(shifted(100.0 * i, 7.0 * i, 0), rotated({0, 0, 1}, 0.1 * i));
      model.occurrences.push_back(copy);
    }
  }
  Seats seats;
  for (std::size_t i = 0; i < 50; ++i) {
    seats.near_pairs.emplace_back(OccurrenceId(2 * i), OccurrenceId(2 * i + 1));
  }
  const FoulReport report = find_fouls(model, seats, {}, {});
  EXPECT_EQ(report.effort.pairs, 50U);
  EXPECT_EQ(report.effort.distinct_pairs, 1U);
  EXPECT_EQ(report.effort.exact_pairs, 0U);
}

}  // namespace spotblue::foul_proof_test
