#include "spotblue/base/whole_file.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <ctime>
#include <optional>
#include <random>
#include <string>
#include <system_error>

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

int write_into(const fs::path& device, std::string_view bytes) {
  const int descriptor = ::open(device.c_str(), O_WRONLY | O_CLOEXEC | O_NOCTTY);
  return descriptor < 0 ? errno : closed(descriptor, write_all(descriptor, bytes));
}

fs::path beside(const fs::path& target) {
  constexpr std::string_view kLetters = "abcdefghijklmnopqrstuvwxyz0123456789";
  constexpr int kLength = 12;
  std::random_device chance;
  std::string name = ".spotblue-";
  for (int i = 0; i < kLength; ++i) {
    name += kLetters[chance() % kLetters.size()];
  }
  return target.parent_path() / name;
}

// Without a mode: as new files are made here.
int replace(const fs::path& target, std::string_view bytes, std::optional<mode_t> mode) {
  const fs::path draft = beside(target);
  const int descriptor =
      ::open(draft.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0666);
  if (descriptor < 0) {
    return errno;
  }
  int failed = write_all(descriptor, bytes);
  if (failed == 0 && mode && ::fchmod(descriptor, *mode) != 0) {
    failed = errno;
  }
  if (failed == 0 && ::fsync(descriptor) != 0) {
    failed = errno;
  }
  failed = closed(descriptor, failed);
  if (failed == 0 && ::rename(draft.c_str(), target.c_str()) != 0) {
    failed = errno;
  }
  if (failed != 0) {
    ::unlink(draft.c_str());
  }
  return failed;
}

}  // namespace

void write_whole(const fs::path& file, std::string_view bytes) {
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
    failed = write_into(file, bytes);
  } else {
    std::error_code unknown;
    const fs::path target = fs::weakly_canonical(file, unknown);
    failed = replace(target.empty() ? file : target, bytes,
                     is_there ? std::optional(there.st_mode & 07777U) : std::nullopt);
  }
  if (failed != 0) {
    throw Error(ErrorCode::file_access, {shown_name(file), ""},
                "cannot be written: " + std::generic_category().message(failed),
                "make room or give another place");
  }
}

}  // namespace spotblue
