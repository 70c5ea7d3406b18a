#include "geometry/occt/contained.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <poll.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <Standard_OutOfMemory.hxx>
#include <algorithm>
#include <array>
#include <bit>
#include <cerrno>
#include <chrono>
#include <cmath>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <exception>
#include <new>
#include <optional>
#include <string_view>
#include <system_error>
#include <utility>
#include <vector>

#include "base/logger.hpp"
#include "base/machine_memory.hpp"
#include "base/stage_time.hpp"
#include "geometry/occt/occt_versions.hpp"
#include "geometry/occt/require_finished.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

using Clock = std::chrono::steady_clock;

#ifdef __SANITIZE_ADDRESS__
constexpr bool kAddressSpaceLimited = false;
#else
constexpr bool kAddressSpaceLimited = true;
#endif

// First byte of what the child sends.
constexpr char kReturned = 'r';
constexpr char kThrew = 't';
constexpr char kThrewError = 'e';
constexpr char kNoMemory = 'm';

constexpr const char* kDamaged = "its answer is damaged";
constexpr const char* kAllUsed = "no more memory to be had";

std::string one_line(std::string text) {
  std::replace_if(
      text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < ' '; }, ' ');
  constexpr std::size_t kMostDetail = 500;
  return shortened(text, kMostDetail);
}

// An Error as one string: its code, then each of its texts, which hold none, with a zero behind.
std::string packed(const Error& error) {
  std::string all(1, static_cast<char>(error.code()));
  for (const std::string& text : {error.file(), error.place(), error.rule(), error.cure()}) {
    all += text + '\0';
  }
  return all;
}

// Nothing when a child out of its mind has sent something else.
std::optional<Error> unpacked(std::string_view all) {
  std::array<std::string, 4> texts;
  if (std::count(all.begin(), all.end(), '\0') < 4 || all.front() < 0 ||
      all.front() > static_cast<char>(ErrorCode::system)) {
    return std::nullopt;
  }
  std::size_t from = 1;
  for (std::string& text : texts) {
    text = all.substr(from, all.find('\0', from) - from);
    from += text.size() + 1;
  }
  return Error(static_cast<ErrorCode>(all.front()), {texts[0], texts[1]}, texts[2], texts[3]);
}

rlim_t as_limit(double value) {
  return value < 9e18 ? static_cast<rlim_t>(std::max(0.0, value)) : RLIM_INFINITY;
}

void limit(__rlimit_resource resource, double soft, double hard) {
  rlimit now{};
  getrlimit(resource, &now);
  now.rlim_max = std::min(as_limit(hard), now.rlim_max);
  now.rlim_cur = std::min({as_limit(soft), now.rlim_max, now.rlim_cur});
  setrlimit(resource, &now);
}

void limit(__rlimit_resource resource, double value) { limit(resource, value, value); }

void apply_limits(const ReadLimits& limits, double base_bytes, double room_mb) {
  limit(RLIMIT_CORE, 0.0);
  // SIGXCPU at the first; at the second the system would end the child without saying why.
  limit(RLIMIT_CPU, std::ceil(limits.seconds) + 1.0, std::ceil(limits.seconds) + 10.0);
  if (kAddressSpaceLimited) {
    limit(RLIMIT_AS, base_bytes + std::min(limits.memory_mb, room_mb) * 1e6);
  }
}

void reset_signals() {
  for (int number = 1; number < NSIG; ++number) {
    std::signal(number, SIG_DFL);  // refused for SIGKILL and SIGSTOP, which is fine
  }
  std::signal(SIGXFSZ, SIG_IGN);  // writing fails, and whoever writes says so
  sigset_t none;
  sigemptyset(&none);
  sigprocmask(SIG_SETMASK, &none, nullptr);
}

// The child's only open file afterwards is the pipe, as number 3; 0 to 2 lead nowhere.
constexpr int kPipe = 3;

void close_all_but(int pipe_end) {
  dup2(pipe_end, kPipe);
  const int nowhere = open("/dev/null", O_RDWR);
  for (int standard = 0; standard < kPipe; ++standard) {
    dup2(nowhere, standard);
  }
  close_range(kPipe + 1, ~0U, 0);
}

bool send(std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t sent = write(kPipe, bytes.data(), bytes.size());
    if (sent < 0 && errno != EINTR) {
      return false;
    }
    bytes.remove_prefix(static_cast<std::size_t>(std::max<ssize_t>(sent, 0)));
  }
  return true;
}

bool send(char tag, std::string_view bytes) {
  return send(std::string_view(&tag, 1)) && send(bytes);
}

// The time of stages that the child measured, before what its work returned.
using StageBytes = std::array<char, sizeof(double)>;

bool run_and_send(const std::function<std::string()>& work) {
  const StageTime stages;
  const Contained run = run_here(work);
  switch (run.end) {
    case Contained::End::finished: {
      const auto time = std::bit_cast<StageBytes>(stages.seconds());
      return send(kReturned, {time.data(), time.size()}) && send(run.bytes);
    }
    case Contained::End::out_of_memory:
      return send(kNoMemory, {});
    default:
      return run.error ? send(kThrewError, packed(*run.error)) : send(kThrew, run.detail);
  }
}

[[noreturn]] void be_child(const std::function<std::string()>& work, const ReadLimits& limits,
                           double base_bytes, double room_mb, int pipe_end, pid_t parent) {
  prctl(PR_SET_PDEATHSIG, SIGKILL);
  if (getppid() != parent) {
    _exit(1);
  }
  reset_signals();
  close_all_but(pipe_end);
  logger().set_level(spdlog::level::off);  // its sink belongs to the parent
  apply_limits(limits, base_bytes, room_mb);
  _exit(run_and_send(work) ? 0 : 1);
}

class Pipe {
 public:
  Pipe() {
    if (pipe2(ends_.data(), O_CLOEXEC) != 0) {
      throw lacking(fmt::format("room for a pipe: {}", std::strerror(errno)));
    }
  }
  ~Pipe() {
    close_end(0);
    close_end(1);
  }
  Pipe(const Pipe&) = delete;
  Pipe& operator=(const Pipe&) = delete;
  Pipe(Pipe&&) = delete;
  Pipe& operator=(Pipe&&) = delete;
  [[nodiscard]] int end(std::size_t which) const { return ends_[which]; }
  void close_end(std::size_t which) {
    if (ends_[which] >= 0) {
      close(std::exchange(ends_[which], -1));
    }
  }

 private:
  std::array<int, 2> ends_{-1, -1};
};

enum class Stopped { at_end, out_of_time, out_of_memory };

// Collects what the child sends until it closes the pipe or breaks a limit.
Stopped collect(int from, pid_t child, const ReadLimits& limits, std::string& bytes) {
  const auto deadline =
      Clock::now() + std::chrono::duration_cast<Clock::duration>(
                         std::chrono::duration<double>(std::min(limits.seconds, 1e8)));
  std::vector<char> buffer(1U << 18U);
  while (true) {
    stop_if_asked();
    const auto left =
        std::chrono::duration_cast<std::chrono::milliseconds>(deadline - Clock::now()).count();
    if (left <= 0) {
      return Stopped::out_of_time;
    }
    if (!kAddressSpaceLimited && resident_memory(child) > limits.memory_mb * 1e6) {
      return Stopped::out_of_memory;
    }
    pollfd waiting{from, POLLIN, 0};
    const int ready = poll(&waiting, 1, static_cast<int>(std::min<long>(left, 100)));
    if (ready <= 0) {
      continue;
    }
    const ssize_t got = read(from, buffer.data(), buffer.size());
    if (got == 0) {
      return Stopped::at_end;
    }
    if (got > 0) {
      bytes.append(buffer.data(), static_cast<std::size_t>(got));
    }
  }
}

int reap(pid_t child) {
  int status = 0;
  while (waitpid(child, &status, 0) < 0 && errno == EINTR) {
  }
  return status;
}

Contained failed_with(const Error& error) {
  return {Contained::End::failed, {}, one_line(error.what()), error};
}

// What Open CASCADE never does to itself: another program, the user or the machine wants it to end.
void throw_if_ended_from_outside(int status) {
  constexpr std::array kFromOutside{SIGKILL, SIGTERM, SIGHUP, SIGINT, SIGQUIT};
  if (!WIFSIGNALED(status) ||
      std::find(kFromOutside.begin(), kFromOutside.end(), WTERMSIG(status)) == kFromOutside.end()) {
    return;
  }
  stop_if_asked();
  throw Error(ErrorCode::system, {},
              fmt::format("the process that worked on it was ended from outside ({})",
                          sigdescr_np(WTERMSIG(status))),
              "run it again; where nobody ended it, the machine had no memory left");
}

// What the work returned, its stages' time added to that of this process.
Contained finished_with(std::string&& message) {
  StageBytes time{};
  if (message.size() < time.size()) {
    return {Contained::End::crashed, {}, kDamaged};
  }
  message.copy(time.data(), time.size());
  if (const auto seconds = std::bit_cast<double>(time); std::isfinite(seconds)) {
    add_stage_time(seconds);
  }
  message.erase(0, time.size());
  return {Contained::End::finished, std::move(message), {}};
}

Contained told(std::string message, int status, double room_mb, double wanted_mb) {
  if (WIFSIGNALED(status)) {
    const int number = WTERMSIG(status);
    if (number == SIGXCPU) {
      return {Contained::End::out_of_time, {}, "CPU time used up"};
    }
    const char* name = sigdescr_np(number);
    return {Contained::End::crashed, {}, name != nullptr ? name : fmt::format("signal {}", number)};
  }
  if (WEXITSTATUS(status) != 0 || message.empty()) {
    return {Contained::End::crashed, {}, fmt::format("exit status {}", WEXITSTATUS(status))};
  }
  const char tag = message.front();
  message.erase(0, 1);
  switch (tag) {
    case kReturned:
      return finished_with(std::move(message));
    case kNoMemory:
      if (room_mb < wanted_mb) {
        return {Contained::End::lacking,
                {},
                fmt::format("there were {:.0f} MB of memory to be had", room_mb)};
      }
      return {Contained::End::out_of_memory, {}, kAllUsed};
    case kThrewError:
      if (const auto error = unpacked(message)) {
        return failed_with(*error);
      }
      return {Contained::End::crashed, {}, kDamaged};
    default:
      return {Contained::End::failed, {}, std::move(message)};
  }
}

}  // namespace

Contained run_here(const std::function<std::string()>& work) {
  const auto failed = [](std::string why) {
    return Contained{Contained::End::failed, {}, one_line(std::move(why))};
  };
  try {
    return {Contained::End::finished, work(), {}};
  } catch (const Standard_OutOfMemory&) {
    return {Contained::End::out_of_memory, {}, kAllUsed};
  } catch (const Standard_Failure& failure) {
    return failed(fmt::format("{}: {}", occt::kind_of(failure), occt::words_of(failure)));
  } catch (const std::bad_alloc&) {
    return {Contained::End::out_of_memory, {}, kAllUsed};
  } catch (const Error& error) {
    return failed_with(error);
  } catch (const std::exception& error) {
    return failed(error.what());
  } catch (...) {
    return failed("an exception of no known type");
  }
}

Contained run_contained(const std::function<std::string()>& work, const ReadLimits& limits) {
  const double base_bytes = address_space(getpid());
  const double room_mb = memory_to_be_had_mb();
  Pipe pipe;
  const pid_t parent = getpid();
  const pid_t child = fork();
  if (child < 0) {
    throw lacking(fmt::format("room for another process: {}", std::strerror(errno)));
  }
  if (child == 0) {
    be_child(work, limits, base_bytes, room_mb, pipe.end(1), parent);
  }
  pipe.close_end(1);
  std::string message;
  Stopped stopped = Stopped::at_end;
  try {
    stopped = collect(pipe.end(0), child, limits, message);
  } catch (...) {
    kill(child, SIGKILL);
    reap(child);
    throw;
  }
  if (stopped != Stopped::at_end) {
    kill(child, SIGKILL);
  }
  const int status = reap(child);
  if (stopped == Stopped::out_of_time) {
    return {Contained::End::out_of_time, {}, fmt::format("stopped after {:g} s", limits.seconds)};
  }
  if (stopped == Stopped::out_of_memory) {
    return {Contained::End::out_of_memory, {}, fmt::format("passed {:g} MB", limits.memory_mb)};
  }
  throw_if_ended_from_outside(status);
  return told(std::move(message), status, room_mb, limits.memory_mb);
}

}  // namespace spotblue
