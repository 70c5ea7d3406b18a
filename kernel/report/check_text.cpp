#include "spotblue/report/check_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <sstream>
#include <string_view>
#include <vector>

#include "group/match/names.hpp"
#include "report/finding_text.hpp"
#include "report/fitted_text.hpp"
#include "report/look_notes.hpp"
#include "report/text_words.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/job/feature_name.hpp"
#include "spotblue/report/sentence_text.hpp"

namespace spotblue {
namespace {

constexpr std::size_t kFindingIndent = 4;
constexpr std::size_t kLineWidth = 100;
constexpr std::size_t kIdsShown = 4;  // ids of alike findings named before "and 12 more"

/// Findings that read alike; the first one is shown.
struct Alike {
  std::vector<const Finding*> findings;
};

std::vector<Alike> folded(const std::vector<Finding>& findings, Outcome outcome) {
  std::map<std::string, std::size_t> place_of;
  std::vector<Alike> groups;
  for (const Finding& finding : findings) {
    if (finding.outcome != outcome) {
      continue;
    }
    const auto [place, fresh] = place_of.try_emplace(alike_key(finding), groups.size());
    if (fresh) {
      groups.emplace_back();
    }
    groups[place->second].findings.push_back(&finding);
  }
  return groups;
}

// Word and text, wrapped with the further lines under the first.
std::string reason_line(std::string_view word, const std::string& text, std::size_t width) {
  if (text.empty()) {
    return "";
  }
  std::string lines = fmt::format("{:{}}{:8}", "", kFindingIndent, word);
  const std::size_t margin = shown_width(lines) + 2;
  const std::size_t most = width == 0 ? kLineWidth : std::min(width, kLineWidth);
  std::size_t column = margin - 1;
  lines += ' ';
  std::istringstream words(text);
  for (std::string next; words >> next;) {
    const std::size_t letters = shown_width(next) + 1;
    if (column + letters > most && column >= margin) {
      lines += '\n' + std::string(margin - 1, ' ');
      column = margin - 1;
    }
    lines += ' ' + next;
    column += letters;
  }
  return lines + '\n';
}

class CheckText {
 public:
  CheckText(const CheckResult& result, const TextStyle& style)
      : result_(result), style_(style), paint_(style.colour) {}

  [[nodiscard]] std::string text() {
    std::string text = heading();
    for (const Outcome outcome :
         {Outcome::nonconforming, Outcome::undecided, Outcome::conforming}) {
      for (const Alike& group : folded(result_.findings, outcome)) {
        text += group_text(group) + '\n';
      }
    }
    return fitted_text(
        text + notes_text(result_.look, style_.unit, paint_, style_.width) + summary(),
        style_.width);
  }

 private:
  [[nodiscard]] std::string heading() const {
    const Job& job = result_.job;
    std::string text;
    if (!job.title.empty()) {
      text += paint_.heading(shown_text(job.title)) + '\n';
    }
    if (!job.file.empty()) {
      text += fmt::format("job {}, ", shown_text(job.file));
    }
    return text + fmt::format(
                      "model {}; lengths in {}, clearance positive, interference "
                      "negative\n\n",
                      shown_text(result_.look.model.file.name), unit_word(style_.unit));
  }

  [[nodiscard]] std::string group_text(const Alike& group) {
    const Finding& first = *group.findings.front();
    std::string text = fmt::format(
        "{}  {}  {}", paint_.outcome(first.outcome, std::string(outcome_name(first.outcome))),
        first.id, first.kind);
    if (group.findings.size() > 1) {
      text += "  x " + count_text(group.findings.size());
    }
    text += "\n  " + about_text(first) + '\n';
    text += quantities_text(first, style_.unit, kFindingIndent, style_.width);
    text += reason_line("alike", others_text(group), style_.width);
    text += reason_line("basis", shown_text(text_of(first.basis, style_.unit)), style_.width);
    text += reason_line("advice", shown_text(text_of(first.advice, style_.unit)), style_.width);
    return text + reason_line("caution", caution_text(first), style_.width);
  }

  [[nodiscard]] std::string about_text(const Finding& finding) const {
    std::string text;
    for (const Reference& about : finding.about) {
      text += text.empty() ? "" : "  with  ";
      text += shown_text(about.name) + size_beside(about);
    }
    return text;
  }

  [[nodiscard]] std::string size_beside(const Reference& about) const {
    const FeatureRef* feature = std::get_if<FeatureRef>(&about.to);
    const std::string size =
        feature == nullptr
            ? std::string()
            : feature_size_text(sized_feature_name(result_.look.model, *feature), style_.unit);
    return size.empty() ? size : fmt::format(" ({})", size);
  }

  [[nodiscard]] static std::string others_text(const Alike& group) {
    std::string text;
    for (std::size_t i = 1; i < group.findings.size() && i <= kIdsShown; ++i) {
      text += (i == 1 ? "" : ", ") + group.findings[i]->id;
    }
    if (group.findings.size() > kIdsShown + 1) {
      text += fmt::format(" and {} more", count_text(group.findings.size() - 1 - kIdsShown));
    }
    return text;
  }

  // In full where it first stands; after that by the finding that has it.
  [[nodiscard]] std::string caution_text(const Finding& finding) {
    if (finding.caution.empty()) {
      return "";
    }
    const std::string caution = shown_text(text_of(finding.caution, style_.unit));
    const auto [place, fresh] = caution_at_.try_emplace(caution, finding.id);
    return fresh ? caution : "as for " + place->second;
  }

  [[nodiscard]] std::string summary() const {
    const OutcomeCount count = count_outcomes(result_.findings);
    const auto part = [this](Outcome outcome, int number) {
      const std::string words =
          fmt::format("{} {}", count_text(static_cast<std::size_t>(number)), outcome_name(outcome));
      return number > 0 ? paint_.outcome(outcome, words) : words;
    };
    return fmt::format("{}: {}, {}, {}\n", counted(result_.findings.size(), "finding", "findings"),
                       part(Outcome::nonconforming, count.nonconforming),
                       part(Outcome::undecided, count.undecided),
                       part(Outcome::conforming, count.conforming));
  }

  const CheckResult& result_;
  const TextStyle& style_;
  Paint paint_;
  std::map<std::string, std::string> caution_at_;
};

}  // namespace

std::string check_text(const CheckResult& result, const TextStyle& style) {
  return CheckText(result, style).text();
}

}  // namespace spotblue
