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

namespace {

std::string solids_in_words(int some, int all) {
  return all == 1 ? "its solid" : fmt::format("{} of its {} solids", some, all);
}

// Nothing can be measured on a solid that has no faces, and one that is not closed has no inside.
void note_open_solids(const TopoDS_Shape& shape, Product& product, std::vector<Note>& notes) {
  int bare = 0;
  for (TopExp_Explorer each(shape, TopAbs_SOLID); each.More(); each.Next()) {
    bare += TopExp_Explorer(each.Current(), TopAbs_FACE).More() ? 0 : 1;
  }
  if (bare > 0) {
    product.closed = false;
    notes.push_back({product.id, fmt::format("{} has no faces: nothing is said of it",
                                             solids_in_words(bare, product.solids))});
  } else if (!product.closed) {
    notes.push_back({product.id,
                     "its solid is not closed: its volume, and where it overlaps others, are not "
                     "to be relied on"});
  }
}

}  // namespace

double add_products(const Tree& tree, const std::filesystem::path& folder, Model& model) {
  using Clock = std::chrono::steady_clock;
  UniqueNames names;
  model.notes = tree.notes;
  double seconds = 0.0;
  std::vector<TopoDS_Shape> shapes;
  for (const TreePart& part : tree.parts) {
    Product product;
    product.name = part.name;
    product.id = names.take(part.name);
    const auto start = Clock::now();
    analyse_shape(part.shape, product);
    seconds += std::chrono::duration<double>(Clock::now() - start).count();
    note_open_solids(part.shape, product, model.notes);
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
