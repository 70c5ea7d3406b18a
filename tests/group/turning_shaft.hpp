#pragma once
// A shaft that turns, on a model of plain values.

#include <optional>
#include <string>
#include <vector>

#include "spotblue/group/group.hpp"
#include "support/bench.hpp"

namespace spotblue::test {

/// A shaft about z that turns at 60, and whatever it runs in.
struct TurningShaft {
  Bench bench;
  OccurrenceId shaft = bench.part("Shaft");

  explicit TurningShaft(std::optional<double> load_n = 900.0) {
    bench.look.seats.centre_lines.push_back({"centre line 1", {{0, 0, 0}, {0, 0, 1}}, {}});
    bench.look.seats.centre_lines.push_back({"centre line 2", {{40, 0, 0}, {0, 0, 1}}, {}});
    bench.job.turning.push_back({"Shaft", 60.0, Duty::continuous, load_n, {}, 7});
    reach(0.0, 100.0);
  }
  // The shaft's own box, in whose middle a load acts.
  void reach(double from, double to) {
    bench.product(shaft).box = {{-10, -10, from}, {10, 10, to}};
  }
  OccurrenceId runs_in(const std::string& part, double from, double to, double bore = 20.03,
                       double size = 20.0) {
    const OccurrenceId bush = bench.part(part);
    seat(bench.bore(bush, "bore", bore), bench.outside(shaft, "journal " + part, size), from, to);
    return bush;
  }
  RadialSeat& seat(const FeatureRef& hole, const FeatureRef& of, double from, double to,
                   std::size_t line = 0) {
    bench.seat(hole, of);
    RadialSeat& seat = bench.look.seats.radial.back();
    seat.centre_line = CentreLineId(line);
    seat.axis = bench.look.seats.centre_lines[CentreLineId(line)].line;
    seat.from = from;
    seat.to = to;
    seat.engaged = to - from;
    return seat;
  }
  [[nodiscard]] Group group() const { return make_group(bench.job, bench.look); }
  [[nodiscard]] std::vector<std::string> holes() const {
    std::vector<std::string> names;
    for (const Bearing& bearing : group().bearings) {
      names.push_back(
          bench.look.model.products[bench.look.model.occurrences[bearing.hole.occurrence].product]
              .id);
    }
    return names;
  }
};

}  // namespace spotblue::test
