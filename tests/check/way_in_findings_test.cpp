// Ways in as findings: mock-up to STEP to look to judge, so that all of the path is walked.
#include <gmock/gmock.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "spotblue/check/check.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/job/mockup_file.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"
#include "support/value_parts.hpp"

namespace spotblue::way_in_findings_test {

using test::worded;
using ::testing::HasSubstr;
using ::testing::SizeIs;

/// A folder of its own that goes with the test.
class Folder {
 public:
  Folder()
      : path_(std::filesystem::temp_directory_path() /
              ("spotblue-way-in-" + std::to_string(::getpid()))) {
    std::filesystem::create_directories(path_);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  [[nodiscard]] std::filesystem::path write(const std::string& name,
                                            const std::string& text) const {
    std::ofstream(path_ / name) << text;
    return path_ / name;
  }
  [[nodiscard]] std::filesystem::path file(const std::string& name) const { return path_ / name; }

 private:
  std::filesystem::path path_;
};

Finding way_in(const std::string& mockup, const std::string& job) {
  const Folder folder;
  write_mockup(read_mockup(folder.write("m.mockup.toml", mockup)), folder.file("m.step"));
  const CheckResult result = check({read_job(
      folder.write("m.job.toml", "schema = 1\nmodel = \"m.step\"\nunit = \"mm\"\n" + job))});
  std::vector<Finding> found;
  for (const Finding& finding : result.findings) {
    if (finding.kind == "way in") {
      found.push_back(finding);
    }
  }
  EXPECT_THAT(found, SizeIs(1));
  return found.empty() ? Finding{} : found.front();
}

/// A spool with a ring of the given bore between its flanges of 30 and 25.
std::string spool_with_ring(double bore) {
  return R"(
title = "Spool"
[[part]]
name = "Spool"
kind = "turned"
outside = [
  { name = "flange", diameter = 30, length = 10 },
  { name = "barrel", diameter = 20, length = 30 },
  { name = "small flange", diameter = 25, length = 10 },
]
[[part]]
name = "Ring"
kind = "ring"
outside = 40
inside = )" +
         std::to_string(bore) + R"(
thickness = 12
[[place]]
part = "Spool"
at = 0
[[place]]
part = "Ring"
at = 20
)";
}

// Acceptance 4 of the issue.
TEST(WayInFinding, ARingBehindAShoulderIsFoundWithTheNameOfWhatBlocksIt) {
  const Finding finding = way_in(spool_with_ring(20.05), "");
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(worded(finding.found, "blocked_1") + worded(finding.found, "blocked_2"),
              HasSubstr("Ring by Spool towards +z: needs 25.000 mm, has 20.050 mm"));
  EXPECT_THAT(text_of(finding.advice), HasSubstr("Ring cannot be brought to its place past Spool"));
  ASSERT_THAT(finding.margin, SizeIs(1));
  EXPECT_NEAR(*number_in(finding.margin[0]), 20.05 - 30.0, 1e-6);
}

TEST(WayInFinding, OfAnInchJobSaysNothingMetric) {
  const Finding finding = way_in(spool_with_ring(20.05), "");
  EXPECT_EQ(test::metric_in(finding), "");
  EXPECT_THAT(test::all_words(finding, LengthUnit::inch),
              HasSubstr("needs 0.98425 in, has 0.78937 in"));
}

// An eye between two cheeks that a pin joins goes in sideways before the pin does.
TEST(WayInFinding, AnEyeBetweenTwoCheeksMayComeFromTheSide) {
  Product fork = test::block_part({-15, -15, 0}, {15, 15, 10}, {{0, 0, 12.04}});
  test::join(fork, test::block_part({-15, -15, 22}, {15, 15, 32}, {{0, 0, 12.04}}));
  fork.name = "Fork";
  Product eye = test::ring_part(6.02, 12, 0, 11.6);
  eye.name = "Eye";
  Product pin = test::ring_part(0, 6, -2, 34);
  pin.name = "Pin";
  test::Bench bench;
  bench.look.model = test::placed_model({{fork, {}}, {eye, test::shifted(0, 0, 10.2)}, {pin, {}}});
  bench.look.seats = find_seats(bench.look.model, {});
  const std::vector<Finding> findings = test::of_kind(bench, "way in");
  ASSERT_THAT(findings, SizeIs(1));
  EXPECT_EQ(findings[0].outcome, Outcome::undecided);
  EXPECT_THAT(text_of(findings[0].advice), HasSubstr("from the side"));
}

/// A pin in a hub, or, with a shoulder at either end, a ring between two: the way in of both.
Finding way_of_two(const Product& shaft, const std::string& unsound,
                   const std::vector<Note>& missing) {
  Product hub = test::ring_part(10.02, 20, 0, 20);
  hub.name = hub.id = "Hub";
  Product pin = shaft;
  pin.name = pin.id = "Pin";
  pin.unsound = unsound;
  test::Bench bench;
  bench.look.model = test::placed_model({{hub, {}}, {pin, {}}});
  bench.look.model.not_compared = missing;
  bench.look.seats = find_seats(bench.look.model, {});
  const std::vector<Finding> findings = test::of_kind(bench, "way in");
  EXPECT_THAT(findings, SizeIs(1));
  return findings.empty() ? Finding{} : findings.front();
}

TEST(WayInFinding, IsUndecidedWhereAnyPartOfItsLineIsNotSound) {
  const Product pin = test::ring_part(0, 10, -5, 25);
  ASSERT_EQ(way_of_two(pin, "", {}).outcome, Outcome::conforming);
  const Finding finding = way_of_two(pin, "its solid is not closed", {});
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(worded(finding.found, "unsound"), HasSubstr("its solid is not closed"));
}

// An open solid beside the line may have lost the faces by which it would be on it.
TEST(WayInFinding, IsUndecidedWhereAPartThatStandsAmongItsPartsIsNotSound) {
  for (const double at : {0.0, 500.0}) {
    Product hub = test::ring_part(10.02, 20, 0, 20);
    Product pin = test::ring_part(0, 10, -5, 25);
    Product open = test::block_part({10, -2, 5}, {12, 2, 8});
    open.unsound = "its solid is not closed";
    test::Bench bench;
    bench.look.model = test::placed_model({{hub, {}}, {pin, {}}, {open, test::shifted(at, 0, 0)}});
    bench.look.seats = find_seats(bench.look.model, {});
    const std::vector<Finding> findings = test::of_kind(bench, "way in");
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].outcome, at == 0.0 ? Outcome::undecided : Outcome::conforming);
  }
}

TEST(WayInFinding, IsUndecidedWhereSomethingDidNotArrive) {
  const Finding finding =
      way_of_two(test::ring_part(0, 10, -5, 25), "", {{"product 'Bush'", "did not arrive"}});
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_EQ(worded(finding.found, "not_compared"), "product 'Bush': did not arrive");
}

// Two shoulders shut the hub in whatever else there is.
TEST(WayInFinding, ThatIsShutStaysSoWhereSomethingDidNotArrive) {
  const Product spool = test::turned_part(
      {{0, -5}, {15, -5}, {15, -1}, {10, -1}, {10, 21}, {15, 21}, {15, 25}, {0, 25}});
  EXPECT_EQ(way_of_two(spool, "", {{"product 'Bush'", "did not arrive"}}).outcome,
            Outcome::nonconforming);
  EXPECT_EQ(way_of_two(spool, "its solid is not closed", {}).outcome, Outcome::undecided);
}

TEST(WayInFinding, WithOneShoulderAwayTheRingGoesOn) {
  std::string mockup = spool_with_ring(20.05);
  mockup.replace(mockup.find("diameter = 25"), 13, "diameter = 20");
  const Finding finding = way_in(mockup, "");
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_EQ(worded(finding.found, "step_1"), "Ring over Spool, slide towards -z");
  EXPECT_TRUE(text_of(finding.caution).empty());
}

TEST(WayInFinding, AWantedPressFitIsPressedWithTheUsualCaution) {
  std::string mockup = spool_with_ring(20.0);
  mockup.replace(mockup.find("diameter = 25"), 13, "diameter = 19");
  const Finding finding = way_in(mockup, R"(
[[fits]]
hole = "Ring: bore 20"
shaft = "Spool: outside 20"
class = "H7/s6"
)");
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_EQ(worded(finding.found, "step_1"), "Ring over Spool, press towards -z");
  EXPECT_THAT(text_of(finding.caution), HasSubstr("local rules"));
}

const char* const kGroovedHousing = R"(
title = "Housing"
[[part]]
name = "Housing"
kind = "turned"
outside = [{ diameter = 60, length = 40 }]
inside = [{ start = 10, diameter = 42, length = 30 }]
inside_grooves = [{ at = 30, width = 1.85, diameter = 44.5 }]
[[part]]
name = "Retaining ring"
kind = "ring"
outside = 44.3
inside = 37
thickness = 1.75
gap = 8
[[place]]
part = "Housing"
at = 0
[[place]]
part = "Retaining ring"
at = 30.05
)";

TEST(WayInFinding, ARingWithAGapInAGrooveIsNotToldUntilItIsSaidToSpring) {
  const Finding silent = way_in(kGroovedHousing, "");
  EXPECT_EQ(silent.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(silent.advice), HasSubstr("springs = true"));
  const Finding said = way_in(kGroovedHousing, R"(
[[parts]]
part = "Retaining ring"
springs = true
)");
  EXPECT_EQ(said.outcome, Outcome::conforming);
  EXPECT_THAT(worded(said.found, "step_1"), HasSubstr("Retaining ring into Housing, spring in"));
}

class DemoWaysIn : public testing::TestWithParam<const char*> {};

// The planted faults of the demo (an eccentric that fouls a boss, a cover's hole off its axis)
// spoil no way in.
TEST_P(DemoWaysIn, HaveAnOrderWithTheKeyBeforeTheEccentric) {
  const Folder folder;
  const std::filesystem::path models = SPOTBLUE_MODELS;
  const std::string name = GetParam();
  write_mockup(read_mockup(models / (name + ".mockup.toml")), folder.file("m.step"));
  Job job = read_job(models / (name + ".job.toml"));
  job.model = folder.file("m.step");
  job.cuts.clear();
  std::string steps;
  for (const Finding& finding : check({job}).findings) {
    if (finding.kind == "way in") {
      EXPECT_EQ(finding.outcome, Outcome::conforming) << text_of(finding.advice);
      for (const Quantity& quantity : finding.found) {
        steps += worded(quantity) + '\n';
      }
    }
  }
  EXPECT_THAT(steps, HasSubstr("Retaining ring into Bracket, spring in towards -z"));
  const auto key = steps.find("Key into Cross shaft, drop in");
  ASSERT_NE(key, std::string::npos);
  EXPECT_LT(key, steps.find("Eccentric over Cross shaft, slide"));
  EXPECT_LT(steps.find("Eccentric over Cross shaft, slide"), steps.find("End screw into"));
}

INSTANTIATE_TEST_SUITE_P(Plans, DemoWaysIn,
                         testing::Values("ink-disc-plan-a", "ink-disc-plan-b",
                                         "ink-disc-plan-b-mended", "ink-disc-plan-c"));

}  // namespace spotblue::way_in_findings_test
