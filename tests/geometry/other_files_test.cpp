// Files that leave some of their shapes to other files.

#include <gtest/gtest.h>

#include <string>

#include "geometry/written_step.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/read.hpp"

namespace spotblue::test {
namespace {

std::string frame_with_another_file() {
  return with_lines(stand_step("MM", "AP214IS"),
                    "#9101=DOCUMENT_TYPE('geometry');\n"
                    "#9102=DOCUMENT_FILE('gear-box.STP','',$,#9101,'',$);\n"
                    "#9103=DOCUMENT_FILE('data-sheet.pdf','',$,#9101,'',$);\n");
}

TEST(OtherFiles, OneThatIsNotReadIsNamedAsMissing) {
  const Folder folder;
  const auto file = folder.write("frame.step", frame_with_another_file());
  const Model model = read_step(file, {}, Completeness::accept_partial);
  ASSERT_EQ(model.notes.size(), 1U);
  EXPECT_EQ(model.notes[0].about, "file 'gear-box.STP'");
}

TEST(OtherFiles, AModelThatMissesOneIsNotWhole) {
  const Folder folder;
  const auto file = folder.write("frame.step", frame_with_another_file());
  try {
    static_cast<void>(read_step(file, {}, Completeness::all_or_error));
    FAIL() << "it was taken for whole";
  } catch (const Error& error) {
    EXPECT_EQ(error.code(), ErrorCode::incomplete);
    EXPECT_NE(std::string(error.what()).find("gear-box.STP"), std::string::npos);
  }
}

}  // namespace
}  // namespace spotblue::test
