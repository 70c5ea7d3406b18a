#include "command/output.hpp"

#include <fcntl.h>
#include <sys/ioctl.h>
#include <unistd.h>

#include <cerrno>
#include <charconv>
#include <csignal>
#include <cstdlib>
#include <system_error>

#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/whole_file.hpp"

namespace spotblue::command {
namespace {

namespace fs = std::filesystem;

// 0, or the reason.
int write_all(int descriptor, std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = ::write(descriptor, text.data(), text.size());
    if (written < 0) {
      if (errno == EINTR) {
        continue;
      }
      return errno;
    }
    text.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

}  // namespace

void hold_standard_streams() {
  for (int descriptor = 0; descriptor <= 2; ++descriptor) {
    if (::fcntl(descriptor, F_GETFD) == -1) {
      // The lowest free number is this one. Read-only for standard output: writes must fail.
      const int held = ::open("/dev/null", descriptor == STDOUT_FILENO ? O_RDONLY : O_RDWR);
      if (held != descriptor && held >= 0) {
        ::close(held);
      }
    }
  }
}

void refuse_one_for_both(const fs::path& one, const fs::path& other) {
  const auto leads_to = [](const fs::path& file) {
    std::error_code ignored;
    return fs::weakly_canonical(fs::absolute(file, ignored), ignored);
  };
  if (!one.empty() && !other.empty() &&
      (leads_to(one) == leads_to(other) || is_same_file(one, other))) {
    throw Error(ErrorCode::bad_input, {shown_name(other), ""},
                "two results would be written to this one file", "give each a name of its own");
  }
}

ExitCode write_result(std::string_view text, const fs::path& output, ExitCode code) {
  if (!output.empty()) {
    write_whole(output, text);
    return code;
  }
  const int failed = write_all(STDOUT_FILENO, text);
  if (failed != 0 && failed != EPIPE) {
    throw cannot_be_written("standard output", failed);
  }
  return failed == EPIPE ? kReaderGone : code;
}

int ended_with(int code) {
  if (code == kReaderGone) {
    std::signal(SIGPIPE, SIG_DFL);
    std::raise(SIGPIPE);
  }
  return code;
}

std::size_t terminal_width() {
  if (::isatty(STDOUT_FILENO) == 0) {
    return 0;
  }
  winsize size{};
  if (::ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col > 0) {
    return size.ws_col;
  }
  constexpr std::size_t kUsual = 80;
  const char* const told = std::getenv("COLUMNS");
  const std::string_view digits = told == nullptr ? "" : told;
  std::size_t columns = 0;
  std::from_chars(digits.data(), digits.data() + digits.size(), columns);
  return columns > 0 ? columns : kUsual;
}

bool shows_colour() {
  const char* const refused = std::getenv("NO_COLOR");
  const char* const terminal = std::getenv("TERM");
  return ::isatty(STDOUT_FILENO) != 0 && (refused == nullptr || *refused == '\0') &&
         terminal != nullptr && std::string_view(terminal) != "dumb";
}

}  // namespace spotblue::command
