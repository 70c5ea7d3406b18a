#include <gmock/gmock.h>

#include <regex>

#include "geometry/read/written_step.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/read.hpp"
#include "support/thrown.hpp"

// What a file says of places, names, units and shapes, and can not mean.
namespace spotblue::contradictions_test {

using test::Folder;
using test::with_lines;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::Each;
using ::testing::Field;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

const std::string& stand() {
  static const std::string text = test::stand_step("MM", "AP214IS");
  return text;
}

// The stand with the first match of a pattern written otherwise ("$1" stands for its first group).
std::string stand_with(const std::string& pattern, const std::string& written) {
  const std::regex wanted(pattern);
  EXPECT_TRUE(std::regex_search(stand(), wanted)) << pattern;
  return std::regex_replace(stand(), wanted, written, std::regex_constants::format_first_only);
}

// What a pattern's first group matches.
std::string found(const std::string& pattern) {
  std::smatch match;
  EXPECT_TRUE(std::regex_search(stand(), match, std::regex(pattern))) << pattern;
  return match.size() > 1 ? match[1].str() : std::string();
}

Error refusal(const std::string& text) {
  const Folder folder;
  const auto file = folder.write("odd.step", text);
  const Error problem =
      test::error_of([&] { return read_step(file, {}, Completeness::all_or_error); });
  EXPECT_NE(problem.cure(), "");
  return problem;
}

Model partial(const std::string& text) {
  const Folder folder;
  return read_step(folder.write("odd.step", text), {}, Completeness::accept_partial);
}

Model whole(const std::string& text) {
  const Folder folder;
  return read_step(folder.write("odd.step", text), {}, Completeness::all_or_error);
}

struct OddText {
  const char* pattern;
  const char* written;
  const char* told;
};
void PrintTo(const OddText& one, std::ostream* out) { *out << one.written; }

class WhatNoPlaceIs : public ::testing::TestWithParam<OddText> {};

TEST_P(WhatNoPlaceIs, IsRefusedByComponent) {
  const Error problem = refusal(stand_with(GetParam().pattern, GetParam().written));
  EXPECT_EQ(problem.code(), ErrorCode::unreadable);
  EXPECT_THAT(problem.place(), AllOf(HasSubstr("component '"), HasSubstr("#")));
  EXPECT_THAT(problem.rule(), HasSubstr(GetParam().told));
}

constexpr const char* kPair = R"(ITEM_DEFINED_TRANSFORMATION\('','',(#\d+),(#\d+)\))";
INSTANTIATE_TEST_SUITE_P(
    Of, WhatNoPlaceIs,
    ::testing::Values(
        OddText{kPair, "ITEM_DEFINED_TRANSFORMATION('','',$1,#5)", "not both axis placements"},
        OddText{kPair, "ITEM_DEFINED_TRANSFORMATION('','',#5,$2)", "not both axis placements"},
        OddText{kPair, "CARTESIAN_TRANSFORMATION_OPERATOR_3D('','',$$,$$,#12,2.,$$)",
                "no pair of axis placements"}));

TEST(Contradictions, APlaceThatCanNotBeReadLeavesNoPartOfAPartialModelSound) {
  const Model model = partial(stand_with(kPair, "ITEM_DEFINED_TRANSFORMATION('','',$1,#5)"));
  EXPECT_THAT(model.notes, Contains(Field(&Note::text, HasSubstr("not both axis placements"))));
  EXPECT_THAT(model.products, Each(Field(&Product::unsound, Not(IsEmpty()))));
}

TEST(Contradictions, AUsageThatIsPlacedTwiceIsRefused) {
  const std::string placing = found(R"((CONTEXT_DEPENDENT_SHAPE_REPRESENTATION\(#\d+,#\d+\)))");
  EXPECT_THAT(refusal(with_lines(stand(), "#900001=" + placing + ";\n")).rule(),
              HasSubstr("placed more than once"));
}

TEST(Contradictions, AUsageOfOnePartThatPlacesTheShapeOfAnotherIsRefused) {
  const std::string bush = found(R"(NEXT_ASSEMBLY_USAGE_OCCURRENCE\('\d+','Bush','',#\d+,(#\d+),)");
  const Error problem = refusal(stand_with(
      R"((NEXT_ASSEMBLY_USAGE_OCCURRENCE\('\d+','Pin','',#\d+,)#\d+,)", "$1" + bush + ","));
  EXPECT_THAT(problem.rule(), HasSubstr("the shape of product 'Pin'"));
}

TEST(Contradictions, ACopyWithNoPlaceIsRefused) {
  const std::size_t last = stand().rfind(" = ADVANCED_BREP_SHAPE_REPRESENTATION");
  ASSERT_NE(last, std::string::npos);
  const std::size_t number = stand().rfind('#', last);
  const std::string copied = stand().substr(number, last - number);
  const std::string text = with_lines(
      stand_with(R"((ADVANCED_BREP_SHAPE_REPRESENTATION\('[^']*',\(#\d+,#\d+))", "$1,#900001"),
      "#900001=MAPPED_ITEM('',#900002,#5);\n#900002=REPRESENTATION_MAP(#11," + copied + ");\n");
  EXPECT_THAT(refusal(text).what(), AllOf(HasSubstr("#900001"), HasSubstr("no axis placement")));
}

class UnknownKinds : public ::testing::TestWithParam<OddText> {};

TEST_P(UnknownKinds, AreRefusedByEntity) {
  const Error problem = refusal(stand_with(GetParam().pattern, GetParam().written));
  EXPECT_EQ(problem.code(), ErrorCode::unreadable);
  EXPECT_THAT(problem.place(), AllOf(HasSubstr("#"), HasSubstr(GetParam().told)));
  EXPECT_THAT(problem.rule(), HasSubstr("no such kind of entity is known"));
}

INSTANTIATE_TEST_SUITE_P(
    Of, UnknownKinds,
    ::testing::Values(
        OddText{"NEXT_ASSEMBLY_USAGE_OCCURRENCE", "NEXT_ASEMBLY_USAGE", "NEXT_ASEMBLY_USAGE"},
        OddText{"MANIFOLD_SOLID_BREP", "MANIFOLD_SOLID_BRP", "MANIFOLD_SOLID_BRP"},
        OddText{R"(MANIFOLD_SOLID_BREP\('[^']*',#\d+\))", "EXTERNALLY_DEFINED_SOLID('')",
                "EXTERNALLY_DEFINED_SOLID"},
        OddText{"SHAPE_DEFINITION_REPRESENTATION", "SHAPE_DEF_REP", "SHAPE_DEF_REP"},
        OddText{R"(PRODUCT\('Bush')", "PRODUKT('Bush'", "PRODUKT"},
        OddText{"PRODUCT_DEFINITION_SHAPE", "PRODUCT_DEFINITON_SHAPE", "PRODUCT_DEFINITON_SHAPE"},
        OddText{"CONTEXT_DEPENDENT_SHAPE_REPRESENTATION", "CONTEXT_SHAPE", "CONTEXT_SHAPE"},
        OddText{"CYLINDRICAL_SURFACE", "CYLINDRICAL_SURFCE", "CYLINDRICAL_SURFCE"}));

TEST(Contradictions, AKindThatIsNotKnownAndTiesNothingIsLeft) {
  EXPECT_THAT(whole(with_lines(stand(), "#900001=FROBNICATE('',#5);\n")).products.size(), 4U);
}

TEST(Contradictions, AUsageThatIsNoneAndThatNothingPlacesIsRefused) {
  const std::string bush = found(R"(NEXT_ASSEMBLY_USAGE_OCCURRENCE\('\d+','Bush','',#\d+,(#\d+),)");
  EXPECT_THAT(refusal(with_lines(stand(), "#900001=USAGE('','','',#5," + bush + ",$);\n")).rule(),
              HasSubstr("which part is in which assembly"));
}

TEST(Contradictions, AProductWhoseShapeIsNotGivenIsRefused) {
  EXPECT_THAT(
      refusal(stand_with(R"((SHAPE_DEFINITION_REPRESENTATION\(#\d+),#\d+\))", "$1,$$)")).what(),
      HasSubstr("SHAPE_DEFINITION_REPRESENTATION"));
}

// Open CASCADE takes it for the z axis.
TEST(Contradictions, ADirectionTooLongToBeWorkedOutIsRefusedByEntity) {
  for (const char* ends : {"0.,1.E200,0.", "0.,1.E152,1.E154", "0.,-1.E101,0."}) {
    const Error problem = refusal(
        stand_with(R"(DIRECTION\('',\([^)]*\)\))", std::string("DIRECTION('',(") + ends + "))"));
    EXPECT_THAT(problem.place(), HasSubstr("DIRECTION")) << ends;
    EXPECT_THAT(problem.rule(), HasSubstr("so long that it points nowhere")) << ends;
  }
}

TEST(Contradictions, ADirectionOfAnyOtherLengthIsTaken) {
  EXPECT_NO_THROW(
      (void)whole(stand_with(R"(DIRECTION\('',\(0\.,0\.,1\.\)\))", "DIRECTION('',(0.,0.,1.E9))")));
}

TEST(Contradictions, AProductOfOneValueTooFewOrTooManyIsRefusedByEntity) {
  for (const char* written : {"PRODUCT('Bush','Bush',($1))", "PRODUCT('Bush','Bush','',($1),$$)"}) {
    const Error problem =
        refusal(stand_with(R"(PRODUCT\('Bush','Bush','[^']*',\(([^)]*)\)\))", written));
    EXPECT_THAT(problem.place(), HasSubstr("PRODUCT")) << written;
    EXPECT_THAT(problem.rule(), HasSubstr("more or fewer values than it must")) << written;
  }
}

TEST(Contradictions, APlacingOfThreeValuesIsRefusedByEntity) {
  const Error problem =
      refusal(stand_with(R"((CONTEXT_DEPENDENT_SHAPE_REPRESENTATION\(#\d+,#\d+)\))", "$1,$$)"));
  EXPECT_THAT(problem.place(), HasSubstr("CONTEXT_DEPENDENT_SHAPE_REPRESENTATION"));
  EXPECT_THAT(problem.rule(), HasSubstr("more or fewer values than it must"));
}

TEST(Contradictions, ASolidThatArrivesInAnAssemblyButIsOfNoProductIsToldOf) {
  const std::string solid_of = found(R"(#(\d+) = ADVANCED_BREP_SHAPE_REPRESENTATION)");
  const Error problem =
      refusal(stand_with(R"(SHAPE_DEFINITION_REPRESENTATION(\(#\d+,#)" + solid_of + R"(\)))",
                         "PROPERTY_DEFINITION_REPRESENTATION$1"));
  EXPECT_EQ(problem.code(), ErrorCode::incomplete);
  EXPECT_THAT(problem.rule(), HasSubstr("belongs to no product"));
}

TEST(Contradictions, ASolidOfAKindThatIsNotReadIsRefusedByEntity) {
  const Error problem = refusal(
      stand_with(R"(MANIFOLD_SOLID_BREP\('[^']*',(#\d+)\))", "EXTRUDED_AREA_SOLID('',$1,#13,50.)"));
  EXPECT_EQ(problem.code(), ErrorCode::incomplete);
  EXPECT_THAT(problem.what(), AllOf(HasSubstr("#"), HasSubstr("EXTRUDED_AREA_SOLID")));
}

// The stand whose first part that is one solid is drawn by something else.
std::string stand_drawn_by(const std::string& item, const std::string& lines) {
  return with_lines(stand_with(R"(MANIFOLD_SOLID_BREP\('[^']*',#\d+\))", item), lines);
}

TEST(Contradictions, APartOfCurvesOnlyIsSetAgainstNothingAndToldOf) {
  const std::string circle = found(R"((#\d+) = CIRCLE\()");
  const Model model = whole(stand_drawn_by("GEOMETRIC_CURVE_SET('',(" + circle + "))", ""));
  EXPECT_THAT(model.not_compared,
              Contains(Field(&Note::text, HasSubstr("it has no solid, curves only"))));
  EXPECT_THAT(model.notes, Contains(Field(&Note::text, HasSubstr("curves only"))));
}

TEST(Contradictions, APartOfTrianglesOnlyIsSetAgainstNothingAndToldOf) {
  const Model model =
      whole(stand_drawn_by("TESSELLATED_SOLID('',(#900001),$)",
                           "#900001=TRIANGULATED_FACE('',#900002,3,((0.,0.,1.)),$,(),((1,2,3)));\n"
                           "#900002=COORDINATES_LIST('',3,((0.,0.,0.),(1.,0.,0.),(0.,1.,0.)));\n"));
  EXPECT_THAT(model.not_compared,
              Contains(Field(&Note::text, HasSubstr("it has no solid, triangles only"))));
}

// Both products are told of, though neither owns the shape.
TEST(Contradictions, TwoPartsOfOneShapeOfCurvesAreBothToldOf) {
  const std::string circle = found(R"((#\d+) = CIRCLE\()");
  const Model model = whole(with_lines(
      stand(), "#900001=GEOMETRIC_CURVE_SET('',(" + circle +
                   "));\n"
                   "#900002=SHAPE_REPRESENTATION('',(#900001),#11);\n"
                   "#900010=PRODUCT('Wire','Wire','',());\n"
                   "#900011=PRODUCT_DEFINITION_FORMATION('','',#900010);\n"
                   "#900012=PRODUCT_DEFINITION('','',#900011,#900003);\n"
                   "#900013=PRODUCT_DEFINITION_SHAPE('','',#900012);\n"
                   "#900014=SHAPE_DEFINITION_REPRESENTATION(#900013,#900002);\n"
                   "#900020=PRODUCT('Loop','Loop','',());\n"
                   "#900021=PRODUCT_DEFINITION_FORMATION('','',#900020);\n"
                   "#900022=PRODUCT_DEFINITION('','',#900021,#900003);\n"
                   "#900023=PRODUCT_DEFINITION_SHAPE('','',#900022);\n"
                   "#900024=SHAPE_DEFINITION_REPRESENTATION(#900023,#900002);\n"
                   "#900003=PRODUCT_DEFINITION_CONTEXT('part definition',#2,'design');\n"));
  EXPECT_THAT(model.not_compared, Contains(Field(&Note::about, "Wire")));
  EXPECT_THAT(model.not_compared, Contains(Field(&Note::about, "Loop")));
}

TEST(Contradictions, CurvesAndTrianglesBesideASolidAreNoLoss) {
  const std::string circle = found(R"((#\d+) = CIRCLE\()");
  const std::string text =
      with_lines(stand_with(R"((ADVANCED_BREP_SHAPE_REPRESENTATION\('[^']*',\(#\d+,#\d+))",
                            "$1,#900001,#900002"),
                 "#900001=GEOMETRIC_CURVE_SET('',(" + circle +
                     "));\n"
                     "#900002=TESSELLATED_SOLID('',(#900003),$);\n"
                     "#900003=TRIANGULATED_FACE('',#900004,3,((0.,0.,1.)),$,(),((1,2,3)));\n"
                     "#900004=COORDINATES_LIST('',3,((0.,0.,0.),(1.,0.,0.),(0.,1.,0.)));\n");
  EXPECT_THAT(whole(text).not_compared, IsEmpty());
}

constexpr const char* kMillimetre =
    R"(\( LENGTH_UNIT\(\) NAMED_UNIT\(\*\) SI_UNIT\(\.MILLI\.,\.METRE\.\) \))";

// The stand of which a part is in another unit, so many times that of an entity.
std::string stand_in(const std::string& times, const std::string& of) {
  return with_lines(
      stand_with(kMillimetre,
                 "( CONVERSION_BASED_UNIT('OURS',#900001) LENGTH_UNIT() NAMED_UNIT(#900002) )"),
      "#900001=LENGTH_MEASURE_WITH_UNIT(LENGTH_MEASURE(" + times + ")," + of +
          ");\n#900002=DIMENSIONAL_EXPONENTS(1.,0.,0.,0.,0.,0.,0.);\n"
          "#900003=( LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MILLI.,.METRE.) );\n"
          "#900004=( CONVERSION_BASED_UNIT('INCH',#900005) LENGTH_UNIT() NAMED_UNIT(#900002) );\n"
          "#900005=LENGTH_MEASURE_WITH_UNIT(LENGTH_MEASURE(25.4),#900003);\n");
}

std::string first_unit() { return found(std::string("(#\\d+) = ") + kMillimetre); }

TEST(Contradictions, AUnitOfLengthsThatIsOneOfMassIsRefused) {
  const Error problem =
      refusal(stand_with(kMillimetre, "( LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MILLI.,.GRAM.) )"));
  EXPECT_THAT(problem.place(), HasSubstr(first_unit()));
  EXPECT_THAT(problem.rule(), HasSubstr("unit of lengths but is none"));
}

TEST(Contradictions, AUnitThatIsDefinedByItselfIsRefused) {
  EXPECT_THAT(refusal(stand_in("25.4", first_unit())).rule(), HasSubstr("defined by itself"));
}

// Open CASCADE would take it for millimetres.
TEST(Contradictions, AUnitThatIsDefinedByTheInchIsRefused) {
  EXPECT_THAT(refusal(stand_in("12.", "#900004")).rule(),
              HasSubstr("another unit than one of the International System"));
}

TEST(Contradictions, AUnitOfNoLengthIsRefused) {
  for (const char* times : {"0.", "-25.4", "'25.4'"}) {
    EXPECT_THAT(refusal(stand_in(times, "#900003")).rule(), HasSubstr("no number above zero"))
        << times;
  }
}

TEST(Contradictions, AUnitInTermsOfTheMillimetreIsTaken) {
  EXPECT_NO_THROW((void)whole(stand_in("1.", "#900003")));
}

struct OddUnit {
  const char* name;
  const char* times;
};
void PrintTo(const OddUnit& one, std::ostream* out) { *out << one.name << " of " << one.times; }

class UnitsOfAnotherSize : public ::testing::TestWithParam<OddUnit> {};

TEST_P(UnitsOfAnotherSize, AreRefused) {
  const std::string text = std::regex_replace(stand_in(GetParam().times, "#900003"),
                                              std::regex("OURS"), GetParam().name);
  EXPECT_THAT(refusal(text).rule(),
              AllOf(HasSubstr(std::string("called ") + GetParam().name), HasSubstr("#900001")));
}

INSTANTIATE_TEST_SUITE_P(Of, UnitsOfAnotherSize,
                         ::testing::Values(OddUnit{"INCH", "25.5"}, OddUnit{"inch", "0.0254"},
                                           OddUnit{"Foot", "304.9"}, OddUnit{"MILLIMETRE", "10."},
                                           OddUnit{"metres", "1."}));

TEST(Contradictions, AnInchAsAgreedIsTaken) {
  for (const char* times : {"25.4", "25.400001", "2.54E1"}) {
    EXPECT_NO_THROW(
        (void)whole(std::regex_replace(stand_in(times, "#900003"), std::regex("OURS"), "Inch")))
        << times;
  }
}

// In 1959 the foot of surveys kept its length.
TEST(Contradictions, AUnitOfAnotherNameHasTheSizeThatIsGiven) {
  EXPECT_NO_THROW((void)whole(std::regex_replace(stand_in("304.8006096", "#900003"),
                                                 std::regex("OURS"), "US SURVEY FOOT")));
}

TEST(Contradictions, TwoUnitsOfLengthsInOneContextAreRefused) {
  const Error problem = refusal(
      with_lines(stand_with(R"((GLOBAL_UNIT_ASSIGNED_CONTEXT\s*\(\s*\()(#\d+))", "$1#900001,$2"),
                 "#900001=( LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT($,.METRE.) );\n"));
  EXPECT_THAT(problem.rule(), HasSubstr("2 units of lengths"));
}

TEST(Contradictions, APointOfFourNumbersIsRefused) {
  const Error problem = refusal(
      stand_with(R"(CARTESIAN_POINT\('',\(0\.,0\.,0\.\)\))", "CARTESIAN_POINT('',(0,0,0,0))"));
  EXPECT_THAT(problem.rule(), AllOf(HasSubstr("#"), HasSubstr("point of 4 numbers")));
}

TEST(Contradictions, AVertexInAPlaneIsRefusedByEntity) {
  const Error problem =
      refusal(with_lines(stand_with(R"(VERTEX_POINT\('',#\d+\))", "VERTEX_POINT('',#900001)"),
                         "#900001=CARTESIAN_POINT('',(0.,0.));\n"));
  EXPECT_THAT(problem.place(), HasSubstr("VERTEX_POINT"));
  EXPECT_THAT(problem.rule(), HasSubstr("does not have three numbers"));
}

}  // namespace spotblue::contradictions_test
