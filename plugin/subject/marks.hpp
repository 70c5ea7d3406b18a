#pragma once
// Which features and parts are marked, and as what.

#include <Quantity_Color.hxx>
#include <compare>
#include <cstddef>
#include <map>
#include <string_view>

#include "plugin/subject/subject.hpp"

namespace spotblue::plugin {

/// The worse one wins where a feature has several. A seat that was not judged is only a seat.
enum class Mark { seat, conforming, undecided, nonconforming };

[[nodiscard]] std::string_view mark_name(Mark mark);
/// Tells the marks apart for the colour-blind too.
/// Source: the palette of Okabe and Ito for colour-blind readers, from memory.
[[nodiscard]] Quantity_Color mark_colour(Mark mark);

struct FeatureKey {
  ProductId product{};
  FeatureKind kind = FeatureKind::cylinder;
  std::size_t index = 0;
  auto operator<=>(const FeatureKey&) const = default;
};

struct Marks {
  std::map<FeatureKey, Mark> features;
  std::map<ProductId, Mark> parts;  ///< products in a foul
};

/// By outcome when the subject was checked, else seats as seats and fouls as nonconforming.
[[nodiscard]] Marks marks_of(const Subject& subject);

}  // namespace spotblue::plugin
