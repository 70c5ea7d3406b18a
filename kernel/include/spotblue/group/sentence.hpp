#pragma once
/// @file
/// What spotblue says, as data: which sentence, and what it is about. Whoever shows one makes the
/// words, in the reader's unit (report/sentence_text.hpp).

#include <concepts>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "spotblue/base/dimension.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue {

/// A sentence of the catalogue (group/words/said_*.hpp): its code, which stays, and its words, with
/// {} where an argument goes.
struct Said {
  std::string_view code, words;
};

/// A part or a feature by the name that a person knows it by, and which it is where the model has
/// it.
struct Reference {
  std::string name;
  std::variant<std::monostate, OccurrenceId, FeatureRef> to{};

  Reference() = default;
  // NOLINTNEXTLINE(google-explicit-constructor): a name is a reference
  Reference(std::string by_name) : name(std::move(by_name)) {}
  // NOLINTNEXTLINE(google-explicit-constructor)
  Reference(const char* by_name) : name(by_name) {}
  Reference(std::string by_name, OccurrenceId part) : name(std::move(by_name)), to(part) {}
  Reference(std::string by_name, const FeatureRef& feature)
      : name(std::move(by_name)), to(feature) {}
  bool operator==(const Reference&) const = default;
  /// Whether that is what it is called.
  template <std::convertible_to<std::string_view> T>
  friend bool operator==(const Reference& reference, const T& called) {
    return reference.name == std::string_view(called);
  }
};

/// A size as it is drawn or ordered, with no more decimals than it needs.
struct DrawnSize {
  Length length;
  bool operator==(const DrawnSize&) const = default;
};

/// A number that has no unit, and how many decimals it is worth.
struct Figure {
  double value = 0.0;
  int decimals = 0;
  bool operator==(const Figure&) const = default;
};

struct Argument;

/// Made, copied and ended where its arguments are known whole.
struct SPOTBLUE_EXPORT Sentence {
  const Said* said = nullptr;
  std::vector<Argument> arguments;

  explicit Sentence(const Said& says);
  Sentence(const Said& says, std::vector<Argument> about);
  Sentence(const Sentence&);
  Sentence(Sentence&&) noexcept;
  Sentence& operator=(const Sentence&);
  Sentence& operator=(Sentence&&) noexcept;
  ~Sentence();
};
/// Whether both say the same of the same.
[[nodiscard]] SPOTBLUE_EXPORT bool operator==(const Sentence& a, const Sentence& b);

/// Sentences that belong together, in the order in which they are told; often one, or none.
class SPOTBLUE_EXPORT Saying {
 public:
  Saying() = default;
  /// Words of somebody else's, told as they are.
  // NOLINTNEXTLINE(google-explicit-constructor): words are a saying
  Saying(std::string words);
  Saying(const char* words) : Saying(std::string(words)) {}  // NOLINT(google-explicit-constructor)
  Saying(const Said& said, std::initializer_list<Argument> arguments);
  Saying(const Said& said);  // NOLINT(google-explicit-constructor)

  [[nodiscard]] const std::vector<Sentence>& sentences() const { return sentences_; }
  [[nodiscard]] bool empty() const { return sentences_.empty(); }
  /// In which it is told unless the reader asks for another.
  LengthUnit unit = LengthUnit::mm;

  Saying& operator+=(const Saying& more);
  friend Saying operator+(Saying first, const Saying& second) { return first += second; }
  friend bool operator==(const Saying&, const Saying&) = default;

 private:
  std::vector<Sentence> sentences_;
};

/// What stands in a sentence. Several sentences in a place are told one after the other.
struct Argument {
  std::variant<Length, Limits, DrawnSize, Measure, Figure, Reference, std::string, Saying> value;

  template <class T>
  Argument(T given) : value(std::move(given)) {}  // NOLINT(google-explicit-constructor)
  // NOLINTNEXTLINE(google-explicit-constructor)
  Argument(int number) : value(Figure{static_cast<double>(number)}) {}
  // NOLINTNEXTLINE(google-explicit-constructor)
  Argument(std::size_t number) : value(Figure{static_cast<double>(number)}) {}
  // NOLINTNEXTLINE(google-explicit-constructor)
  Argument(std::string_view words) : value(std::string(words)) {}
  Argument(const char* words) : value(std::string(words)) {}  // NOLINT(google-explicit-constructor)
  bool operator==(const Argument&) const = default;
};

/// A sentence with its arguments.
template <class... T>
[[nodiscard]] inline Saying say(const Said& said, T&&... arguments) {
  return Saying(said, {Argument(std::forward<T>(arguments))...});
}

/// Which end of a range a number is; a number of its own is neither.
enum class RangeEnd { none, least, greatest };

/// A named number or text of a finding.
struct Quantity {
  std::string name;  ///< "clearance", "force_to_press"
  RangeEnd end = RangeEnd::none;
  std::variant<Measure, Saying> value;

  Quantity(std::string of, Measure number, RangeEnd of_range = RangeEnd::none)
      : name(std::move(of)), end(of_range), value(number) {}
  Quantity(std::string of, Saying text) : name(std::move(of)), value(std::move(text)) {}
  bool operator==(const Quantity&) const = default;
};

/// Its number in the unit of its dimension; null where it is a text.
[[nodiscard]] inline const double* number_in(const Quantity& quantity) {
  const auto* const measure = std::get_if<Measure>(&quantity.value);
  return measure != nullptr ? &measure->value : nullptr;
}
/// Of a text a plain number's.
[[nodiscard]] inline Dimension dimension_of(const Quantity& quantity) {
  const auto* const measure = std::get_if<Measure>(&quantity.value);
  return measure != nullptr ? measure->dimension : Dimension::number;
}
/// Its key in JSON and Python, which ends in the bound and the unit: "clearance_min_mm".
[[nodiscard]] SPOTBLUE_EXPORT std::string key_of(const Quantity& quantity);

}  // namespace spotblue
