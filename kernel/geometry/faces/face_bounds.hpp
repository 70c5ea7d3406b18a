#pragma once
/// @file
/// What bounds each face of a product, in the form the foul proofs use: stretches of cylinders and
/// cones, flats and boxes. Conservative: a face never leaves its bound. Product frame, mm, rad.

#include <span>
#include <vector>

#include "spotblue/base/interval.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue::proof {

/// Surfaces nearer than this are taken as one; a tenth of the least length that counts.
inline constexpr double kSame = 1e-7;

/// A stretch of a cylinder or cone.
struct Turned {
  Line axis;
  Direction x, y;               ///< square to the axis; angles run from x to y
  double from = 0.0, to = 0.0;  ///< stations on the axis, from <= to
  double radius_from = 0.0, radius_to = 0.0;
  std::vector<Arc> arcs;  ///< empty: all round
  Side side = Side::internal;
  Box box;
};

/// A plane face.
struct Flat {
  Point at;
  Direction normal, u, v;
  const Region* outline = nullptr;
  double slack = 0.0;  ///< how far the face may reach beyond the outline
  Box box;
};

struct FaceBounds {
  /// One for each patch of each cylinder and cone: what a face really covers.
  std::vector<Turned> patches;
  /// One for each unbroken axial stretch of a cylinder or cone: at every station inside there is
  /// surface at some angle.
  std::vector<Turned> stretches;
  std::vector<Flat> flats;
  std::vector<OtherFace> others;
  Box box;
  std::vector<Line> axes;          ///< distinct axes of cylinders and cones, greatest first
  std::vector<Direction> normals;  ///< distinct up to sign, of plane faces, greatest first
  bool solid = false;              ///< has solids
  bool closed = false;             ///< every shell closed: there is an inside
};

/// The bounds of every face; refers to `product`, which must outlive it.
[[nodiscard]] FaceBounds bounds_of(const Product& product);

/// Least and greatest of dot(d, x) over the face or the part.
[[nodiscard]] Interval extent(const Turned& turned, Direction d);
[[nodiscard]] Interval extent(const Turned& turned, std::span<const Arc> arcs, Direction d);
[[nodiscard]] Interval extent(const Flat& flat, Direction d);
[[nodiscard]] Interval extent(const Box& box, Direction d);
[[nodiscard]] Interval extent(const FaceBounds& bounds, Direction d);
/// Least and greatest of a cos t + b sin t over the arcs (all round when there are none).
[[nodiscard]] Interval wave(double a, double b, std::span<const Arc> arcs);
/// Whether the angle lies in one of the arcs (or there are none).
[[nodiscard]] bool in_arcs(double angle, std::span<const Arc> arcs);

/// Whether both lines are the same but for direction, within `offset` mm over `reach` mm.
[[nodiscard]] bool same_line(const Line& a, const Line& b, double offset, double reach);

}  // namespace spotblue::proof
