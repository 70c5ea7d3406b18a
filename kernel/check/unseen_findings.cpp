#include <iterator>
#include <string>
#include <utility>

#include "check/seat_findings.hpp"

namespace spotblue {
namespace {

Finding unseen(std::vector<std::string> about, std::string why, std::string advice) {
  Finding finding;
  finding.kind = "unseen";
  finding.about = std::move(about);
  finding.outcome = Outcome::undecided;
  finding.found = {{"not_compared", std::move(why)}};
  finding.basis = "closed solids are compared, and fits of planes, cylinders and cones measured";
  finding.advice = std::move(advice);
  return finding;
}

}  // namespace

std::vector<Finding> not_looked_at_findings(const Look& look) {
  std::vector<Finding> findings;
  for (const Note& note : look.not_looked_at) {
    findings.push_back(
        unseen({note.about}, "not looked at: " + note.text, "give it more time: --seconds"));
  }
  return findings;
}

Finding rest_not_judged(const DeclaredJob& declared) {
  return unseen({declared.look->model.file.name},
                "what several parts do together, and what matched nothing: not all was looked at",
                "give it more time: --seconds");
}

std::vector<Finding> unseen_findings(const DeclaredJob& declared) {
  std::vector<Finding> findings;
  const Look& look = *declared.look;
  for (const Note& note : look.model.not_compared) {
    findings.push_back(
        unseen({note.about}, note.text, "export it as a solid, or look at what it touches by eye"));
  }
  std::vector<Finding> late = not_looked_at_findings(look);
  std::move(late.begin(), late.end(), std::back_inserter(findings));
  for (const Product& product : look.model.products) {
    if (!product.closed) {
      findings.push_back(unseen({product.id},
                                "its shell is open: what is inside and what outside is not known",
                                "close it where it was drawn and export it again"));
    }
  }
  for (const auto& [a, b] : look.clash.not_measured) {
    findings.push_back(
        unseen({declared.names.id_of(a), declared.names.id_of(b)},
               "a free-form face of one comes near a round or free-form face of the "
               "other: whether they fit there is not measured",
               "measure it on the parts, or draw it with planes, cylinders and cones"));
  }
  return findings;
}

Finding nothing_to_judge(const DeclaredJob& declared) {
  return unseen({declared.look->model.file.name},
                "nothing to judge: no two parts seat, screw or clash, and nothing is wanted",
                "see what the file holds: spotblue look FILE");
}

}  // namespace spotblue
