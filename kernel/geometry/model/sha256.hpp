#pragma once
// What bytes are known by.

#include <string>
#include <string_view>

namespace spotblue {

// Lower-case hexadecimal.
[[nodiscard]] std::string sha256(std::string_view bytes);

}  // namespace spotblue
