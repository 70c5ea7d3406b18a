#pragma once
// The rules that most arguments of this layer keep, as errors that name argument, value and unit.

#include <string>
#include <string_view>

namespace spotblue {

/// @throws Error bad_input unless value is finite and > 0.
void require_positive(double value, const std::string& argument, std::string_view unit);
/// @throws Error bad_input unless value is finite and >= 0.
void require_not_negative(double value, const std::string& argument, std::string_view unit);
/// @throws Error bad_input unless value is finite.
void require_finite(double value, const std::string& argument, std::string_view unit);

}  // namespace spotblue
