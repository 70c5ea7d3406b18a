#include "spotblue/base/error.hpp"

#include <utility>

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
    : std::runtime_error(one_line(where, what, cure)),
      code_(code),
      where_(std::move(where)),
      rule_(what),
      cure_(std::move(cure)) {}

}  // namespace spotblue
