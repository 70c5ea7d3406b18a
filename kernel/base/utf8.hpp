#pragma once
// UTF-8 letter by letter.

#include <cstddef>
#include <string_view>

#include "spotblue/base/export.hpp"

namespace spotblue {

// Bytes of the UTF-8 letter at the front (RFC 3629), 0 when there is none. Exported for the one
// library of ours that stands on the other; no header tells it to others.
[[nodiscard]] SPOTBLUE_EXPORT std::size_t utf8_length(std::string_view text);

}  // namespace spotblue
