#include <gmock/gmock.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <numbers>
#include <string>

#include "geometry/mockup/mockup_parts.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/mockup_placing.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "support/thrown.hpp"

namespace spotblue::mockup_assembly_test {

using test::lone;
using test::placed;
using test::turned;
using test::write_and_read;
using ::testing::HasSubstr;

constexpr double kPi = std::numbers::pi;

// A stud with a head of 40 x 8 and a journal of 20 x 30, and a washer 32 x 21 x 3.
Mockup stud_and_washer() {
  Mockup mockup;
  mockup.title = "Pair";
  mockup.parts = {{"Stud", turned({{40, 8}, {20, 30}})},
                  {"Washer", RingPart{.outside = 32, .inside = 21, .thickness = 3}}};
  Placement washer;
  washer.name = washer.part = "Washer";
  washer.against = "Stud";
  washer.against_face = "outside 1 end";
  mockup.placements = {placed("Stud", 0), washer};
  return mockup;
}

Error refusal_of(const Mockup& mockup) {
  return test::error_of([&] { return place_parts(mockup); });
}

TEST(MockupAssembly, ShoulderAgainstShoulderTouches) {
  const auto parts = write_and_read(stud_and_washer());
  ASSERT_EQ(parts.size(), 2U);
  EXPECT_NEAR(parts[0].box.low.z, 0.0, 1e-9);
  EXPECT_NEAR(parts[0].box.high.z, 38.0, 1e-9);
  EXPECT_NEAR(parts[1].box.low.z, 8.0, 1e-9);
  EXPECT_NEAR(parts[1].box.high.z, 11.0, 1e-9);
}

TEST(MockupAssembly, AGapKeepsTheFacesApartOnEitherSide) {
  Mockup mockup = stud_and_washer();
  mockup.placements[1].gap = 0.15;
  EXPECT_NEAR(place_point(place_parts(mockup)[1].frame, {}).z, 8.15, 1e-12);
  // The washer's last face against the back of the head: the gap now pushes it the other way.
  mockup.placements[1].face = "last";
  mockup.placements[1].against_face = "first";
  EXPECT_NEAR(place_point(place_parts(mockup)[1].frame, {0, 0, 3}).z, -0.15, 1e-12);
}

TEST(MockupAssembly, APartTurnedRoundHasItsFirstFaceForward) {
  Mockup mockup = stud_and_washer();
  mockup.placements[0].facing = Facing::turned_round;
  mockup.placements[1].face = "last";
  const auto parts = place_parts(mockup);
  // Head from 0 down to -8, journal beyond; the washer bears on the shoulder from below.
  EXPECT_NEAR(place_point(parts[0].frame, {0, 0, 38}).z, -38.0, 1e-12);
  EXPECT_NEAR(place_point(parts[1].frame, {0, 0, 3}).z, -8.0, 1e-12);
}

TEST(MockupAssembly, InchAndMillimetreFilesHoldTheSameParts) {
  Mockup mockup = stud_and_washer();
  const auto in_mm = write_and_read(mockup);
  mockup.unit = LengthUnit::inch;
  const auto in_inch = write_and_read(mockup);
  ASSERT_EQ(in_mm.size(), in_inch.size());
  for (std::size_t i = 0; i < in_mm.size(); ++i) {
    EXPECT_NEAR(in_mm[i].volume, in_inch[i].volume, 1e-6);
    EXPECT_NEAR(in_mm[i].box.high.z, in_inch[i].box.high.z, 1e-9);
  }
}

TEST(MockupAssembly, RepeatedInstancesShareOneProductAndAreNumbered) {
  Mockup mockup;
  mockup.title = "Circle";
  mockup.parts = {{"Bolt", turned({{6, 20}})}};
  Placement bolts = placed("Bolt", 5);
  bolts.circle = {50, 4, 0};
  mockup.placements = {bolts};
  const auto parts = write_and_read(mockup);
  ASSERT_EQ(parts.size(), 4U);
  EXPECT_EQ(parts[0].name, "Bolt 1");
  EXPECT_EQ(parts[3].name, "Bolt 4");
  EXPECT_EQ(parts[0].product, parts[3].product);
  EXPECT_NEAR(parts[0].box.high.x, 28.0, 1e-6);
  EXPECT_NEAR(parts[1].box.high.y, 28.0, 1e-6);
  EXPECT_NEAR(parts[3].volume, kPi * 9 * 20, 1e-6);
}

TEST(MockupAssembly, EveryProtocolReadsBack) {
  for (const StepProtocol protocol :
       {StepProtocol::ap203, StepProtocol::ap214, StepProtocol::ap242}) {
    Mockup mockup = stud_and_washer();
    mockup.protocol = protocol;
    const auto parts = write_and_read(mockup);
    ASSERT_EQ(parts.size(), 2U);
    EXPECT_NEAR(parts[1].volume, kPi / 4 * (32 * 32 - 21 * 21) * 3, 1e-6);
  }
}

TEST(MockupAssembly, AFileNamesNobody) {
  // Left alone, Open CASCADE's AP203 writer puts in the login name, the machine and its address.
  Mockup mockup = stud_and_washer();
  mockup.protocol = StepProtocol::ap203;
  const auto file = std::filesystem::temp_directory_path() /
                    ("spotblue-nobody-" + std::to_string(::getpid()) + ".step");
  write_mockup(mockup, file);
  std::ifstream stream(file);
  const std::string text{std::istreambuf_iterator<char>(stream), {}};
  std::filesystem::remove(file);
  EXPECT_THAT(text, HasSubstr("PERSON('not given','not given',$,$,$,$)"));
  EXPECT_THAT(text, HasSubstr("ORGANIZATION($,'not given','')"));
}

TEST(MockupAssembly, ACrossLineCarriesPartsSquareToTheFirst) {
  Mockup mockup;
  mockup.title = "Cross";
  mockup.parts = {{"Shaft", turned({{10, 40}})}};
  mockup.lines = {{"cross", {5, 6, 7}, {0, 2, 0}}};
  mockup.placements = {placed("Shaft", 3)};
  const Frame frame = place_parts(mockup)[0].frame;
  const Point far = place_point(frame, {0, 0, 40});
  EXPECT_NEAR(far.x, 5.0, 1e-12);
  EXPECT_NEAR(far.y, 6.0 + 3.0 + 40.0, 1e-12);
  EXPECT_NEAR(far.z, 7.0, 1e-12);
  EXPECT_FALSE(is_mirror(frame));
}

TEST(MockupAssembly, AnUnknownPartIsNamedWithTheNearest) {
  Mockup mockup = stud_and_washer();
  mockup.placements[1].part = "Wascher";
  const Error problem = refusal_of(mockup);
  EXPECT_EQ(problem.place(), "place \"Washer\"");
  EXPECT_EQ(problem.cure(), "did you mean \"Washer\"?");
}

TEST(MockupAssembly, PlacementsThatWaitForEachOtherAreRefused) {
  Mockup mockup = stud_and_washer();
  mockup.placements[0].at.reset();
  mockup.placements[0].face = "outside 1 end";
  mockup.placements[0].against = "Washer";
  mockup.placements[0].against_face = "first";
  EXPECT_THAT(refusal_of(mockup).rule(), HasSubstr("ring"));
}

TEST(MockupAssembly, FacesThatLookTheSameWayAreRefused) {
  Mockup mockup = stud_and_washer();
  mockup.placements[1].face = "last";
  EXPECT_THAT(refusal_of(mockup).rule(), HasSubstr("the same way"));
}

TEST(MockupAssembly, APartPlacedNowhereIsRefused) {
  Mockup mockup = stud_and_washer();
  mockup.placements.pop_back();
  EXPECT_EQ(refusal_of(mockup).place(), "part \"Washer\"");
}

TEST(MockupAssembly, AnUnwritablePlaceIsAnErrorThatNamesIt) {
  const Error problem = test::error_of([&] {
    return write_mockup(lone(turned({{10, 5}})), "/nowhere/at/all.step");
  });
  EXPECT_EQ(problem.code(), ErrorCode::file_access);
  EXPECT_EQ(problem.file(), "/nowhere/at/all.step");
}

TEST(MockupAssembly, WritingIsSilent) {
  testing::internal::CaptureStdout();
  testing::internal::CaptureStderr();
  const auto file = std::filesystem::temp_directory_path() / "spotblue-silent.step";
  write_mockup(stud_and_washer(), file);
  EXPECT_EQ(testing::internal::GetCapturedStdout(), "");
  EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
  std::filesystem::remove(file);
}

}  // namespace spotblue::mockup_assembly_test
