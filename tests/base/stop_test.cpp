#include "spotblue/base/stop.hpp"

#include <gtest/gtest.h>

#include <thread>

#include "spotblue/base/error.hpp"

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
  EXPECT_THROW(stop_if_asked(), Error);
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
