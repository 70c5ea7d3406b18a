#include "check/findings/radial_findings.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "check/findings/unseen_findings.hpp"
#include "check/fits/judge_fit.hpp"
#include "check/words/words.hpp"
#include "group/rings/assembled_clearance.hpp"

namespace spotblue {
namespace {

Limits move_of(const SizeStates& size) {
  const auto moved = [](double by_mm) {
    return std::abs(by_mm) < kSizeRounding.in_mm() ? Length() : Length::mm(by_mm);
  };
  return {moved(size.assembled->low - size.free.low), moved(size.assembled->high - size.free.high)};
}

// A pair that is pressed is judged by the sizes both are made to; one that runs, by those that
// pressing leaves.
void add_moves(const SurfaceSizes& surface, FitCase& fit_case) {
  if (surface.pressing != Pressing::none) {
    return;
  }
  fit_case.moves_unknown = why_not_assembled(surface);
  if (fit_case.moves_unknown.empty()) {
    fit_case.moves = {move_of(surface.hole), move_of(surface.shaft)};
  }
}

}  // namespace

std::vector<Finding> radial_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  const std::vector<RadialSeat>& seats = declared.look->seats.radial;
  findings.reserve(seats.size());
  for (std::size_t i = 0; i < seats.size() && may_judge_more(); ++i) {
    const RadialSeat& seat = seats[i];
    FitCase fit_case;
    fit_case.kind = "radial fit";
    fit_case.hole = seat.hole;
    fit_case.shaft = seat.shaft;
    fit_case.hole_size = Length::mm(seat.hole_diameter);
    fit_case.shaft_size = Length::mm(seat.shaft_diameter);
    const double tightest = seat.worn ? seat.worn->least : seat.clearance;
    fit_case.out_of_line = Length::mm(std::max(0.0, 0.5 * tightest - seat.least_gap));
    if (seat.worn) {
      fit_case.worn_by = {Length::mm(seat.worn->least - seat.clearance),
                          Length::mm(seat.worn->most - seat.clearance)};
    }
    fit_case.want = declared.radial_fits.at(i);
    add_moves(worked.surfaces[i], fit_case);
    fit_case.placing = {{"offset", millimetres(seat.offset)},
                        {"tilt", angle(seat.tilt)},
                        {"least_gap", millimetres(seat.least_gap)},
                        {"engaged", millimetres(seat.engaged)},
                        {"coverage", angle(seat.coverage)}};
    findings.push_back(judge_fit(declared, fit_case));
  }
  return findings;
}

}  // namespace spotblue
