#pragma once
// The kernel's values as those that commands return.

#include <nlohmann/json_fwd.hpp>

#include "spotblue/report/values.hpp"

namespace spotblue::plugin {

[[nodiscard]] nlohmann::ordered_json json_of(const Value& value);
[[nodiscard]] nlohmann::ordered_json json_of(const Value::List& list);

}  // namespace spotblue::plugin
