#include "python/values/numbers.hpp"
#include "spotblue/mechanics/stack.hpp"

namespace spotblue::python {
namespace {

using Loop = std::vector<StackDimension>;

void bind_stack_values(py::module_& module) {
  choice<StackSense>(module, "StackSense", "What a longer dimension does to the gap.",
                     {"opens", "closes"});
  choice<StackSpread>(module, "StackSpread", "How a dimension is spread over its limits.",
                      {"uniform", "normal"});
  Record<StackDimension>(module, "StackDimension", "One length of the loop, mm.")
      .field("name", &StackDimension::name, "As errors show it.")
      .length("nominal_mm", &StackDimension::nominal, "As modelled or measured, mm.")
      .field("limits", &StackDimension::limits, "mm, lower no more than upper.")
      .field("sense", &StackDimension::sense, "Opens or closes the gap.")
      .field("spread", &StackDimension::spread, "Uniform, or normal with limits at k = 2.")
      .field("expansion_per_k", &StackDimension::expansion_per_k, "Linear, 1/K, 0 or more.")
      .field("warmer_by_k", &StackDimension::warmer_by_k, "K, than when the limits hold.")
      .done();
  Record<StackDraw>(module, "StackDraw", "How many loops are drawn, and by which lot.")
      .field("samples", &StackDraw::samples, "1 or more.")
      .field("seed", &StackDraw::seed, "One seed gives one answer.")
      .field("threads", &StackDraw::threads, "0: as many as the machine has.")
      .done();
  Record<StackOutcome>(module, "StackOutcome", "The gaps of many loops drawn by lot, mm.")
      .length("mean_mm", &StackOutcome::mean, "mm.")
      .length("deviation_mm", &StackOutcome::deviation, "Standard deviation, mm.")
      .length("least_mm", &StackOutcome::least, "Drawn, mm.")
      .length("greatest_mm", &StackOutcome::greatest, "Drawn, mm.")
      .length("low_mm", &StackOutcome::low, "0.135 % are not over it, mm.")
      .length("middle_mm", &StackOutcome::middle, "50 % are not over it, mm.")
      .length("high_mm", &StackOutcome::high, "99.865 % are not over it, mm.")
      .field("share_below", &StackOutcome::share_below, "Under the wanted lower limit, 0 to 1.")
      .field("share_above", &StackOutcome::share_above, "Over the wanted upper limit, 0 to 1.")
      .done();
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
