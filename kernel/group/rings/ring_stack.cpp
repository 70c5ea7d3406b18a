#include "group/rings/ring_stack.hpp"

#include <algorithm>
#include <cstddef>

#include "spotblue/mechanics/sleeve_chain.hpp"

namespace spotblue {
namespace {

constexpr double kReference_c = 20.0;  // at which sleeve_chain takes free sizes

// One corner: for each ring which wall, for each joint which end of its interference.
class Corner {
 public:
  Corner(const RingStack& stack, std::size_t number) : stack_(stack) {
    for (const RingWall& wall : stack.rings) {
      rings_.push_back(plain_ring(wall, next(number) ? WallBound::weakest : WallBound::strongest));
    }
    for (const RingJoint& joint : stack.joints) {
      interference_.push_back(next(number) ? joint.interference_mm.low
                                           : joint.interference_mm.high);
    }
    add_what_is_in_place();
  }

  // Change of the diameter with only these joints pressed, at these temperatures.
  [[nodiscard]] double change(std::size_t ring, RingSurface surface, double diameter, bool all,
                              bool warm) const {
    const double warmer = warm ? stack_.running_c[ring] - stack_.bench_c : 0.0;
    const double grown = stack_.rings[ring].material.expansion_per_k * warmer;
    if (!rings_[ring]) {
      return diameter * grown;  // cut through: nothing squeezes it
    }
    // What is cut through presses on nothing: the stack ends before it.
    const auto joined = [&](std::size_t joint) {
      return rings_[joint] && rings_[joint + 1] && (all || stack_.joints[joint].in_place);
    };
    std::size_t first = ring;
    std::size_t last = ring;
    while (first > 0 && joined(first - 1)) {
      --first;
    }
    while (last + 1 < rings_.size() && joined(last)) {
      ++last;
    }
    std::vector<ChainRing> chain;
    for (std::size_t i = first; i <= last; ++i) {
      Ring free = *rings_[i];
      if (i > first) {
        free.inner_mm = stack_.joints[i - 1].diameter_mm - 0.5 * interference_[i - 1];
      }
      if (i < last) {
        free.outer_mm = stack_.joints[i].diameter_mm + 0.5 * interference_[i];
      }
      chain.push_back(
          {free, warm ? kReference_c + stack_.running_c[i] - stack_.bench_c : kReference_c});
    }
    const ChainRing& own = chain[ring - first];
    const ChainRingState state = sleeve_chain(chain).rings[ring - first];
    const double before = surface == RingSurface::bore ? own.free.inner_mm : own.free.outer_mm;
    const double after = surface == RingSurface::bore ? state.bore_mm : state.outside_mm;
    // The wall's ring may stand for a surface of another size, which moves as it does but grows
    // with the heat by its own.
    return after - before * (1.0 + grown) + diameter * grown;
  }

 private:
  // Sizes of parts that sit in each other already were taken there. Others meet these; free ones,
  // which the stack is solved with, are other by what that press has moved.
  void add_what_is_in_place() {
    std::vector<double> more(interference_.size(), 0.0);
    for (std::size_t i = 0; i < more.size(); ++i) {
      if (!stack_.joints[i].in_place) {
        const double diameter = stack_.joints[i].diameter_mm;
        more[i] = change(i + 1, RingSurface::bore, diameter, false, false) -
                  change(i, RingSurface::outside, diameter, false, false);
      }
    }
    for (std::size_t i = 0; i < more.size(); ++i) {
      interference_[i] += more[i];
    }
  }

  static bool next(std::size_t& number) {
    const bool bit = number % 2 == 1;
    number /= 2;
    return bit;
  }

  const RingStack& stack_;
  std::vector<std::optional<Ring>> rings_;
  std::vector<double> interference_;
};

}  // namespace

Moved moved(const RingStack& stack, std::size_t ring, RingSurface surface, double diameter_mm) {
  std::optional<Moved> all;
  const std::size_t corners = std::size_t{1} << (stack.rings.size() + stack.joints.size());
  for (std::size_t number = 0; number < corners; ++number) {
    const Corner corner(stack, number);
    // What is in place already has moved the sizes that were taken.
    const double known = corner.change(ring, surface, diameter_mm, false, false);
    const double assembled = corner.change(ring, surface, diameter_mm, true, false) - known;
    const double running = corner.change(ring, surface, diameter_mm, true, true) - known;
    all =
        Moved{all ? united(all->assembled, {assembled, assembled}) : Interval{assembled, assembled},
              all ? united(all->running, {running, running}) : Interval{running, running}};
  }
  return *all;
}

}  // namespace spotblue
