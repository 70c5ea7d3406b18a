#include "failure.hpp"

#include <unistd.h>

#include <cerrno>
#include <string>

#include "spotblue/base/shown_name.hpp"

namespace spotblue::command {

void say_failure(std::string_view message) {
  const std::string line = "spotblue: " + shown_text(message) + '\n';
  // Nothing is left to say it with when standard error itself fails.
  for (std::size_t done = 0; done < line.size();) {
    const ssize_t written = ::write(STDERR_FILENO, line.data() + done, line.size() - done);
    if (written < 0 && errno != EINTR) {
      return;
    }
    done += written > 0 ? static_cast<std::size_t>(written) : 0;
  }
}

}  // namespace spotblue::command
