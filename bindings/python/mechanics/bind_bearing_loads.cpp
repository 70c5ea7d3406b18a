#include "python/values/numbers.hpp"
#include "spotblue/mechanics/bearing_loads.hpp"

namespace spotblue::python {

void bind_bearing_loads(py::module_& module) {
  choice<LoadSharing>(module);
  bind_records<StationForce, BearingLoads>(module);
  module.def(
      "bearing_loads",
      [](const std::vector<StationForce>& forces, const std::vector<double>& bearings_mm,
         LoadSharing sharing) {
        std::vector<Length> places;
        for (const double bearing : bearings_mm) {
          places.push_back(Length::mm(bearing));
        }
        return bearing_loads(forces, places, sharing);
      },
      py::arg("forces"), py::arg("bearings_mm"), py::kw_only(),
      py::arg("sharing") = LoadSharing::by_statics,
      R"(What the bearings of a part carry, by statics from forces across its axis.

Args:
    forces: StationForce, in one plane: a place along the axis in mm and N.
    bearings_mm: where the middle of each is along the axis; one or more, two by statics apart.
    sharing: "by statics", or "evenly" where that is declared: of more than two, statics does not
        say.
Returns: BearingLoads: N by bearing, and the moment in N m that a lone bearing takes too.
Raises: BadInputError naming the argument that is not finite, no bearing, or two at one place.)");
}

}  // namespace spotblue::python
