#include "check/duty/cut_surroundings.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "group/words/said_cut.hpp"

namespace spotblue {
namespace {

constexpr double kSquare = 1e-3;         // rad: square to or along the axis
constexpr double kOnAxis = 0.05;         // mm
constexpr double kCornerReach_mm = 2.0;  // a shoulder may lie behind a chamfer or relief this long
constexpr int kArcPieces = 16;

struct Stretch {
  double from = std::numeric_limits<double>::infinity();
  double to = -std::numeric_limits<double>::infinity();
  void take(double s) {
    from = std::min(from, s);
    to = std::max(to, s);
  }
  // How far the other lies beyond; negative: the length they share, or the shorter's when inside.
  [[nodiscard]] double gap_to(const Stretch& other) const {
    return std::max(other.from - to, from - other.to);
  }
};

const Product& product_of(const Model& model, OccurrenceId occurrence) {
  return model.products.at(model.occurrences.at(occurrence).product);
}

Stretch hull_on(const Line& axis, const Cylinder& cylinder) {
  Stretch stretch;
  for (const auto& [from, to] : cylinder.intervals) {
    stretch.take(station(axis, at_station(cylinder.axis, from)));
    stretch.take(station(axis, at_station(cylinder.axis, to)));
  }
  return stretch;
}

bool coaxial(const Line& axis, const Line& other) {
  return angle_between_lines(axis.along, other.along) < kSquare &&
         distance(axis, other.at) < kOnAxis;
}

bool square_to(Direction a, Direction b) { return std::abs(dot(a, b)) < kSquare; }

void take_outline(const Line& axis, const Plane& plane, Stretch& stretch) {
  const Direction v = third(plane.normal, plane.u);
  const auto take = [&](Point2 p) {
    stretch.take(station(axis, plane.at + p.u * plane.u + p.v * v));
  };
  for (const Edge2& edge : plane.outline.edges) {
    take(edge.from);
    take(edge.to);
    const double start = std::atan2(edge.from.v - edge.centre.v, edge.from.u - edge.centre.u);
    for (int i = 1; edge.sweep != 0.0 && i < kArcPieces; ++i) {
      const double angle = start + edge.sweep * i / kArcPieces;
      take({edge.centre.u + edge.radius * std::cos(angle),
            edge.centre.v + edge.radius * std::sin(angle)});
    }
  }
}

// The sides of a milled keyseat end where its round ends begin.
void take_round_ends(const Line& axis, const Product& product, const Width& width,
                     Stretch& stretch) {
  const Plane& side = product.planes.at(width.first);
  const double middle = -0.5 * width.width;  // from the side, against its outward normal's sign
  for (const Cylinder& cylinder : product.cylinders) {
    const double from_side = std::abs(dot(cylinder.axis.at - side.at, side.normal));
    const bool rounds_off = cylinder.side == Side::internal &&
                            std::abs(cylinder.diameter - width.width) < 0.01 * width.width &&
                            square_to(cylinder.axis.along, axis.along) &&
                            square_to(cylinder.axis.along, side.normal) &&
                            std::abs(from_side + middle) < kOnAxis;
    if (rounds_off) {
      const double s = station(axis, cylinder.axis.at);
      stretch.take(s - 0.5 * cylinder.diameter);
      stretch.take(s + 0.5 * cylinder.diameter);
    }
  }
}

std::optional<Stretch> keyseat_on(const Line& axis, const Product& product, const Width& width) {
  const Plane& first = product.planes.at(width.first);
  const Plane& second = product.planes.at(width.second);
  const double near = dot(first.at - axis.at, first.normal);
  const double far = dot(second.at - axis.at, first.normal);
  const bool astride = std::abs(near + far) < width.width;
  if (width.side != Side::internal || !square_to(first.normal, axis.along) || !astride) {
    return std::nullopt;
  }
  Stretch stretch;
  take_outline(axis, first, stretch);
  take_outline(axis, second, stretch);
  take_round_ends(axis, product, width, stretch);
  return stretch.from <= stretch.to ? std::optional(stretch) : std::nullopt;
}

std::vector<NearKeyseat> keyseats_near(const DeclaredJob& declared, const FeatureRef& cut,
                                       const Line& axis, const Stretch& stretch) {
  const Product& product = product_of(declared.look->model, cut.occurrence);
  std::vector<NearKeyseat> keyseats;
  for (std::size_t i = 0; i < product.widths.size(); ++i) {
    if (const auto keyseat = keyseat_on(axis, product, product.widths[i])) {
      keyseats.push_back({declared.names.reference({cut.occurrence, FeatureKind::width, i}),
                          product.widths[i].width, stretch.gap_to(*keyseat)});
    }
  }
  std::sort(keyseats.begin(), keyseats.end(),
            [](const auto& a, const auto& b) { return a.distance_mm < b.distance_mm; });
  return keyseats;
}

// A torus or other ring that lies in the corner at `end`, on the side away from `inside`.
std::optional<double> fillet_at(const Line& axis, const Product& product, double radius,
                                double end) {
  for (const OtherFace& face : product.others) {
    if (!face.revolved || !coaxial(axis, face.axis)) {
      continue;
    }
    Stretch ring;
    ring.take(station(axis, at_station(face.axis, face.from)));
    ring.take(station(axis, at_station(face.axis, face.to)));
    const bool touches = ring.from - kOnAxis <= end && end <= ring.to + kOnAxis;
    if (touches && std::abs(face.inner - radius) < kOnAxis && face.outer > face.inner) {
      return std::max(ring.to - ring.from, face.outer - face.inner);
    }
  }
  return std::nullopt;
}

// sense: +1 beyond the high end, -1 beyond the low one.
std::optional<Shoulder> shoulder_at(const Line& axis, const Product& product, std::size_t cut,
                                    double end, double sense) {
  const double diameter = product.cylinders[cut].diameter;
  const auto fillet = fillet_at(axis, product, 0.5 * diameter, end);
  double nearest = kCornerReach_mm + fillet.value_or(0.0);
  std::optional<Shoulder> shoulder;
  for (std::size_t i = 0; i < product.cylinders.size(); ++i) {
    const Cylinder& other = product.cylinders[i];
    if (i == cut || other.side != Side::external || !coaxial(axis, other.axis)) {
      continue;
    }
    const Stretch stretch = hull_on(axis, other);
    const double beyond = sense > 0.0 ? stretch.from - end : end - stretch.to;
    if (beyond >= -kOnAxis && beyond <= nearest) {
      nearest = beyond;
      shoulder = other.diameter > diameter ? std::optional(Shoulder{other.diameter, fillet})
                                           : std::nullopt;
    }
  }
  return shoulder;
}

double bore_under(const Line& axis, const Product& product, const Stretch& stretch) {
  double bore = 0.0;
  for (const Cylinder& cylinder : product.cylinders) {
    if (cylinder.side == Side::internal && coaxial(axis, cylinder.axis) &&
        stretch.gap_to(hull_on(axis, cylinder)) < 0.0) {
      bore = std::max(bore, cylinder.diameter);
    }
  }
  return bore;
}

// A screw's own thread on this shaft, or a tapped hole that comes out through the cut.
std::vector<Saying> threads_met(const DeclaredJob& declared, const FeatureRef& cut,
                                const Line& placed, const Stretch& stretch) {
  std::vector<Saying> met;
  for (const Thread& thread : declared.look->seats.threads) {
    const bool own = thread.screw.occurrence == cut.occurrence;
    const bool tapped = thread.hole.occurrence == cut.occurrence;
    const bool along = angle_between_lines(placed.along, thread.axis.along) < 0.1;
    if (!(own && along) && !(tapped && !along)) {
      continue;
    }
    Stretch threaded;
    for (const double s : {thread.from, thread.to}) {
      const double at = station(placed, at_station(thread.axis, s));
      const double aside = along ? 0.0 : 0.5 * thread.hole_diameter;
      threaded.take(at - aside);
      threaded.take(at + aside);
    }
    if (stretch.gap_to(threaded) < -kOnAxis) {
      const OccurrenceId other = own ? thread.hole.occurrence : thread.screw.occurrence;
      met.push_back(say(said::kThreadIn, thread.size, declared.names.reference(other)));
    }
  }
  return met;
}

}  // namespace

CutSurroundings cut_surroundings(const DeclaredJob& declared, const FeatureRef& cut) {
  const Model& model = declared.look->model;
  const Product& product = product_of(model, cut.occurrence);
  const Cylinder& cylinder = product.cylinders.at(cut.index);
  const Line& axis = cylinder.axis;
  const Stretch stretch = hull_on(axis, cylinder);
  CutSurroundings round;
  round.length_mm = stretch.to - stretch.from;
  round.bore_mm = bore_under(axis, product, stretch);
  for (const auto& [end, sense] : {std::pair{stretch.from, -1.0}, std::pair{stretch.to, 1.0}}) {
    if (const auto shoulder = shoulder_at(axis, product, cut.index, end, sense)) {
      round.shoulders.push_back(*shoulder);
    }
  }
  round.keyseats = keyseats_near(declared, cut, axis, stretch);
  round.threads = threads_met(
      declared, cut, place_line(model.occurrences.at(cut.occurrence).frame, axis), stretch);
  return round;
}

}  // namespace spotblue
