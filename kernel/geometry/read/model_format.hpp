#pragma once
// Which kind of file a model lies in, told by what is in it.

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace spotblue {

enum class ModelFormat { step, brep, brep_binary, xbf };

// "STEP", "Open CASCADE shape (.brep)", ...
[[nodiscard]] std::string_view format_name(ModelFormat format);

// By the first few hundred bytes; nothing when they are of none.
[[nodiscard]] std::optional<ModelFormat> format_in(std::string_view bytes);

// By the ending of its name: .step .stp .p21, .brep .brp, .xbf in any case.
[[nodiscard]] std::optional<ModelFormat> format_by_name(const std::filesystem::path& file);

// Of a file's bytes. Those that begin like none are taken for STEP, whose reader says best what is
// wrong with them, unless the name says another format.
// Throws Error unreadable when the name says .brep or .xbf and the bytes are of no model.
[[nodiscard]] ModelFormat format_of(std::string_view bytes, const std::filesystem::path& file);

// What a reader must know when name and content disagree; empty when they don't.
[[nodiscard]] std::string remark_on_name(ModelFormat format, const std::filesystem::path& file);

}  // namespace spotblue
