#include "check/duty/cut_verdict.hpp"

#include <algorithm>
#include <optional>

#include "group/cuts/cut_stress.hpp"
#include "group/words/said_cut.hpp"
#include "spotblue/mechanics/shaft_section.hpp"

namespace spotblue {
namespace {

Verdict verdict_on_surroundings(const ShaftCut& cut) {
  Verdict verdict;
  const Length depth = Length::mm(0.5 * (cut.before.outer_mm - cut.after.outer_mm));
  for (const NearKeyseat& keyseat : cut.round.keyseats) {
    if (keyseat.distance_mm < 0.0) {
      verdict =
          worse(verdict, {Outcome::nonconforming, say(said::kCutIntoKeyseat, keyseat.name, depth)});
    }
  }
  if (const NearKeyseat* const keyseat = keyseat_at_corner(cut)) {
    verdict = worse(verdict,
                    {Outcome::undecided,
                     say(said::kCutNearKeyseat, Length::mm(keyseat->distance_mm), keyseat->name) +
                         said::kStopOff});
  }
  for (const Reference& broken : cut.round.broken) {
    verdict = worse(verdict, {Outcome::undecided, say(said::kCutBroken, broken)});
  }
  for (const Saying& thread : cut.round.threads) {
    verdict = worse(verdict, {Outcome::nonconforming, say(said::kCutIntoThread, thread)});
  }
  if (cut.cut->mate_corner && cut.fillet_mm) {
    const double room = corner_over_fillet_mm(cut.cut->mate_corner->in_mm(), *cut.fillet_mm);
    if (room < -1e-9) {
      verdict = worse(
          verdict, {Outcome::nonconforming, say(said::kMateRidesUp, Length::mm(*cut.fillet_mm))});
    }
  }
  return verdict;
}

Saying left_of(const ShaftCut& cut) {
  return say(said::kStrengthLeft, Figure{100.0 * strength_left(cut.before, cut.least), 1});
}

Verdict verdict_on_corner(const ShaftCut& cut) {
  if (cut.round.shoulders.empty()) {
    return {};
  }
  if (cut.corner.sharp) {
    double height = 0.0;
    for (const Shoulder& shoulder : cut.round.shoulders) {
      height = std::max(height, 0.5 * (shoulder.diameter_mm - cut.after.outer_mm));
    }
    return {Outcome::undecided, say(said::kSharpCorner, Length::mm(height / kSharpestTorsion))};
  }
  return cut.corner.unknown.empty() ? Verdict{} : Verdict{Outcome::undecided, cut.corner.unknown};
}

struct PlaceWords {
  const Said& over_half;
  const Said& within;
};
const PlaceWords& words_of(StressPlace place) {
  static constexpr PlaceWords kSkin{said::kOverHalfOnSkin, said::kStressOnSkin};
  static constexpr PlaceWords kCorner{said::kOverHalfInCorner, said::kStressInCorner};
  static constexpr PlaceWords kGroove{said::kOverHalfInGroove, said::kStressInGroove};
  switch (place) {
    case StressPlace::skin:
      return kSkin;
    case StressPlace::corner:
      return kCorner;
    case StressPlace::groove:
      break;
  }
  return kGroove;
}

Verdict verdict_on_load(const DeclaredJob& declared, const ShaftCut& cut) {
  if (!cut.cut->torque_nm || !cut.cut->bending_nm) {
    return {Outcome::undecided, left_of(cut) + said::kGiveLoad};
  }
  const auto strength = strength_of(declared, cut.feature.occurrence);
  if (!strength) {
    return {Outcome::undecided, left_of(cut) + said::kSayMaterial};
  }
  const CutStress stress = cut_stress(cut, *cut.cut->torque_nm, *cut.cut->bending_nm);
  const double plain = equivalent_mpa(stress.after);
  if (plain > strength->mpa) {
    return {Outcome::nonconforming, say(said::kOverYield, megapascals(plain), strength->text)};
  }
  const PlaceWords& words = words_of(stress.place);
  const Measure peak = megapascals(stress.peak_mpa);
  if (stress.peak_mpa > kOfYieldAllowed * strength->mpa) {
    return {Outcome::undecided, say(words.over_half, peak, strength->text)};
  }
  return {Outcome::conforming, left_of(cut) + say(words.within, peak)};
}

Saying keyseat_remark(const ShaftCut& cut) {
  if (cut.round.keyseats.empty() || cut.round.keyseats.front().distance_mm < 0.0 ||
      keyseat_at_corner(cut) != nullptr) {
    return {};
  }
  const NearKeyseat& nearest = cut.round.keyseats.front();
  return say(said::kFromKeyseat, Length::mm(nearest.distance_mm), nearest.name);
}

}  // namespace

Verdict verdict_on_cut(const DeclaredJob& declared, const ShaftCut& cut) {
  Verdict verdict = worse(worse(verdict_on_surroundings(cut), verdict_on_corner(cut)),
                          verdict_on_load(declared, cut));
  verdict.advice += keyseat_remark(cut);
  return verdict;
}

}  // namespace spotblue
