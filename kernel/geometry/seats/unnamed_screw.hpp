#pragma once
// What looks like a screw in a tapped hole but is no thread of the tables.

#include <optional>
#include <string>

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

// Cylinders of two products: the first's or the second's is the hole.
struct UnnamedThread {
  bool hole_first = true;
  std::size_t hole = 0, screw = 0;
  std::string thread;  // where its sizes are those of one and less than a turn is engaged
};

// A cylinder of one part on the axis of a smaller hole of the other that overlaps it as a screw of
// about its size does: by what the threads of the tables within 15 % of its diameter are cut, the
// finest to the coarsest. What overlaps less may be pressed, what overlaps more is no screw.
[[nodiscard]] std::optional<UnnamedThread> unnamed_thread(const Product& a, const Product& b,
                                                          const Frame& b_to_a,
                                                          const SeatSettings& settings);

}  // namespace spotblue
