#pragma once
// What a finding says, by the keys of its quantities.

#include <limits>
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

}  // namespace spotblue::test
