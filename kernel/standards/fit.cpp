#include "spotblue/standards/fit.hpp"

namespace spotblue {

std::string_view fit_kind_name(FitKind kind) { return word_of(kind); }

FitKind fit_kind(Length least_clearance, Length greatest_clearance) {
  if (greatest_clearance <= Length()) {
    return FitKind::interference;
  }
  return least_clearance >= Length() ? FitKind::clearance : FitKind::transition;
}

}  // namespace spotblue
