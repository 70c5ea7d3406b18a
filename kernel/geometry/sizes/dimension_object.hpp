#pragma once
// A dimension of an XDE document as a stated size, and the other way round.

#include <XCAFDimTolObjects_DimensionObject.hxx>
#include <XCAFDimTolObjects_DimensionType.hxx>
#include <optional>
#include <string_view>

#include "spotblue/geometry/semantic_size.hpp"

namespace spotblue {

enum class DimensionKind { size, plain_distance, other_distance, angle };

[[nodiscard]] DimensionKind kind_of(XCAFDimTolObjects_DimensionType type);

// Whether a dimension's name is one that Open CASCADE's STEP reader gives: the name of the entity.
[[nodiscard]] bool is_step_name(std::string_view name);

// Name, characteristic, nominal, deviations, limits and class, as they stand in the object.
[[nodiscard]] SemanticSize size_in(const XCAFDimTolObjects_DimensionObject& object);

// The size in the object's description of that name, where it has one that makes sense.
[[nodiscard]] std::optional<SemanticSize> words_in(const XCAFDimTolObjects_DimensionObject& object);

}  // namespace spotblue
