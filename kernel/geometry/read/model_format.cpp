#include "geometry/read/model_format.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <system_error>

#include "spotblue/base/ascii.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/file_bytes.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/geometry/read.hpp"

namespace spotblue {
namespace {

constexpr std::size_t kStartLength = 256;  // of a file: enough for every format's first words
constexpr std::string_view kStepStart = "ISO-10303-21";
constexpr std::string_view kBlanks = " \t\r\n";

std::string_view without_blanks(std::string_view text) {
  text.remove_prefix(std::min(text.find_first_not_of(kBlanks), text.size()));
  return text;
}

bool is_same_kind(ModelFormat a, ModelFormat b) {
  const auto kind = [](ModelFormat format) {
    return format == ModelFormat::brep_binary ? ModelFormat::brep : format;
  };
  return kind(a) == kind(b);
}

}  // namespace

std::string_view format_name(ModelFormat format) {
  switch (format) {
    case ModelFormat::step:
      return "STEP file";
    case ModelFormat::xbf:
      return "Open CASCADE document (.xbf)";
    default:
      return "Open CASCADE shape file (.brep)";
  }
}

std::optional<ModelFormat> format_in(std::string_view bytes) {
  std::string_view start = without_blanks(without_byte_order_mark(bytes.substr(0, kStartLength)));
  if (start.starts_with(kStepStart)) {
    return ModelFormat::step;
  }
  if (bytes.starts_with("BINFILE")) {
    return ModelFormat::xbf;
  }
  if (start.starts_with("Open CASCADE Topology V")) {
    return ModelFormat::brep_binary;
  }
  constexpr std::string_view kHarness = "DBRep_DrawableShape";
  if (start.starts_with(kHarness)) {
    start = without_blanks(start.substr(kHarness.size()));
  }
  return start.starts_with("CASCADE Topology V") ? std::optional(ModelFormat::brep) : std::nullopt;
}

std::optional<ModelFormat> format_by_name(const std::filesystem::path& file) {
  const std::string ending = ascii_lower(file.extension().string());
  if (ending == ".step" || ending == ".stp" || ending == ".p21") {
    return ModelFormat::step;
  }
  if (ending == ".brep" || ending == ".brp") {
    return ModelFormat::brep;
  }
  return ending == ".xbf" ? std::optional(ModelFormat::xbf) : std::nullopt;
}

ModelFormat format_of(std::string_view bytes, const std::filesystem::path& file) {
  if (const auto known = format_in(bytes)) {
    return *known;
  }
  const ModelFormat named = format_by_name(file).value_or(ModelFormat::step);
  if (named != ModelFormat::step) {
    throw Error(
        ErrorCode::unreadable, {shown_name(file), "at its start"},
        fmt::format("this is no {}, nor any other model that can be read", format_name(named)),
        "save it again, as .xbf, .brep or STEP");
  }
  return ModelFormat::step;
}

std::string remark_on_name(ModelFormat format, const std::filesystem::path& file) {
  const auto named = format_by_name(file);
  if (!named || is_same_kind(*named, format)) {
    return {};
  }
  return fmt::format("the name ends in {}, but the content is that of a {}: it is read as such",
                     shown_text(file.extension().string()), format_name(format));
}

bool is_model_file(const std::filesystem::path& file) {
  std::error_code ignored;
  const auto named = format_by_name(file);
  if (!std::filesystem::is_regular_file(file, ignored)) {  // a pipe would be waited for
    return named.has_value();
  }
  std::array<char, kStartLength> start{};
  std::ifstream in(file, std::ios::binary);
  in.read(start.data(), start.size());
  const auto length = static_cast<std::size_t>(std::max<std::streamsize>(in.gcount(), 0));
  if (format_in(std::string_view(start.data(), length))) {
    return true;
  }
  // A job file has no ending of its own, but nobody gives it one of these.
  return length < kStepStart.size() ? named.has_value()
                                    : named.value_or(ModelFormat::step) != ModelFormat::step;
}

}  // namespace spotblue
