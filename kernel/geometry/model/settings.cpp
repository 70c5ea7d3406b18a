#include "spotblue/geometry/settings.hpp"

#include <fmt/format.h>

#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

double more_than_none(const char* name, double value) {
  if (!(value > 0.0)) {
    throw Error(ErrorCode::bad_input, {"", name}, fmt::format("need more than 0, got {:g}", value),
                "give more, or leave it out for the usual");
  }
  return value;
}

}  // namespace

LookSettings bounded(LookSettings settings, const LookBounds& bounds) {
  if (bounds.seconds) {
    settings.seconds = more_than_none("seconds", *bounds.seconds);
    settings.limits.seconds = *bounds.seconds;
  }
  if (bounds.memory_mb) {
    settings.limits.memory_mb = more_than_none("memory", *bounds.memory_mb);
  }
  if (bounds.accept_partial) {
    settings.completeness = Completeness::accept_partial;
  }
  return settings;
}

}  // namespace spotblue
