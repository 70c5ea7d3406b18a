#include <gmock/gmock.h>
#include <sys/resource.h>

#include <algorithm>
#include <cmath>
#include <csignal>
#include <cstdio>

#include "base/stage_time.hpp"
#include "geometry/occt/shape_store.hpp"
#include "geometry/read/read_within.hpp"
#include "geometry/read/written_step.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/read.hpp"
#include "support/thrown.hpp"

namespace spotblue::read_step_test {

namespace fs = std::filesystem;
using test::Folder;
using test::stand_step;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::UnorderedElementsAre;

Model read_text(const std::string& text) {
  const Folder folder;
  return read_step(folder.write("model.step", text), {}, Completeness::all_or_error);
}

const Product& product(const Model& model, const std::string& name) {
  return *std::find_if(model.products.begin(), model.products.end(),
                       [&](const Product& one) { return one.id == name; });
}

struct WrittenCase {
  const char* unit;
  const char* schema;
  const char* unit_read;
  const char* protocol_read;
};
void PrintTo(const WrittenCase& one, std::ostream* out) { *out << one.unit << ' ' << one.schema; }

// No file may grow beyond so many bytes while this lives.
class SmallFiles {
 public:
  explicit SmallFiles(rlim_t most) : handler_(std::signal(SIGXFSZ, SIG_IGN)) {
    getrlimit(RLIMIT_FSIZE, &before_);
    const rlimit now{most, before_.rlim_max};
    setrlimit(RLIMIT_FSIZE, &now);
  }
  ~SmallFiles() {
    setrlimit(RLIMIT_FSIZE, &before_);
    std::signal(SIGXFSZ, handler_);
  }
  SmallFiles(const SmallFiles&) = delete;
  SmallFiles& operator=(const SmallFiles&) = delete;
  SmallFiles(SmallFiles&&) = delete;
  SmallFiles& operator=(SmallFiles&&) = delete;

 private:
  rlimit before_{};
  void (*handler_)(int);
};

class ReadWritten : public testing::TestWithParam<WrittenCase> {};

TEST_P(ReadWritten, GivesTheSameModelInEveryUnitAndProtocol) {
  const Model model = read_text(stand_step(GetParam().unit, GetParam().schema));
  EXPECT_EQ(model.file.unit, GetParam().unit_read);
  EXPECT_EQ(model.file.protocol, GetParam().protocol_read);
  ASSERT_EQ(model.products.size(), 4U);
  EXPECT_EQ(model.occurrences.size(), 7U);
  EXPECT_EQ(product(model, "Frame").faces, 7);
  EXPECT_EQ(product(model, "Bush").faces, 4);
  EXPECT_EQ(product(model, "Pin#1").faces, 3);
  EXPECT_EQ(product(model, "Pin#2").faces, 1);
  EXPECT_NEAR(product(model, "Frame").box.high.x, 60.0, 1e-6);
  EXPECT_NEAR(product(model, "Frame").box.low.x, 0.0, 1e-6);
}

INSTANTIATE_TEST_SUITE_P(Units, ReadWritten,
                         testing::Values(WrittenCase{"MM", "AP214IS", "mm", "AP214"},
                                         WrittenCase{"INCH", "AP214IS", "inch", "AP214"},
                                         WrittenCase{"M", "AP214IS", "metre", "AP214"},
                                         WrittenCase{"INCH", "AP203", "inch", "AP203"},
                                         WrittenCase{"MM", "AP242DIS", "mm", "AP242"}));

TEST(ReadStep, PathsNameTheWayFromTheRootDown) {
  const Model model = read_text(stand_step("MM", "AP214IS"));
  std::vector<std::string> paths;
  for (const Occurrence& occurrence : model.occurrences) {
    paths.push_back(occurrence.path);
  }
  // "Spare pair" is named in its assembly; the pieces at identity lose theirs and take the
  // product's.
  EXPECT_THAT(paths, UnorderedElementsAre("Stand/Frame", "Stand/Pair/Bush", "Stand/Pair/Pin#1",
                                          "Stand/Pair/Pin#2", "Stand/Spare pair/Bush",
                                          "Stand/Spare pair/Pin#1", "Stand/Spare pair/Pin#2"));
}

TEST(ReadStep, NestedPlacementsAreComposed) {
  const Model model = read_text(stand_step("INCH", "AP214IS"));
  const auto pin =
      std::find_if(model.occurrences.begin(), model.occurrences.end(),
                   [](const Occurrence& one) { return one.path == "Stand/Spare pair/Pin#1"; });
  ASSERT_NE(pin, model.occurrences.end());
  // The pin lies 2 below its pair, which is turned 0.5 rad about x and moved to (100, 20, 0).
  const Point at = place_point(pin->frame, {0, 0, 0});
  EXPECT_NEAR(at.x, 100.0, 1e-9);
  EXPECT_NEAR(at.y, 20.0 + 2.0 * std::sin(0.5), 1e-9);
  EXPECT_NEAR(at.z, -2.0 * std::cos(0.5), 1e-9);
  EXPECT_FALSE(pin->mirrored);
}

TEST(ReadStep, AlikeNamesBecomeUniqueIds) {
  std::string text = stand_step("MM", "AP214IS");
  for (std::size_t at = text.find("'Bush','Bush'"); at != std::string::npos;
       at = text.find("'Bush','Bush'")) {
    text.replace(at, 13, "'Pin','Pin'");
  }
  const Model model = read_text(text);
  std::vector<std::string> ids;
  for (const Product& one : model.products) {
    ids.push_back(one.id);
  }
  EXPECT_THAT(ids, UnorderedElementsAre("Frame", "Pin", "Pin (2)#1", "Pin (2)#2"));
}

class NameSpelling : public testing::TestWithParam<const char*> {};

TEST_P(NameSpelling, ArrivesAsUtf8) {
  std::string text = stand_step("MM", "AP214IS");
  const std::string found = "'Frame','Frame'";
  ASSERT_NE(text.find(found), std::string::npos);
  text.replace(text.find(found), found.size(), std::string("'Frame','") + GetParam() + "'");
  const Model model = read_text(text);
  EXPECT_EQ(product(model, "B\xC3\xBCgel").faces, 7);
}

// Source: ISO 10303-21 clause 6.4.3 (\X2\ and \X\ directives, from memory), and raw UTF-8.
INSTANTIATE_TEST_SUITE_P(Spellings, NameSpelling,
                         testing::Values("B\xC3\xBCgel", "B\\X2\\00FC\\X0\\gel", "B\\X\\FCgel"));

TEST(ReadStep, TheHashIsThatOfTheBytes) {
  // Source: FIPS 180-4's example message "abc" can not be a STEP file; compared with sha256sum.
  const Folder folder;
  const fs::path file = folder.write("model.step", stand_step("MM", "AP214IS"));
  const Model model = read_step(file, {}, Completeness::all_or_error);
  FILE* pipe = popen(("sha256sum " + file.string()).c_str(), "r");
  char hex[65] = {};
  ASSERT_EQ(fread(hex, 1, 64, pipe), 64U);
  pclose(pipe);
  EXPECT_EQ(model.file.sha256, hex);
}

TEST(ReadStep, NothingIsPrinted) {
  const std::string text = stand_step("MM", "AP214IS");
  testing::internal::CaptureStdout();
  testing::internal::CaptureStderr();
  (void)read_text(text);
  EXPECT_EQ(testing::internal::GetCapturedStdout(), "");
  EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
}

TEST(ReadStep, TheShapesAreThereAsLongAsTheModel) {
  fs::path kept;
  {
    const Model model = read_text(stand_step("MM", "AP214IS"));
    kept = model.shapes->folder();
    for (std::size_t i = 0; i < model.products.size(); ++i) {
      EXPECT_FALSE(model.shapes->load(i).IsNull());
      EXPECT_FALSE(model.shapes->load_healed(i).IsNull());
    }
    EXPECT_THROW((void)model.shapes->load(99), Error);
    EXPECT_TRUE(fs::exists(kept));
  }
  EXPECT_FALSE(fs::exists(kept));
}

TEST(ReadStep, InThisProcessGivesTheSameModel) {
  const Folder folder;
  const fs::path file = folder.write("model.step", stand_step("INCH", "AP242DIS"));
  const Model apart = read_step(file, {}, Completeness::all_or_error);
  const Model here = read_step(file, {.read_in = ReadIn::this_process}, Completeness::all_or_error);
  ASSERT_EQ(here.products.size(), apart.products.size());
  for (std::size_t i = 0; i < here.products.size(); ++i) {
    EXPECT_EQ(here.products[i].id, apart.products[i].id);
    EXPECT_EQ(here.products[i].volume, apart.products[i].volume);
    EXPECT_EQ(here.products[i].cylinders.size(), apart.products[i].cylinders.size());
    EXPECT_FALSE(here.shapes->load(i).IsNull());
  }
  EXPECT_EQ(here.occurrences.size(), apart.occurrences.size());
}

TEST(ReadStep, ATempFolderWithoutRoomIsNotTheFilesFault) {
  const Folder folder;
  const fs::path file = folder.write("model.step", stand_step("MM", "AP214IS"));
  const SmallFiles small(
      100);  // as a full disk does, a limit on the size of files ends the writing
  const Error error = test::error_of([&] {
    return read_step(file, {.read_in = ReadIn::this_process}, Completeness::all_or_error);
  });
  EXPECT_EQ(error.code(), ErrorCode::system);
  EXPECT_THAT(error.what(), HasSubstr("shapes.bin: the shapes can not be written; make room"));
  EXPECT_THAT(error.what(), Not(HasSubstr("damaged")));
}

TEST(ReadStep, TimeOfItsFeaturesIsMeasuredInTheChildAsInThisProcess) {
  const Folder folder;
  const auto file = folder.write("model.step", stand_step("MM", "AP214IS"));
  for (const ReadIn where : {ReadIn::child_process, ReadIn::this_process}) {
    ReadLimits limits;
    limits.read_in = where;
    const StageTime features;
    static_cast<void>(read_within(file, limits, Completeness::all_or_error));
    EXPECT_GT(features.seconds(), 0.0);
    EXPECT_LT(features.seconds(), 10.0);
  }
}

}  // namespace spotblue::read_step_test
