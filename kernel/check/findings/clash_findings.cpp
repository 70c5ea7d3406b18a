#include "check/findings/clash_findings.hpp"

#include <fmt/format.h>

#include <cstddef>
#include <string>

#include "check/findings/unseen_findings.hpp"
#include "check/words/words.hpp"
#include "group/words/size_text.hpp"

namespace spotblue {
namespace {

std::string clash_cure(const Clash& clash) {
  if (clash.cause.ends_with("off axis")) {
    return "true up the bore or the seat it hangs on";
  }
  if (clash.cause == "faces overlap") {
    return "face one back, or move the part along";
  }
  return "cut one clear of the other, or move it";
}

// Of a press fit or a taper off its axis the seat's own overlap is meant and not counted.
std::string shared_text(const Clash& clash, Length depth, LengthUnit unit) {
  const bool seated = clash.cause.starts_with("press fit") || clash.cause.starts_with("taper");
  return fmt::format("the parts share {:.4g} mm3, {} deep{}", clash.volume,
                     length_text(depth, unit),
                     seated ? ", beyond what such a seat may overlap" : "");
}

Finding judge_clash(const DeclaredJob& declared, const Clash& clash,
                    const AllowedOverlap* allowed) {
  const LengthUnit unit = declared.job->unit;
  const Length depth = Length::mm(clash.depth);
  const Length same = Length::mm(declared.look->settings.seats.same_length_mm);
  Finding finding;
  finding.kind = "clash";
  finding.about = {declared.names.id_of(clash.a), declared.names.id_of(clash.b)};
  finding.found = {{"volume_mm3", clash.volume},
                   millimetres("depth_mm", depth),
                   {"cause", clash.cause},
                   {"volume", clash.exact ? "exact" : "not proven"}};
  if (clash.length) {
    finding.found.push_back(millimetres("length_mm", Length::mm(*clash.length)));
  }
  if (clash.at) {
    finding.found.insert(
        finding.found.end(),
        {{"at_x_mm", clash.at->x}, {"at_y_mm", clash.at->y}, {"at_z_mm", clash.at->z}});
  }
  if (allowed != nullptr) {
    finding.wanted = {millimetres("overlap_most_mm", allowed->depth)};
    finding.margin = {millimetres("overlap_mm", allowed->depth - depth)};
  }
  if (clash.undecided()) {
    finding.outcome = Outcome::undecided;
    finding.basis = "Open CASCADE could not decide: " + clash.cause;
    finding.advice = "look at this pair by eye, or mend the solids and check again";
  } else if (allowed != nullptr && depth <= allowed->depth + same) {
    finding.outcome = Outcome::conforming;
    finding.basis =
        fmt::format("allowed{}: {}; hides {:.4g} mm3, {} deep", from_line(allowed->line),
                    allowed->reason, clash.volume, length_text(depth, unit));
    finding.advice = "allowed as declared";
  } else {
    finding.outcome = Outcome::nonconforming;
    finding.basis = allowed != nullptr
                        ? fmt::format("deeper than the {} allowed{}",
                                      length_text(allowed->depth, unit), from_line(allowed->line))
                        : std::string("two solids cannot share space; no allowance declared");
    finding.advice = shared_text(clash, depth, unit) + ": " + clash_cure(clash);
  }
  return finding;
}

}  // namespace

std::vector<Finding> clash_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  const std::vector<Clash>& clashes = declared.look->clash.clashes;
  findings.reserve(clashes.size());
  for (std::size_t i = 0; i < clashes.size() && may_judge_more(); ++i) {
    findings.push_back(judge_clash(declared, clashes[i], declared.clash_allowed.at(i)));
  }
  return findings;
}

}  // namespace spotblue
