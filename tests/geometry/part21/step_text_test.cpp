#include "geometry/part21/step_text.hpp"

#include <gmock/gmock.h>

#include "geometry/part21/step_plain.hpp"
#include "geometry/part21/step_token.hpp"
#include "geometry/read/written_step.hpp"
#include "geometry/write/semantic_text.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/read.hpp"
#include "support/thrown.hpp"

namespace spotblue::step_text_test {

using ::testing::ElementsAre;
using ::testing::Optional;

StepText text_of(const std::string& entities, std::string& whole) {
  whole =
      "ISO-10303-21;\nHEADER;\nFILE_SCHEMA /* ( */ ( /* a */ ('X' /* ) */ ) );\nENDSEC;\nDATA;\n" +
      entities + "ENDSEC;\nEND-ISO-10303-21;\n";
  return {whole, "file.step", ReadLimits{}};
}

// ISO 10303-21:2016, 5.6: a comment may stand between any two tokens and is no more than a blank.
TEST(StepText, CommentsBeforeAndBehindValuesAreNoPartOfThem) {
  EXPECT_THAT(split_arguments("/* a, */ 'b' /* ' */ , (#1,#2) /* ) */\n, $/*c*/,/*d*/,1. "),
              ElementsAre("'b'", "(#1,#2)", "$", "", "1."));
  EXPECT_THAT(split_arguments(" /* nothing */ "), ElementsAre());
}

TEST(StepText, ACommentBehindAnEntitysNameHidesNoValue) {
  std::string whole;
  const StepText text = text_of("#1=DIRECTION /* ('x', */ ('y',(0.,0.,1.));\n", whole);
  EXPECT_THAT(text.arguments(text.entities().front()), Optional(ElementsAre("'y'", "(0.,0.,1.)")));
}

TEST(StepText, ACommentInAnEntityOfSeveralKindsHidesNoValue) {
  std::string whole;
  const StepText text =
      text_of("#1=(/* ( B(1) */ A /* ( */ () /* ( */ B /* ('x') */ ( 'y' /* ) */ ) );\n", whole);
  EXPECT_THAT(text.arguments(text.entities().front(), "A"), Optional(ElementsAre()));
  EXPECT_THAT(text.arguments(text.entities().front(), "B"), Optional(ElementsAre("'y'")));
}

TEST(StepText, CommentsInTheHeaderHideNoSchema) {
  std::string whole;
  EXPECT_EQ(text_of("#1=A();\n", whole).schema(), "X");
}

TEST(PlainStep, HasNoCommentsNoTabsAndNoBlanksBeforeSemicolons) {
  EXPECT_EQ(plain_step("/*a*/ #1\n= A('/*'\t,2.\n,#2 /*;*/) /**/ ;\n#2 = B() ;"),
            " #1= A('/*' ,2.\n,#2 );\n#2 = B();");
  EXPECT_EQ(plain_step("#1 = A ( '/*' ,\r\n 2. );\n"), std::nullopt);
  EXPECT_EQ(plain_step(""), std::nullopt);
}

TEST(PlainStep, CodesAQuoteThatWouldEndItsText) {
  EXPECT_EQ(plain_step("A('b'',5.','c'' )','d''''','''e','f''g')"),
            "A('b\\X\\27,5.','c\\X\\27 )','d''''','''e','f''g')");
  EXPECT_EQ(plain_step("A('''',''',')"), "A('''','\\X\\27,')");
}

// Open CASCADE took the text to end at "'',", and what stood behind it for values.
// What stood before the text was taken for what stands behind it.
TEST(PlainStep, LeavesATextThatHasNoEndAsItIs) {
  const std::string_view step = ",#1='a''\n";
  EXPECT_EQ(plain_step(step.substr(1)), std::nullopt);
}

TEST(PlainStep, ATextWithAQuoteAndACommaHidesNoValue) {
  const test::Folder folder;
  std::string step = test::stand_step("MM", "AP214IS");
  const std::string name = "PRODUCT('Bush','Bush'";
  ASSERT_NE(step.find(name), std::string::npos);
  step.replace(step.find(name), name.size(), "PRODUCT('Bush','B'',5.) ush'");
  const Model model =
      read_step(folder.write("quote.step", step), ReadLimits{}, Completeness::all_or_error);
  EXPECT_THAT(model.products, ::testing::Contains(::testing::Field(&Product::name, "B',5.) ush")));
}

// Open CASCADE lost values behind a comment, and entities whose '=' stood on the next line.
TEST(PlainStep, AFileWithACommentBehindEachTokenIsReadAsTheSame) {
  const test::Folder folder;
  const std::string step = test::stand_step("INCH", "AP214IS");
  std::string spaced;
  for (std::size_t at = 0; at < step.size(); at = next_token(step, at)) {
    spaced += step.substr(at, past_token(step, at) - at) + " /* ( ' , ; = */\n";
  }
  const auto read = [&](const char* name, const std::string& text) {
    return read_step(folder.write(name, text), ReadLimits{}, Completeness::all_or_error);
  };
  const Model plain = read("plain.step", step);
  const Model model = read("spaced.step", spaced);
  ASSERT_EQ(model.products.size(), plain.products.size());
  ASSERT_EQ(model.occurrences.size(), plain.occurrences.size());
  EXPECT_EQ(model.file.unit, plain.file.unit);
  EXPECT_EQ(model.file.protocol, plain.file.protocol);
  for (std::size_t i = 0; i < plain.products.size(); ++i) {
    EXPECT_EQ(model.products[i].id, plain.products[i].id);
    EXPECT_EQ(model.products[i].faces, plain.products[i].faces);
    EXPECT_EQ(model.products[i].volume, plain.products[i].volume);
  }
  for (std::size_t i = 0; i < plain.occurrences.size(); ++i) {
    EXPECT_EQ(model.occurrences[i].path, plain.occurrences[i].path);
    EXPECT_EQ(model.occurrences[i].frame.rows, plain.occurrences[i].frame.rows);
  }
}

// Found by tests/fuzz: numbers ran over into negative ones.
TEST(StepText, SizesAreNotAddedWhereNoNumberIsLeftForThem) {
  std::string whole;
  SizeToWrite size;
  size.nominal_mm = 20.0;
  size.tolerance_class = "H7";
  PlacedSize placed;
  placed.size = &size;
  for (const char* entities : {"#2147483645=A();\n", "#2147483647=A();\n"}) {
    const StepText text = text_of(entities, whole);
    const Error error = test::error_of(
        [&] { return with_sizes(whole, text, {placed}, LengthUnit::inch, "file.step"); });
    EXPECT_EQ(error.file(), "file.step");
    EXPECT_EQ(error.place(), "#2147483647");
  }
}

}  // namespace spotblue::step_text_test
