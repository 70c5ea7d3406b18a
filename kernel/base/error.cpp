#include "spotblue/base/error.hpp"

#include <utility>

#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

std::string one_line(const Error::Where& where, const std::string& rule, const std::string& cure) {
  std::string text = where.file;
  if (!where.place.empty()) {
    text += (text.empty() ? "" : ", ") + where.place;
  }
  if (!text.empty()) {
    text += ": ";
  }
  text += rule;
  if (!cure.empty()) {
    text += "; " + cure;
  }
  return text;
}

}  // namespace

Error::Error(ErrorCode code, Where where, const std::string& what, std::string cure)
    : std::runtime_error(shown_text(one_line(where, what, cure))),
      code_(code),
      where_{shown_text(where.file), shown_text(where.place)},
      rule_(shown_text(what)),
      cure_(shown_text(cure)) {}

}  // namespace spotblue
