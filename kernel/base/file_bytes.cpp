#include "spotblue/base/file_bytes.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <new>
#include <system_error>

#include "base/error_kinds.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {

namespace fs = std::filesystem;

namespace {

std::string words_of(int trouble) { return std::generic_category().message(trouble); }

class OpenFile {
 public:
  // Without waiting for someone to write into it, where it is a pipe.
  explicit OpenFile(const fs::path& file)
      : descriptor_(open(file.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY)),
        trouble_(descriptor_ < 0 ? errno : 0) {}
  ~OpenFile() {
    if (descriptor_ >= 0) {
      close(descriptor_);
    }
  }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;
  OpenFile(OpenFile&&) = delete;
  OpenFile& operator=(OpenFile&&) = delete;

  [[nodiscard]] int descriptor() const { return descriptor_; }
  [[nodiscard]] int trouble() const { return trouble_; }

  // Shorter where the file ends sooner; false where it can not be read.
  [[nodiscard]] bool fill(std::string& bytes) const {
    std::size_t done = 0;
    while (done < bytes.size()) {
      const ssize_t got = read(descriptor_, bytes.data() + done, bytes.size() - done);
      if (got < 0 && errno != EINTR) {
        return false;
      }
      if (got == 0) {
        break;
      }
      done += got > 0 ? static_cast<std::size_t>(got) : 0;
    }
    bytes.resize(done);
    return true;
  }

 private:
  int descriptor_;
  int trouble_;
};

Error refused(const fs::path& file, ErrorCode code, const std::string& what,
              const std::string& cure) {
  return {code, {shown_name(file), ""}, what, cure};
}

Error lacking(const fs::path& file, const std::string& what) {
  return {ErrorCode::system,
          {},
          fmt::format("the machine lacks {} to read {}", what, shown_name(file)),
          "close other programs and try again"};
}

void require_open(const OpenFile& in, const fs::path& file) {
  if (code_of_reason(in.trouble()) == ErrorCode::system) {
    throw lacking(file, fmt::format("room for another open file ({})", words_of(in.trouble())));
  }
  if (in.descriptor() < 0) {
    throw in.trouble() == ENOENT || in.trouble() == ENOTDIR
        ? refused(file, ErrorCode::file_access, "there is no such file", "check the path")
        : refused(file, ErrorCode::file_access,
                  fmt::format("the file can not be opened: {}", words_of(in.trouble())),
                  "check the path and who may read it");
  }
}

// Its size in bytes.
std::size_t ordinary_size(const OpenFile& in, const fs::path& file, double most_mb,
                          std::string_view wanted) {
  struct stat facts {};
  if (fstat(in.descriptor(), &facts) != 0) {
    throw refused(file, ErrorCode::file_access, "the file can not be read", "check the disk");
  }
  if (S_ISDIR(facts.st_mode)) {
    throw refused(file, ErrorCode::file_access, "this is a folder",
                  fmt::format("name {} in it", wanted));
  }
  if (!S_ISREG(facts.st_mode)) {
    throw refused(file, ErrorCode::file_access, "this is no ordinary file",
                  fmt::format("name {}", wanted));
  }
  const auto size = static_cast<double>(facts.st_size);
  if (size > most_mb * 1e6) {
    throw refused(
        file, ErrorCode::unreadable,
        fmt::format("the file has {:.1f} MB, more than the limit of {:g} MB", size / 1e6, most_mb),
        "raise the limit or split the file");
  }
  return static_cast<std::size_t>(facts.st_size);
}

}  // namespace

std::string read_bytes(const fs::path& file, double most_mb, std::string_view wanted) {
  const OpenFile in(file);
  require_open(in, file);
  const std::size_t size = ordinary_size(in, file, most_mb, wanted);
  std::string bytes;
  try {
    bytes.resize(size);
  } catch (const std::bad_alloc&) {
    throw lacking(file, fmt::format("{:.0f} MB of memory", static_cast<double>(size) / 1e6));
  }
  if (!in.fill(bytes)) {
    throw refused(file, code_of_reason(errno), "the file can not be read: " + words_of(errno),
                  "check the disk");
  }
  if (bytes.empty()) {
    throw refused(file, ErrorCode::unreadable, "the file is empty",
                  fmt::format("name {} with something in it", wanted));
  }
  return bytes;
}

std::string_view without_byte_order_mark(std::string_view text) {
  constexpr std::string_view kMark = "\xEF\xBB\xBF";
  text.remove_prefix(text.starts_with(kMark) ? kMark.size() : 0);
  return text;
}

void drop_byte_order_mark(std::string& text) {
  text.erase(0, text.size() - without_byte_order_mark(text).size());
}

}  // namespace spotblue
