#include <pybind11/pybind11.h>

#include <memory>

#include "python/bind.hpp"
#include "python/values/choices.hpp"
#include "python/values/long_call.hpp"
#include "python/values/view.hpp"
#include "spotblue/group/group.hpp"

namespace spotblue::python {

void bind_group(py::module_& module) {
  choice<Certainty>(module);
  choice<JointKind>(module);
  choice<Pressing>(module);
  bind_views<SizeStates, Body, Joint, TurningBody, Bearing, ThrustFace, SeatStates, GroupStop,
             Group>(module);
  module.def(
      "make_group",
      [](const Job& job, const std::shared_ptr<Look>& look) {
        return long_call([=] { return make_group(job, *look); });
      },
      py::arg("job"), py::arg("look"),
      R"(Works out what the parts of a job do to each other: joints, bodies, what turns on what,
sizes in each state, and what stops what along each line.

Raises: BadInputError naming job file and line for names that mean nothing or too much, and for
    entries that contradict each other.)");
}

}  // namespace spotblue::python
