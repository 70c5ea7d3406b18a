#include <pybind11/pybind11.h>
#include <pybind11/stl/filesystem.h>

#include <optional>
#include <variant>

#include "python/bind.hpp"
#include "python/values/check_value.hpp"
#include "python/values/long_call.hpp"
#include "python/values/typed.hpp"
#include "python/values/view.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/check/check.hpp"
#include "spotblue/check/compare.hpp"
#include "spotblue/check/draft.hpp"
#include "spotblue/job/bare_job.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/report/check_text.hpp"
#include "spotblue/report/group_text.hpp"
#include "spotblue/report/json.hpp"

namespace spotblue::python {
namespace {

using JobOrFile = std::variant<Job, std::filesystem::path>;

CheckResult check_given(const JobOrFile& given, const LookBounds& bounds, Outside outside) {
  const auto* const file = std::get_if<std::filesystem::path>(&given);
  return check(file != nullptr ? judging_of(*file, outside) : Judging{std::get<Job>(given)},
               bounds);
}

std::string check_shown(const CheckResult& result) {
  const OutcomeCount count = count_outcomes(result.findings);
  return "<CheckResult of " +
         (result.job.file.empty() ? result.look.model.file.name : result.job.file) + ": " +
         std::to_string(count.conforming) + " conforming, " + std::to_string(count.nonconforming) +
         " nonconforming, " + std::to_string(count.undecided) + " undecided>";
}

void bind_finding(py::module_& module) { bind_views<Finding, OutcomeCount>(module); }

void bind_result(py::module_& module) {
  View<CheckResult, SharedCheck> result(module, "CheckResult",
                                        "A job, what was found, and what was judged.");
  result
      .computed(
          "look", [](const SharedCheck& self) { return std::shared_ptr<Look>(self, &self->look); },
          "what was found on the model")
      .computed(
          "job", [](const CheckResult& self) { return self.job; }, "a copy of the job")
      .member("findings", &CheckResult::findings, "in order of judging")
      .member("group", &CheckResult::group,
              "what the findings rest on; None where the model did not arrive, or was not judged, "
              "whole")
      .computed(
          "whole", [](const CheckResult& self) { return is_whole(self); },
          "whether all was looked at and judged")
      .computed(
          "outcomes", [](const CheckResult& self) { return count_outcomes(self.findings); },
          "how many of each");
  result.shown_by(&check_shown)
      .done()
      .def(
          "to_text",
          [](const CheckResult& self, const std::optional<std::string>& unit, std::size_t width) {
            return check_text(self,
                              {unit ? parse_unit(*unit) : self.job.unit, Colour::never, width});
          },
          py::arg("unit") = py::none(), py::kw_only(), py::arg("width") = 0,
          py::call_guard<py::gil_scoped_release>(),
          "The report of the check verb; unit \"mm\", \"in\" or the job's own; width as of a "
          "look's.")
      .def(
          "group_text",
          [](const CheckResult& self, const std::optional<std::string>& unit, std::size_t width) {
            return group_text(self,
                              {unit ? parse_unit(*unit) : self.job.unit, Colour::never, width});
          },
          py::arg("unit") = py::none(), py::kw_only(), py::arg("width") = 0,
          py::call_guard<py::gil_scoped_release>(),
          "What check --group prints of bodies and sizes; unit and width as of to_text.")
      .def("to_json", &check_json, py::call_guard<py::gil_scoped_release>(),
           "The whole result as JSON text, schema 2: lengths in mm, angles in degrees.")
      .def(
          "findings_array",
          [](const py::object& self) -> Typed<"numpy.typing.NDArray[typing.Any]"> {
            return py::module_::import("spotblue.arrays").attr("findings")(self);
          },
          "A new numpy structured array: a row a finding.")
      .def("_repr_html_", [](const py::object& self) -> py::str {
        return py::module_::import("spotblue.shown").attr("check_html")(self);
      });
}

void bind_job_functions(py::module_& module) {
  module.def(
      "read_job",
      [](const std::filesystem::path& file, bool allow_outside) {
        return read_job(file, outside_of(allow_outside));
      },
      py::arg("file"), py::kw_only(), py::arg("allow_outside") = false,
      R"(Reads and checks a job file; its model's path is seen from where the file lies.

Args:
    file: a job file.
    allow_outside: take a model that does not lie in the job file's folder or below it.
Raises: FileAccessError; BadInputError naming file and line for what breaks a rule.)");
  module.def(
      "bare_job",
      [](const std::filesystem::path& model, const std::string& unit) {
        return bare_job(model, parse_unit(unit));
      },
      py::arg("model"), py::arg("unit") = "mm",
      "A job without entries: judged by the sizes that the model itself states.");
  module.def("is_model_file", &is_model_file, py::arg("file"),
             "Whether a file is a model and no job, by its first bytes, or by its name if it is "
             "not there.");
  module.def("unit_of", &unit_of, py::arg("file"),
             "Whether reports on a file are best in mm or inches: as the file is written.");
  module.def("margin_share", &margin_share, py::arg("finding"),
             R"(The share of its limits that is left to a finding.

Returns: 1 in the middle of the limits, 0 on one, negative outside; None without such a margin.)");
}

void bind_check_function(py::module_& module) {
  module.def(
      "check",
      [](const JobOrFile& job, bool accept_partial, std::optional<double> seconds,
         std::optional<double> memory_mb, bool allow_outside) {
        return std::make_shared<CheckResult>(long_call([=] {
          return check_given(job, {seconds, memory_mb, accept_partial}, outside_of(allow_outside));
        }));
      },
      py::arg("job"), py::kw_only(), py::arg("accept_partial") = false,
      py::arg("seconds") = py::none(), py::arg("memory_mb") = py::none(),
      py::arg("allow_outside") = false,
      R"(Looks at a model and judges it.

Args:
    job: a Job, a job file, or a STEP file, which is judged by the sizes that it states itself.
    accept_partial: True takes what arrived of a file that declares more or is damaged; what is
        missing is undecided. A Job may ask for the same in its settings.
    seconds, memory_mb: as for look; judging may take a quarter more of both. What was not looked at
        or not judged within them is undecided.
    allow_outside: as for read_job, of a job file.
Returns: the same as the program's check verb.
Raises: FileAccessError, UnreadableError, IncompleteError for files; BadInputError for a job that
    breaks a rule or names what the model does not have.)");
}

void bind_judge_functions(py::module_& module) {
  module.def(
      "judge",
      [](const Job& job, const std::shared_ptr<Look>& look) {
        return std::make_shared<CheckResult>(long_call([=] { return judged(job, *look); }));
      },
      py::arg("job"), py::arg("look"), R"(Judges what was found on a model by a job.

Raises: BadInputError for a part or feature that the model does not have, with the nearest.)");
  module.def(
      "draft",
      [](const std::shared_ptr<Look>& look, const std::filesystem::path& model_path,
         const std::optional<std::string>& unit) {
        const LengthUnit in = unit ? parse_unit(*unit) : unit_of(look->model.file);
        return long_call([=] { return draft_job(*look, model_path.string(), in); });
      },
      py::arg("look"), py::arg("model_path"), py::arg("unit") = py::none(),
      R"(Text of a first job file, with every seat found, to be filled in.

Args:
    look: what was found.
    model_path: the STEP file as seen from where the job file will lie.
    unit: "mm", "in", or None for the unit the STEP file is written in.)");
}

}  // namespace

void bind_check(py::module_& module) {
  bind_finding(module);
  bind_result(module);
  bind_job_functions(module);
  bind_check_function(module);
  bind_judge_functions(module);
}

}  // namespace spotblue::python
