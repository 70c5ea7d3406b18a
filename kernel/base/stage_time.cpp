#include "base/stage_time.hpp"

#include <utility>

namespace spotblue {
namespace {

thread_local StageTime* wanted_by = nullptr;

}  // namespace

StageTime::StageTime() : outer_(std::exchange(wanted_by, this)) {}

StageTime::~StageTime() { wanted_by = outer_; }

void add_stage_time(double seconds) {
  if (wanted_by != nullptr) {
    wanted_by->seconds_ += seconds;
  }
}

StageTimer::~StageTimer() {
  const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start_;
  add_stage_time(taken.count());
}

}  // namespace spotblue
