#include "spotblue/base/error.hpp"

#include <utility>

#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

// Together with what joins them no more than kMostMessage.
constexpr std::size_t kMostFile = 380, kMostPlace = 300, kMostRule = 900, kMostCure = 400;

std::string fit(std::string_view text, std::size_t most) {
  return shortened(shown_text(text), most);
}

std::string one_line(const Error::Where& where, std::string_view rule, std::string_view cure) {
  std::string text = fit(where.file, kMostFile);
  if (!where.place.empty()) {
    text += (text.empty() ? "" : ", ") + fit(where.place, kMostPlace);
  }
  if (!text.empty()) {
    text += ": ";
  }
  text += fit(rule, kMostRule);
  if (!cure.empty()) {
    text += "; " + fit(cure, kMostCure);
  }
  return text;
}

}  // namespace

// The file's name stays whole: path_of_shown makes the file of it.
Error::Error(ErrorCode code, Where where, const std::string& what, std::string cure)
    : std::runtime_error(one_line(where, what, cure)),
      code_(code),
      where_{shown_text(where.file), fit(where.place, kMostPlace)},
      rule_(fit(what, kMostRule)),
      cure_(fit(cure, kMostCure)) {}

}  // namespace spotblue
