#include "geometry/outline/profile_images.hpp"

#include <algorithm>
#include <optional>

#include "geometry/model/tolerances.hpp"
#include "geometry/outline/profile.hpp"

namespace spotblue::proof {
namespace {

/// A surface counts as turned about the axis up to this tilt and this part of its radius off it.
constexpr double kWallTilt = 0.03;
constexpr double kWallOffset = 0.25;
constexpr double kParallelTilt = 1e-7;
constexpr double kNoTilt = 1e-3 * kParallelTilt;  // whose lean over a face is nothing
/// Fillets of more pieces are looked at whole.
constexpr std::size_t kMostPieces = 8;

/// The axis with two directions square to it.
struct AxisView {
  Point at;
  Direction along, first, second;
};

AxisView view_along(const Line& axis, Point toward) {
  const Point square = toward - dot(toward, axis.along) * axis.along;
  const Direction first = norm(square) > kParallelTilt ? unit(square) : any_square(axis.along);
  return {axis.at, axis.along, first, third(axis.along, first)};
}

Interval moved(Interval span, double by) { return {span.low + by, span.high + by}; }

double nearest_to_zero(Interval span) { return std::max({0.0, span.low, -span.high}); }
double farthest_from_zero(Interval span) {
  return std::max(std::abs(span.low), std::abs(span.high));
}

Image block(Interval z, double low, double high) { return {z, low, low, high, high}; }

/// A block round anything with an extent: the rectangle it fills seen along the axis.
Image block_of(const auto& face, const AxisView& view) {
  const auto span = [&](Direction d) { return moved(extent(face, d), -dot(d, view.at)); };
  const Interval first = span(view.first);
  const Interval second = span(view.second);
  return block(span(view.along), std::hypot(nearest_to_zero(first), nearest_to_zero(second)),
               std::hypot(farthest_from_zero(first), farthest_from_zero(second)));
}

/// A cylinder or cone beside the axis and parallel to it: exact over its arcs.
Image parallel_block(const Turned& t, const AxisView& view) {
  const Point off = t.axis.at - view.at;
  const Point away = off - dot(off, view.along) * view.along;
  const double distance = norm(away);
  const Interval toward = distance > 0.0
                              ? wave(dot(away, t.x) / distance, dot(away, t.y) / distance, t.arcs)
                              : Interval{-1.0, 1.0};
  Image image = block_of(t, view);
  double low = std::numeric_limits<double>::infinity();
  double high = 0.0;
  const Interval radii{std::min(t.radius_from, t.radius_to), std::max(t.radius_from, t.radius_to)};
  for (const double c : {toward.low, toward.high}) {
    // r2 = d2 + R2 + 2 d R c is convex in R: its least may lie between the two radii.
    const double best = std::clamp(-distance * c, radii.low, radii.high);
    for (const double radius : {radii.low, best, radii.high}) {
      const double square = distance * distance + radius * radius + 2.0 * distance * radius * c;
      low = std::min(low, std::sqrt(std::max(0.0, square)));
      high = std::max(high, std::sqrt(std::max(0.0, square)));
    }
  }
  return block(image.z, low, high);
}

/// Greatest distances of a stretch's ends from the axis.
struct Offsets {
  double from, to;
};

/// A turned stretch laid along the axis; radii and looseness change evenly between its ends (the
/// distance between two lines is convex, so that it stays below the chord).
struct Lay {
  Interval z;
  double first, last;              ///< radii
  double loose_first, loose_last;  ///< how far the surface may be from them
  Side side;

  [[nodiscard]] Image image(double from, double to, bool wall) const {
    const double length = std::max(z.high - z.low, kRounding);
    const auto at = [&](double low, double high, double s) {
      return low + (high - low) * (s - z.low) / length;
    };
    const double loose_from = std::max({0.0, at(loose_first, loose_last, from)});
    const double loose_to = std::max({0.0, at(loose_first, loose_last, to)});
    const double radius_from = at(first, last, from);
    const double radius_to = at(first, last, to);
    return {{from, to},
            std::max(0.0, radius_from - loose_from),
            std::max(0.0, radius_to - loose_to),
            radius_from + loose_from,
            radius_to + loose_to,
            wall,
            side};
  }
};

void add_walls(std::vector<Image>& images, const Turned& t, const Line& axis, Offsets offsets,
               double tilt) {
  const bool forward = dot(t.axis.along, axis.along) > 0.0;
  Lay lay{{station(axis, at_station(t.axis, forward ? t.from : t.to)),
           station(axis, at_station(t.axis, forward ? t.to : t.from))},
          forward ? t.radius_from : t.radius_to,
          forward ? t.radius_to : t.radius_from,
          forward ? offsets.from : offsets.to,
          forward ? offsets.to : offsets.from,
          t.side};
  const double length = std::max(lay.z.high - lay.z.low, kRounding);
  const double slope = std::abs(lay.last - lay.first) / length;
  const double widest = std::max(lay.first, lay.last);
  // Tilt shears the ends along the axis; the section is an ellipse, and on a cone, or where the
  // offset changes, the shear moves the radius too.
  const double shear = widest * tilt;
  const double loose = (slope + tilt) * shear + widest * tilt * tilt + slope * length * tilt * tilt;
  lay.loose_first += loose;
  lay.loose_last += loose;
  if (shear < 0.1 * kSame) {
    images.push_back(lay.image(lay.z.low, lay.z.high, true));
    return;
  }
  if (lay.z.high - shear > lay.z.low + shear) {
    images.push_back(lay.image(lay.z.low + shear, lay.z.high - shear, true));
  }
  images.push_back(lay.image(lay.z.low - shear, lay.z.low + shear, false));
  images.push_back(lay.image(lay.z.high - shear, lay.z.high + shear, false));
}

/// Distances of the stretch's ends from the axis, if it passes for turned about it.
std::optional<Offsets> wall_offsets(const Turned& t, const Line& axis, double tilt) {
  const Offsets offsets{distance(axis, at_station(t.axis, t.from)),
                        distance(axis, at_station(t.axis, t.to))};
  const double most = kWallOffset * std::max(t.radius_from, t.radius_to);
  if (tilt > kWallTilt || offsets.from > most || offsets.to > most) {
    return {};
  }
  return offsets;
}

/// What a box may fill seen from the axis: not tight, and cheap.
Image rough_block(const Box& box, const Line& axis) {
  const double off = distance(axis, 0.5 * (box.low + box.high));
  const double half = 0.5 * diagonal(box);
  const double base = dot(axis.along, axis.at);
  return block(moved(extent(box, axis.along), -base), std::max(0.0, off - half), off + half);
}

struct Faces {
  std::vector<Image> images;
  std::vector<const Box*> boxes;
  std::vector<const Turned*> crossing;  ///< cylinders across the axis, else null
  std::vector<bool> far;                ///< known by a rough block only
};

bool meets(Interval a, Interval b) { return a.low <= b.high + kSame && b.low <= a.high + kSame; }

/// Draws in the image of a cylinder that runs across the axis to what its neighbours reach.
///
/// The face has edges only where another face of the closed shell is. Where no other face goes
/// (beyond the greatest radius any neighbour reaches, or within the least), the face would have to
/// hold whole pieces of its unbounded cylinder; outward those are endless, inward they run through
/// the point nearest the axis. A face that has no such pieces does not reach there at all.
Image trimmed_image(const Faces& faces, std::size_t which, const Line& axis) {
  Image image = faces.images[which];
  const Turned& t = *faces.crossing[which];
  double least = std::numeric_limits<double>::infinity();
  double most = -least;
  for (std::size_t i = 0; i < faces.images.size(); ++i) {
    const Image& other = faces.images[i];
    if (i == which || faces.boxes[i] == faces.boxes[which] || !meets(other.z, image.z) ||
        !overlap(*faces.boxes[i], grown(*faces.boxes[which], kSame))) {
      continue;
    }
    least = std::min({least, other.low_first, other.low_last});
    most = std::max({most, other.high_first, other.high_last});
  }
  if (most < 0.0) {
    return image;
  }
  image.high_first = image.high_last = std::min(image.high_first, most);
  // Stations of the points nearest the axis, over all generators of the cylinder.
  const double cosine = dot(t.axis.along, axis.along);
  const double sine2 = 1.0 - cosine * cosine;
  const Point off = axis.at - t.axis.at;
  const double middle = (dot(off, t.axis.along) - cosine * dot(off, axis.along)) / sine2;
  const double spread = t.radius_from * std::abs(cosine) / std::sqrt(sine2) + kSame;
  if (t.from > middle + spread || t.to < middle - spread) {
    image.low_first = image.low_last = std::max(image.low_first, least);
  }
  return image;
}

void add_turned(Faces& faces, const Turned& t, const Line& axis) {
  const double tilt = norm(cross(t.axis.along, axis.along));
  const auto before = faces.images.size();
  if (const auto offsets = wall_offsets(t, axis, tilt)) {
    add_walls(faces.images, t, axis, *offsets, tilt);
  } else if (tilt < kNoTilt) {
    faces.images.push_back(parallel_block(t, view_along(axis, t.axis.at - axis.at)));
  } else {
    faces.images.push_back(block_of(t, view_along(axis, t.axis.along)));
  }
  const bool crossing = tilt > 0.1 && t.radius_from == t.radius_to && !faces.images[before].wall;
  faces.crossing.resize(faces.images.size(), crossing ? &t : nullptr);
}

Image other_image(const OtherFace& face, const Line& axis) {
  if (face.revolved) {
    const double tilt = norm(cross(face.axis.along, axis.along));
    const double ends = std::max(distance(axis, at_station(face.axis, face.from)),
                                 distance(axis, at_station(face.axis, face.to)));
    if (tilt < kWallTilt && ends < kWallOffset * face.outer) {
      const double from = station(axis, at_station(face.axis, face.from));
      const double to = station(axis, at_station(face.axis, face.to));
      const double shear = face.outer * tilt;
      return block({std::min(from, to) - shear, std::max(from, to) + shear},
                   std::max(0.0, face.inner - ends - face.outer * tilt * tilt),
                   face.outer * (1.0 + tilt * tilt) + ends);
    }
  }
  return block_of(face.box, view_along(axis, 0.5 * (face.box.low + face.box.high) - axis.at));
}

void add_other(Faces& faces, const OtherFace& other, const Line& axis) {
  if (other.pieces.empty() || other.pieces.size() > kMostPieces) {
    faces.images.push_back(other_image(other, axis));
    return;
  }
  OtherFace ring{.box = other.box, .revolved = true, .axis = other.axis};
  for (const RingPiece& piece : other.pieces) {
    ring.inner = piece.inner;
    ring.outer = piece.outer;
    ring.from = piece.from;
    ring.to = piece.to;
    faces.images.push_back(other_image(ring, axis));
  }
}

/// Least distance of an edge from the axis; of an arc that of its chord, whose neighbour counts.
double nearest_on_edge(const Flat& flat, const Edge2& edge, const Line& axis) {
  const auto square = [&](Point2 p) {
    const Point off = flat.at + p.u * flat.u + p.v * flat.v - axis.at;
    return off - dot(off, axis.along) * axis.along;
  };
  const Point from = square(edge.from);
  const Point way = square(edge.to) - from;
  const double length2 = dot(way, way);
  const double share = length2 > 0.0 ? std::clamp(-dot(from, way) / length2, 0.0, 1.0) : 0.0;
  return norm(from + share * way);
}

/// Where the plane itself comes nearest to the axis, the face does not reach it.
bool is_nearest_at_its_edge(const Flat& flat, const Image& image, const Line& axis) {
  const double square = std::abs(dot(flat.normal, axis.along));
  const double plane = square < kNoTilt ? std::abs(dot(flat.normal, axis.at - flat.at)) : 0.0;
  return std::min(image.low_first, image.low_last) > plane + kSame;
}

/// Draws the image of a plane face away from the axis: the distance from the axis has one least
/// place on a plane, so that a face without it is nearest at an edge, where it is straight by its
/// own outline and curved by the round face beside it.
void draw_out(const Faces& faces, const FaceBounds& part, const Flat& flat, const Line& axis,
              Image& image) {
  if (!is_nearest_at_its_edge(flat, image, axis)) {
    return;
  }
  double near = std::numeric_limits<double>::infinity();
  for (const Edge2& edge : flat.outline->edges) {
    near = std::min(near, nearest_on_edge(flat, edge, axis));
  }
  for (std::size_t i = 0; i < faces.images.size(); ++i) {
    const bool plane = std::ranges::any_of(
        part.flats, [&](const Flat& other) { return &other.box == faces.boxes[i]; });
    if (!plane && overlap(*faces.boxes[i], grown(flat.box, kSame))) {
      near = std::min({near, faces.images[i].low_first, faces.images[i].low_last});
    }
  }
  image.low_first = std::max(image.low_first, near);
  image.low_last = std::max(image.low_last, near);
}

/// Draws in the images of plane faces whose outlines are known but for a slack.
///
/// A plane face is farthest along or from the axis at its edge, where another face of the closed
/// shell is, or at a corner of its own outline; corners are exact.
void draw_in_flats(Faces& faces, const FaceBounds& part, const Line& axis) {
  const auto loose = [](const Flat& flat) { return flat.slack > 0.0; };
  if (std::ranges::none_of(part.flats, loose)) {
    return;
  }
  Interval z{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  double far = 0.0;
  std::vector<Image*> drawn_in;
  for (std::size_t i = 0; i < faces.images.size(); ++i) {
    const auto own = std::ranges::find_if(
        part.flats, [&](const Flat& flat) { return &flat.box == faces.boxes[i]; });
    Image& image = faces.images[i];
    if (own == part.flats.end() || !loose(*own)) {
      z = {std::min(z.low, image.z.low), std::max(z.high, image.z.high)};
      far = std::max({far, image.high_first, image.high_last});
      continue;
    }
    drawn_in.push_back(&image);
    draw_out(faces, part, *own, axis, image);
    for (const Edge2& edge : own->outline->edges) {
      const Point corner = own->at + edge.from.u * own->u + edge.from.v * own->v;
      const double at = station(axis, corner);
      z = {std::min(z.low, at), std::max(z.high, at)};
      far = std::max(far, distance(axis, corner));
    }
  }
  for (Image* image : drawn_in) {
    image->z = {std::max(image->z.low, z.low), std::min(image->z.high, z.high)};
    image->high_first = std::min(image->high_first, far);
    image->high_last = std::min(image->high_last, far);
  }
}

/// The images, those of far faces as one.
std::vector<Image> gathered(const Faces& faces, const Line& axis) {
  std::vector<Image> images;
  std::optional<Image> far;
  for (std::size_t i = 0; i < faces.images.size(); ++i) {
    const Image& image = faces.images[i];
    if (!faces.far[i]) {
      images.push_back(faces.crossing[i] != nullptr ? trimmed_image(faces, i, axis) : image);
      continue;
    }
    far = !far ? image
               : block({std::min(far->z.low, image.z.low), std::max(far->z.high, image.z.high)},
                       std::min(far->low_first, image.low_first),
                       std::max(far->high_first, image.high_first));
  }
  if (far) {
    images.push_back(*far);
  }
  return images;
}

}  // namespace

std::vector<Image> images_about(const FaceBounds& part, const Line& axis, double reach) {
  Faces faces;
  faces.images.reserve(part.stretches.size() + part.flats.size() + part.others.size());
  const auto add = [&](const auto& face, const auto& add_near) {
    const Image rough = rough_block(face.box, axis);
    const bool far = rough.low_first > reach;
    if (far) {
      faces.images.push_back(rough);
      faces.boxes.push_back(&face.box);
      faces.crossing.push_back(nullptr);
    } else {
      add_near(face);
      faces.boxes.resize(faces.images.size(), &face.box);
      faces.crossing.resize(faces.images.size(), nullptr);
    }
    faces.far.resize(faces.images.size(), far);
  };
  for (const Turned& t : part.stretches) {
    add(t, [&](const Turned& near) { add_turned(faces, near, axis); });
  }
  for (const Flat& flat : part.flats) {
    add(flat, [&](const Flat& near) {
      faces.images.push_back(block_of(near, view_along(axis, near.normal)));
    });
  }
  for (const OtherFace& other : part.others) {
    add(other, [&](const OtherFace& near) { add_other(faces, near, axis); });
  }
  if (part.closed) {
    draw_in_flats(faces, part, axis);
  }
  return gathered(faces, axis);
}

}  // namespace spotblue::proof
