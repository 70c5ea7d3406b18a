#pragma once
// UTF-8 letter by letter.

#include <cstddef>
#include <string_view>

namespace spotblue {

// Bytes of the UTF-8 letter at the front (RFC 3629), 0 when there is none.
[[nodiscard]] std::size_t utf8_length(std::string_view text);

}  // namespace spotblue
