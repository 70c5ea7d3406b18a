#pragma once
/// @file
/// Which feature of a part a name means.

#include <string_view>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/feature_kind.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

/// The features of a product that a text means: the one of that name, else those of which the file
/// calls a face so, and the one of that sized name, "bore 8". None: there is no such; several: the
/// text does not tell which.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<ProductFeatureRef> features_called(const Product& product,
                                                                             std::string_view text);

}  // namespace spotblue
