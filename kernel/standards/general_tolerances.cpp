#include "spotblue/standards/general_tolerances.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/unit.hpp"

namespace spotblue {
namespace {

constexpr std::optional<double> kNone = std::nullopt;

// ISO 2768-1:1989, table 1: permissible deviations for linear dimensions except broken edges, mm.
constexpr std::array<GeneralToleranceStep, 8> kLinear{{
    {0.5, 3.0, {0.05, 0.1, 0.2, kNone}},
    {3.0, 6.0, {0.05, 0.1, 0.3, 0.5}},
    {6.0, 30.0, {0.1, 0.2, 0.5, 1.0}},
    {30.0, 120.0, {0.15, 0.3, 0.8, 1.5}},
    {120.0, 400.0, {0.2, 0.5, 1.2, 2.5}},
    {400.0, 1000.0, {0.3, 0.8, 2.0, 4.0}},
    {1000.0, 2000.0, {0.5, 1.2, 3.0, 6.0}},
    {2000.0, 4000.0, {kNone, 2.0, 4.0, 8.0}},
}};

// ISO 2768-1:1989, table 2: external radii and chamfer heights, mm.
constexpr std::array<GeneralToleranceStep, 3> kBrokenEdges{{
    {0.5, 3.0, {0.2, 0.2, 0.4, 0.4}},
    {3.0, 6.0, {0.5, 0.5, 1.0, 1.0}},
    {6.0, std::numeric_limits<double>::infinity(), {1.0, 1.0, 2.0, 2.0}},
}};

constexpr std::string_view kLetters = "fmcv";

[[noreturn]] void refuse(double nominal_mm, GeneralTolerance tolerance, std::string cure) {
  throw Error(ErrorCode::not_in_standard, {{}, "nominal_mm"},
              fmt::format("ISO 2768-1 gives nothing for {} mm in class {}",
                          format_size(Length::mm(nominal_mm), LengthUnit::mm),
                          general_tolerance_letter(tolerance)),
              std::move(cure));
}

Length deviation(std::span<const GeneralToleranceStep> steps, Length nominal,
                 GeneralTolerance tolerance) {
  const double size = nominal.in_mm();
  require_positive(size, "nominal_mm", "mm");
  if (size < steps.front().over_mm) {
    refuse(size, tolerance, "write the limits at the size itself, as the standard asks");
  }
  const auto step = std::find_if(steps.begin(), steps.end(), [size](const auto& candidate) {
    return size <= candidate.up_to_mm;
  });
  if (step == steps.end()) {
    refuse(size, tolerance, "give limits for it in [[lengths]]");
  }
  const auto value = step->deviation_mm.at(static_cast<std::size_t>(tolerance));
  if (!value) {
    refuse(size, tolerance, "take the next class, or give limits for it in [[lengths]]");
  }
  return Length::mm(*value);
}

}  // namespace

std::span<const GeneralToleranceStep> general_tolerance_steps() { return kLinear; }
std::span<const GeneralToleranceStep> broken_edge_steps() { return kBrokenEdges; }

GeneralTolerance parse_general_tolerance(std::string_view letter) {
  const std::size_t at = letter.size() == 1 ? kLetters.find(letter) : std::string_view::npos;
  if (at == std::string_view::npos) {
    throw Error(ErrorCode::bad_input, {{}, "letter"},
                fmt::format("ISO 2768-1 has no class \"{}\"", letter),
                "use f (fine), m (medium), c (coarse) or v (very coarse)");
  }
  return static_cast<GeneralTolerance>(at);
}

std::string_view general_tolerance_letter(GeneralTolerance tolerance) {
  return kLetters.substr(static_cast<std::size_t>(tolerance), 1);
}

Length general_deviation(Length nominal, GeneralTolerance tolerance) {
  return deviation(kLinear, nominal, tolerance);
}

Length broken_edge_deviation(Length nominal, GeneralTolerance tolerance) {
  return deviation(kBrokenEdges, nominal, tolerance);
}

}  // namespace spotblue
