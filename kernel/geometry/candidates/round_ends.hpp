#pragma once
// Keyseats and keys whose ends are rounded by half their width.

#include <optional>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// A width of a product that is placed.
struct PlacedWidth {
  const Product& product;
  const Width& width;
  Frame frame;
};

// How much longer the slot is than the key, between the round ends of both; nothing unless each has
// two, in one line. The key may lie anywhere along the slot.
[[nodiscard]] std::optional<double> round_ends_apart(const PlacedWidth& slot,
                                                     const PlacedWidth& key);

}  // namespace spotblue
