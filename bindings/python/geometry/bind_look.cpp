#include <pybind11/pybind11.h>
#include <pybind11/stl/filesystem.h>

#include <algorithm>

#include "python/bind.hpp"
#include "python/values/long_call.hpp"
#include "python/values/typed.hpp"
#include "python/values/view.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/feature_names.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/job/bare_job.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/report/json.hpp"
#include "spotblue/report/look_text.hpp"

namespace spotblue::python {

template <>
inline constexpr bool kShared<Model> = true;
template <>
inline constexpr bool kShared<Seats> = true;
template <>
inline constexpr bool kShared<FoulReport> = true;

namespace {

using SharedLook = std::shared_ptr<Look>;

std::string look_shown(const Look& look) {
  const auto count = [](std::size_t number, const char* what) {
    return ", " + std::to_string(number) + " " + what;
  };
  return "<Look at " + look.model.file.name + ": " + std::to_string(look.model.products.size()) +
         " products" + count(look.model.occurrences.size(), "occurrences") +
         count(look.seats.radial.size(), "radial seats") +
         count(look.seats.axial.size(), "axial seats") +
         count(look.seats.threads.size(), "threads") + count(look.fouls.found.size(), "fouls") +
         ">";
}

std::string text_of_look(const Look& look, const std::optional<std::string>& unit,
                         std::size_t width) {
  const LengthUnit shown_in = unit ? parse_unit(*unit) : unit_of(look.model.file);
  return look_text(look, {shown_in, Colour::never, width});
}

std::size_t count_of(const Product& product, FeatureKind kind) {
  switch (kind) {
    case FeatureKind::cylinder:
      return product.cylinders.size();
    case FeatureKind::cone:
      return product.cones.size();
    case FeatureKind::plane:
      return product.planes.size();
    case FeatureKind::width:
      return product.widths.size();
  }
  return 0;
}

std::string checked_feature_id(const Model& model, const FeatureRef& feature) {
  if (feature.occurrence >= model.occurrences.size() ||
      feature.index >=
          count_of(model.products[model.occurrences[feature.occurrence].product], feature.kind)) {
    throw Error(ErrorCode::bad_input, {model.file.name, ""}, "the model has no such feature",
                "use a FeatureRef of a seat of this model");
  }
  return feature_id(model, feature);
}

LookSettings settings_for(LookSettings settings, const std::optional<SeatSettings>& seats,
                          const std::optional<ReadLimits>& limits, const LookBounds& bounds) {
  settings.seats = seats.value_or(settings.seats);
  settings.limits = limits.value_or(settings.limits);
  return bounded(settings, bounds);
}

Look look_given(const std::filesystem::path& file, const std::optional<SeatSettings>& seats,
                const std::optional<ReadLimits>& limits, const LookBounds& bounds,
                Outside outside) {
  if (file.extension() != ".toml") {
    return look(file, settings_for({}, seats, limits, bounds));
  }
  const Job job = read_job(file, outside);
  return look(job.model, settings_for(job.settings.look, seats, limits, bounds));
}

py::object by_python(const char* module, const char* function, const py::object& self) {
  return py::module_::import(module).attr(function)(self);
}

void bind_look_methods(py::class_<Look, SharedLook>& look) {
  look.def("to_text", &text_of_look, py::arg("unit") = py::none(), py::kw_only(),
           py::arg("width") = 0, py::call_guard<py::gil_scoped_release>(),
           "The report of the look verb; unit \"mm\", \"in\" or the file's own; no line "
           "of it beyond width columns, 0 for a line for each row of a table.")
      .def("to_json", &look_json, py::call_guard<py::gil_scoped_release>(),
           "The whole result as JSON text, schema 2: lengths in mm, angles in degrees.")
      .def(
          "feature_id",
          [](const Look& self, const FeatureRef& ref) {
            return checked_feature_id(self.model, ref);
          },
          py::arg("feature"), "\"Wheel: bore\".")
      .def("_repr_html_", [](const py::object& self) -> py::str {
        return by_python("spotblue.shown", "look_html", self);
      });
  for (const char* table : {"features", "radial_seats", "axial_seats", "fouls"}) {
    look.def((std::string(table) + "_array").c_str(),
             [table](const py::object& self) -> Typed<"numpy.typing.NDArray[typing.Any]"> {
               return by_python("spotblue.arrays", table, self);
             },
             "A new numpy structured array, units in the field names.");
  }
}

void bind_look_functions(py::module_& module) {
  module.def(
      "look",
      [](const std::filesystem::path& file, bool accept_partial,
         const std::optional<SeatSettings>& seats, const std::optional<ReadLimits>& limits,
         std::optional<double> seconds, std::optional<double> memory_mb, bool allow_outside) {
        return std::make_shared<Look>(long_call([=] {
          return look_given(file, seats, limits, {seconds, memory_mb, accept_partial},
                            outside_of(allow_outside));
        }));
      },
      py::arg("file"), py::kw_only(), py::arg("accept_partial") = false,
      py::arg("seats") = py::none(), py::arg("limits") = py::none(),
      py::arg("seconds") = py::none(), py::arg("memory_mb") = py::none(),
      py::arg("allow_outside") = false,
      R"(Finds parts, features, centre lines, seats, threads and fouls.

Args:
    file: a STEP file, or a job file (.toml), whose model and settings are taken.
    accept_partial: take what can be read of a damaged file, with a note, in place of an error.
    seats, limits: in place of the job file's or the usual ones.
    seconds: ends within these and one more; what was not looked at by then is in not_looked_at.
        Without them reading may take limits.seconds, and what comes after as long again.
    memory_mb: ends likewise once this process has grown by so much, a thousand bytes for each seat
        and foul counted in for reports, or by what the machine has left; the process that reads
        the file may take as much again. Both stand in place of what limits says.
    allow_outside: as for read_job, of a job file.
Returns: the same as the program's look verb.
Raises: FileAccessError, UnreadableError, IncompleteError, each naming the file.)");
  module.def(
      "look_at",
      [](const std::shared_ptr<Model>& model, const std::optional<SeatSettings>& seats,
         const std::optional<ReadLimits>& limits, std::optional<double> seconds,
         std::optional<double> memory_mb) {
        const LookSettings settings = settings_for({}, seats, limits, {seconds, memory_mb});
        return std::make_shared<Look>(long_call([=] { return look_at(*model, settings); }));
      },
      py::arg("model"), py::kw_only(), py::arg("seats") = py::none(),
      py::arg("limits") = py::none(), py::arg("seconds") = py::none(),
      py::arg("memory_mb") = py::none(), "Finds the same on a model that has been read already.");
  module.def("feature_id", &checked_feature_id, py::arg("model"), py::arg("feature"),
             "\"Wheel: bore\": the feature's name behind its product's id.");
  module.def(
      "features_called", &features_called, py::arg("product"), py::arg("text"),
      R"(The features of a product that a text means: one that is called so, or has that size.

Args:
    text: a feature's name, what the file calls a face of it, or its sized name, "bore 8".
None: there is no such; several: the text does not tell which.)");
}

}  // namespace

void bind_look(py::module_& module) {
  bind_view<LookSeconds>(module);
  auto look = bind_view<Look, SharedLook>(module, &look_shown);
  bind_look_methods(look);
  bind_look_functions(module);
}

}  // namespace spotblue::python
