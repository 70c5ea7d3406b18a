#include "python/values/long_call.hpp"

#include <pthread.h>
#include <pybind11/pybind11.h>

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <csignal>
#include <exception>
#include <mutex>
#include <thread>

#include "spotblue/base/stop.hpp"

namespace spotblue::python {
namespace {

using namespace std::chrono_literals;

struct Progress {
  std::atomic<bool> stop{false};
  std::mutex mutex;
  std::condition_variable changed;
  bool done = false;
  std::exception_ptr thrown;

  bool wait(std::chrono::milliseconds time) {
    const pybind11::gil_scoped_release others_may_run;
    std::unique_lock lock(mutex);
    return changed.wait_for(lock, time, [this] { return done; });
  }
};

void work_through(const std::shared_ptr<Progress>& progress, std::function<void()> work) {
  std::exception_ptr thrown;
  try {
    const StopWhen stop_when(progress->stop);
    work();
  } catch (...) {
    thrown = std::current_exception();
  }
  work = nullptr;
  const std::lock_guard lock(progress->mutex);
  progress->thrown = std::move(thrown);
  progress->done = true;
  progress->changed.notify_all();
}

std::thread without_signals(const std::shared_ptr<Progress>& progress, std::function<void()> work) {
  sigset_t all;
  sigset_t before;
  sigfillset(&all);
  pthread_sigmask(SIG_SETMASK, &all, &before);
  std::thread thread(work_through, progress, std::move(work));
  pthread_sigmask(SIG_SETMASK, &before, nullptr);
  return thread;
}

}  // namespace

void run_long(std::function<void()> work) {
  const auto progress = std::make_shared<Progress>();
  std::thread thread = without_signals(progress, std::move(work));
  while (!progress->wait(100ms)) {
    if (PyErr_CheckSignals() != 0) {
      pybind11::error_already_set raised;
      progress->stop = true;
      if (progress->wait(700ms)) {
        thread.join();
      } else {
        thread.detach();
      }
      throw raised;
    }
  }
  thread.join();
  if (progress->thrown) {
    std::rethrow_exception(progress->thrown);
  }
}

}  // namespace spotblue::python
