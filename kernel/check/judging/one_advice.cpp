#include "check/judging/one_advice.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <tuple>
#include <variant>

#include "group/words/said_making.hpp"

namespace spotblue {
namespace {

using FeatureKey = std::tuple<OccurrenceId, FeatureKind, std::size_t>;

bool tells_window(const Sentence& sentence) {
  constexpr std::array made{&said::kBore, &said::kBoreBeforePressing, &said::kTurn,
                            &said::kTurnBeforePressing, &said::kCutWidth};
  return std::ranges::find(made, sentence.said) != made.end();
}

// Of the features that the finding is about, the one of the part that is to be made.
std::optional<FeatureKey> feature_made(const Sentence& sentence, const Finding& finding) {
  const auto* const part = std::get_if<Reference>(&sentence.arguments.front().value);
  const auto* const occurrence = part != nullptr ? std::get_if<OccurrenceId>(&part->to) : nullptr;
  for (const Reference& about : finding.about) {
    const auto* const feature = std::get_if<FeatureRef>(&about.to);
    if (occurrence != nullptr && feature != nullptr && feature->occurrence == *occurrence) {
      return FeatureKey{feature->occurrence, feature->kind, feature->index};
    }
  }
  return std::nullopt;
}

using Windows = std::map<FeatureKey, Limits>;

void take_windows(const Saying& saying, const Finding& finding, Windows& windows) {
  for (const Sentence& sentence : saying.sentences()) {
    const auto feature = tells_window(sentence) ? feature_made(sentence, finding) : std::nullopt;
    if (feature) {
      windows.emplace(*feature, std::get<Limits>(sentence.arguments[1].value));
    }
    for (const Argument& argument : sentence.arguments) {
      if (const auto* const inner = std::get_if<Saying>(&argument.value)) {
        take_windows(*inner, finding, windows);
      }
    }
  }
}

// The most arguments that a sentence has which tells of a window or holds one that does.
constexpr std::size_t kMostArguments = 4;

Saying made_of(const Sentence& sentence) {
  const std::vector<Argument>& is = sentence.arguments;
  switch (is.size()) {
    case 0:
      return *sentence.said;
    case 1:
      return {*sentence.said, {is[0]}};
    case 2:
      return {*sentence.said, {is[0], is[1]}};
    case 3:
      return {*sentence.said, {is[0], is[1], is[2]}};
    default:
      break;
  }
  return {*sentence.said, {is[0], is[1], is[2], is[3]}};
}

Saying with_windows(const Saying& saying, const Finding& finding, const Windows& windows) {
  Saying told;
  told.unit = saying.unit;
  for (Sentence sentence : saying.sentences()) {
    if (sentence.arguments.size() > kMostArguments) {
      return saying;
    }
    const auto feature = tells_window(sentence) ? feature_made(sentence, finding) : std::nullopt;
    if (feature && windows.contains(*feature)) {
      sentence.arguments[1] = Argument(windows.at(*feature));
    }
    for (Argument& argument : sentence.arguments) {
      if (auto* const inner = std::get_if<Saying>(&argument.value)) {
        *inner = with_windows(*inner, finding, windows);
      }
    }
    told += made_of(sentence);
  }
  return told;
}

bool share_a_size(Limits a, Limits b) { return a.lower <= b.upper && b.lower <= a.upper; }

// "make_hole" and "make_shaft" of a fit, which is about the hole first.
void tell_in_numbers(const FeatureKey& feature, Limits window, Finding& finding) {
  const auto* const hole =
      finding.about.empty() ? nullptr : std::get_if<FeatureRef>(&finding.about.front().to);
  const bool of_hole =
      hole != nullptr && FeatureKey{hole->occurrence, hole->kind, hole->index} == feature;
  for (Quantity& quantity : finding.wanted) {
    if (quantity.name == (of_hole ? "make_hole" : "make_shaft")) {
      quantity.value = measure(quantity.end == RangeEnd::least ? window.lower : window.upper);
    }
  }
}

}  // namespace

void tell_one_window(std::vector<Finding>& findings) {
  Windows windows;
  for (const Finding& finding : findings) {
    if (finding.kind == "make to suit") {
      take_windows(finding.advice, finding, windows);
    }
  }
  for (Finding& finding : findings) {
    Windows told;
    take_windows(finding.advice, finding, told);
    std::erase_if(told, [&windows](const auto& one) {
      const auto suits = windows.find(one.first);
      return suits == windows.end() || share_a_size(suits->second, one.second);
    });
    if (!told.empty() && finding.kind != "make to suit") {
      finding.advice = with_windows(finding.advice, finding, windows);
      for (const auto& [feature, window] : told) {
        tell_in_numbers(feature, windows.at(feature), finding);
      }
    }
  }
}

}  // namespace spotblue
