#pragma once
// The rules that arguments of the layers of numbers keep, as errors bad_input whose place names the
// argument: of one number, and of a whole value by its description (describe.hpp).

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/members.hpp"

namespace spotblue {

// No size, force, stress or speed of a machine part is greater, whatever its unit, and none that
// must be over 0 is less; so no formula here leaves the numbers there are. Choice of this program,
// no source.
inline constexpr double kGreatestNumber = 1e12;
inline constexpr double kLeastNumber = 1e-12;

/// @throws Error bad_input unless value is finite and > 0.
void require_positive(double value, const std::string& argument, std::string_view unit);
/// @throws Error bad_input unless value is finite and >= 0.
void require_not_negative(double value, const std::string& argument, std::string_view unit);
/// @throws Error bad_input unless value is finite.
void require_finite(double value, const std::string& argument, std::string_view unit);
/// @throws Error bad_input outside kTemperature_c.
void require_temperature(double value_c, const std::string& argument);
/// @throws Error bad_input unless both are finite and lower <= upper.
void require_limits(const Limits& limits, const std::string& argument);

/// Where in an argument a number stands; written out only for an error.
struct ArgumentPlace {
  const ArgumentPlace* in = nullptr;
  std::string_view name;
  std::optional<std::size_t> index = std::nullopt;

  /// "rings[1].free.inner_mm"
  [[nodiscard]] std::string text() const;
};

/// @throws Error bad_input unless value is finite and within the range.
void require_in_range(double value, const NumberRange& range, const ArgumentPlace& place);

namespace require_detail {

template <class T>
inline constexpr bool is_optional = false;
template <class T>
inline constexpr bool is_optional<std::optional<T>> = true;
template <class T>
inline constexpr bool is_vector = false;
template <class T>
inline constexpr bool is_vector<std::vector<T>> = true;

// The number that a member is or holds, in the unit shown.
template <class M>
std::optional<double> number_of(const M& member) {
  if constexpr (std::is_arithmetic_v<M>) {
    return static_cast<double>(member);
  } else if constexpr (std::is_same_v<M, Length> || std::is_same_v<M, Diameter>) {
    return member.in_mm();
  } else if constexpr (is_optional<M>) {
    return member ? number_of(*member) : std::nullopt;
  } else {
    return std::nullopt;
  }
}

template <class M>
void require_numbers(const M& member, const ArgumentPlace& place);

/// Fields that require of each member what its description says.
template <class T>
class RequiredFields {
 public:
  RequiredFields(const T& value, const ArgumentPlace& place) : value_(value), place_(place) {}

  RequiredFields& value(const char* /*name*/, const char* /*document*/) { return *this; }
  template <class M>
  RequiredFields& member(const char* name, M T::*member, const char* /*document*/) {
    last_ = number_of(value_.*member);
    name_ = name;
    require_numbers(value_.*member, {&place_, name});
    return *this;
  }
  RequiredFields& range(const NumberRange& numbers) {
    if (last_) {
      require_in_range(*last_, numbers, {&place_, name_});
    }
    return *this;
  }
  template <class Get>
  RequiredFields& derived(const char* /*name*/, Get /*get*/, const char* /*document*/) {
    return *this;
  }

 private:
  const T& value_;
  const ArgumentPlace& place_;
  std::optional<double> last_;
  const char* name_ = "";
};

template <class M>
void require_numbers(const M& member, const ArgumentPlace& place) {
  if constexpr (std::is_floating_point_v<M> || std::is_same_v<M, Length> ||
                std::is_same_v<M, Diameter>) {
    require_in_range(*number_of(member), {-kGreatestNumber, kGreatestNumber}, place);
  } else if constexpr (std::is_same_v<M, Limits>) {
    require_limits(member, place.text());
  } else if constexpr (is_optional<M>) {
    if (member) {
      require_numbers(*member, place);
    }
  } else if constexpr (is_vector<M>) {
    for (std::size_t i = 0; i < member.size(); ++i) {
      require_numbers(member[i], {place.in, place.name, i});
    }
  } else if constexpr (Described<M>) {
    RequiredFields<M> fields(member, place);
    describe_value<M>(fields);
  }
}

}  // namespace require_detail

/// Of every number in a described value, in all that it holds: finite, within the range that its
/// description gives, limits not reversed.
/// @throws Error bad_input with the place of the first that is not, under `argument`.
template <class T>
void require_value(const T& value, std::string_view argument) {
  require_detail::require_numbers(value, {nullptr, argument});
}

}  // namespace spotblue
