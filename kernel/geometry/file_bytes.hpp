#pragma once
// A file's bytes, read once.

#include <filesystem>
#include <string>
#include <string_view>

namespace spotblue {

// Throws Error file_access (missing, no file, unreadable) or unreadable (empty, larger than
// `most_mb`).
[[nodiscard]] std::string read_bytes(const std::filesystem::path& file, double most_mb);

// Without UTF-8's byte order mark at the front, where there is one.
[[nodiscard]] std::string_view without_byte_order_mark(std::string_view text);
void drop_byte_order_mark(std::string& text);

// Writes the file whole or not at all; one that is there is replaced.
// Throws Error file_access.
void write_bytes(const std::filesystem::path& file, std::string_view bytes);

// Lower-case hexadecimal.
[[nodiscard]] std::string sha256(std::string_view bytes);

}  // namespace spotblue
