#pragma once
// Plates and pins to state sizes on, and the sizes found in what was written.

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <utility>
#include <vector>

#include "geometry/read/written_step.hpp"
#include "spotblue/geometry/mockup.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/geometry/read.hpp"
#include "spotblue/geometry/semantic_write.hpp"

namespace spotblue::test {

// A plate with these bores through it in a row.
inline MockupPart plate(const std::string& name, const std::vector<double>& diameters) {
  BlockPart block;
  double u = 0.0;
  for (const double diameter : diameters) {
    Bore bore;
    bore.u = u + diameter;
    bore.v = 100.0;
    bore.diameter = diameter;
    block.bores.push_back(bore);
    u += 2.0 * diameter;
  }
  block.size = {u, 200.0, 10.0};
  return {name, block};
}

// A pin with these steps outside, ascending.
inline MockupPart pin(const std::string& name, const std::vector<double>& diameters) {
  TurnedPart turned;
  for (const double diameter : diameters) {
    Step step;
    step.start = 10.0 * static_cast<double>(turned.outside.size());
    step.length = 10.0;
    step.diameter = diameter;
    step.end_diameter = diameter;
    turned.outside.push_back(step);
  }
  return {name, turned};
}

inline std::filesystem::path write_parts(const Folder& folder, std::vector<MockupPart> parts,
                                         LengthUnit unit, StepProtocol protocol) {
  Mockup mockup;
  mockup.unit = unit;
  mockup.protocol = protocol;
  mockup.parts = std::move(parts);
  if (mockup.parts.size() > 1) {
    double at = 0.0;
    for (const MockupPart& part : mockup.parts) {
      Placement placement;
      placement.name = part.name;
      placement.part = part.name;
      placement.at = at += 500.0;
      mockup.placements.push_back(placement);
    }
  }
  std::filesystem::path file = folder.path() / "model.step";
  write_mockup(mockup, file);
  return file;
}

inline std::string text_of(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

inline Model read_whole(const std::filesystem::path& file) {
  return read_step(file, {}, Completeness::all_or_error);
}

inline std::string name_of(const Model& model, const SemanticSize& size, std::size_t which = 0) {
  const Product& product = model.products.at(size.product.value());
  const ProductFeatureRef& feature = size.features.at(which);
  return feature.kind == FeatureKind::width ? product.widths.at(feature.index).sized_name
                                            : product.cylinders.at(feature.index).sized_name;
}

// The sizes stated for a feature of that sized name.
inline std::vector<SemanticSize> sizes_on(const Model& model, const std::string& feature) {
  std::vector<SemanticSize> found;
  for (const SemanticSize& size : model.semantic_sizes) {
    if (size.product && !size.features.empty() && name_of(model, size) == feature) {
      found.push_back(size);
    }
  }
  return found;
}

// The sizes, each with the name that the feature has of which it gives the sized name.
inline std::vector<SizeToWrite> by_name(const std::filesystem::path& file,
                                        std::vector<SizeToWrite> sizes) {
  const Model model = read_step(file, {}, Completeness::all_or_error);
  const auto rename = [](SizeToWrite& size, const auto& features) {
    for (const auto& feature : features) {
      if (feature.sized_name == size.feature) {
        size.feature = feature.name;
        return;
      }
    }
  };
  for (SizeToWrite& size : sizes) {
    for (const Product& product : model.products) {
      if (product.id == size.product) {
        rename(size, product.cylinders);
      }
    }
  }
  return sizes;
}

inline bool noted(const Model& model, const std::string& words) {
  return std::any_of(model.notes.begin(), model.notes.end(),
                     [&](const Note& note) { return note.text.find(words) != std::string::npos; });
}

}  // namespace spotblue::test
