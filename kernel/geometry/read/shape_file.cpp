#include "geometry/read/shape_file.hpp"

#include <fmt/format.h>

#include <BRepTools.hxx>
#include <BRep_Builder.hxx>
#include <BinTools.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS_Shape.hxx>
#include <algorithm>
#include <ios>
#include <locale>
#include <sstream>
#include <utility>
#include <vector>

#include "geometry/occt/brep_text.hpp"
#include "geometry/occt/occt_quiet.hpp"
#include "geometry/occt/unfolding.hpp"
#include "geometry/part21/step_name.hpp"
#include "geometry/read/document_file.hpp"
#include "geometry/tree/document_tree.hpp"
#include "geometry/tree/product_tree.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

Error damaged(const std::string& what) {
  return {ErrorCode::unreadable, {"", ""}, what, "the file is damaged: save it again"};
}

// The letters that may stand behind a text .brep: "+12 0", and the harness's own drawing values.
bool is_rest_of_text(std::string_view rest) {
  return rest.find_first_not_of("0123456789+-.eE \t\r\n") == std::string_view::npos;
}

TopoDS_Shape shape_in(const ShapeFile& file) {
  if (file.format == ModelFormat::brep) {
    check_brep_text(file.bytes);
  }
  // Open CASCADE's readers ask on for ever behind the end, so a stream that ends must throw; the
  // blank keeps the last number of a whole file from reaching it.
  std::istringstream in{std::string(file.bytes) + '\n'};
  in.imbue(std::locale::classic());
  in.exceptions(std::ios::eofbit | std::ios::failbit | std::ios::badbit);
  TopoDS_Shape shape;
  try {
    if (file.format == ModelFormat::brep_binary) {
      BinTools::Read(shape, in);
    } else {
      BRepTools::Read(shape, in, BRep_Builder());
    }
  } catch (const std::ios_base::failure&) {
    throw damaged("it ends, or can not be understood, in the middle of its shapes");
  }
  const std::size_t at = std::min(static_cast<std::size_t>(in.tellg()), file.bytes.size());
  const std::string_view rest = file.bytes.substr(at);
  if (file.format == ModelFormat::brep ? !is_rest_of_text(rest) : !rest.empty()) {
    throw damaged("behind its shapes stands what is none");
  }
  return shape.IsNull() ? throw damaged("its shapes do not arrive") : shape;
}

Error no_solid(const TopoDS_Shape& shape) {
  const auto has = [&](TopAbs_ShapeEnum kind) { return TopExp_Explorer(shape, kind).More(); };
  const char* instead = has(TopAbs_FACE)     ? "surfaces only"
                        : has(TopAbs_EDGE)   ? "curves only"
                        : has(TopAbs_VERTEX) ? "points only"
                                             : "no shapes at all";
  return {ErrorCode::unreadable,
          {"", ""},
          fmt::format("the file holds no solid, {}", instead),
          "save the parts as solids"};
}

Tree tree_of_brep(const ShapeFile& file) {
  const TopoDS_Shape shape = shape_in(file);
  refuse_endless(shape, "its shapes", file.limits.nesting_depth, file.limits.occurrences);
  std::vector<TopoDS_Shape> solids;
  for (TopExp_Explorer each(shape, TopAbs_SOLID); each.More(); each.Next()) {
    solids.push_back(each.Current());
  }
  if (solids.empty()) {
    throw no_solid(shape);
  }
  const std::string stem = clean_name(file.stem);
  std::vector<std::pair<std::string, TopoDS_Shape>> named;
  for (const TopoDS_Shape& solid : solids) {
    named.emplace_back(solids.size() == 1 ? stem : fmt::format("{} {}", stem, named.size() + 1),
                       solid);
  }
  Tree tree = tree_of_shapes(named);
  note_loose_faces(stem, {shape}, tree);
  tree.notes.push_back({"length unit", "a .brep file names none: mm are taken for granted"});
  if (solids.size() > 1) {
    tree.notes.push_back(
        {"parts", "a .brep file names none: every solid of it is taken for a part of its own"});
  }
  return tree;
}

}  // namespace

Arrival transfer_shape_file(const ShapeFile& file, const std::filesystem::path& folder) {
  const OcctQuiet quiet;
  Arrival arrival;
  const auto take = [&](Tree& tree) {
    arrival.not_looked_at = add_products(tree, folder, arrival.model);
    add_occurrences(tree, arrival.model);
    arrival.products.resize(tree.parts.size());
  };
  if (file.format == ModelFormat::xbf) {
    const DocumentFile document(file.bytes, file.completeness);
    DocumentTree read = document.tree(file.limits);
    if (read.tree.parts.empty()) {
      throw Error(ErrorCode::unreadable, {"", ""}, "the document holds no solid",
                  "save the parts as solids");
    }
    take(read.tree);
    arrival.model.file.unit = read.unit;
    document.add_sizes(read, arrival.model);
  } else {
    Tree tree = tree_of_brep(file);
    take(tree);
  }
  return arrival;
}

}  // namespace spotblue
