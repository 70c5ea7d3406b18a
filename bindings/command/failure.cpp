#include "command/failure.hpp"

#include <unistd.h>

#include <cerrno>
#include <exception>
#include <new>
#include <string>

#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue::command {

int contained(const std::function<int()>& run) {
  try {
    return run();
  } catch (const std::bad_alloc&) {
    say_failure("out of memory");
  } catch (const std::exception& error) {
    say_failure(error.what());
  } catch (...) {
    say_failure("failed for a reason unknown");
  }
  return 2;
}

void say_failure(std::string_view message) {
  const std::string line = "spotblue: " + shortened(shown_text(message), kMostMessage) + '\n';
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
