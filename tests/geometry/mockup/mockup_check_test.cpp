#include <gmock/gmock.h>

#include <functional>

#include "geometry/mockup/mockup_parts.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/mockup_faces.hpp"
#include "spotblue/geometry/mockup_placing.hpp"
#include "support/thrown.hpp"

namespace spotblue::mockup_check_test {

using test::lone;
using test::plain_step;
using test::turned;

// What ISO 10303-21 has no place for in a string would come back as another name, or none.
TEST(MockupNames, OnesThatCanNotBeShownAreRefused) {
  for (const std::string& name : {std::string("two\nlines"), std::string("cut\0here", 8),
                                  std::string("\xFF"), std::string("\xE2\x80\xAE turned")}) {
    Mockup by_part = lone(turned({{40, 20}}));
    by_part.parts[0].name = name;
    EXPECT_THROW(check_parts(by_part), Error) << name;
    Mockup by_title = lone(turned({{40, 20}}));
    by_title.title = name;
    EXPECT_THROW(check_parts(by_title), Error) << name;
    Placement placement;
    placement.name = "Part";
    placement.part = "Part";
    placement.at = 0.0;
    for (std::string Placement::*text : {&Placement::name, &Placement::group}) {
      Mockup placed = lone(turned({{40, 20}}));
      placed.placements = {placement};
      EXPECT_NO_THROW((void)place_parts(placed));
      placed.placements[0].*text = name;
      EXPECT_THROW((void)place_parts(placed), Error) << name;
    }
  }
}

struct Impossible {
  const char* name;
  std::function<void(TurnedPart&)> spoil;  ///< a tube of 40 and 30, 20 long each, bored 16
  const char* step;
  const char* says;
};
void PrintTo(const Impossible& impossible, std::ostream* out) { *out << impossible.name; }

class MockupImpossible : public testing::TestWithParam<Impossible> {};

TEST_P(MockupImpossible, IsRefusedWithPartAndStep) {
  TurnedPart part = turned({{40, 20}, {30, 20}});
  part.inside = {plain_step(0, 40, 16)};
  GetParam().spoil(part);
  const Error problem = test::error_of([&] { return check_parts(lone(part)); });
  EXPECT_EQ(problem.code(), ErrorCode::bad_input);
  EXPECT_EQ(problem.place(), std::string("part \"Part\"") + GetParam().step);
  EXPECT_THAT(problem.rule(), testing::HasSubstr(GetParam().says));
  EXPECT_FALSE(problem.cure().empty());
}

INSTANTIATE_TEST_SUITE_P(
    Turned, MockupImpossible,
    testing::Values(
        Impossible{"NoOutside", [](TurnedPart& p) { p.outside.clear(); }, "", "at least one"},
        Impossible{"ZeroLength", [](TurnedPart& p) { p.outside[1].length = 0; }, ", outside 2",
                   "length: need more than 0"},
        Impossible{"NegativeDiameter", [](TurnedPart& p) { p.outside[0].diameter = -40; },
                   ", outside 1", "diameter: need more than 0"},
        Impossible{"AbsurdLength", [](TurnedPart& p) { p.outside[1].length = 1e300; },
                   ", outside 2", "can make"},
        Impossible{"NegativeWall", [](TurnedPart& p) { p.inside[0] = plain_step(0, 40, 31); },
                   ", inside 1", "the wall"},
        Impossible{"NoWallUnderAGroove",
                   [](TurnedPart& p) {
                     p.outside_grooves = {{25, 2, 15}};
                   },
                   ", inside 1", "the wall"},
        Impossible{"InsideTooLong", [](TurnedPart& p) { p.inside[0].length = 41; }, ", inside 1",
                   "beyond the part"},
        Impossible{"HiddenCavity", [](TurnedPart& p) { p.inside[0] = plain_step(5, 10, 16); },
                   ", inside 1", "opens to neither end"},
        Impossible{"ChamferOverShoulder",
                   [](TurnedPart& p) {
                     p.outside[0].at_end = {BreakKind::chamfer, 6};
                   },
                   ", outside 1", "larger than the step"},
        Impossible{"ChamferInACorner",
                   [](TurnedPart& p) {
                     p.outside[1].at_start = {BreakKind::chamfer, 1};
                   },
                   ", outside 2", "in a corner"},
        Impossible{"BreaksLongerThanTheStep",
                   [](TurnedPart& p) {
                     p.outside[0].at_start = {BreakKind::chamfer, 11};
                     p.outside[0].at_end = {BreakKind::fillet, 4};
                     p.outside[0].length = 14;
                     p.outside[1].start = 14;
                     p.inside[0].length = 34;
                   },
                   ", outside 1", "longer than the step"},
        Impossible{"BothSidesOfAShoulder",
                   [](TurnedPart& p) {
                     p.outside[0].at_end = {BreakKind::chamfer, 3};
                     p.outside[1].at_start = {BreakKind::fillet, 3};
                   },
                   ", outside 2", "more than its height"},
        Impossible{"GrooveAcrossAShoulder",
                   [](TurnedPart& p) {
                     p.outside_grooves = {{19, 2, 28}};
                   },
                   ", outside_grooves 1", "within no outside step"},
        Impossible{"GrooveInTheAir",
                   [](TurnedPart& p) {
                     p.outside_grooves = {{25, 2, 30}};
                   },
                   ", outside_grooves 1", "cuts nothing"},
        Impossible{"KeyseatOffThePart",
                   [](TurnedPart& p) {
                     p.keyseats = {
                         {.at = 30, .length = 15, .width = 6, .depth = 3, .ends = EndShape::round}};
                   },
                   ", keyseats 1", "not within the part"},
        Impossible{
            "KeyseatTooDeep",
            [](TurnedPart& p) {
              p.keyseats = {
                  {.at = 22, .length = 15, .width = 6, .depth = 15, .ends = EndShape::round}};
            },
            ", keyseats 1", "more than a shaft"},
        Impossible{"KeywayWithoutBore",
                   [](TurnedPart& p) {
                     p.inside.clear();
                     p.keyways = {{{}, {}, 5, 2, {}, 0, 0, 0}};
                   },
                   ", keyways 1", "no bore"},
        Impossible{"BoreOutsideThePart",
                   [](TurnedPart& p) {
                     p.bores = {{.name = {},
                                 .face = PartFace::first,
                                 .u = 18,
                                 .diameter = 6,
                                 .depth = {},
                                 .grooves = {}}};
                   },
                   ", bores 1", "breaks out"},
        Impossible{"CrossHoleTooWide",
                   [](TurnedPart& p) {
                     p.cross_holes = {{30, 31, {}, 0, 0}};
                   },
                   ", cross_holes 1", "not lie within"},
        Impossible{
            "FlatsThatMiss",
            [](TurnedPart& p) { p.flats = {{.at = 25, .length = 10, .across = 30, .count = 2}}; },
            ", flats 1", "cuts nothing"}));

TEST(MockupCheck, ABoreOutsideThePlateIsRefused) {
  BlockPart plate{{80, 60, 10}, {}, {}, {}};
  plate.bores = {{.name = {}, .u = 75, .v = 30, .diameter = 12, .depth = {}, .grooves = {}}};
  const Error problem = test::error_of([&] { return check_parts(lone(plate)); });
  EXPECT_EQ(problem.place(), "part \"Part\", bores 1");
  EXPECT_THAT(problem.rule(), testing::HasSubstr("not within the face, 80 x 60"));
}

TEST(MockupCheck, TwoPartsOfOneNameAreRefused) {
  Mockup mockup = lone(turned({{10, 10}}));
  mockup.parts.push_back(mockup.parts.front());
  EXPECT_THROW(check_parts(mockup), Error);
}

TEST(MockupCheck, ShouldersOfATurnedPartHaveNamesAndFaceTheRightWay) {
  TurnedPart part = turned({{40, 8}, {20, 30}});
  part.outside[1].name = "journal";
  part.inside = {plain_step(0, 12, 10)};
  const auto faces = faces_of({"Stud", part});
  const auto face = [&faces](const std::string& name) {
    for (const MockupFace& candidate : faces) {
      if (candidate.name == name) {
        return std::pair(candidate.station, candidate.sense);
      }
    }
    return std::pair(-1.0, 0);
  };
  EXPECT_EQ(face("outside 1 end"), std::pair(8.0, 1));
  EXPECT_EQ(face("journal start"), std::pair(8.0, 1));
  EXPECT_EQ(face("first"), std::pair(0.0, -1));
  EXPECT_EQ(face("last"), std::pair(38.0, 1));
  EXPECT_EQ(face("inside 1 end"), std::pair(12.0, -1));
}

}  // namespace spotblue::mockup_check_test
