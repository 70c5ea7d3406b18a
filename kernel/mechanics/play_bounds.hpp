#pragma once
// The least and the greatest play over all that a net's lengths may be, and whether the net goes
// together at all of them.

#include <cstddef>
#include <optional>
#include <vector>

#include "mechanics/play_ways.hpp"
#include "spotblue/mechanics/play_net.hpp"

namespace spotblue {

/// A loop through two bodies: its stops each way, what they add up to, and that at some lengths.
struct FoundLoop {
  std::vector<std::size_t> ahead, back;
  PlaySum sum;
  double value = 0.0;
  std::vector<double> lengths;
};
[[nodiscard]] PlayLoop loop_of(const FoundLoop& found);

/// A net with the two bodies between which play is asked for.
struct PlayQuestion {
  const PlayNet& net;
  const PlayWays& ways;
  std::size_t of = 0, on = 0;
};

/// The tightest loop where the stops have these gaps; its value is by the gaps. Nothing where the
/// body is not stopped both ways.
/// @throws TooManyWays, as all of these; Error stopped.
[[nodiscard]] std::optional<FoundLoop> tightest(const PlayQuestion& asked,
                                                const std::vector<double>& gaps);

/// Of all loops and all lengths in the box the one that is shortest.
[[nodiscard]] std::optional<FoundLoop> least_play(const PlayQuestion& asked, const LengthBox& box);

/// Which lengths count.
enum class Counting { all, that_go_together };

/// Where the tightest loop is longest; nothing where no lengths go together.
[[nodiscard]] std::optional<FoundLoop> greatest_play(const PlayQuestion& asked,
                                                     const LengthBox& box, Counting counting);

/// The least or greatest that one length may be while the play is `play` or more at some lengths
/// that go together; nothing where it never is.
[[nodiscard]] std::optional<double> farthest_with_play(const PlayQuestion& asked,
                                                       const LengthBox& box, double play,
                                                       std::size_t length, bool greatest);

/// A loop that is shorter than nothing somewhere in the box.
[[nodiscard]] std::optional<std::vector<std::size_t>> tight_loop(const PlayNet& net,
                                                                 const PlayWays& ways,
                                                                 const LengthBox& box);

/// Whether any lengths in the box go together.
[[nodiscard]] bool ever_together(const PlayNet& net, const PlayWays& ways, const LengthBox& box);

}  // namespace spotblue
