#pragma once
/// @file
/// The schema of results as their values' descriptions have it: keys, their order and types, what
/// they mean, and which are always there.

#include <string>

namespace spotblue::test {

/// The text of the schema with the members of each described value as they are described. Forms
/// of texts and all that is not described stay as they are.
[[nodiscard]] std::string described_schema(const std::string& schema);

}  // namespace spotblue::test
