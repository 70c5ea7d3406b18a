#include <pybind11/stl/filesystem.h>

#include <utility>

#include "python/bind.hpp"
#include "python/values/record.hpp"
#include "python/values/view.hpp"
#include "spotblue/job/feature_name.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue::python {
namespace {

void bind_parts(py::module_& module) {
  choice<PartState>(module);
  choice<Drawn>(module);
  choice<StockForm>(module);
  bind_records<Stock, SharedStock, JobPart, OwnMaterial, MeasuredSize, MeasuredGap, PartLength,
               Surface>(module);
}

void bind_wants(py::module_& module) {
  choice<FitSystem>(module);
  choice<AxialWantKind>(module);
  bind_records<ClassFit, ClearanceLimits, PerDiameter, LimitsOfBoth, FitWant, ThreadWant, SizeWant,
               AxialWant, TaperWant, EndPlayWant>(module);
}

void bind_running(py::module_& module) {
  choice<Duty>(module);
  bind_records<AllowedOverlap, Fixing, Adjust, KeepOff, ToothSpan, OverPins, MeshGear, Mesh,
               Turning, Cut>(module);
}

std::optional<FeatureName> parsed(const std::string& text, const std::string& unit) {
  return parse_feature_name(text, parse_unit(unit));
}

void bind_partial_name(py::module_& module) {
  bind_view<PartialFeatureName>(module);
  module.def(
      "parse_partial_feature_name",
      [](const std::string& text, const std::string& unit) {
        return parse_partial_feature_name(text, parse_unit(unit));
      },
      py::arg("text"), py::arg("unit") = "mm",
      R"(Takes "bore", "Wheel: bore 44" or "length 80" apart; None when it begins with no such word.

Args:
    text: the position in it is in mm whatever the unit, as the names of a model have it.
    unit: of bare sizes.
Raises: BadInputError when what stands for a size is no length.)");
}

void bind_feature_name(py::module_& module) {
  choice<FeatureWord>(module);
  bind_view<FeatureName>(module);
  module.def(
      "feature_word_name", [](FeatureWord word) { return std::string(feature_word_name(word)); },
      py::arg("word"), "The word as feature names have it: \"taper bore\".");
  module.def("parse_feature_name", &parsed, py::arg("text"), py::arg("unit") = "mm",
             "Takes \"Wheel: bore 44 @ 12\" apart; None when the text is no feature name.");
  module.def(
      "feature_size_text",
      [](const std::string& sized_name, const std::string& unit) {
        return feature_size_text(sized_name, parse_unit(unit));
      },
      py::arg("sized_name"), py::arg("unit"),
      R"(The size in a feature's sized name, in the unit: "44", "20/24", "60x45 at 12".

Args:
    sized_name: as a model has it, in mm: "bore 44"; of any other text nothing comes back.
    unit: "mm" or "in".)");
  module.def("part_of_feature", &part_of_feature, py::arg("name"),
             "The part of \"Wheel: bore\" before its last \": \"; empty without one.");
  bind_partial_name(module);
}

// How a look is taken stands in a struct of its own there; here its fields are the settings' own.
template <class M>
void look_field(Record<JobSettings>& record, const char* name, M LookSettings::*member,
                const char* doc) {
  record.computed(
      name, [member](const JobSettings& value) -> const M& { return value.look.*member; },
      [member](JobSettings& value, M given) { value.look.*member = std::move(given); }, doc,
      Nested<M> ? py::return_value_policy::reference_internal : py::return_value_policy::copy);
}

void bind_job_settings(py::module_& module) {
  Record<JobSettings> settings(module, "JobSettings", "How the model is read and seats are found.");
  look_field(settings, "seats", &LookSettings::seats, "what is a seat");
  settings.member(
      "default_uncertainty_mm", &JobSettings::default_uncertainty,
      "of sizes that have none of their own: measured values, and actual sizes from the model");
  look_field(settings, "limits", &LookSettings::limits, "bounds on the reading");
  look_field(settings, "completeness", &LookSettings::completeness,
             "\"all or error\" or \"accept partial\"");
  settings.done();
}

}  // namespace

void bind_job(py::module_& module) {
  bind_parts(module);
  bind_wants(module);
  bind_running(module);
  bind_records<Conditions>(module);
  bind_job_settings(module);
  bind_records<Job>(module);
  bind_feature_name(module);
}

}  // namespace spotblue::python
