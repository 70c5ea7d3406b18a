#pragma once
/// @file
/// What bears on what, as the text of a look has it.

#include <string>

#include "report/model_names.hpp"
#include "report/text_paint.hpp"
#include "spotblue/geometry/look.hpp"

namespace spotblue {

/// What every piece of a look's text needs.
struct TextContext {
  const Look& look;
  const ModelNames& names;
  LengthUnit unit;
  Paint paint;
  std::size_t width;  ///< of TextStyle
};

/// Each centre line with its seats; centre lines that read alike stand there once.
[[nodiscard]] std::string centre_lines_text(const TextContext& context);
/// Axial seats that are square to no centre line.
[[nodiscard]] std::string other_faces_text(const TextContext& context);
[[nodiscard]] std::string width_seats_text(const TextContext& context);

}  // namespace spotblue
