#include "group/match/semantic_wants.hpp"

#include <fmt/format.h>

namespace spotblue {

StatedWant stated_want(const SemanticSize& size) {
  const double across = size.characteristic == SizeCharacteristic::radius ? 2.0 : 1.0;
  StatedWant want;
  want.size = &size;
  want.limits = {Length::mm(across * size.limits->lower_mm),
                 Length::mm(across * size.limits->upper_mm)};
  if (size.nominal_mm) {
    want.nominal = Length::mm(across * *size.nominal_mm);
  }
  const std::string where = "stated in the model" + entity_text(size);
  if (size.tolerance_class.empty()) {
    want.basis = "limits of the size, " + where;
  } else {
    want.text = size.tolerance_class;
    want.basis = fmt::format("ISO 286-1:2010, {}, {}", semantic_size_text(size), where);
  }
  return want;
}

FitWant stated_fit(const StatedWant& hole, const StatedWant& shaft) {
  LimitsOfBoth rule;
  rule.hole = hole.limits;
  rule.shaft = shaft.limits;
  rule.hole_nominal = hole.nominal;
  rule.shaft_nominal = shaft.nominal;
  rule.text = hole.text.empty() || shaft.text.empty() ? "" : hole.text + "/" + shaft.text;
  rule.basis = hole.basis == shaft.basis ? hole.basis : hole.basis + "; " + shaft.basis;
  FitWant want;
  want.rule = std::move(rule);
  return want;
}

}  // namespace spotblue
