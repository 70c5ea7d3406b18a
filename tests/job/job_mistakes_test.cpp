// Every mistake a person can write into a job file is refused with its line, the rule and a cure.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <ostream>

#include "job/job_text.hpp"
#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::job_mistakes_test {

using ::testing::HasSubstr;
using ::testing::StartsWith;

struct Mistake {
  const char* name;
  const char* text;   // after a good head of three lines
  const char* place;  // how the place begins
  const char* rule;   // part of the rule
  const char* cure;   // part of the cure
};

void PrintTo(const Mistake& mistake, std::ostream* out) { *out << mistake.name; }

class JobMistake : public ::testing::TestWithParam<Mistake> {};

TEST_P(JobMistake, IsRefusedWithLineKeyAndCure) {
  const std::string head = "schema = 1\nmodel = \"m.step\"\nunit = \"mm\"\n";
  const Error problem = test::error_of([&] { return test::job_of(head + GetParam().text); });
  EXPECT_EQ(problem.code(), ErrorCode::bad_input);
  EXPECT_THAT(problem.file(), HasSubstr("job.toml"));
  EXPECT_THAT(problem.place(), StartsWith(GetParam().place));
  EXPECT_THAT(problem.rule(), HasSubstr(GetParam().rule));
  EXPECT_THAT(problem.cure(), HasSubstr(GetParam().cure));
}

const Mistake kMistakes[] = {
    {"UnknownTopKey", "titel = \"x\"\n", "line 4, titel", "unknown key", "title"},
    {"UnknownPartKey", "[[parts]]\npart = \"A\"\nmatrial = \"iron\"\n", "line 6, parts 1, matrial",
     "unknown key", "material"},
    {"UnknownSetting", "[settings]\nradial_gap = 1\n", "line 5, settings, radial_gap",
     "unknown key", "radial_gap_mm"},
    {"NotToml", "[[parts]\n", "line 4", "not TOML", ""},
    {"PartTwice", "[[parts]]\npart = \"A\"\n[[parts]]\npart = \"A\"\n", "line 7, parts 2, part",
     "\"A\" is already given in line 4", "keep one"},
    {"UnknownState", "[[parts]]\npart = \"A\"\nstate = \"to mak\"\n", "line 6, parts 1, state",
     "none of \"as found\", \"to make\"", "did you mean \"to make\""},
    {"IrreplaceableToMake", "[[parts]]\npart = \"A\"\nstate = \"to make\"\nirreplaceable = true\n",
     "line 7", "not irreplaceable", "drop one"},
    {"PlateWithDiameter",
     "[[parts]]\npart = \"A\"\nstock = {form = \"plate\", thickness = 3, diameter = 4}\n",
     "line 6, parts 1, stock, diameter", "unknown key", ""},
    {"TubeInsideOut",
     "[[parts]]\npart = \"A\"\nstock = {form = \"tube\", diameter = 3, inner_diameter = 4}\n",
     "line 6, parts 1, stock, inner_diameter", "bore is smaller", "swap"},
    {"NoFeatureName", "[[fits]]\nhole = \"A\"\nshaft = \"B: outside 5\"\nclass = \"H7/h6\"\n",
     "line 5, fits 1, hole", "\"A\" is no feature name", "Wheel: bore"},
    {"HoleClassOnly", "[[fits]]\nhole = \"A: bore 5\"\nshaft = \"B: outside 5\"\nclass = \"H7\"\n",
     "line 7, fits 1, class", "\"H7\" is no fit", "H7/s6"},
    {"NoRule", "[[fits]]\nhole = \"A: bore 5\"\nshaft = \"B: outside 5\"\n", "line 4, fits 1",
     "lacks what it is about", "exactly one of class"},
    {"TwoRules",
     "[[fits]]\nhole = \"A: bore 5\"\nshaft = \"B: outside 5\"\nclass = \"H7/h6\"\n"
     "clearance = [0, 1]\n",
     "line 8, fits 1, clearance", "class and clearance contradict", "exactly one"},
    {"ReversedClearance",
     "[[fits]]\nhole = \"A: bore 5\"\nshaft = \"B: outside 5\"\nclearance = [0.2, 0.1]\n",
     "line 7, fits 1, clearance", "reversed: 0.2 is more than 0.1", "lesser one first"},
    {"PerDiameterIsALength",
     "[[fits]]\nhole = \"A: bore 5\"\nshaft = \"B: outside 5\"\n"
     "interference_per_diameter = \"0.001 in\"\ntolerance = 0.01\n",
     "line 7", "no length per length", "0.001 in/in"},
    {"PerDiameterTooMuch",
     "[[fits]]\nhole = \"A: bore 5\"\nshaft = \"B: outside 5\"\n"
     "interference_per_diameter = 0.04\ntolerance = 0.01\n",
     "line 7", "need 0 to 0.02, got 0.04", "one unit of diameter"},
    {"PerDiameterWithoutTolerance",
     "[[fits]]\nhole = \"A: bore 5\"\nshaft = \"B: outside 5\"\nclearance_per_diameter = 0.001\n",
     "line 4, fits 1, tolerance", "missing", "tolerance ="},
    {"FitTwice",
     "[[fits]]\nhole = \"A: bore 5\"\nshaft = \"B: outside 5\"\nclass = \"H7/h6\"\n"
     "[[fits]]\nhole = \"A: bore 5\"\nshaft = \"B: outside 5\"\nclass = \"H7/g6\"\n",
     "line 9, fits 2, hole", "already given in line 4", "keep one"},
    {"MeasuredNotALength", "[[measured]]\nfeature = \"A: bore 5\"\nsize = \"big\"\n", "line 6",
     "\"big\" is not a length", "1 5/16"},
    {"MeasuredNegative", "[[measured]]\nfeature = \"A: bore 5\"\nsize = -5\n", "line 6",
     "more than 0, got -5", ""},
    {"NegativeUncertainty", "[[measured]]\nfeature = \"A: bore 5\"\nsize = 5\nuncertainty = -0.1\n",
     "line 7", "0 or more, got -0.1", "leave out the minus"},
    {"MeasuredWithoutSubject", "[[measured]]\nsize = 5\n", "line 4, measured 1",
     "lacks what it is about", "exactly one of feature, between"},
    {"WantOfOne", "[[wants]]\nbetween = [\"A\"]\ngap = [0, 1]\n", "line 5, wants 1, between",
     "need two names, got 1", "between = "},
    {"WantWithItself", "[[wants]]\nbetween = [\"A\", \"A\"]\ngap = [0, 1]\n", "line 5",
     "on both sides", "look at each other"},
    {"WantOverlap", "[[wants]]\nbetween = [\"A\", \"B\"]\ngap = [-1, 1]\n", "line 6",
     "not less than 0", "[[allow]]"},
    {"WantTwiceInTheOtherOrder",
     "[[wants]]\nbetween = [\"A\", \"B\"]\ngap = [0, 1]\n"
     "[[wants]]\nbetween = [\"B\", \"A\"]\ngap = [0, 1]\n",
     "line 8", "already given in line 4", "keep one"},
    {"TouchWithGap", "[[wants]]\nkind = \"touch\"\nbetween = [\"A\", \"B\"]\ngap = [0, 1]\n",
     "line 4, wants 1, within", "missing", "within ="},
    {"AllowWithoutReason", "[[allow]]\nparts = [\"A\", \"B\"]\ndepth = 1\n",
     "line 4, allow 1, reason", "missing", "reason ="},
    {"UnknownMaterial", "[[parts]]\npart = \"A\"\nmaterial = \"grey irn\"\n",
     "line 6, parts 1, material", "no known material", "grey iron"},
    {"PoissonOutOfRange",
     "[[materials]]\nname = \"x\"\nyoungs_modulus_gpa = 200\npoisson_ratio = 0.7\n"
     "expansion_um_per_m_k = 11\n",
     "line 7", "to 0.4999, got 0.7", "its unit"},
    {"FrictionReversed", "[conditions]\nfriction_least = 0.3\n",
     "line 5, conditions, friction_least", "0.3 is more than 0.2", "give both"},
    {"UnknownGeneralTolerance", "[conditions]\nuntoleranced = \"x\"\n",
     "line 5, conditions, untoleranced", "none of \"f\", \"m\", \"c\", \"v\"", "did you mean"},
    {"HotterThanMetal", "[conditions]\nrunning_c = 900\n", "line 5, conditions, running_c",
     "need -200 to 600, got 900", "its unit"},
    {"TurningBackwards", "[[turning]]\npart = \"A\"\nrpm = -5\nduty = \"continuous\"\n",
     "line 6, turning 1, rpm", "got -5", "its unit"},
    {"UnknownDuty", "[[turning]]\npart = \"A\"\nrpm = 5\nduty = \"continous\"\n",
     "line 7, turning 1, duty", "none of", "did you mean \"continuous\""},
    {"WayPastNoFace", "[[turning]]\npart = \"A\"\nrpm = 5\nduty = \"continuous\"\nout = 3\n",
     "line 8, turning 1, out", "none is named", "name the face"},
    {"UnknownSharing",
     "[[turning]]\npart = \"A\"\nrpm = 5\nduty = \"continuous\"\nshared = \"evenli\"\n",
     "line 8, turning 1, shared", "none of", "did you mean \"evenly\""},
    {"KeepOffByNothing", "[[keep_off]]\nparts = [\"A\", \"B\"]\nleast = 0\nreason = \"x\"\n",
     "line 6, keep_off 1, least", "more than 0, got 0", ""},
    {"StockForAPartThatHasItsOwn",
     "[[parts]]\npart = \"A\"\nstate = \"to make\"\n"
     "stock = { form = \"bar\", diameter = 10 }\n"
     "[[stock]]\nform = \"bar\"\ndiameter = 10\nparts = [\"A\"]\n",
     "line 11, stock 1, parts", "\"A\" has stock of its own", "keep stock"},
    {"SqueezeWithoutThickness", "[[parts]]\npart = \"A\"\nsqueeze = [0.1, 0.2]\n",
     "line 6, parts 1, squeeze", "not than what", "thickness"},
    {"SqueezedToNothing", "[[parts]]\npart = \"A\"\nthickness = 0.2\nsqueeze = [0.1, 0.2]\n",
     "line 7, parts 1, squeeze", "nothing of the part", "more than the squeeze"},
    {"ThreadOfNoTable",
     "[[threads]]\nhole = \"A: bore 19\"\nscrew = \"B: outside 20\"\nsize = \"M20x1.1\"\n",
     "line 7, threads 1, size", "\"M20x1.1\" is in no table", "M20x1"},
    {"ThreadEnoughForNoReason",
     "[[threads]]\nhole = \"A: bore 19\"\nscrew = \"B: outside 20\"\nsize = \"M20x1\"\n"
     "engaged = 5\n",
     "line 4, threads 1, reason", "missing", ""},
    {"LengthOverTwoParts", "[[lengths]]\nbetween = [\"A: face 5\", \"B: face 5\"]\nmeasured = 4\n",
     "line 5, lengths 1, between", "\"A\" and \"B\" are two parts", "[[measured]]"},
    {"LengthWithoutRule", "[[lengths]]\nbetween = [\"A: face 5\", \"A: face 6\"]\n",
     "line 4, lengths 1", "lacks what it is about", "exactly one of measured, limits"},
    {"EndPlayThatTouches", "[[wants]]\nof = \"A\"\nkind = \"touch\"\nwithin = 1\n",
     "line 6, wants 1, kind", "between two faces", "between ="},
    {"WantOfNothing", "[[wants]]\ngap = [0, 1]\n", "line 4, wants 1", "lacks what it is about",
     "exactly one of between, of"},
    {"OneGear", "[[meshes]]\nmodule = 2\ngears = [{part = \"A\", teeth = 20}]\n",
     "line 6, meshes 1, gears", "need two gears, got 1", "[[meshes.gears]]"},
    {"ModuleAndPitch",
     "[[meshes]]\nmodule = 2\ndiametral_pitch = 8\n"
     "gears = [{part = \"A\", teeth = 20}, {part = \"B\", teeth = 20}]\n",
     "line 6, meshes 1, diametral_pitch", "contradict", "exactly one"},
    {"TwoTeeth",
     "[[meshes]]\nmodule = 2\n"
     "gears = [{part = \"A\", teeth = 2}, {part = \"B\", teeth = 20}]\n",
     "line 6, meshes 1, gears 1, teeth", "need 5 or more, got 2", "number of teeth"},
};

INSTANTIATE_TEST_SUITE_P(Job, JobMistake, ::testing::ValuesIn(kMistakes),
                         [](const auto& entry) { return std::string(entry.param.name); });

// What stands before the zero byte may well be a file.
TEST(JobFile, RefusesAZeroByteInTheNameOfItsModel) {
  for (const char* name : {R"("m.step\u0000x")", R"('m.step\x00x')"}) {
    const Error problem = test::error_of([&] {
      return test::job_of(std::string("schema = 1\nmodel = ") + name + "\nunit = \"mm\"\n");
    });
    EXPECT_THAT(problem.place(), StartsWith("line 2, model"));
    EXPECT_THAT(problem.rule(), HasSubstr("zero byte"));
  }
}

TEST(JobFile, RefusesAnotherSchema) {
  const Error problem = test::error_of([&] { return test::job_of("schema = 2\n"); });
  EXPECT_EQ(problem.place(), "line 1, schema");
  EXPECT_THAT(problem.rule(), HasSubstr("schema 2 is not known"));
}

TEST(JobFile, NamesTheKeyThatWasMeantToSayWhatAFitIs) {
  const Error problem = test::error_of([&] {
    return test::job_of(
        "schema = 1\nmodel = \"m\"\nunit = \"mm\"\n[[fits]]\nhole = \"A: bore 3\"\n"
        "shaft = \"B: outside 3\"\nclas = \"H7/f7\"\n");
  });
  EXPECT_THAT(problem.cure(), HasSubstr("correct \"clas\""));
}

TEST(JobFile, KnowsAMockupForWhatItIs) {
  const Error problem =
      test::error_of([&] { return test::job_of("title = \"x\"\n[[part]]\nname = \"A\"\n"); });
  EXPECT_THAT(problem.rule(), HasSubstr("is a mock-up"));
}

TEST(JobFile, SaysOnWhichLineALetterIsNoUtf8) {
  for (const std::string& text : {std::string("schema = 1\ntitle = \"Welle \xFC\"\n"),
                                  std::string("schema = 1\nt\0i\0", 15)}) {
    const Error problem = test::error_of([&] { return test::job_of(text); });
    EXPECT_EQ(problem.place(), "line 2");
    EXPECT_THAT(problem.cure(), HasSubstr("UTF-8"));
  }
}

TEST(JobFile, RefusesAnUnknownUnit) {
  EXPECT_THROW((void)test::job_of("schema = 1\nmodel = \"m\"\nunit = \"cm\"\n"), Error);
}

}  // namespace spotblue::job_mistakes_test
