// A screw whose thread is modelled turn by turn, in a tapped hole drawn as its drill left it.

#include <array>
#include <cmath>
#include <numbers>

#include "support/families/family.hpp"
#include "support/modelled_threads.hpp"

namespace spotblue::test {
namespace {

struct Thread {
  const char* size;
  double major, pitch, hole;  // mm, coarse; ISO 261:1998 and usual drills, from memory
};

// ISO 68-1:1998, from memory: crests an eighth of the pitch wide, flanks of 60 degrees.
TopoDS_Shape threaded_rod(const Thread& thread, double from, double to) {
  const double slope = 2.0 * std::tan(std::numbers::pi / 6.0);
  const double crest = thread.major / 2;
  const double root = crest - 0.6 * thread.pitch;
  const double base = root - 0.1;
  const double flat = thread.pitch / 8.0;
  const int turns = static_cast<int>((to - from) / thread.pitch) - 3;
  return fuse(turned(bar(0.0, 2.0 * root, from, to), {}),
              helical({base, crest, flat + (crest - base) * slope, flat, thread.pitch,
                       from + 2.0 * thread.pitch, turns}));
}

}  // namespace

Station true_thread(Shop& shop) {
  constexpr std::array<Thread, 4> kThreads{{{"M6", 6.0, 1.0, 5.0},
                                            {"M8", 8.0, 1.25, 6.8},
                                            {"M10", 10.0, 1.5, 8.5},
                                            {"M12", 12.0, 1.75, 10.2}}};
  Chance& chance = shop.sizes;
  Station station{"true thread", {}, {}, {}};
  const Thread& thread = kThreads.at(chance.below(kThreads.size()));
  const double length = chance.size(8.0, 12.0);
  const Finish a = shop.finish();
  const auto nut =
      station.add("Tapped ring", turned(bar(thread.hole, 2.0 * thread.major, 0.0, length), a), a);
  const auto screw = station.add("Threaded rod", threaded_rod(thread, -8.0, length + 8.0), {});
  station.parts[station.placed[screw].part].fitted = true;
  station.truth.threads.push_back({nut, screw, thread.size, thread.hole, thread.major, length});
  return station;
}

}  // namespace spotblue::test
