#pragma once
/// @file
/// Where two placed solids that share no material touch, or stand one in the other, by Open
/// CASCADE's least distance face by face. Runs in a contained child only.

#include <TopoDS_Shape.hxx>
#include <optional>

#include "geometry/fouls/contact_question.hpp"

namespace spotblue::proof {

/// The nearest two faces that touch (kTouching), or of which one is a ball, a torus or free form
/// and one stands in the other with no more than `reach` between; none where there are no such
/// faces. `b` is in a's frame. Beside seats only what a ball or a free form bears on is an answer.
/// @throws Error open_cascade_failed when Open CASCADE does not find a distance.
[[nodiscard]] std::optional<NearestContact> nearest_contact(const TopoDS_Shape& a,
                                                            const TopoDS_Shape& b,
                                                            ContactQuestion question, double reach);

}  // namespace spotblue::proof
