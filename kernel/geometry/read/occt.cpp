#include "spotblue/geometry/occt.hpp"

#include <TDF_Label.hxx>
#include <TopoDS_Shape.hxx>
#include <memory>
#include <utility>

#include "geometry/occt/guard.hpp"
#include "geometry/occt/shape_store.hpp"
#include "geometry/read/finite_model.hpp"
#include "geometry/read/given_names.hpp"
#include "geometry/sizes/document_sizes.hpp"
#include "geometry/tree/document_tree.hpp"

namespace spotblue {
namespace {

Model model_of(Tree& tree) {
  if (tree.parts.empty()) {
    throw Error(ErrorCode::bad_input, {}, "there is no solid to look at", "load the parts first");
  }
  Model model;
  const auto store = std::make_shared<const ShapeStore>(make_shape_folder());
  add_products(tree, store->folder(), model);
  add_occurrences(tree, model);
  model.file.unit = "mm";
  model.shapes = store;
  return model;
}

}  // namespace

Model model_of_shapes(std::span<const NamedShape> shapes) {
  std::vector<std::pair<std::string, TopoDS_Shape>> named;
  for (const NamedShape& one : shapes) {
    named.emplace_back(one.name, *one.shape);
  }
  return guarded("looking at the shapes", [&] {
    Tree tree = tree_of_shapes(named);
    Model model = model_of(tree);
    require_finite(model, {}, Completeness::all_or_error);
    return model;
  });
}

DocumentModel model_of_document(const TDF_Label& main, const std::string& name) {
  return guarded("looking at the document", [&] {
    DocumentTree read = read_document_tree(main);
    DocumentModel result{model_of(read.tree), std::move(read.labels)};
    result.model.file.name = name;
    add_given_names(main, read.tree, result.model);
    SettledSizes stated = settled_in_document(main, read.tree, result.model).settled;
    result.model.semantic_sizes = std::move(stated.sizes);
    result.model.notes.insert(result.model.notes.end(), stated.notes.begin(), stated.notes.end());
    require_finite(result.model, {}, Completeness::all_or_error);
    return result;
  });
}

}  // namespace spotblue
