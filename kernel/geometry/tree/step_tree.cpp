#include "geometry/tree/step_tree.hpp"

#include <fmt/format.h>

#include <BRepBuilderAPI_Transform.hxx>
#include <NCollection_DataMap.hxx>
#include <StepBasic_Product.hxx>
#include <StepBasic_ProductDefinition.hxx>
#include <StepBasic_ProductDefinitionFormation.hxx>
#include <StepRepr_MappedItem.hxx>
#include <StepRepr_NextAssemblyUsageOccurrence.hxx>
#include <StepShape_SolidModel.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_MapOfShape.hxx>
#include <TopTools_ShapeMapHasher.hxx>
#include <TopoDS_Iterator.hxx>
#include <algorithm>
#include <cmath>
#include <optional>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "geometry/part21/step_name.hpp"
#include "geometry/tree/step_operator.hpp"
#include "geometry/tree/uncertainty.hpp"
#include "geometry/tree/usage_placement.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

using Definition = Handle(StepBasic_ProductDefinition);
using AssemblyUsage = Handle(StepRepr_NextAssemblyUsageOccurrence);

struct Component {
  std::size_t node = 0;
  std::string name;
  Frame frame;
};

// A product definition: a part, an assembly, or (with solids and components) both.
struct Node {
  Definition definition;
  TopoDS_Shape shape;
  std::string name;  // empty when the file gives none
  std::vector<Component> components;
  TopTools_MapOfShape placed;  // the components' shapes, as they lie in the assembly's compound
  std::unordered_set<const TopoDS_TShape*> borrowed;  // solids of components that are mapped items
  bool is_component = false;
  std::optional<Bodies> part;  // once it has been made
  bool looked_at = false;
};

std::string text_of(const Handle(TCollection_HAsciiString) & text) {
  return text.IsNull() ? std::string() : clean_name(text->ToCString());
}

std::string step_name_of(const Definition& definition) {
  if (definition->Formation().IsNull() || definition->Formation()->OfProduct().IsNull()) {
    return {};
  }
  const Handle(StepBasic_Product) product = definition->Formation()->OfProduct();
  const std::string name = text_of(product->Name());
  return name.empty() ? text_of(product->Id()) : name;
}

class TreeReader {
 public:
  TreeReader(const StepReader& reader, const TextLinks& links)
      : reader_(reader),
        mapped_(links.mapped),
        outside_(links.outside.begin(), links.outside.end()) {}

  Tree read() {
    find_definitions();
    find_usages();
    find_mapped_usages();
    find_crooked_copies();
    find_solid_names();
    tree_.uncertainty = stated_uncertainty(reader_);
    for (std::size_t node = 0; node < nodes_.size(); ++node) {
      if (!nodes_[node].is_component) {
        place(node, name_or_number(node), Frame{});
      }
    }
    return std::move(tree_);
  }

 private:
  void find_definitions() {
    const auto& entities = reader_.entities();
    for (int i = 1; i <= entities->NbEntities(); ++i) {
      const Definition definition = Definition::DownCast(entities->Value(i));
      if (!definition.IsNull()) {
        node_of_.emplace(definition.get(), nodes_.size());
        nodes_.push_back({definition,
                          reader_.shape_of(definition),
                          step_name_of(definition),
                          {},
                          {},
                          {},
                          false,
                          {},
                          {}});
      }
    }
  }

  void find_usages() {
    const auto& entities = reader_.entities();
    for (int i = 1; i <= entities->NbEntities(); ++i) {
      const AssemblyUsage usage = AssemblyUsage::DownCast(entities->Value(i));
      if (!usage.IsNull()) {
        add_usage(usage);
      }
    }
  }

  [[nodiscard]] bool is_outside(const Node& node) const {
    return !outside_.empty() && outside_.contains(reader_.number_of(node.definition));
  }

  void add_usage(const AssemblyUsage& usage) {
    const auto parent = node_of_.find(usage->RelatingProductDefinition().get());
    const auto child = node_of_.find(usage->RelatedProductDefinition().get());
    if (parent == node_of_.end() || child == node_of_.end()) {
      tree_.unplaced.push_back(reader_.number_of(usage));
      return;
    }
    Node& component = nodes_[child->second];
    component.is_component = true;
    if (is_outside(component)) {
      nodes_[parent->second].components.push_back(
          {child->second,
           component_name(text_of(usage->Name()), component.name, name_or_number(child->second)),
           frame_of(usage_placement(usage, reader_.graph()))});
      const TopoDS_Shape empty = reader_.shape_of(usage);
      if (!empty.IsNull()) {
        nodes_[parent->second].placed.Add(empty);
      }
      return;
    }
    if (component.shape.IsNull()) {
      return;  // nothing to place; its solids, if it declares any, are missed by name
    }
    const TopoDS_Shape placed = reader_.shape_of(usage);
    if (placed.IsNull()) {
      tree_.unplaced.push_back(reader_.number_of(usage));
      return;
    }
    const gp_Trsf placement =
        placed.Location().Transformation() * component.shape.Location().Transformation().Inverted();
    const std::string name =
        component_name(text_of(usage->Name()), component.name, name_or_number(child->second));
    if (!is_rigid(placement)) {
      throw Error(ErrorCode::unreadable,
                  {"", fmt::format("component '{}' (#{})", name, reader_.number_of(usage))},
                  fmt::format("is placed with a scale of {:.10g}, so that its sizes would be wrong",
                              std::abs(placement.ScaleFactor())),
                  "export every part in its true size");
    }
    nodes_[parent->second].placed.Add(placed);
    nodes_[parent->second].components.push_back({child->second, name, frame_of(placement)});
  }

  void find_mapped_usages() {
    std::unordered_map<int, Handle(StepRepr_MappedItem)> items;
    const auto& entities = reader_.entities();
    for (int i = 1; !mapped_.empty() && i <= entities->NbEntities(); ++i) {
      const auto item = Handle(StepRepr_MappedItem)::DownCast(entities->Value(i));
      if (!item.IsNull()) {
        items.emplace(reader_.number_of(item), item);
      }
    }
    std::unordered_map<int, std::size_t> node_by_number;
    for (std::size_t i = 0; !mapped_.empty() && i < nodes_.size(); ++i) {
      node_by_number.emplace(reader_.number_of(nodes_[i].definition), i);
    }
    for (const MappedUsage& usage : mapped_) {
      const auto item = items.find(usage.item);
      const auto parent = node_by_number.find(usage.assembly);
      const auto child = node_by_number.find(usage.component);
      if (item == items.end() || parent == node_by_number.end() || child == node_by_number.end()) {
        tree_.unplaced.push_back(usage.item);
      } else {
        add_mapped(item->second, parent->second, child->second);
      }
    }
  }

  void add_mapped(const Handle(StepRepr_MappedItem) & item, std::size_t parent, std::size_t child) {
    Node& component = nodes_[child];
    component.is_component = true;
    const auto placement = plain_placement(item, reader_.graph());
    if (!placement) {
      tree_.unplaced.push_back(reader_.number_of(item));
      return;
    }
    // Open CASCADE has put the copy into the assembly's own shape.
    for (TopExp_Explorer each(component.shape, TopAbs_SOLID);
         !component.shape.IsNull() && each.More(); each.Next()) {
      nodes_[parent].borrowed.insert(each.Current().TShape().get());
    }
    nodes_[parent].components.push_back(
        {child, component_name(text_of(item->Name()), component.name, name_or_number(child)),
         frame_of(*placement)});
  }

  void find_crooked_copies() {
    const auto& entities = reader_.entities();
    for (int i = 1; i <= entities->NbEntities(); ++i) {
      const auto item = Handle(StepRepr_MappedItem)::DownCast(entities->Value(i));
      const TopoDS_Shape shape = reader_.shape_of(item);
      if (const auto placement =
              shape.IsNull() ? std::nullopt : crooked_placement(item, reader_.graph())) {
        crooked_.Bind(shape, *placement);
      }
    }
  }

  void find_solid_names() {
    const auto& entities = reader_.entities();
    for (int i = 1; i <= entities->NbEntities(); ++i) {
      const auto solid = Handle(StepShape_SolidModel)::DownCast(entities->Value(i));
      const TopoDS_Shape shape = reader_.shape_of(solid);
      const std::string name = shape.IsNull() ? std::string() : text_of(solid->Name());
      if (!name.empty()) {
        solid_names_.emplace(shape.TShape().get(), name);
      }
    }
  }

  std::string name_or_number(std::size_t node) const {
    return nodes_[node].name.empty() ? fmt::format("Part {}", node + 1) : nodes_[node].name;
  }

  void place(std::size_t index, const std::string& path, const Frame& frame) {
    make_part(index);
    const Node& node = nodes_[index];
    if (node.part) {
      place_part(tree_, *node.part, path, frame);
    }
    if (is_outside(node)) {
      tree_.elsewhere.push_back({reader_.number_of(node.definition), path, frame});
    }
    for (const Component& component : node.components) {
      place(component.node, path + "/" + component.name, compose(frame, component.frame));
    }
  }

  void make_part(std::size_t index) {
    Node& node = nodes_[index];
    if (node.looked_at) {
      return;
    }
    node.looked_at = true;
    std::vector<NamedSolid> solids;
    const std::vector<TopoDS_Shape> own = own_shapes(node);
    for (const TopoDS_Shape& shape : own) {
      gather_solids(shape, solids);
    }
    std::erase_if(solids, [&](const NamedSolid& solid) {
      return node.borrowed.contains(solid.shape.TShape().get());
    });
    const std::string name = name_or_number(index);
    note_loose_faces(name, own, tree_);
    if (!solids.empty()) {
      node.part = add_part(tree_, reader_.number_of(node.definition), name, solids);
    }
  }

  // What the product itself is made of, without its components.
  static std::vector<TopoDS_Shape> own_shapes(const Node& node) {
    if (node.shape.IsNull()) {
      return {};
    }
    if (node.components.empty() || node.shape.ShapeType() == TopAbs_SOLID) {
      return {node.shape};
    }
    std::vector<TopoDS_Shape> own;
    for (TopoDS_Iterator each(node.shape); each.More(); each.Next()) {
      if (!node.placed.Contains(each.Value())) {
        own.push_back(each.Value());
      }
    }
    return own;
  }

  void gather_solids(const TopoDS_Shape& own, std::vector<NamedSolid>& solids) {
    if (crooked_.IsBound(own)) {
      std::vector<NamedSolid> source;
      gather_solids(own.Located(TopLoc_Location()), source);
      for (const NamedSolid& solid : source) {
        solids.push_back({moved(solid.shape, crooked_.Find(own)), solid.name});
      }
    } else if (own.ShapeType() == TopAbs_SOLID) {
      tree_.solids.insert(own.TShape().get());
      const auto name = solid_names_.find(own.TShape().get());
      solids.push_back({own, name == solid_names_.end() ? std::string() : name->second});
    } else {
      for (TopoDS_Iterator each(own); each.More(); each.Next()) {
        gather_solids(each.Value(), solids);
      }
    }
  }

  // Scaled and mirrored copies within a product get surfaces of their own: Open CASCADE's
  // algorithms, and ours, take a surface's radius from the surface and not from its placement.
  static TopoDS_Shape moved(const TopoDS_Shape& solid, const gp_Trsf& placement) {
    return BRepBuilderAPI_Transform(solid, placement, Standard_True).Shape();
  }

  const StepReader& reader_;
  const std::vector<MappedUsage>& mapped_;
  std::unordered_set<int> outside_;
  std::vector<Node> nodes_;
  // Open CASCADE's shapes of copies that it placed wrong, and where they belong.
  NCollection_DataMap<TopoDS_Shape, gp_Trsf, TopTools_ShapeMapHasher> crooked_;
  std::unordered_map<const Standard_Transient*, std::size_t> node_of_;
  std::unordered_map<const TopoDS_TShape*, std::string> solid_names_;
  Tree tree_;
};

}  // namespace

Tree read_tree(const StepReader& reader, const TextLinks& links) {
  return TreeReader(reader, links).read();
}

}  // namespace spotblue
