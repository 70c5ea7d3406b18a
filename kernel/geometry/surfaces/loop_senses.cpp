#include "geometry/surfaces/loop_senses.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <span>
#include <unordered_map>
#include <utility>

#include "geometry/surfaces/edge_integral.hpp"
#include "geometry/surfaces/face_flux.hpp"

namespace spotblue {
namespace {

constexpr double kClearly = 1e-3;  // mm2

std::size_t loop_count(const ReadFace& face) { return face.loops.size(); }

std::span<EdgeCurve> loop_of(ReadFace& face, std::size_t loop) {
  const std::size_t from = face.loops[loop];
  const std::size_t to = loop + 1 < face.loops.size() ? face.loops[loop + 1] : face.edges.size();
  return std::span(face.edges).subspan(from, to - from);
}

void turn_loop(std::span<EdgeCurve> loop) {
  std::for_each(loop.begin(), loop.end(), run_backwards);
}

double signed_area(std::span<const EdgeCurve> loop, Direction normal) {
  return loop.empty() ? 0.0 : plane_area(loop, loop.front().from, normal).value;
}

// Whether a point of the plane lies within the loop: the angle that the loop turns about it.
bool is_within(Point p, std::span<const EdgeCurve> loop, Direction normal) {
  double turned = 0.0;
  for (const EdgeCurve& edge : loop) {
    const int steps = edge.kind == EdgeCurve::Kind::line ? 1 : 24;
    Point last = edge.from - p;
    for (int i = 1; i <= steps; ++i) {
      const Point now =
          (i == steps ? edge.to : point_along(edge, static_cast<double>(i) / steps).at) - p;
      turned += std::atan2(dot(cross(last, now), normal), dot(last, now));
      last = now;
    }
  }
  return std::abs(turned) > 1.0;
}

// A face is of one piece: its largest loop is the outer one, and those within it are its holes.
int settle_plane(ReadFace& face) {
  const Direction normal = face.surface.axis.along;
  std::vector<double> areas;
  for (std::size_t i = 0; i < loop_count(face); ++i) {
    areas.push_back(signed_area(loop_of(face, i), normal));
  }
  const auto outer = static_cast<std::size_t>(
      std::max_element(areas.begin(), areas.end(),
                       [](double a, double b) { return std::abs(a) < std::abs(b); }) -
      areas.begin());
  int turned = 0;
  for (std::size_t i = 0; i < areas.size(); ++i) {
    const bool wrong = i == outer ? areas[i] < 0.0
                                  : areas[i] > 0.0 && is_within(loop_of(face, i).front().from,
                                                                loop_of(face, outer), normal);
    if (wrong) {
      turn_loop(loop_of(face, i));
      ++turned;
    }
  }
  return turned;
}

struct Use {
  std::size_t face = 0;
  bool backwards = false;
};

using Uses = std::unordered_map<const void*, std::vector<Use>>;

bool runs_backwards(const EdgeCurve& edge) { return edge.first > edge.last; }

Uses uses_of(const std::vector<ReadFace>& faces) {
  Uses uses;
  for (std::size_t i = 0; i < faces.size(); ++i) {
    for (const EdgeCurve& edge : faces[i].edges) {
      uses[edge.shared].push_back({i, runs_backwards(edge)});
    }
  }
  return uses;
}

enum class Agreement { none_told, agrees, differs };

// Whether the loop's edges run against those of the neighbours; of edges that two faces share.
Agreement agreement(std::span<const EdgeCurve> loop, const Uses& uses) {
  bool told = false;
  for (const EdgeCurve& edge : loop) {
    const std::vector<Use>& both = uses.at(edge.shared);
    if (both.size() != 2 || both[0].face == both[1].face) {
      continue;
    }
    if (both[0].backwards != both[1].backwards) {
      return Agreement::agrees;
    }
    told = true;
  }
  return told ? Agreement::differs : Agreement::none_told;
}

struct Contradicted {
  std::vector<std::size_t> loops;  // those that all their neighbours contradict
  bool all = true;                 // no loop agrees with its neighbours
};

Contradicted contradicted(ReadFace& face, const Uses& uses) {
  Contradicted result;
  for (std::size_t i = 0; i < loop_count(face); ++i) {
    const Agreement said = agreement(loop_of(face, i), uses);
    result.all = result.all && said != Agreement::agrees;
    if (said == Agreement::differs) {
      result.loops.push_back(i);
    }
  }
  // What lies in what has settled a plane's loops among themselves: it is wrong as a whole or not.
  if (!result.all && face.surface.kind == FaceSurface::Kind::plane) {
    result.loops.clear();
  }
  return result;
}

int settle_face(ReadFace& face, const Uses& uses) {
  const Contradicted wrong = contradicted(face, uses);
  if (wrong.loops.empty()) {
    if (area_by_normal(face) < -kClearly) {
      turn_over(face);
      std::for_each(face.edges.begin(), face.edges.end(), run_backwards);
      return 1;
    }
    return 0;
  }
  if (wrong.all && area_by_normal(face) > kClearly) {
    turn_over(face);
    return 1;
  }
  for (const std::size_t loop : wrong.loops) {
    turn_loop(loop_of(face, loop));
  }
  return static_cast<int>(wrong.loops.size());
}

void note_turned(const ReadFace& face, std::size_t index, Uses& uses) {
  for (const EdgeCurve& edge : face.edges) {
    for (Use& use : uses.at(edge.shared)) {
      if (use.face == index) {
        use.backwards = runs_backwards(edge);
      }
    }
  }
}

// By the edges along which neighbours contradict them: a disc beside a wrong torus has one such
// edge, the torus two, and once the torus is turned the disc has none.
std::vector<std::size_t> most_contradicted_first(std::vector<ReadFace>& faces, const Uses& uses) {
  std::vector<std::pair<std::size_t, std::size_t>> by_edges;
  for (std::size_t i = 0; i < faces.size(); ++i) {
    std::size_t edges = 0;
    for (const std::size_t loop : contradicted(faces[i], uses).loops) {
      for (const EdgeCurve& edge : loop_of(faces[i], loop)) {
        const std::vector<Use>& both = uses.at(edge.shared);
        edges += both.size() == 2 && both[0].face != both[1].face ? 1 : 0;
      }
    }
    if (edges > 0) {
      by_edges.emplace_back(edges, i);
    }
  }
  std::stable_sort(by_edges.begin(), by_edges.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  std::vector<std::size_t> order;
  order.reserve(by_edges.size());
  for (const auto& one : by_edges) {
    order.push_back(one.second);
  }
  return order;
}

}  // namespace

double area_by_normal(const ReadFace& face) {
  const FaceSurface& surface = face.surface;
  const double outward = surface.side == Side::external ? 1.0 : -1.0;
  if (surface.kind == FaceSurface::Kind::plane) {
    return signed_area(face.edges, surface.axis.along);
  }
  if (surface.kind == FaceSurface::Kind::cylinder) {
    return outward * face_flux(surface, face.edges, surface.axis.at)->value / surface.radius;
  }
  if (surface.kind == FaceSurface::Kind::cone) {
    // Seen from 1 mm within its mouth; from the apex itself nothing is seen of a cone.
    const double apex = surface.radius / std::tan(surface.half_angle);
    const Point from = at_station(surface.axis, 1.0 - apex);
    return outward * face_flux(surface, face.edges, from)->value / std::sin(surface.half_angle);
  }
  return 0.0;
}

int settle_loops(std::vector<ReadFace>& faces) {
  int turned = 0;
  for (ReadFace& face : faces) {
    if (face.surface.kind == FaceSurface::Kind::plane && !face.edges.empty()) {
      turned += settle_plane(face);
    }
  }
  Uses uses = uses_of(faces);
  const auto settle = [&](std::size_t i) {
    if (const int here = settle_face(faces[i], uses); here > 0) {
      turned += here;
      note_turned(faces[i], i, uses);
    }
  };
  // First those that contradict themselves, lest they turn the faces beside them.
  for (std::size_t i = 0; i < faces.size(); ++i) {
    if (area_by_normal(faces[i]) < -kClearly) {
      settle(i);
    }
  }
  for (const std::size_t i : most_contradicted_first(faces, uses)) {
    settle(i);
  }
  return turned;
}

}  // namespace spotblue
