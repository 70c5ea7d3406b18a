#include <pybind11/pybind11.h>
#include <pybind11/stl/filesystem.h>

#include <variant>

#include "python/bind.hpp"
#include "python/values/check_value.hpp"
#include "python/values/long_call.hpp"
#include "python/values/view.hpp"
#include "spotblue/check/compare.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/report/compare_text.hpp"

namespace spotblue::python {
namespace {

/// A comparison and the plans it was made of, which its text needs.
struct ComparedPlans {
  std::vector<CheckResult> plans;
  Comparison comparison;
};

using Plan = std::variant<SharedCheck, std::filesystem::path>;

CheckResult checked(const Plan& plan, const LookBounds& bounds, Outside outside) {
  const auto* const done = std::get_if<SharedCheck>(&plan);
  return done != nullptr
             ? **done
             : check({.job = read_job(std::get<std::filesystem::path>(plan), outside)}, bounds);
}

ComparedPlans compare_all(const std::vector<Plan>& plans, const LookBounds& bounds,
                          Outside outside) {
  ComparedPlans result;
  for (const Plan& plan : plans) {
    result.plans.push_back(checked(plan, bounds, outside));
  }
  result.comparison = compare_plans(result.plans);
  return result;
}

std::string text_of_comparison(const ComparedPlans& self, const std::optional<std::string>& unit,
                               std::size_t width) {
  const LengthUnit shown_in = unit ? parse_unit(*unit) : self.plans.front().job.unit;
  return compare_text(self.comparison, self.plans, {shown_in, Colour::never, width});
}

std::string comparison_shown(const ComparedPlans& self) {
  const auto& best = self.comparison.best;
  return "<Comparison of " + std::to_string(self.plans.size()) +
         " plans: " + (best ? self.plans[*best].job.file + " stands" : std::string("none stands")) +
         ">";
}

void bind_comparison_parts(py::module_& module) {
  bind_views<ComparedRow, MarginShare, PlanCost>(module);
}

void bind_comparison(py::module_& module) {
  using Shared = std::shared_ptr<ComparedPlans>;
  View<ComparedPlans, Shared> view(module, "Comparison", "Plans for one repair side by side.");
  view.computed(
          "rows", [](const ComparedPlans& self) -> auto& { return self.comparison.rows; },
          "in the order of the first plan that has them")
      .computed(
          "costs", [](const ComparedPlans& self) -> auto& { return self.comparison.plans; },
          "what each plan takes")
      .computed(
          "best", [](const ComparedPlans& self) { return self.comparison.best; },
          "number of the plan that stands, from 0, or None; never one that is not whole")
      .computed(
          "plans",
          [](const Shared& self) {
            std::vector<SharedCheck> plans;
            for (CheckResult& plan : self->plans) {
              plans.emplace_back(self, &plan);
            }
            return plans;
          },
          "the judged jobs");
  view.shown_by(&comparison_shown)
      .done()
      .def("to_text", &text_of_comparison, py::arg("unit") = py::none(), py::kw_only(),
           py::arg("width") = 0, py::call_guard<py::gil_scoped_release>(),
           "The report of the compare verb; unit \"mm\", \"in\" or the first job's own.")
      .def(
          "to_json",
          [](const py::object& self) -> py::str {
            return py::module_::import("spotblue.values").attr("to_json")(self);
          },
          "Rows, costs and the best plan as JSON text.")
      .def("_repr_html_", [](const py::object& self) -> py::str {
        return py::module_::import("spotblue.shown").attr("compare_html")(self);
      });
}

void bind_compare_function(py::module_& module) {
  module.def(
      "compare",
      [](const std::vector<Plan>& plans, std::optional<double> seconds,
         std::optional<double> memory_mb, bool allow_outside) {
        return std::make_shared<ComparedPlans>(long_call([=] {
          return compare_all(plans, {seconds, memory_mb}, outside_of(allow_outside));
        }));
      },
      py::arg("plans"), py::kw_only(), py::arg("seconds") = py::none(),
      py::arg("memory_mb") = py::none(), py::arg("allow_outside") = false,
      R"(Puts plans for one repair side by side.

Args:
    plans: two or more job files or CheckResults.
    seconds, memory_mb: as for check, for each job file.
    allow_outside: as for read_job, of the job files.
Raises: BadInputError for fewer than two; as check() for files.)");
}

}  // namespace

void bind_compare(py::module_& module) {
  bind_comparison_parts(module);
  bind_comparison(module);
  bind_compare_function(module);
}

}  // namespace spotblue::python
