#include "check/findings/unmatched_findings.hpp"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <utility>

#include "check/fits/why_apart.hpp"
#include "check/words/words.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said_seats.hpp"

namespace spotblue {
namespace {

// Trying every hole against every shaft of much repeated parts says no more than the first few.
constexpr std::size_t kMostTried = 64;

template <typename Want>
bool has_any(const std::vector<const Want*>& used, const Want& want) {
  return std::find(used.begin(), used.end(), &want) != used.end();
}

template <typename Measure>
std::optional<Apart> nearest(const NamedFeature& a, const NamedFeature& b, const Measure& measure) {
  std::optional<Apart> best;
  for (std::size_t i = 0; i < std::min(a.refs.size(), kMostTried); ++i) {
    for (std::size_t j = 0; j < std::min(b.refs.size(), kMostTried); ++j) {
      Apart apart = measure(a.refs[i], b.refs[j]);
      if (!best || apart.distance_mm < best->distance_mm) {
        best = std::move(apart);
      }
    }
  }
  return best;
}

Finding not_found(std::string kind, std::vector<Reference> about, Outcome outcome) {
  Finding finding;
  finding.kind = std::move(kind);
  finding.about = std::move(about);
  finding.outcome = outcome;
  finding.basis = said::kLimitsOfSeat;
  return finding;
}

Finding unmatched_fit(const DeclaredJob& declared, const FitWant& want) {
  const Model& model = declared.look->model;
  const SeatSettings& settings = declared.look->settings.seats;
  const NamedFeature hole = declared.names.feature(want.hole, {"fits", "hole", want.line});
  const NamedFeature shaft = declared.names.feature(want.shaft, {"fits", "shaft", want.line});
  const bool round = hole.refs.front().kind == FeatureKind::cylinder;
  const auto apart = nearest(hole, shaft, [&](const FeatureRef& a, const FeatureRef& b) {
    return round ? cylinders_apart(model, a, b, settings) : widths_apart(model, a, b, settings);
  });
  Finding finding = not_found(round ? "radial fit" : "width fit", {want.hole, want.shaft},
                              Outcome::nonconforming);
  finding.found = {{"seat", said::kNone}, {"apart", millimetres(apart->distance_mm)}};
  finding.advice = say(said::kFitNotFound, at_line(want.line), apart->text);
  return finding;
}

Finding unmatched_thread(const ThreadWant& want) {
  Finding finding = not_found("thread", {want.hole, want.screw}, Outcome::undecided);
  finding.found = {{"seat", said::kNone}};
  finding.advice = say(said::kThreadNotFound, at_line(want.line));
  return finding;
}

Finding unmatched_taper(const TaperWant& want) {
  Finding finding = not_found("taper", {want.hole, want.shaft}, Outcome::nonconforming);
  finding.found = {{"seat", said::kNone}};
  finding.advice = say(said::kTaperNotFound, at_line(want.line));
  return finding;
}

// Two faces can be measured even when they make no seat; two parts cannot.
std::optional<Apart> faces_of(const DeclaredJob& declared, const std::string& a,
                              const std::string& b, const Entry& entry) {
  if (declared.names.is_part(a) || declared.names.is_part(b)) {
    return std::nullopt;
  }
  const Model& model = declared.look->model;
  const SeatSettings& settings = declared.look->settings.seats;
  return nearest(declared.names.feature(a, entry), declared.names.feature(b, entry),
                 [&](const FeatureRef& first, const FeatureRef& second) {
                   return faces_apart(model, first, second, settings);
                 });
}

Finding unmatched_axial(const DeclaredJob& declared, const AxialWant& want) {
  const auto apart = faces_of(declared, want.a, want.b, {"wants", "between", want.line});
  Finding finding = not_found("axial gap", {want.a, want.b}, Outcome::nonconforming);
  add_range(finding.wanted, "gap", {want.least, want.greatest});
  finding.found = {{"seat", said::kNone}};
  if (apart) {
    finding.found.push_back({"apart", millimetres(apart->distance_mm)});
    const Length distance = Length::mm(apart->distance_mm);
    // A gap beyond what a seat may have can still be the one that is wanted.
    const bool may_be = distance >= want.least && distance <= want.greatest;
    finding.outcome = may_be ? Outcome::undecided : Outcome::nonconforming;
  }
  finding.advice =
      say(said::kGapNotFound, at_line(want.line), apart ? apart->text : Saying(said::kNoFaceLooks));
  return finding;
}

Finding unmatched_gap(const MeasuredGap& measured) {
  Finding finding = not_found("axial gap", {measured.a, measured.b}, Outcome::undecided);
  finding.found = {{"gap", measure(measured.value)}, {"seat", said::kNone}};
  finding.advice = say(said::kMeasuredGapNotFound, at_line(measured.line));
  return finding;
}

Finding unused_allowance(const AllowedOverlap& allowed) {
  Finding finding = not_found("foul", {allowed.a, allowed.b}, Outcome::conforming);
  finding.found = {{"depth", measure(Length())}};
  finding.wanted = {{"overlap_most", measure(allowed.depth)}};
  finding.basis = say(said::kNothingOverlaps, at_line(allowed.line), allowed.reason);
  finding.advice = said::kAllowanceMayGo;
  return finding;
}

}  // namespace

std::vector<Finding> unmatched_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  const Job& job = *declared.job;
  std::vector<Finding> findings;
  for (const FitWant& want : job.fits) {
    if (!has_any(declared.radial_fits, want) && !has_any(declared.thread_fits, want) &&
        !has_any(declared.width_fits, want)) {
      findings.push_back(unmatched_fit(declared, want));
    }
  }
  for (const ThreadWant& want : job.threads) {
    if (!has_any(declared.thread_wants, want)) {
      findings.push_back(unmatched_thread(want));
    }
  }
  for (const TaperWant& want : job.tapers) {
    if (!has_any(declared.taper_wants, want)) {
      findings.push_back(unmatched_taper(want));
    }
  }
  for (const AxialWant& want : job.axial) {
    if (!has_any(declared.axial_wants, want)) {
      findings.push_back(unmatched_axial(declared, want));
    }
  }
  for (const MeasuredGap& measured : job.measured_gaps) {
    if (!has_any(declared.axial_gaps, measured)) {
      findings.push_back(unmatched_gap(measured));
    }
  }
  for (const AllowedOverlap& allowed : job.allowed) {
    if (!has_any(declared.foul_allowed, allowed) && !has_any(declared.axial_allowed, allowed)) {
      findings.push_back(unused_allowance(allowed));
    }
  }
  return findings;
}

}  // namespace spotblue
