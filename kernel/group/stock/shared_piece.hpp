#pragma once
// Several parts out of one piece of stock, one behind the other.

#include <optional>
#include <vector>

#include "group/stock/turned_part.hpp"

namespace spotblue {

/// A part that the piece is too small for, at one of its sizes.
struct TooSmallFor {
  OccurrenceId part{};
  StockMargin margin;
};

struct SharedPiece {
  std::vector<OccurrenceId> parts;          ///< as the job lists them
  std::vector<TooSmallFor> too_small;       ///< across
  std::vector<OccurrenceId> not_whole;      ///< with free-form faces that were left out
  double needs_mm = 0.0;                    ///< along, all cuts and the stub included
  std::optional<double> left_over_mm = {};  ///< negative: too short; none: no length is given
};

/// Each with what is cleaned off its sides; the parts of a plate lie in one row.
/// @throws Error bad_input, naming job file and line, for names that mean no part.
[[nodiscard]] SharedPiece shared_piece(const WorkedSizes& sizes, const SharedStock& stock);

/// The box round a part as it is drawn.
[[nodiscard]] FlatSidedPart flat_sided(const DeclaredJob& declared, OccurrenceId part);
[[nodiscard]] RoundStock round_stock(const Stock& stock);
[[nodiscard]] BlockStock block_stock(const Stock& stock);

}  // namespace spotblue
