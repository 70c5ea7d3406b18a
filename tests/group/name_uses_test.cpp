// What each name of a job must mean is said of all names at once.

#include "group/match/name_uses.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>
#include <ostream>

#include "support/bench.hpp"
#include "support/thrown.hpp"

namespace spotblue::test::name_uses_test {

using ::testing::AllOf;
using ::testing::HasSubstr;

Bench parts() {
  Bench bench;
  const OccurrenceId hub = bench.part("Hub");
  bench.bore(hub, "bore", 30.0);
  bench.outside(hub, "outside", 60.0);
  bench.face(hub, "face 1", 0.0, -1.0);
  bench.face(hub, "face 2", 20.0, 1.0);
  bench.width(hub, "keyseat", Side::internal, 8.0);
  const OccurrenceId shaft = bench.part("Shaft");
  bench.outside(shaft, "journal", 29.98);
  bench.width(shaft, "key", Side::external, 8.0);
  return bench;
}

struct Mistake {
  const char* name;
  std::function<void(Job&)> write;
  const char* place;
  const char* rule;
  const char* cure;
};

void PrintTo(const Mistake& mistake, std::ostream* out) { *out << mistake.name; }

class NameMistake : public ::testing::TestWithParam<Mistake> {};

TEST_P(NameMistake, IsRefusedWithLineKeyAndCure) {
  Bench bench = parts();
  bench.job.file = "plan.toml";
  GetParam().write(bench.job);
  const Error error = error_of([&] { return bench.findings(); });
  EXPECT_EQ(error.code(), ErrorCode::bad_input);
  EXPECT_EQ(error.file(), "plan.toml");
  EXPECT_EQ(error.place(), GetParam().place);
  EXPECT_THAT(error.rule(), HasSubstr(GetParam().rule));
  EXPECT_THAT(error.cure(), HasSubstr(GetParam().cure));
}

FitWant fit(const char* hole, const char* shaft, int line) {
  FitWant want;
  want.hole = hole;
  want.shaft = shaft;
  want.rule = ClearanceLimits{Length::mm(0), Length::mm(1)};
  want.line = line;
  return want;
}

Cut cut(const char* feature, int line) {
  Cut metal;
  metal.feature = feature;
  metal.line = line;
  return metal;
}

const Mistake kMistakes[] = {
    {"TwoHoles", [](Job& job) { job.fits = {fit("Hub: bore", "Hub: bore", 6)}; },
     "line 6, fits, shaft", "\"Hub: bore\" is a bore", "outside or width"},
    {"BoreWithAKey", [](Job& job) { job.fits = {fit("Hub: bore", "Shaft: key", 6)}; },
     "line 6, fits, shaft", "a width does not fit a bore", "pair a bore with an outside"},
    {"SizeOfAFace",
     [](Job& job) {
       SizeWant want;
       want.feature = "Hub: face 1";
       want.rule = "H7";
       want.line = 5;
       job.sizes = {want};
     },
     "line 5, sizes, feature", "\"Hub: face 1\" is a face", "bore or outside"},
    {"GapFromABore",
     [](Job& job) {
       AxialWant want;
       want.a = "Hub: bore";
       want.b = "Shaft";
       want.line = 5;
       job.axial = {want};
     },
     "line 5, wants, between", "is a bore", "face"},
    {"LengthToABore",
     [](Job& job) {
       PartLength length;
       length.a = "Hub: face 1";
       length.b = "Hub: bore";
       length.line = 5;
       job.lengths = {length};
     },
     "line 5, lengths, between", "is a bore", "face"},
    {"NutSetToABore",
     [](Job& job) {
       Adjust adjust;
       adjust.part = "Hub";
       adjust.from = "Shaft: journal";
       adjust.to = "Hub: face 1";
       adjust.line = 5;
       job.adjust = {adjust};
     },
     "line 5, adjust, between", "is a outside", "face"},
    {"CutThatAdds",
     [](Job& job) {
       job.cuts = {cut("Shaft: journal", 4)};
       job.cuts[0].before = Length::mm(29);
     },
     "line 4, cuts, before", "29 is not more than the 29.98", "after the cut"},
    {"BoreThatShrinks",
     [](Job& job) {
       job.cuts = {cut("Hub: bore", 4)};
       job.cuts[0].before = Length::mm(31);
     },
     "line 4, cuts, before", "31 is not less than the 30", "after the cut"},
    {"FilletInABore",
     [](Job& job) {
       job.cuts = {cut("Hub: bore", 4)};
       job.cuts[0].before = Length::mm(29);
       job.cuts[0].fillet = Length::mm(1);
     },
     "line 4, cuts, feature", "is a bore", "only of an outside"},
    {"FaceWithADiameterBefore",
     [](Job& job) {
       job.cuts = {cut("Hub: face 1", 4)};
       job.cuts[0].before = Length::mm(29);
     },
     "line 4, cuts, feature", "is a face", "depth"},
    {"CutOfAKeyseat",
     [](Job& job) {
       job.cuts = {cut("Hub: keyseat", 4)};
       job.cuts[0].before = Length::mm(5);
     },
     "line 4, cuts, feature", "is a slot", "outside or bore or face"}};

INSTANTIATE_TEST_SUITE_P(Job, NameMistake, ::testing::ValuesIn(kMistakes),
                         [](const auto& of) { return of.param.name; });

TEST(NameUses, TellsAllMistakesTogetherEachWithItsLineAndCure) {
  Bench bench = parts();
  bench.job.fits = {fit("Hub: boer", "Shaft: journal", 6), fit("Hub: bore", "Shaft: journall", 9)};
  bench.declare("Shafft", PartState::to_make, Drawn::at_nominal).line = 3;
  const std::string said = error_of([&] { return bench.findings(); }).what();
  EXPECT_THAT(
      said, AllOf(HasSubstr("the first of 3 mistakes"), HasSubstr("line 3, parts, part"),
                  HasSubstr("line 6, fits, hole"), HasSubstr("did you mean \"Hub: bore\"?"),
                  HasSubstr("line 9, fits, shaft"), HasSubstr("did you mean \"Shaft: journal\"?")));
}

TEST(NameUses, AllowPartsOfAnIncludedFileThatThisPlanHasNot) {
  Bench bench = parts();
  bench.declare("Spare hub", PartState::as_found, Drawn::at_the_size_wanted).line =
      JobLine(3, "shared.toml");
  EXPECT_NO_THROW((void)bench.findings());
  bench.job.parts.back().line = JobLine(3);
  EXPECT_EQ(error_of([&] { return bench.findings(); }).place(), "line 3, parts, part");
}

TEST(NameUses, TellTheIncludedFileInWhichAMistakeIs) {
  Bench bench = parts();
  bench.job.file = "plan.toml";
  bench.job.fits = {fit("Hub: boer", "Shaft: journal", 6)};
  bench.job.fits[0].line = JobLine(6, "shared.toml");
  const Error error = error_of([&] { return bench.findings(); });
  EXPECT_EQ(error.file(), "shared.toml");
  EXPECT_EQ(error.place(), "line 6, fits, hole");
}

TEST(NameUses, TakeANameThatIsGivenBeforeASizeThatReadsAlike) {
  Bench bench;
  const OccurrenceId plate = bench.part("Plate");
  bench.bore(plate, "oil hole", 3.0);
  bench.bore(plate, "bore 3", 20.0);
  auto& bores = bench.look.model.products[0].cylinders;
  bores[0].sized_name = "bore 3";
  bores[1].sized_name = "bore 20";
  const Names names(bench.job, bench.look.model);
  EXPECT_EQ(names.feature("Plate: bore 3", {"fits", "hole"}).refs.front().index, 1U);
  EXPECT_EQ(names.feature("Plate: bore 3.0", {"fits", "hole"}).refs.front().index, 0U);
}

TEST(NameUses, TellTheFileOfEachMistakeWhereThereAreSeveral) {
  Bench bench = parts();
  bench.job.file = "plan.toml";
  bench.job.fits = {fit("Hub: boer", "Shaft: journal", 6), fit("Hub: bore", "Shaft: jornal", 1)};
  bench.job.fits[1].line = JobLine(1, "shared.toml");
  EXPECT_THAT(std::string(error_of([&] { return bench.findings(); }).what()),
              HasSubstr("| shared.toml, line 1, fits, shaft"));
}

TEST(NameUses, TakeTheNamesOfAllFacesOfAFeature) {
  Bench bench;
  const OccurrenceId plate = bench.part("Plate");
  bench.bore(plate, "left cheek", 12.0);
  bench.look.model.products[0].cylinders[0].given = {"left cheek", "right cheek"};
  const Names names(bench.job, bench.look.model);
  EXPECT_EQ(names.feature("Plate: right cheek", {"fits", "hole"}).refs.size(), 1U);
}

}  // namespace spotblue::test::name_uses_test
