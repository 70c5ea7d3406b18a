// Stated sizes that make no sense, and odd spellings that do.

#include <gmock/gmock.h>

#include "geometry/model/semantic_class.hpp"
#include "geometry/sizes/semantic_files.hpp"

namespace spotblue::semantic_doubt_test {

using test::Folder;

struct ClassCase {
  ClassText text;
  Writer writer;
  const char* tolerance_class;  // empty: doubted
  const char* words;            // in the doubt or the remark; empty: neither
};
void PrintTo(const ClassCase& one, std::ostream* out) {
  *out << one.text.form << ',' << one.text.zone << ',' << one.text.grade;
}
class ClassOfText : public testing::TestWithParam<ClassCase> {};

TEST_P(ClassOfText, IsReadOrDoubtedWithAReason) {
  const ClassReading reading = read_class(GetParam().text, GetParam().writer);
  EXPECT_EQ(reading.tolerance_class, GetParam().tolerance_class);
  EXPECT_EQ(reading.doubt.empty(), *GetParam().tolerance_class != '\0');
  const std::string& said = reading.doubt.empty() ? reading.remark : reading.doubt;
  EXPECT_THAT(said, testing::HasSubstr(GetParam().words));
  EXPECT_EQ(said.empty(), *GetParam().words == '\0');
}

constexpr Writer kOther = Writer::other;
constexpr Writer kFaulty = Writer::open_cascade_with_known_fault;
constexpr Writer kMaybe = Writer::open_cascade_perhaps_at_fault;

// ISO 10303-47, limits_and_fits: form variance, zone variance, grade, source.
INSTANTIATE_TEST_SUITE_P(
    Texts, ClassOfText,
    testing::Values(ClassCase{{"H", "hole", "7", ""}, kOther, "H7", ""},
                    ClassCase{{"js", "shaft", "6", ""}, kOther, "js6", ""},
                    ClassCase{{"H", "", "7", ""}, kOther, "H7", ""},
                    ClassCase{{"H", "hole", "01", ""}, kOther, "H01", ""},
                    ClassCase{{"G6", "hole", "", ""}, kOther, "G6", "only mean G6"},
                    ClassCase{{"G", "hole", "IT6", ""}, kOther, "G6", "only mean G6"},
                    ClassCase{{"G6", "hole", "7", ""}, kOther, "", "two grades"},
                    ClassCase{{"H", "hole", "19", ""}, kOther, "", "no grade"},
                    ClassCase{{"H", "hole", "", ""}, kOther, "", "no grade"},
                    ClassCase{{"H", "hole", "seven", ""}, kOther, "", "no grade"},
                    ClassCase{{"", "hole", "7", ""}, kOther, "", "no letter"},
                    ClassCase{{"H", "shaft", "7", ""}, kOther, "", "class of holes"},
                    ClassCase{{"h", "hole", "7", ""}, kOther, "", "class of shafts"},
                    ClassCase{{"H", "bore", "7", ""}, kOther, "", "neither hole nor shaft"},
                    ClassCase{{"I", "hole", "7", ""}, kOther, "", "I7"},
                    ClassCase{{"H", "hole", "9", ""}, kFaulty, "H7", "two too high"},
                    ClassCase{{"H", "hole", "2", ""}, kFaulty, "H0", "two too high"},
                    ClassCase{{"H", "hole", "20", ""}, kFaulty, "H18", "two too high"},
                    ClassCase{{"H", "hole", "01", ""}, kFaulty, "H01", ""},
                    ClassCase{{"H", "hole", "1", ""}, kFaulty, "", "never writes"},
                    ClassCase{{"H", "hole", "7", "ISO 286-1"}, kFaulty, "H7", ""},
                    ClassCase{{"H", "hole", "9", ""}, kMaybe, "", "cannot be told"}));

TEST(WriterOfFile, IsOpenCascadeByItsHeaderOnly) {
  EXPECT_EQ(writer_of("Open CASCADE STEP processor 6.8"), kMaybe);
  EXPECT_EQ(writer_of("another writer 7.6"), kOther);
  EXPECT_EQ(writer_of(""), kOther);
}

class KnownWriter : public testing::TestWithParam<const char*> {};

TEST_P(KnownWriter, IsAtFaultInEachOfItsReleases) {
  const std::string version = std::string("Open CASCADE STEP processor ") + GetParam();
  EXPECT_EQ(writer_of(version), kFaulty);
  EXPECT_EQ(writer_of(version + ".1"), kFaulty);
}

INSTANTIATE_TEST_SUITE_P(Versions, KnownWriter,
                         testing::Values("7.5", "7.6", "7.7", "7.8", "7.9", "8.0"));

TEST(WriterOfFile, IsInDoubtForVersionsThatNobodyHasLookedAt) {
  for (const char* const version : {"7.4", "7.4.0", "7.50", "7.10", "8.1", "8", "8.", "9.0", ""}) {
    EXPECT_EQ(writer_of(std::string("Open CASCADE STEP processor ") + version), kMaybe) << version;
  }
}

// A plate with one bore of 20 H7, its text changed.
class DoubtfulFile : public testing::Test {
 protected:
  Model changed(const std::string& what, const std::string& by) {
    const auto file = test::write_parts(folder_, {test::plate("Plate", {20.0})}, LengthUnit::mm,
                                        StepProtocol::ap242);
    const auto out = folder_.path() / "out.step";
    const std::vector<SizeToWrite> sizes{{"Plate", "bore 20", 20.0, class_, deviations_}};
    (void)write_semantic_sizes(file, out, sizes, LengthUnit::mm, {});
    std::string text = test::text_of(out);
    const auto at = text.rfind(what);
    EXPECT_NE(at, std::string::npos) << what;
    text.replace(at, what.size(), by);
    return test::read_whole(folder_.write("changed.step", text));
  }

  static void expect_doubt(const Model& model, const std::string& words) {
    ASSERT_EQ(model.semantic_sizes.size(), 1U);
    EXPECT_THAT(model.semantic_sizes[0].doubt, testing::HasSubstr(words));
    EXPECT_FALSE(is_usable(model.semantic_sizes[0]));
    EXPECT_TRUE(test::noted(model, words));
  }

  Folder folder_;
  std::string class_ = "H7";
  std::optional<SizeLimits> deviations_;
};

TEST_F(DoubtfulFile, WithAGradeBeyondTheStandardIsKeptWithANote) {
  expect_doubt(changed("'H','hole','7'", "'H','hole','19'"), "no grade");
}

TEST_F(DoubtfulFile, WithAClassOfShaftsOnAHoleIsKeptWithANote) {
  expect_doubt(changed("'H','hole','7'", "'h','shaft','7'"), "class of shafts");
}

TEST_F(DoubtfulFile, WithASizeTheModelDoesNotHaveIsKeptWithANote) {
  expect_doubt(changed("LENGTH_MEASURE(20.)", "LENGTH_MEASURE(35.)"), "where the model has 20 mm");
}

TEST_F(DoubtfulFile, InAUnitThatIsNoLengthIsKeptWithANote) {
  expect_doubt(changed("SI_UNIT(.MILLI.,.METRE.)", "SI_UNIT(.MILLI.,.SECOND.)"), "unit of length");
}

TEST_F(DoubtfulFile, ForAFaceOfNoPartIsKeptWithANote) {
  expect_doubt(changed("GEOMETRIC_ITEM_SPECIFIC_USAGE(", "OTHER_ITEM_USAGE("), "no face");
}

TEST_F(DoubtfulFile, WithDeviationsUpsideDownIsKeptWithANote) {
  class_ = "";
  deviations_ = {-0.025, -0.009};
  expect_doubt(changed("LENGTH_MEASURE(-0.025)", "LENGTH_MEASURE(0.025)"), "above its upper");
}

TEST_F(DoubtfulFile, WithTwoDifferentSizesForOneFaceLeavesBothInDoubt) {
  const auto file = test::write_parts(folder_, {test::plate("Plate", {20.0, 30.0})}, LengthUnit::mm,
                                      StepProtocol::ap242);
  const auto out = folder_.path() / "out.step";
  const std::vector<SizeToWrite> sizes{{"Plate", "bore 20", 20.0, "H7", {}},
                                       {"Plate", "bore 30", 30.0, "H7", {}}};
  (void)write_semantic_sizes(file, out, sizes, LengthUnit::mm, {});
  // The second size is made one of 20.1, its usage made to point at the first one's face.
  std::string text = test::text_of(out);
  const std::string nominal = "LENGTH_MEASURE(30.)";
  const auto value = text.rfind(nominal);
  ASSERT_NE(value, std::string::npos);
  text.replace(value, nominal.size(), "LENGTH_MEASURE(20.1)");
  const auto face_of = [&](std::size_t usage) {
    const auto end = text.find(");", usage);
    const auto begin = text.rfind('#', end);
    return std::pair{begin, end - begin};
  };
  const auto first = face_of(text.find("GEOMETRIC_ITEM_SPECIFIC_USAGE"));
  const std::string face = text.substr(first.first, first.second);
  const auto second = face_of(text.rfind("GEOMETRIC_ITEM_SPECIFIC_USAGE"));
  text.replace(second.first, second.second, face);
  const Model model = test::read_whole(folder_.write("changed.step", text));
  ASSERT_EQ(model.semantic_sizes.size(), 2U);
  for (const SemanticSize& size : model.semantic_sizes) {
    EXPECT_THAT(size.doubt, testing::HasSubstr("for the same face"));
  }
}

TEST_F(DoubtfulFile, WithEqualDeviationsTheWrongWayRoundIsReadWithANote) {
  class_ = "";
  deviations_ = {-0.25, 0.25};
  // Both values are changed through their sign: the lower becomes +0.25, the upper -0.25.
  const auto file = test::write_parts(folder_, {test::plate("Plate", {20.0})}, LengthUnit::mm,
                                      StepProtocol::ap242);
  const auto out = folder_.path() / "out.step";
  const std::vector<SizeToWrite> sizes{{"Plate", "bore 20", 20.0, "", deviations_}};
  (void)write_semantic_sizes(file, out, sizes, LengthUnit::mm, {});
  std::string text = test::text_of(out);
  text.replace(text.rfind("(0.25)"), 6, "(-0.25)");
  text.replace(text.find("(-0.25)"), 7, "(0.25)");
  const Model model = test::read_whole(folder_.write("changed.step", text));
  ASSERT_EQ(model.semantic_sizes.size(), 1U);
  EXPECT_TRUE(is_usable(model.semantic_sizes[0]));
  EXPECT_NEAR(model.semantic_sizes[0].limits->lower_mm, 19.75, 1e-9);
  EXPECT_TRUE(test::noted(model, "wrong way round"));
}

}  // namespace spotblue::semantic_doubt_test
