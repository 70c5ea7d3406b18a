#include <fmt/format.h>
#include <gmock/gmock.h>

#include <chrono>
#include <regex>

#include "geometry/read/written_step.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/read.hpp"
#include "support/thrown.hpp"

namespace spotblue::bad_input_test {

using test::Folder;
using test::stand_step;
using test::Tower;
using test::tower_lines;
using test::with_lines;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;

const std::string& good() {
  static const std::string text = stand_step("MM", "AP214IS");
  return text;
}

Error refusal_of_file(const std::filesystem::path& file, const ReadLimits& limits = {}) {
  const auto start = std::chrono::steady_clock::now();
  const Error problem =
      test::error_of([&] { return read_step(file, limits, Completeness::all_or_error); });
  const std::chrono::duration<double> seconds = std::chrono::steady_clock::now() - start;
  EXPECT_LT(seconds.count(), 10.0);
  EXPECT_THAT(problem.what(), Not(HasSubstr("\n")));
  EXPECT_EQ(problem.file(), file.string());
  EXPECT_NE(problem.cure(), "");
  return problem;
}

Error refusal_of(const std::string& text, const ReadLimits& limits = {}) {
  const Folder folder;
  return refusal_of_file(folder.write("bad.step", text), limits);
}

// Without the lines that match.
std::string without(const std::string& text, const std::string& pattern, std::size_t most) {
  std::string left;
  std::istringstream lines(text);
  const std::regex wanted(pattern);
  for (std::string line; std::getline(lines, line);) {
    if (most > 0 && std::regex_search(line, wanted)) {
      --most;
    } else {
      left += line + '\n';
    }
  }
  return left;
}

TEST(BadInput, AMissingFileIsAnErrorOfAccess) {
  const Error problem = refusal_of_file("/no/such/file.step");
  EXPECT_EQ(problem.code(), ErrorCode::file_access);
  EXPECT_THAT(problem.rule(), HasSubstr("no such file"));
}

TEST(BadInput, AFolderIsAnErrorOfAccess) {
  const Folder folder;
  const Error problem = refusal_of_file(folder.path());
  EXPECT_EQ(problem.code(), ErrorCode::file_access);
  EXPECT_THAT(problem.rule(), HasSubstr("folder"));
}

TEST(BadInput, AnEmptyFileIsNamedEmpty) { EXPECT_THAT(refusal_of("").rule(), HasSubstr("empty")); }

TEST(BadInput, AFileOverTheLimitIsRefusedUnread) {
  ReadLimits limits;
  limits.file_mb = 0.001;
  EXPECT_THAT(refusal_of(good(), limits).rule(), HasSubstr("limit of 0.001 MB"));
}

TEST(BadInput, ABinaryFileIsNamedBinary) {
  std::string bytes(5000, '\0');
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    bytes[i] = static_cast<char>(i * i * 31);
  }
  EXPECT_THAT(refusal_of(bytes).rule(), HasSubstr("binary"));
}

TEST(BadInput, TextOfAnotherKindIsNoStepFile) {
  EXPECT_THAT(refusal_of("version https\noid sha256\n").rule(), HasSubstr("no STEP file"));
}

TEST(BadInput, ATruncatedFileIsNamedTruncated) {
  for (const double part : {0.1, 0.5, 0.9, 0.999}) {
    SCOPED_TRACE(part);
    const auto length = static_cast<std::size_t>(part * static_cast<double>(good().size()));
    EXPECT_THAT(refusal_of(good().substr(0, length)).rule(), HasSubstr("truncated"));
  }
}

TEST(BadInput, AScopeIsRefusedWithItsLine) {
  const Error problem =
      refusal_of(with_lines(good(),
                            "#900001=&SCOPE\n#900002=DIRECTION('',(0.,0.,1.));\nENDSCOPE "
                            "DIRECTION('',(0.,0.,1.));\n"));
  EXPECT_THAT(problem.rule(), HasSubstr("&SCOPE"));
  EXPECT_THAT(problem.place(), HasSubstr("line "));
}

TEST(BadInput, AMissingEntityIsNamedWithWhoWantsIt) {
  const Error problem = refusal_of(without(good(), "= *CARTESIAN_POINT", 1));
  EXPECT_EQ(problem.code(), ErrorCode::unreadable);
  EXPECT_THAT(problem.rule(), HasSubstr("which is not in the file"));
  EXPECT_THAT(problem.place(), HasSubstr("line "));
}

TEST(BadInput, AllPointsMissingIsRefused) {
  EXPECT_THAT(refusal_of(without(good(), "= *CARTESIAN_POINT", 1'000'000)).rule(),
              HasSubstr("which is not in the file"));
}

TEST(BadInput, AnEntityGivenTwiceIsRefused) {
  EXPECT_THAT(refusal_of(with_lines(good(), "#5=DIRECTION('',(0.,0.,1.));\n")).rule(),
              HasSubstr("#5 is given twice"));
}

TEST(BadInput, AnAssemblyThatContainsItselfIsRefusedByName) {
  const Error problem = refusal_of(with_lines(good(), tower_lines(900001, 3, 1, Tower::closed)));
  EXPECT_THAT(problem.rule(), AllOf(HasSubstr("contains itself"), HasSubstr("'L")));
}

TEST(BadInput, AssembliesNestedTenThousandDeepAreRefused) {
  EXPECT_THAT(refusal_of(with_lines(good(), tower_lines(900001, 10'000, 1, Tower::open))).rule(),
              HasSubstr("deeper than 500"));
}

TEST(BadInput, AnAssemblyDoubledThirtyLevelsDeepIsRefused) {
  EXPECT_THAT(refusal_of(with_lines(good(), tower_lines(900001, 31, 2, Tower::open))).rule(),
              HasSubstr("more than 2000000 occurrences"));
}

TEST(BadInput, BracketsNestedAHundredThousandDeepAreRefused) {
  const std::string many(100'000, '(');
  const std::string close(100'000, ')');
  EXPECT_THAT(
      refusal_of(with_lines(good(), "#900001=DIRECTION('',(" + many + close + "));\n")).rule(),
      HasSubstr("brackets deeper than 500"));
}

TEST(BadInput, AListOfAMillionItemsIsRefused) {
  std::string list = "#900001=CLOSED_SHELL('',(#5";
  for (int i = 0; i < 1'000'000; ++i) {
    list += ",#5";
  }
  EXPECT_THAT(refusal_of(with_lines(good(), list + "));\n")).rule(),
              HasSubstr("list of more than"));
}

TEST(BadInput, ANameOfSeventeenThousandLettersIsRefused) {
  const std::string name(17'000, 'a');
  EXPECT_THAT(refusal_of(with_lines(good(), "#900001=PRODUCT('" + name + "','','',());\n")).rule(),
              HasSubstr("longer than 16 KB"));
}

TEST(BadInput, AStrayByteIsNamedWithItsLine) {
  std::string text = good();
  text[text.find("CARTESIAN_POINT") - 2] = '\x01';
  const Error problem = refusal_of(text);
  EXPECT_THAT(problem.what(), HasSubstr("line "));
}

TEST(BadInput, AFileOfSurfacesOnlySaysSo) {
  std::string text =
      std::regex_replace(good(), std::regex("MANIFOLD_SOLID_BREP\\('[^']*',(#\\d+)\\)"),
                         "SHELL_BASED_SURFACE_MODEL('',($1))");
  EXPECT_THAT(refusal_of(text).rule(), AllOf(HasSubstr("no solid"), HasSubstr("surfaces only")));
}

TEST(BadInput, AFileOfNothingSaysSo) {
  EXPECT_THAT(refusal_of("ISO-10303-21;\nHEADER;\nENDSEC;\nDATA;\n#1=DIRECTION('',(0.,0.,1.));\n"
                         "ENDSEC;\nEND-ISO-10303-21;\n")
                  .rule(),
              AllOf(HasSubstr("no solid"), HasSubstr("no shapes at all")));
}

TEST(BadInput, ATooShortTimeIsAnErrorThatSaysSo) {
  ReadLimits limits;
  limits.seconds = 0.001;
  EXPECT_THAT(refusal_of(good(), limits).rule(), HasSubstr("took longer than 0.001 s"));
}

// A solid whose representation no product names any more.
std::string with_a_lost_solid() {
  return std::regex_replace(
      good(), std::regex("(ADVANCED_BREP_SHAPE_REPRESENTATION\\('[^']*',\\(#\\d+),#\\d+"), "$1",
      std::regex_constants::format_first_only);
}

TEST(BadInput, ASolidThatDoesNotArriveIsNamed) {
  const Error problem = refusal_of(with_a_lost_solid());
  EXPECT_EQ(problem.code(), ErrorCode::incomplete);
  EXPECT_THAT(problem.rule(), HasSubstr("solid #"));
}

TEST(BadInput, WhatDoesNotArriveIsNotedWhenAPartialModelIsAccepted) {
  const Folder folder;
  const Model model =
      read_step(folder.write("part.step", with_a_lost_solid()), {}, Completeness::accept_partial);
  EXPECT_FALSE(model.products.empty());
  ASSERT_FALSE(model.notes.empty());
  EXPECT_THAT(model.notes.front().about, HasSubstr("solid #"));
  ASSERT_EQ(model.not_compared.size(), 1U);
  EXPECT_EQ(model.not_compared.front().text, model.notes.front().text);
}

TEST(BadInput, NoFolderOfShapesIsLeftBehind) {
  const auto folders = [] {
    int found = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::filesystem::temp_directory_path())) {
      found += entry.path().filename().string().starts_with(fmt::format("spotblue-{}-", getpid()));
    }
    return found;
  };
  const int before = folders();
  (void)refusal_of(with_a_lost_solid());
  EXPECT_EQ(folders(), before);
}

// The bore's radius, 10, written as something else.
struct OddNumber {
  const char* written;
  const char* told;
};

// Of the first cylinder of 10.
std::string with_radius(const std::string& written) {
  std::smatch found;
  EXPECT_TRUE(
      std::regex_search(good(), found, std::regex(R"(CYLINDRICAL_SURFACE\('',#\d+,10\.\))")));
  const std::string surface = found.str();
  return found.prefix().str() + surface.substr(0, surface.rfind(',') + 1) + written + ")" +
         found.suffix().str();
}

class NumbersThatAreNone : public ::testing::TestWithParam<OddNumber> {};

TEST_P(NumbersThatAreNone, AreRefusedByEntity) {
  const auto [written, told] = GetParam();
  const Error problem = refusal_of(with_radius(written));
  EXPECT_EQ(problem.code(), ErrorCode::unreadable);
  EXPECT_THAT(std::string(problem.what()), HasSubstr("#"));
  EXPECT_THAT(problem.rule(), HasSubstr(told));
}

INSTANTIATE_TEST_SUITE_P(
    Of, NumbersThatAreNone,
    ::testing::Values(
        OddNumber{"'10.01'", "its radius is no number"}, OddNumber{"$", "its radius is no number"},
        OddNumber{"nan", "is no value"}, OddNumber{"INF", "is no value"},
        OddNumber{"1E400", "no finite number"}, OddNumber{"0x10", "is no number"},
        OddNumber{"5.5.5", "is no number"}, OddNumber{"1-5", "is no number"},
        OddNumber{"1 5", "a comma is missing"}, OddNumber{"1,5", "more or fewer values"},
        OddNumber{"", "a value is missing before ')'"},
        OddNumber{"1.,", "a value is missing before ')'"},
        OddNumber{",1.", "a value is missing before ','"}, OddNumber{"10.E", "is no number"},
        OddNumber{".T.", "its radius is no number"}, OddNumber{"#1", "its radius is no number"},
        OddNumber{"--1.", "is no number"}, OddNumber{"1.0e1", "is no number"},
        OddNumber{"1E+01", "its radius is no number"},
        OddNumber{"(10.)", "its radius is no number"}));

TEST(BadInput, AnAcceptedPartialModelTellsOfEachEntityThatCouldNotBeRead) {
  const Folder folder;
  const Model model = read_step(folder.write("odd.step", with_radius("'10.01'")), ReadLimits{},
                                Completeness::accept_partial);
  EXPECT_THAT(model.notes, ::testing::Contains(::testing::Field(
                               &Note::text, HasSubstr("its radius is no number"))));
}

// Which of them the entity is of is not looked for.
TEST(BadInput, NoPartOfAPartialModelWithAnUnreadEntityIsSound) {
  const Folder folder;
  const Model model = read_step(folder.write("odd.step", with_radius("'10.01'")), ReadLimits{},
                                Completeness::accept_partial);
  ASSERT_FALSE(model.products.empty());
  for (const Product& product : model.products) {
    EXPECT_NE(product.unsound, "") << product.id;
  }
}

TEST(BadInput, NumbersAsManyProgramsWriteThemAreTaken) {
  const Folder folder;
  for (const char* written : {"10", "+10.", "1.E1", "0.1E+2"}) {
    EXPECT_NO_THROW((void)read_step(folder.write("good.step", with_radius(written)), ReadLimits{},
                                    Completeness::all_or_error))
        << written;
  }
}

// The good file with one entity's text replaced by another.
std::string with_entity(const std::string& pattern, const std::string& written) {
  std::smatch found;
  EXPECT_TRUE(std::regex_search(good(), found, std::regex(pattern))) << pattern;
  return found.prefix().str() + written + found.suffix().str();
}

struct OddAxis {
  const char* pattern;
  const char* written;
  const char* told;
};

class AxesThatPointNowhere : public ::testing::TestWithParam<OddAxis> {};

TEST_P(AxesThatPointNowhere, AreRefusedByEntity) {
  const auto [pattern, written, told] = GetParam();
  const Error problem = refusal_of(with_entity(pattern, written));
  EXPECT_EQ(problem.code(), ErrorCode::unreadable);
  EXPECT_THAT(problem.place(), HasSubstr("#"));
  EXPECT_THAT(problem.rule(), HasSubstr(told));
}

INSTANTIATE_TEST_SUITE_P(
    Of, AxesThatPointNowhere,
    ::testing::Values(OddAxis{R"(DIRECTION\('',\(0\.,0\.,1\.\)\))", "DIRECTION('',(0.,0.,0.))",
                              "points nowhere"},
                      OddAxis{R"(DIRECTION\('',\(0\.,0\.,1\.\)\))", "DIRECTION('',(0.,0.,1.,0.))",
                              "none of three numbers"},
                      OddAxis{R"(DIRECTION\('',\(0\.,0\.,1\.\)\))", "DIRECTION('',(1.,0.,0.))",
                              "lie in one line"},
                      OddAxis{R"(DIRECTION\('',\(0\.,0\.,1\.\)\))",
                              "CARTESIAN_POINT('',(0.,0.,1.))", "none of three numbers"},
                      OddAxis{R"(CARTESIAN_POINT\('',\(0\.,0\.,0\.\)\))",
                              "CARTESIAN_POINT('',(0.,0.))", "no point of three numbers"}));

}  // namespace spotblue::bad_input_test
