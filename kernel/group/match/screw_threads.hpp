#pragma once
// Which thread each screw has: one, whatever its holes are drawn for.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "spotblue/geometry/look.hpp"
#include "spotblue/job/job.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue {

/// How the thread of a screw in a tapped hole is known.
enum class ThreadKnown {
  declared,        ///< the job says it, and the two are drawn as it
  usual,           ///< drawn as it, and met often
  rare,            ///< drawn as it, and met so seldom that it may be meant as another
  drawn_as_other,  ///< the job says it, and the two are drawn as none of that size
  apart,           ///< the screw or the hole has other threads elsewhere, and the job says none
  contradicted     ///< the same, and the job says one of them, or both
};

struct ScrewThread {
  ThreadKnown known = ThreadKnown::usual;
  std::string size;                ///< as declared, else as drawn
  std::optional<ThreadSize> row;   ///< of that size, where a table has it
  std::vector<std::string> sizes;  ///< all that are said of the one screw, where they differ
  const ThreadWant* want = nullptr;
};

/// By number of the look's threads.
/// @param wants  by number of the thread, null where the job says nothing.
/// @param set    sizes that [[adjust]] gives the threads of a part.
[[nodiscard]] std::vector<ScrewThread> screw_threads(
    const Look& look, const std::vector<const ThreadWant*>& wants,
    const std::map<OccurrenceId, std::string>& set);

}  // namespace spotblue
