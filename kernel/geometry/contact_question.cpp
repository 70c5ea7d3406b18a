#include "geometry/contact_question.hpp"

#include <algorithm>
#include <vector>

namespace spotblue::proof {
namespace {

std::vector<Box> near_boxes(const FaceBounds& bounds, const Box& other, double reach) {
  std::vector<Box> found;
  const auto keep = [&](const auto& face) {
    if (overlap(grown(face.box, reach), other)) {
      found.push_back(face.box);
    }
  };
  std::ranges::for_each(bounds.patches, keep);
  std::ranges::for_each(bounds.flats, keep);
  std::ranges::for_each(bounds.others, keep);
  return found;
}

bool any_near(const FaceBounds& a, const FaceBounds& b, const Frame& b_to_a, double reach) {
  const std::vector<Box> of_a = near_boxes(a, place_box(b_to_a, b.box), reach);
  std::vector<Box> of_b = near_boxes(b, place_box(inverse(b_to_a), a.box), reach);
  for (Box& box : of_b) {
    box = place_box(b_to_a, box);
  }
  return std::ranges::any_of(of_a, [&](const Box& one) {
    const Box reached = grown(one, reach);
    return std::ranges::any_of(of_b, [&](const Box& other) { return overlap(reached, other); });
  });
}

bool is_free_form(const OtherFace& face) { return !face.revolved && !face.sized; }

/// Whether a free-form face of one comes near a round or free-form face of the other, by boxes.
bool free_form_near(const FaceBounds& one, const FaceBounds& other, const Frame& to_one,
                    double reach) {
  return std::ranges::any_of(one.others, [&](const OtherFace& face) {
    const Box box = grown(face.box, reach);
    const auto meets = [&](const auto& with) { return overlap(box, place_box(to_one, with.box)); };
    return is_free_form(face) &&
           (std::ranges::any_of(other.patches, meets) || std::ranges::any_of(other.others, meets));
  });
}

}  // namespace

ContactQuestion contact_question(const FaceBounds& a, const FaceBounds& b, const Frame& b_to_a,
                                 bool seated, const SeatSettings& settings) {
  const double reach = settings.radial_gap_mm;
  if (!seated) {
    return any_near(a, b, b_to_a, reach) ? ContactQuestion::any_face : ContactQuestion::none;
  }
  return free_form_near(a, b, b_to_a, reach) || free_form_near(b, a, inverse(b_to_a), reach)
             ? ContactQuestion::free_form
             : ContactQuestion::none;
}

}  // namespace spotblue::proof
