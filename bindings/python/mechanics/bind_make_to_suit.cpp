#include "python/values/numbers.hpp"
#include "spotblue/mechanics/make_to_suit.hpp"

namespace spotblue::python {
namespace {

void bind_suit_problem(py::module_& module) {
  Record<SuitKnown>(module, "SuitKnown", "A size that exists: all values it may have, mm.")
      .field("name", &SuitKnown::name, "As conflicts show it.")
      .field("limits", &SuitKnown::limits, "mm.")
      .done();
  Record<SuitSize>(module, "SuitSize", "A size still to be made, mm.")
      .field("name", &SuitSize::name, "As conflicts show it.")
      .length("drawn_mm", &SuitSize::drawn, "As drawn, mm; anchors what no demand holds.")
      .field("own", &SuitSize::own, "Limits of its own, mm, or None.")
      .field("own_by", &SuitSize::own_by, "Who asks for them.")
      .length("uncertainty_mm", &SuitSize::uncertainty, "Of its measurement, k = 2, mm.")
      .done();
  choice<SuitOf>(module, "SuitOf", "Whether a term speaks of a size to make or a known one.",
                 {"to make", "known"});
  Record<SuitTerm>(module, "SuitTerm", "One size of a demand, times a factor.")
      .field("of", &SuitTerm::of, "To make or known.")
      .field("index", &SuitTerm::index, "Into the problem's sizes or known.")
      .field("factor", &SuitTerm::factor, "Not 0.")
      .done();
  Record<SuitDemand>(module, "SuitDemand", "A sum of sizes that must lie between two limits.")
      .field("name", &SuitDemand::name, "As conflicts show it.")
      .field("terms", &SuitDemand::terms, "The sizes and factors.")
      .length("constant_mm", &SuitDemand::constant, "Added to the sum, mm.")
      .field("wanted", &SuitDemand::wanted, "mm.")
      .done();
  Record<SuitProblem>(module, "SuitProblem", "Sizes to make, sizes that exist, and demands.")
      .field("sizes", &SuitProblem::sizes, "Still to be made.")
      .field("known", &SuitProblem::known, "That exist.")
      .field("demands", &SuitProblem::demands, "All must hold.")
      .done();
}

void bind_suit_plan(py::module_& module) {
  Record<SuitWindow>(module, "SuitWindow", "What one size must hold, mm.")
      .field("size", &SuitWindow::size, "Into the problem's sizes.")
      .field("turn", &SuitWindow::turn, "1 for what is best made first.")
      .field("of", &SuitWindow::of, "Sizes that share demands with it, itself included.")
      .field("hold", &SuitWindow::hold, "Made within these every demand holds, mm.")
      .length("target_mm", &SuitWindow::target, "Middle of hold, mm.")
      .field("accept", &SuitWindow::accept, "Readings that prove it, mm; or None.")
      .field("share_left", &SuitWindow::share_left, "Of the window after that, 0 to 1.")
      .field("first", &SuitWindow::first, "Made first it may be here, mm; or None.")
      .field("last", &SuitWindow::last, "Made last, the others measured, mm.")
      .done();
  Record<SuitConflict>(module, "SuitConflict", "Demands that cannot hold together.")
      .field("size", &SuitConflict::size, "Where they meet, into the problem's sizes.")
      .field("first", &SuitConflict::first, "Asks for more than second allows.")
      .field("second", &SuitConflict::second, "Empty when first alone asks too much.")
      .field("through", &SuitConflict::through, "Others that carry the two together.")
      .length("short_by_mm", &SuitConflict::short_by, "mm, > 0.")
      .done();
  Record<SuitPlan>(module, "SuitPlan", "Windows of all sizes to make, and conflicts.")
      .field("windows", &SuitPlan::windows, "By size; None where none could be proved.")
      .field("conflicts", &SuitPlan::conflicts, "Empty when all can hold.")
      .done();
}

}  // namespace

void bind_make_to_suit(py::module_& module) {
  bind_suit_problem(module);
  bind_suit_plan(module);
  module.def("make_to_suit", &make_to_suit, py::arg("problem"),
             R"(Finds the limits that sizes still to be made must hold so that every demand holds.

Args:
    problem: mm.
Raises: BadInputError naming the demand or size when limits are reversed, a factor is zero or not
    finite, an index is out of range or an uncertainty is negative.)");
}

}  // namespace spotblue::python
