#pragma once
/// @file
/// Further kinds of field of a Record: angles in degrees, limits as pairs.

#include <optional>
#include <utility>

#include "python/values/numbers.hpp"
#include "python/values/record.hpp"
#include "spotblue/base/angle.hpp"

namespace spotblue::python {

using LimitsMm = std::pair<double, double>;

/// An angle held in rad, in degrees.
template <class T>
void degrees_field(Record<T>& record, const char* name, double T::*member, const char* doc) {
  record.computed(
      name, [member](const T& value) { return spotblue::degrees(value.*member); },
      [member](T& value, double given) { value.*member = radians(given); }, doc);
}

[[nodiscard]] inline LimitsMm to_pair(const Limits& limits) {
  return {limits.lower.in_mm(), limits.upper.in_mm()};
}
/// @throws Error bad_input when the limits are reversed or not finite.
[[nodiscard]] Limits from_pair(const LimitsMm& pair);

template <class T>
void limits_field(Record<T>& record, const char* name, Limits T::*member, const char* doc) {
  record.computed(
      name, [member](const T& value) { return to_pair(value.*member); },
      [member](T& value, const LimitsMm& given) { value.*member = from_pair(given); }, doc);
}
template <class T>
void maybe_limits(Record<T>& record, const char* name, std::optional<Limits> T::*member,
                  const char* doc) {
  record.computed(
      name,
      [member](const T& value) {
        const auto& limits = value.*member;
        return limits ? std::optional(to_pair(*limits)) : std::nullopt;
      },
      [member](T& value, const std::optional<LimitsMm>& given) {
        value.*member = given ? std::optional(from_pair(*given)) : std::nullopt;
      },
      doc);
}

}  // namespace spotblue::python
