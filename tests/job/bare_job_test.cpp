#include "spotblue/job/bare_job.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <string>

namespace spotblue {
namespace {

std::filesystem::path written(const std::string& name, const std::string& text) {
  const std::filesystem::path file = std::filesystem::path(testing::TempDir()) / name;
  std::ofstream(file) << text;
  return file;
}

TEST(IsStepFile, TheFirstLettersDecideWhateverTheName) {
  EXPECT_TRUE(is_step_file(written("bare_job_model.txt", "ISO-10303-21;\nHEADER;\n")));
  EXPECT_FALSE(is_step_file(written("bare_job_job.step", "model = \"press.step\"\n")));
}

TEST(IsStepFile, TheEndingDecidesWhereThereIsNothingToRead) {
  EXPECT_TRUE(is_step_file("no/such/press.STP"));
  EXPECT_FALSE(is_step_file("no/such/press.job.toml"));
}

TEST(UnitOf, AFileInFeetIsReportedInInches) {
  FileInfo file;
  file.unit = "foot";
  EXPECT_EQ(unit_of(file), LengthUnit::inch);
  file.unit = "metre";
  EXPECT_EQ(unit_of(file), LengthUnit::mm);
}

}  // namespace
}  // namespace spotblue
