#pragma once
// What stands at each seat and foul in the viewer, and where.

#include <string>
#include <vector>

#include "plugin/harness/session.hpp"
#include "plugin/subject/marks.hpp"

namespace spotblue::plugin {

struct SeatLabel {
  std::string text;  ///< UTF-8
  Point at;          ///< in the assembly, mm
  Mark mark = Mark::seat;
};

/// One for each seat of every kind, each thread and each foul.
[[nodiscard]] std::vector<SeatLabel> labels_of(const Subject& subject, const Marks& marks);

}  // namespace spotblue::plugin
