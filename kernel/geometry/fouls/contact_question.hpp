#pragma once
/// @file
/// Which pairs may touch where no seat says how, told by what bounds their faces; and the answer.

#include <cstdint>
#include <string_view>

#include "geometry/faces/face_bounds.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue::proof {

/// What is asked of two parts that share no material.
enum class ContactQuestion {
  none,          ///< they come near nowhere, or their seats say how
  any_face,      ///< nothing says how they bear on each other
  beside_seats,  ///< a ball or a free-form face comes near a round or free-form face of the other
};

/// Parts that come so near touch, mm: a tenth of what is felt at the bench.
inline constexpr double kTouching = 0.01;

enum class FaceForm : std::uint8_t { plane, cylinder, cone, sphere, torus, free_form };

/// Where two faces come nearest.
struct NearestContact {
  double gap = 0.0;  ///< mm
  Point at;          ///< on a, in its frame
  FaceForm a = FaceForm::plane, b = FaceForm::plane;
};

/// "plane", "free form", ...
[[nodiscard]] std::string_view form_name(FaceForm form);

/// How near two faces come at most where they count, mm: `reach` where one stands in the other,
/// kTouching where a plane is one of them, or where the seats have told what stands in what:
/// between cylinders and cones, and beside seats of a ball over the point of a drilled hole.
[[nodiscard]] double contact_limit(FaceForm a, FaceForm b, ContactQuestion question, double reach);

/// `seated`: a seat or thread joins the two. `b_to_a` leads to a's frame. Never none where two
/// parts that nothing joins touch, or a ball, a torus or a free form of theirs comes within the
/// settings' radial gap of a face that is not plane.
[[nodiscard]] ContactQuestion contact_question(const FaceBounds& a, const FaceBounds& b,
                                               const Frame& b_to_a, bool seated,
                                               const SeatSettings& settings);

}  // namespace spotblue::proof
