#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "report/example_look.hpp"
#include "spotblue/base/version.hpp"
#include "spotblue/geometry/open_cascade_version.hpp"
#include "spotblue/report/json.hpp"

namespace spotblue::test::json_look_test {

using nlohmann::json;
using nlohmann::ordered_json;
using ::testing::ElementsAre;
using ::testing::MatchesRegex;

json written(const Look& look) { return json::parse(look_json(look)); }

std::vector<std::string> keys(const std::string& text) {
  std::vector<std::string> names;
  const ordered_json parsed = ordered_json::parse(text);
  for (const auto& [key, value] : parsed.items()) {
    names.push_back(key);
  }
  return names;
}

// Source of every expected key and its order: design section 9, the JSON contract.
TEST(LookJson, HasTheKeysOfTheContractInItsOrder) {
  EXPECT_THAT(keys(look_json(example_look())),
              ElementsAre("schema", "spotblue", "kernel", "file", "settings", "products",
                          "occurrences", "centre_lines", "radial_seats", "axial_seats",
                          "taper_seats", "width_seats", "threads", "fouls", "contacts",
                          "semantic_sizes", "notes", "not_looked_at", "seconds"));
}

TEST(LookJson, SaysWhichVersionsAndFileItComesFrom) {
  const json look = written(example_look());
  EXPECT_EQ(look["schema"], 2);
  EXPECT_EQ(look["spotblue"], kVersion);
  EXPECT_EQ(look["kernel"], open_cascade_version());
  EXPECT_EQ(look["file"], (json{{"name", "wheel.step"},
                                {"sha256", std::string(64, 'a')},
                                {"protocol", "AP242"},
                                {"unit", "mm"}}));
}

TEST(LookJson, VersionIsThatOfOpenCascade) {
  EXPECT_THAT(open_cascade_version(), MatchesRegex("[0-9]+\\.[0-9]+\\.[0-9]+.*"));
}

TEST(LookJson, CylinderKeepsSizeAxisAndIntervals) {
  const json bore = written(example_look())["products"][0]["features"][0];
  EXPECT_EQ(bore, json::parse(R"({"id": "Wheel: bore 44", "kind": "hole", "diameter_mm": 44,
      "axis": {"at": [0, 0, 0], "along": [0, 0, 1]}, "intervals_mm": [[0, 12.5], [20, 30.1]],
      "coverage_deg": 360, "recognised_from": "cylinder"})"));
}

// By hand: radius 10 at station 0, half angle 45 deg, so 10 + 2 at station 2: 20 and 24.
TEST(LookJson, ConeGivesBothEndDiametersAndHalfAngleInDegrees) {
  const json cone = written(example_look())["products"][0]["features"][2];
  EXPECT_EQ(cone["kind"], "cone_hole");
  EXPECT_DOUBLE_EQ(cone["small_mm"].get<double>(), 20.0);
  EXPECT_DOUBLE_EQ(cone["large_mm"].get<double>(), 24.0);
  EXPECT_DOUBLE_EQ(cone["half_angle_deg"].get<double>(), 45.0);
  EXPECT_EQ(cone["recognised_from"], "revolution");
}

// By hand: the example's faces are squares of 10 mm.
TEST(LookJson, PlaneGivesItsAreaAndOutwardNormal) {
  const json face = written(example_look())["products"][0]["features"][5];
  EXPECT_EQ(face["id"], "Wheel: face 10x10 #2");
  EXPECT_DOUBLE_EQ(face["area_mm2"].get<double>(), 100.0);
  EXPECT_EQ(face["axis"]["along"], (json{-1, 0, 0}));
}

TEST(LookJson, EveryKindOfFeatureIsNamedByItsSide) {
  std::vector<std::string> kinds;
  const json look = written(example_look());
  for (const json& product : look["products"]) {
    for (const json& feature : product["features"]) {
      kinds.push_back(feature["kind"]);
    }
  }
  EXPECT_THAT(kinds, ElementsAre("hole", "hole", "cone_hole", "plane", "plane", "plane", "slot",
                                 "shaft", "shaft", "cone_shaft", "plane", "plane", "plane", "key"));
}

TEST(LookJson, RadialSeatReadsBackToTheSameDoubles) {
  const Look look = example_look();
  const json seat = written(look)["radial_seats"][0];
  EXPECT_EQ(seat["hole"], json::parse(R"({"occurrence": "Press/Wheel", "product": "Wheel",
                                          "feature": "Wheel: bore 44"})"));
  EXPECT_EQ(seat["shaft"]["feature"], "Stud \"worn\": outside 44.035");
  EXPECT_EQ(seat["clearance_mm"].get<double>(), look.seats.radial[0].clearance);
  EXPECT_EQ(seat["hole_mm"].get<double>(), 44.0);
  EXPECT_EQ(seat["shaft_mm"].get<double>(), 44.035);
  EXPECT_EQ(seat["offset_mm"].get<double>(), 0.0125);
  EXPECT_DOUBLE_EQ(seat["tilt_deg"].get<double>(), 0.25);
  EXPECT_EQ(seat["least_gap_mm"].get<double>(), -0.03);
  EXPECT_EQ(seat["engaged_mm"].get<double>(), 22.6);
  EXPECT_DOUBLE_EQ(seat["coverage_deg"].get<double>(), 360.0);
}

TEST(LookJson, AWornSeatTellsItsLeastAndGreatestClearance) {
  Look look = example_look();
  EXPECT_FALSE(written(look)["radial_seats"][0].contains("clearance_least_mm"));
  look.seats.radial[0].worn = ClearanceRange{0.05, 0.25};
  const json seat = written(look)["radial_seats"][0];
  EXPECT_EQ(seat["clearance_least_mm"], 0.05);
  EXPECT_EQ(seat["clearance_most_mm"], 0.25);
}

TEST(LookJson, ASeatThatFoulsSaysByHowMuch) {
  Look look = example_look();
  EXPECT_FALSE(written(look)["radial_seats"][0].contains("fouls_by_mm"));
  look.seats.radial[0].fouls_by = 0.15;
  EXPECT_EQ(written(look)["radial_seats"][0]["fouls_by_mm"], 0.15);
}

TEST(LookJson, AFoulWithoutAPlaceLeavesItOut) {
  Look look = example_look();
  look.fouls.found[0].at.reset();
  EXPECT_FALSE(written(look)["fouls"][0].contains("at"));
}

TEST(LookJson, AxialSeatOnACentreLineNamesItAndGivesDiameters) {
  const json seat = written(example_look())["axial_seats"][0];
  EXPECT_EQ(seat["centre_line"], "centre line 1");
  EXPECT_EQ(seat["inner_mm"], 44.0);
  EXPECT_EQ(seat["outer_mm"], 60.0);
}

TEST(LookJson, AxialSeatWithoutCentreLineLeavesItsKeysOut) {
  const json seat = written(example_look())["axial_seats"][1];
  EXPECT_FALSE(seat.contains("centre_line"));
  EXPECT_FALSE(seat.contains("inner_mm"));
  EXPECT_FALSE(seat.contains("outer_mm"));
  EXPECT_EQ(seat["gap_mm"], -0.02);
}

TEST(LookJson, TaperWidthThreadAndFoulKeepTheirValues) {
  const json look = written(example_look());
  EXPECT_DOUBLE_EQ(look["taper_seats"][0]["shaft_half_angle_deg"].get<double>(), 44.5);
  EXPECT_EQ(look["taper_seats"][0]["diameter_mm"], 22.0);
  EXPECT_EQ(look["width_seats"][0]["clearance_mm"].get<double>(), 8.0 - 7.95);
  EXPECT_EQ(look["width_seats"][0]["key"]["feature"], "Stud \"worn\": width 7.95");
  EXPECT_EQ(look["threads"][0]["size"], "M10");
  EXPECT_EQ(look["threads"][0]["engaged_mm"], 15.0);
  const json foul = look["fouls"][0];
  EXPECT_EQ(foul["a"], (json{{"occurrence", "Press/Stud"}, {"product", "Stud \"worn\""}}));
  EXPECT_EQ(foul["b"], (json{{"occurrence", "Press/Wheel (2)"}, {"product", "Wheel"}}));
  EXPECT_EQ(foul["volume_mm3"], 12.25);
  EXPECT_EQ(foul["depth_mm"], 0.5);
  EXPECT_EQ(foul["length_mm"], 7.25);
  EXPECT_EQ(foul["at"], (json{1, 2, 3}));
  EXPECT_EQ(foul["exact"], false);
}

TEST(LookJson, MirroredOccurrenceKeepsItsFrame) {
  const json place = written(example_look())["occurrences"][2];
  EXPECT_EQ(place["mirrored"], true);
  EXPECT_EQ(place["path"], "Press/Wheel");
  EXPECT_EQ(place["frame"], json::parse("[[-1,0,0,0.1],[0,1,0,0],[0,0,1,1e-17]]"));
}

TEST(LookJson, APartDrawnFarOffSaysWhereItsFrameLies) {
  Look look = example_look();
  look.model.products[1].drawn_at = {1e6, -2e5, 30.0};
  const json products = written(look)["products"];
  EXPECT_THAT(products[1]["drawn_at"], ElementsAre(1e6, -2e5, 30.0));
  EXPECT_FALSE(products[0].contains("drawn_at"));
}

TEST(LookJson, NotesOfReadingAndOfTheFoulSearchAreBothThere) {
  const json notes = written(example_look())["notes"];
  ASSERT_EQ(notes.size(), 2U);
  EXPECT_EQ(notes[0]["text"], "invented for a test");
  EXPECT_EQ(notes[1]["about"], "Press/Stud");
}

TEST(LookJson, SettingsInUseAreStated) {
  Look look = example_look();
  look.settings.seats.radial_gap_mm = 0.75;
  look.settings.completeness = Completeness::accept_partial;
  const json settings = written(look)["settings"];
  EXPECT_EQ(settings["radial_gap_mm"], 0.75);
  EXPECT_EQ(settings["coaxial_tilt_deg"], 1.0);
  EXPECT_EQ(settings["accept_partial"], true);
}

TEST(LookJson, SameLookGivesTheSameBytes) {
  EXPECT_EQ(look_json(example_look()), look_json(example_look()));
}

}  // namespace spotblue::test::json_look_test
