#include "check/fits/fit_verdict.hpp"

#include <algorithm>
#include <cmath>

#include "check/words/common_fits.hpp"
#include "group/words/said.hpp"
#include "group/words/said_fits.hpp"
#include "group/words/said_making.hpp"

namespace spotblue {
namespace {

constexpr Limits kNoMove{Length(), Length()};

Limits widened(Limits limits) {
  return {limits.lower - kSizeRounding, limits.upper + kSizeRounding};
}

int rank(Outcome outcome) {
  switch (outcome) {
    case Outcome::conforming:
      return 0;
    case Outcome::undecided:
      return 1;
    case Outcome::nonconforming:
      break;
  }
  return 2;
}

bool may_be_cut(const DeclaredJob& declared, const FeatureRef& feature) {
  const JobPart* part = declared.parts.at(feature.occurrence);
  return part == nullptr || !part->irreplaceable;
}

// What to do about a pair that exists: where metal may come off, or has to go on.
Saying cure_for(const DeclaredJob& declared, const FitCase& fit_case, bool tight) {
  const Reference hole = declared.names.reference(fit_case.hole);
  const Reference shaft = declared.names.reference(fit_case.shaft);
  const bool hole_free = may_be_cut(declared, fit_case.hole);
  const bool shaft_free = may_be_cut(declared, fit_case.shaft);
  if (!tight) {
    return hole_free || shaft_free ? say(said::kSleeveIt, shaft_free && !hole_free ? shaft : hole)
                                   : Saying(said::kMakeBetween);
  }
  if (hole_free && shaft_free) {
    return say(said::kOpenOrReduce, hole, shaft);
  }
  if (hole_free || shaft_free) {
    return hole_free ? say(said::kOpen, hole) : say(said::kReduce, shaft);
  }
  return said::kNeitherMayBeCut;
}

Saying too_much(const DeclaredJob& declared, const FitCase& fit_case, Limits found, Limits wanted) {
  const Length tight = wanted.lower - found.lower;
  const Length loose = found.upper - wanted.upper;
  const bool is_tight = tight > loose;
  return say(is_tight ? said::kTooTight : said::kTooLoose, is_tight ? tight : loose,
             cure_for(declared, fit_case, is_tight));
}

// What is bored, turned or cut, to which limits, of what it is drawn.
Saying making(const DeclaredJob& declared, const FeatureRef& feature, Limits window, Length drawn,
              bool hole, bool moved = false) {
  const Said& how = feature.kind == FeatureKind::width ? said::kCutWidth
                    : hole ? (moved ? said::kBoreBeforePressing : said::kBore)
                           : (moved ? said::kTurnBeforePressing : said::kTurn);
  return say(how, declared.names.reference(feature.occurrence), window, DrawnSize{drawn});
}

Saying size_window(const DeclaredJob& declared, const FeatureRef& feature, Limits window,
                   Length drawn, bool hole, Limits move) {
  return window.lower > window.upper
             ? say(said::kNoSizeSuits, declared.names.reference(feature))
             : making(declared, feature, window, drawn, hole, move != kNoMove);
}

// The limits that the part to make would have to hold now; empty when neither or both are to make.
Saying make_to_suit(const DeclaredJob& declared, const FitCase& fit_case, const FoundFit& found,
                    Limits wanted) {
  switch (made_to_suit(found)) {
    case Suited::shaft:
      return size_window(declared, fit_case.shaft, window_of_shaft(found, wanted),
                         fit_case.shaft_size, false, found.moves.shaft);
    case Suited::hole:
      return size_window(declared, fit_case.hole, window_of_hole(found, wanted), fit_case.hole_size,
                         true, found.moves.hole);
    case Suited::neither:
      break;
  }
  return {};
}

Saying make_both(const DeclaredJob& declared, const FitCase& fit_case, const FoundFit& found) {
  return making(declared, fit_case.hole, found.hole.limits, fit_case.hole_size, true) +
         making(declared, fit_case.shaft, found.shaft.limits, fit_case.shaft_size, false);
}

Verdict conforming(const DeclaredJob& declared, const FitCase& fit_case, const FoundFit& found,
                   Limits wanted) {
  if (found.hole.to_make && found.shaft.to_make && made_to_suit(found) == Suited::neither) {
    return {Outcome::conforming, make_both(declared, fit_case, found)};
  }
  const Saying make = make_to_suit(declared, fit_case, found, wanted);
  return {Outcome::conforming, make.empty() ? Saying(said::kLeaveAsItIs) : make};
}

Verdict measure_closer(const DeclaredJob& declared, const FitCase& fit_case, const FoundFit& found,
                       Limits wanted) {
  const auto is_wide = [](const SizeRange& range) {
    return !range.to_make && range.limits.width() > kSizeRounding;
  };
  const Reference hole = declared.names.reference(fit_case.hole);
  const Reference shaft = declared.names.reference(fit_case.shaft);
  const Length room = Length::mm(std::abs(margin(found.without_uncertainty, wanted).in_mm()));
  return {Outcome::undecided,
          is_wide(found.hole) && is_wide(found.shaft)
              ? say(said::kMeasureBothCloser, hole, shaft, room)
              : say(said::kMeasureCloser, is_wide(found.hole) ? hole : shaft, room)};
}

}  // namespace

Suited made_to_suit(const FoundFit& found) {
  const bool hole = found.hole.to_make;
  const bool shaft = found.shaft.to_make;
  if (hole && (!shaft || found.moves.hole != kNoMove)) {
    return Suited::hole;
  }
  return shaft && (!hole || found.moves.shaft != kNoMove) ? Suited::shaft : Suited::neither;
}

Outcome worse(Outcome a, Outcome b) { return rank(a) >= rank(b) ? a : b; }

Verdict worse(const Verdict& a, const Verdict& b) {
  if (a.outcome != b.outcome) {
    return worse(a.outcome, b.outcome) == a.outcome ? a : b;
  }
  const bool both = !a.advice.empty() && !b.advice.empty() && a.outcome != Outcome::conforming;
  return {a.outcome, both ? a.advice + b.advice : (a.advice.empty() ? b : a).advice};
}

Verdict verdict_on_clearance(const DeclaredJob& declared, const FitCase& fit_case,
                             const FoundFit& found, const WantedFit& wanted) {
  const Limits want = wanted.clearance;
  const Outcome outcome = judge(found.clearance, widened(want));
  if (outcome == Outcome::conforming) {
    return conforming(declared, fit_case, found, want);
  }
  const bool to_make = found.hole.to_make || found.shaft.to_make;
  if (outcome == Outcome::undecided) {
    // A part still to make does not excuse itself with its tolerance; a measurement does, unless
    // the part is still to be made to suit what pressing leaves of it.
    const bool measurement_only =
        !to_make || (found.moves == FitMoves{} &&
                     judge(found.without_uncertainty, widened(want)) == Outcome::conforming);
    if (measurement_only) {
      return measure_closer(declared, fit_case, found, want);
    }
  }
  const Saying make = make_to_suit(declared, fit_case, found, want);
  return {Outcome::nonconforming,
          make.empty() ? too_much(declared, fit_case, found.clearance, want) : make};
}

Verdict verdict_on_basic_size(const DeclaredJob& declared, const FeatureRef& feature,
                              Length modelled, const SizeRange& range) {
  if (!range.basic) {
    return {};
  }
  return {Outcome::nonconforming, say(said::kNotAtBasicSize, declared.names.reference(feature),
                                      DrawnSize{modelled}, DrawnSize{*range.basic})};
}

namespace {

// A press fit out of line by more than its interference stands off on one side.
Verdict verdict_on_pressed_line(const FoundFit& found, Length lost) {
  const Limits bites{-0.5 * found.clearance.upper, -0.5 * found.clearance.lower};
  if (lost <= bites.lower) {
    return {};
  }
  const bool to_make = found.hole.to_make || found.shaft.to_make;
  return {lost > bites.upper || to_make ? Outcome::nonconforming : Outcome::undecided,
          say(said::kStandsOff, lost, bites)};
}

}  // namespace

Verdict verdict_on_line(const DeclaredJob& declared, const FitCase& fit_case,
                        const FoundFit& found) {
  const Length lost = fit_case.out_of_line;
  const Length same = Length::mm(declared.look->settings.seats.same_length_mm);
  if (lost <= same) {
    return {};
  }
  if (found.clearance.upper < Length()) {
    return verdict_on_pressed_line(found, lost);
  }
  const Limits gap{0.5 * found.clearance.lower - lost, 0.5 * found.clearance.upper - lost};
  if (gap.upper < -same) {
    return {Outcome::nonconforming,
            say(said::kFoulsOffAxis, lost, 0.5 * std::max(found.clearance.upper, Length()))};
  }
  // A fit that may come out tight anyway says nothing about its line.
  if (gap.lower < -same && found.clearance.lower >= Length()) {
    const bool to_make = found.hole.to_make || found.shaft.to_make;
    return {to_make ? Outcome::nonconforming : Outcome::undecided,
            say(said::kMayFoulOffAxis, lost)};
  }
  return {};
}

Verdict verdict_without_want(const DeclaredJob& declared, const FitCase& fit_case,
                             const FoundFit& found) {
  const Length middle = 0.5 * (found.clearance.lower + found.clearance.upper);
  const Saying named = fits_that_would_do(0.5 * (fit_case.hole_size + fit_case.shaft_size), middle,
                                          declared.job->unit);
  return {Outcome::undecided,
          named.empty() ? say(said::kSuitsNone, middle) : say(said::kWouldBe, middle, named)};
}

}  // namespace spotblue
