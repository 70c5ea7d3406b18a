#include "check/fits/judge_fit.hpp"

#include <optional>
#include <utility>

#include "check/fits/fit_verdict.hpp"
#include "check/words/words.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/said_fits.hpp"

namespace spotblue {
namespace {

std::optional<ClassLimits> class_limits(const std::optional<Limits>& limits,
                                        const std::optional<Length>& nominal) {
  return limits ? std::optional(ClassLimits{*limits, nominal}) : std::nullopt;
}

// From where it is tightest to where it is loosest.
Limits clearance_of(const FitCase& fit_case, const FoundFit& found) {
  return {found.clearance.lower + fit_case.worn_by.lower,
          found.clearance.upper + fit_case.worn_by.upper};
}

// A worn pair is judged where it is tightest and where it is loosest.
Verdict verdict_on_worn(const DeclaredJob& declared, const FitCase& fit_case, const FoundFit& found,
                        const WantedFit& wanted) {
  const auto at = [&](Length off) {
    FoundFit there = found;
    for (Limits* limits : {&there.clearance, &there.without_uncertainty}) {
      *limits = {limits->lower + off, limits->upper + off};
    }
    return std::pair(there.clearance, verdict_on_clearance(declared, fit_case, there, wanted));
  };
  const auto [tight, at_tightest] = at(fit_case.worn_by.lower);
  const auto [loose, at_loosest] = at(fit_case.worn_by.upper);
  if (at_tightest.outcome == at_loosest.outcome) {
    return at_tightest.advice == at_loosest.advice ? at_tightest : worse(at_tightest, at_loosest);
  }
  return {Outcome::undecided, say(said::kWornHereAndThere, tight.lower, loose.upper)};
}

// A size that pressing moves, as its mate meets it.
void add_moved(std::vector<Quantity>& quantities, const std::string& key, Limits size,
               Limits move) {
  if (move != Limits{Length(), Length()}) {
    add_range(quantities, key, {size.lower + move.lower, size.upper + move.upper});
  }
}

std::vector<Quantity> found_quantities(const FitCase& fit_case, const FoundFit& found) {
  std::vector<Quantity> quantities;
  add_range(quantities, "clearance", clearance_of(fit_case, found));
  add_range(quantities, "hole", found.hole.limits);
  quantities.push_back({"hole_size", source_said(found.hole.source)});
  add_range(quantities, "shaft", found.shaft.limits);
  quantities.push_back({"shaft_size", source_said(found.shaft.source)});
  add_moved(quantities, "hole_assembled", found.hole.limits, found.moves.hole);
  add_moved(quantities, "shaft_assembled", found.shaft.limits, found.moves.shaft);
  quantities.push_back({"modelled_clearance", measure(fit_case.hole_size - fit_case.shaft_size)});
  quantities.insert(quantities.end(), fit_case.placing.begin(), fit_case.placing.end());
  return quantities;
}

// @param known  how far pressing moves the sizes: without it nothing can be made to suit.
std::vector<Quantity> wanted_quantities(const FoundFit& found, const WantedFit& wanted,
                                        bool known) {
  std::vector<Quantity> quantities{{"fit", told(wanted)}};
  if (wanted.nominal) {
    quantities.push_back({"nominal", measure(*wanted.nominal)});
  }
  add_range(quantities, "clearance", wanted.clearance);
  const auto add_window = [&quantities](const std::string& key, Limits window) {
    if (leaves_room(window)) {
      add_range(quantities, key, window);
    }
  };
  if (known && made_to_suit(found) == Suited::hole) {
    add_window("make_hole", window_of_hole(found, wanted.clearance));
  }
  if (known && made_to_suit(found) == Suited::shaft) {
    add_window("make_shaft", window_of_shaft(found, wanted.clearance));
  }
  return quantities;
}

Verdict verdict_on_sizes(const DeclaredJob& declared, const FitCase& fit_case,
                         const FoundFit& found) {
  return worse(verdict_on_basic_size(declared, fit_case.hole, fit_case.hole_size, found.hole),
               verdict_on_basic_size(declared, fit_case.shaft, fit_case.shaft_size, found.shaft));
}

}  // namespace

Finding judge_fit(const DeclaredJob& declared, const FitCase& fit_case) {
  const Job& job = *declared.job;
  std::optional<WantedFit> wanted;
  if (fit_case.want != nullptr) {
    wanted = wanted_fit(
        job, *fit_case.want,
        {fit_case.hole_size, fit_case.shaft_size, drawn_at(declared, fit_case.hole.occurrence),
         drawn_at(declared, fit_case.shaft.occurrence)});
  }
  const auto hole = wanted ? class_limits(wanted->hole, wanted->nominal) : std::nullopt;
  const auto shaft = wanted ? class_limits(wanted->shaft, wanted->nominal) : std::nullopt;
  const FoundFit found =
      found_fit(size_range(declared, fit_case.hole, fit_case.hole_size, hole),
                size_range(declared, fit_case.shaft, fit_case.shaft_size, shaft), fit_case.moves);
  const bool worn = fit_case.worn_by.width() > Length();
  // By the sizes as made a part would be cut to suit what it is not once it is pressed.
  const bool known = fit_case.moves_unknown.empty();
  Verdict verdict =
      !known    ? Verdict{Outcome::undecided, say(said::kMovesNotKnown, fit_case.moves_unknown)}
      : !wanted ? verdict_without_want(declared, fit_case, found)
      : worn    ? verdict_on_worn(declared, fit_case, found, *wanted)
                : verdict_on_clearance(declared, fit_case, found, *wanted);
  verdict = worse(verdict_on_sizes(declared, fit_case, found), verdict);
  verdict = worse(verdict_on_line(declared, fit_case, found), verdict);

  Finding finding;
  finding.kind = fit_case.kind;
  finding.about = {declared.names.reference(fit_case.hole),
                   declared.names.reference(fit_case.shaft)};
  finding.outcome = verdict.outcome;
  finding.advice = verdict.advice;
  finding.found = found_quantities(fit_case, found);
  if (wanted) {
    finding.wanted = wanted_quantities(found, *wanted, known);
    if (known) {
      finding.margin = {
          {"clearance", measure(margin(clearance_of(fit_case, found), wanted->clearance))}};
    }
    finding.basis =
        wanted->basis + judged_by(has_uncertainty(found.hole) && has_uncertainty(found.shaft));
  } else {
    finding.basis = say(said::kNoFitDeclared, Saying(source_said(found.hole.source)),
                        Saying(source_said(found.shaft.source)));
  }
  const bool presses =
      wanted ? wanted->clearance.lower < Length() : found.clearance.lower < Length();
  finding.caution = presses ? Saying(said::kPressCaution) : Saying();
  return finding;
}

}  // namespace spotblue
