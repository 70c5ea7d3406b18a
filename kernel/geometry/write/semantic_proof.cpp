#include "geometry/write/semantic_proof.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "geometry/model/tolerances.hpp"
#include "spotblue/geometry/feature_names.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue {
namespace {

bool is_near(double a, double b) {
  return std::abs(a - b) <= kSameShare * std::max(1.0, std::abs(a));
}

template <typename Feature, typename Size>
bool are_alike(const std::vector<Feature>& before, const std::vector<Feature>& after, Size size) {
  return std::equal(before.begin(), before.end(), after.begin(), after.end(),
                    [&](const Feature& a, const Feature& b) {
                      return a.name == b.name && is_near(size(a), size(b));
                    });
}

bool is_alike(const Product& a, const Product& b) {
  return a.id == b.id && a.solids == b.solids && a.faces == b.faces && a.closed == b.closed &&
         is_near(a.volume, b.volume) &&
         are_alike(a.cylinders, b.cylinders, [](const Cylinder& one) { return one.diameter; }) &&
         are_alike(a.cones, b.cones, [](const Cone& one) { return one.half_angle; }) &&
         are_alike(a.planes, b.planes, [](const Plane& one) { return area(one.outline); }) &&
         are_alike(a.widths, b.widths, [](const Width& one) { return one.width; }) &&
         a.others.size() == b.others.size();
}

bool is_alike(const Occurrence& a, const Occurrence& b) {
  bool same = a.id == b.id && a.product == b.product;
  for (std::size_t row = 0; row < a.frame.rows.size(); ++row) {
    for (std::size_t column = 0; column < a.frame.rows[row].size(); ++column) {
      same = same && is_near(a.frame.rows[row][column], b.frame.rows[row][column]);
    }
  }
  return same;
}

bool is_same_size(const SemanticSize& a, const SemanticSize& b) {
  return a.entity == b.entity && is_usable(b) && a.product == b.product &&
         a.features == b.features && a.tolerance_class == b.tolerance_class &&
         is_near(a.limits->lower_mm, b.limits->lower_mm) &&
         is_near(a.limits->upper_mm, b.limits->upper_mm);
}

SizeLimits meant(const SizeToWrite& size) {
  if (size.deviations) {
    return {size.nominal_mm + size.deviations->lower_mm,
            size.nominal_mm + size.deviations->upper_mm};
  }
  const Limits made = limits(Length::mm(size.nominal_mm), size.tolerance_class);
  return {made.lower.in_mm(), made.upper.in_mm()};
}

bool is_stated(const Model& model, const SizeToWrite& wanted) {
  constexpr double kSame = 1e-6;
  const SizeLimits limits = meant(wanted);
  return std::any_of(
      model.semantic_sizes.begin(), model.semantic_sizes.end(), [&](const SemanticSize& size) {
        if (!is_usable(size) || !size.product ||
            model.products[*size.product].id != wanted.product) {
          return false;
        }
        const std::vector<ProductFeatureRef> called =
            features_called(model.products[*size.product], wanted.feature);
        const bool on_it = std::any_of(
            size.features.begin(), size.features.end(), [&](const ProductFeatureRef& feature) {
              return std::find(called.begin(), called.end(), feature) != called.end();
            });
        return on_it && size.tolerance_class == wanted.tolerance_class &&
               std::abs(size.limits->lower_mm - limits.lower_mm) < kSame &&
               std::abs(size.limits->upper_mm - limits.upper_mm) < kSame;
      });
}

}  // namespace

std::string first_difference(const Model& before, const Model& after,
                             const std::vector<PlacedSize>& added) {
  if (before.products.size() != after.products.size() ||
      before.occurrences.size() != after.occurrences.size()) {
    return fmt::format("{} parts at {} places became {} at {}", before.products.size(),
                       before.occurrences.size(), after.products.size(), after.occurrences.size());
  }
  for (std::size_t i = 0; i < before.products.size(); ++i) {
    if (!is_alike(before.products[i], after.products[i])) {
      return fmt::format("part '{}' is no longer as it was", before.products[i].id);
    }
  }
  for (std::size_t i = 0; i < before.occurrences.size(); ++i) {
    if (!is_alike(before.occurrences[i], after.occurrences[i])) {
      return fmt::format("'{}' no longer stands where it did", before.occurrences[i].id);
    }
  }
  for (const SemanticSize& size : before.semantic_sizes) {
    if (is_usable(size) &&
        std::none_of(after.semantic_sizes.begin(), after.semantic_sizes.end(),
                     [&](const SemanticSize& other) { return is_same_size(size, other); })) {
      return fmt::format("the size {}{} that it stated is lost", semantic_size_text(size),
                         entity_text(size));
    }
  }
  for (const PlacedSize& placed : added) {
    if (!is_stated(after, *placed.size)) {
      return fmt::format("the size of '{}: {}' is not stated", placed.size->product,
                         placed.size->feature);
    }
  }
  return {};
}

}  // namespace spotblue
