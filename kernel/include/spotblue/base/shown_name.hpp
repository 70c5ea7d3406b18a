#pragma once
/// @file
/// File names as text, and text that no terminal, JSON or TOML stumbles over.
///
/// A file's name is bytes, and need be neither UTF-8 nor one line. Wherever spotblue writes one, it
/// is in its shown form, and wherever it reads one out of a manifest, a job file or a mock-up, the
/// shown form is understood.

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// One line of valid UTF-8: each byte of a control letter, of a mark that turns or breaks lines
/// (bidirectional marks, U+2028, U+2029) or of what is no UTF-8 becomes \xNN, NN in capital
/// hexadecimal digits. Text that has none of these stays as it is, a shown name too.
[[nodiscard]] SPOTBLUE_EXPORT std::string shown_text(std::string_view text);

/// The text; of a longer one than `most` bytes (16 or more) its beginning and its end in whole
/// letters, " ... " between, no longer than that.
[[nodiscard]] SPOTBLUE_EXPORT std::string shortened(std::string_view text, std::size_t most);

/// The shown form of a file's name: shown_text, and also \xNN for blanks at its ends and for a
/// backslash that would be taken for the beginning of \xNN. Most names are their own shown form.
[[nodiscard]] SPOTBLUE_EXPORT std::string shown_name(const std::filesystem::path& file);

/// The file that a shown name stands for: path_of_shown(shown_name(file)) is `file` to the byte.
[[nodiscard]] SPOTBLUE_EXPORT std::filesystem::path path_of_shown(std::string_view shown);

}  // namespace spotblue
