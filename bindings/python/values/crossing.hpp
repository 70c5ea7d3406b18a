#pragma once
/// @file
/// How a member of the kernel's values crosses into Python where it is something else there: a
/// length is a number of mm, limits of a pair are (lower, upper), a view of text is a text.

#include <algorithm>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "spotblue/base/interval.hpp"
#include "spotblue/base/length.hpp"

namespace spotblue::python {

/// A text that lives as long as the program, as those of the kernel's tables do.
[[nodiscard]] std::string_view kept_text(const std::string& text);

using LimitsMm = std::pair<double, double>;
[[nodiscard]] inline LimitsMm to_pair(const Limits& limits) {
  return {limits.lower.in_mm(), limits.upper.in_mm()};
}
/// @throws Error bad_input when the limits are reversed or not finite.
[[nodiscard]] Limits from_pair(const LimitsMm& pair);

/// What crosses as it is has no more than this.
template <class M>
struct Crossing {};

template <>
struct Crossing<Length> {
  static double out(Length held) { return held.in_mm(); }
  static Length in(double given) { return Length::mm(given); }
};

template <>
struct Crossing<Diameter> {
  static double out(Diameter held) { return held.in_mm(); }
  static Diameter in(double given) { return Diameter(Length::mm(given)); }
};

template <>
struct Crossing<std::string_view> {
  static std::string out(std::string_view held) { return std::string(held); }
  static std::string_view in(const std::string& given) { return kept_text(given); }
};

/// Limits of a pair; as a member by itself they are a record.
struct LimitsAsPair {
  static LimitsMm out(const Limits& held) { return to_pair(held); }
  static Limits in(const LimitsMm& given) { return from_pair(given); }
};

template <>
struct Crossing<std::variant<std::string, Limits>> {
  using Held = std::variant<std::string, Limits>;
  using Given = std::variant<std::string, LimitsMm>;
  static Given out(const Held& held) {
    const auto* const limits = std::get_if<Limits>(&held);
    return limits != nullptr ? Given(to_pair(*limits)) : Given(std::get<std::string>(held));
  }
  static Held in(const Given& given) {
    const auto* const pair = std::get_if<LimitsMm>(&given);
    return pair != nullptr ? Held(from_pair(*pair)) : Held(std::get<std::string>(given));
  }
};

/// Nothing, or what a way of crossing makes.
template <class Way, class Held>
struct MaybeCrossing {
  using Out = decltype(Way::out(std::declval<Held>()));
  static std::optional<Out> out(const std::optional<Held>& held) {
    return held ? std::optional<Out>(Way::out(*held)) : std::nullopt;
  }
  static std::optional<Held> in(const std::optional<Out>& given) {
    return given ? std::optional<Held>(Way::in(*given)) : std::nullopt;
  }
};

template <>
struct Crossing<std::optional<Length>> : MaybeCrossing<Crossing<Length>, Length> {};

template <>
struct Crossing<std::vector<Length>> {
  static std::vector<double> out(const std::vector<Length>& held) {
    std::vector<double> lengths;
    std::transform(held.begin(), held.end(), std::back_inserter(lengths), Crossing<Length>::out);
    return lengths;
  }
  static std::vector<Length> in(const std::vector<double>& given) {
    std::vector<Length> lengths;
    std::transform(given.begin(), given.end(), std::back_inserter(lengths), Length::mm);
    return lengths;
  }
};

/// (low, high).
template <>
struct Crossing<Interval> {
  static std::pair<double, double> out(const Interval& held) { return {held.low, held.high}; }
};
template <>
struct Crossing<std::optional<Interval>> {
  static std::optional<std::pair<double, double>> out(const std::optional<Interval>& held) {
    return held ? std::optional(Crossing<Interval>::out(*held)) : std::nullopt;
  }
};

/// Each a (low, high).
template <>
struct Crossing<std::vector<Interval>> {
  static std::vector<std::pair<double, double>> out(const std::vector<Interval>& held) {
    std::vector<std::pair<double, double>> stretches;
    stretches.reserve(held.size());
    for (const auto& [low, high] : held) {
      stretches.emplace_back(low, high);
    }
    return stretches;
  }
};

/// The way of a pair(): Limits, or none.
template <class M>
struct PairCrossing;
template <>
struct PairCrossing<Limits> : LimitsAsPair {};
template <>
struct PairCrossing<std::optional<Limits>> : MaybeCrossing<LimitsAsPair, Limits> {};

/// Whether a member's type is another one in Python.
template <class M>
concept Crosses = requires(const M& held) {
  Crossing<M>::out(held);
};

}  // namespace spotblue::python
