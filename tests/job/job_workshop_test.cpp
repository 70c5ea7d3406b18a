// What a job file says of running, turning, lengths, meshes and cuts.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "job/job_text.hpp"
#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::job_workshop_test {

using ::testing::HasSubstr;

const std::string kHead = "schema = 1\nmodel = \"m.step\"\nunit = \"mm\"\n";

Job every_key() { return read_job(SPOTBLUE_TEST_FILES "/every_key.toml"); }

TEST(JobConditions, AreReadByName) {
  const Conditions conditions = every_key().conditions;
  EXPECT_EQ(conditions.bench_c, 18.0);
  EXPECT_EQ(conditions.running_c, 65.0);
  EXPECT_EQ(conditions.friction_least, 0.1);
  EXPECT_EQ(conditions.friction_greatest, 0.15);
  EXPECT_EQ(conditions.rz_um, 4.0);
  EXPECT_EQ(conditions.slip_clearance, Length::mm(0.04));
  EXPECT_EQ(conditions.untoleranced, "f");
  EXPECT_EQ(conditions.cleaning, Length::mm(0.5));
}

TEST(JobConditions, WithoutARunningTemperatureNothingGetsWarm) {
  const Job job = test::job_of(kHead + "[conditions]\nbench_c = 15\n");
  EXPECT_EQ(job.conditions.running_c, 15.0);
}

TEST(JobTurning, GivesSpeedDutyAndLoads) {
  const Turning turning = every_key().turning.at(0);
  EXPECT_EQ(turning.part, "Wheel");
  EXPECT_EQ(turning.rpm, 90.0);
  EXPECT_EQ(turning.duty, Duty::no_load_slow);
  EXPECT_EQ(turning.load_n, 250.0);
  EXPECT_EQ(turning.thrust_n, 40.0);
}

TEST(JobTurning, GivesWhereTheLoadActsAndHowItIsShared) {
  const Turning turning = every_key().turning.at(0);
  EXPECT_EQ(turning.at, "Wheel: face 55 @ 0");
  EXPECT_EQ(turning.out, Length::mm(-12.5));
  EXPECT_EQ(turning.sharing, LoadSharing::evenly);
}

TEST(JobTurning, LoadsThatAreNotGivenStayUnknown) {
  const Job job =
      test::job_of(kHead + "[[turning]]\npart = \"A\"\nrpm = 10\nduty = \"continuous\"\n");
  EXPECT_EQ(job.turning.at(0).duty, Duty::continuous);
  EXPECT_FALSE(job.turning.at(0).load_n.has_value());
}

TEST(JobJoins, NameTwoPartsAndWhatHoldsThem) {
  const Fixing join = every_key().fixed.at(0);
  EXPECT_EQ(join.b, "Plate");
  EXPECT_EQ(join.by, "two screws");
}

TEST(JobKeepOff, GivesTheLeastGapAndTheReason) {
  const KeepOff keep_off = every_key().keep_off.at(0);
  EXPECT_EQ(keep_off.least, Length::mm(0.5));
  EXPECT_EQ(keep_off.reason, "one turns, the other does not");
}

TEST(JobStock, GivesAPieceThatSeveralPartsAreCutFrom) {
  const SharedStock stock = every_key().stock.at(0);
  EXPECT_EQ(stock.piece.diameter, Length::mm(30.0));
  EXPECT_EQ(stock.parts, (std::vector<std::string>{"Stud", "Nut", "Nut"}));
  EXPECT_EQ(stock.parting, Length::mm(3.0));
  EXPECT_EQ(stock.stub, Length::mm(20.0));
}

TEST(JobThreads, GiveTheSizeAndHowMuchThreadIsEnough) {
  const ThreadWant thread = every_key().threads.at(0);
  EXPECT_EQ(thread.hole, "Nut: bore 19");
  EXPECT_EQ(thread.screw, "Stud: outside 20");
  EXPECT_EQ(thread.size, "M20x1");
  EXPECT_EQ(thread.engaged, Length::mm(5.0));
  EXPECT_EQ(thread.reason, "it only keeps the ring in place");
}

TEST(JobSurfaces, GiveAFeatureItsRoughness) { EXPECT_EQ(every_key().surfaces.at(0).rz_um, 10.0); }

TEST(JobLengths, AreMeasuredOrToleranced) {
  const Job job = every_key();
  EXPECT_EQ(job.lengths.at(0).measured, Length::mm(40.02));
  EXPECT_EQ(job.lengths.at(0).uncertainty, Length::mm(0.01));
  EXPECT_FALSE(job.lengths.at(0).limits.has_value());
  EXPECT_EQ(job.lengths.at(1).limits->upper, Length::mm(2.5));
}

TEST(JobWants, MayAskForTheEndPlayOfAPart) {
  const Job job = every_key();
  ASSERT_EQ(job.end_play.size(), 2U);
  EXPECT_EQ(job.end_play[0].of, "Wheel");
  EXPECT_EQ(job.end_play[0].gap.upper, Length::mm(0.3));
  EXPECT_FALSE(job.end_play[0].on);
}

TEST(JobWants, MayAskForTheEndPlayOfAPartOnAnother) {
  EXPECT_EQ(every_key().end_play.at(1).on, "Stud");
}

TEST(JobWants, OfAPartOnItselfAreRefused) {
  const Error error = test::error_of([] {
    (void)test::job_of(kHead + "[[wants]]\nof = \"Hub\"\non = \"Hub\"\ngap = [0.1, 0.2]\n");
  });
  EXPECT_THAT(error.what(), HasSubstr("no play on itself"));
  EXPECT_THAT(error.what(), HasSubstr("line 6"));
}

TEST(JobAdjust, SaysByThreadPitchOrRangeHowAPartIsSet) {
  const std::vector<Adjust> adjust = every_key().adjust;
  ASSERT_EQ(adjust.size(), 3U);
  EXPECT_EQ(adjust[0].part, "Nut");
  EXPECT_EQ(adjust[0].thread, "M16x1.5");
  EXPECT_EQ(adjust[0].from, "Stud: face 40 @ 0");
  EXPECT_EQ(adjust[0].to, "Nut: face 24 @ 0");
  EXPECT_EQ(adjust[1].pitch, Length::mm(1.25));
  EXPECT_FALSE(adjust[1].from);
  EXPECT_EQ(adjust[2].range->upper, Length::mm(1.5));
}

TEST(JobAdjust, MistakesAreRefusedByLineWithACure) {
  const auto mistake = [](const std::string& entry) {
    const Error error = test::error_of(
        [&entry] { (void)test::job_of(kHead + "[[adjust]]\npart = \"Nut\"\n" + entry); });
    EXPECT_FALSE(error.cure().empty()) << entry;
    return std::string(error.what());
  };
  EXPECT_THAT(mistake(""), HasSubstr("thread"));
  EXPECT_THAT(mistake("thread = \"M17\"\n"), HasSubstr("line 6"));
  EXPECT_THAT(mistake("thread = \"M16\"\nrange = [1, 2]\n"), HasSubstr("range"));
  EXPECT_THAT(mistake("range = [-1, 2]\n"), HasSubstr("not less than 0"));
  EXPECT_THAT(mistake("range = [1, 2]\nbetween = [\"Stud: face 40\", \"Wheel: face 50\"]\n"),
              HasSubstr("no face of \"Nut\""));
  EXPECT_THAT(mistake("range = [1, 2]\nbetween = [\"Stud\", \"Nut: face 24\"]\n"),
              HasSubstr("is no feature name"));
}

TEST(JobParts, WithAnEmptyNameOfAMaterialAreRefusedByLine) {
  const Error error = test::error_of(
      [] { (void)test::job_of(kHead + "[[parts]]\npart = \"Nut\"\nmaterial = \"\"\n"); });
  EXPECT_THAT(error.what(), HasSubstr("the text is empty"));
  EXPECT_THAT(error.what(), HasSubstr("line 6"));
}

TEST(JobMeshes, TakeADiametralPitch) {
  const Mesh mesh = every_key().meshes.at(0);
  EXPECT_NEAR(mesh.module.in_mm(), 2.54, 1e-12);  // 25.4 / 10
  EXPECT_EQ(mesh.pressure_angle_deg, 14.5);
  EXPECT_EQ(mesh.helix_angle_deg, 12.0);
  EXPECT_EQ(mesh.backlash->lower, Length::mm(0.1));
  EXPECT_EQ(mesh.face_share, 0.75);
}

TEST(JobMeshes, TakeEachGearWithItsTeethAndTheirThickness) {
  const Mesh mesh = every_key().meshes.at(0);
  EXPECT_EQ(mesh.a.teeth, 36);
  EXPECT_EQ(mesh.a.thickness, Length::mm(3.9));
  EXPECT_EQ(mesh.a.root_diameter, Length::mm(84));
  ASSERT_TRUE(mesh.b.span.has_value());
  EXPECT_EQ(mesh.b.span->teeth, 3);
  EXPECT_EQ(mesh.b.span->over, Length::mm(19.1));
  EXPECT_FALSE(mesh.b.thickness.has_value());
}

TEST(JobMeshes, WithoutAnglesAreSpurGearsOf20Degrees) {
  const Job job = test::job_of(
      kHead +
      "[[meshes]]\nmodule = 2\ngears = [{part = \"A\", teeth = 20}, {part = \"B\", teeth = 30}]\n");
  EXPECT_EQ(job.meshes.at(0).pressure_angle_deg, 20.0);
  EXPECT_EQ(job.meshes.at(0).helix_angle_deg, 0.0);
}

TEST(JobCuts, SayWhatWasThereAndWhatTheShaftCarries) {
  const Cut cut = every_key().cuts.at(0);
  EXPECT_EQ(cut.before, Length::mm(30));
  EXPECT_EQ(cut.fillet, Length::mm(0.5));
  EXPECT_EQ(cut.mate_corner, Length::mm(0.8));
  EXPECT_EQ(cut.torque_nm, 12.0);
  EXPECT_EQ(cut.bending_nm, 5.0);
}

TEST(JobCuts, MayOpenABoreOrFaceAnEnd) {
  const Job job = every_key();
  ASSERT_EQ(job.cuts.size(), 3U);
  EXPECT_EQ(job.cuts[1].before, Length::mm(43));
  EXPECT_EQ(job.cuts[1].depth, std::nullopt);
  EXPECT_EQ(job.cuts[2].depth, Length::mm(1.5));
}

}  // namespace spotblue::job_workshop_test
