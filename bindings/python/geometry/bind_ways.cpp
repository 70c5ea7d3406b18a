#include <cmath>
#include <string>

#include "python/bind.hpp"
#include "python/values/long_call.hpp"
#include "python/values/record.hpp"
#include "python/values/view.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/axial_stops.hpp"
#include "spotblue/geometry/foul.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/geometry/wall.hpp"
#include "spotblue/geometry/way_in.hpp"

namespace spotblue::python {
namespace {

using SharedModel = std::shared_ptr<Model>;
using SharedSeats = std::shared_ptr<Seats>;

void bind_wall(py::module_& module) {
  bind_views<WallStretch, Wall>(module);
  module.def("wall_of_hub", &wall_of_hub, py::arg("model"), py::arg("seat"),
             "The wall round a radial seat's hole.");
  module.def("wall_of_shaft", &wall_of_shaft, py::arg("model"), py::arg("seat"),
             "The wall inside a radial seat's shaft.");
}

void bind_way_values(py::module_& module) {
  choice<WayHow>(module);
  bind_records<GivenOverlap, WayInOptions>(module);
  bind_views<WayStep, Blockage, NotTold, WayIn>(module);
}

void require_occurrence(const Model& model, OccurrenceId occurrence) {
  if (occurrence >= model.occurrences.size()) {
    throw Error(ErrorCode::bad_input, {model.file.name, "occurrence"},
                "the model has no occurrence " + std::to_string(occurrence),
                "use a number under " + std::to_string(model.occurrences.size()));
  }
}

double station_of_plane(const Model& model, const FeatureRef& face, const Line& line) {
  require_occurrence(model, face.occurrence);
  const Product& product = model.products[model.occurrences[face.occurrence].product];
  if (face.kind != FeatureKind::plane || face.index >= product.planes.size()) {
    throw Error(ErrorCode::bad_input, {model.file.name, product.id},
                "the FeatureRef is no plane face", "use one of faces_square_to or an axial seat");
  }
  const double station_mm = station_of_face(model, face, line);
  if (!std::isfinite(station_mm)) {
    throw Error(ErrorCode::bad_input, {model.file.name, feature_id(model, face)},
                "the face never crosses the line", "give a face that is not parallel to it");
  }
  return station_mm;
}

void bind_faces_on_line(py::module_& module) {
  module.def(
      "station_of_face",
      [](const SharedModel& model, const FeatureRef& face, const Line& line) {
        return station_of_plane(*model, face, line);
      },
      py::arg("model"), py::arg("face"), py::arg("line"),
      R"(Where a plane face crosses a line of the assembly.

Args:
    face: a plane of one occurrence.
    line: assembly's frame, its direction 1 long.
Returns: mm from line.at along the line.
Raises: BadInputError when the model has no such face, or the face lies along the line.)");
  module.def(
      "faces_square_to",
      [](const SharedModel& model, OccurrenceId occurrence, const Line& line,
         const SeatSettings& settings) {
        require_occurrence(*model, occurrence);
        return faces_square_to(*model, occurrence, line, settings);
      },
      py::arg("model"), py::arg("occurrence"), py::arg("line"),
      py::arg("settings") = SeatSettings{},
      R"(Plane faces of an occurrence square to a line, in the order of its product's planes.

Args:
    occurrence: its number, from 0.
    line: assembly's frame, its direction 1 long.
    settings: facing_tilt_deg says how square.
Raises: BadInputError when the model has no such occurrence.)");
}

void bind_stops(py::module_& module) {
  bind_view<AxialStop>(module);
  module.def(
      "find_axial_stops",
      [](const SharedModel& model, const SharedSeats& seats, const std::vector<std::size_t>& groups,
         const SeatSettings& settings) {
        if (groups.size() != model->occurrences.size()) {
          throw Error(ErrorCode::bad_input, {"", "group_of"}, "needs a number for each occurrence",
                      "give len(model.occurrences) numbers");
        }
        return long_call([=] { return find_axial_stops(*model, *seats, groups, settings); });
      },
      py::arg("model"), py::arg("seats"), py::arg("group_of"), py::arg("settings") = SeatSettings{},
      "The nearest stop of every two parts of different groups, each way, by centre line.");
}

void bind_searches(py::module_& module) {
  module.def(
      "find_seats",
      [](const SharedModel& model, const SeatSettings& settings) {
        return std::make_shared<Seats>(long_call([=] { return find_seats(*model, settings); }));
      },
      py::arg("model"), py::arg("settings") = SeatSettings{}, "Every seat of the model.");
  module.def(
      "find_fouls",
      [](const SharedModel& model, const SharedSeats& seats, const SeatSettings& settings,
         const ReadLimits& limits) {
        return std::make_shared<FoulReport>(
            long_call([=] { return find_fouls(*model, *seats, settings, limits); }));
      },
      py::arg("model"), py::arg("seats"), py::arg("settings") = SeatSettings{},
      py::arg("limits") = ReadLimits{}, "Every foul of the model.");
  module.def(
      "ways_in",
      [](const SharedModel& model, const SharedSeats& seats, const WayInOptions& options) {
        return long_call([=] { return ways_in(*model, *seats, options); });
      },
      py::arg("model"), py::arg("seats"), py::arg("options") = WayInOptions{},
      "Whether parts can be brought to their places, and in which order.");
}

}  // namespace

void bind_ways(py::module_& module) {
  bind_wall(module);
  bind_way_values(module);
  bind_stops(module);
  bind_faces_on_line(module);
  bind_searches(module);
}

}  // namespace spotblue::python
