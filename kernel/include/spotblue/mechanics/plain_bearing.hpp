#pragma once
/// @file
/// A shaft that runs in a plain bearing: its proportions, pressure, speed and their product, and
/// which of a material's limits count for how hard it works.

#include <optional>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/standards/bearing_materials.hpp"

namespace spotblue {

/// Load over the bearing's shadow, diameter x length, as every table of limits means it.
/// @throws Error bad_input unless load_n >= 0 and both lengths > 0.
/// Source: Mott, Machine Elements in Mechanical Design, ch. 16, p = F/LD.
[[nodiscard]] SPOTBLUE_EXPORT double projected_pressure_mpa(double load_n, Diameter diameter,
                                                            Length length);

/// Width of a bearing's shadow where it covers the shaft only part of the way round, the load taken
/// towards the middle of what it covers: diameter x sin(covered/2) under half the way, else the
/// diameter.
/// @throws Error bad_input unless diameter > 0 and 0 < covered_deg <= 360.
/// Source: the chord of an arc.
[[nodiscard]] SPOTBLUE_EXPORT Length projected_width(Diameter diameter, double covered_deg);

/// The even load that presses a bearing as hard as a load and a moment about its middle press its
/// harder end, the pressure going in a straight line along it: load + 6 moment/length. Of a load
/// more than a sixth of the length off the middle, the far end bears on the other side of the bore:
/// only a bearing that goes all the way round can.
/// @throws Error bad_input unless load_n >= 0, moment_nm is finite and length > 0.
/// Source: stress of a rectangle under force and couple, F/A + M/W (any book on the strength of
/// materials); bearing taken as stiff.
[[nodiscard]] SPOTBLUE_EXPORT double edge_load_n(double load_n, double moment_nm, Length length);

/// pi x diameter x rpm; in inch units 0.262 x rpm x diameter in ft/min.
/// @throws Error bad_input unless diameter > 0 and rpm >= 0.
/// Source: Mott, ch. 16, V = pi D n / 12.
[[nodiscard]] SPOTBLUE_EXPORT double surface_speed_m_s(Diameter diameter, double rpm);

struct BearingSizes {
  Diameter diameter;
  Length length;
  Limits clearance;
  std::optional<Length> wall;
};
constexpr void describe(auto& fields, const BearingSizes*) {
  fields.value("BearingSizes", "The sizes that a bearing's proportions come from.")
      .member("diameter_mm", &BearingSizes::diameter, "of the shaft, mm, > 0")
      .range(kOver0)
      .member("length_mm", &BearingSizes::length, "that hole and shaft share, mm, > 0")
      .range(kOver0)
      .member("clearance", &BearingSizes::clearance, "diametral, mm")
      .member("wall_mm", &BearingSizes::wall, "of the bush, mm, > 0, or None")
      .range(kOver0);
}

struct BearingRatios {
  double clearance_least = 0.0, clearance_greatest = 0.0;
  double length = 0.0;
  std::optional<double> wall;
};
constexpr void describe(auto& fields, const BearingRatios*) {
  fields.value("BearingRatios", "Sizes per unit of diameter.")
      .member("clearance_least", &BearingRatios::clearance_least, "per diameter")
      .member("clearance_greatest", &BearingRatios::clearance_greatest, "per diameter")
      .member("length", &BearingRatios::length, "per diameter")
      .member("wall", &BearingRatios::wall, "per diameter, or None");
}
/// @throws Error bad_input when a size breaks its rule.
[[nodiscard]] SPOTBLUE_EXPORT BearingRatios bearing_ratios(const BearingSizes& sizes);

struct RunningLoad {
  double speed_m_s = 0.0;
  std::optional<double> pressure_mpa;
  std::optional<double> pressure_speed_mpa_m_s;
};
constexpr void describe(auto& fields, const RunningLoad*) {
  fields.value("RunningLoad", "How a pair works; what is absent is not known.")
      .member("speed_m_s", &RunningLoad::speed_m_s, "m/s")
      .range(kFrom0)
      .member("pressure_mpa", &RunningLoad::pressure_mpa, "MPa or None")
      .range(kFrom0)
      .member("pressure_speed_mpa_m_s", &RunningLoad::pressure_speed_mpa_m_s, "MPa m/s or None")
      .range(kFrom0);
}
/// @param covered_deg  how far round the bearing goes, as projected_width.
/// @throws Error bad_input as projected_pressure_mpa, surface_speed_m_s and projected_width.
[[nodiscard]] SPOTBLUE_EXPORT RunningLoad bearing_load(Diameter diameter, Length length, double rpm,
                                                       std::optional<double> load_n,
                                                       double covered_deg);

enum class RunningDuty { no_load_slow, intermittent, continuous };
constexpr auto describe(const RunningDuty*) {
  return words("How hard a bearing is run.", "no load, slow", "intermittent", "continuous");
}

/// What a limit does when it is passed: never mind, stop, or run only a share of the time.
enum class LimitCounts { no, yes, as_average };
constexpr auto describe(const LimitCounts*) {
  return words("What a limit does when it is passed.", "no", "yes", "as average");
}

/// Which limits count for a duty. Choice of this program, common practice, no source:
/// - no load, slow: speed only; the weight of the part presses nothing that a table speaks of.
/// - intermittent: pressure and speed at every moment; their product is heat, so its average over
///   time counts.
/// - continuous: all three at every moment.
struct CountingLimits {
  LimitCounts pressure = LimitCounts::yes;
  LimitCounts speed = LimitCounts::yes;
  LimitCounts pressure_speed = LimitCounts::yes;
};
constexpr void describe(auto& fields, const CountingLimits*) {
  fields.value("CountingLimits", "Which limits count for a duty.")
      .member("pressure", &CountingLimits::pressure, "whether pressure counts")
      .member("speed", &CountingLimits::speed, "whether speed counts")
      .member("pressure_speed", &CountingLimits::pressure_speed, "whether their product counts");
}
[[nodiscard]] SPOTBLUE_EXPORT CountingLimits counting_limits(RunningDuty duty);

struct LimitShares {
  std::optional<double> pressure, speed, pressure_speed;
  std::optional<double> running_time;
};
constexpr void describe(auto& fields, const LimitShares*) {
  fields
      .value("LimitShares",
             "Found over greatest allowed, 1 at the limit; absent where either is not known or "
             "does not count.")
      .member("pressure", &LimitShares::pressure, "None where not known or not counted")
      .member("speed", &LimitShares::speed, "None where not known or not counted")
      .member("pressure_speed", &LimitShares::pressure_speed, "None where not known or not counted")
      .member("running_time", &LimitShares::running_time,
              "for intermittent work: the greatest share of the time it may run, of 1");
}
[[nodiscard]] SPOTBLUE_EXPORT LimitShares limit_shares(const RunningLoad& load,
                                                       const BearingLimits& limits,
                                                       RunningDuty duty);

}  // namespace spotblue
