#include "geometry/read/step_transfer.hpp"

#include <StepShape_EdgeLoop.hxx>
#include <StepShape_Face.hxx>
#include <StepShape_FaceBound.hxx>
#include <StepShape_Loop.hxx>
#include <StepShape_SolidModel.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS_Shape.hxx>
#include <TopoDS_TShape.hxx>
#include <limits>
#include <optional>
#include <utility>

#include "geometry/part21/step_letters.hpp"
#include "geometry/part21/step_mapped.hpp"
#include "geometry/part21/step_outside.hpp"
#include "geometry/part21/step_text.hpp"
#include "geometry/read/completeness.hpp"
#include "geometry/read/given_names.hpp"
#include "geometry/sizes/semantic_read.hpp"
#include "geometry/tree/step_faults.hpp"
#include "geometry/tree/step_reader.hpp"
#include "geometry/tree/step_tree.hpp"

namespace spotblue {
namespace {

int count(const TopoDS_Shape& shape, TopAbs_ShapeEnum kind) {
  int found = 0;
  for (TopExp_Explorer each(shape, kind); each.More(); each.Next()) {
    ++found;
  }
  return found;
}

std::vector<ArrivedSolid> arrived_solids(const StepReader& reader, const Tree& tree) {
  std::vector<ArrivedSolid> solids;
  const auto& entities = reader.entities();
  for (int i = 1; i <= entities->NbEntities(); ++i) {
    const Handle(Standard_Transient) entity = entities->Value(i);
    if (entity->IsKind(STANDARD_TYPE(StepShape_SolidModel))) {
      const TopoDS_Shape shape = reader.shape_of(entity);
      solids.push_back({reader.number_of(entity), shape.IsNull() ? 0 : count(shape, TopAbs_FACE),
                        !shape.IsNull() && tree.solids.contains(shape.TShape().get())});
    }
  }
  return solids;
}

// Bounds that are edge loops, and their edges: bounds of a single vertex bound nothing.
ArrivedFace declared_bounds(const StepShape_Face& face) {
  ArrivedFace declared;
  for (int i = 1; i <= face.NbBounds(); ++i) {
    const Handle(StepShape_FaceBound) bound = face.BoundsValue(i);
    const auto loop = bound.IsNull() ? Handle(StepShape_EdgeLoop)()
                                     : Handle(StepShape_EdgeLoop)::DownCast(bound->Bound());
    if (!loop.IsNull()) {
      ++declared.declared_bounds;
      declared.declared_edges += loop->NbEdgeList();
    }
  }
  return declared;
}

std::vector<ArrivedFace> lame_faces(const StepReader& reader) {
  std::vector<ArrivedFace> lame;
  const auto& entities = reader.entities();
  for (int i = 1; i <= entities->NbEntities(); ++i) {
    const Handle(StepShape_Face) face = Handle(StepShape_Face)::DownCast(entities->Value(i));
    const TopoDS_Shape shape = face.IsNull() ? TopoDS_Shape() : reader.shape_of(face);
    if (!shape.IsNull()) {
      ArrivedFace one = declared_bounds(*face);
      one.bounds = count(shape, TopAbs_WIRE);
      one.edges = count(shape, TopAbs_EDGE);
      if (one.bounds < one.declared_bounds || one.edges < one.declared_edges) {
        one.entity = reader.number_of(face);
        lame.push_back(one);
      }
    }
  }
  return lame;
}

// The text has been scanned before, within the reader's limits.
TextLinks links_in(std::string_view text) {
  const bool copies = text.find("MAPPED_ITEM") != std::string_view::npos;
  const bool documents = text.find("DOCUMENT_FILE") != std::string_view::npos;
  TextLinks links;
  if (!copies && !documents) {
    return links;
  }
  ReadLimits none;
  none.token_kb = std::numeric_limits<int>::max() / 1024;
  none.nesting_depth = std::numeric_limits<int>::max();
  const StepText entities(text, "", none);
  links.mapped = mapped_usages(entities);
  for (const OutsidePart& part : outside_parts(entities)) {
    if (part.definition != 0) {
      links.outside.push_back(part.definition);
    }
  }
  return links;
}

}  // namespace

Arrival transfer_step(std::string_view text, const std::filesystem::path& folder,
                      Completeness completeness, std::optional<StepReader>& parsed,
                      const AlsoLook& also) {
  const std::optional<std::string> mended = in_utf8(text);
  const StepReader& reader =
      parsed.emplace(mended ? std::string_view(*mended) : text, completeness);
  Tree tree = read_tree(reader, links_in(text));
  Arrival arrival;
  arrival.solids = arrived_solids(reader, tree);
  arrival.lame_faces = lame_faces(reader);
  for (const TreePart& part : tree.parts) {
    arrival.products.push_back({part.entity});
  }
  arrival.not_looked_at = add_products(tree, folder, arrival.model);
  add_occurrences(tree, arrival.model);
  note_faults(reader.faults(), arrival.model);
  if (mended) {
    arrival.model.notes.push_back(
        {"names", "some letters in the file are no UTF-8; they are taken for Latin-1"});
  }
  add_given_names(reader, tree, arrival.model);
  if (states_sizes(text)) {
    add_semantic_sizes(reader, tree, arrival.model);
  }
  if (also) {
    also(reader, tree, arrival.model);
  }
  arrival.unplaced = std::move(tree.unplaced);
  arrival.elsewhere = std::move(tree.elsewhere);
  return arrival;
}

}  // namespace spotblue
