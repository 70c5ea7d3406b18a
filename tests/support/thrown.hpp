#pragma once
/// @file
/// The error that something ends with.

#include <gtest/gtest.h>

#include <utility>

#include "spotblue/base/error.hpp"

namespace spotblue::test {

/// What the call throws; one with an empty rule, and a failure of the test, where it throws none.
template <class Call>
Error error_of(Call&& call) {
  try {
    static_cast<void>(std::forward<Call>(call)());
  } catch (const Error& problem) {
    return problem;
  }
  ADD_FAILURE() << "no Error was thrown";
  return {ErrorCode::bad_input, {}, "", ""};
}

}  // namespace spotblue::test
