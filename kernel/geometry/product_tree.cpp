#include "geometry/product_tree.hpp"

#include <fmt/format.h>

#include <BRep_Builder.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS_Compound.hxx>
#include <chrono>
#include <utility>

#include "geometry/product_features.hpp"
#include "geometry/shape_store.hpp"
#include "geometry/step_name.hpp"

namespace spotblue {

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

TopoDS_Shape together(const std::vector<TopoDS_Shape>& solids) {
  if (solids.size() == 1) {
    return solids.front();
  }
  TopoDS_Compound compound;
  const BRep_Builder builder;
  builder.MakeCompound(compound);
  for (const TopoDS_Shape& solid : solids) {
    builder.Add(compound, solid);
  }
  return compound;
}

void note_loose_faces(const std::string& part, const std::vector<TopoDS_Shape>& own,
                      std::vector<Note>& notes) {
  int loose_faces = 0;
  for (const TopoDS_Shape& shape : own) {
    for (TopExp_Explorer each(shape, TopAbs_FACE, TopAbs_SOLID); each.More(); each.Next()) {
      ++loose_faces;
    }
  }
  if (loose_faces > 0) {
    notes.push_back(
        {part, fmt::format("{} {} that bound no solid {} left out", loose_faces,
                           loose_faces == 1 ? "face" : "faces", loose_faces == 1 ? "is" : "are")});
  }
}

double add_products(const Tree& tree, const std::filesystem::path& folder, Model& model) {
  using Clock = std::chrono::steady_clock;
  UniqueNames names;
  double seconds = 0.0;
  std::vector<TopoDS_Shape> shapes;
  for (const TreePart& part : tree.parts) {
    Product product;
    product.name = part.name;
    product.id = names.take(part.name);
    const auto start = Clock::now();
    analyse_shape(part.shape, product);
    seconds += std::chrono::duration<double>(Clock::now() - start).count();
    model.products.push_back(std::move(product));
    shapes.push_back(part.shape);
  }
  store_shapes(folder, shapes);
  return seconds;
}

void add_occurrences(Tree& tree, Model& model) {
  UniqueNames names;
  model.occurrences = std::move(tree.occurrences);
  for (Occurrence& occurrence : model.occurrences) {
    occurrence.id = names.take(occurrence.path);
    occurrence.box = place_box(occurrence.frame, model.products[occurrence.product].box);
  }
}

}  // namespace spotblue
