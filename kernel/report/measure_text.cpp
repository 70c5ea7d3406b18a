#include "report/measure_text.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>

#include "report/text_words.hpp"

namespace spotblue {
namespace {

/// A dimension's unit and how an inch shop reads it.
struct WorkUnit {
  std::string_view name, inch_name;
  double in_inch_jobs = 1.0;  // value in the inch job's unit, of 1 in the metric one
  double from = 0.0;          // what the inch job's unit says at 0 of the metric one
};

constexpr double kPsi = 145.03774;
constexpr double kFootPerMinute = 196.85039;
// By the definitions of the units: 1 in is 25.4 mm, 1 lb 0.45359237 kg, standard gravity 9.80665
// m/s2, 0 deg C 32 deg F. In the order of the dimensions.
constexpr std::array<WorkUnit, 14> kWorkUnits{{
    {"mm", "in"},
    {"mm2", "in2"},
    {"mm3", "in3"},
    {"deg", "deg"},
    {"N", "lbf", 0.22480894},
    {"N m", "lbf in", 8.8507458},
    {"MPa", "psi", kPsi},
    {"m/s", "ft/min", kFootPerMinute},
    {"MPa m/s", "psi ft/min", kPsi* kFootPerMinute},
    {"deg C", "deg F", 1.8, 32.0},
    {"um", "uin", 39.370079},
    {"rev/min", "rev/min"},
    {"%", "%"},
    {"", ""},
}};
static_assert(kWorkUnits.size() == kWordsOf<Dimension>.all.size());

// A micrometre, and in inches the nearest power of ten below it.
int sentence_decimals(LengthUnit unit) { return unit == LengthUnit::mm ? 3 : 5; }

constexpr const WorkUnit& work_unit(Dimension dimension) {
  return kWorkUnits.at(static_cast<std::size_t>(dimension));
}

double shown_value(const Measure& measure, LengthUnit unit) {
  const WorkUnit& work = work_unit(measure.dimension);
  return unit == LengthUnit::inch ? work.from + measure.value * work.in_inch_jobs : measure.value;
}

// A press is rated in kN, and in an inch shop in lbf.
std::string force_text(double newtons, LengthUnit unit) {
  return unit == LengthUnit::mm && std::abs(newtons) >= 1000.0
             ? fmt::format("{:.1f} kN", newtons / 1000.0)
             : fmt::format("{:.0f} {}", shown_value({newtons, Dimension::force}, unit),
                           unit_of(Dimension::force, unit));
}

}  // namespace

std::string_view unit_of(Dimension dimension, LengthUnit unit) {
  const WorkUnit& work = work_unit(dimension);
  return unit == LengthUnit::inch ? work.inch_name : work.name;
}

std::string measure_cell(const Measure& measure, LengthUnit unit) {
  switch (measure.dimension) {
    case Dimension::length:
      return length_cell(measure.value, unit);
    case Dimension::area:
      return area_cell(measure.value, unit);
    case Dimension::volume:
      return volume_cell(measure.value, unit);
    case Dimension::angle:
      return without_minus_zero(fmt::format("{:.3f}", measure.value));
    case Dimension::number:
      return without_minus_zero(fmt::format("{:.6g}", measure.value));
    default:
      return without_minus_zero(fmt::format("{:.4g}", shown_value(measure, unit)));
  }
}

std::string measure_text(const Measure& measure, LengthUnit unit) {
  const auto with_unit = [&](std::string number) {
    return fmt::format("{} {}", without_minus_zero(std::move(number)),
                       unit_of(measure.dimension, unit));
  };
  switch (measure.dimension) {
    case Dimension::length:
      return with_unit(format_length(Length::mm(measure.value), unit, sentence_decimals(unit)));
    case Dimension::force:
      return force_text(measure.value, unit);
    case Dimension::temperature:
    case Dimension::rotation:
      return with_unit(fmt::format("{:.0f}", shown_value(measure, unit)));
    case Dimension::angle:  // how far round, or how far askew
      return with_unit(
          fmt::format("{:.{}f}", measure.value, std::abs(measure.value) < 10.0 ? 3 : 0));
    case Dimension::share:
      return with_unit(fmt::format("{:.0f}", measure.value));
    case Dimension::number:
      return measure_cell(measure, unit);
    default:
      return with_unit(measure_cell(measure, unit));
  }
}

}  // namespace spotblue
