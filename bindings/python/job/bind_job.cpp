#include <pybind11/stl/filesystem.h>

#include "python/bind.hpp"
#include "python/job/bind_job_entries.hpp"
#include "python/values/record_fields.hpp"
#include "python/values/view.hpp"
#include "spotblue/job/feature_name.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue::python {
namespace {

void bind_job_settings(py::module_& module) {
  Record<Conditions> conditions(module, "Conditions", "What holds for the whole job.");
  conditions.field("bench_c", &Conditions::bench_c, "temperature of the bench")
      .field("running_c", &Conditions::running_c, "of parts without one of their own")
      .field("friction_least", &Conditions::friction_least, "of pressed joints")
      .field("friction_greatest", &Conditions::friction_greatest, "of pressed joints")
      .field("rz_um", &Conditions::rz_um, "of features without a surface of their own");
  optional_length(conditions, "slip_clearance_mm", &Conditions::slip_clearance,
                  "for a slip-in assembly; None: 0.001 of the diameter");
  conditions.field("untoleranced", &Conditions::untoleranced, "ISO 2768-1 class")
      .length("cleaning_mm", &Conditions::cleaning, "metal to clean off each side of the stock")
      .done();
  Record<JobSettings> settings(module, "JobSettings", "How the model is read and seats are found.");
  settings.field("seats", &JobSettings::seats, "what is a seat")
      .length("default_uncertainty_mm", &JobSettings::default_uncertainty, "expanded, k = 2")
      .field("limits", &JobSettings::limits, "bounds on the reading");
  settings.field("completeness", &JobSettings::completeness,
                 "\"all or error\" or \"accept partial\"");
  settings.done();
}

void bind_whole(py::module_& module) {
  Record<Job> job(module, "Job",
                  "Which model, what is known of its parts, what was measured and what is wanted.");
  job.field("file", &Job::file, "as the caller gave it; empty for jobs made in code")
      .field("model", &Job::model, "the STEP file");
  job.field("unit", &Job::unit, "of reports: \"mm\" or \"inch\"");
  job.field("title", &Job::title, "of the job")
      .field("parts", &Job::parts, "what is known of the parts")
      .field("fits", &Job::fits, "how holes and shafts shall fit")
      .field("sizes", &Job::sizes, "what single features shall be")
      .field("measured", &Job::measured, "sizes taken with an instrument")
      .field("measured_gaps", &Job::measured_gaps, "gaps taken with a feeler")
      .field("axial", &Job::axial, "gaps wanted between faces")
      .field("tapers", &Job::tapers, "how cones must agree")
      .field("allowed", &Job::allowed, "overlaps that are meant")
      .field("materials", &Job::materials, "materials of the job's own")
      .field("conditions", &Job::conditions, "for the whole job")
      .field("turning", &Job::turning, "parts that turn")
      .field("joins", &Job::joins, "parts held by something no fit shows")
      .field("keep_off", &Job::keep_off, "parts that must stay off each other")
      .field("surfaces", &Job::surfaces, "roughness of single features")
      .field("lengths", &Job::lengths, "distances of two faces of one part")
      .field("end_play", &Job::end_play, "how far captured parts shall travel")
      .field("meshes", &Job::meshes, "gears that run together")
      .field("cuts", &Job::cuts, "metal that comes off parts that exist")
      .field("settings", &Job::settings, "how the model is read")
      .done();
}

std::optional<FeatureName> parsed(const std::string& text, const std::string& unit) {
  return parse_feature_name(text, parse_unit(unit));
}

// Of what a name says, whole or in part.
template <class Name>
std::vector<double> sizes_mm(const Name& name) {
  std::vector<double> sizes;
  for (const Length size : name.sizes) {
    sizes.push_back(size.in_mm());
  }
  return sizes;
}

template <class Name>
std::optional<double> position_mm(const Name& name) {
  return name.position ? std::optional(name.position->in_mm()) : std::nullopt;
}

void bind_partial_name(py::module_& module) {
  using Partial = PartialFeatureName;
  View<Partial>(module, "PartialFeatureName", "As much of a feature's name as a person said.")
      .value("part", &Partial::part, "empty when none is said")
      .value("word", &Partial::word, "\"bore\", ...; None for \"length\", between two faces")
      .computed("sizes_mm", &sizes_mm<Partial>, "none, one, or two for tapers and faces")
      .computed("position_mm", &position_mm<Partial>, "or None")
      .value("ordinal", &Partial::ordinal, "from 1, or None")
      .done();
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
  choice<FeatureWord>(module, "FeatureWord", "What a feature's name begins with.",
                      {"bore", "outside", "taper bore", "taper", "face", "slot", "width"});
  View<FeatureName>(module, "FeatureName", "A feature's name, taken apart.")
      .value("part", &FeatureName::part, "before the last \": \"")
      .value("word", &FeatureName::word, "\"bore\", \"outside\", \"face\", ...")
      .computed("sizes_mm", &sizes_mm<FeatureName>, "one, or two for tapers and faces")
      .computed("position_mm", &position_mm<FeatureName>, "after \" @ \", or None")
      .value("ordinal", &FeatureName::ordinal, "after \" #\", from 1, or None")
      .done();
  module.def(
      "feature_word_name", [](FeatureWord word) { return std::string(feature_word_name(word)); },
      py::arg("word"), "The word as feature names have it: \"taper bore\".");
  module.def("parse_feature_name", &parsed, py::arg("text"), py::arg("unit") = "mm",
             "Takes \"Wheel: bore 44 @ 12\" apart; None when the text is no feature name.");
  bind_partial_name(module);
}

}  // namespace

void bind_job(py::module_& module) {
  bind_job_parts(module);
  bind_job_wants(module);
  bind_job_running(module);
  bind_job_settings(module);
  bind_whole(module);
  bind_feature_name(module);
}

}  // namespace spotblue::python
