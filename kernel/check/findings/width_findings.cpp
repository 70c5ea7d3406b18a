#include "check/findings/width_findings.hpp"

#include <cmath>
#include <cstddef>

#include "check/findings/unseen_findings.hpp"
#include "check/fits/judge_fit.hpp"
#include "check/words/words.hpp"

namespace spotblue {

std::vector<Finding> width_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  const std::vector<WidthSeat>& seats = declared.look->seats.width;
  findings.reserve(seats.size());
  for (std::size_t i = 0; i < seats.size() && may_judge_more(); ++i) {
    const WidthSeat& seat = seats[i];
    FitCase fit_case;
    fit_case.kind = "width fit";
    fit_case.hole = seat.slot;
    fit_case.shaft = seat.key;
    fit_case.hole_size = Length::mm(seat.slot_width);
    fit_case.shaft_size = Length::mm(seat.key_width);
    fit_case.out_of_line = Length::mm(std::abs(seat.offset));
    fit_case.want = declared.width_fits.at(i);
    fit_case.placing = {{"offset", millimetres(seat.offset)},
                        {"tilt", angle(seat.tilt)},
                        {"area", square_millimetres(seat.area)}};
    findings.push_back(judge_fit(declared, fit_case));
  }
  return findings;
}

}  // namespace spotblue
