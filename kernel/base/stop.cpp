#include "spotblue/base/stop.hpp"

#include <utility>

#include "base/work_limit.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

thread_local const std::atomic<bool>* stop_flag = nullptr;

}  // namespace

StopWhen::StopWhen(const std::atomic<bool>& asked) : before_(std::exchange(stop_flag, &asked)) {}

StopWhen::~StopWhen() { stop_flag = before_; }

bool stop_asked() { return stop_flag != nullptr && stop_flag->load(); }

void stop_if_asked() {
  if (stop_asked()) {
    throw Error(ErrorCode::stopped, {}, "stopped before it was done", "start it again");
  }
  throw_past_limits();
}

}  // namespace spotblue
