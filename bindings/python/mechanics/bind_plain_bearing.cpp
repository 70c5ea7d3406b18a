#include "python/values/numbers.hpp"
#include "spotblue/mechanics/plain_bearing.hpp"
#include "spotblue/mechanics/thrust_face.hpp"

namespace spotblue::python {
namespace {

void bind_bearing_values(py::module_& module) {
  bind_records<BearingSizes, BearingRatios, RunningLoad>(module);
  choice<RunningDuty>(module);
  choice<LimitCounts>(module);
  bind_records<CountingLimits, LimitShares>(module);
}

void bind_bearing_functions(py::module_& module) {
  module.def(
      "projected_pressure_mpa",
      [](double load_n, double diameter_mm, double length_mm) {
        return projected_pressure_mpa(load_n, Diameter(Length::mm(diameter_mm)),
                                      Length::mm(length_mm));
      },
      py::arg("load_n"), py::arg("diameter_mm"), py::kw_only(), py::arg("length_mm"),
      R"(Load over diameter x length.

Args:
    load_n: N, 0 or more.
    diameter_mm, length_mm: mm, > 0.
Returns: MPa.
Raises: BadInputError naming the argument out of range.)");
  module.def(
      "surface_speed_m_s",
      [](double diameter_mm, double rpm) {
        return surface_speed_m_s(Diameter(Length::mm(diameter_mm)), rpm);
      },
      py::arg("diameter_mm"), py::arg("rpm"), R"(Speed of a shaft's surface, pi x diameter x rpm.

Args:
    diameter_mm: mm, > 0.
    rpm: turns per minute, 0 or more.
Returns: m/s.
Raises: BadInputError naming the argument out of range.)");
}

void bind_bearing_load(py::module_& module) {
  module.def("bearing_ratios", &bearing_ratios, py::arg("sizes"),
             "Clearance, length and wall per unit of diameter.\n\nRaises: BadInputError when a "
             "size breaks its rule.");
  module.def(
      "bearing_load",
      [](double diameter_mm, double length_mm, double rpm, std::optional<double> load_n,
         double covered_deg) {
        return bearing_load(Diameter(Length::mm(diameter_mm)), Length::mm(length_mm), rpm, load_n,
                            covered_deg);
      },
      py::arg("diameter_mm"), py::arg("length_mm"), py::kw_only(), py::arg("rpm"),
      py::arg("load_n") = py::none(), py::arg("covered_deg") = 360.0,
      R"(Speed, pressure and their product of a running bearing.

Args:
    diameter_mm, length_mm: mm, > 0.
    rpm: turns per minute, 0 or more.
    load_n: N, 0 or more; None when not known.
    covered_deg: how far round the bearing goes, as projected_width.
Raises: BadInputError naming the argument out of range.)");
  module.def(
      "projected_width",
      [](double diameter_mm, double covered_deg) {
        return projected_width(Diameter(Length::mm(diameter_mm)), covered_deg).in_mm();
      },
      py::arg("diameter_mm"), py::arg("covered_deg"),
      R"(Width of the shadow of a bearing that covers the shaft only part of the way round.

Args:
    diameter_mm: mm, > 0.
    covered_deg: > 0 and no more than 360, the load taken towards the middle of it.
Returns: mm; diameter x sin(covered/2) under half the way, else the diameter.
Raises: BadInputError naming the argument out of range.)");
  module.def(
      "edge_load_n",
      [](double load_n, double moment_nm, double length_mm) {
        return edge_load_n(load_n, moment_nm, Length::mm(length_mm));
      },
      py::arg("load_n"), py::arg("moment_nm"), py::kw_only(), py::arg("length_mm"),
      R"(The even load that presses a bearing as hard as load and moment press its harder end.

Args:
    load_n: N, 0 or more.
    moment_nm: N m about the middle of the bearing, of either sign.
    length_mm: mm, > 0.
Returns: N, load + 6 moment/length.
Raises: BadInputError naming the argument out of range.)");
  module.def("counting_limits", &counting_limits, py::arg("duty"),
             "Which of a material's limits count for a duty; common practice, no source.");
  module.def("limit_shares", &limit_shares, py::arg("load"), py::arg("limits"), py::kw_only(),
             py::arg("duty"), R"(Found over greatest allowed, for the limits that count.

Args:
    load: m/s, MPa.
    limits: of the weaker material.
    duty: which limits count.)");
}

void bind_thrust_face(py::module_& module) {
  bind_record<ThrustRing>(module);
  module.def("full_area_mm2", &full_area_mm2, py::arg("ring"),
             "Area of the ring without grooves.\n\nReturns: mm2.\nRaises: BadInputError for an "
             "impossible ring.");
  module.def(
      "mean_radius", [](const ThrustRing& ring) { return mean_radius(ring).in_mm(); },
      py::arg("ring"),
      "Mean radius by area: where a new, flat face rubs on the average.\n\nReturns: mm.\nRaises: "
      "BadInputError for an impossible ring.");
  module.def(
      "worn_mean_radius", [](const ThrustRing& ring) { return worn_mean_radius(ring).in_mm(); },
      py::arg("ring"),
      "Mean radius once the face has worn in.\n\nReturns: mm.\nRaises: BadInputError for an "
      "impossible ring.");
  module.def(
      "radial_width", [](const ThrustRing& ring) { return radial_width(ring).in_mm(); },
      py::arg("ring"), "Half of outer less inner diameter.\n\nReturns: mm.");
  module.def(
      "thrust_load",
      [](const ThrustRing& ring, double net_area_mm2, double rpm, std::optional<double> thrust_n) {
        return thrust_load(ring, net_area_mm2, rpm, thrust_n);
      },
      py::arg("ring"), py::arg("net_area_mm2"), py::kw_only(), py::arg("rpm"),
      py::arg("thrust_n") = py::none(), R"(Pressure on the net area, speed at the mean radius.

Args:
    ring: mm.
    net_area_mm2: what is left of the ring, mm2, > 0 and no more than the full area.
    rpm: turns per minute, 0 or more.
    thrust_n: N, 0 or more; None when not known.
Raises: BadInputError when a value breaks its rule.)");
  module.def(
      "least_band", [](const ThrustRing& ring) { return least_band(ring).in_mm(); },
      py::arg("ring"), "The narrowest band that is called a thrust face.\n\nReturns: mm.");
}

}  // namespace

void bind_plain_bearing(py::module_& module) {
  bind_bearing_values(module);
  bind_bearing_functions(module);
  bind_bearing_load(module);
  bind_thrust_face(module);
}

}  // namespace spotblue::python
