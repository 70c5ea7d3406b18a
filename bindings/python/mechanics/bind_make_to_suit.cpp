#include "python/values/numbers.hpp"
#include "spotblue/mechanics/make_to_suit.hpp"

namespace spotblue::python {
namespace {

void bind_suit_problem(py::module_& module) {
  bind_records<SuitKnown, SuitSize>(module);
  choice<SuitOf>(module);
  bind_records<SuitTerm, SuitDemand, SuitProblem>(module);
}

void bind_suit_plan(py::module_& module) {
  bind_records<SuitWindow, SuitConflict, SuitPlan>(module);
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
