#pragma once
// What a question about a net must keep to; sums of its lengths as plain numbers, and what they may
// be while each length is within its limits; shortest ways and short loops over its stops.

#include <cstddef>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "spotblue/mechanics/play_net.hpp"

namespace spotblue {

/// @throws Error bad_input unless both are bodies of the net, and two.
void require_bodies(const PlayNet& net, std::size_t of, std::size_t on,
                    const std::string& under = "");

/// @throws Error bad_input naming the place, for an index that is not under the count of them.
void require_index(std::size_t index, std::size_t count, const std::string& place,
                   std::string_view what);

/// Each of a net's lengths, from its low to its high, mm.
struct LengthBox {
  std::vector<double> low, high;
};
[[nodiscard]] LengthBox box_of(const PlayNet& net);
/// Each in the middle of its limits.
[[nodiscard]] std::vector<double> middles_of(const PlayNet& net);

/// How often each of the net's lengths counts in all the stops together.
using PlaySum = std::vector<double>;
[[nodiscard]] PlaySum sum_of(const PlayNet& net, std::span<const std::size_t> stops);
[[nodiscard]] std::vector<PlayTerm> terms_of(const PlaySum& sum);

[[nodiscard]] double value_at(const PlaySum& sum, std::span<const double> lengths);
/// The lengths at which the sum is least, and greatest.
[[nodiscard]] std::vector<double> where_least(const PlaySum& sum, const LengthBox& box);
[[nodiscard]] std::vector<double> where_greatest(const PlaySum& sum, const LengthBox& box);

/// Each stop's gap at those lengths.
[[nodiscard]] std::vector<double> gaps_at(const PlayNet& net, std::span<const double> lengths);
void gaps_into(const PlayNet& net, std::span<const double> lengths, std::span<double> gaps);
/// Each stop's least gap, as if no other stop counted the same lengths.
[[nodiscard]] std::vector<double> least_gaps(const PlayNet& net, const LengthBox& box);

/// The length that the stops count both ways, and whose cancelling is worth the most; the net's
/// number of lengths where there is none.
[[nodiscard]] std::size_t most_shared(const PlayNet& net, std::span<const std::size_t> stops,
                                      const LengthBox& box);

/// Thrown where there are too many ways to look at.
struct TooManyWays : std::runtime_error {
  TooManyWays() : std::runtime_error("too many ways") {}
};

/// A net's stops as arcs from b to a, so that a way from B to A bounds x_A - x_B.
class PlayWays {
 public:
  explicit PlayWays(const PlayNet& net);

  [[nodiscard]] bool leads(std::size_t from, std::size_t to) const;

  /// The way there and back together; nothing where a loop on the way is shorter than nothing by
  /// more than rounding.
  /// @param lengths  room to work in, kept from call to call.
  /// @pre leads both ways
  [[nodiscard]] std::optional<double> play(std::size_t of, std::size_t on,
                                           std::span<const double> gaps,
                                           std::vector<double>& lengths) const;

  /// By body how long the shortest way from one is, infinite where none leads there; nothing where
  /// a loop shortens ways.
  [[nodiscard]] std::optional<std::vector<double>> lengths_from(std::size_t body,
                                                                std::span<const double> gaps) const;

  /// The stops of the shortest way that comes to no body twice, from the last body back to the
  /// first; nothing where none leads there. Gaps by stop, mm.
  /// @throws TooManyWays only where a loop is shorter than nothing; Error stopped.
  [[nodiscard]] std::optional<std::vector<std::size_t>> shortest(
      std::size_t from, std::size_t to, std::span<const double> gaps) const;

  /// The stops of a loop that is shorter than nothing by more than rounding, if there is one.
  [[nodiscard]] std::optional<std::vector<std::size_t>> short_loop(
      std::span<const double> gaps) const;

 private:
  friend class EveryWay;
  /// Of the shortest ways from one body, by the body they lead to; not settled where a loop
  /// shortens them.
  struct From {
    std::vector<double> length;
    std::vector<std::size_t> by;  // stop that was come by
    bool settled = false;
  };
  [[nodiscard]] From ways_from(std::size_t body, std::span<const double> gaps) const;
  struct Arc {
    std::size_t from = 0, to = 0;
  };
  std::size_t bodies_ = 0;
  std::vector<Arc> arcs_;                      // by stop
  std::vector<std::vector<std::size_t>> out_;  // stops by the body they start from
  mutable std::size_t steps_ = 0;              // of all ways tried; one thread asks
};

}  // namespace spotblue
