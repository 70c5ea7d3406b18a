#pragma once
/// @file
/// The kinds of feature a product has, and how one of them is pointed at.

#include <cstddef>

#include "spotblue/base/words.hpp"

namespace spotblue {

enum class FeatureKind { cylinder, cone, plane, width };
constexpr auto describe(const FeatureKind*) {
  return words("Which list of a product a feature is in.", "cylinder", "cone", "plane", "width");
}

struct ProductFeatureRef {
  FeatureKind kind = FeatureKind::cylinder;
  std::size_t index = 0;
  bool operator==(const ProductFeatureRef&) const = default;
};
constexpr void describe(auto& fields, const ProductFeatureRef*) {
  fields.value("ProductFeatureRef", "A feature of a product.")
      .member("kind", &ProductFeatureRef::kind, "which list of the product")
      .member("index", &ProductFeatureRef::index, "number in that list, from 0");
}

}  // namespace spotblue
