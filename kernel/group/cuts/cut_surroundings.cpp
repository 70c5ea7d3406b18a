#include "group/cuts/cut_surroundings.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "group/cuts/cut_keyseats.hpp"
#include "group/words/said_cut.hpp"

namespace spotblue {
namespace {

// Choice of this program, no source.
constexpr double kCornerReach_mm = 2.0;  // a shoulder may lie behind a chamfer or relief this long

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
    const bool touches = ring.from - kOnAxis_mm <= end && end <= ring.to + kOnAxis_mm;
    if (touches && std::abs(face.inner - radius) < kOnAxis_mm && face.outer > face.inner) {
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
  for (const Cylinder& other : product.cylinders) {
    if (other.side != Side::external || !coaxial(axis, other.axis)) {
      continue;
    }
    for (const Stretch& piece : pieces_on(axis, other)) {
      const double beyond = sense > 0.0 ? piece.from - end : end - piece.to;
      if (beyond >= -kOnAxis_mm && beyond <= nearest) {
        nearest = beyond;
        shoulder = other.diameter > diameter ? std::optional(Shoulder{other.diameter, fillet})
                                             : std::nullopt;
      }
    }
  }
  return shoulder;
}

double bore_under(const Line& axis, const Product& product, const Stretch& stretch) {
  double bore = 0.0;
  for (const Cylinder& cylinder : product.cylinders) {
    if (cylinder.side == Side::internal && coaxial(axis, cylinder.axis) &&
        lies_in(axis, cylinder, stretch)) {
      bore = std::max(bore, cylinder.diameter);
    }
  }
  return bore;
}

// A screw's own thread on this shaft, or a tapped hole that comes out through the cut.
std::vector<Saying> threads_met(const DeclaredJob& declared, const FeatureRef& cut,
                                const Line& placed, const Stretch& stretch) {
  std::vector<Saying> met;
  const std::vector<Thread>& threads = declared.look->seats.threads;
  for (std::size_t i = 0; i < threads.size(); ++i) {
    const Thread& thread = threads[i];
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
    if (stretch.gap_to(threaded) < -kOnAxis_mm) {
      const OccurrenceId other = own ? thread.hole.occurrence : thread.screw.occurrence;
      met.push_back(
          say(said::kThreadIn, declared.screw_threads[i].size, declared.names.reference(other)));
    }
  }
  return met;
}

}  // namespace

CutSurroundings cut_surroundings(const DeclaredJob& declared, const FeatureRef& cut,
                                 const Stretch& stretch) {
  const Model& model = declared.look->model;
  const Product& product = model.products.at(model.occurrences.at(cut.occurrence).product);
  const Cylinder& cylinder = product.cylinders.at(cut.index);
  const Line& axis = cylinder.axis;
  CutSurroundings round;
  round.bore_mm = bore_under(axis, product, stretch);
  for (const auto& [end, sense] : {std::pair{stretch.from, -1.0}, std::pair{stretch.to, 1.0}}) {
    if (const auto shoulder = shoulder_at(axis, product, cut.index, end, sense)) {
      round.shoulders.push_back(*shoulder);
    }
  }
  round.keyseats = keyseats_near(declared, cut, stretch);
  round.broken = broken_by(declared, cut, stretch);
  round.threads = threads_met(
      declared, cut, place_line(model.occurrences.at(cut.occurrence).frame, axis), stretch);
  return round;
}

}  // namespace spotblue
