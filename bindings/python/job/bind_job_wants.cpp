#include "python/job/bind_job_entries.hpp"
#include "python/values/record_fields.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue::python {
namespace {

void bind_rules(py::module_& module) {
  choice<FitSystem>(module, "FitSystem", "Whose classes of fit.", {"ISO 286", "ANSI B4.1"});
  Record<ClassFit> class_fit(module, "ClassFit", "A fit by its class: \"H7/s6\" or \"FN2\".");
  class_fit.field("system", &ClassFit::system, "\"ISO 286\" or \"ANSI B4.1\"");
  class_fit.field("text", &ClassFit::text, "\"H7/s6\"");
  optional_length(class_fit, "nominal_mm", &ClassFit::nominal, "None: taken from the features");
  class_fit.done();
  Record<ClearanceLimits>(module, "ClearanceLimits", "Plain limits of the diametral clearance.")
      .length("least_mm", &ClearanceLimits::least, "negative: interference")
      .length("greatest_mm", &ClearanceLimits::greatest, "negative: interference")
      .done();
  Record<PerDiameter> per(module, "PerDiameter", "So much clearance for each unit of diameter.");
  per.field("clearance", &PerDiameter::clearance, "length per length")
      .length("tolerance_mm", &PerDiameter::tolerance, "either way");
  optional_length(per, "nominal_mm", &PerDiameter::nominal, "None: taken from the features");
  per.done();
  Record<LimitsOfBoth> both(module, "LimitsOfBoth", "Hole and shaft each by limits of its own.");
  limits_field(both, "hole_mm", &LimitsOfBoth::hole, "(lower, upper)");
  limits_field(both, "shaft_mm", &LimitsOfBoth::shaft, "(lower, upper)");
  optional_length(both, "hole_nominal_mm", &LimitsOfBoth::hole_nominal, "or None");
  optional_length(both, "shaft_nominal_mm", &LimitsOfBoth::shaft_nominal, "or None");
  both.field("text", &LimitsOfBoth::text, "\"H7/s6\"")
      .field("basis", &LimitsOfBoth::basis, "where the limits are from")
      .done();
  Record<FitWant>(module, "FitWant", "How a hole and a shaft, or a slot and a key, shall fit.")
      .field("hole", &FitWant::hole, "\"Wheel: bore 44\"")
      .field("shaft", &FitWant::shaft, "\"Stud: outside 44\"")
      .field("rule", &FitWant::rule, "ClassFit, ClearanceLimits, PerDiameter or LimitsOfBoth")
      .field("line", &FitWant::line, "of the job file; 0 in code")
      .done();
}

using SizeRule = std::variant<std::string, LimitsMm>;

void bind_size_want(py::module_& module) {
  Record<SizeWant> size(module, "SizeWant", "What one feature's own size shall be.");
  size.field("feature", &SizeWant::feature, "its name")
      .computed(
          "rule",
          [](const SizeWant& want) -> SizeRule {
            if (const auto* const limits = std::get_if<Limits>(&want.rule)) {
              return to_pair(*limits);
            }
            return std::get<std::string>(want.rule);
          },
          [](SizeWant& want, const SizeRule& rule) {
            if (const auto* const pair = std::get_if<LimitsMm>(&rule)) {
              want.rule = from_pair(*pair);
            } else {
              want.rule = std::get<std::string>(rule);
            }
          },
          "a class (\"H7\") or (lower, upper) in mm");
  optional_length(size, "nominal_mm", &SizeWant::nominal, "for a class; None: the feature's");
  size.field("line", &SizeWant::line, "of the job file; 0 in code").done();
}

void bind_axial(py::module_& module) {
  choice<AxialWantKind>(module, "AxialWantKind", "What is wanted between two faces.",
                        {"gap", "end play", "touch"});
  Record<AxialWant> axial(module, "AxialWant", "The gap wanted between two faces or two parts.");
  axial.field("kind", &AxialWant::kind, "gap, end play or touch");
  axial.field("a", &AxialWant::a, "feature, product or occurrence")
      .field("b", &AxialWant::b, "feature, product or occurrence")
      .length("least_mm", &AxialWant::least, "mm")
      .length("greatest_mm", &AxialWant::greatest, "mm")
      .field("line", &AxialWant::line, "of the job file; 0 in code")
      .done();
  Record<TaperWant>(module, "TaperWant", "How near two cones must agree.")
      .field("hole", &TaperWant::hole, "its name")
      .field("shaft", &TaperWant::shaft, "its name")
      .field("angle_within_deg", &TaperWant::angle_within_deg, "of the half angles")
      .field("gap", &TaperWant::gap, "ClearanceLimits square to the surface, or None")
      .field("line", &TaperWant::line, "of the job file; 0 in code")
      .done();
  Record<EndPlayWant> play(module, "EndPlayWant", "How far a captured part shall travel.");
  play.field("of", &EndPlayWant::of, "product id or occurrence path");
  limits_field(play, "gap_mm", &EndPlayWant::gap, "(least, greatest)");
  play.field("line", &EndPlayWant::line, "of the job file; 0 in code").done();
}

}  // namespace

void bind_job_wants(py::module_& module) {
  bind_rules(module);
  bind_size_want(module);
  bind_axial(module);
}

}  // namespace spotblue::python
