#include "geometry/model/plane_map.hpp"

namespace spotblue {

Point2 in_plane(const Plane& plane, Point p) {
  const Point d = p - plane.at;
  return {dot(d, plane.u), dot(d, cross(plane.normal, plane.u))};
}

Point on_plane(const Plane& plane, Point2 p) {
  return plane.at + p.u * plane.u + p.v * cross(plane.normal, plane.u);
}

Region outline_in(const Plane& target, const Plane& source, const Frame& frame) {
  const Direction v = third(target.normal, target.u);
  const Direction source_u = place_direction(frame, source.u);
  const Direction source_v = place_direction(frame, third(source.normal, source.u));
  const Point2 origin = in_plane(target, place_point(frame, source.at));
  return mapped(source.outline, {origin, dot(source_u, target.u), dot(source_v, target.u),
                                 dot(source_u, v), dot(source_v, v)});
}

}  // namespace spotblue
