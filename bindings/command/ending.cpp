#include "command/ending.hpp"

#include <poll.h>
#include <sys/eventfd.h>
#include <sys/signalfd.h>
#include <unistd.h>

#include <array>
#include <atomic>
#include <csignal>
#include <cstdint>
#include <thread>

#include "spotblue/base/stop.hpp"

namespace spotblue::command {
namespace {

// What is at work may still end by itself. Choice of this program, no source.
constexpr int kGraceMs = 3000;

sigset_t ending_signals() {
  sigset_t all;
  sigemptyset(&all);
  for (const int number : {SIGINT, SIGTERM, SIGHUP}) {
    struct sigaction now {};
    ::sigaction(number, nullptr, &now);
    if (now.sa_handler != SIG_IGN) {
      sigaddset(&all, number);
    }
  }
  return all;
}

void end_by(int number) {
  std::signal(number, SIG_DFL);
  sigset_t one;
  sigemptyset(&one);
  sigaddset(&one, number);
  pthread_sigmask(SIG_UNBLOCK, &one, nullptr);
  std::raise(number);
}

// Takes the signals while it is there; threads that are started meanwhile hold them back too.
class Watch {
 public:
  Watch() : signals_(ending_signals()) {
    pthread_sigmask(SIG_BLOCK, &signals_, &before_);
    heard_ = ::signalfd(-1, &signals_, SFD_CLOEXEC);
    done_ = ::eventfd(0, EFD_CLOEXEC);
    if (heard_ >= 0 && done_ >= 0) {
      thread_ = std::thread([this] { watch(); });
    } else {
      pthread_sigmask(SIG_SETMASK, &before_, nullptr);  // no one would hear them
    }
  }
  ~Watch() {
    if (thread_.joinable()) {
      const std::uint64_t one = 1;
      [[maybe_unused]] const ssize_t written = ::write(done_, &one, sizeof one);
      thread_.join();
    }
    ::close(heard_);
    ::close(done_);
    pthread_sigmask(SIG_SETMASK, &before_, nullptr);
    if (const int number = number_; number != 0) {
      end_by(number);
    }
  }
  Watch(const Watch&) = delete;
  Watch& operator=(const Watch&) = delete;
  Watch(Watch&&) = delete;
  Watch& operator=(Watch&&) = delete;

  [[nodiscard]] const std::atomic<bool>& asked() const { return asked_; }

 private:
  void watch() {
    std::array<pollfd, 2> both{{{heard_, POLLIN, 0}, {done_, POLLIN, 0}}};
    while (::poll(both.data(), both.size(), -1) < 0) {
      std::this_thread::yield();  // interrupted, or short of memory for a moment
    }
    signalfd_siginfo info{};
    if ((both[0].revents & POLLIN) == 0 || ::read(heard_, &info, sizeof info) != sizeof info) {
      return;
    }
    number_ = static_cast<int>(info.ssi_signo);
    asked_ = true;
    if (::poll(&both[1], 1, kGraceMs) == 0) {
      end_by(number_);
    }
  }

  sigset_t signals_, before_{};
  int heard_ = -1, done_ = -1;
  std::atomic<bool> asked_ = false;
  std::atomic<int> number_ = 0;
  std::thread thread_;
};

}  // namespace

int run_until_ended(const std::function<int()>& run) {
  Watch watch;
  const StopWhen stop(watch.asked());
  try {
    return run();
  } catch (...) {
    if (!watch.asked()) {
      throw;
    }
    return 2;
  }
}

}  // namespace spotblue::command
