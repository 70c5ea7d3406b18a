#include "spotblue/mechanics/thrust_face.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <numbers>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

void require_face(const ThrustRing& ring) {
  require_value(ring, "ring");
  if (!(ring.outer > ring.inner)) {
    throw Error(ErrorCode::bad_input, {"", "ring.outer_mm"},
                fmt::format("need more than the inner {} mm, got {} mm", ring.inner.in_mm(),
                            ring.outer.in_mm()),
                "swap or correct the two diameters");
  }
}

}  // namespace

double full_area_mm2(const ThrustRing& ring) {
  require_face(ring);
  const double inner = ring.inner.in_mm();
  const double outer = ring.outer.in_mm();
  return 0.25 * std::numbers::pi * (outer - inner) * (outer + inner);
}

Radius mean_radius(const ThrustRing& ring) {
  require_face(ring);
  const double inner = 0.5 * ring.inner.in_mm();
  const double outer = 0.5 * ring.outer.in_mm();
  // The common factor outer - inner is left out of both.
  return Radius(
      Length::mm(2.0 / 3.0 * (outer * outer + outer * inner + inner * inner) / (outer + inner)));
}

Radius worn_mean_radius(const ThrustRing& ring) {
  require_face(ring);
  return Radius(0.25 * (ring.outer.length() + ring.inner.length()));
}

Length radial_width(const ThrustRing& ring) {
  require_face(ring);
  return 0.5 * (ring.outer.length() - ring.inner.length());
}

RunningLoad thrust_load(const ThrustRing& ring, double net_area_mm2, double rpm,
                        std::optional<double> thrust_n) {
  require_positive(net_area_mm2, "net_area_mm2", "mm2");
  const double full = full_area_mm2(ring);
  if (net_area_mm2 > full * (1.0 + 1e-6)) {
    throw Error(
        ErrorCode::bad_input, {"", "net_area_mm2"},
        fmt::format("need no more than the ring's {:.6g} mm2, got {:.6g}", full, net_area_mm2),
        "check the ring's diameters");
  }
  RunningLoad load;
  load.speed_m_s = surface_speed_m_s(diameter_of(mean_radius(ring)), rpm);
  if (thrust_n) {
    require_not_negative(*thrust_n, "thrust_n", "N");
    load.pressure_mpa = *thrust_n / net_area_mm2;
    load.pressure_speed_mpa_m_s = *load.pressure_mpa * load.speed_m_s;
  }
  return load;
}

Length least_band(const ThrustRing& ring) {
  require_face(ring);
  return std::max(kLeastBand, 0.05 * ring.outer.length());
}

}  // namespace spotblue
