#pragma once
/// @file
/// How Python holds a judged job: shared, so that its parts keep it alive.

#include <memory>

#include "spotblue/check/check.hpp"

namespace spotblue::python {

using SharedCheck = std::shared_ptr<CheckResult>;

}  // namespace spotblue::python
