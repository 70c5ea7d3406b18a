#pragma once
/// @file
/// What a job wants: fits, sizes, gaps, tapers and end play.

#include <optional>
#include <string>
#include <variant>

#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/job/job_line.hpp"

namespace spotblue {

enum class FitSystem { iso_286, ansi_b4_1 };
constexpr auto describe(const FitSystem*) {
  return words("Whose classes of fit.", "ISO 286", "ANSI B4.1");
}

struct ClassFit {
  FitSystem system = FitSystem::iso_286;
  std::string text;
  std::optional<Length> nominal;
};
constexpr void describe(auto& fields, const ClassFit*) {
  fields.value("ClassFit", "A class of a standard: \"H7/s6\" or \"FN2\".")
      .member("system", &ClassFit::system, "\"ISO 286\" or \"ANSI B4.1\"")
      .member("text", &ClassFit::text, "\"H7/s6\"")
      .member("nominal_mm", &ClassFit::nominal, "taken from the features when absent");
}

struct ClearanceLimits {
  Length least, greatest;
};
constexpr void describe(auto& fields, const ClearanceLimits*) {
  fields
      .value(
          "ClearanceLimits",
          "Plain limits of the diametral clearance, least <= greatest; interference is negative.")
      .member("least_mm", &ClearanceLimits::least, "negative: interference")
      .member("greatest_mm", &ClearanceLimits::greatest, "negative: interference");
}

struct PerDiameter {
  double clearance = 0.0;
  Length tolerance;
  std::optional<Length> nominal;
};
constexpr void describe(auto& fields, const PerDiameter*) {
  fields
      .value("PerDiameter",
             "Old shop practice: so much clearance for each unit of diameter, give or take a "
             "tolerance.")
      .member("clearance", &PerDiameter::clearance, "length per length; negative is interference")
      .member("tolerance_mm", &PerDiameter::tolerance, ">= 0, either way")
      .member("nominal_mm", &PerDiameter::nominal, "None: taken from the features");
}

struct LimitsOfBoth {
  Limits hole, shaft;
  std::optional<Length> hole_nominal, shaft_nominal;
  std::string text;
  std::string basis;
};
constexpr void describe(auto& fields, const LimitsOfBoth*) {
  fields
      .value("LimitsOfBoth",
             "Hole and shaft each by limits of its own; job files have no entry for it, models' "
             "stated sizes make it.")
      .pair("hole_mm", &LimitsOfBoth::hole, "(lower, upper)")
      .pair("shaft_mm", &LimitsOfBoth::shaft, "(lower, upper)")
      .member("hole_nominal_mm", &LimitsOfBoth::hole_nominal, "or None")
      .member("shaft_nominal_mm", &LimitsOfBoth::shaft_nominal, "or None")
      .member("text", &LimitsOfBoth::text, "\"H7/s6\"; empty where not both have a class")
      .member("basis", &LimitsOfBoth::basis, "where the limits are from, for the report");
}

using FitRule = std::variant<ClassFit, ClearanceLimits, PerDiameter, LimitsOfBoth>;

struct FitWant {
  std::string hole, shaft;
  FitRule rule;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const FitWant*) {
  fields.value("FitWant", "How a hole and a shaft, or a slot and a key, shall fit.")
      .member("hole", &FitWant::hole, "\"Wheel: bore 44\"")
      .member("shaft", &FitWant::shaft, "\"Stud: outside 44\"")
      .member("rule", &FitWant::rule, "ClassFit, ClearanceLimits, PerDiameter or LimitsOfBoth")
      .member("line", &FitWant::line, "of the job file, or of one it includes; None in code");
}

struct ThreadWant {
  std::string hole, screw;
  std::string size;
  std::optional<Length> engaged;
  std::string reason;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const ThreadWant*) {
  fields.value("ThreadWant", "Which thread a screw and its tapped hole have.")
      .member("hole", &ThreadWant::hole, "\"Nut: bore\"")
      .member("screw", &ThreadWant::screw, "\"Shaft: outside\"")
      .member("size", &ThreadWant::size, "as threads() writes it: \"M20x1\"")
      .member("engaged_mm", &ThreadWant::engaged,
              "thread that is enough when engaged; None: half the screw's diameter")
      .member("reason", &ThreadWant::reason, "why that is enough; for the report")
      .member("line", &ThreadWant::line, "of the job file, or of one it includes; None in code");
}

struct SizeWant {
  std::string feature;
  std::variant<std::string, Limits> rule;
  std::optional<Length> nominal;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const SizeWant*) {
  fields
      .value("SizeWant",
             "What one feature's own size shall be: a tolerance class (\"H7\") or limits.")
      .member("feature", &SizeWant::feature, "its name")
      .member("rule", &SizeWant::rule, "a class (\"H7\") or (lower, upper) in mm")
      .member("nominal_mm", &SizeWant::nominal, "for a class; taken from the feature when absent")
      .member("line", &SizeWant::line, "of the job file, or of one it includes; None in code");
}

enum class AxialWantKind { gap, end_play, touch };
constexpr auto describe(const AxialWantKind*) {
  return words("What is wanted between two faces.", "gap", "end play", "touch");
}

struct AxialWant {
  AxialWantKind kind = AxialWantKind::gap;
  std::string a, b;
  Length least, greatest;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const AxialWant*) {
  fields
      .value("AxialWant",
             "The gap wanted between two faces, or at every axial seat between two parts.")
      .member("kind", &AxialWant::kind, "gap, end play or touch")
      .member("a", &AxialWant::a, "feature name, product id or occurrence path")
      .member("b", &AxialWant::b, "feature name, product id or occurrence path")
      .member("least_mm", &AxialWant::least, "mm")
      .member("greatest_mm", &AxialWant::greatest, "mm")
      .member("line", &AxialWant::line, "of the job file, or of one it includes; None in code");
}

struct TaperWant {
  std::string hole, shaft;
  double angle_within_deg = 0.0;
  std::optional<ClearanceLimits> gap;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const TaperWant*) {
  fields.value("TaperWant", "How near two cones that bear on each other must agree.")
      .member("hole", &TaperWant::hole, "its name")
      .member("shaft", &TaperWant::shaft, "its name")
      .member("angle_within_deg", &TaperWant::angle_within_deg,
              "greatest difference of the half angles")
      .member("gap", &TaperWant::gap, "ClearanceLimits square to the surface, or None")
      .member("line", &TaperWant::line, "of the job file, or of one it includes; None in code");
}

struct EndPlayWant {
  std::string of;
  Limits gap;
  std::optional<JobLine> line{};
  std::optional<std::string> on{};
};
constexpr void describe(auto& fields, const EndPlayWant*) {
  fields.value("EndPlayWant", "How far a captured part shall travel along its axis.")
      .member("of", &EndPlayWant::of, "product id or occurrence path")
      .pair("gap_mm", &EndPlayWant::gap, "(least, greatest), least >= 0")
      .member("line", &EndPlayWant::line, "of the job file, or of one it includes; None in code")
      .member("on", &EndPlayWant::on,
              "part that it travels on, which may float itself: product id or occurrence path; "
              "None: what stands still");
}

}  // namespace spotblue
