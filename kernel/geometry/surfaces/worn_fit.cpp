#include "geometry/surfaces/worn_fit.hpp"

#include <BRepAdaptor_Surface.hxx>
#include <BRep_Tool.hxx>
#include <algorithm>
#include <cmath>
#include <functional>

#include "geometry/model/tolerances.hpp"
#include "geometry/occt/occt_values.hpp"
#include "geometry/surfaces/surface_fit.hpp"

namespace spotblue {
namespace {

// What a bore or journal may be out of form and still be one: choices of this program, no source.
constexpr double kMostOff = 0.5;        // mm
constexpr double kMostOfRadius = 0.02;  // the lesser
constexpr double kOneStation = 1e-3;    // mm along the axis of a line across it
constexpr int kRows = 33;
constexpr int kAcross = 96;

using PointAt = std::function<Point(double row, double across)>;

// The surface's points by two shares, the first of the parameter that runs along the axis.
std::optional<PointAt> rows_of(const BRepAdaptor_Surface& surface, const Line& axis) {
  const Interval u = finite_stretch(surface.FirstUParameter(), surface.LastUParameter());
  const Interval v = finite_stretch(surface.FirstVParameter(), surface.LastVParameter());
  const auto at = [&surface, u, v](double along_u, double along_v) {
    return from_occt(surface.Value(u.at(along_u), v.at(along_v)));
  };
  const PointAt by_v = [at](double row, double across) { return at(across, row); };
  const PointAt by_u = [at](double row, double across) { return at(row, across); };
  const auto level = [&](const PointAt& point) {
    constexpr int kTried = 9;
    for (int i = 0; i < kTried; ++i) {
      const double row = static_cast<double>(i) / (kTried - 1);
      const double here = station(axis, point(row, 0.0));
      for (int j = 1; j < kTried; ++j) {
        const double across = static_cast<double>(j) / (kTried - 1);
        if (std::abs(station(axis, point(row, across)) - here) > kOneStation) {
          return false;
        }
      }
    }
    return true;
  };
  return level(by_v) ? std::optional(by_v) : level(by_u) ? std::optional(by_u) : std::nullopt;
}

// The least value of a function over 0 to 1, by steps and then by thirds.
double least_of(const std::function<double(double)>& of) {
  double best = 0.0;
  for (int i = 1; i <= kAcross; ++i) {
    const double at = static_cast<double>(i) / kAcross;
    best = of(at) < of(best) ? at : best;
  }
  double low = std::max(0.0, best - 1.0 / kAcross);
  double high = std::min(1.0, best + 1.0 / kAcross);
  for (int i = 0; i < 40; ++i) {
    const double left = low + (high - low) / 3.0;
    const double right = high - (high - low) / 3.0;
    (of(left) < of(right) ? high : low) = of(left) < of(right) ? right : left;
  }
  return std::min(of(best), of(0.5 * (low + high)));
}

// The middle of the area that a row encloses; none where it does not close.
std::optional<Point> middle_of(const PointAt& point, const Line& axis, double row) {
  constexpr double kClosed = 1e-6;  // mm
  const Point start = point(row, 0.0);
  if (norm(point(row, 1.0) - start) > kClosed) {
    return std::nullopt;
  }
  double area = 0.0;
  Point moment{};
  Point last = start;
  for (int i = 1; i <= kAcross; ++i) {
    const Point next = point(row, static_cast<double>(i) / kAcross);
    const double twice = dot(axis.along, cross(last - start, next - start));
    area += twice;
    moment = moment + (twice / 3.0) * ((last - start) + (next - start));
    last = next;
  }
  return area == 0.0 ? std::nullopt : std::optional(start + (1.0 / area) * moment);
}

// The line through the middles of the first and last row, where all rows go round: samples that
// crowd on one side of an oval draw a fitted axis there.
Line middle_axis(const PointAt& point, const Line& rough) {
  const auto first = middle_of(point, rough, 0.0);
  const auto last = middle_of(point, rough, 1.0);
  if (!first || !last || norm(*last - *first) < kOneStation) {
    return rough;
  }
  const Direction along = unit(*last - *first);
  return {*first, dot(along, rough.along) > 0.0 ? along : -along};
}

DiameterAt size_of(const PointAt& point, const Line& axis, double row) {
  const auto radius = [&](double across) { return distance(axis, point(row, across)); };
  return {station(axis, point(row, 0.5)), 2.0 * least_of(radius),
          -2.0 * least_of([&](double across) { return -radius(across); })};
}

SurfaceSource source_of(const BRepAdaptor_Surface& surface, SurfaceSource otherwise) {
  switch (surface.GetType()) {
    case GeomAbs_SurfaceOfRevolution:
      return SurfaceSource::revolution;
    case GeomAbs_SurfaceOfExtrusion:
      return SurfaceSource::extrusion;
    default:
      return otherwise;
  }
}

}  // namespace

std::optional<WornSurface> worn_surface(const TopoDS_Face& face) {
  if (BRep_Tool::Surface(face).IsNull()) {
    return std::nullopt;
  }
  const BRepAdaptor_Surface surface(face, Standard_False);
  const std::vector<SurfaceSample> samples = sample_surface(surface);
  if (samples.empty()) {
    return std::nullopt;
  }
  const auto rough = fit_rough_cylinder(samples);
  if (!rough || rough->deviation > std::min(kMostOff, kMostOfRadius * rough->radius)) {
    return std::nullopt;
  }
  const auto point = rows_of(surface, rough->axis);
  if (!point) {
    return std::nullopt;
  }
  WornSurface worn;
  worn.axis = middle_axis(*point, rough->axis);
  const Point out =
      samples.front().at - at_station(worn.axis, station(worn.axis, samples.front().at));
  const bool outward = dot(samples.front().normal, out) > 0.0;
  worn.side = outward == (face.Orientation() != TopAbs_REVERSED) ? Side::external : Side::internal;
  worn.source = source_of(surface, worn.source);
  for (int i = 0; i < kRows; ++i) {
    worn.sizes.push_back(size_of(*point, worn.axis, static_cast<double>(i) / (kRows - 1)));
  }
  std::ranges::sort(worn.sizes, {}, &DiameterAt::at);
  // One size all along needs no more than its ends.
  const bool straight = std::ranges::all_of(worn.sizes, [&](const DiameterAt& size) {
    return std::abs(size.least - worn.sizes.front().least) < kNoLength &&
           std::abs(size.greatest - worn.sizes.front().greatest) < kNoLength;
  });
  if (straight) {
    worn.sizes = {worn.sizes.front(), worn.sizes.back()};
  }
  return worn;
}

}  // namespace spotblue
