#pragma once
// Whether a token of a STEP file is what ISO 10303-21:2016, clause 6.4, lets stand for a value.

#include <string_view>

namespace spotblue {

// What is wrong with a token among an entity's values, as "is no number"; null where nothing is.
// `opens`: a bracket follows it. Numbers may lack the point that the standard asks for, as many
// programs write them, but are finite and whole.
[[nodiscard]] const char* token_fault(std::string_view token, bool opens);

}  // namespace spotblue
