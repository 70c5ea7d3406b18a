#pragma once
// The fields of a model's values, listed once for whoever goes through all of them: the archive
// that carries them from the child, and the search for numbers that are none.

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// One function a type, for every way; found in the types' own namespace.
template <class Archive, class Of>
void serialize(Archive& to, Id<Of>& v) {
  std::size_t index = v;
  to(index);
  v = Id<Of>(index);
}
template <class Archive>
void serialize(Archive& to, Point& v) {
  to(v.x, v.y, v.z);
}
template <class Archive>
void serialize(Archive& to, Line& v) {
  to(v.at, v.along);
}
template <class Archive>
void serialize(Archive& to, Frame& v) {
  to(v.rows);
}
template <class Archive>
void serialize(Archive& to, Box& v) {
  to(v.low, v.high);
}
template <class Archive>
void serialize(Archive& to, Point2& v) {
  to(v.u, v.v);
}
template <class Archive>
void serialize(Archive& to, Edge2& v) {
  to(v.from, v.to, v.sweep, v.centre, v.radius);
}
template <class Archive>
void serialize(Archive& to, Region& v) {
  to(v.edges, v.exact);
}
template <class Archive>
void serialize(Archive& to, Arc& v) {
  to(v.from, v.sweep);
}
template <class Archive>
void serialize(Archive& to, Patch& v) {
  to(v.from, v.to, v.arcs);
}
template <class Archive>
void serialize(Archive& to, DiameterAt& v) {
  to(v.at, v.least, v.greatest);
}
template <class Archive>
void serialize(Archive& to, Cylinder& v) {
  to(v.name, v.side, v.axis, v.zero, v.diameter, v.sizes, v.patches, v.intervals, v.coverage,
     v.source, v.deviation);
}
template <class Archive>
void serialize(Archive& to, Cone& v) {
  to(v.name, v.side, v.axis, v.zero, v.radius, v.half_angle, v.patches, v.intervals, v.coverage,
     v.source, v.deviation);
}
template <class Archive>
void serialize(Archive& to, Plane& v) {
  to(v.name, v.at, v.normal, v.u, v.outline, v.source, v.deviation);
}
template <class Archive>
void serialize(Archive& to, Width& v) {
  to(v.name, v.side, v.first, v.second, v.width);
}
template <class Archive>
void serialize(Archive& to, RingPiece& v) {
  to(v.inner, v.outer, v.from, v.to);
}
template <class Archive>
void serialize(Archive& to, OtherFace& v) {
  to(v.box, v.revolved, v.axis, v.inner, v.outer, v.from, v.to, v.pieces, v.sized);
}
template <class Archive>
void serialize(Archive& to, Product& v) {
  to(v.id, v.name, v.part, v.body, v.body_name, v.solids, v.faces, v.volume, v.volume_error,
     v.uncertainty, v.drawn_at, v.closed, v.unsound, v.box, v.cylinders, v.cones, v.planes,
     v.widths, v.others);
}
template <class Archive>
void serialize(Archive& to, Occurrence& v) {
  to(v.id, v.path, v.product, v.frame, v.mirrored, v.box);
}
template <class Archive>
void serialize(Archive& to, ProductFeatureRef& v) {
  to(v.kind, v.index);
}
template <class Archive>
void serialize(Archive& to, SizeLimits& v) {
  to(v.lower_mm, v.upper_mm);
}
template <class Archive>
void serialize(Archive& to, SemanticSize& v) {
  to(v.entity, v.name, v.characteristic, v.product, v.features, v.nominal_mm, v.deviations,
     v.limits, v.tolerance_class, v.doubt);
}
template <class Archive>
void serialize(Archive& to, Note& v) {
  to(v.about, v.text);
}

}  // namespace spotblue
