#include "spotblue/geometry/semantic_size.hpp"

#include <fmt/format.h>

namespace spotblue {
namespace {

// A size as a drawing shows it: nanometres are rounding.
std::string figure(double value_mm) {
  std::string text = fmt::format("{:.6f}", value_mm == 0.0 ? 0.0 : value_mm);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.ends_with('.')) {
    text.pop_back();
  }
  return text == "-0" ? "0" : text;
}

std::string deviation_figure(double value_mm) {
  const std::string text = figure(value_mm);
  return text == "0" || text.starts_with('-') ? text : "+" + text;
}

std::string tolerance_figure(const SemanticSize& size) {
  if (!size.tolerance_class.empty()) {
    return size.tolerance_class;
  }
  if (size.deviations) {
    const std::string upper = deviation_figure(size.deviations->upper_mm);
    const std::string lower = deviation_figure(size.deviations->lower_mm);
    return upper.starts_with('+') && lower == "-" + upper.substr(1) ? "+-" + upper.substr(1)
                                                                    : upper + "/" + lower;
  }
  return "";
}

}  // namespace

std::string_view size_characteristic_name(SizeCharacteristic characteristic) {
  return word_of(characteristic);
}

bool is_usable(const SemanticSize& size) {
  return size.doubt.empty() && size.product && !size.features.empty() && size.limits &&
         size.characteristic != SizeCharacteristic::other;
}

std::string entity_text(const SemanticSize& size) {
  return size.entity ? fmt::format(" (#{})", *size.entity) : std::string();
}

std::string semantic_size_text(const SemanticSize& size) {
  std::string text = size.nominal_mm ? figure(*size.nominal_mm) : "";
  const std::string tolerance = tolerance_figure(size);
  if (!tolerance.empty()) {
    text += (text.empty() ? "" : " ") + tolerance;
  } else if (size.limits) {
    text = figure(size.limits->lower_mm) + " to " + figure(size.limits->upper_mm);
  }
  const bool plain = size.characteristic == SizeCharacteristic::diameter ||
                     size.characteristic == SizeCharacteristic::width;
  if (!plain && !text.empty()) {
    text += " " + (size.characteristic == SizeCharacteristic::radius ? "radius" : size.name);
  }
  return text.empty() ? size.name : text;
}

}  // namespace spotblue
