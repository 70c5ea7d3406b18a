#include <variant>

#include "python/bind.hpp"
#include "python/values/directions.hpp"
#include "python/values/record.hpp"
#include "python/values/view.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/geometry/region.hpp"
#include "spotblue/geometry/region_inner.hpp"
#include "spotblue/geometry/region_overlay.hpp"
#include "spotblue/geometry/vector.hpp"

namespace spotblue::python {
namespace {

void bind_point(py::module_& module) {
  bind_record<Point>(module)
      .def(
          "__add__", [](const Point& a, const Point& b) { return a + b; }, py::arg("other"),
          py::is_operator())
      .def(
          "__sub__", [](const Point& a, const Point& b) { return a - b; }, py::arg("other"),
          py::is_operator())
      .def("__neg__", [](const Point& a) { return -a; })
      .def(
          "__mul__", [](const Point& a, double k) { return k * a; }, py::arg("factor"),
          py::is_operator())
      .def(
          "__rmul__", [](const Point& a, double k) { return k * a; }, py::arg("factor"),
          py::is_operator())
      .def("dot", &dot, py::arg("other"), "The scalar product.")
      .def("cross", &cross, py::arg("other"), "The vector product.")
      .def("norm", &norm, "Distance from the origin; mm.")
      .def(
          "unit", [](const Point& self) { return Point(direction_of(self)); },
          "The same direction, 1 long.\n\nRaises: BadInputError for zero.")
      .def(
          "any_square", [](const Point& along) { return Point(any_square(direction_of(along))); },
          "A direction square to this one, always the same.")
      .def(
          "angle_deg",
          [](const Point& a, const Point& b) { return degrees(angle_between_lines(a, b)); },
          py::arg("other"), "Angle between two directions whichever way each points, 0 to 90.");
}

void bind_line(py::module_& module) {
  bind_record<Line>(module)
      .def("station_mm", &station, py::arg("point"),
           "Where the foot of a point lies, from line.at along the line.")
      .def("at_station", &at_station, py::arg("station_mm"), "The point at a station.")
      .def("distance_mm", &distance, py::arg("point"), "Distance of a point from the line.");
}

void bind_box(py::module_& module) {
  bind_record<Box>(module)
      .def(
          "is_empty", [](const Box& self) { return is_empty(self); }, "Whether it holds no point.")
      .def(
          "extended",
          [](Box self, const std::variant<Point, Box>& other) {
            std::visit([&self](const auto& more) { extend(self, more); }, other);
            return self;
          },
          py::arg("other"), "A box that also holds a point or another box.")
      .def("grown", &grown, py::arg("by_mm"), "A box greater by this on every side.")
      .def("overlaps", &overlap, py::arg("other"), "Whether the two share a point.")
      .def("diagonal_mm", &diagonal, "From corner to corner; 0 when empty.");
}

void bind_frame(py::module_& module) {
  bind_record<Frame>(module)
      .def("place_point", &place_point, py::arg("point"), "Where a point goes.")
      .def(
          "place_direction",
          [](const Frame& self, const Point& direction) {
            return Point(place_direction(self, direction_of(direction)));
          },
          py::arg("direction"),
          "Where a direction points; 1 long.\n\nRaises: BadInputError for zero.")
      .def("place_line", &place_line, py::arg("line"), "Where a line goes.")
      .def("place_box", &place_box, py::arg("box"), "A box round the placed box.")
      .def("compose", &compose, py::arg("inner"), "First the inner placement, then this one.")
      .def("inverse", &inverse, "The placement that undoes this one.")
      .def("is_mirror", &is_mirror, "Whether it turns a right hand into a left one.");
}

void bind_plane_values(py::module_& module) {
  bind_records<Point2, Edge2>(module);
  bind_record<Region>(module).def(
      "is_empty", [](const Region& self) { return is_empty(self); }, "Whether it has no edge.");
  bind_record<PlaneMap>(module);
  bind_views<Reach, Extent2>(module);
}

}  // namespace

void bind_region(py::module_& module) {
  bind_point(module);
  bind_line(module);
  bind_box(module);
  bind_frame(module);
  bind_plane_values(module);
  module.def("disc", &disc, py::arg("centre"), py::arg("radius_mm"), "The full disc.");
  module.def("area_mm2", &area, py::arg("region"), "Area of a region, exact for lines and arcs.");
  module.def("extent", &extent, py::arg("region"), "The box around a region.");
  module.def("contains", &contains, py::arg("region"), py::arg("point"),
             "Whether the point lies inside.");
  module.def("reach", &reach, py::arg("region"), py::arg("point"),
             "Least and greatest distance of the region's points from a point.");
  module.def("inner_points", &inner_points, py::arg("region"), py::arg("count"),
             "At most so many points well inside the region and spread over it.");
  module.def("intersect", &intersect, py::arg("a"), py::arg("b"), "What both regions cover.");
  module.def("subtract", &subtract, py::arg("a"), py::arg("b"), "What a covers and b does not.");
  module.def("mapped", &mapped, py::arg("region"), py::arg("map"),
             "The region in another plane's coordinates.");
}

}  // namespace spotblue::python
