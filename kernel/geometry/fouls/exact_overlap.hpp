#pragma once
/// @file
/// What two placed solids share, by Open CASCADE's boolean, for the pairs no proof has cleared; and
/// where those touch that share nothing.

#include <cstdint>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "geometry/fouls/contact_question.hpp"
#include "geometry/seats/accounted.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue::proof {

/// A pair of products, in the first one's frame.
struct OpenPair {
  ProductId product_a{}, product_b{};
  Frame b_to_a;
  Accounted accounted;                ///< cut away before anything is measured
  std::vector<Direction> directions;  ///< along which the depth may be least
  std::vector<Line> axes;             ///< away from which it may be
  /// Points said to be inside both: an answer that leaves one out that is, is not believed.
  std::vector<Point> inside;
  double most_shared = std::numeric_limits<double>::infinity();  ///< mm3, the smaller part's volume
  double same_length = 0.0;
  bool proved_clear = false;  ///< only the contact is asked about
  ContactQuestion contact = ContactQuestion::none;
  double reach = 0.0;  ///< of nearest_contact
};

/// One connected piece of an overlap.
struct OverlapRegion {
  double volume = 0.0;  ///< mm3
  double depth = 0.0;   ///< mm, as of a Foul
  double length = 0.0;  ///< mm, as of a Foul
  bool exact = true;  ///< no face of it is free-form: where those meet, the boolean only comes near
  std::optional<Point> at;
  std::uint32_t holds =
      0;  ///< a bit for each of the first points of OpenPair::inside that it holds
};

/// What is left of the overlap, in the first product's frame.
struct Overlap {
  enum class State { clear, shared, undecided, not_looked_at };
  State state = State::undecided;
  std::vector<OverlapRegion> regions;     ///< greatest first, when shared
  std::string why;                        ///< one line, when undecided
  std::optional<NearestContact> contact;  ///< of a pair asked about it that is clear
  std::string no_contact_why;  ///< one line, where whether a clear pair touches was not found
};

/// Pieces told apart of one pair; what is over is told with the last.
inline constexpr std::size_t kMostRegions = 64;

/// Decides each pair in a contained child; a pair that a limit leaves no time or memory for is not
/// looked at; a pair that crashes or runs out of time is undecided and
/// the rest goes on. `shapes` may be null: then every pair is undecided.
[[nodiscard]] std::vector<Overlap> exact_overlaps(const ShapeStore* shapes,
                                                  std::span<const OpenPair> pairs,
                                                  const ReadLimits& limits);

}  // namespace spotblue::proof
