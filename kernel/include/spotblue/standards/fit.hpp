#pragma once
/// @file
/// A hole and a shaft made to limits, and what the two sets of limits make of each other.

#include <string_view>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

/// ISO 286-1:2010, 3.3: what two sets of limits promise.
enum class FitKind {
  clearance,     ///< Every hole is at least as large as every shaft.
  transition,    ///< Some pairs have a gap, some an overlap.
  interference,  ///< Every hole is at most as large as every shaft.
};
constexpr auto describe(const FitKind*) {
  return words("What two sets of limits promise, ISO 286-1:2010, 3.3.", "clearance", "transition",
               "interference");
}

/// "clearance", "transition" or "interference".
[[nodiscard]] SPOTBLUE_EXPORT std::string_view fit_kind_name(FitKind kind);

/// Kind of a fit by its least and greatest clearance; negative clearance is interference. A fit
/// whose greatest clearance is zero is an interference fit, by ISO 286-1:2010, 3.3.2.
/// @throws Error bad_input when one is not finite or least > greatest.
[[nodiscard]] SPOTBLUE_EXPORT FitKind fit_kind(Length least_clearance, Length greatest_clearance);

struct Fit {
  Limits hole;
  Limits shaft;
  Length least_clearance;
  Length greatest_clearance;
  FitKind kind = FitKind::clearance;
};
constexpr void describe(auto& fields, const Fit*) {
  fields
      .value(
          "Fit",
          "Limits of size of a hole and its shaft, and the clearances they allow, on the diameter.")
      .member("hole", &Fit::hole, "limits of size of the hole, mm")
      .member("shaft", &Fit::shaft, "limits of size of the shaft, mm")
      .member("least_clearance_mm", &Fit::least_clearance,
              "least hole less greatest shaft, mm on the diameter; negative is interference")
      .member("greatest_clearance_mm", &Fit::greatest_clearance,
              "greatest hole less least shaft, mm on the diameter; negative is interference")
      .member("kind", &Fit::kind, "clearance, transition or interference");
}

}  // namespace spotblue
