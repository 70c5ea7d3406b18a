#include "base/error_kinds.hpp"

#include <cerrno>

namespace spotblue {

ErrorCode code_of_reason(int reason) {
  switch (reason) {
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
    case ENOMEM:
    case EMFILE:
    case ENFILE:
    case EAGAIN:
      return ErrorCode::system;
    default:
      return ErrorCode::file_access;
  }
}

bool says_nothing_of_content(ErrorCode code) {
  return code == ErrorCode::file_access || code == ErrorCode::stopped || code == ErrorCode::system;
}

}  // namespace spotblue
