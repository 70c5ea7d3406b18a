#pragma once
/// @file
/// The plays of many nets whose lengths are drawn by lot, over all stops.

#include <cstddef>
#include <optional>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/mechanics/play_net.hpp"
#include "spotblue/mechanics/stack_draw.hpp"

namespace spotblue {

struct PlayOutcome {
  std::optional<StackOutcome> plays;
  double share_apart = 0.0;
};
constexpr void describe(auto& fields, const PlayOutcome*) {
  fields.value("PlayOutcome", "The plays of many nets drawn by lot.")
      .member("plays", &PlayOutcome::plays, "of those that go together; None where none does")
      .member("share_apart", &PlayOutcome::share_apart,
              "of all that were drawn, that do not go together, 0 to 1");
}

/// Draws every length of the net and takes the play of `of` relative to `on`, again and again.
///
/// Blocks, seed and threads as draw_gaps. Where all lengths are uniform no play is outside
/// relative_play's worst.
/// @throws Error bad_input as relative_play, for no samples, and where `of` is not stopped both
///         ways.
[[nodiscard]] SPOTBLUE_EXPORT PlayOutcome draw_plays(const PlayNet& net, std::size_t of,
                                                     std::size_t on, Limits wanted,
                                                     const StackDraw& draw);

}  // namespace spotblue
