#pragma once
// How long a stage takes that lies within other work, in this thread or in a child of it.

#include <chrono>

#include "spotblue/base/export.hpp"

namespace spotblue {

// What a child has measured; nothing when nobody wants to know.
SPOTBLUE_EXPORT void add_stage_time(double seconds);

// Adds up what the StageTimers of this thread measure while it lives. The inner of two hides the
// outer.
class SPOTBLUE_EXPORT StageTime {
 public:
  StageTime();
  ~StageTime();
  StageTime(const StageTime&) = delete;
  StageTime& operator=(const StageTime&) = delete;
  StageTime(StageTime&&) = delete;
  StageTime& operator=(StageTime&&) = delete;

  [[nodiscard]] double seconds() const { return seconds_; }

 private:
  friend void add_stage_time(double seconds);
  double seconds_ = 0.0;
  StageTime* outer_;
};

// Measures the stage for as long as it lives.
class SPOTBLUE_EXPORT StageTimer {
 public:
  StageTimer() = default;
  ~StageTimer();
  StageTimer(const StageTimer&) = delete;
  StageTimer& operator=(const StageTimer&) = delete;
  StageTimer(StageTimer&&) = delete;
  StageTimer& operator=(StageTimer&&) = delete;

 private:
  std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

}  // namespace spotblue
