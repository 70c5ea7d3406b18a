#pragma once
// What a finding says, by the keys of its quantities.

#include <limits>
#include <regex>
#include <string>
#include <vector>

#include "spotblue/check/finding.hpp"
#include "spotblue/report/sentence_text.hpp"

namespace spotblue::test {

/// The number of a quantity by its key; fails the test with NaN when there is none.
inline double number(const std::vector<Quantity>& quantities, const std::string& key) {
  for (const Quantity& quantity : quantities) {
    if (key_of(quantity) == key && number_in(quantity) != nullptr) {
      return *number_in(quantity);
    }
  }
  return std::numeric_limits<double>::quiet_NaN();
}

/// Of the parts and features that a finding is about.
inline std::vector<std::string> names(const std::vector<Reference>& references) {
  std::vector<std::string> all;
  for (const Reference& one : references) {
    all.push_back(one.name);
  }
  return all;
}

/// The words of a quantity that is no number.
inline std::string worded(const Quantity& quantity) {
  const auto* const saying = std::get_if<Saying>(&quantity.value);
  return saying != nullptr ? text_of(*saying) : std::string();
}
inline std::string worded(const std::vector<Quantity>& quantities, const std::string& key) {
  for (const Quantity& quantity : quantities) {
    if (key_of(quantity) == key) {
      return worded(quantity);
    }
  }
  return "";
}

/// Every text of a finding, a line each, as it is told to who works in that unit.
inline std::string all_words(const Finding& finding, LengthUnit unit) {
  std::string all;
  for (const auto* quantities : {&finding.wanted, &finding.found, &finding.margin}) {
    for (const Quantity& quantity : *quantities) {
      if (const auto* const saying = std::get_if<Saying>(&quantity.value)) {
        all += text_of(*saying, unit) + '\n';
      }
    }
  }
  for (const Saying* saying : {&finding.basis, &finding.advice, &finding.caution}) {
    all += text_of(*saying, unit) + '\n';
  }
  return all;
}
/// The first metric unit that an inch job's reader would meet in it; empty where there is none.
inline std::string metric_in(const Finding& finding) {
  static const std::regex metric(R"(\b(mm[23]?|k?N|N m|Nm|MPa|um|deg C|m/s)\b)");
  const std::string words = all_words(finding, LengthUnit::inch);
  std::smatch found;
  return std::regex_search(words, found, metric) ? found.str() + " in: " + words : std::string();
}

}  // namespace spotblue::test
