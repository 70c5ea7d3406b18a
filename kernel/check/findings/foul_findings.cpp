#include "check/findings/foul_findings.hpp"

#include <fmt/format.h>

#include <cstddef>
#include <string>

#include "check/findings/unseen_findings.hpp"
#include "check/words/words.hpp"
#include "group/words/size_text.hpp"

namespace spotblue {
namespace {

std::string foul_cure(const Foul& foul) {
  if (foul.cause.ends_with("off axis")) {
    return "true up the bore or the seat it hangs on";
  }
  if (foul.cause == "faces overlap") {
    return "face one back, or move the part along";
  }
  return "cut one clear of the other, or move it";
}

// Of a press fit or a taper off its axis the seat's own overlap is meant and not counted.
std::string shared_text(const Foul& foul, Length depth, LengthUnit unit) {
  const bool seated = foul.cause.starts_with("press fit") || foul.cause.starts_with("taper");
  return fmt::format("the parts share {:.4g} mm3, {} deep{}", foul.volume, length_text(depth, unit),
                     seated ? ", beyond what such a seat may overlap" : "");
}

Finding judge_foul(const DeclaredJob& declared, const Foul& foul, const AllowedOverlap* allowed) {
  const LengthUnit unit = declared.job->unit;
  const Length depth = Length::mm(foul.depth);
  const Length same = Length::mm(declared.look->settings.seats.same_length_mm);
  Finding finding;
  finding.kind = "foul";
  finding.about = {declared.names.reference(foul.a), declared.names.reference(foul.b)};
  finding.found = {{"volume", cubic_millimetres(foul.volume)},
                   {"depth", measure(depth)},
                   {"cause", foul.cause},
                   {"volume", foul.exact ? "exact" : "not proven"}};
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
    finding.basis = "Open CASCADE could not decide: " + foul.cause;
    finding.advice = "look at this pair by eye, or mend the solids and check again";
  } else if (allowed != nullptr && depth <= allowed->depth + same) {
    finding.outcome = Outcome::conforming;
    finding.basis =
        fmt::format("allowed{}: {}; hides {:.4g} mm3, {} deep", from_line(allowed->line),
                    allowed->reason, foul.volume, length_text(depth, unit));
    finding.advice = "allowed as declared";
  } else {
    finding.outcome = Outcome::nonconforming;
    finding.basis = allowed != nullptr
                        ? fmt::format("deeper than the {} allowed{}",
                                      length_text(allowed->depth, unit), from_line(allowed->line))
                        : std::string("two solids cannot share space; no allowance declared");
    finding.advice = shared_text(foul, depth, unit) + ": " + foul_cure(foul);
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
