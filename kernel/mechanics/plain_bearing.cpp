#include "spotblue/mechanics/plain_bearing.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/require.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

std::optional<double> share(const std::optional<double>& found, const std::optional<double>& limit,
                            LimitCounts counts) {
  if (!found || !limit || counts == LimitCounts::no) {
    return std::nullopt;
  }
  return *found / *limit;
}

}  // namespace

double projected_pressure_mpa(double load_n, Diameter diameter, Length length) {
  require_not_negative(load_n, "load_n", "N");
  require_positive(diameter.in_mm(), "diameter", "mm");
  require_positive(length.in_mm(), "length", "mm");
  return load_n / (diameter.in_mm() * length.in_mm());
}

Length projected_width(Diameter diameter, double covered_deg) {
  require_positive(diameter.in_mm(), "diameter", "mm");
  require_positive(covered_deg, "covered_deg", "deg");
  if (covered_deg > 360.0) {
    throw Error(ErrorCode::bad_input, {"", "covered_deg"},
                fmt::format("need no more than 360 degrees, got {}", covered_deg),
                "check the number and its unit");
  }
  return covered_deg < 180.0 ? std::sin(0.5 * radians(covered_deg)) * diameter.length()
                             : diameter.length();
}

double edge_load_n(double load_n, double moment_nm, Length length) {
  require_not_negative(load_n, "load_n", "N");
  require_finite(moment_nm, "moment_nm", "N m");
  require_positive(length.in_mm(), "length", "mm");
  return load_n + 6.0 * 1000.0 * std::abs(moment_nm) / length.in_mm();
}

double surface_speed_m_s(Diameter diameter, double rpm) {
  require_positive(diameter.in_mm(), "diameter", "mm");
  require_not_negative(rpm, "rpm", "1/min");
  return std::numbers::pi * diameter.in_mm() / 1000.0 * rpm / 60.0;
}

BearingRatios bearing_ratios(const BearingSizes& sizes) {
  require_value(sizes, "sizes");
  const Length across = sizes.diameter.length();
  BearingRatios ratios;
  ratios.clearance_least = sizes.clearance.lower / across;
  ratios.clearance_greatest = sizes.clearance.upper / across;
  ratios.length = sizes.length / across;
  if (sizes.wall) {
    ratios.wall = *sizes.wall / across;
  }
  return ratios;
}

RunningLoad bearing_load(Diameter diameter, Length length, double rpm, std::optional<double> load_n,
                         double covered_deg) {
  require_positive(length.in_mm(), "length", "mm");
  const Diameter across(projected_width(diameter, covered_deg));
  RunningLoad load;
  load.speed_m_s = surface_speed_m_s(diameter, rpm);
  if (load_n) {
    load.pressure_mpa = projected_pressure_mpa(*load_n, across, length);
    load.pressure_speed_mpa_m_s = *load.pressure_mpa * load.speed_m_s;
  }
  return load;
}

CountingLimits counting_limits(RunningDuty duty) {
  switch (duty) {
    case RunningDuty::no_load_slow:
      return {LimitCounts::no, LimitCounts::yes, LimitCounts::no};
    case RunningDuty::intermittent:
      return {LimitCounts::yes, LimitCounts::yes, LimitCounts::as_average};
    case RunningDuty::continuous:
      break;
  }
  return {};
}

LimitShares limit_shares(const RunningLoad& load, const BearingLimits& limits, RunningDuty duty) {
  require_value(load, "load");
  require_value(limits, "limits");
  const CountingLimits counts = counting_limits(duty);
  LimitShares shares;
  shares.pressure = share(load.pressure_mpa, limits.pressure_mpa, counts.pressure);
  shares.speed = share(load.speed_m_s, limits.speed_m_s, counts.speed);
  shares.pressure_speed =
      share(load.pressure_speed_mpa_m_s, limits.pressure_speed_mpa_m_s, counts.pressure_speed);
  if (counts.pressure_speed == LimitCounts::as_average && shares.pressure_speed) {
    shares.running_time = std::min(1.0, 1.0 / std::max(*shares.pressure_speed, 1e-12));
  }
  return shares;
}

}  // namespace spotblue
