#pragma once
// What a report tells to make of each feature, and whether it tells one thing.

#include <algorithm>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "group/words/said_end_play.hpp"
#include "group/words/said_making.hpp"
#include "group/words/said_seats.hpp"
#include "group/words/said_suit.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue::test {

/// The sizes that a finding lets a feature, or a length, be made to.
struct AdvisedWindow {
  std::string of, finding;
  Limits window;
};

class Advice {
 public:
  explicit Advice(const std::vector<Finding>& findings) {
    for (const Finding& finding : findings) {
      for (const Sentence& sentence : finding.advice.sentences()) {
        take(sentence, finding);
      }
    }
  }

  [[nodiscard]] const std::vector<AdvisedWindow>& windows() const { return windows_; }

  /// Two windows of one feature that share no value, where the report does not say that what is
  /// wanted of it contradicts itself; empty where there are none.
  [[nodiscard]] std::string contradiction() const {
    for (std::size_t i = 0; i < windows_.size(); ++i) {
      for (std::size_t j = i + 1; j < windows_.size(); ++j) {
        const AdvisedWindow& a = windows_[i];
        const AdvisedWindow& b = windows_[j];
        const bool told = std::ranges::count(contradicted_, a.of) > 0;
        if (a.of == b.of && !told &&
            std::max(a.window.lower, b.window.lower) > std::min(a.window.upper, b.window.upper)) {
          return a.of + " by " + a.finding + " and by " + b.finding;
        }
      }
    }
    return {};
  }

 private:
  static bool is_any(const Sentence& sentence, std::initializer_list<const Said*> of) {
    return std::ranges::any_of(of, [&](const Said* said) { return sentence.said == said; });
  }

  void take(const Sentence& sentence, const Finding& finding) {
    if (is_any(sentence, {&said::kBore, &said::kBoreBeforePressing, &said::kTurn,
                          &said::kTurnBeforePressing, &said::kCutWidth})) {
      add(feature_of(std::get<Reference>(sentence.arguments[0].value).name, finding),
          sentence.arguments[1], finding);
    } else if (is_any(sentence, {&said::kMakeIt})) {
      add(finding.about.front().name, sentence.arguments[0], finding);
    } else if (is_any(sentence, {&said::kMakeLength, &said::kMakeLengthMost})) {
      add(std::get<Reference>(sentence.arguments[0].value).name, sentence.arguments[1], finding);
    } else if (is_any(sentence, {&said::kSuitsNotBoth, &said::kSuitsNotBothThrough,
                                 &said::kKnowMatesCloser})) {
      contradicted_.push_back(finding.about.front().name);
    }
    for (const Argument& argument : sentence.arguments) {
      if (const auto* const inner = std::get_if<Saying>(&argument.value)) {
        for (const Sentence& one : inner->sentences()) {
          take(one, finding);
        }
      }
    }
  }

  /// Of the features that the finding is about, the one of that part.
  static std::string feature_of(const std::string& part, const Finding& finding) {
    for (const Reference& about : finding.about) {
      if (about.name.starts_with(part + ": ")) {
        return about.name;
      }
    }
    return part;
  }

  void add(const std::string& of, const Argument& window, const Finding& finding) {
    if (const auto* const limits = std::get_if<Limits>(&window.value)) {
      windows_.push_back({of, finding.id, *limits});
    }
  }

  std::vector<AdvisedWindow> windows_;
  std::vector<std::string> contradicted_;
};

}  // namespace spotblue::test
