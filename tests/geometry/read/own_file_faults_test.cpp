// Faults in models that Open CASCADE reads without a word: each is refused, or told.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepTools.hxx>
#include <BRep_Builder.hxx>
#include <BinTools.hxx>
#include <TopExp_Explorer.hxx>
#include <TopLoc_Location.hxx>
#include <TopoDS_Compound.hxx>
#include <TopoDS_Shell.hxx>
#include <TopoDS_Solid.hxx>
#include <TopoDS_Vertex.hxx>
#include <cmath>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <gp_Pnt.hxx>
#include <gp_Trsf.hxx>
#include <iterator>
#include <limits>
#include <sstream>
#include <string>
#include <vector>

#include "spotblue/base/error.hpp"
#include "spotblue/geometry/look.hpp"
#include "support/shape_out.hpp"
#include "support/thrown.hpp"

namespace spotblue::test::own_file_faults_test {

namespace fs = std::filesystem;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

constexpr double kRadius = 12.3125;  // exact in binary, and no other number of the files
constexpr double kInfinite = std::numeric_limits<double>::infinity();
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

std::string bytes_of(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

TopoDS_Shape rod(double radius = kRadius) { return BRepPrimAPI_MakeCylinder(radius, 40.0).Shape(); }

TopoDS_Compound together(const std::vector<TopoDS_Shape>& shapes) {
  TopoDS_Compound compound;
  const BRep_Builder builder;
  builder.MakeCompound(compound);
  for (const TopoDS_Shape& shape : shapes) {
    builder.Add(compound, shape);
  }
  return compound;
}

// The one that is spoilt, and another that is sound.
TopoDS_Shape two_rods(double apart = 100.0) {
  gp_Trsf by;
  by.SetTranslation(gp_Vec(apart, 0.0, 0.0));
  return together({rod(), rod(7.0).Moved(TopLoc_Location(by))});
}

std::string text_of(const TopoDS_Shape& shape) {
  std::ostringstream out;
  BRepTools::Write(shape, out);
  return out.str();
}

std::string replaced(std::string text, const std::string& what, const std::string& by) {
  EXPECT_NE(text.find(what), std::string::npos) << what;
  for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += by.size()) {
    text.replace(at, what.size(), by);
  }
  return text;
}

std::string as_bytes(double value) {
  std::string bytes(sizeof value, '\0');
  std::memcpy(bytes.data(), &value, sizeof value);
  return bytes;
}

class OwnFileFault : public testing::Test {
 protected:
  OwnFileFault() { fs::create_directories(folder_); }
  ~OwnFileFault() override { fs::remove_all(folder_); }

  [[nodiscard]] fs::path write(const std::string& name, const std::string& bytes) const {
    std::ofstream(folder_ / name, std::ios::binary) << bytes;
    return folder_ / name;
  }

  static Model read(const fs::path& file, Completeness completeness = Completeness::all_or_error) {
    ReadLimits limits;
    limits.seconds = 20.0;
    return read_model(file, limits, completeness);
  }

  static Error refused(const fs::path& file, Completeness how = Completeness::all_or_error) {
    const Error error = test::error_of([&] { return read(file, how); });
    EXPECT_THAT(error.what(), Not(HasSubstr("\n")));
    EXPECT_THAT(error.what(), Not(HasSubstr("crashed")));
    EXPECT_THAT(error.what(), Not(HasSubstr("took")));
    EXPECT_EQ(error.file(), file.string());
    EXPECT_NE(error.cure(), "");
    return error;
  }

  static std::vector<std::string> notes(const Model& model) {
    std::vector<std::string> all;
    for (const Note& note : model.notes) {
      all.push_back(note.about + ": " + note.text);
    }
    return all;
  }

  fs::path folder_ = fs::path(testing::TempDir()) /
                     (std::string("spotblue-fault-") +
                      testing::UnitTest::GetInstance()->current_test_info()->name());
};

TEST_F(OwnFileFault, ASizeThatIsNoFiniteNumberIsRefusedByItsPart) {
  const std::string text = text_of(two_rods());
  for (const char* number : {"1e400", "inf", "nan"}) {
    SCOPED_TRACE(number);
    const Error error = refused(write("two.brep", replaced(text, "12.3125", number)));
    EXPECT_EQ(error.code(), ErrorCode::unreadable);
    EXPECT_THAT(error.place(), HasSubstr("two 1"));
    EXPECT_THAT(error.what(), HasSubstr("infinite or none"));
  }
}

TEST_F(OwnFileFault, ASizeInBytesThatIsNoFiniteNumberIsRefused) {
  std::ostringstream binary;
  BinTools::Write(rod(), binary);
  shape_to_xbf(rod(), "Rod", 1e-3, folder_ / "good.xbf");
  const std::string document = bytes_of(folder_ / "good.xbf");
  for (const double number : {kInfinite, kNone}) {
    EXPECT_THAT(
        refused(write("rod.brep", replaced(binary.str(), as_bytes(kRadius), as_bytes(number))))
            .place(),
        HasSubstr("'rod'"));
    EXPECT_THAT(
        refused(write("rod.xbf", replaced(document, as_bytes(kRadius), as_bytes(number)))).place(),
        HasSubstr("'Rod'"));
  }
}

TEST_F(OwnFileFault, APartWithoutFiniteSizesIsLeftOutOfAPartialModelWithANote) {
  const fs::path file = write("two.brep", replaced(text_of(two_rods()), "12.3125", "1e400"));
  const Model model = read(file, Completeness::accept_partial);
  ASSERT_EQ(model.occurrences.size(), 1U);
  EXPECT_EQ(model.occurrences[0].path, "two 2");
  EXPECT_THAT(notes(model), Contains(AllOf(HasSubstr("two 1"), HasSubstr("left out"))));
  for (const Product& product : model.products) {
    EXPECT_TRUE(std::isfinite(product.volume));
  }
}

TEST_F(OwnFileFault, NothingFiniteIsNoPartialModel) {
  const fs::path file = write("rod.brep", replaced(text_of(rod()), "12.3125", "nan"));
  EXPECT_THAT(refused(file, Completeness::accept_partial).cure(), Not(HasSubstr("partial")));
}

TEST_F(OwnFileFault, APlaceThatIsNoFiniteNumberIsRefused) {
  const fs::path file = write("two.brep", replaced(text_of(two_rods(77.625)), "77.625", "1e400"));
  EXPECT_THAT(refused(file).what(), HasSubstr("infinite or none"));
}

TEST_F(OwnFileFault, AKindOfAttributeThatOpenCascadeDoesNotKnowIsNotPassedOver) {
  shape_to_xbf(rod(), "Rod", 1e-3, folder_ / "good.xbf");
  const fs::path file = write(
      "foreign.xbf", replaced(bytes_of(folder_ / "good.xbf"), "TDataStd_Name", "TDataStd_Nane"));
  const Error error = refused(file);
  EXPECT_EQ(error.code(), ErrorCode::incomplete);
  EXPECT_THAT(error.what(), HasSubstr("TDataStd_Nane"));
  EXPECT_THAT(notes(read(file, Completeness::accept_partial)),
              Contains(HasSubstr("TDataStd_Nane")));
}

TEST_F(OwnFileFault, AnAbsurdUnitIsRefusedAtOnceByName) {
  for (const double metres : {-1.0, 0.0, kNone, kInfinite, 1e30}) {
    shape_to_xbf(rod(), "Rod", metres, folder_ / "unit.xbf");
    const Error error = refused(folder_ / "unit.xbf");
    EXPECT_EQ(error.place(), "length unit");
    EXPECT_THAT(error.what(), HasSubstr(" m, which is none"));
  }
}

TEST_F(OwnFileFault, NumbersWithACommaAreRefusedByTheirLine) {
  const std::string text = replaced(text_of(rod()), "12.3125", "12,3125");
  const Error error = refused(write("comma.brep", text));
  EXPECT_THAT(error.place(), testing::StartsWith("line "));
  EXPECT_THAT(error.what(), AllOf(HasSubstr("'12,3125'"), HasSubstr("point")));
  EXPECT_THAT(refused(write("junk.brep", replaced(text, "12,3125", "12.31x5"))).what(),
              HasSubstr("'12.31x5'"));
}

TEST_F(OwnFileFault, AVersionThatOpenCascadeDoesNotKnowIsRefused) {
  const std::string text = text_of(rod());
  const std::size_t at = text.find("CASCADE Topology V") + 18;
  EXPECT_THAT(refused(write("nine.brep", std::string(text).replace(at, 1, "9"))).what(),
              HasSubstr("version 9"));
}

TEST_F(OwnFileFault, WhatStandsBehindTheShapesIsRefused) {
  std::ostringstream binary;
  BinTools::Write(rod(), binary);
  EXPECT_THAT(refused(write("rod.brep", binary.str() + "garbage")).what(), HasSubstr("behind"));
  static_cast<void>(read(write("rod.brep", binary.str())));
}

TEST_F(OwnFileFault, ASolidWithoutFacesIsTold) {
  TopoDS_Solid bare;
  BRep_Builder().MakeSolid(bare);
  const Model model = read(write("two.brep", text_of(together({bare, rod()}))));
  EXPECT_THAT(notes(model), Contains(HasSubstr("two 1: its solid has no faces")));
  EXPECT_FALSE(model.products[0].closed);
}

TEST_F(OwnFileFault, AnOpenSolidIsTold) {
  TopExp_Explorer faces(rod(), TopAbs_FACE);
  faces.Next();
  TopoDS_Shell shell;
  TopoDS_Solid open;
  const BRep_Builder builder;
  builder.MakeShell(shell);
  for (; faces.More(); faces.Next()) {
    builder.Add(shell, faces.Current());
  }
  builder.MakeSolid(open);
  builder.Add(open, shell);
  EXPECT_THAT(notes(read(write("open.brep", text_of(open)))), Contains(HasSubstr("not closed")));
}

TEST_F(OwnFileFault, CompoundsThatUnfoldWithoutEndAreRefused) {
  TopoDS_Shape deep = rod();
  for (int i = 0; i < 600; ++i) {
    deep = together({deep});
  }
  EXPECT_THAT(refused(write("deep.brep", text_of(deep))).what(), HasSubstr("deeper than 500"));
  TopoDS_Shape wide = rod();
  for (int i = 0; i < 8; ++i) {
    wide = together(std::vector<TopoDS_Shape>(10, wide));
  }
  EXPECT_THAT(refused(write("wide.brep", text_of(wide))).what(), HasSubstr("more than 2000000"));
}

TEST_F(OwnFileFault, PointsAreNamedWhereThereIsNoSolid) {
  TopoDS_Vertex vertex;
  BRep_Builder().MakeVertex(vertex, gp_Pnt(1, 2, 3), 1e-7);
  EXPECT_THAT(refused(write("vertex.brep", text_of(vertex))).what(), HasSubstr("points only"));
}

TEST_F(OwnFileFault, AnEmptyTempFolderInTheEnvironmentIsThatOfTheSystem) {
  const fs::path file = write("rod.brep", text_of(rod()));
  ::setenv("TMPDIR", "", 1);
  EXPECT_EQ(read(file).products.size(), 1U);
  ::unsetenv("TMPDIR");
}

}  // namespace spotblue::test::own_file_faults_test
