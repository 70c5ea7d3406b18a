#include "bind.hpp"
#include "record_fields.hpp"
#include "spotblue/geometry/region.hpp"
#include "spotblue/geometry/vector.hpp"
#include "view.hpp"

namespace spotblue::python {
namespace {

void bind_vectors(py::module_& module) {
  Record<Point>(module, "Point", "A position or direction; mm, or 1 long where a direction.")
      .field("x", &Point::x, "mm")
      .field("y", &Point::y, "mm")
      .field("z", &Point::z, "mm")
      .done();
  Record<Line>(module, "Line", "An unbounded straight line.")
      .field("at", &Line::at, "a point on it, mm")
      .field("along", &Line::along, "its direction, 1 long")
      .done();
  Record<Frame>(module, "Frame", "A placement: three rows of four numbers, the last of each in mm.")
      .field("rows", &Frame::rows, "rotation or mirror, then shift in mm")
      .done();
  Record<Box>(module, "Box", "A box along the axes; empty when low > high.")
      .field("low", &Box::low, "mm")
      .field("high", &Box::high, "mm")
      .done();
}

void bind_plane_values(py::module_& module) {
  Record<Point2>(module, "Point2", "A point in a plane's own coordinates.")
      .field("u", &Point2::u, "mm")
      .field("v", &Point2::v, "mm")
      .done();
  Record<Edge2> edge(module, "Edge2", "A straight or circular edge; the region lies to its left.");
  edge.field("start", &Edge2::from, "where it begins").field("end", &Edge2::to, "where it ends");
  degrees_field(edge, "sweep_deg", &Edge2::sweep,
                "0: straight; else signed, positive counter-clockwise, 360 for a circle");
  edge.field("centre", &Edge2::centre, "of an arc")
      .field("radius_mm", &Edge2::radius, "of an arc")
      .done();
  Record<Region>(module, "Region", "A bounded plane region: closed loops of directed edges.")
      .field("edges", &Region::edges, "in any order, holes included")
      .field("exact", &Region::exact, "False where other curves stand here as short chords")
      .done();
  Record<PlaneMap>(module, "PlaneMap", "Takes one plane's coordinates to another's.")
      .field("origin", &PlaneMap::origin, "mm")
      .field("uu", &PlaneMap::uu, "u' of u")
      .field("uv", &PlaneMap::uv, "u' of v")
      .field("vu", &PlaneMap::vu, "v' of u")
      .field("vv", &PlaneMap::vv, "v' of v")
      .done();
  View<Reach>(module, "Reach", "Least and greatest distance of a region's points from a point.")
      .value("least_mm", &Reach::least, "mm")
      .value("greatest_mm", &Reach::greatest, "mm")
      .done();
  View<Extent2>(module, "Extent2", "The box around a region.")
      .value("low", &Extent2::low, "mm")
      .value("high", &Extent2::high, "mm")
      .done();
}

}  // namespace

void bind_region(py::module_& module) {
  bind_vectors(module);
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
