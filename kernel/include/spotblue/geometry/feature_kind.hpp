#pragma once
/// @file
/// The kinds of feature a product has, and how one of them is pointed at.

#include <cstddef>

namespace spotblue {

enum class FeatureKind { cylinder, cone, plane, width };

/// A feature of a product: index into the product's list of that kind.
struct ProductFeatureRef {
  FeatureKind kind = FeatureKind::cylinder;
  std::size_t index = 0;
  bool operator==(const ProductFeatureRef&) const = default;
};

}  // namespace spotblue
