#include "geometry/faces/modelled_thread.hpp"

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <Precision.hxx>
#include <algorithm>
#include <cmath>
#include <gp_Ax2.hxx>
#include <gp_Circ.hxx>
#include <limits>
#include <numbers>
#include <optional>

#include "geometry/model/coaxial.hpp"
#include "geometry/model/tolerances.hpp"
#include "geometry/occt/occt_values.hpp"

namespace spotblue {
namespace {

constexpr int kGrid = 7;
constexpr double kTurn = 2.0 * std::numbers::pi;

// A sweep along a helix is a spline and keeps to it within about a thousandth. Choices of this
// program, no source.
constexpr double kSteady = 0.02;      // of the lead, between places of one thread
constexpr double kRound = 0.02;       // sine of the angle between its lines and the cylinder
constexpr double kSameAxis = 1e-3;    // mm
constexpr double kSlack = 0.02;       // mm that a face of the thread may lie past its crests
constexpr double kLeastDepth = 0.05;  // mm
constexpr double kMostLead = 0.6;     // of the crests' diameter
constexpr double kLeastLead = 0.05;   // mm
constexpr std::size_t kMostAxes = 16;

struct Helical {
  std::size_t face = 0;
  std::size_t axis = 0;
  double lead = 0.0;
};

struct Reached {
  double least = std::numeric_limits<double>::infinity(), most = 0.0;  // radii
  double from = std::numeric_limits<double>::infinity();
  double to = -std::numeric_limits<double>::infinity();
  void add(const Line& axis, Point p) {
    const double r = distance(axis, p);
    const double z = station(axis, p);
    least = std::min(least, r);
    most = std::max(most, r);
    from = std::min(from, z);
    to = std::max(to, z);
  }
};

Reached reach_of(const ReadFace& face, const Line& axis) {
  constexpr int kSteps = 16;
  Reached reached;
  for (const EdgeCurve& edge : face.edges) {
    for (int i = 0; i <= kSteps; ++i) {
      reached.add(axis, point_along(edge, static_cast<double>(i) / kSteps).at);
    }
  }
  return reached;
}

bool is_round(const FaceSurface& surface) {
  return surface.kind == FaceSurface::Kind::cylinder || surface.kind == FaceSurface::Kind::cone ||
         surface.kind == FaceSurface::Kind::torus;
}

// Lines that round faces lie about, those of most faces first.
std::vector<Line> axes_of(std::span<const ReadFace> faces) {
  std::vector<std::pair<Line, int>> axes;
  for (const ReadFace& face : faces) {
    if (!is_round(face.surface)) {
      continue;
    }
    const Line& axis = face.surface.axis;
    const auto known = std::find_if(axes.begin(), axes.end(), [&](const auto& one) {
      return distance(one.first, axis.at) < kSameAxis &&
             parallel_within(one.first.along, axis.along, kOneDirection);
    });
    if (known != axes.end()) {
      ++known->second;
    } else {
      axes.emplace_back(axis, 1);
    }
  }
  std::stable_sort(axes.begin(), axes.end(),
                   [](const auto& a, const auto& b) { return a.second > b.second; });
  std::vector<Line> lines;
  for (std::size_t i = 0; i < std::min(kMostAxes, axes.size()); ++i) {
    lines.push_back(axes[i].first);
  }
  return lines;
}

// The lead where the lines of one parameter are helices about the axis.
std::optional<double> lead_along(const std::vector<SurfaceSlope>& slopes, Point SurfaceSlope::*line,
                                 const Line& axis) {
  double least = std::numeric_limits<double>::infinity();
  double most = -least;
  for (const SurfaceSlope& slope : slopes) {
    const Point out = slope.at - at_station(axis, station(axis, slope.at));
    const double r = norm(out);
    const Point along = slope.*line;
    const double length = norm(along);
    if (r < kOnePlace || length < kNoLength) {
      return std::nullopt;
    }
    const Direction radial((1.0 / r) * out);
    const Direction round = third(axis.along, radial);
    const double turn = dot(along, round);
    if (std::abs(dot(along, radial)) > kRound * length || std::abs(turn) < 0.1 * length) {
      return std::nullopt;
    }
    const double lead = kTurn * r * dot(along, axis.along) / turn;
    least = std::min(least, lead);
    most = std::max(most, lead);
  }
  const double lead = 0.5 * (least + most);
  return std::abs(lead) >= kLeastLead && most - least <= kSteady * std::abs(lead)
             ? std::optional(lead)
             : std::nullopt;
}

std::vector<Helical> helical_faces(std::span<const ReadFace> faces, const std::vector<Line>& axes) {
  std::vector<Helical> found;
  for (std::size_t i = 0; i < faces.size(); ++i) {
    if (faces[i].slopes.empty()) {
      continue;
    }
    for (std::size_t a = 0; a < axes.size(); ++a) {
      auto lead = lead_along(faces[i].slopes, &SurfaceSlope::u, axes[a]);
      if (!lead) {
        lead = lead_along(faces[i].slopes, &SurfaceSlope::v, axes[a]);
      }
      if (lead) {
        found.push_back({i, a, *lead});
        break;
      }
    }
  }
  return found;
}

// Whether the flanks look away from the axis; nothing where they look along it.
std::optional<Side> side_of_flanks(std::span<const ReadFace> faces,
                                   const std::vector<std::size_t>& flanks, const Line& axis) {
  double outward = 0.0;
  double all = 0.0;
  for (const std::size_t i : flanks) {
    const double sense = faces[i].surface.side == Side::external ? 1.0 : -1.0;
    for (const SurfaceSlope& slope : faces[i].slopes) {
      const Point normal = sense * cross(slope.u, slope.v);
      const Point out = slope.at - at_station(axis, station(axis, slope.at));
      outward += dot(normal, out) / norm(out);
      all += norm(normal);
    }
  }
  if (std::abs(outward) < 0.05 * all) {
    return std::nullopt;
  }
  return outward > 0.0 ? Side::external : Side::internal;
}

std::optional<ModelledThread> thread_of_faces(std::span<const ReadFace> faces,
                                              const std::vector<std::size_t>& flanks,
                                              const Line& axis, double lead) {
  Reached all;
  for (const std::size_t i : flanks) {
    const Reached one = reach_of(faces[i], axis);
    all.least = std::min(all.least, one.least);
    all.most = std::max(all.most, one.most);
    all.from = std::min(all.from, one.from);
    all.to = std::max(all.to, one.to);
  }
  const auto side = side_of_flanks(faces, flanks, axis);
  if (!side || all.most - all.least < kLeastDepth || all.to - all.from < std::abs(lead)) {
    return std::nullopt;
  }
  ModelledThread thread{axis,     lead,   *side, *side == Side::external ? all.most : all.least,
                        all.from, all.to, {}};
  if (std::abs(lead) > kMostLead * 2.0 * thread.crest) {
    return std::nullopt;
  }
  for (std::size_t i = 0; i < faces.size(); ++i) {
    const Reached one = reach_of(faces[i], axis);
    if (one.least >= all.least - kSlack && one.most <= all.most + kSlack &&
        one.from >= all.from - kSlack && one.to <= all.to + kSlack) {
      thread.faces.push_back(i);
    }
  }
  return thread;
}

}  // namespace

std::vector<SurfaceSlope> slopes_of(const BRepAdaptor_Surface& surface) {
  const double u0 = surface.FirstUParameter();
  const double u1 = surface.LastUParameter();
  const double v0 = surface.FirstVParameter();
  const double v1 = surface.LastVParameter();
  std::vector<SurfaceSlope> slopes;
  for (const double end : {u0, u1, v0, v1}) {
    if (Precision::IsInfinite(end)) {
      return slopes;
    }
  }
  for (int i = 0; i < kGrid; ++i) {
    for (int j = 0; j < kGrid; ++j) {
      gp_Pnt at;
      gp_Vec du;
      gp_Vec dv;
      surface.D1(u0 + (i + 0.5) / kGrid * (u1 - u0), v0 + (j + 0.5) / kGrid * (v1 - v0), at, du,
                 dv);
      slopes.push_back({from_occt(at), from_occt(du), from_occt(dv)});
    }
  }
  return slopes;
}

std::vector<ModelledThread> modelled_threads(std::span<const ReadFace> faces) {
  std::vector<ModelledThread> threads;
  const bool any = std::any_of(faces.begin(), faces.end(),
                               [](const ReadFace& face) { return !face.slopes.empty(); });
  if (!any) {
    return threads;
  }
  const std::vector<Line> axes = axes_of(faces);
  std::vector<Helical> helical = helical_faces(faces, axes);
  while (!helical.empty()) {
    const Helical lead = helical.front();
    std::vector<std::size_t> flanks;
    std::erase_if(helical, [&](const Helical& one) {
      const bool same =
          one.axis == lead.axis && std::abs(one.lead - lead.lead) <= kSteady * std::abs(lead.lead);
      if (same) {
        flanks.push_back(one.face);
      }
      return same;
    });
    if (auto thread = thread_of_faces(faces, flanks, axes[lead.axis], lead.lead)) {
      threads.push_back(std::move(*thread));
    }
  }
  return threads;
}

ReadFace crest_face(const ModelledThread& thread) {
  ReadFace face;
  face.surface.kind = FaceSurface::Kind::cylinder;
  face.surface.source = SurfaceSource::bspline;
  face.surface.axis = thread.axis;
  face.surface.radius = thread.crest;
  face.surface.side = thread.side;
  const auto circle = [&](double z, bool with_axis) {
    const Point at = at_station(thread.axis, z);
    const Direction along = with_axis ? thread.axis.along : -thread.axis.along;
    const gp_Ax2 axes(gp_Pnt(at.x, at.y, at.z), to_dir(along));
    if (auto edge = edge_curve(BRepBuilderAPI_MakeEdge(gp_Circ(axes, thread.crest)).Edge())) {
      face.loops.push_back(face.edges.size());
      face.edges.push_back(std::move(*edge));
    }
  };
  const bool screw = thread.side == Side::external;
  circle(thread.from, screw);
  circle(thread.to, !screw);
  return face;
}

}  // namespace spotblue
