#include "spotblue/job/job_file.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "job/job_text.hpp"
#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::job_file_test {

using test::job_of;
using ::testing::HasSubstr;

class OutsideFolder : public ::testing::Test {
 protected:
  OutsideFolder()
      : folder_(std::filesystem::temp_directory_path() /
                ("spotblue-outside-" + std::to_string(getpid()))) {
    std::filesystem::create_directories(folder_ / "job" / "below");
    std::ofstream(folder_ / "press.step") << "x";
    std::ofstream(folder_ / "job" / "below" / "press.step") << "x";
    std::filesystem::create_symlink("../press.step", folder_ / "job" / "link.step");
    std::filesystem::create_directory_symlink("..", folder_ / "job" / "up");
    std::filesystem::create_symlink("below/press.step", folder_ / "job" / "inner.step");
  }
  ~OutsideFolder() override { std::filesystem::remove_all(folder_); }

  [[nodiscard]] Job job_with(const std::string& model, Outside outside) const {
    std::ofstream(folder_ / "job" / "job.toml")
        << "schema = 1\nunit = \"mm\"\nmodel = \"" << model << "\"\n";
    return read_job(folder_ / "job" / "job.toml", outside);
  }
  std::filesystem::path folder_;
};

TEST_F(OutsideFolder, AModelElsewhereIsRefusedByLineWithWhereItLiesAndTheCure) {
  for (const std::string& model :
       {std::string("../press.step"), std::string("link.step"), std::string("up/press.step"),
        std::string("below/../../none.step"), (folder_ / "press.step").string(),
        std::string("../job-of-another/press.step")}) {
    const Error error = test::error_of([&] { return job_with(model, Outside::refused); });
    EXPECT_EQ(error.code(), ErrorCode::bad_input);
    EXPECT_THAT(error.what(), HasSubstr("job.toml, line 3, model: \"" + model + "\" is /"));
    EXPECT_THAT(error.what(), HasSubstr("--allow-outside"));
    EXPECT_NO_THROW((void)job_with(model, Outside::allowed)) << model;
  }
}

TEST_F(OutsideFolder, AModelBelowTheJobsFolderIsTakenByWhateverName) {
  for (const std::string& model :
       {std::string("below/press.step"), std::string("inner.step"),
        std::string("not-made-yet.step"), std::string("up/job/below/press.step"),
        (folder_ / "job" / "below" / "press.step").string()}) {
    EXPECT_NO_THROW((void)job_with(model, Outside::refused)) << model;
  }
}

const std::string kHead = "schema = 1\nmodel = \"m.step\"\nunit = \"mm\"\n";

Job every_key() { return read_job(SPOTBLUE_TEST_FILES "/every_key.toml"); }

TEST(JobFile, TakesTheModelFromItsOwnFolder) {
  EXPECT_EQ(every_key().model, std::filesystem::path(SPOTBLUE_TEST_FILES "/wheel.step"));
}

TEST(JobFile, ReadsPartsWithTheirStock) {
  const Job job = every_key();
  ASSERT_EQ(job.parts.size(), 3U);
  EXPECT_EQ(job.parts[0].part, "Wheel");
  EXPECT_EQ(job.parts[0].material, "museum iron");
  EXPECT_TRUE(job.parts[0].irreplaceable);
  ASSERT_TRUE(job.parts[1].stock.has_value());
  EXPECT_EQ(job.parts[1].stock->form, StockForm::tube);
  EXPECT_NEAR(job.parts[1].stock->diameter->in_mm(), 50.8, 1e-12);
  EXPECT_EQ(job.parts[2].stock->thickness, Length::mm(3));
}

TEST(JobFile, TakesFoundPartsAsMeasuredAndNewPartsAsBasicUnlessTold) {
  const Job job = every_key();
  EXPECT_EQ(job.parts[0].drawn, Drawn::at_the_size_wanted);
  EXPECT_EQ(job.parts[1].drawn, Drawn::at_nominal);
  EXPECT_EQ(job.parts[2].drawn, Drawn::at_the_size_wanted);
}

TEST(JobFile, ReadsClassFitsOfBothStandards) {
  const Job job = every_key();
  const auto& iso = std::get<ClassFit>(job.fits.at(0).rule);
  EXPECT_EQ(iso.system, FitSystem::iso_286);
  EXPECT_EQ(iso.text, "H7/s6");
  EXPECT_EQ(iso.nominal, Length::mm(44));
  EXPECT_EQ(std::get<ClassFit>(job.fits.at(1).rule).system, FitSystem::ansi_b4_1);
}

TEST(JobFile, ReadsInterferenceAsNegativeClearance) {
  const Job job = every_key();
  const auto& limits = std::get<ClearanceLimits>(job.fits.at(3).rule);
  EXPECT_EQ(limits.least, Length::mm(-0.02));
  EXPECT_EQ(limits.greatest, Length::mm(-0.005));
}

TEST(JobFile, ReadsAllowancePerDiameter) {
  const Job job = every_key();
  const auto& press = std::get<PerDiameter>(job.fits.at(4).rule);
  EXPECT_DOUBLE_EQ(press.clearance, -0.001);
  EXPECT_NEAR(press.tolerance.in_mm(), 0.0127, 1e-12);
  EXPECT_DOUBLE_EQ(std::get<PerDiameter>(job.fits.at(5).rule).clearance, 0.001);
}

TEST(JobFile, ReadsMeasuredSizesWithAndWithoutUncertainty) {
  const Job job = every_key();
  EXPECT_EQ(job.measured.at(0).value, Length::mm(44.012));
  EXPECT_EQ(job.measured.at(0).uncertainty, Length::mm(0.004));
  EXPECT_NEAR(job.measured.at(1).value.in_mm(), 63.0 / 64.0 * 25.4, 1e-12);
  EXPECT_FALSE(job.measured.at(1).uncertainty.has_value());
  ASSERT_EQ(job.measured_gaps.size(), 1U);
  EXPECT_EQ(job.measured_gaps[0].value, Length::mm(0.12));
}

TEST(JobFile, ReadsWantsOfEachKind) {
  const Job job = every_key();
  ASSERT_EQ(job.axial.size(), 3U);
  EXPECT_EQ(job.axial[0].kind, AxialWantKind::gap);
  EXPECT_EQ(job.axial[0].greatest, Length::mm(0.3));
  EXPECT_EQ(job.axial[1].kind, AxialWantKind::end_play);
  EXPECT_EQ(job.axial[2].kind, AxialWantKind::touch);
  EXPECT_EQ(job.axial[2].least, Length::mm(-0.01));
}

TEST(JobFile, ReadsTapersAllowancesSizesAndMaterials) {
  const Job job = every_key();
  EXPECT_DOUBLE_EQ(job.tapers.at(0).angle_within_deg, 0.05);
  EXPECT_EQ(job.tapers.at(0).gap->least, Length::mm(-0.02));
  EXPECT_EQ(job.allowed.at(0).reason, "squeezed on purpose");
  EXPECT_EQ(std::get<std::string>(job.sizes.at(0).rule), "F8");
  EXPECT_EQ(std::get<Limits>(job.sizes.at(1).rule).upper, Length::mm(25));
  EXPECT_EQ(job.materials.at(0).yield_mpa, 150.0);
}

TEST(JobFile, ReadsSettingsByName) {
  const JobSettings settings = every_key().settings;
  EXPECT_EQ(settings.default_uncertainty, Length::mm(0.005));
  EXPECT_EQ(settings.look.seats.coaxial_offset_mm, 0.6);
  EXPECT_EQ(settings.look.limits.memory_mb, 2000.0);
}

TEST(JobFile, ReadsBareNumbersInTheUnitOfTheJob) {
  const Job job = job_of(
      "schema = 1\nmodel = \"m.step\"\nunit = \"inch\"\n"
      "[[measured]]\nfeature = \"Pin: outside 3/4\"\nsize = 0.7495\n"
      "[[measured]]\nfeature = \"Pin: outside 1/2\"\nsize = \"12.7 mm\"\n");
  EXPECT_NEAR(job.measured.at(0).value.in_mm(), 19.0373, 1e-9);  // 0.7495 x 25.4
  EXPECT_NEAR(job.measured.at(1).value.in_mm(), 12.7, 1e-12);
}

TEST(JobFile, KeepsTheLineOfEachEntry) {
  const Job job = job_of(kHead + "\n[[parts]]\npart = \"A\"\n\n[[parts]]\npart = \"B\"\n");
  EXPECT_EQ(job.parts.at(0).line, 5);
  EXPECT_EQ(job.parts.at(1).line, 8);
}

TEST(JobFile, RefusesAMissingFileByName) {
  const Error problem = test::error_of([&] { return read_job("/no/such/job.toml"); });
  EXPECT_EQ(problem.code(), ErrorCode::file_access);
  EXPECT_EQ(problem.file(), "/no/such/job.toml");
}

}  // namespace spotblue::job_file_test
