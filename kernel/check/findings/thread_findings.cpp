#include "check/findings/thread_findings.hpp"

#include <cmath>
#include <cstddef>

#include "check/findings/unseen_findings.hpp"
#include "check/fits/judge_fit.hpp"
#include "check/words/words.hpp"
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

Finding as_thread(const DeclaredJob& declared, const Thread& thread) {
  const Length overlap = Length::mm(thread.screw_diameter - thread.hole_diameter);
  const Length lost = out_of_line(thread);
  Finding finding;
  finding.kind = "thread";
  finding.about = {declared.names.reference(thread.hole), declared.names.reference(thread.screw)};
  finding.found = {{"size", thread.size},
                   {"hole", millimetres(thread.hole_diameter)},
                   {"screw", millimetres(thread.screw_diameter)},
                   {"overlap_allowed", measure(overlap)}};
  for (Quantity& quantity : placing(thread)) {
    finding.found.push_back(std::move(quantity));
  }
  finding.basis = say(said::kThreadTable, thread.size, overlap);
  const bool starts = lost <= kStartsByHand;
  finding.outcome = starts ? Outcome::conforming : Outcome::undecided;
  finding.advice =
      starts ? say(said::kScrewInHole, thread.size) : say(said::kScrewOutOfLine, thread.size, lost);
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
                                       : as_thread(declared, threads[i]));
  }
  return findings;
}

}  // namespace spotblue
