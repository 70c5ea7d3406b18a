#include "spotblue/standards/threads.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "base/require.hpp"
#include "spotblue/base/ascii.hpp"
#include "standards/thread_tables.hpp"
#include "standards/thread_tables_other.hpp"

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

// A screw drawn this near to its size is that one, before any that it could be by tolerance.
constexpr double kDrawnAtSize_mm = 0.02;
constexpr double kOffSize_mm = 10.0;  // more than any other misfit

// A thread that is seldom met is said only of a screw drawn this near to its major diameter, and
// not where one that is met often does nearly as well.
constexpr double kOtherScrew_mm = 0.03;
constexpr double kOtherScrewPerPitch = 0.03;
constexpr double kOtherHandicapPerPitch = 0.02;

constexpr double kWhitworthDepthPerPitch = 2.0 * 0.640327;  // BS 84
constexpr double kAssociationDepthPerPitch = 2.0 * 0.6;     // BS 93

enum class Met { often, seldom };

struct Sizes_mm {
  double major;
  double pitch;
  double minor;
  double tap_drill;
};

Sizes_mm sizes(const thread_rows::Metric& row) {
  return {row.diameter_mm, row.pitch_mm, row.diameter_mm - kMinorDepthPerPitch * row.pitch_mm,
          row.tap_drill_mm};
}

Sizes_mm sizes(const thread_rows::Unified& row) {
  const double major = row.diameter_in * kMmPerInch;
  const double pitch = kMmPerInch / row.threads_per_inch;
  return {major, pitch, major - kMinorDepthPerPitch * pitch, row.tap_drill_in * kMmPerInch};
}

Sizes_mm sizes(const thread_rows::Whitworth& row) {
  const double pitch = kMmPerInch / row.threads_per_inch;
  return {row.diameter_mm, pitch, row.diameter_mm - kWhitworthDepthPerPitch * pitch,
          row.tap_drill_mm};
}

Sizes_mm sizes(const thread_rows::Association& row) {
  return {row.diameter_mm, row.pitch_mm, row.diameter_mm - kAssociationDepthPerPitch * row.pitch_mm,
          row.tap_drill_mm};
}

Sizes_mm sizes(const thread_rows::Stated& row) {
  return {row.diameter_mm, row.pitch_mm, row.minor_mm, row.tap_drill_mm};
}

std::string designation(const thread_rows::Metric& row) {
  return row.series == thread_rows::Series::coarse
             ? fmt::format("M{}", row.diameter_mm)
             : fmt::format("M{}x{}", row.diameter_mm, row.pitch_mm);
}

std::string designation(const thread_rows::Association& row) {
  return fmt::format("{} BA", row.number);
}

bool is_usual(const thread_rows::Metric& row) { return row.series != thread_rows::Series::rare; }
bool is_usual(const auto& /*row*/) { return true; }

std::string designation(const auto& row) { return std::string(row.designation); }

// Every row of every table, those met most often first.
void for_each_row(const auto& use) {
  const auto all = [&](const auto& table, Met met) {
    for (const auto& row : table) {
      use(row, met);
    }
  };
  all(thread_rows::kMetric, Met::often);
  all(thread_rows::kUnified, Met::often);
  all(thread_rows::kPipe, Met::often);
  all(thread_rows::kTaperPipe, Met::often);
  all(thread_rows::kWhitworthCoarse, Met::seldom);
  all(thread_rows::kWhitworthFine, Met::seldom);
  all(thread_rows::kAssociation, Met::seldom);
  all(thread_rows::kTapping, Met::seldom);
}

// How far off the basic sizes; infinite when screw or hole is out of tolerance.
double misfit_mm(const Sizes_mm& size, Met met, double hole, double screw) {
  const double off_major = screw - size.major;
  const double under = met == Met::often ? kScrewUnder_mm + kScrewUnderPerPitch * size.pitch
                                         : kOtherScrew_mm + kOtherScrewPerPitch * size.pitch;
  const double slack = kHoleSlack_mm + kHoleSlackPerPitch * size.pitch;
  const bool screw_fits = off_major <= kScrewOver_mm && -off_major <= under;
  const bool hole_fits = hole >= std::min(size.minor, size.tap_drill) - slack &&
                         hole <= std::max(size.minor, size.tap_drill) + slack;
  const bool overlaps = screw - hole >= kLeastOverlapPerPitch * size.pitch;
  if (!screw_fits || !hole_fits || !overlaps) {
    return std::numeric_limits<double>::infinity();
  }
  const double off_hole = std::min(std::abs(hole - size.minor), std::abs(hole - size.tap_drill));
  const double handicap = met == Met::often ? 0.0 : kOtherHandicapPerPitch * size.pitch;
  const double off_size = std::abs(off_major) <= kDrawnAtSize_mm ? 0.0 : kOffSize_mm;
  return off_hole + kScrewShare * std::abs(off_major) + handicap + off_size;
}

}  // namespace

std::vector<ThreadSize> threads() {
  std::vector<ThreadSize> all;
  for_each_row([&](const auto& row, Met) {
    const Sizes_mm size = sizes(row);
    all.push_back({designation(row), Length::mm(size.major), Length::mm(size.pitch),
                   Length::mm(size.minor), Length::mm(size.tap_drill), is_usual(row)});
  });
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

std::vector<std::string> possible_threads(Diameter hole, Diameter screw) {
  require_positive(hole.in_mm(), "hole_diameter_mm", "mm");
  require_positive(screw.in_mm(), "screw_diameter_mm", "mm");
  std::vector<std::pair<double, std::string>> found;
  for_each_row([&](const auto& row, Met met) {
    const double misfit = misfit_mm(sizes(row), met, hole.in_mm(), screw.in_mm());
    if (std::isfinite(misfit)) {
      found.emplace_back(misfit, designation(row));
    }
  });
  std::ranges::stable_sort(found, {}, &std::pair<double, std::string>::first);
  std::vector<std::string> names;
  names.reserve(found.size());
  for (auto& [misfit, name] : found) {
    names.push_back(std::move(name));
  }
  return names;
}

std::optional<std::string> thread_of(Diameter hole, Diameter screw) {
  std::vector<std::string> possible = possible_threads(hole, screw);
  return possible.empty() ? std::nullopt : std::optional(std::move(possible.front()));
}

double usual_engagement(MaterialKind tapped) {
  switch (tapped) {
    case MaterialKind::steel:
      return 1.0;
    case MaterialKind::iron:
    case MaterialKind::bronze_or_brass:
      return 1.5;
    case MaterialKind::aluminium:
    case MaterialKind::white_metal:
    case MaterialKind::plastic:
      break;
  }
  return 2.0;
}

}  // namespace spotblue
