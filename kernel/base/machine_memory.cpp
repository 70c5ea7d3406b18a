#include "base/machine_memory.hpp"

#include <fmt/format.h>
#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <limits>
#include <string>

namespace spotblue {
namespace {

// A figure of /proc/<process>/statm in bytes: 0 is address space, 1 is resident memory.
double statm_bytes(pid_t process, int figure) {
  std::ifstream in(fmt::format("/proc/{}/statm", process));
  double pages = 0.0;
  for (int i = 0; i <= figure; ++i) {
    in >> pages;
  }
  return in ? pages * static_cast<double>(sysconf(_SC_PAGESIZE)) : 0.0;
}

}  // namespace

double address_space(pid_t process) { return statm_bytes(process, 0); }

double resident_memory(pid_t process) { return statm_bytes(process, 1); }

double machine_memory_left_mb() {
  double kib = 0.0;
  std::ifstream in("/proc/meminfo");
  for (std::string name; in >> name;) {
    double value = 0.0;
    if (in >> value && (name == "MemAvailable:" || name == "SwapFree:")) {
      kib += value;
    }
    in.clear();
    in.ignore(std::numeric_limits<std::streamsize>::max(), '\n');
  }
  return kib > 0.0 ? kib * 1024.0 / 1e6 : std::numeric_limits<double>::infinity();
}

double memory_to_be_had_mb() {
  double left = machine_memory_left_mb();
  rlimit set{};
  if (getrlimit(RLIMIT_AS, &set) == 0 && set.rlim_cur != RLIM_INFINITY) {
    left = std::min(left, (static_cast<double>(set.rlim_cur) - address_space(getpid())) / 1e6);
  }
  return std::max(left, 0.0);
}

}  // namespace spotblue
