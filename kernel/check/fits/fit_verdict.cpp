#include "check/fits/fit_verdict.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "check/words/common_fits.hpp"
#include "group/words/size_text.hpp"

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
std::string cure_for(const DeclaredJob& declared, const FitCase& fit_case, bool tight) {
  const std::string hole = declared.names.id_of(fit_case.hole);
  const std::string shaft = declared.names.id_of(fit_case.shaft);
  const bool hole_free = may_be_cut(declared, fit_case.hole);
  const bool shaft_free = may_be_cut(declared, fit_case.shaft);
  if (!tight) {
    return hole_free || shaft_free ? fmt::format("sleeve {}, or make a new mate to suit",
                                                 shaft_free && !hole_free ? shaft : hole)
                                   : "make something between them to suit; neither may be replaced";
  }
  if (hole_free && shaft_free) {
    return fmt::format("open {} or reduce {}", hole, shaft);
  }
  if (hole_free || shaft_free) {
    return hole_free ? "open " + hole : "reduce " + shaft;
  }
  return "both parts are irreplaceable: think again before cutting either";
}

std::string too_much(const DeclaredJob& declared, const FitCase& fit_case, Limits found,
                     Limits wanted) {
  const LengthUnit unit = declared.job->unit;
  const Length tight = wanted.lower - found.lower;
  const Length loose = found.upper - wanted.upper;
  const bool is_tight = tight > loose;
  return fmt::format("too {} by up to {}: {}", is_tight ? "tight" : "loose",
                     length_text(is_tight ? tight : loose, unit),
                     cure_for(declared, fit_case, is_tight));
}

std::string size_window(const DeclaredJob& declared, const FeatureRef& feature, Limits window,
                        Limits move) {
  const std::string name = declared.names.id_of(feature);
  if (window.lower > window.upper) {
    return fmt::format(
        "no size of {} suits every size its mate may have: measure or hold the mate closer", name);
  }
  return fmt::format("make {} {}{}", name, range_text(window, declared.job->unit),
                     move == kNoMove ? "" : " before pressing");
}

// The limits that the part to make would have to hold now; empty when neither or both are to make.
std::string make_to_suit(const DeclaredJob& declared, const FitCase& fit_case,
                         const FoundFit& found, Limits wanted) {
  switch (made_to_suit(found)) {
    case Suited::shaft:
      return size_window(declared, fit_case.shaft, window_of_shaft(found, wanted),
                         found.moves.shaft);
    case Suited::hole:
      return size_window(declared, fit_case.hole, window_of_hole(found, wanted), found.moves.hole);
    case Suited::neither:
      break;
  }
  return "";
}

std::string make_both(const DeclaredJob& declared, const FitCase& fit_case, const FoundFit& found) {
  const LengthUnit unit = declared.job->unit;
  return fmt::format("make {} {} and {} {}", declared.names.id_of(fit_case.hole),
                     range_text(found.hole.limits, unit), declared.names.id_of(fit_case.shaft),
                     range_text(found.shaft.limits, unit));
}

Verdict conforming(const DeclaredJob& declared, const FitCase& fit_case, const FoundFit& found,
                   Limits wanted) {
  if (found.hole.to_make && found.shaft.to_make && made_to_suit(found) == Suited::neither) {
    return {Outcome::conforming, make_both(declared, fit_case, found)};
  }
  const std::string make = make_to_suit(declared, fit_case, found, wanted);
  return {Outcome::conforming, make.empty() ? "leave it as it is" : make};
}

Verdict measure_closer(const DeclaredJob& declared, const FitCase& fit_case, const FoundFit& found,
                       Limits wanted) {
  const auto unknown = [&](const FeatureRef& feature, const SizeRange& range) {
    const bool wide = !range.to_make && range.limits.width() > kSizeRounding;
    return wide ? declared.names.id_of(feature) : std::string();
  };
  const std::string hole = unknown(fit_case.hole, found.hole);
  const std::string shaft = unknown(fit_case.shaft, found.shaft);
  const std::string both = hole + (hole.empty() || shaft.empty() ? "" : " and ") + shaft;
  const Length room = Length::mm(std::abs(margin(found.without_uncertainty, wanted).in_mm()));
  return {Outcome::undecided,
          fmt::format("measure {} closer: the uncertainties together must come below {}", both,
                      length_text(room, declared.job->unit))};
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
  const std::string make = make_to_suit(declared, fit_case, found, want);
  return {Outcome::nonconforming,
          make.empty() ? too_much(declared, fit_case, found.clearance, want) : make};
}

Verdict verdict_on_basic_size(const DeclaredJob& declared, const FeatureRef& feature,
                              Length modelled, const SizeRange& range) {
  if (!range.basic) {
    return {};
  }
  const LengthUnit unit = declared.job->unit;
  const std::string nominal = format_size(*range.basic, unit);
  return {Outcome::nonconforming,
          fmt::format("model is not at basic size: {} is {} {}, its nominal is {}; draw it at {}, "
                      "state the nominal, or say sizes = \"actual\"",
                      declared.names.id_of(feature), format_size(modelled, unit), unit_name(unit),
                      nominal, nominal)};
}

namespace {

// A press fit out of line by more than its interference stands off on one side.
Verdict verdict_on_pressed_line(const DeclaredJob& declared, const FoundFit& found, Length lost) {
  const Limits bites{-0.5 * found.clearance.upper, -0.5 * found.clearance.lower};
  if (lost <= bites.lower) {
    return {};
  }
  const bool to_make = found.hole.to_make || found.shaft.to_make;
  return {
      lost > bites.upper || to_make ? Outcome::nonconforming : Outcome::undecided,
      fmt::format("out of line by {} on one side, and the interference there is {}: it stands "
                  "off on that side; true up the bore or what it hangs on",
                  length_text(lost, declared.job->unit), range_text(bites, declared.job->unit))};
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
    return verdict_on_pressed_line(declared, found, lost);
  }
  const Limits gap{0.5 * found.clearance.lower - lost, 0.5 * found.clearance.upper - lost};
  const LengthUnit unit = declared.job->unit;
  const std::string out = fmt::format("out of line by {} on one side", length_text(lost, unit));
  if (gap.upper < -same) {
    return {Outcome::nonconforming,
            fmt::format("fouls: {}, the clearance leaves {}; true up the bore or the seat it "
                        "hangs on",
                        out, length_text(0.5 * std::max(found.clearance.upper, Length()), unit))};
  }
  // A fit that may come out tight anyway says nothing about its line.
  if (gap.lower < -same && found.clearance.lower >= Length()) {
    const bool to_make = found.hole.to_make || found.shaft.to_make;
    return {to_make ? Outcome::nonconforming : Outcome::undecided,
            fmt::format("may foul at the least clearance: {}; true it up or allow more clearance",
                        out)};
  }
  return {};
}

Verdict verdict_without_want(const DeclaredJob& declared, const FitCase& fit_case,
                             const FoundFit& found) {
  const Length middle = 0.5 * (found.clearance.lower + found.clearance.upper);
  const std::string named = fits_that_would_do(0.5 * (fit_case.hole_size + fit_case.shaft_size),
                                               middle, declared.job->unit);
  return {Outcome::undecided, fmt::format("no fit declared; with {} clearance it {}",
                                          length_text(middle, declared.job->unit), named)};
}

}  // namespace spotblue
