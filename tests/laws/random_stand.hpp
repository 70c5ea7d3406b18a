#pragma once
// Random groups of parts that work together, whole with their job, of plain values: a frame with a
// pressed bush, a shaft that runs in it, what is pressed or runs on the shaft, and what holds it
// endways.

#include <array>
#include <string>
#include <vector>

#include "spotblue/geometry/look.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue::test {

/// The diameters and lengths that are drawn, mm.
enum Size {
  frame_bore,
  bush_outside,
  bush_bore,
  shaft_journal,
  far_bore,
  far_journal,
  gear_bore,
  gear_seat,
  sleeve_outside,
  hub_bore,
  wall_gap,
  collar_at,
  size_count
};

struct Stand {
  std::array<double, size_count> sizes{};
  std::array<double, size_count> measured{};  ///< 0: not measured; within the limits drawn
  double measured_within = 0.0;               ///< of those that are
  std::array<std::string, 5> materials;       ///< frame, bush, shaft, gear or sleeve, hub
  double running_c = 20.0;
  double rpm = 100.0, load_n = 0.0;
  bool hub_on_sleeve = false;  ///< a sleeve with a hub that runs on it, in place of a gear
  bool to_make = false;  ///< bush and what is pressed on the shaft have limits and no size yet
};

/// Each seed another; sizes in whole micrometres.
[[nodiscard]] Stand random_stand(unsigned seed);

/// How the same stand may be drawn and told.
struct Picture {
  Frame whole{};
  bool reversed = false;   ///< parts, seats and entries in the other order
  bool chamfered = false;  ///< edges that touch nothing broken by 0.3
  std::string names;       ///< before each part's
};

struct StandJob {
  Job job;
  Look look;
};

[[nodiscard]] StandJob drawn(const Stand& stand, const Picture& picture = {});

}  // namespace spotblue::test
