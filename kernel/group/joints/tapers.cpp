#include "group/joints/tapers.hpp"

#include <algorithm>

#include "spotblue/base/angle.hpp"

namespace spotblue {
namespace {

// A cone steeper than this and shorter than so much of its diameter is a chamfer; the head of a
// countersunk screw is longer. Choice of this program, no source.
constexpr double kSteep_rad = 15.0 * kDegree;
constexpr double kShort = 0.2;
// A cone as slight as this holds by friction alone: self-holding tapers (Morse, Brown & Sharpe) lie
// at 1.2 to 1.5 degrees a side, self-releasing ones at 8. Common practice, no source.
constexpr double kHoldsItself_rad = 3.0 * kDegree;

bool is_chamfer(const TaperSeat& seat) {
  return std::min(seat.hole_half_angle, seat.shaft_half_angle) > kSteep_rad &&
         seat.engaged < kShort * seat.diameter;
}

}  // namespace

bool taper_touches(const DeclaredJob& declared, std::size_t taper_seat) {
  const TaperSeat& seat = declared.look->seats.taper[taper_seat];
  if (is_chamfer(seat)) {
    return false;
  }
  const Length same = Length::mm(declared.look->settings.seats.same_length_mm);
  const Length gap = Length::mm(seat.gap);
  const TaperWant* want = declared.taper_wants.at(taper_seat);
  const ClearanceLimits wanted = want != nullptr && want->gap ? *want->gap : ClearanceLimits{};
  return gap >= wanted.least - same && gap <= wanted.greatest + same &&
         wanted.least <= Length() + same;
}

void add_taper_joints(const DeclaredJob& declared, std::vector<Joint>& joints) {
  const std::vector<TaperSeat>& seats = declared.look->seats.taper;
  for (std::size_t i = 0; i < seats.size(); ++i) {
    if (!taper_touches(declared, i)) {
      continue;
    }
    const TaperSeat& seat = seats[i];
    const bool holds = std::max(seat.hole_half_angle, seat.shaft_half_angle) <= kHoldsItself_rad;
    joints.push_back({seat.hole.occurrence,
                      seat.shaft.occurrence,
                      JointKind::taper,
                      holds ? Certainty::certain : Certainty::perhaps,
                      holds,
                      holds,
                      {seat.hole, seat.shaft},
                      {},
                      holds ? "on a taper that holds itself" : "on a taper, which alone may slip"});
  }
}

}  // namespace spotblue
