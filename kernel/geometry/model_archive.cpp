#include "geometry/model_archive.hpp"

#include <algorithm>
#include <cereal/archives/binary.hpp>
#include <cereal/types/array.hpp>
#include <cereal/types/optional.hpp>
#include <cereal/types/string.hpp>
#include <cereal/types/utility.hpp>
#include <cereal/types/vector.hpp>
#include <exception>
#include <sstream>

#include "spotblue/base/error.hpp"

namespace spotblue {

// One function a type, for both ways; found by cereal in the types' own namespace.
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
void serialize(Archive& to, Cylinder& v) {
  to(v.name, v.side, v.axis, v.zero, v.diameter, v.patches, v.intervals, v.coverage, v.source);
}
template <class Archive>
void serialize(Archive& to, Cone& v) {
  to(v.name, v.side, v.axis, v.zero, v.radius, v.half_angle, v.patches, v.intervals, v.coverage,
     v.source);
}
template <class Archive>
void serialize(Archive& to, Plane& v) {
  to(v.name, v.at, v.normal, v.u, v.outline, v.source);
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
  to(v.box, v.revolved, v.axis, v.inner, v.outer, v.from, v.to, v.pieces);
}
template <class Archive>
void serialize(Archive& to, Product& v) {
  to(v.id, v.name, v.solids, v.faces, v.volume, v.closed, v.box, v.cylinders, v.cones, v.planes,
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
template <class Archive>
void serialize(Archive& to, ArrivedSolid& v) {
  to(v.entity, v.faces, v.placed);
}
template <class Archive>
void serialize(Archive& to, ArrivedFace& v) {
  to(v.entity, v.bounds, v.declared_bounds, v.edges, v.declared_edges);
}
template <class Archive>
void serialize(Archive& to, ArrivedProduct& v) {
  to(v.entity, v.solids);
}
template <class Archive>
void serialize(Archive& to, Arrival& v) {
  to(v.model.products, v.model.occurrences, v.model.notes, v.model.semantic_sizes,
     v.model.file.unit, v.products, v.solids, v.lame_faces, v.unplaced, v.read_seconds,
     v.features_seconds);
}

namespace {

constexpr std::string_view kLastBytes = "that is all";

bool is_sound(const Product& product) {
  const auto known = [](const auto& feature) {
    return feature.side >= Side::internal && feature.side <= Side::external &&
           feature.source >= SurfaceSource::cylinder && feature.source <= SurfaceSource::extrusion;
  };
  return std::all_of(product.cylinders.begin(), product.cylinders.end(), known) &&
         std::all_of(product.cones.begin(), product.cones.end(), known) &&
         std::all_of(product.widths.begin(), product.widths.end(), [&](const Width& width) {
           return std::max(width.first, width.second) < product.planes.size();
         });
}

bool is_sound(const Model& model, const SemanticSize& size) {
  if (size.characteristic < SizeCharacteristic::diameter ||
      size.characteristic > SizeCharacteristic::other) {
    return false;
  }
  if (!size.product) {
    return size.features.empty();
  }
  if (*size.product >= model.products.size()) {
    return false;
  }
  const Product& product = model.products[*size.product];
  return std::all_of(size.features.begin(), size.features.end(), [&](const ProductFeatureRef& one) {
    return one.kind == FeatureKind::cylinder
               ? one.index < product.cylinders.size()
               : one.kind == FeatureKind::width && one.index < product.widths.size();
  });
}

bool is_sound(const Arrival& arrival) {
  const Model& model = arrival.model;
  return arrival.products.size() == model.products.size() &&
         std::all_of(model.products.begin(), model.products.end(),
                     [](const Product& product) { return is_sound(product); }) &&
         std::all_of(model.occurrences.begin(), model.occurrences.end(),
                     [&](const Occurrence& one) { return one.product < model.products.size(); }) &&
         std::all_of(model.semantic_sizes.begin(), model.semantic_sizes.end(),
                     [&](const SemanticSize& size) { return is_sound(model, size); });
}

}  // namespace

std::string to_bytes(const Arrival& arrival) {
  std::ostringstream out;
  cereal::BinaryOutputArchive archive(out);
  archive(arrival);
  out << kLastBytes;
  return std::move(out).str();
}

Arrival arrival_from_bytes(std::string bytes) {
  const Error spoilt(ErrorCode::kernel_failure, {},
                     "what the reading process handed back is damaged",
                     "report the file to the makers of spotblue");
  if (!bytes.ends_with(kLastBytes)) {
    throw spoilt;
  }
  Arrival arrival;
  try {
    std::istringstream in{std::move(bytes)};
    cereal::BinaryInputArchive archive(in);
    archive(arrival);
  } catch (const std::exception&) {
    throw spoilt;
  }
  if (!is_sound(arrival)) {
    throw spoilt;
  }
  return arrival;
}

}  // namespace spotblue
