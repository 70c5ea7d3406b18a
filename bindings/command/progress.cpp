#include "command/progress.hpp"

#include <poll.h>
#include <sys/eventfd.h>
#include <sys/ioctl.h>
#include <unistd.h>

#include <array>
#include <charconv>
#include <csignal>
#include <cstdint>
#include <cstdlib>
#include <string_view>

namespace spotblue::command {
namespace {

constexpr int kTickMs = 1000;
constexpr std::size_t kRoom = 12;  // digits and " s"

// What cannot be shown is not worth failing for.
void show(const char* text, std::size_t size) {
  [[maybe_unused]] const ssize_t written = ::write(STDERR_FILENO, text, size);
}

// A line that wrapped could not be taken away again, nor can any on a terminal without a cursor.
bool can_take_away() {
  const char* const terminal = std::getenv("TERM");
  return ::isatty(STDERR_FILENO) != 0 && terminal != nullptr &&
         std::string_view(terminal) != "dumb";
}

std::size_t columns() {
  constexpr std::size_t kUsual = 80;
  winsize size{};
  return ::ioctl(STDERR_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col > 0 ? size.ws_col : kUsual;
}

}  // namespace

Progress::Progress(const std::string& what) : start_(std::chrono::steady_clock::now()) {
  const auto line = [](std::string_view does) { return "\rspotblue: " + std::string(does) + ", "; };
  // In a narrow terminal what is done without to what.
  line_ = line(what);
  if (line_.size() + kRoom > columns()) {
    line_ = line(std::string_view(what).substr(0, what.find(' ')));
  }
  if (!can_take_away() || line_.size() + kRoom > columns()) {
    return;
  }
  stop_ = ::eventfd(0, EFD_CLOEXEC);
  if (stop_ < 0) {
    return;
  }
  blank_.assign(line_.size() + kRoom, ' ');
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
