// Files that leave some of their shapes to other files.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <map>
#include <string>

#include "geometry/read/written_step.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/read.hpp"
#include "support/thrown.hpp"

namespace spotblue::test::other_files_test {

namespace fs = std::filesystem;
using testing::HasSubstr;

std::string frame_with_another_file() {
  return with_lines(stand_step("MM", "AP214IS"),
                    "#9101=DOCUMENT_TYPE('geometry');\n"
                    "#9102=DOCUMENT_FILE('gear-box.STP','',$,#9101,'',$);\n"
                    "#9103=DOCUMENT_FILE('data-sheet.pdf','',$,#9101,'',$);\n");
}

std::string text_in(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

// The main file with every mention of one name changed.
void rename_in(const fs::path& file, const std::string& from, const std::string& to) {
  std::string text = text_in(file);
  for (std::size_t at = text.find(from); at != std::string::npos;
       at = text.find(from, at + to.size())) {
    text.replace(at, from.size(), to);
  }
  std::ofstream(file, std::ios::binary) << text;
}

struct Placed {
  std::string product;
  Frame frame;
  double volume = 0.0;
};

std::map<std::string, Placed> placed_parts(const Model& model) {
  std::map<std::string, Placed> parts;
  for (const Occurrence& one : model.occurrences) {
    const Product& product = model.products[one.product];
    parts[one.path] = {product.id, one.frame, product.volume};
  }
  return parts;
}

TEST(OtherFiles, OneThatIsNotReadIsNamedAsMissing) {
  const Folder folder;
  const auto file = folder.write("frame.step", frame_with_another_file());
  const Model model = read_step(file, {}, Completeness::accept_partial);
  ASSERT_EQ(model.notes.size(), 1U);
  EXPECT_EQ(model.notes[0].about, "file 'gear-box.STP'");
  EXPECT_THAT(model.notes[0].text, HasSubstr("is not beside this file"));
}

TEST(OtherFiles, AModelThatMissesOneIsNotWhole) {
  const Folder folder;
  const auto file = folder.write("frame.step", frame_with_another_file());
  const Error error =
      test::error_of([&] { return read_step(file, {}, Completeness::all_or_error); });
  EXPECT_EQ(error.code(), ErrorCode::incomplete);
  EXPECT_NE(std::string(error.what()).find("gear-box.STP"), std::string::npos);
}

// As Open CASCADE's own writer leaves parts to files beside; the same assembly in one file tells
// where they belong.
TEST(OtherFiles, PartsInFilesBesideStandWhereTheyDoInOneFile) {
  for (const char* const unit : {"MM", "INCH"}) {
    const Folder folder;
    const fs::path main = write_stand_in_files(folder.path(), unit);
    const Model whole = read_step(folder.write("whole.step", stand_step(unit, "AP214IS")), {},
                                  Completeness::all_or_error);
    const Model split = read_step(main, {}, Completeness::all_or_error);
    const auto wanted = placed_parts(whole);
    const auto found = placed_parts(split);
    ASSERT_EQ(found.size(), wanted.size()) << unit;
    for (const auto& [path, part] : wanted) {
      ASSERT_TRUE(found.contains(path)) << path;
      EXPECT_EQ(found.at(path).product, part.product);
      EXPECT_NEAR(found.at(path).volume, part.volume, 1e-6 * part.volume);
      for (std::size_t row = 0; row < 3; ++row) {
        for (std::size_t column = 0; column < 4; ++column) {
          EXPECT_NEAR(found.at(path).frame.rows[row][column], part.frame.rows[row][column], 1e-9)
              << path;
        }
      }
    }
    EXPECT_EQ(split.products.size(), whole.products.size());
    EXPECT_EQ(split.file.unit, whole.file.unit);
    EXPECT_TRUE(split.notes.empty())
        << split.notes.front().about << ": " << split.notes.front().text;
  }
}

TEST(OtherFiles, OnlyTheSameFolderIsReadFrom) {
  const Folder folder;
  fs::create_directory(folder.path() / "inner");
  const fs::path main = write_stand_in_files(folder.path() / "inner", "MM");
  fs::rename(folder.path() / "inner" / "part-Frame.stp", folder.path() / "part-Frame.stp");
  const std::string outside = (folder.path() / "part-Frame.stp").string();
  for (const std::string& name : {std::string("../part-Frame.stp"), outside}) {
    const std::string before = text_in(main);
    rename_in(main, "part-Frame.stp", name);
    const Model model = read_step(main, {}, Completeness::accept_partial);
    ASSERT_FALSE(model.notes.empty());
    EXPECT_THAT(model.notes[0].about, HasSubstr("part-Frame.stp"));
    EXPECT_THAT(model.notes[0].text, HasSubstr("names another folder"));
    std::ofstream(main, std::ios::binary) << before;
  }
  fs::create_symlink(outside, folder.path() / "inner" / "part-Frame.stp");
  const Model model = read_step(main, {}, Completeness::accept_partial);
  ASSERT_FALSE(model.notes.empty());
  EXPECT_THAT(model.notes[0].text, HasSubstr("may lead elsewhere"));
}

TEST(OtherFiles, ADamagedOneIsNamed) {
  const Folder folder;
  const fs::path main = write_stand_in_files(folder.path(), "MM");
  const std::string part = text_in(folder.path() / "part-Frame.stp");
  static_cast<void>(folder.write("part-Frame.stp", part.substr(0, part.size() / 2)));
  const Error error =
      test::error_of([&] { return read_step(main, {}, Completeness::all_or_error); });
  EXPECT_THAT(error.file(), HasSubstr("part-Frame.stp"));
  const Model model = read_step(main, {}, Completeness::accept_partial);
  ASSERT_FALSE(model.notes.empty());
  EXPECT_THAT(model.notes[0].about, HasSubstr("part-Frame.stp"));
}

TEST(OtherFiles, OneThatRefersBackEnds) {
  const Folder folder;
  const fs::path main = write_stand_in_files(folder.path(), "MM");
  rename_in(main, "part-Frame.stp", main.filename().string());
  const Model model = read_step(main, {}, Completeness::accept_partial);
  ASSERT_FALSE(model.notes.empty());
  EXPECT_THAT(model.notes[0].text, HasSubstr("refers back"));
}

}  // namespace spotblue::test::other_files_test
