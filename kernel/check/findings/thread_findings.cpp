#include "check/findings/thread_findings.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <cmath>
#include <cstddef>
#include <string>
#include <utility>

#include "check/findings/unseen_findings.hpp"
#include "check/fits/judge_fit.hpp"
#include "check/words/words.hpp"
#include "group/joints/thread_hold.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said_seats.hpp"

namespace spotblue {
namespace {

// A screw this far out of line at either end of its thread no longer starts by hand; common
// practice, no source.
const Length kStartsByHand = Length::mm(0.1);

Length out_of_line(const Thread& thread) {
  return Length::mm(thread.offset + 0.5 * thread.engaged * std::tan(thread.tilt));
}

std::vector<Quantity> placing(const Thread& thread) {
  return {{"offset", millimetres(thread.offset)},
          {"tilt", angle(thread.tilt)},
          {"engaged", millimetres(thread.engaged)}};
}

// DeclaredJob as a plain fit, it is one: the job knows better than the tables.
Finding as_fit(const DeclaredJob& declared, const Thread& thread, const FitWant& want) {
  FitCase fit_case;
  fit_case.kind = "radial fit";
  fit_case.hole = thread.hole;
  fit_case.shaft = thread.screw;
  fit_case.hole_size = Length::mm(thread.hole_diameter);
  fit_case.shaft_size = Length::mm(thread.screw_diameter);
  fit_case.out_of_line = out_of_line(thread);
  fit_case.want = &want;
  fit_case.placing = placing(thread);
  Finding finding = judge_fit(declared, fit_case);
  finding.basis += say(said::kPlainFitOfThread, thread.size);
  return finding;
}

// "M10 and M10x1".
std::string listed(const std::vector<std::string>& sizes) {
  return fmt::format("{}", fmt::join(sizes, " and "));
}

Saying usual_of(const ThreadHold& hold) {
  if (hold.tapped) {
    return say(said::kThreadUsualIn, DrawnSize{hold.usual(*hold.tapped)},
               std::string(word_of(*hold.tapped)));
  }
  const auto usual = [&hold](MaterialKind in) { return DrawnSize{hold.usual(in)}; };
  return say(said::kThreadUsualAnywhere, usual(MaterialKind::steel), usual(MaterialKind::iron),
             usual(MaterialKind::aluminium));
}

// What is wrong with the one thread that a screw has; empty where nothing is.
Saying wrong_thread(const Finding& finding, const ScrewThread& screw) {
  switch (screw.known) {
    case ThreadKnown::declared:
    case ThreadKnown::usual:
      break;
    case ThreadKnown::rare:
      return say(said::kThreadRare, screw.size);
    case ThreadKnown::drawn_as_other:
      return say(said::kThreadDrawnAsOther, screw.size, at_line(screw.want->line), finding.about[0],
                 finding.about[1]);
    case ThreadKnown::apart:
      return say(said::kThreadsApart, listed(screw.sizes));
    case ThreadKnown::contradicted:
      return say(said::kThreadsContradict, listed(screw.sizes));
  }
  return {};
}

Saying too_little(const ScrewThread& screw, const ThreadHold& hold) {
  const DrawnSize engaged{hold.engaged};
  return screw.want != nullptr && screw.want->engaged
             ? say(said::kThreadTooFew, engaged, screw.size, DrawnSize{hold.least},
                   at_line(screw.want->line))
             : say(said::kThreadFew, engaged, screw.size, usual_of(hold));
}

// The worst of what there is to say, and the outcome by it.
void decide(const DeclaredJob& declared, std::size_t number, const ThreadHold& hold,
            Finding& finding) {
  const Thread& thread = declared.look->seats.threads[number];
  const ScrewThread& screw = declared.screw_threads[number];
  const Length lost = out_of_line(thread);
  const bool said_enough = screw.want != nullptr && screw.want->engaged;
  finding.outcome = Outcome::undecided;
  finding.advice = wrong_thread(finding, screw);
  if (screw.known == ThreadKnown::contradicted || (!hold.enough && said_enough)) {
    finding.outcome = Outcome::nonconforming;
  }
  if (!hold.enough) {
    finding.advice += too_little(screw, hold);
  }
  if (lost > kStartsByHand) {
    finding.advice += say(said::kScrewOutOfLine, screw.size, lost);
  }
  if (finding.advice.empty()) {
    finding.outcome = Outcome::conforming;
    finding.advice = say(said::kScrewInHole, screw.size);
    if (said_enough) {
      finding.advice += say(said::kThreadEnough, DrawnSize{hold.engaged}, at_line(screw.want->line),
                            screw.want->reason);
    }
  }
}

Finding as_thread(const DeclaredJob& declared, std::size_t number) {
  const Thread& thread = declared.look->seats.threads[number];
  const ScrewThread& screw = declared.screw_threads[number];
  const ThreadHold hold = thread_hold(declared, number);
  const Length overlap = Length::mm(thread.screw_diameter - thread.hole_diameter);
  Finding finding;
  finding.kind = "thread";
  finding.about = {declared.names.reference(thread.hole), declared.names.reference(thread.screw)};
  finding.wanted = {{"engaged", measure(hold.least), RangeEnd::least}};
  finding.found = {{"size", screw.size},
                   {"hole", millimetres(thread.hole_diameter)},
                   {"screw", millimetres(thread.screw_diameter)},
                   {"overlap_allowed", measure(overlap)}};
  for (Quantity& quantity : placing(thread)) {
    finding.found.push_back(std::move(quantity));
  }
  finding.margin = {{"engaged", measure(hold.engaged - hold.least)}};
  finding.basis = say(said::kThreadTable, screw.size, overlap);
  if (screw.known == ThreadKnown::declared && screw.want != nullptr) {
    finding.basis += say(said::kThreadDeclared, screw.size, at_line(screw.want->line));
  }
  finding.basis += Saying(said::kEngagementUsual);
  decide(declared, number, hold, finding);
  return finding;
}

}  // namespace

std::vector<Finding> thread_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  const std::vector<Thread>& threads = declared.look->seats.threads;
  findings.reserve(threads.size());
  for (std::size_t i = 0; i < threads.size() && may_judge_more(); ++i) {
    const FitWant* want = declared.thread_fits.at(i);
    findings.push_back(want != nullptr ? as_fit(declared, threads[i], *want)
                                       : as_thread(declared, i));
  }
  return findings;
}

}  // namespace spotblue
