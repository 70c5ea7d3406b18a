// Faults in models that Open CASCADE reads without a word: each is refused, or told.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepTools.hxx>
#include <BRep_Builder.hxx>
#include <BinTools.hxx>
#include <TopLoc_Location.hxx>
#include <TopoDS_Compound.hxx>
#include <cmath>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <gp_Trsf.hxx>
#include <iterator>
#include <limits>
#include <sstream>
#include <string>
#include <vector>

#include "spotblue/base/error.hpp"
#include "spotblue/geometry/look.hpp"
#include "support/shape_out.hpp"

namespace spotblue::test {
namespace {

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
    try {
      static_cast<void>(read(file, how));
    } catch (const Error& error) {
      EXPECT_THAT(error.what(), Not(HasSubstr("\n")));
      EXPECT_THAT(error.what(), Not(HasSubstr("crashed")));
      EXPECT_THAT(error.what(), Not(HasSubstr("took")));
      EXPECT_EQ(error.file(), file.string());
      EXPECT_NE(error.cure(), "");
      return error;
    }
    ADD_FAILURE() << "no Error was thrown for " << file;
    return {ErrorCode::bad_input, {}, "", ""};
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

}  // namespace
}  // namespace spotblue::test
