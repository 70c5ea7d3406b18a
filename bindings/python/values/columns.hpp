#pragma once
/// @file
/// What a member of a result is in a table of such results. View writes it into the class's
/// `_columns`, of which spotblue/arrays.py makes numpy's columns.

#include <concepts>
#include <optional>
#include <string>
#include <string_view>

#include "spotblue/geometry/ids.hpp"
#include "spotblue/geometry/vector.hpp"

namespace spotblue {
struct FeatureRef;
}

namespace spotblue::python {

/// Of a plain value numpy's name for it; "feature", "occurrence" or "point" of what a table says
/// by names or by several numbers; empty for what has no column.
template <class M>
inline constexpr std::string_view kColumn{};
template <std::floating_point M>
inline constexpr std::string_view kColumn<M> = "f8";
template <std::integral M>
inline constexpr std::string_view kColumn<M> = "i8";
template <>
inline constexpr std::string_view kColumn<bool> = "?";
template <>
inline constexpr std::string_view kColumn<std::string> = "U";
template <>
inline constexpr std::string_view kColumn<FeatureRef> = "feature";
template <>
inline constexpr std::string_view kColumn<OccurrenceId> = "occurrence";
template <>
inline constexpr std::string_view kColumn<Point> = "point";
template <class M>
inline constexpr std::string_view kColumn<std::optional<M>> = kColumn<M>;

}  // namespace spotblue::python
