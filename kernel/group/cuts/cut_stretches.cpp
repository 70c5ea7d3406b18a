#include "group/cuts/cut_stretches.hpp"

#include <optional>

namespace spotblue {
namespace {

// A neck longer than this part of the diameter is no groove in a journal: the journals at its ends
// lie apart. Choice of this program, no source.
constexpr double kWidestGroove = 0.5;

// Diameters that the shaft has in a stretch, by the faces about its axis there.
struct Met {
  std::optional<double> least, most;
  void take(double diameter) {
    least = std::min(least.value_or(diameter), diameter);
    most = std::max(most.value_or(diameter), diameter);
  }
};

void take_cylinders(const Product& product, const Line& axis, const Stretch& gap, Met& met) {
  for (const Cylinder& other : product.cylinders) {
    if (other.side == Side::external && coaxial(axis, other.axis) && lies_in(axis, other, gap)) {
      met.take(other.diameter);
    }
  }
}

void take_cones(const Product& product, const Line& axis, const Stretch& gap, Met& met) {
  for (const Cone& cone : product.cones) {
    if (cone.side != Side::external || !coaxial(axis, cone.axis)) {
      continue;
    }
    const std::vector<Stretch> pieces = pieces_on(axis, cone);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      for (const double s : {cone.intervals[i].low, cone.intervals[i].high}) {
        if (gap.gap_to(pieces[i]) < -kOnAxis_mm) {
          met.take(2.0 * (cone.radius + s * std::tan(cone.half_angle)));
        }
      }
    }
  }
}

void take_others(const Product& product, const Line& axis, const Stretch& gap, Met& met) {
  for (const OtherFace& face : product.others) {
    if (!face.revolved || !coaxial(axis, face.axis)) {
      continue;
    }
    Stretch ring;
    ring.take(station(axis, at_station(face.axis, face.from)));
    ring.take(station(axis, at_station(face.axis, face.to)));
    if (gap.gap_to(ring) < -kOnAxis_mm) {
      met.take(2.0 * face.inner);
      met.take(2.0 * face.outer);
    }
  }
}

std::optional<CutGroove> groove_in(const Product& product, const Cylinder& cut,
                                   const Stretch& gap) {
  Met met;
  take_cylinders(product, cut.axis, gap, met);
  take_cones(product, cut.axis, gap, met);
  take_others(product, cut.axis, gap, met);
  const bool groove = met.least && *met.most <= cut.diameter + kOnAxis_mm &&
                      *met.least < cut.diameter && gap.length() <= kWidestGroove * cut.diameter;
  return groove ? std::optional(CutGroove{gap, *met.least}) : std::nullopt;
}

}  // namespace

std::vector<CutStretch> cut_stretches(const Product& product, std::size_t cylinder) {
  const Cylinder& cut = product.cylinders.at(cylinder);
  std::vector<Stretch> pieces;
  for (const Interval& piece : cut.intervals) {
    pieces.push_back({piece.low, piece.high});
  }
  std::ranges::sort(pieces, {}, &Stretch::from);
  std::vector<CutStretch> all;
  for (const Stretch& piece : pieces) {
    if (all.empty()) {
      all.push_back({piece, {}});
      continue;
    }
    CutStretch& last = all.back();
    const Stretch gap{last.stretch.to, piece.from};
    const bool meets = gap.length() <= kOnAxis_mm;
    const auto groove = meets ? std::nullopt : groove_in(product, cut, gap);
    if (!meets && !groove) {
      all.push_back({piece, {}});
      continue;
    }
    last.stretch.to = std::max(last.stretch.to, piece.to);
    if (groove) {
      last.grooves.push_back(*groove);
    }
  }
  return all;
}

}  // namespace spotblue
