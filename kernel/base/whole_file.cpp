#include "spotblue/base/whole_file.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <ctime>
#include <optional>
#include <random>
#include <string>
#include <system_error>

#include "base/error_kinds.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

namespace fs = std::filesystem;

// A file that may grow no more ends a program by a signal; here it shall be an error like others.
class NoSizeSignal {
 public:
  NoSizeSignal() {
    sigemptyset(&size_);
    sigaddset(&size_, SIGXFSZ);
    sigset_t pending;
    sigpending(&pending);
    was_pending_ = sigismember(&pending, SIGXFSZ) == 1;
    pthread_sigmask(SIG_BLOCK, &size_, &before_);
  }
  ~NoSizeSignal() {
    const timespec at_once{};
    while (!was_pending_ && sigtimedwait(&size_, nullptr, &at_once) > 0) {
    }
    pthread_sigmask(SIG_SETMASK, &before_, nullptr);
  }
  NoSizeSignal(const NoSizeSignal&) = delete;
  NoSizeSignal& operator=(const NoSizeSignal&) = delete;
  NoSizeSignal(NoSizeSignal&&) = delete;
  NoSizeSignal& operator=(NoSizeSignal&&) = delete;

 private:
  sigset_t size_{}, before_{};
  bool was_pending_ = false;
};

// 0, or the reason.
int write_all(int descriptor, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
    if (written < 0 && errno != EINTR) {
      return errno;
    }
    bytes.remove_prefix(written > 0 ? static_cast<std::size_t>(written) : 0);
  }
  return 0;
}

// A link that leads nowhere, or round in a circle, would be lost to the draft that takes its place.
void refuse_lost_link(const fs::path& file, int trouble) {
  std::error_code unknown;
  if (fs::is_symlink(fs::symlink_status(file, unknown))) {
    throw Error(ErrorCode::file_access, {shown_name(file), ""},
                "this is a link that leads to no file: " + std::generic_category().message(trouble),
                "name the file itself");
  }
}

// Some file systems tell only on closing that there was no room.
int closed(int descriptor, int failed) {
  const int late = ::close(descriptor) == 0 ? 0 : errno;
  return failed != 0 ? failed : late;
}

// Or -1 with the reason in errno: ENXIO of a pipe that nothing reads within a second, for which
// opening it would wait for ever.
int opened(const fs::path& device) {
  constexpr int kTries = 50;
  constexpr timespec kPause{0, 20'000'000};
  int descriptor = -1;
  for (int i = 0; i < kTries; ++i) {
    descriptor = ::open(device.c_str(), O_WRONLY | O_CLOEXEC | O_NOCTTY | O_NONBLOCK);
    if (descriptor >= 0 || errno != ENXIO) {
      break;
    }
    nanosleep(&kPause, nullptr);
    errno = ENXIO;
  }
  if (descriptor >= 0) {
    ::fcntl(descriptor, F_SETFL, ::fcntl(descriptor, F_GETFL) & ~O_NONBLOCK);
  }
  return descriptor;
}

int write_into(const fs::path& device, std::string_view bytes) {
  const int descriptor = opened(device);
  return descriptor < 0 ? errno : closed(descriptor, write_all(descriptor, bytes));
}

fs::path random_name_in(const fs::path& folder) {
  constexpr std::string_view kLetters = "abcdefghijklmnopqrstuvwxyz0123456789";
  constexpr int kLength = 12;
  std::random_device chance;
  std::string name = ".spotblue-";
  for (int i = 0; i < kLength; ++i) {
    name += kLetters[chance() % kLetters.size()];
  }
  return folder / name;
}

// Taken away again unless it has found its place.
class Draft {
 public:
  explicit Draft(const fs::path& folder) : name_(random_name_in(folder)) {}
  ~Draft() {
    if (is_there_) {
      ::unlink(name_.c_str());
    }
  }
  Draft(const Draft&) = delete;
  Draft& operator=(const Draft&) = delete;
  Draft(Draft&&) = delete;
  Draft& operator=(Draft&&) = delete;

  [[nodiscard]] const fs::path& name() const { return name_; }

  // 0, or the reason. Without a mode: as new files are made here.
  int write(std::string_view bytes, std::optional<mode_t> mode) {
    const int descriptor =
        ::open(name_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0666);
    if (descriptor < 0) {
      return errno;
    }
    is_there_ = true;
    int failed = write_all(descriptor, bytes);
    if (failed == 0 && mode && ::fchmod(descriptor, *mode) != 0) {
      failed = errno;
    }
    if (failed == 0 && ::fsync(descriptor) != 0) {
      failed = errno;
    }
    return closed(descriptor, failed);
  }

  int take_place_of(const fs::path& target) {
    if (::rename(name_.c_str(), target.c_str()) != 0) {
      return errno;
    }
    is_there_ = false;
    return 0;
  }

 private:
  fs::path name_;
  bool is_there_ = false;
};

int replace(const fs::path& target, std::string_view bytes, std::optional<mode_t> mode,
            const DraftCheck& check) {
  Draft draft(target.parent_path());
  if (const int failed = draft.write(bytes, mode); failed != 0) {
    return failed;
  }
  if (check) {
    check(draft.name());
  }
  return draft.take_place_of(target);
}

int write_checked_into(const fs::path& device, std::string_view bytes, const DraftCheck& check) {
  if (check) {
    constexpr mode_t kOwn = 0600;
    std::error_code trouble;
    Draft draft(fs::temp_directory_path(trouble));
    if (const int failed = trouble ? trouble.value() : draft.write(bytes, kOwn); failed != 0) {
      return failed;
    }
    check(draft.name());
  }
  return write_into(device, bytes);
}

}  // namespace

Error cannot_be_written(const std::string& name, int reason) {
  return {code_of_reason(reason),
          {name, ""},
          "cannot be written: " + std::generic_category().message(reason),
          "make room or give another place"};
}

void write_whole(const fs::path& file, std::string_view bytes) { write_whole(file, bytes, {}); }

void write_whole(const fs::path& file, std::string_view bytes, const DraftCheck& check) {
  const NoSizeSignal quiet;
  struct stat there {};
  const bool is_there = ::stat(file.c_str(), &there) == 0;
  if (!is_there) {
    refuse_lost_link(file, errno);
  }
  int failed = 0;
  if (is_there && S_ISDIR(there.st_mode)) {
    failed = EISDIR;
  } else if (is_there && !S_ISREG(there.st_mode)) {
    failed = write_checked_into(file, bytes, check);
  } else {
    std::error_code unknown;
    const fs::path target = fs::weakly_canonical(file, unknown);
    failed = replace(target.empty() ? file : target, bytes,
                     is_there ? std::optional(there.st_mode & 07777U) : std::nullopt, check);
  }
  if (failed == ENXIO && S_ISFIFO(there.st_mode)) {
    throw Error(ErrorCode::file_access, {shown_name(file), ""}, "it is a pipe that nothing reads",
                "start first what is to read it");
  }
  if (failed != 0) {
    throw cannot_be_written(shown_name(file), failed);
  }
}

bool is_same_file(const fs::path& one, const fs::path& other) {
  struct stat a {};
  struct stat b {};
  return ::stat(one.c_str(), &a) == 0 && ::stat(other.c_str(), &b) == 0 && a.st_dev == b.st_dev &&
         a.st_ino == b.st_ino;
}

void refuse_overwriting(const fs::path& output, const std::vector<fs::path>& inputs) {
  for (const fs::path& input : inputs) {
    if (!output.empty() && !input.empty() && is_same_file(output, input)) {
      throw Error(ErrorCode::bad_input, {shown_name(output), ""},
                  output == input ? "this is a file to read; it would be overwritten"
                                  : fmt::format("this is the file to read {}; it would be "
                                                "overwritten",
                                                shown_name(input)),
                  "give the result another name");
    }
  }
}

}  // namespace spotblue
