// What a reading process hands back, spoilt: whatever is taken says the same when it is handed on,
// and takes no more memory than its bytes can fill. The input is a list of edits to sound bytes, so
// that no corpus has to follow their layout.

#include <algorithm>
#include <array>
#include <cstring>

#include "fuzz/fuzzing.hpp"
#include "geometry/read/model_archive.hpp"

using namespace spotblue;

namespace {

// A bit of everything that an archive holds.
Arrival small_arrival() {
  Product product;
  product.id = product.name = "Bush";
  product.closed = true;
  const Patch patch{0.0, 25.0, {{0.0, 6.28}}};
  Cylinder cylinder;
  cylinder.name = "outside 20";
  cylinder.side = Side::external;
  cylinder.sizes = {{0.0, 19.9, 20.0}};
  cylinder.patches = {patch};
  cylinder.intervals = {{0.0, 25.0}};
  product.cylinders = {cylinder, cylinder};
  Cone cone;
  cone.name = "taper 20/24";
  cone.patches = {patch};
  product.cones = {cone};
  Plane plane;
  plane.name = "face 20";
  plane.outline.edges.resize(2);
  product.planes = {plane, plane};
  product.widths = {{"width 25", Side::external, 0, 1, 25.0}};
  product.others.resize(1);
  product.others[0].pieces.resize(1);
  Arrival arrival;
  arrival.model.products = {product, product};
  arrival.products = {{12}, {40}};
  arrival.model.occurrences = {{"Stand/Bush", "Stand/Bush", ProductId(0), Frame{}, false, Box{}}};
  arrival.model.notes = {{"length unit", "the file names none"}};
  arrival.model.not_compared = arrival.model.notes;
  SemanticSize size;
  size.product = ProductId(0);
  size.features = {{FeatureKind::cylinder, 1}};
  size.nominal_mm = 20.0;
  size.deviations = size.limits = SizeLimits{-0.1, 0.0};
  arrival.model.semantic_sizes = {size};
  arrival.model.file.unit = "mm";
  arrival.solids = {{13, 4, true}};
  arrival.lame_faces = {{14, 1, 2, 3, 4}};
  arrival.unplaced = {15};
  arrival.elsewhere = {{16, "Stand/Bush", Frame{}}};
  return arrival;
}

// Five bytes an edit: what to do, where (two bytes), and two bytes of what is put there.
void edit(std::string& bytes, const std::uint8_t* by) {
  const std::size_t at = (by[1] * std::size_t{256} + by[2]) % (bytes.size() + 1);
  const std::size_t left = bytes.size() - at;
  switch (by[0] % 5) {
    case 0:
      std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(at),
                  std::min<std::size_t>(by[3] % 16, left), static_cast<char>(by[4]));
      break;
    case 1: {
      const std::uint64_t number = std::uint64_t{by[4]} << (by[3] % 57);
      std::memcpy(bytes.data() + at, &number, std::min(sizeof number, left));
      break;
    }
    case 2:
      bytes.erase(at, by[3]);
      break;
    case 3:
      bytes.insert(at, by[3] % 16, static_cast<char>(by[4]));
      break;
    default:
      bytes[std::min(at, bytes.size() - 1)] = static_cast<char>(by[4]);
  }
}

}  // namespace

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const std::string sound = to_bytes(small_arrival());
  std::string bytes = sound;
  for (std::size_t at = 0; at + 5 <= size && !bytes.empty(); at += 5) {
    edit(bytes, data + at);
  }
  fuzz::only_clear_errors("", [&] {
    fuzz::demand(to_bytes(arrival_from_bytes(bytes)) == bytes, "what is taken is what was given");
  });
  return 0;
}
