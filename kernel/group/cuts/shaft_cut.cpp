#include "group/cuts/shaft_cut.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "group/sizes/size_range.hpp"
#include "group/words/said_cut.hpp"
#include "group/words/size_text.hpp"
#include "spotblue/mechanics/stress_concentration.hpp"

namespace spotblue {
namespace {

// A shoulder nearer a keyseat than this part of the diameter adds to its stress; common practice,
// no source.
constexpr double kKeyseatNear = 0.1;
// The sharpest corners that the published curves of bending cover, step over fillet.
constexpr double kSharpestBending = 20.0;
// A bore as wide as the shaft leaves nothing to divide by.
constexpr double kWidestBore = 0.999;

CornerFactor corner_of(const ShaftCut& cut) {
  CornerFactor worst;
  const double after = cut.after.outer_mm;
  for (const Shoulder& shoulder : cut.round.shoulders) {
    const double height = 0.5 * (shoulder.diameter_mm - after);
    const double fillet = cut.fillet_mm.value_or(0.0);
    worst.sharp = worst.sharp || fillet <= 0.0;
    const auto take = [&](std::optional<double>& factor, ShaftLoad load, double sharpest) {
      const double radius = fillet > 0.0 ? fillet : height / sharpest;
      const StressFactor found = shoulder_factor({shoulder.diameter_mm, after, radius}, load);
      if (!found.factor) {
        worst.unknown = say(said::kCornerNotKnown, found.reason);
      }
      factor =
          factor && found.factor ? std::optional(std::max(*factor, *found.factor)) : std::nullopt;
    };
    take(worst.bending, ShaftLoad::bending, kSharpestBending);
    take(worst.torsion, ShaftLoad::torsion, kSharpestTorsion);
  }
  return worst;
}

// The job's, else the sharper of two modelled corners.
std::optional<double> fillet_of(const Cut& cut, const CutSurroundings& round) {
  if (cut.fillet) {
    return cut.fillet->in_mm();
  }
  std::optional<double> fillet;
  for (const Shoulder& shoulder : round.shoulders) {
    const double modelled = shoulder.fillet_mm.value_or(0.0);
    fillet = std::min(fillet.value_or(modelled), modelled);
  }
  return fillet;
}

double low_end(const Product& product, const Line& axis) {
  Stretch shaft;
  for (const Cylinder& cylinder : product.cylinders) {
    if (cylinder.side == Side::external && coaxial(axis, cylinder.axis)) {
      for (const Stretch& piece : pieces_on(axis, cylinder)) {
        shaft.take(piece.from);
      }
    }
  }
  return shaft.from;
}

Error cuts_nothing(const DeclaredJob& declared, const Cut& cut, Length before, double after) {
  return {ErrorCode::bad_input, entry_place(*declared.job, "cuts", cut.line),
          fmt::format("before the cut {} is not more than the {} that is left",
                      length_text(before, declared.job->unit),
                      length_text(Length::mm(after), declared.job->unit)),
          "the model shows the shaft after the cut; correct \"before\""};
}

ShaftCut shaft_cut(const DeclaredJob& declared, const Cut& cut, const FeatureRef& feature,
                   const CutStretch& stretch, double after) {
  ShaftCut made;
  made.cut = &cut;
  made.feature = feature;
  made.stretch = stretch.stretch;
  made.grooves = stretch.grooves;
  made.round = cut_surroundings(declared, feature, stretch.stretch);
  made.fillet_mm = fillet_of(cut, made.round);
  double least = after;
  for (const CutGroove& groove : stretch.grooves) {
    least = std::min(least, groove.diameter_mm);
  }
  const double bore = std::min(made.round.bore_mm, kWidestBore * least);
  made.before = {size_before(*declared.job, cut).in_mm(), bore};
  made.after = {after, bore};
  made.least = {least, bore};
  made.corner = corner_of(made);
  return made;
}

void add_cuts_of(const DeclaredJob& declared, const Cut& cut, const FeatureRef& feature,
                 std::vector<ShaftCut>& cuts) {
  const Model& model = declared.look->model;
  const Product& product = model.products.at(model.occurrences.at(feature.occurrence).product);
  const Cylinder& cylinder = product.cylinders.at(feature.index);
  const SizeRange sizes =
      size_range(declared, feature, Length::mm(cylinder.diameter), std::nullopt);
  const Length before = size_before(*declared.job, cut);
  if (sizes.centre >= before) {
    throw cuts_nothing(declared, cut, before, sizes.centre.in_mm());
  }
  const double end = low_end(product, cylinder.axis);
  for (const CutStretch& stretch : cut_stretches(product, feature.index)) {
    cuts.push_back(shaft_cut(declared, cut, feature, stretch, sizes.limits.lower.in_mm()));
    cuts.back().begins_mm = stretch.stretch.from - end;
  }
}

bool is_outside(const Model& model, const FeatureRef& feature) {
  const Product& product = model.products.at(model.occurrences.at(feature.occurrence).product);
  return feature.kind == FeatureKind::cylinder &&
         product.cylinders.at(feature.index).side == Side::external;
}

}  // namespace

std::vector<ShaftCut> shaft_cuts(const DeclaredJob& declared) {
  std::vector<ShaftCut> cuts;
  for (const Cut& cut : declared.job->cuts) {
    const NamedFeature named = declared.names.feature(cut.feature, {"cuts", "feature", cut.line});
    if (is_outside(declared.look->model, named.refs.front())) {
      add_cuts_of(declared, cut, named.refs.front(), cuts);
    }
  }
  return cuts;
}

Length size_before(const Job& job, const Cut& cut) {
  if (!cut.before) {
    throw Error(
        ErrorCode::bad_input, entry_place(job, "cuts", cut.line),
        fmt::format("{} is turned or bored, but its size before the cut is missing", cut.feature),
        "give \"before\", the diameter as it is now");
  }
  return *cut.before;
}

const NearKeyseat* keyseat_at_corner(const ShaftCut& cut) {
  if (cut.round.keyseats.empty() || cut.round.shoulders.empty()) {
    return nullptr;
  }
  const NearKeyseat& nearest = cut.round.keyseats.front();
  const bool near =
      nearest.distance_mm >= 0.0 && nearest.distance_mm < kKeyseatNear * cut.after.outer_mm;
  return near ? &nearest : nullptr;
}

}  // namespace spotblue
