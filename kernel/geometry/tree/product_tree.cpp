#include "geometry/tree/product_tree.hpp"

#include <fmt/format.h>

#include <TopExp_Explorer.hxx>
#include <chrono>
#include <optional>
#include <utility>

#include "base/stage_time.hpp"
#include "base/work_limit.hpp"
#include "geometry/faces/drawn_far.hpp"
#include "geometry/faces/product_features.hpp"
#include "geometry/faces/product_notes.hpp"
#include "geometry/occt/shape_store.hpp"
#include "geometry/part21/step_name.hpp"
#include "geometry/tree/occurrence_ids.hpp"
#include "geometry/tree/uncertainty.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

// "Pin#2"; the name itself for the only body of a part.
std::string with_body(const std::string& name, std::optional<int> body) {
  return body ? fmt::format("{}#{}", name, *body) : name;
}

}  // namespace

Frame frame_of(const gp_Trsf& placement) {
  Frame frame;
  for (int row = 0; row < 3; ++row) {
    for (int column = 0; column < 4; ++column) {
      frame.rows[static_cast<std::size_t>(row)][static_cast<std::size_t>(column)] =
          placement.Value(row + 1, column + 1);
    }
  }
  return frame;
}

Bodies add_part(Tree& tree, int entity, const std::string& name,
                const std::vector<NamedSolid>& solids) {
  const Bodies bodies{tree.parts.size(), solids.size()};
  if (solids.size() == 1) {
    tree.parts.push_back({entity, name, std::nullopt, "", solids.front().shape});
    return bodies;
  }
  for (int body = 1; const NamedSolid& solid : solids) {
    tree.parts.push_back({entity, name, body++, solid.name, solid.shape});
  }
  return bodies;
}

void place_part(Tree& tree, const Bodies& part, const std::string& path, const Frame& frame) {
  for (std::size_t i = part.first; i < part.first + part.count; ++i) {
    tree.occurrences.push_back(
        {{}, with_body(path, tree.parts[i].body), ProductId(i), frame, is_mirror(frame), {}});
  }
}

void note_loose_faces(const std::string& part, const std::vector<TopoDS_Shape>& own, Tree& tree) {
  int loose_faces = 0;
  for (const TopoDS_Shape& shape : own) {
    for (TopExp_Explorer each(shape, TopAbs_FACE, TopAbs_SOLID); each.More(); each.Next()) {
      ++loose_faces;
    }
  }
  if (loose_faces > 0) {
    tree.not_compared.push_back(
        {part, fmt::format("{} {} that bound no solid {} left out", loose_faces,
                           loose_faces == 1 ? "face" : "faces", loose_faces == 1 ? "is" : "are")});
    tree.notes.push_back(tree.not_compared.back());
  }
}

namespace {

// Not analysed yet. `id` is that of the part whose bodies are being added.
Product product_of(const TreePart& part, double uncertainty, UniqueNames& names, std::string& id) {
  Product product;
  product.name = part.name;
  if (part.body.value_or(1) == 1) {
    id = names.take(part.name);
  }
  product.id = part.body ? names.take(with_body(id, part.body)) : id;
  product.part = part.body ? id : "";
  product.body = part.body;
  product.body_name = part.body_name;
  product.drawn_at = drawn_at(part.shape);
  product.uncertainty = same_surface_within(uncertainty, norm(product.drawn_at));
  return product;
}

}  // namespace

std::vector<Note> add_products(const Tree& tree, const std::filesystem::path& folder,
                               Model& model) {
  using Clock = std::chrono::steady_clock;
  UniqueNames names;
  model.notes = tree.notes;
  std::string id;  // of the part whose bodies are being added
  std::vector<Note> not_looked_at;
  const auto since = [](Clock::time_point start) {
    return std::chrono::duration<double>(Clock::now() - start).count();
  };
  const auto begun = Clock::now();
  const double features_end = kFeaturesShare * seconds_left();
  std::vector<TopoDS_Shape> shapes;
  for (const TreePart& part : tree.parts) {
    Product product = product_of(part, tree.uncertainty, names, id);
    const TopoDS_Shape shape = brought_near(part.shape, product.drawn_at);
    const Product bare = product;
    Remarks remarks;
    const bool done = done_within_limits([&] {
      const StageTimer measured;
      const TimeLimit limit(features_end - since(begun));
      stop_if_asked();
      remarks = analyse_shape(shape, product);
    });
    if (done) {
      for (Note& note : notes_on(product, remarks)) {
        model.notes.push_back(std::move(note));
      }
    } else {
      product = bare;
      leave_unmeasured(shape, product);
      not_looked_at.push_back({product.id, "its faces: " + why_not_done()});
    }
    model.products.push_back(std::move(product));
    shapes.push_back(shape);
  }
  store_shapes(folder, shapes);
  return not_looked_at;
}

void add_occurrences(Tree& tree, Model& model) {
  model.not_compared = tree.not_compared;
  model.occurrences = std::move(tree.occurrences);
  name_occurrences(model);
  for (Occurrence& occurrence : model.occurrences) {
    const Product& product = model.products[occurrence.product];
    occurrence.frame = place_near(occurrence.frame, product);
    occurrence.box = place_box(occurrence.frame, product.box);
  }
}

}  // namespace spotblue
