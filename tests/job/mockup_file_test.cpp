#include "spotblue/job/mockup_file.hpp"

#include <gmock/gmock.h>
#include <unistd.h>

#include <fstream>
#include <numbers>

#include "spotblue/base/error.hpp"
#include "spotblue/geometry/mockup_placing.hpp"
#include "support/thrown.hpp"

namespace spotblue::mockup_file_test {

using ::testing::HasSubstr;

Mockup read_text(const std::string& text) {
  const auto file = std::filesystem::temp_directory_path() /
                    ("spotblue-" + std::to_string(::getpid()) + ".mockup.toml");
  std::ofstream(file) << text;
  struct Remove {
    std::filesystem::path file;
    ~Remove() { std::filesystem::remove(file); }
  } const remove{file};
  return read_mockup(file);
}

Error refusal_of(const std::string& text) {
  return test::error_of([&] { return read_text(text); });
}

constexpr const char* kPair = R"(title = "Pair"
unit = "inch"
[[part]]
name = "Stud"
kind = "turned"
outside = [
  { diameter = "1 1/2", length = "5/16", chamfer_start = "1/32" },
  { name = "journal", diameter = 0.7495, length = 2 },
]
[[part]]
name = "Washer"
kind = "ring"
outside = 1.25
inside = "25/32"
thickness = "1/8"
[[place]]
part = "Stud"
at = 0
[[place]]
part = "Washer"
against = "Stud"
against_face = "outside 1 end"
)";

TEST(MockupFile, FractionsAndDecimalsBecomeMillimetres) {
  const Mockup mockup = read_text(kPair);
  const auto& stud = std::get<TurnedPart>(mockup.parts.at(0).shape);
  EXPECT_DOUBLE_EQ(stud.outside.at(0).diameter, 38.1);
  EXPECT_DOUBLE_EQ(stud.outside.at(0).length, 5.0 / 16 * 25.4);
  EXPECT_EQ(stud.outside.at(0).at_start.kind, BreakKind::chamfer);
  EXPECT_DOUBLE_EQ(stud.outside.at(1).start, 5.0 / 16 * 25.4);
  EXPECT_DOUBLE_EQ(stud.outside.at(1).diameter, 0.7495 * 25.4);
  EXPECT_EQ(mockup.unit, LengthUnit::inch);
}

TEST(MockupFile, PlacementsSitShoulderToShoulder) {
  const auto placed = place_parts(read_text(kPair));
  EXPECT_NEAR(place_point(placed.at(1).frame, {}).z, 5.0 / 16 * 25.4, 1e-12);
}

TEST(MockupFile, AGearBlankStandsOneModuleAboveThePitchCircle) {
  const Mockup mockup = read_text(
      "title = 'g'\n[[part]]\nname = 'A'\nkind = 'turned'\n"
      "outside = [{teeth = 48, module = 2.5, length = 20}]\n[[place]]\npart = 'A'\nat = 0\n");
  EXPECT_DOUBLE_EQ(std::get<TurnedPart>(mockup.parts[0].shape).outside[0].diameter, 125.0);
  const Mockup inch = read_text(
      "title = 'g'\nunit = 'inch'\n[[part]]\nname = 'A'\nkind = 'turned'\n"
      "outside = [{teeth = 30, diametral_pitch = 8, length = 1}]\n");
  EXPECT_DOUBLE_EQ(std::get<TurnedPart>(inch.parts[0].shape).outside[0].diameter, 4.0 * 25.4);
}

// Found by tests/fuzz: two more than the greatest whole number.
TEST(MockupFile, AGearBlankOfAnyNumberOfTeethHasTheirDiameter) {
  const Mockup mockup = read_text(
      "title = 'G'\n[[part]]\nname = 'A'\nkind = 'turned'\n"
      "outside = [{teeth = 2147483647, module = 1e-6, length = 20}]\n[[place]]\npart = 'A'\nat = "
      "0\n");
  EXPECT_DOUBLE_EQ(std::get<TurnedPart>(mockup.parts[0].shape).outside[0].diameter, 2147.483649);
}

constexpr const char* kEveryStep = R"(title = "All"
about = "invented"
protocol = "AP242"
[[part]]
name = "Shaft"
kind = "turned"
outside = [{ diameter = 40, length = 60 }]
inside = [{ diameter = 20, through = true }]
outside_grooves = [{ at = 50, width = 2, diameter = 38 }]
inside_grooves = [{ at = 30, width = 2, diameter = 22 }]
keyseats = [{ at = 5, length = 20, width = 6, depth = 3.5, angle = 90 }]
keyways = [{ width = 5, depth = 2.3 }]
flats = [{ at = 55, length = 5, across = 36 }]
cross_holes = [{ at = 35, diameter = 4, through = true }]
bores = [{ circle = 30, count = 3, diameter = 4, depth = 10 }]
[[part]]
name = "Plate"
kind = "plate"
size = [80, 60, 10]
added = [{ corner = [0, 0, 10], size = [10, 60, 20] }]
bosses = [{ at = [40, 30], diameter = 30, height = 5 }]
bores = [{ name = "seat", at = [40, 30], diameter = 20, through = true, counterbore_diameter = 26, counterbore_depth = 4 }]
[[part]]
name = "Key"
kind = "key"
width = 6
height = 6
length = 20
[[line]]
name = "main"
at = [1, 2, 3]
along = [0, 0, 1]
[[place]]
part = "Plate"
line = "main"
on = "seat"
at = 0
[[place]]
part = "Shaft"
line = "main"
group = "Running"
reversed = true
turn = 90
at = -1
[[place]]
part = "Key"
keyseat_of = "Shaft"
)";

TEST(MockupFile, EveryKindOfStepIsRead) {
  const Mockup mockup = read_text(kEveryStep);
  const auto& shaft = std::get<TurnedPart>(mockup.parts[0].shape);
  EXPECT_EQ(mockup.protocol, StepProtocol::ap242);
  EXPECT_DOUBLE_EQ(shaft.inside[0].length, 60.0);
  EXPECT_EQ(shaft.outside_grooves.size() + shaft.inside_grooves.size() + shaft.flats.size(), 3U);
  EXPECT_DOUBLE_EQ(shaft.keyseats[0].angle, std::numbers::pi / 2);
  EXPECT_EQ(shaft.bores[0].count, 3);
  EXPECT_EQ(mockup.placements[1].facing, Facing::turned_round);
}

TEST(MockupFile, ANamedBoreIsOnItsLine) {
  const auto placed = place_parts(read_text(kEveryStep));
  // The seat, not the plate's corner.
  EXPECT_NEAR(place_point(placed[0].frame, {40, 30, 0}).x, 1.0, 1e-12);
  EXPECT_NEAR(place_point(placed[0].frame, {40, 30, 0}).y, 2.0, 1e-12);
}

struct Mistake {
  const char* name;
  const char* from;  ///< in the pair above ...
  const char* to;    ///< ... becomes this
  const char* place;
  const char* says;
};
void PrintTo(const Mistake& mistake, std::ostream* out) { *out << mistake.name; }

class MockupFileMistake : public testing::TestWithParam<Mistake> {};

TEST_P(MockupFileMistake, IsNamedWithLineAndStep) {
  std::string text = kPair;
  const auto at = text.find(GetParam().from);
  ASSERT_NE(at, std::string::npos);
  text.replace(at, std::string_view(GetParam().from).size(), GetParam().to);
  const Error problem = refusal_of(text);
  EXPECT_EQ(problem.place(), GetParam().place);
  EXPECT_THAT(problem.rule() + "; " + problem.cure(), HasSubstr(GetParam().says));
}

INSTANTIATE_TEST_SUITE_P(
    Pair, MockupFileMistake,
    testing::Values(
        Mistake{"UnknownStepKey", "name = \"journal\"", "nmae = \"journal\"",
                "line 8, part \"Stud\", outside 2, nmae", "did you mean \"name\"?"},
        Mistake{"UnknownPartKey", "thickness = \"1/8\"", "thickness = \"1/8\"\ngapp = 1",
                "line 16, part \"Washer\", gapp", "did you mean \"gap\"?"},
        Mistake{"MistypedDiameter", "diameter = 0.7495", "diametre = 0.7495",
                "line 8, part \"Stud\", outside 2, diameter", "correct \"diametre\""},
        Mistake{"NoLength", "\"5/16\"", "\"five\"", "line 7, part \"Stud\", outside 1, length",
                "not a length"},
        Mistake{"ZeroLength", "length = 2", "length = 0", "line 8, part \"Stud\", outside 2",
                "more than 0"},
        Mistake{"ChamferLargerThanStep", "\"1/32\"", "\"3/4\"", "line 7, part \"Stud\", outside 1",
                "chamfer"},
        Mistake{"RingInsideOut", "inside = \"25/32\"", "inside = 2", "line 10, part \"Washer\"",
                "not smaller"},
        Mistake{"UnknownPart", "part = \"Washer\"", "part = \"Wascher\"",
                "line 19, place \"Wascher\"", "did you mean \"Washer\"?"},
        Mistake{"UnknownFace", "\"outside 1 end\"", "\"outsid 1 end\"", "line 19, place \"Washer\"",
                "did you mean \"outside 1 end\"?"},
        Mistake{"NoPosition", "at = 0", "turn = 0", "line 16, place \"Stud\"", "no position"},
        Mistake{"PlacedAbsurdlyFar", "at = 0", "at = 1e300", "line 16, place \"Stud\"",
                "mm from the origin"},
        Mistake{"UnknownKind", "\"ring\"", "\"disc\"", "line 12, part \"Washer\", kind", "no kind"},
        Mistake{"UnknownUnit", "\"inch\"", "\"cubit\"", "line 2, unit", "not a unit"}));

// Two files in a folder of their own: `shared.toml`, and the one that includes it.
Mockup read_including(const std::string& shared, const std::string& text) {
  const auto folder =
      std::filesystem::temp_directory_path() / ("spotblue-include-" + std::to_string(::getpid()));
  std::filesystem::create_directory(folder);
  struct Remove {
    std::filesystem::path folder;
    ~Remove() { std::filesystem::remove_all(folder); }
  } const remove{folder};
  std::ofstream(folder / "shared.toml") << shared;
  std::ofstream(folder / "plan.toml") << text;
  return read_mockup(folder / "plan.toml");
}

constexpr const char* kStudPlan =
    "title = 'Plan'\ninclude = 'shared.toml'\n[[part]]\nname = 'Stud'\nkind = 'turned'\n"
    "outside = [{ diameter = 40, length = 8 }]\n[[place]]\npart = 'Stud'\nat = 0\n";

TEST(MockupFile, AnIncludedFileAddsItsPartsInItsOwnUnit) {
  const Mockup mockup = read_including(
      "unit = 'inch'\n[[part]]\nname = 'Washer'\nkind = 'ring'\noutside = 1\ninside = 0.5\n"
      "thickness = 0.125\n[[place]]\npart = 'Washer'\nagainst = 'Stud'\nagainst_face = 'last'\n",
      kStudPlan);
  ASSERT_EQ(mockup.parts.size(), 2U);
  EXPECT_DOUBLE_EQ(std::get<RingPart>(mockup.parts[0].shape).outside, 25.4);
  EXPECT_NEAR(place_point(place_parts(mockup)[0].frame, {}).z, 8.0, 1e-12);
}

TEST(MockupFile, AFileElsewhereIsIncludedOnlyWhereThatIsAllowed) {
  std::string plan = kStudPlan;
  plan.replace(plan.find("shared.toml"), 11, "/dev/null");
  const Error problem = test::error_of([&] { return read_including("", plan); });
  EXPECT_THAT(problem.what(), HasSubstr("plan.toml, line 2, include: \"/dev/null\" is /dev/null"));
  EXPECT_THAT(problem.what(), HasSubstr("--allow-outside"));
}

TEST(MockupFile, IncludesDoNotNest) {
  const Error problem =
      test::error_of([&] { return read_including("include = 'other.toml'\n", kStudPlan); });
  EXPECT_THAT(problem.file(), HasSubstr("shared.toml"));
  EXPECT_THAT(problem.rule(), HasSubstr("includes do not nest"));
}

TEST(MockupFile, KnowsWhichFilesItWasReadFrom) {
  const Mockup mockup = read_including(
      "[[part]]\nname = 'Ring'\nkind = 'ring'\noutside = 2\ninside = 1\n"
      "thickness = 1\n[[place]]\npart = 'Ring'\nat = 0\n",
      kStudPlan);
  ASSERT_EQ(mockup.read_from.size(), 2U);
  EXPECT_EQ(mockup.read_from[0].filename(), "plan.toml");
  EXPECT_EQ(mockup.read_from[1].filename(), "shared.toml");
}

TEST(MockupFile, AMistakeInAnIncludedFileNamesThatFile) {
  const Error problem = test::error_of([&] {
    return read_including(
        "[[part]]\nname = 'Ring'\nkind = 'ring'\noutside = 1\ninside = 2\nthickness = 1\n",
        kStudPlan);
  });
  EXPECT_THAT(problem.file(), HasSubstr("shared.toml"));
  EXPECT_EQ(problem.place(), "line 1, part \"Ring\"");
}

TEST(MockupFile, AJobFileIsKnownForWhatItIs) {
  EXPECT_THAT(refusal_of("schema = 1\nmodel = 'm.step'\nunit = 'mm'\n").rule(),
              HasSubstr("is a job file"));
}

TEST(MockupFile, AnEmptyMockupIsRefused) {
  EXPECT_THAT(refusal_of("title = 'x'\n").rule(), HasSubstr("no part"));
}

}  // namespace spotblue::mockup_file_test
