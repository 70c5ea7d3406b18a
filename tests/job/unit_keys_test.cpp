// Forces, temperatures and strengths in the units of an inch shop.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "job/job_text.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue::unit_keys_test {

using ::testing::HasSubstr;

const std::string kHead = "schema = 1\nmodel = \"a.step\"\nunit = \"inch\"\n";

Job inch_job(const std::string& rest) { return test::job_of(kHead + rest); }

// NIST SP 811 (2008), appendix B.8: 1 lbf is 4.448 222 N, 1 lbf ft 1.355 818 N m, 1 lbf in
// 0.112 984 8 N m, 1 psi 6.894 757 kPa; 68 deg F is 20 deg C.
TEST(UnitKeys, TakeLoadsInPoundsForce) {
  const Job job = inch_job(
      "[[turning]]\npart = \"A\"\nrpm = 5\nduty = \"continuous\"\nload_lbf = 100\nthrust_lbf = "
      "10\n");
  EXPECT_NEAR(job.turning.at(0).load_n.value(), 444.8222, 1e-4);
  EXPECT_NEAR(job.turning.at(0).thrust_n.value(), 44.48222, 1e-5);
}

TEST(UnitKeys, TakeTemperaturesInFahrenheit) {
  const Job job = inch_job(
      "[conditions]\nbench_f = 68\nrunning_f = 212\n[[parts]]\npart = \"A\"\nrunning_f = 140\n");
  EXPECT_NEAR(job.conditions.bench_c, 20.0, 1e-12);
  EXPECT_NEAR(job.conditions.running_c, 100.0, 1e-12);
  EXPECT_NEAR(job.parts.at(0).running_c.value(), 60.0, 1e-12);
}

TEST(UnitKeys, TakeTorquesByTheFootAndTheInch) {
  const Job job = inch_job(
      "[[cuts]]\nfeature = \"A: outside 1\"\nbefore = \"1 1/16\"\ntorque_lb_ft = 10\n"
      "bending_lb_in = 10\n");
  EXPECT_NEAR(job.cuts.at(0).torque_nm.value(), 13.55818, 1e-5);
  EXPECT_NEAR(job.cuts.at(0).bending_nm.value(), 1.129848, 1e-6);
}

TEST(UnitKeys, TakeMaterialsInPsi) {
  const Job job = inch_job(
      "[[materials]]\nname = \"x\"\nyoungs_modulus_psi = 15e6\npoisson_ratio = 0.3\n"
      "expansion_uin_per_in_f = 10\nyield_psi = 20000\ntensile_psi = 30000\n");
  EXPECT_NEAR(job.materials.at(0).youngs_modulus_gpa, 103.42136, 1e-5);
  EXPECT_NEAR(job.materials.at(0).expansion_um_per_m_k, 18.0, 1e-12);
  EXPECT_NEAR(job.materials.at(0).yield_mpa.value(), 137.89515, 1e-5);
  EXPECT_NEAR(job.materials.at(0).tensile_mpa.value(), 206.84272, 1e-5);
}

TEST(UnitKeys, TakeRoughnessInMicroinches) {
  EXPECT_NEAR(inch_job("[conditions]\nrz_uin = 250\n").conditions.rz_um, 6.35, 1e-12);
}

TEST(UnitKeys, RefuseOneNumberTwice) {
  try {
    (void)inch_job("[conditions]\nbench_f = 68\nbench_c = 20\n");
    FAIL();
  } catch (const Error& error) {
    EXPECT_THAT(error.rule(), HasSubstr("given by bench_c already"));
    EXPECT_THAT(error.cure(), HasSubstr("keep one"));
  }
}

TEST(UnitKeys, TellTheRangeInTheUnitOfTheKey) {
  try {
    (void)inch_job("[conditions]\nrunning_f = 2000\n");
    FAIL();
  } catch (const Error& error) {
    EXPECT_THAT(error.rule(), HasSubstr("need -328 to 1112, got 2000"));
  }
}

}  // namespace spotblue::unit_keys_test
