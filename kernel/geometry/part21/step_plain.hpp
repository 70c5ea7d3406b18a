#pragma once
// STEP text as Open CASCADE's reader takes it.

#include <optional>
#include <string>
#include <string_view>

namespace spotblue {

// The text without what ISO 10303-21:2016 allows (5.6, 6.4.3) and that reader trips over, or
// nothing where there is none of it: a text with "''," or "'')" in it ends there for that reader,
// so that the values behind it are others; a comment or a tab behind a text does the like; an
// entity whose
// '=' is not on the line of its number is lost. In one pass.
[[nodiscard]] std::optional<std::string> plain_step(std::string_view step);

}  // namespace spotblue
