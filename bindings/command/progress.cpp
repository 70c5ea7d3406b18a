#include "progress.hpp"

#include <poll.h>
#include <sys/eventfd.h>
#include <unistd.h>

#include <array>
#include <charconv>
#include <csignal>
#include <cstdint>

namespace spotblue::command {
namespace {

constexpr int kTickMs = 1000;
constexpr std::size_t kRoom = 24;  // digits and " s"

// What cannot be shown is not worth failing for.
void show(const char* text, std::size_t size) {
  [[maybe_unused]] const ssize_t written = ::write(STDERR_FILENO, text, size);
}

}  // namespace

Progress::Progress(const std::string& what) : start_(std::chrono::steady_clock::now()) {
  if (::isatty(STDERR_FILENO) == 0) {
    return;
  }
  stop_ = ::eventfd(0, EFD_CLOEXEC);
  if (stop_ < 0) {
    return;
  }
  line_ = "\rspotblue: " + what + ", ";
  blank_.assign(line_.size() + kRoom + 2, ' ');
  blank_.front() = blank_.back() = '\r';
  // Signals stay with the main thread.
  sigset_t all;
  sigset_t before;
  sigfillset(&all);
  pthread_sigmask(SIG_BLOCK, &all, &before);
  ticker_ = std::thread([this] { tick(); });
  pthread_sigmask(SIG_SETMASK, &before, nullptr);
}

Progress::~Progress() {
  if (!ticker_.joinable()) {
    return;
  }
  const std::uint64_t one = 1;
  [[maybe_unused]] const ssize_t written = ::write(stop_, &one, sizeof one);
  ticker_.join();
  ::close(stop_);
}

void Progress::tick() const {
  bool shown = false;
  pollfd stop{stop_, POLLIN, 0};
  while (::poll(&stop, 1, kTickMs) == 0) {
    const auto seconds =
        std::chrono::duration_cast<std::chrono::seconds>(std::chrono::steady_clock::now() - start_);
    std::array<char, kRoom> text{};
    char* end = std::to_chars(text.data(), text.data() + text.size() - 2, seconds.count()).ptr;
    *end++ = ' ';
    *end++ = 's';
    show(line_.data(), line_.size());
    show(text.data(), static_cast<std::size_t>(end - text.data()));
    shown = true;
  }
  if (shown) {
    show(blank_.data(), blank_.size());
  }
}

}  // namespace spotblue::command
