#include "spotblue/job/bare_job.hpp"

#include <gtest/gtest.h>

namespace spotblue::bare_job_test {

TEST(UnitOf, AFileInFeetIsReportedInInches) {
  FileInfo file;
  file.unit = "foot";
  EXPECT_EQ(unit_of(file), LengthUnit::inch);
  file.unit = "metre";
  EXPECT_EQ(unit_of(file), LengthUnit::mm);
}

}  // namespace spotblue::bare_job_test
