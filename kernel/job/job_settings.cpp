#include "job/job_settings.hpp"

#include <fmt/format.h>

#include <array>
#include <string_view>

#include "job/entry_keys.hpp"

namespace spotblue {
namespace {

struct SeatKey {
  std::string_view key;
  double SeatSettings::*number;
  bool may_be_negative;
};

constexpr std::array<SeatKey, 11> kSeatKeys{{
    {"coaxial_offset_mm", &SeatSettings::coaxial_offset_mm, false},
    {"coaxial_offset_per_diameter", &SeatSettings::coaxial_offset_per_diameter, false},
    {"coaxial_tilt_deg", &SeatSettings::coaxial_tilt_deg, false},
    {"radial_gap_mm", &SeatSettings::radial_gap_mm, false},
    {"radial_gap_per_diameter", &SeatSettings::radial_gap_per_diameter, false},
    {"radial_overlap_mm", &SeatSettings::radial_overlap_mm, false},
    {"radial_overlap_per_diameter", &SeatSettings::radial_overlap_per_diameter, false},
    {"facing_tilt_deg", &SeatSettings::facing_tilt_deg, false},
    {"axial_gap_least_mm", &SeatSettings::axial_gap_least_mm, true},
    {"axial_gap_most_mm", &SeatSettings::axial_gap_most_mm, false},
    {"same_length_mm", &SeatSettings::same_length_mm, false},
}};

double read_bound(const TomlTable& entry, std::string_view key) {
  const double value = entry.number(key);
  if (!(value > 0.0)) {
    throw entry.error(key, fmt::format("need more than 0, got {}", value), "write a limit");
  }
  return value;
}

}  // namespace

JobSettings read_settings(const TomlTable& top, LengthUnit unit) {
  JobSettings settings;
  const auto entry = top.find_table("settings");
  if (!entry) {
    return settings;
  }
  if (entry->has("default_uncertainty")) {
    settings.default_uncertainty = read_tolerance(*entry, "default_uncertainty", unit);
  }
  for (const SeatKey& seat : kSeatKeys) {
    if (const auto value = entry->find_number(seat.key)) {
      if (*value < 0.0 && !seat.may_be_negative) {
        throw entry->error(seat.key, fmt::format("need 0 or more, got {}", *value),
                           "leave out the minus");
      }
      settings.look.seats.*seat.number = *value;
    }
  }
  const SeatSettings& seats = settings.look.seats;
  if (seats.axial_gap_least_mm > seats.axial_gap_most_mm) {
    throw entry->error("axial_gap_least_mm", "the limits are reversed",
                       "keep axial_gap_least_mm below axial_gap_most_mm");
  }
  if (entry->has("read_seconds")) {
    settings.look.limits.seconds = read_bound(*entry, "read_seconds");
  }
  if (entry->has("read_memory_mb")) {
    settings.look.limits.memory_mb = read_bound(*entry, "read_memory_mb");
  }
  entry->refuse_unknown();
  return settings;
}

}  // namespace spotblue
