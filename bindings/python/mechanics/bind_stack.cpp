#include "python/values/numbers.hpp"
#include "spotblue/mechanics/stack.hpp"
#include "spotblue/mechanics/stack_draw.hpp"

namespace spotblue::python {
namespace {

using Loop = std::vector<StackDimension>;

void bind_stack_values(py::module_& module) {
  choice<StackSense>(module);
  choice<StackSpread>(module);
  bind_records<StackDimension, StackDraw, StackOutcome>(module);
}

}  // namespace

void bind_stack(py::module_& module) {
  bind_stack_values(module);
  module.def(
      "nominal_gap", [](const Loop& loop) { return nominal_gap(loop).in_mm(); }, py::arg("loop"),
      "The gap that the nominal lengths leave.\n\nReturns: mm, negative: they do not fit.");
  module.def(
      "worst_case_gap", [](const Loop& loop) { return worst_case_gap(loop); }, py::arg("loop"),
      "Every gap there can be, all dimensions at their worse ends at once, mm.");
  module.def(
      "root_sum_square_gap", [](const Loop& loop) { return root_sum_square_gap(loop); },
      py::arg("loop"),
      "Gap of the middles plus and minus the root of the summed squares of half tolerances, mm.");
  module.def(
      "warmed", [](const Loop& loop) { return warmed(loop); }, py::arg("loop"),
      "The loop at temperature, every length times 1 + expansion x temperature rise.");
  module.def(
      "widest_dimension", [](const Loop& loop) { return widest_dimension(loop); }, py::arg("loop"),
      "Index of the dimension with the widest limits.\n\nRaises: BadInputError for an empty loop.");
  module.def(
      "draw_gaps",
      [](const Loop& loop, const Limits& wanted, const StackDraw& draw) {
        const py::gil_scoped_release others_run;
        return draw_gaps(loop, wanted, draw);
      },
      py::arg("loop"), py::arg("wanted"), py::kw_only(), py::arg("draw"),
      R"(Draws whole loops by lot and takes the gap of each; other Python threads run meanwhile.

Args:
    loop: mm.
    wanted: limits of the gap, mm.
    draw: samples, seed, threads; one seed gives one answer on any number of threads.
Raises: BadInputError for an empty loop, no samples, and what require_stack refuses.)");
  module.def(
      "require_stack", [](const Loop& loop) { require_stack(loop); }, py::arg("loop"),
      "Refuses dimensions that break a rule.\n\nRaises: BadInputError naming the dimension.");
}

}  // namespace spotblue::python
