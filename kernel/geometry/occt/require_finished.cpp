#include "geometry/occt/require_finished.hpp"

#include <fmt/format.h>

namespace spotblue {

void throw_own_error(const Contained& run, const std::string& file) {
  if (run.error) {
    const Error& own = *run.error;
    throw Error(own.code(), {own.file().empty() ? file : own.file(), own.place()}, own.rule(),
                own.cure());
  }
}

void require_finished(const Contained& run, const std::string& file, const ReadLimits& limits) {
  throw_own_error(run, file);
  const auto unreadable = [&](const std::string& what, const char* cure) {
    return Error(ErrorCode::unreadable, {file, ""}, what, cure);
  };
  switch (run.end) {
    case Contained::End::finished:
      return;
    case Contained::End::lacking:
      throw lacking(fmt::format("what it takes to read {}: {}", file, run.detail));
    case Contained::End::out_of_time:
      throw unreadable(fmt::format("reading took longer than {:g} s", limits.seconds),
                       "raise the limit on time or simplify the file");
    case Contained::End::out_of_memory:
      throw out_of_memory(file, limits);
    case Contained::End::crashed:
      throw unreadable(fmt::format("Open CASCADE crashed on it ({})", run.detail),
                       "the file is damaged: export it again");
    case Contained::End::failed:
      throw unreadable(fmt::format("Open CASCADE can not read it ({})", run.detail),
                       "the file is damaged: export it again");
  }
}

Error out_of_memory(const std::string& file, const ReadLimits& limits) {
  return {ErrorCode::unreadable,
          {file, ""},
          fmt::format("reading took more than {:g} MB", limits.memory_mb),
          "raise the limit on memory or simplify the file"};
}

Error lacking(const std::string& what) {
  return {ErrorCode::system,
          {},
          "the machine lacks " + what,
          "close other programs, or let fewer files be read at a time, and try again"};
}

}  // namespace spotblue
