#include "check/findings/unseen_findings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <string>
#include <tuple>
#include <utility>

#include "base/work_limit.hpp"
#include "group/words/size_text.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

Finding unseen(std::vector<Reference> about, std::string why, std::string advice) {
  Finding finding;
  finding.kind = kUnseen;
  finding.about = std::move(about);
  finding.outcome = Outcome::undecided;
  finding.found = {{"not_compared", std::move(why)}};
  finding.basis = "closed solids are compared, and fits of planes, cylinders and cones measured";
  finding.advice = std::move(advice);
  return finding;
}

std::string more_of_both(bool machine_lacked) {
  return machine_lacked ? "close other programs and try again"
                        : "give it more time or memory: --seconds, --memory";
}

// What a finding takes, and again in a report. Choice of this program, no source.
constexpr double kBytesPerFinding = 2500.0;

// Contacts that read alike: the same two parts, at the same faces, as far apart.
struct AlikeContacts {
  const Contact* first = nullptr;
  std::size_t count = 0;
};

std::vector<AlikeContacts> alike_contacts(const DeclaredJob& declared) {
  const auto& occurrences = declared.look->model.occurrences;
  const std::vector<Contact>& contacts = declared.look->fouls.contacts;
  const double same = declared.look->settings.seats.same_length_mm;
  std::map<std::tuple<std::size_t, std::size_t, std::string, std::string, long long>, std::size_t>
      known;
  std::vector<AlikeContacts> found;
  for (std::size_t i = 0; i < contacts.size(); ++i) {
    if (declared.contact_told[i]) {
      continue;
    }
    const Contact& contact = contacts[i];
    const long long steps = contact.gap ? std::llround(*contact.gap / (10.0 * same)) : -1;
    const auto [entry, is_new] =
        known.try_emplace({occurrences[contact.a].product, occurrences[contact.b].product,
                           contact.a_face, contact.b_face, steps},
                          found.size());
    if (is_new) {
      found.push_back({&contact, 0});
    }
    ++found[entry->second].count;
  }
  return found;
}

std::string contact_text(const AlikeContacts& alike, LengthUnit unit) {
  const Contact& contact = *alike.first;
  std::string text =
      contact.gap
          ? fmt::format("{} and {} come within {} of each other where no seat says how they bear",
                        contact.a_face, contact.b_face, length_text(Length::mm(*contact.gap), unit))
          : "whether they touch is not measured: " + contact.why;
  return alike.count > 1 ? fmt::format("{}; {} such pairs", text, alike.count) : text;
}

std::vector<Finding> contact_findings(const DeclaredJob& declared) {
  std::vector<Finding> findings;
  for (const AlikeContacts& alike : alike_contacts(declared)) {
    findings.push_back(
        unseen({declared.names.reference(alike.first->a), declared.names.reference(alike.first->b)},
               contact_text(alike, declared.job->unit),
               "measure it on the parts, or draw it with planes, cylinders and cones that seat"));
  }
  return findings;
}

}  // namespace

bool may_judge_more() {
  promise_memory(kBytesPerFinding);
  return done_within_limits(stop_if_asked);
}

bool lacks_parts(const Look& look) {
  const List<Product>& products = look.model.products;
  return !look.not_looked_at.empty() &&
         (products.empty() || std::any_of(products.begin(), products.end(),
                                          [](const Product& one) { return is_empty(one.box); }));
}

std::vector<Finding> not_looked_at_findings(const Look& look) {
  std::vector<Finding> findings;
  for (const Note& note : look.not_looked_at) {
    findings.push_back(
        unseen({note.about}, "not looked at: " + note.text, more_of_both(look.machine_lacked)));
  }
  return findings;
}

Finding rest_not_judged(const DeclaredJob& declared) {
  return unseen({declared.look->model.file.name},
                "what several parts do together, and what matched nothing: not all was looked at",
                more_of_both(declared.look->machine_lacked));
}

Finding not_all_judged(const Look& look, std::size_t judged) {
  Finding finding =
      unseen({look.model.file.name},
             fmt::format("not all that was found is judged, {} findings were made: {}", judged,
                         why_not_done()),
             more_of_both(limit_reached() == Bound::machine));
  finding.kind = kNotJudged;
  return finding;
}

std::vector<Finding> lost_findings(const DeclaredJob& declared) {
  std::vector<Finding> findings;
  for (const LostName& lost : declared.lost) {
    const std::string line = lost.line ? fmt::format("line {}, ", *lost.line) : std::string();
    Finding finding =
        unseen({lost.name},
               fmt::format("{}{}, {}: no \"{}\" is in what arrived of the model; {}", line,
                           lost.list, lost.key, lost.name, lost.why),
               "export the model whole and judge again; if the name is mistyped, correct it");
    finding.basis = "what a partial model lacks is neither well nor bad";
    findings.push_back(std::move(finding));
  }
  return findings;
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
    if (!product.unsound.empty()) {
      findings.push_back(unseen({product.id}, product.unsound,
                                "put it right where it was drawn and export it again"));
    }
  }
  std::vector<Finding> touching = contact_findings(declared);
  std::move(touching.begin(), touching.end(), std::back_inserter(findings));
  return findings;
}

Finding nothing_to_judge(const DeclaredJob& declared) {
  return unseen({declared.look->model.file.name},
                "nothing to judge: no two parts seat, screw or foul, and nothing is wanted",
                "see what the file holds: spotblue look FILE");
}

}  // namespace spotblue
