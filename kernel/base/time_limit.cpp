#include "base/time_limit.hpp"

#include <algorithm>
#include <limits>

namespace spotblue {
namespace {

using Clock = std::chrono::steady_clock;

constexpr double kNoLimit = 3e9;  // s, a hundred years

thread_local Clock::time_point end_of_time = Clock::time_point::max();

Clock::time_point after(double seconds) {
  return seconds < kNoLimit
             ? Clock::now() + std::chrono::duration_cast<Clock::duration>(
                                  std::chrono::duration<double>(std::max(0.0, seconds)))
             : Clock::time_point::max();
}

}  // namespace

TimeLimit::TimeLimit(double seconds) : before_(end_of_time) {
  end_of_time = std::min(before_, after(seconds));
}

TimeLimit::~TimeLimit() { end_of_time = before_; }

double seconds_left() {
  return end_of_time == Clock::time_point::max()
             ? std::numeric_limits<double>::infinity()
             : std::chrono::duration<double>(end_of_time - Clock::now()).count();
}

}  // namespace spotblue
