#include "check/findings/foul_findings.hpp"

#include <cstddef>

#include "check/findings/unseen_findings.hpp"
#include "check/words/words.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said_seats.hpp"

namespace spotblue {
namespace {

const Said& foul_cure(const Foul& foul) {
  if (foul.cause.ends_with("off axis")) {
    return said::kTrueUpBore;
  }
  if (foul.cause == "faces overlap") {
    return said::kFaceOneBack;
  }
  return said::kCutClear;
}

// Of a press fit or a taper off its axis the seat's own overlap is meant and not counted.
Saying shared(const Foul& foul, Length depth) {
  const bool seated = foul.cause.starts_with("press fit") || foul.cause.starts_with("taper");
  return say(seated ? said::kFoulsBeyondSeat : said::kFoulsBy, depth,
             cubic_millimetres(foul.volume), Saying(foul_cure(foul)));
}

Finding judge_foul(const DeclaredJob& declared, const Foul& foul, const AllowedOverlap* allowed) {
  const Length depth = Length::mm(foul.depth);
  const Length same = Length::mm(declared.look->settings.seats.same_length_mm);
  Finding finding;
  finding.kind = "foul";
  finding.about = {declared.names.reference(foul.a), declared.names.reference(foul.b)};
  finding.found = {{"volume", cubic_millimetres(foul.volume)},
                   {"depth", measure(depth)},
                   {"cause", foul.cause},
                   {"volume", foul.exact ? said::kExact : said::kNotProven}};
  if (foul.length) {
    finding.found.push_back({"length", millimetres(*foul.length)});
  }
  if (foul.at) {
    finding.found.insert(finding.found.end(), {{"at_x", millimetres(foul.at->x)},
                                               {"at_y", millimetres(foul.at->y)},
                                               {"at_z", millimetres(foul.at->z)}});
  }
  if (allowed != nullptr) {
    finding.wanted = {{"overlap_most", measure(allowed->depth)}};
    finding.margin = {{"overlap", measure(allowed->depth - depth)}};
  }
  if (foul.undecided()) {
    finding.outcome = Outcome::undecided;
    finding.basis = say(said::kNotDecided, foul.cause);
    finding.advice = said::kLookByEye;
  } else if (allowed != nullptr && depth <= allowed->depth + same) {
    finding.outcome = Outcome::conforming;
    finding.basis = say(said::kAllowedFoul, at_line(allowed->line), allowed->reason,
                        cubic_millimetres(foul.volume), depth);
    finding.advice = said::kAllowed;
  } else {
    finding.outcome = Outcome::nonconforming;
    finding.basis = allowed != nullptr
                        ? say(said::kDeeperThanAllowed, allowed->depth, at_line(allowed->line))
                        : Saying(said::kSolidsShareSpace);
    finding.advice = shared(foul, depth);
  }
  return finding;
}

}  // namespace

std::vector<Finding> foul_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  const std::vector<Foul>& fouls = declared.look->fouls.found;
  findings.reserve(fouls.size());
  for (std::size_t i = 0; i < fouls.size() && may_judge_more(); ++i) {
    findings.push_back(judge_foul(declared, fouls[i], declared.foul_allowed.at(i)));
  }
  return findings;
}

}  // namespace spotblue
