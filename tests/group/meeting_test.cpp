// Whether faces meet by the net of their stops, worked by hand.

#include "group/making/meeting.hpp"

#include <gtest/gtest.h>

#include <memory>
#include <string>
#include <utility>

namespace spotblue::meeting_test {

using Gap = std::vector<PlayTerm>;

/// A wheel that two stops end ahead, and one back. Lengths by nominal, each within 0.05 either way.
struct TwoStops {
  StopNet net;

  TwoStops(const std::vector<double>& nominals, Gap first, Gap second) {
    net.bench.bodies = {"Wheel", "Bracket"};
    for (const double nominal : nominals) {
      StackLength length;
      length.dimension.name = "length " + std::to_string(net.lengths.size());
      length.dimension.nominal = Length::mm(nominal);
      length.dimension.limits = {Length::mm(nominal - 0.05), Length::mm(nominal + 0.05)};
      net.lengths.push_back(length);
      net.bench.lengths.push_back(length.dimension);
    }
    net.bench.stops = {{0, 1, std::move(first)}, {0, 1, std::move(second)}, {1, 0, {}}};
    net.stops.resize(3);
    for (std::size_t i = 0; i < 3; ++i) {
      net.stops[i].stop.seat = i;
    }
  }
};

// 0.5 +- 0.05 against 0.2 +- 0.05: 0.2 are left at best.
TEST(Meeting, IsRuledOutWhereOthersStopTheTwoFirstAtEveryLength) {
  const TwoStops wheel({0.5, 0.2}, {{0, 1}}, {{1, 1}});
  EXPECT_EQ(meeting_of(wheel.net, 0), Meeting::never);
  EXPECT_EQ(meeting_of(wheel.net, 1), Meeting::always);
}

// 0.25 +- 0.05 against 0.2 +- 0.05.
TEST(Meeting, IsOpenWhereTheLengthsDecideWhichIsFirst) {
  const TwoStops wheel({0.25, 0.2}, {{0, 1}}, {{1, 1}});
  EXPECT_EQ(meeting_of(wheel.net, 0), Meeting::perhaps);
  EXPECT_EQ(meeting_of(wheel.net, 1), Meeting::perhaps);
}

// Both gaps count length 0, and one 0.1 +- 0.05 more: however long it is, that one is longer.
TEST(Meeting, LeavesOutWhatBothGapsShare) {
  const TwoStops wheel({0.3, 0.1}, {{0, 1}, {1, 1}}, {{0, 1}});
  EXPECT_EQ(meeting_of(wheel.net, 0), Meeting::never);
}

TEST(Meeting, IsNotKnownByALengthThatNoChainOfFacesCloses) {
  TwoStops wheel({0.5, 0.2}, {{0, 1}}, {{1, 1}});
  wheel.net.lengths[1].source = LengthSource::not_closed;
  EXPECT_EQ(meeting_of(wheel.net, 0), std::nullopt);
}

TEST(Meeting, OfTheOnlyStopThatWayIsCertain) {
  TwoStops wheel({0.5, 0.2}, {{0, 1}}, {{1, 1}});
  wheel.net.bench.stops[1] = {1, 0, {{1, 1}}};
  EXPECT_EQ(meeting_of(wheel.net, 0), Meeting::always);
}

// Warm, the second gap has grown to 0.6.
TEST(Meeting, GoesByTheLengthsWhenItRuns) {
  TwoStops wheel({0.5, 0.2}, {{0, 1}}, {{1, 1}});
  wheel.net.warm = wheel.net.bench;
  wheel.net.warm->lengths[1].nominal = Length::mm(0.7);
  wheel.net.warm->lengths[1].limits = {Length::mm(0.65), Length::mm(0.75)};
  EXPECT_EQ(meeting_of(wheel.net, 0), Meeting::always);
}

// 0.5 +- 0.05 against 0.2 +- 0.05: 0.2 to 0.4 are left.
TEST(LeastLeft, IsWhatOtherStopsLeaveBetweenTheFaces) {
  const TwoStops wheel({0.5, 0.2}, {{0, 1}}, {{1, 1}});
  const auto left = least_left(wheel.net, 0);
  ASSERT_TRUE(left);
  EXPECT_NEAR(left->low, 0.2, 1e-9);
  EXPECT_NEAR(left->high, 0.4, 1e-9);
}

TEST(LeastLeft, IsNothingBetweenFacesThatMeet) {
  const TwoStops wheel({0.5, 0.2}, {{0, 1}}, {{1, 1}});
  const auto left = least_left(wheel.net, 1);
  ASSERT_TRUE(left);
  EXPECT_EQ(left->high, 0.0);
}

// Warm the second gap is 0.7 +- 0.05: then the first face meets.
TEST(LeastLeft, CountsTheStateInWhichTheyComeNearest) {
  TwoStops wheel({0.5, 0.2}, {{0, 1}}, {{1, 1}});
  wheel.net.warm = wheel.net.bench;
  wheel.net.warm->lengths[1].nominal = Length::mm(0.7);
  wheel.net.warm->lengths[1].limits = {Length::mm(0.65), Length::mm(0.75)};
  EXPECT_EQ(least_left(wheel.net, 0)->low, 0.0);
}

TEST(LeastLeft, IsNotKnownByALengthThatNoChainOfFacesCloses) {
  TwoStops wheel({0.5, 0.2}, {{0, 1}}, {{1, 1}});
  wheel.net.lengths[1].source = LengthSource::not_closed;
  EXPECT_EQ(least_left(wheel.net, 0), std::nullopt);
}

ThrustFace face_of(std::size_t seat, double short_by) {
  ThrustFace face;
  face.seat = seat;
  face.short_by = short_by;
  face.certainty = short_by > 0.0 ? Certainty::perhaps : Certainty::certain;
  return face;
}

TEST(FacesThatMeet, AreThoseThatTheNetOfAPlayLetsMeet) {
  const TwoStops wheel({0.5, 0.2}, {{0, 1}}, {{1, 1}});
  BodyPlays plays;
  plays.captured.emplace_back();
  plays.captured.back().net = std::make_shared<const StopNet>(wheel.net);
  const auto faces = faces_that_meet({face_of(0, 0.3), face_of(1, 0.0)}, plays);
  ASSERT_EQ(faces.size(), 1U);
  EXPECT_EQ(faces[0].seat, 1U);
  EXPECT_EQ(faces[0].certainty, Certainty::certain);
}

TEST(FacesThatMeet, WithoutANetAreThoseThatLengthsMayMakeUpFor) {
  const auto faces = faces_that_meet({face_of(0, 1.2), face_of(1, 0.1)}, {});
  ASSERT_EQ(faces.size(), 1U);
  EXPECT_EQ(faces[0].certainty, Certainty::perhaps);
}

}  // namespace spotblue::meeting_test
