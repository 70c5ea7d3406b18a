// Entries that several jobs share stand in files of their own.

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "spotblue/base/error.hpp"
#include "spotblue/job/job_file.hpp"
#include "support/thrown.hpp"

namespace spotblue::test::job_include_test {

using ::testing::EndsWith;
using ::testing::HasSubstr;

class JobInclude : public ::testing::Test {
 protected:
  JobInclude()
      : folder_(std::filesystem::temp_directory_path() /
                ("spotblue-include-" + std::to_string(getpid()))) {
    std::filesystem::create_directories(folder_);
  }
  ~JobInclude() override { std::filesystem::remove_all(folder_); }

  void write(const std::string& name, const std::string& text) const {
    std::ofstream(folder_ / name) << text;
  }
  [[nodiscard]] Job job(const std::string& text,
                        const std::string& include = "[\"shared.toml\"]") const {
    write("job.toml",
          "schema = 1\nmodel = \"m.step\"\nunit = \"mm\"\ninclude = " + include + "\n" + text);
    return read_job(folder_ / "job.toml");
  }
  std::filesystem::path folder_;
};

TEST_F(JobInclude, AddsItsEntriesBeforeTheJobsOwn) {
  write("shared.toml",
        "[[parts]]\npart = \"Wheel\"\nmaterial = \"carbon steel 1045\"\n"
        "[[turning]]\npart = \"Wheel\"\nrpm = 40\nduty = \"continuous\"\n[conditions]\nrunning_c = "
        "45\n");
  const Job read = job("[[parts]]\npart = \"Stud\"\n");
  ASSERT_EQ(read.parts.size(), 2U);
  EXPECT_EQ(read.parts[0].part, "Wheel");
  EXPECT_THAT(read.parts[0].line->file, EndsWith("shared.toml"));
  EXPECT_EQ(read.parts[0].line->number, 1);
  EXPECT_EQ(read.parts[1].line, JobLine(5));
  EXPECT_EQ(read.turning.size(), 1U);
  EXPECT_EQ(read.conditions.running_c, 45.0);
  EXPECT_EQ(read.read_from.size(), 2U);
}

TEST_F(JobInclude, ReadsItsLengthsInItsOwnUnitOrTheJobs) {
  write("shared.toml", "[[measured]]\nfeature = \"A: bore\"\nsize = 2\n");
  write("inches.toml", "unit = \"in\"\n[[measured]]\nfeature = \"B: bore\"\nsize = 2\n");
  const Job read = job("", "[\"shared.toml\", \"inches.toml\"]");
  EXPECT_EQ(read.measured.at(0).value, Length::mm(2));
  EXPECT_EQ(read.measured.at(1).value, Length::mm(50.8));
}

TEST_F(JobInclude, KnowsTheMaterialsOfTheOthers) {
  write("shared.toml",
        "[[materials]]\nname = \"old iron\"\nyoungs_modulus_gpa = 90\npoisson_ratio = 0.25\n"
        "expansion_um_per_m_k = 10\n");
  EXPECT_EQ(job("[[parts]]\npart = \"A\"\nmaterial = \"old iron\"\n").materials.size(), 1U);
}

TEST_F(JobInclude, SaysInWhichFileAndLineAMistakeIs) {
  write("shared.toml", "\n[[parts]]\npart = \"A\"\nmaterial = \"old irn\"\n");
  const Error material = error_of([&] { return job(""); });
  EXPECT_THAT(material.file(), EndsWith("shared.toml"));
  EXPECT_THAT(material.place(), HasSubstr("line 4"));
  write("shared.toml", "\n[[parts]]\nprat = \"A\"\n");
  const Error key = error_of([&] { return job(""); });
  EXPECT_THAT(key.file(), EndsWith("shared.toml"));
}

TEST_F(JobInclude, RefusesConditionsTwice) {
  write("shared.toml", "[conditions]\nrunning_c = 45\n");
  const Error error = error_of([&] { return job("[conditions]\nrunning_c = 50\n"); });
  EXPECT_THAT(error.rule(), HasSubstr("shared.toml already"));
  EXPECT_THAT(error.place(), HasSubstr("line 5"));
}

TEST_F(JobInclude, RefusesAFileThatIncludesAnotherOrNamesAModel) {
  write("shared.toml", "include = [\"more.toml\"]\n");
  EXPECT_THAT(error_of([&] { return job(""); }).rule(), HasSubstr("do not nest"));
  write("shared.toml", "model = \"other.step\"\n");
  EXPECT_THAT(error_of([&] { return job(""); }).rule(), HasSubstr("names a model"));
}

TEST_F(JobInclude, RefusesAFileElsewhere) {
  const Error error = error_of([&] { return job("", "[\"../elsewhere.toml\"]"); });
  EXPECT_THAT(error.cure(), HasSubstr("--allow-outside"));
}

}  // namespace spotblue::test::job_include_test
