#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "report/example_look.hpp"
#include "spotblue/report/json.hpp"

namespace spotblue::test::json_check_test {

using nlohmann::json;

TEST(CheckJson, HoldsAllThatALookHolds) {
  json check = json::parse(check_json(example_check()));
  check.erase("job");
  check.erase("findings");
  check.erase("outcomes");
  check.erase("bodies");
  check.erase("joints");
  check.erase("turning");
  check.erase("bearings");
  check.erase("thrust_faces");
  check.erase("seat_states");
  check.erase("stops");
  EXPECT_EQ(check, json::parse(look_json(example_look())));
}

TEST(CheckJson, SaysWhatIsOneBodyAndEachSizeInEachState) {
  const json check = json::parse(check_json(example_check()));
  EXPECT_EQ(check["bodies"][0], (json{{"parts", {"Press/Wheel", "Press/Stud"}}, {"rpm", 40.0}}));
  EXPECT_FALSE(check["bodies"][1].contains("rpm"));
  const json& seat = check["seat_states"][0];
  EXPECT_EQ(seat["pressing"], "pressed");
  EXPECT_EQ(seat["hole_size"]["running_mm"], (json{44.01, 44.035}));
  EXPECT_FALSE(seat["shaft_size"].contains("assembled_mm"));
  EXPECT_EQ(seat["shaft_size"]["unknown"], "no material is given for Stud");
}

TEST(CheckJson, SaysWhatStopsWhatAndThePlayThatItEnds) {
  const json stop = json::parse(check_json(example_check()))["stops"][0];
  EXPECT_EQ(stop["centre_line"], "centre line 1");
  EXPECT_EQ(stop["gap_mm"], 0.3);
  EXPECT_EQ(stop["play_mm"], (json{0.28, 0.32}));
  EXPECT_FALSE(stop.contains("running_mm"));
}

TEST(CheckJson, SaysWhatEachPairIsToEachOtherAndByWhichFeatures) {
  const json joint = json::parse(check_json(example_check()))["joints"][0];
  EXPECT_EQ(joint["a"], (json{{"occurrence", "Press/Wheel"}, {"product", "Wheel"}}));
  EXPECT_EQ(joint["kind"], "pressed");
  EXPECT_EQ(joint["certainty"], "certain");
  EXPECT_EQ(joint["turning"], true);
  EXPECT_EQ(joint["by"][0]["feature"], "Wheel: bore 44");
  EXPECT_FALSE(joint.contains("line"));
}

TEST(CheckJson, SaysWhatTurnsOnWhatAndWhatRubs) {
  const json check = json::parse(check_json(example_check()));
  EXPECT_EQ(check["turning"][0]["load_at_mm"], 12.0);
  EXPECT_EQ(check["turning"][0]["centre_line"], "centre line 1");
  EXPECT_EQ(check["bearings"][0]["load_n"], -220.0);
  EXPECT_EQ(check["bearings"][0]["covered_deg"], 180.0);
  EXPECT_EQ(check["bearings"][0]["seat"], 0);
  EXPECT_FALSE(check["bearings"][0].contains("moment_nm"));
  EXPECT_EQ(check["thrust_faces"][0]["certainty"], "perhaps");
}

TEST(CheckJson, FindingKeepsItsNumbersAndWords) {
  const json press = json::parse(check_json(example_check()))["findings"][0];
  EXPECT_EQ(press["id"], "radial-1");
  EXPECT_EQ(press["kind"], "radial fit");
  EXPECT_EQ(press["about"], (json{"Wheel: bore 44", "Stud: outside 44.035"}));
  EXPECT_EQ(press["outcome"], "nonconforming");
  EXPECT_EQ(press["wanted"],
            (json{{"fit", "H7/s6"}, {"clearance_min_mm", -0.059}, {"clearance_max_mm", -0.018}}));
  EXPECT_EQ(press["margin"], (json{{"clearance_mm", -0.009}}));
  EXPECT_EQ(press["caution"], "guard the press");
}

TEST(CheckJson, WhatDoesNotApplyIsLeftOut) {
  const json screw = json::parse(check_json(example_check()))["findings"][1];
  for (const char* key : {"wanted", "margin", "basis", "advice", "caution"}) {
    EXPECT_FALSE(screw.contains(key)) << key;
  }
}

TEST(CheckJson, OutcomesAreCounted) {
  EXPECT_EQ(json::parse(check_json(example_check()))["outcomes"],
            (json{{"conforming", 1}, {"nonconforming", 1}, {"undecided", 1}}));
}

TEST(CheckJson, JobNamesFileModelAndParts) {
  const json job = json::parse(check_json(example_check()))["job"];
  EXPECT_EQ(job["file"], "wheel-job.toml");
  EXPECT_EQ(job["model"], "wheel.step");
  EXPECT_EQ(job["unit"], "mm");
  EXPECT_EQ(job["parts"], (json::array({{{"part", "Wheel"},
                                         {"material", "grey iron"},
                                         {"state", "as found"},
                                         {"drawn", "at the size wanted"},
                                         {"irreplaceable", false}}})));
}

}  // namespace spotblue::test::json_check_test
