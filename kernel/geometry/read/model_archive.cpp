#include "geometry/read/model_archive.hpp"

#include <algorithm>
#include <exception>

#include "geometry/model/plain_bytes.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {

namespace {

constexpr std::string_view kLastBytes = "that is all";

bool is_known(Side side) { return side >= Side::internal && side <= Side::external; }
bool is_known(SurfaceSource source) {
  return source >= SurfaceSource::cylinder && source <= SurfaceSource::extrusion;
}

bool is_sound(const Product& product) {
  const auto known = [](const auto& feature) {
    return is_known(feature.side) && is_known(feature.source);
  };
  return std::all_of(product.cylinders.begin(), product.cylinders.end(), known) &&
         std::all_of(product.cones.begin(), product.cones.end(), known) &&
         std::all_of(product.planes.begin(), product.planes.end(),
                     [](const Plane& plane) { return is_known(plane.source); }) &&
         std::all_of(product.widths.begin(), product.widths.end(), [&](const Width& width) {
           return is_known(width.side) &&
                  std::max(width.first, width.second) < product.planes.size();
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
  // Of the file the child knows its unit.
  return model.file.files.empty() && arrival.products.size() == model.products.size() &&
         std::all_of(model.products.begin(), model.products.end(),
                     [](const Product& product) { return is_sound(product); }) &&
         std::all_of(model.occurrences.begin(), model.occurrences.end(),
                     [&](const Occurrence& one) { return one.product < model.products.size(); }) &&
         std::all_of(model.semantic_sizes.begin(), model.semantic_sizes.end(),
                     [&](const SemanticSize& size) { return is_sound(model, size); });
}

}  // namespace

std::string to_bytes(const Arrival& arrival) {
  BytesOut out;
  out(arrival);
  return out.take().append(kLastBytes);
}

Arrival arrival_from_bytes(std::string_view bytes) {
  const Error spoilt(ErrorCode::open_cascade_failed, {},
                     "what the reading process handed back is damaged",
                     "report the file to the makers of spotblue");
  Arrival arrival;
  try {
    BytesIn in(bytes);
    in(arrival);
    if (in.rest() != kLastBytes) {
      throw spoilt;
    }
  } catch (const std::exception&) {
    throw spoilt;
  }
  if (!is_sound(arrival)) {
    throw spoilt;
  }
  return arrival;
}

}  // namespace spotblue
