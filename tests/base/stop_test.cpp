#include "spotblue/base/stop.hpp"

#include <gtest/gtest.h>

#include <thread>

#include "base/work_limit.hpp"
#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::stop_test {

TEST(Stop, NobodyAsksWhereNobodyCan) {
  EXPECT_FALSE(stop_asked());
  EXPECT_NO_THROW(stop_if_asked());
}

TEST(Stop, WorkEndsOnceItsStarterAsks) {
  std::atomic<bool> asked{false};
  const StopWhen stop(asked);
  EXPECT_NO_THROW(stop_if_asked());
  asked = true;
  const Error ended = test::error_of([] {
    stop_if_asked();
    return 0;
  });
  EXPECT_EQ(ended.code(), ErrorCode::stopped);
}

TEST(Stop, TimeThatIsUpIsAStopAndWantOfMemoryTheMachines) {
  EXPECT_EQ(LimitReached(Bound::time).code(), ErrorCode::stopped);
  EXPECT_EQ(LimitReached(Bound::memory).code(), ErrorCode::stopped);
  EXPECT_EQ(LimitReached(Bound::machine).code(), ErrorCode::system);
}

TEST(Stop, AnotherThreadsWorkGoesOn) {
  const std::atomic<bool> asked{true};
  const StopWhen stop(asked);
  bool other = true;
  std::thread([&other] { other = stop_asked(); }).join();
  EXPECT_FALSE(other);
  EXPECT_TRUE(stop_asked());
}

TEST(Stop, AnInnerPieceOfWorkGivesWayToTheOuterOne) {
  const std::atomic<bool> outer{true};
  const std::atomic<bool> inner{false};
  const StopWhen stop_outer(outer);
  {
    const StopWhen stop_inner(inner);
    EXPECT_FALSE(stop_asked());
  }
  EXPECT_TRUE(stop_asked());
}

}  // namespace spotblue::stop_test
