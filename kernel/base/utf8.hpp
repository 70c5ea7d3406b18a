#pragma once
// UTF-8 letter by letter.

#include <cstddef>
#include <cstdint>
#include <string_view>

#include "spotblue/base/export.hpp"

namespace spotblue {

// Bytes of the UTF-8 letter at the front (RFC 3629), 0 when there is none. Exported for the one
// library of ours that stands on the other; no header tells it to others.
[[nodiscard]] SPOTBLUE_EXPORT std::size_t utf8_length(std::string_view text);

// The code point of one whole letter.
[[nodiscard]] SPOTBLUE_EXPORT std::uint32_t code_point(std::string_view letter);

// Whether a terminal would act on the letter in place of showing it: C0, DEL, C1, the bidirectional
// marks (Unicode 15, 23.2: U+061C, 200E, 200F, 202A to 202E, 2066 to 2069), line and paragraph
// separators. `letter` is one whole letter.
[[nodiscard]] SPOTBLUE_EXPORT bool is_unshown(std::string_view letter);

}  // namespace spotblue
