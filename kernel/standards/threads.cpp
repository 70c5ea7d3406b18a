#include "spotblue/standards/threads.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "spotblue/base/ascii.hpp"
#include "thread_tables.hpp"

namespace spotblue {
namespace {

namespace thread_rows = thread_tables;

constexpr double kMmPerInch = 25.4;  // ISO 80000-3: exactly 25.4 mm

// ISO 68-1: D1 = D - 2 x 5/8 H with H = sqrt(3)/2 P.
constexpr double kMinorDepthPerPitch = 1.0825317547305484;

// Our choice; see the header.
constexpr double kScrewUnder_mm = 0.08;
constexpr double kScrewUnderPerPitch = 0.13;
constexpr double kScrewOver_mm = 0.05;
constexpr double kHoleSlack_mm = 0.08;
constexpr double kHoleSlackPerPitch = 0.15;
constexpr double kLeastOverlapPerPitch = 0.4;
constexpr double kScrewShare = 0.1;  // screws are often drawn under size, holes seldom off theirs

struct Sizes_mm {
  double major;
  double pitch;
  double tap_drill;

  [[nodiscard]] double minor() const { return major - kMinorDepthPerPitch * pitch; }
};

Sizes_mm sizes(const thread_rows::Metric& row) {
  return {row.diameter_mm, row.pitch_mm, row.tap_drill_mm};
}

Sizes_mm sizes(const thread_rows::Unified& row) {
  return {row.diameter_in * kMmPerInch, kMmPerInch / row.threads_per_inch,
          row.tap_drill_in * kMmPerInch};
}

std::string designation(const thread_rows::Metric& row) {
  return row.series == thread_rows::Series::coarse
             ? fmt::format("M{}", row.diameter_mm)
             : fmt::format("M{}x{}", row.diameter_mm, row.pitch_mm);
}

std::string designation(const thread_rows::Unified& row) { return std::string(row.designation); }

template <class Row>
ThreadSize thread(const Row& row) {
  const Sizes_mm size = sizes(row);
  return {designation(row), Length::mm(size.major), Length::mm(size.pitch),
          Length::mm(size.minor()), Length::mm(size.tap_drill)};
}

// How far off the basic sizes; infinite when screw or hole is out of tolerance.
double misfit_mm(const Sizes_mm& size, double hole, double screw) {
  const double off_major = screw - size.major;
  const double slack = kHoleSlack_mm + kHoleSlackPerPitch * size.pitch;
  const bool screw_fits =
      off_major <= kScrewOver_mm && -off_major <= kScrewUnder_mm + kScrewUnderPerPitch * size.pitch;
  const bool hole_fits = hole >= std::min(size.minor(), size.tap_drill) - slack &&
                         hole <= std::max(size.minor(), size.tap_drill) + slack;
  const bool overlaps = screw - hole >= kLeastOverlapPerPitch * size.pitch;
  if (!screw_fits || !hole_fits || !overlaps) {
    return std::numeric_limits<double>::infinity();
  }
  const double off_hole = std::min(std::abs(hole - size.minor()), std::abs(hole - size.tap_drill));
  return off_hole + kScrewShare * std::abs(off_major);
}

}  // namespace

std::vector<ThreadSize> threads() {
  std::vector<ThreadSize> all;
  all.reserve(thread_rows::kMetric.size() + thread_rows::kUnified.size());
  for (const thread_rows::Metric& row : thread_rows::kMetric) {
    all.push_back(thread(row));
  }
  for (const thread_rows::Unified& row : thread_rows::kUnified) {
    all.push_back(thread(row));
  }
  std::stable_sort(all.begin(), all.end(), [](const ThreadSize& a, const ThreadSize& b) {
    return a.major_diameter < b.major_diameter;
  });
  return all;
}

std::optional<ThreadSize> find_thread(std::string_view name) {
  const std::string wanted = ascii_lower(name);
  for (ThreadSize& candidate : threads()) {
    if (ascii_lower(candidate.designation) == wanted) {
      return std::move(candidate);
    }
  }
  return std::nullopt;
}

std::optional<std::string> thread_of(Length hole_diameter, Length screw_diameter) {
  const double hole = hole_diameter.in_mm();
  const double screw = screw_diameter.in_mm();
  double least = std::numeric_limits<double>::infinity();
  const thread_rows::Metric* metric = nullptr;
  const thread_rows::Unified* unified = nullptr;
  for (const thread_rows::Metric& row : thread_rows::kMetric) {
    const double misfit = misfit_mm(sizes(row), hole, screw);
    if (misfit < least) {
      least = misfit;
      metric = &row;
    }
  }
  for (const thread_rows::Unified& row : thread_rows::kUnified) {
    const double misfit = misfit_mm(sizes(row), hole, screw);
    if (misfit < least) {
      least = misfit;
      unified = &row;
    }
  }
  if (unified != nullptr) {
    return designation(*unified);
  }
  return metric != nullptr ? std::optional(designation(*metric)) : std::nullopt;
}

}  // namespace spotblue
