#pragma once
/// @file
/// Openly licensed models that others made, read where they lie.

#include <gtest/gtest.h>

#include <filesystem>
#include <string>

namespace spotblue::test {

/// A file or folder among them, which need not be there.
inline std::filesystem::path open_model(const std::string& name) {
  return std::filesystem::path(SPOTBLUE_OPEN_MODELS) / name;
}

}  // namespace spotblue::test

/// Ends a test that needs the file or folder where it is absent, and says so.
#define SKIP_WITHOUT_OPEN_MODEL(path)                                         \
  if (!std::filesystem::exists(path)) {                                       \
    GTEST_SKIP() << "there are no open models at " << (SPOTBLUE_OPEN_MODELS); \
  }                                                                           \
  static_assert(true)
