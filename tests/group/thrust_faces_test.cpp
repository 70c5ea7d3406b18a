// Which faces rub, on models of plain values.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "spotblue/group/group.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"

namespace spotblue::thrust_faces_test {

using test::Bench;
using ::testing::HasSubstr;

/// A wheel that turns between a near face and one `gap` off, both of a bracket.
Bench wheel_at_two_faces(double near, double far) {
  Bench bench;
  const OccurrenceId wheel = bench.part("Wheel");
  const OccurrenceId bracket = bench.part("Bracket");
  const auto face = [&](const std::string& name, double z, double gap) {
    bench.gap(bench.face(wheel, name, z, 1.0), bench.face(bracket, name, z + gap, -1.0), gap);
    bench.look.seats.axial.back().axis = {{0, 0, z}, {0, 0, 1}};
  };
  face("hub", 20.0, near);
  face("rim", 10.0, far);
  bench.job.turning.push_back({"Wheel", 60.0, Duty::continuous, {}, 50.0, 0});
  return bench;
}

TEST(ThrustFaces, ThatOthersKeepApartAreNone) {
  const Bench bench = wheel_at_two_faces(0.2, 1.4);
  const Group group = make_group(bench.job, bench.look);
  ASSERT_EQ(group.thrust_faces.size(), 1U);
  EXPECT_EQ(group.thrust_faces[0].seat, 0U);
  EXPECT_EQ(group.thrust_faces[0].certainty, Certainty::certain);
}

TEST(ThrustFaces, ThatLengthsMayLetMeetArePerhaps) {
  const Bench bench = wheel_at_two_faces(0.2, 0.3);
  const Group group = make_group(bench.job, bench.look);
  ASSERT_EQ(group.thrust_faces.size(), 2U);
  EXPECT_EQ(group.thrust_faces[1].certainty, Certainty::perhaps);
  EXPECT_THAT(text_of(group.thrust_faces[1].why), HasSubstr("hub"));
}

TEST(ThrustFaces, ThatMeetAtOnceAreBoth) {
  const Bench bench = wheel_at_two_faces(0.2, 0.2);
  const Group group = make_group(bench.job, bench.look);
  ASSERT_EQ(group.thrust_faces.size(), 2U);
  EXPECT_EQ(group.thrust_faces[1].certainty, Certainty::certain);
}

// A washer with 0.1 on each side stops the wheel after 0.2, before the bracket's face at 1.4.
TEST(ThrustFaces, ThatAThirdPartKeepsApartAreNone) {
  Bench bench = wheel_at_two_faces(1.5, 1.4);
  const OccurrenceId washer = bench.part("Washer");
  bench.gap(bench.face(OccurrenceId(0), "side", 5.0, 1.0), bench.face(washer, "back", 5.1, -1.0),
            0.1);
  bench.look.seats.axial.back().axis = {{0, 0, 5}, {0, 0, 1}};
  bench.gap(bench.face(washer, "front", 6.0, 1.0), bench.face(OccurrenceId(1), "side", 6.1, -1.0),
            0.1);
  bench.look.seats.axial.back().axis = {{0, 0, 6}, {0, 0, 1}};
  const Group group = make_group(bench.job, bench.look);
  ASSERT_EQ(group.thrust_faces.size(), 1U);
  EXPECT_EQ(group.thrust_faces[0].b.occurrence, washer);
}

}  // namespace spotblue::thrust_faces_test
