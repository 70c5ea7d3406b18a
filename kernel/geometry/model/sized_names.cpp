#include "geometry/model/sized_names.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <tuple>

#include "geometry/model/plane_map.hpp"
#include "geometry/model/tolerances.hpp"
#include "spotblue/base/unit.hpp"

namespace spotblue {
namespace {

std::string number(double value_mm, int decimals) {
  const double step = std::pow(10.0, decimals);
  return format_size(Length::mm(std::round(value_mm * step) / step), LengthUnit::mm);
}

// Lowest station of the part along a direction.
double lowest(const Product& product, Direction d) {
  double low = std::numeric_limits<double>::infinity();
  const auto rim = [&](const Line& axis, double radius, double station) {
    const double square = 1.0 - dot(axis.along, d) * dot(axis.along, d);
    low = std::min(low, dot(at_station(axis, station), d) -
                            radius * std::sqrt(square < kRounding ? 0.0 : square));
  };
  for (const Cylinder& c : product.cylinders) {
    if (c.side == Side::external) {
      rim(c.axis, 0.5 * c.diameter, c.intervals.front().low);
      rim(c.axis, 0.5 * c.diameter, c.intervals.back().high);
    }
  }
  for (const Plane& p : product.planes) {
    for (const Edge2& e : p.outline.edges) {
      low = std::min(low, dot(on_plane(p, e.from), d));
    }
  }
  for (const OtherFace& o : product.others) {
    if (o.revolved) {
      rim(o.axis, o.outer, o.from);
      rim(o.axis, o.outer, o.to);
    }
  }
  if (std::isfinite(low)) {
    return low;
  }
  // Nothing but free-form faces: their boxes have to do.
  for (const OtherFace& o : product.others) {
    low = std::min({low, dot(o.box.low, d), dot(o.box.high, d)});
  }
  return std::isfinite(low) ? low : 0.0;
}

struct Named {
  std::string* name;
  Point middle;
  Direction along;
};

std::string face_name(const Plane& plane) {
  double circle = 0.0;
  const Extent2 size = extent(plane.outline);
  const double width = size.high.u - size.low.u;
  const double height = size.high.v - size.low.v;
  for (const Edge2& e : plane.outline.edges) {
    if (e.sweep > kTurnSlack) {
      circle = std::max(circle, 2.0 * e.radius);
    }
  }
  // Its outer loop is a circle when the outline is just as wide and high as that circle.
  if (circle > 0.0 && std::abs(width - circle) < kOnePlace &&
      std::abs(height - circle) < kOnePlace) {
    return "face " + number(circle, 4);
  }
  return fmt::format("face {}x{}", number(std::max(width, height), 2),
                     number(std::min(width, height), 2));
}

std::string cone_name(const Cone& cone) {
  const double slope = std::tan(cone.half_angle);
  const double small = 2.0 * (cone.radius + slope * cone.intervals.front().low);
  const double large = 2.0 * (cone.radius + slope * cone.intervals.back().high);
  return fmt::format("{} {}/{}", cone.side == Side::internal ? "taper bore" : "taper",
                     number(small, 3), number(large, 3));
}

std::vector<Named> plain_names(Product& product) {
  std::vector<Named> all;
  for (Cylinder& c : product.cylinders) {
    c.sized_name = (c.side == Side::internal ? "bore " : "outside ") + number(c.diameter, 4);
    all.push_back({&c.sized_name, c.axis.at, forward(c.axis.along)});
  }
  for (Cone& c : product.cones) {
    c.sized_name = cone_name(c);
    const double middle = 0.5 * (c.intervals.front().low + c.intervals.back().high);
    all.push_back({&c.sized_name, at_station(c.axis, middle), forward(c.axis.along)});
  }
  for (Plane& p : product.planes) {
    p.sized_name = face_name(p);
    all.push_back({&p.sized_name, face_centre(p), forward(p.normal)});
  }
  for (Width& w : product.widths) {
    w.sized_name = (w.side == Side::internal ? "slot " : "width ") + number(w.width, 4);
    const Plane& a = product.planes[w.first];
    const Plane& b = product.planes[w.second];
    const Point on_a = face_centre(a);
    all.push_back(
        {&w.sized_name, on_a + 0.5 * dot(b.at - a.at, a.normal) * a.normal, forward(a.normal)});
  }
  return all;
}

template <typename Rename>
void rename_alike(std::vector<Named>& all, const Rename& rename) {
  std::map<std::string, std::vector<Named*>> alike;
  for (Named& named : all) {
    alike[*named.name].push_back(&named);
  }
  for (auto& [name, group] : alike) {
    if (group.size() > 1) {
      rename(group);
    }
  }
}

}  // namespace

Point face_centre(const Plane& plane) {
  const Extent2 size = extent(plane.outline);
  return on_plane(plane, {0.5 * (size.low.u + size.high.u), 0.5 * (size.low.v + size.high.v)});
}

Direction forward(Direction d) {
  const double x = std::abs(d.x());
  const double y = std::abs(d.y());
  const double z = std::abs(d.z());
  const double largest = x >= y - kSameShare && x >= z - kSameShare ? d.x()
                         : y >= z - kSameShare                      ? d.y()
                                                                    : d.z();
  return largest < 0.0 ? -d : d;
}

void name_by_size(Product& product) {
  std::vector<Named> all = plain_names(product);
  rename_alike(all, [&](std::vector<Named*>& group) {
    for (Named* named : group) {
      const double at = dot(named->middle, named->along) - lowest(product, named->along);
      *named->name += " @ " + number(at, 3);
    }
  });
  rename_alike(all, [](std::vector<Named*>& group) {
    const auto rounded = [](const Named* named) {
      const Point p = named->middle;
      return std::tuple(std::round(p.x * 1e4), std::round(p.y * 1e4), std::round(p.z * 1e4));
    };
    std::stable_sort(group.begin(), group.end(),
                     [&](const Named* a, const Named* b) { return rounded(a) < rounded(b); });
    for (std::size_t i = 0; i < group.size(); ++i) {
      *group[i]->name += fmt::format(" #{}", i + 1);
    }
  });
}

}  // namespace spotblue
