#include "base/stage_time.hpp"

#include <gtest/gtest.h>

#include <chrono>
#include <thread>

namespace spotblue::stage_time_test {

using std::chrono::milliseconds;

TEST(StageTime, AddsUpWhatItsTimersMeasure) {
  const StageTime time;
  for (int i = 0; i < 2; ++i) {
    const StageTimer timer;
    std::this_thread::sleep_for(milliseconds(5));
  }
  EXPECT_GE(time.seconds(), 0.010);
  add_stage_time(3.0);
  EXPECT_GE(time.seconds(), 3.010);
}

TEST(StageTime, OfInnerWorkIsHiddenFromTheOuter) {
  const StageTime outer;
  {
    const StageTime inner;
    add_stage_time(2.0);
    EXPECT_EQ(inner.seconds(), 2.0);
  }
  add_stage_time(1.0);
  EXPECT_EQ(outer.seconds(), 1.0);
}

TEST(StageTime, OfAnotherThreadIsNotItsOwn) {
  const StageTime time;
  std::thread([] { add_stage_time(1.0); }).join();
  EXPECT_EQ(time.seconds(), 0.0);
}

TEST(StageTime, MayBeWantedByNobody) { EXPECT_NO_THROW(add_stage_time(1.0)); }

}  // namespace spotblue::stage_time_test
