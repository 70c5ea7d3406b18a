#include "geometry/fouls/contact_question.hpp"

#include <algorithm>
#include <optional>
#include <vector>

#include "geometry/model/tolerances.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue::proof {
namespace {

/// One face by what bounds it; one of the three is set.
struct Bounded {
  Box box;  ///< in a's frame
  const Turned* turned = nullptr;
  const Flat* flat = nullptr;
  const OtherFace* other = nullptr;
};

/// The faces of a part that come within reach of a box of its own frame.
std::vector<Bounded> faces_near(const FaceBounds& bounds, const Box& other, double reach) {
  std::vector<Bounded> found;
  const auto is_near = [&](const auto& face) { return overlap(grown(face.box, reach), other); };
  for (const Turned& turned : bounds.patches) {
    if (is_near(turned)) {
      found.push_back({turned.box, &turned, nullptr, nullptr});
    }
  }
  for (const Flat& flat : bounds.flats) {
    if (is_near(flat)) {
      found.push_back({flat.box, nullptr, &flat, nullptr});
    }
  }
  for (const OtherFace& face : bounds.others) {
    if (is_near(face)) {
      found.push_back({face.box, nullptr, nullptr, &face});
    }
  }
  return found;
}

/// A ball is kept as the ring of its whole sphere.
bool is_ball(const OtherFace& face) {
  return face.revolved && face.pieces.empty() && face.inner == 0.0 && face.from == -face.outer &&
         face.to == face.outer;
}

FaceForm form_of(const Bounded& face) {
  if (face.flat != nullptr) {
    return FaceForm::plane;
  }
  if (face.turned != nullptr) {
    return face.turned->radius_from == face.turned->radius_to ? FaceForm::cylinder : FaceForm::cone;
  }
  return is_ball(*face.other) ? FaceForm::sphere : FaceForm::free_form;  // a torus counts alike
}

Interval extent_of(const Bounded& face, Direction d) {
  return face.turned != nullptr ? extent(*face.turned, d)
         : face.flat != nullptr ? extent(*face.flat, d)
                                : extent(face.other->box, d);
}

/// Whether a face comes within `limit` of the plane of another part's flat; `to_face` leads from
/// the flat's frame to the face's.
bool meets_plane(const Flat& flat, const Bounded& face, const Frame& to_face, double limit) {
  const Interval span = extent_of(face, place_direction(to_face, flat.normal));
  const double at = dot(place_direction(to_face, flat.normal), place_point(to_face, flat.at));
  return at >= span.low - limit && at <= span.high + limit;
}

/// A ring about an axis that holds a round face.
struct Round {
  Line axis;
  double from = 0.0, to = 0.0, inner = 0.0, outer = 0.0;
};

std::optional<Round> round_of(const Bounded& face) {
  if (face.turned != nullptr) {
    const auto [inner, outer] = std::minmax(face.turned->radius_from, face.turned->radius_to);
    return Round{face.turned->axis, face.turned->from, face.turned->to, inner, outer};
  }
  if (face.other != nullptr && face.other->revolved) {
    return Round{face.other->axis, face.other->from, face.other->to, face.other->inner,
                 face.other->outer};
  }
  return std::nullopt;
}

/// Whether two round faces may come within `limit`: told where their axes are parallel.
bool rounds_meet(const Round& one, const Round& other, const Frame& to_one, double limit) {
  if (norm(cross(place_direction(to_one, other.axis.along), one.axis.along)) > kOneDirection) {
    return true;
  }
  const auto [first, last] =
      std::minmax({station(one.axis, place_point(to_one, at_station(other.axis, other.from))),
                   station(one.axis, place_point(to_one, at_station(other.axis, other.to)))});
  const double apart = distance(one.axis, place_point(to_one, other.axis.at));
  return first <= one.to + limit && last >= one.from - limit &&
         std::max({apart - one.outer - other.outer, one.inner - other.outer - apart,
                   other.inner - one.outer - apart}) <= limit;
}

/// Whether a ring square to a flat of another part reaches its outline; others are said to.
bool reaches_outline(const Flat& flat, const Round& ring, const Frame& to_flat, double limit) {
  if (flat.outline == nullptr ||
      norm(cross(place_direction(to_flat, ring.axis.along), flat.normal)) > kOneDirection) {
    return true;
  }
  const Point from_at = place_point(to_flat, ring.axis.at) - flat.at;
  const Reach outline = reach(*flat.outline, {dot(from_at, flat.u), dot(from_at, flat.v)});
  const double slack = limit + flat.slack;
  return outline.least <= ring.outer + slack && outline.greatest >= ring.inner - slack;
}

bool may_come_near(const Bounded& a, const Bounded& b, const Frame& b_to_a, const Frame& a_to_b,
                   double reach) {
  if (a.flat != nullptr && b.flat != nullptr &&
      norm(cross(place_direction(b_to_a, b.flat->normal), a.flat->normal)) < kOneDirection) {
    return false;  // an axial seat, or back to back
  }
  const double limit = contact_limit(form_of(a), form_of(b), ContactQuestion::any_face, reach);
  if (!overlap(grown(a.box, limit), b.box) ||
      (a.flat != nullptr && !meets_plane(*a.flat, b, a_to_b, limit)) ||
      (b.flat != nullptr && !meets_plane(*b.flat, a, b_to_a, limit))) {
    return false;
  }
  const auto round_a = round_of(a);
  const auto round_b = round_of(b);
  return (!round_a || !round_b || rounds_meet(*round_a, *round_b, b_to_a, limit)) &&
         (a.flat == nullptr || !round_b || reaches_outline(*a.flat, *round_b, b_to_a, limit)) &&
         (b.flat == nullptr || !round_a || reaches_outline(*b.flat, *round_a, a_to_b, limit));
}

bool any_near(const FaceBounds& a, const FaceBounds& b, const Frame& b_to_a, double reach) {
  const Frame a_to_b = inverse(b_to_a);
  const std::vector<Bounded> of_a = faces_near(a, place_box(b_to_a, b.box), reach);
  std::vector<Bounded> of_b = faces_near(b, place_box(a_to_b, a.box), reach);
  for (Bounded& face : of_b) {
    face.box = place_box(b_to_a, face.box);
  }
  return std::ranges::any_of(of_a, [&](const Bounded& one) {
    stop_if_asked();
    return std::ranges::any_of(of_b, [&](const Bounded& other) {
      return may_come_near(one, other, b_to_a, a_to_b, reach);
    });
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

/// Whether a ball of one comes near a ball, a torus or a free form of the other, or touches a cone.
/// In a bore of its size it is the round end of a shaft.
bool ball_near(const FaceBounds& one, const FaceBounds& other, const Frame& to_one, double reach) {
  if (std::ranges::none_of(one.others, is_ball)) {
    return false;
  }
  const Frame from_one = inverse(to_one);
  std::vector<Bounded> faces = faces_near(other, place_box(from_one, one.box), reach);
  for (Bounded& face : faces) {
    face.box = place_box(to_one, face.box);
  }
  std::erase_if(faces, [](const Bounded& face) {
    return form_of(face) == FaceForm::plane || form_of(face) == FaceForm::cylinder;
  });
  return std::ranges::any_of(one.others, [&](const OtherFace& ball) {
    return is_ball(ball) && std::ranges::any_of(faces, [&](const Bounded& face) {
             const double within = contact_limit(FaceForm::sphere, form_of(face),
                                                 ContactQuestion::beside_seats, reach);
             const auto round = round_of(face);
             return overlap(grown(ball.box, within), face.box) &&
                    (!round || rounds_meet(*round_of({ball.box, nullptr, nullptr, &ball}), *round,
                                           to_one, within));
           });
  });
}

}  // namespace

std::string_view form_name(FaceForm form) {
  switch (form) {
    case FaceForm::plane:
      return "plane";
    case FaceForm::cylinder:
      return "cylinder";
    case FaceForm::cone:
      return "cone";
    case FaceForm::sphere:
      return "sphere";
    case FaceForm::torus:
      return "torus";
    case FaceForm::free_form:
      break;
  }
  return "free form";
}

double contact_limit(FaceForm a, FaceForm b, ContactQuestion question, double reach) {
  const auto seats = [](FaceForm form) {
    return form == FaceForm::cylinder || form == FaceForm::cone;
  };
  const bool plane = a == FaceForm::plane || b == FaceForm::plane;
  const bool drill_point =
      question == ContactQuestion::beside_seats && (a == FaceForm::cone || b == FaceForm::cone);
  return plane || drill_point || (seats(a) && seats(b)) ? kTouching : reach;
}

ContactQuestion contact_question(const FaceBounds& a, const FaceBounds& b, const Frame& b_to_a,
                                 bool seated, const SeatSettings& settings) {
  const double reach = settings.radial_gap_mm;
  if (!seated) {
    return any_near(a, b, b_to_a, reach) ? ContactQuestion::any_face : ContactQuestion::none;
  }
  const Frame a_to_b = inverse(b_to_a);
  return free_form_near(a, b, b_to_a, reach) || free_form_near(b, a, a_to_b, reach) ||
                 ball_near(a, b, b_to_a, reach) || ball_near(b, a, a_to_b, reach)
             ? ContactQuestion::beside_seats
             : ContactQuestion::none;
}

}  // namespace spotblue::proof
