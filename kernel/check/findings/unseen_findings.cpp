#include "check/findings/unseen_findings.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <string>
#include <tuple>
#include <utility>

#include "base/work_limit.hpp"
#include "group/words/said_unseen.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

Finding unseen(std::vector<Reference> about, Saying why, Saying advice) {
  Finding finding;
  finding.kind = kUnseen;
  finding.about = std::move(about);
  finding.outcome = Outcome::undecided;
  finding.found = {{"not_compared", std::move(why)}};
  finding.basis = said::kWhatIsCompared;
  finding.advice = std::move(advice);
  return finding;
}

const Said& more_of_both(bool machine_lacked) {
  return machine_lacked ? said::kCloseOthers : said::kGiveMore;
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

Saying contact_told(const AlikeContacts& alike) {
  const Contact& contact = *alike.first;
  const Saying told =
      contact.gap ? say(said::kComeNear, contact.a_face, contact.b_face, Length::mm(*contact.gap))
                  : say(said::kTouchNotMeasured, contact.why);
  return alike.count > 1 ? told + say(said::kSuchPairs, alike.count) : told;
}

std::vector<Finding> contact_findings(const DeclaredJob& declared) {
  std::vector<Finding> findings;
  for (const AlikeContacts& alike : alike_contacts(declared)) {
    findings.push_back(
        unseen({declared.names.reference(alike.first->a), declared.names.reference(alike.first->b)},
               contact_told(alike), said::kMeasureOnParts));
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
    findings.push_back(unseen({note.about}, say(said::kNotLookedAt, note.text),
                              more_of_both(look.machine_lacked)));
  }
  return findings;
}

Finding rest_not_judged(const DeclaredJob& declared) {
  return unseen({declared.look->model.file.name}, said::kSeveralPartsNot,
                more_of_both(declared.look->machine_lacked));
}

Finding not_all_judged(const Look& look, std::size_t judged) {
  Finding finding = unseen({look.model.file.name}, say(said::kNotAllJudged, judged, why_not_done()),
                           more_of_both(limit_reached() == Bound::machine));
  finding.kind = kNotJudged;
  return finding;
}

std::vector<Finding> lost_findings(const DeclaredJob& declared) {
  std::vector<Finding> findings;
  for (const LostName& lost : declared.lost) {
    const Saying line = lost.line ? say(said::kLineOf, lost.line->number) : Saying();
    Finding finding = unseen(
        {lost.name}, say(said::kNotInWhatArrived, line, lost.list, lost.key, lost.name, lost.why),
        said::kExportWhole);
    finding.basis = said::kPartialIsNeither;
    findings.push_back(std::move(finding));
  }
  return findings;
}

std::vector<Finding> unseen_findings(const DeclaredJob& declared) {
  std::vector<Finding> findings;
  const Look& look = *declared.look;
  for (const Note& note : look.model.not_compared) {
    findings.push_back(unseen({note.about}, note.text, said::kExportAsSolid));
  }
  std::vector<Finding> late = not_looked_at_findings(look);
  std::move(late.begin(), late.end(), std::back_inserter(findings));
  for (const Product& product : look.model.products) {
    if (!product.unsound.empty()) {
      findings.push_back(unseen({product.id}, product.unsound, said::kPutRightAndExport));
    }
  }
  std::vector<Finding> touching = contact_findings(declared);
  std::move(touching.begin(), touching.end(), std::back_inserter(findings));
  return findings;
}

Finding nothing_to_judge(const DeclaredJob& declared) {
  return unseen({declared.look->model.file.name}, said::kNothingToJudge, said::kSeeWhatItHolds);
}

}  // namespace spotblue
