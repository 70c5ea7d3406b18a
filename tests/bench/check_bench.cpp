// What check() costs against look() on the demo's plans, medians of 5 in one run (issue 3,
// acceptance 6). Prints a table; ends with 1 where check takes twice the time of look.

#include <fmt/format.h>
#include <sys/resource.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>

#include "spotblue/check/check.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/job/mockup_file.hpp"

namespace spotblue::test {
namespace {

constexpr std::size_t kRounds = 5;
constexpr double kBound = 2.0;
constexpr std::array<std::string_view, 3> kPlans{"ink-disc-plan-a", "ink-disc-plan-b",
                                                 "ink-disc-plan-c"};

double seconds_of(int whose) {
  rusage used{};
  getrusage(static_cast<__rusage_who>(whose), &used);
  return static_cast<double>(used.ru_utime.tv_sec + used.ru_stime.tv_sec) +
         1e-6 * static_cast<double>(used.ru_utime.tv_usec + used.ru_stime.tv_usec);
}

// Processor time with that of the children that read: other work on the machine changes it little.
double cost(const std::function<void()>& work) {
  const double before = seconds_of(RUSAGE_SELF) + seconds_of(RUSAGE_CHILDREN);
  work();
  return seconds_of(RUSAGE_SELF) + seconds_of(RUSAGE_CHILDREN) - before;
}

double median(std::array<double, kRounds> values) {
  std::sort(values.begin(), values.end());
  return values[kRounds / 2];
}

double ratio(const std::filesystem::path& models, const std::filesystem::path& folder,
             std::string_view plan) {
  Job job = read_job(models / fmt::format("{}.job.toml", plan));
  job.model = folder / fmt::format("{}.step", plan);
  write_mockup(read_mockup(models / fmt::format("{}.mockup.toml", plan)), job.model);
  std::array<double, kRounds> looks{};
  std::array<double, kRounds> checks{};
  std::size_t findings = 0;
  for (std::size_t i = 0; i < kRounds; ++i) {
    looks[i] = cost([&] { static_cast<void>(look(job.model, job.settings.look)); });
    checks[i] = cost([&] { findings = check({job}).findings.size(); });
  }
  const double found = median(checks) / median(looks);
  fmt::print("{:16}  look {:.3f} s  check {:.3f} s ({} findings)  ratio {:.2f}, bound {:.1f}\n",
             plan, median(looks), median(checks), findings, found, kBound);
  return found;
}

}  // namespace
}  // namespace spotblue::test

int main(int count, char** arguments) {
  if (count != 3) {
    fmt::print(stderr, "Use: check_bench MODELS FOLDER\n");
    return 2;
  }
  bool within = true;
  for (const std::string_view plan : spotblue::test::kPlans) {
    within =
        spotblue::test::ratio(arguments[1], arguments[2], plan) < spotblue::test::kBound && within;
  }
  return within ? 0 : 1;
}
