#pragma once
/// @file
/// A line on standard error while something takes longer than a second.

#include <chrono>
#include <string>
#include <thread>

namespace spotblue::command {

/// Shows "spotblue: looking at press.step, 3 s" while it lives, once a second, and takes the line
/// away again; only when standard error is a terminal that can do so and has room for it.
///
/// Reading forks. The ticking thread is safe across that: it takes no lock and no memory, it only
/// polls, reads the clock and writes to a file descriptor, so a fork at any moment copies nothing
/// half done.
class Progress {
 public:
  explicit Progress(const std::string& what);
  ~Progress();
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;

 private:
  void tick() const;

  std::string line_;   // "\rspotblue: looking at press.step, "
  std::string blank_;  // takes the line away
  std::chrono::steady_clock::time_point start_;
  int stop_ = -1;  // eventfd; -1 when nothing is shown
  std::thread ticker_;
};

}  // namespace spotblue::command
