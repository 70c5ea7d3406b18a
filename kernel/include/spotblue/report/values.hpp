#pragma once
/// @file
/// Results as a tree of plain values, for who hands them on in a form of its own: what the JSON of
/// the same result reads back to.

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/check/finding.hpp"
#include "spotblue/geometry/look.hpp"

namespace spotblue {

struct Member;

/// A number that JSON has without point and exponent is whole; text is UTF-8.
struct Value {
  using List = std::vector<Value>;
  using Object = std::vector<Member>;  ///< in the order of the JSON
  std::variant<bool, std::int64_t, double, std::string, List, Object> held;
};

struct Member {
  std::string key;
  Value value;
};

/// The object that look_json writes.
/// @throws Error as look_json.
[[nodiscard]] SPOTBLUE_EXPORT Value look_values(const Look& look);

/// The list "findings" of what check_json writes.
/// @throws Error as check_json.
[[nodiscard]] SPOTBLUE_EXPORT Value::List finding_values(const std::vector<Finding>& findings);

}  // namespace spotblue
