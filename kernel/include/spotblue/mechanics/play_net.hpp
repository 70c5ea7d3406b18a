#pragma once
/// @file
/// Bodies that stop each other along one line, and the play that one has relative to another over
/// all stops at once.
///
/// Every stop is a difference constraint: body a can go ahead, relative to body b, until a face of
/// its own meets one of b's, x_a - x_b <= gap. The gap is a sum of lengths, each counted so many
/// times, negative where a longer one closes it. Body A's play relative to B is the shortest way
/// from B to A and on from A to B: the tightest loop of stops through both. A length that the loop
/// goes along both ways cancels.
///
/// Least play: a minimum of linear functions of the lengths, so it is attained where each length
/// is at one of its limits; found by branch and bound over lengths that one loop counts both ways.
/// Greatest play: the maximum over the limits of a minimum of linear functions, found by cutting
/// planes, each a loop. Source: Cormen, Leiserson, Rivest, Stein, "Introduction to Algorithms",
/// section "Difference constraints and shortest paths" (remembered, not seen); the rest derived
/// here. Checked by tests/bindings/python/play_net_test.py against SciPy's linprog.

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/mechanics/stack.hpp"

namespace spotblue {

struct PlayTerm {
  std::size_t length = 0;
  int count = 1;
};
constexpr void describe(auto& fields, const PlayTerm*) {
  fields.value("PlayTerm", "How often a length counts in a gap or a loop.")
      .member("length", &PlayTerm::length, "into the net's lengths")
      .member("count", &PlayTerm::count, "times; negative where a longer one closes; not 0");
}

struct PlayStop {
  std::size_t a = 0;
  std::size_t b = 0;
  std::vector<PlayTerm> gap;
};
constexpr void describe(auto& fields, const PlayStop*) {
  fields.value("PlayStop", "Two faces that meet: x_a - x_b is never more than the gap.")
      .member("a", &PlayStop::a, "body whose face looks ahead, into the net's bodies")
      .member("b", &PlayStop::b, "body whose face looks back and stops it; not a")
      .member("gap", &PlayStop::gap, "sum of the lengths, each times its count; none: 0 mm");
}

struct PlayNet {
  std::vector<std::string> bodies;
  std::vector<StackDimension> lengths;
  std::vector<PlayStop> stops;
};
constexpr void describe(auto& fields, const PlayNet*) {
  fields.value("PlayNet", "Bodies on one line, and all that stops them.")
      .member("bodies", &PlayNet::bodies, "their names, for errors")
      .member("lengths", &PlayNet::lengths,
              "mm; sense opens, since the stops say what a length does")
      .member("stops", &PlayNet::stops, "in any order, several between two bodies too");
}

/// Whether there are places for all bodies of a net.
enum class GoTogether { always, sometimes, never };
constexpr auto describe(const GoTogether*) {
  return words("Whether bodies go together, over all that their lengths may be.", "always",
               "sometimes", "never");
}

struct PlayLoop {
  std::vector<std::size_t> ahead;
  std::vector<std::size_t> back;
  std::vector<PlayTerm> lengths;
};
constexpr void describe(auto& fields, const PlayLoop*) {
  fields.value("PlayLoop", "The stops that a body's play lies between, and the sum that it is.")
      .member("ahead", &PlayLoop::ahead,
              "stops that end its way ahead, into the net's: the body's own first, then of what "
              "stopped it")
      .member("back", &PlayLoop::back, "stops that end its way back, its own first")
      .member("lengths", &PlayLoop::lengths, "what does not cancel, by length");
}

struct RelativePlay {
  bool stopped_ahead = false;
  bool stopped_back = false;
  GoTogether go_together = GoTogether::always;
  std::vector<std::size_t> tight;
  std::optional<Length> lacking;
  std::optional<Length> nominal;
  std::optional<Limits> worst;
  std::optional<Limits> root_sum_square;
  PlayLoop least, greatest, governing;
  std::vector<Length> least_at, greatest_at;
  bool settled = true;
};
constexpr void describe(auto& fields, const RelativePlay*) {
  fields.value("RelativePlay", "The play of one body relative to another, mm.")
      .member("stopped_ahead", &RelativePlay::stopped_ahead,
              "whether anything ends its way ahead, through whatever floats between")
      .member("stopped_back", &RelativePlay::stopped_back, "the same of its way back")
      .member("go_together", &RelativePlay::go_together, "whether the whole net goes together")
      .member("tight", &RelativePlay::tight,
              "stops of a loop that is too short at some lengths within the limits; empty where "
              "the net always goes together; there may be others")
      .member("lacking_mm", &RelativePlay::lacking,
              "> 0: what that loop lacks at its worst; None where the net always goes together")
      .member("nominal_mm", &RelativePlay::nominal,
              "at the nominal lengths, negative where they do not go together; None where it is "
              "not stopped both ways")
      .member("worst", &RelativePlay::worst,
              "all plays there can be: the lower is the tightest loop through both bodies, "
              "negative where parts do not go together; the upper is over all lengths that go "
              "together, or over all where none do; None where it is not stopped both ways")
      .member("root_sum_square", &RelativePlay::root_sum_square,
              "the governing loop's middle plus and minus the root of the sum of its squared half "
              "tolerances")
      .member("least", &RelativePlay::least, "the loop that leaves the least play")
      .member("greatest", &RelativePlay::greatest, "the one that bounds the greatest play")
      .member("governing", &RelativePlay::governing, "the loop that is tightest at the middles")
      .member("least_at_mm", &RelativePlay::least_at,
              "each of the net's lengths where the play is least: one of its limits")
      .member("greatest_at_mm", &RelativePlay::greatest_at,
              "each of the net's lengths where the play is greatest")
      .member("settled", &RelativePlay::settled,
              "False where the search was given up: there are too many ways to tell, worst is "
              "None and nothing else is known");
}

/// Play of body `of` relative to body `on`.
///
/// Exact to 1e-9 mm within 10 m. Cost: a few shortest ways where no loop counts a length both
/// ways; grows with the corners of those that do. Every way is tried where bodies do not go
/// together. Thread-safe; asks whether to stop.
/// @throws Error bad_input for what require_play_net refuses, or bodies that are not there or the
///         same; stopped.
[[nodiscard]] SPOTBLUE_EXPORT RelativePlay relative_play(const PlayNet& net, std::size_t of,
                                                         std::size_t on);

/// The tightest loop through both bodies where each stop has the gap given, in the order of the
/// net's stops: the net as it stands in a model.
/// @return nothing where `of` is not stopped both ways, or where there are too many ways to tell.
/// @throws Error bad_input as relative_play, and for gaps of another number or not finite.
[[nodiscard]] SPOTBLUE_EXPORT std::optional<PlayLoop> loop_at(const PlayNet& net, std::size_t of,
                                                              std::size_t on,
                                                              std::span<const Length> gaps);

/// @throws Error bad_input naming the stop or length: a body or length that is not there, a body
///         that stops itself, a count of 0, a length whose sense is not opens, and what
///         require_stack refuses of a length.
SPOTBLUE_EXPORT void require_play_net(const PlayNet& net);

}  // namespace spotblue
