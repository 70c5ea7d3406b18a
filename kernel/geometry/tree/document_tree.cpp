#include "geometry/tree/document_tree.hpp"

#include <fmt/format.h>

#include <BRepBuilderAPI_Transform.hxx>
#include <TDF_LabelSequence.hxx>
#include <TDF_Tool.hxx>
#include <TDataStd_Name.hxx>
#include <TopExp_Explorer.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_LengthUnit.hxx>
#include <XCAFDoc_Location.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <array>
#include <cmath>
#include <map>
#include <optional>
#include <string_view>

#include "geometry/model/tolerances.hpp"
#include "geometry/occt/unfolding.hpp"
#include "geometry/part21/step_name.hpp"
#include "geometry/tree/step_operator.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

constexpr double kRoundingOfUnit = 1e-9;  // metres, of a factor as documents hold it

std::string name_of(const TDF_Label& label) {
  Handle(TDataStd_Name) name;
  if (!label.FindAttribute(TDataStd_Name::GetID(), name)) {
    return {};
  }
  const TCollection_AsciiString utf8(name->Get());
  return clean_name(utf8.ToCString());
}

std::vector<NamedSolid> solids_of(const TopoDS_Shape& shape) {
  std::vector<NamedSolid> solids;
  for (TopExp_Explorer each(shape, TopAbs_SOLID); each.More(); each.Next()) {
    solids.push_back({each.Current(), ""});
  }
  return solids;
}

void refuse_scaled(const gp_Trsf& placement, const std::string& name) {
  if (!is_rigid(placement)) {
    throw Error(ErrorCode::bad_input, {"", fmt::format("'{}'", name)},
                fmt::format("is placed with a scale of {:.10g}, so that its sizes would be wrong",
                            std::abs(placement.ScaleFactor())),
                "make every part in its true size");
  }
}

// Open CASCADE would take it to stand at the origin, and a damaged document would look whole.
void refuse_unplaced(const TDF_Label& component, const std::string& name) {
  if (!component.IsAttribute(XCAFDoc_Location::GetID())) {
    throw Error(ErrorCode::unreadable, {"", name}, "the document does not say where this part is",
                "the document is damaged: read or save it again");
  }
}

std::string unit_name(const XCAFDoc_LengthUnit& unit) {
  constexpr std::array<std::pair<double, std::string_view>, 5> kNames{
      {{1e-3, "mm"}, {1e-2, "centimetre"}, {1.0, "metre"}, {0.0254, "inch"}, {0.3048, "foot"}}};
  for (const auto& [metres, name] : kNames) {
    if (std::abs(unit.GetUnitValue() - metres) <= kRoundingOfUnit) {
      return std::string(name);
    }
  }
  return fmt::format("{:g} mm", unit.GetUnitValue() * 1e3);
}

TopoDS_Shape in_mm(const TopoDS_Shape& shape, double mm_per_unit) {
  if (mm_per_unit == 1.0) {
    return shape;
  }
  gp_Trsf scale;
  scale.SetScaleFactor(mm_per_unit);
  return BRepBuilderAPI_Transform(shape, scale, Standard_True).Shape();
}

class DocumentReader {
 public:
  DocumentReader(const TDF_Label& main, const DocumentReading& how)
      : main_(main), how_(how), tool_(XCAFDoc_DocumentTool::ShapeTool(main)) {}

  DocumentTree read() {
    check_unit();
    refuse_rings();
    TDF_LabelSequence roots;
    tool_->GetFreeShapes(roots);
    double unfolded = 0.0;
    for (const TDF_Label& root : roots) {
      TDF_Label product = root;
      XCAFDoc_ShapeTool::GetReferredShape(root, product);
      unfolded += parts_below(product);
    }
    if (!(unfolded <= how_.most_occurrences)) {
      throw too_many_parts(how_.most_occurrences);
    }
    for (const TDF_Label& root : roots) {
      place_root(root);
    }
    return std::move(result_);
  }

 private:
  void check_unit() {
    Handle(XCAFDoc_LengthUnit) unit;
    if (!main_.Root().FindAttribute(XCAFDoc_LengthUnit::GetID(), unit) &&
        !main_.FindAttribute(XCAFDoc_LengthUnit::GetID(), unit)) {
      result_.tree.notes.push_back(
          {"length unit", "the document names none: mm are taken for granted"});
      return;
    }
    constexpr double mm = 1e-3;
    refuse_absurd(unit->GetUnitValue());
    result_.unit = unit_name(*unit);
    if (std::abs(unit->GetUnitValue() - mm) <= kRoundingOfUnit) {
      return;
    }
    if (how_.other_lengths == OtherLengths::turned_into_mm) {
      result_.mm_per_unit = unit->GetUnitValue() / mm;
    } else {
      throw Error(ErrorCode::bad_input, {"", "length unit"},
                  fmt::format("the document's lengths are in units of {:g} mm, not in mm",
                              unit->GetUnitValue() / mm),
                  "read the file anew with Open CASCADE's setting xstep.cascade.unit at MM");
    }
  }

  // A document that is damaged, or was given kilometres as a number of something else.
  static void refuse_absurd(double metres) {
    constexpr double kLeast = 1e-9;
    constexpr double kMost = 1e4;
    if (!(metres >= kLeast && metres <= kMost)) {
      throw Error(
          ErrorCode::bad_input, {"", "length unit"},
          fmt::format("the document's lengths are in units of {:g} m, which is none", metres),
          "give the document its true unit, and save it again");
    }
  }

  // Also where no root leads: what is in a ring would not arrive, without a word.
  void refuse_rings() {
    UnfoldingCount<std::string> count(how_.nesting_depth);
    TDF_LabelSequence all;
    tool_->GetShapes(all);
    for (const TDF_Label& label : all) {
      if (!count.knows(entry_of(label))) {
        static_cast<void>(unfold(label, count));
      }
    }
  }

  static Unfolding unfold(const TDF_Label& label, UnfoldingCount<std::string>& count) {
    if (!XCAFDoc_ShapeTool::IsAssembly(label)) {
      return {1.0, 0};
    }
    return count.count(entry_of(label), fmt::format("'{}'", name_or_entry(label)),
                       [&](const auto& add) {
                         for (const TDF_Label& product : products_in(label)) {
                           add(unfold(product, count));
                         }
                       });
  }

  // What the components of an assembly are instances of.
  static std::vector<TDF_Label> products_in(const TDF_Label& assembly) {
    TDF_LabelSequence components;
    XCAFDoc_ShapeTool::GetComponents(assembly, components);
    std::vector<TDF_Label> products;
    for (const TDF_Label& component : components) {
      TDF_Label product;
      if (XCAFDoc_ShapeTool::GetReferredShape(component, product)) {
        products.push_back(product);
      }
    }
    return products;
  }

  // How many occurrences a label unfolds to, each group counted once.
  double parts_below(const TDF_Label& label) {
    if (!XCAFDoc_ShapeTool::IsAssembly(label)) {
      return part_of(label) ? 1.0 : 0.0;
    }
    const std::string entry = entry_of(label);
    const auto known = parts_below_.find(entry);
    if (known != parts_below_.end()) {
      return known->second;
    }
    double parts = 0.0;
    for (const TDF_Label& member : products_in(label)) {
      parts += parts_below(member);
    }
    parts_below_.emplace(entry, parts);
    return parts;
  }

  static std::string name_or_entry(const TDF_Label& label) {
    const std::string name = name_of(label);
    return name.empty() ? fmt::format("Part {}", entry_of(label)) : name;
  }

  // A shape that was added where it lies is an instance of itself at its root.
  void place_root(const TDF_Label& root) {
    if (XCAFDoc_ShapeTool::IsReference(root)) {
      place_component(root, "", Frame{});
    } else {
      place(root, name_or_entry(root), Frame{});
    }
  }

  void place_component(const TDF_Label& label, const std::string& folder, const Frame& frame) {
    TDF_Label product;
    if (XCAFDoc_ShapeTool::GetReferredShape(label, product)) {
      const std::string name =
          component_name(name_of(label), name_of(product), name_or_entry(product));
      refuse_unplaced(label, name);
      const gp_Trsf placement = XCAFDoc_ShapeTool::GetLocation(label).Transformation();
      refuse_scaled(placement, name);
      Frame own = frame_of(placement);
      for (auto& row : own.rows) {
        row[3] *= result_.mm_per_unit;
      }
      if (parts_below(product) > 0.0) {
        place(product, folder + name, compose(frame, own));
      }
    }
  }

  void place(const TDF_Label& label, const std::string& path, const Frame& frame) {
    if (!XCAFDoc_ShapeTool::IsAssembly(label)) {
      if (const auto part = part_of(label)) {
        place_part(result_.tree, *part, path, frame);
      }
      return;
    }
    TDF_LabelSequence components;
    XCAFDoc_ShapeTool::GetComponents(label, components);
    for (TDF_LabelSequence::Iterator each(components); each.More(); each.Next()) {
      place_component(each.Value(), path + "/", frame);
    }
  }

  // A document names a solid of several by a label beneath the part's.
  void name_solids(const TDF_Label& label, std::vector<NamedSolid>& solids) const {
    for (NamedSolid& solid : solids) {
      TDF_Label own;
      if (tool_->FindSubShape(label, solid.shape, own)) {
        solid.name = name_of(own);
      }
    }
  }

  std::optional<Bodies> part_of(const TDF_Label& label) {
    const std::string entry = entry_of(label);
    const auto known = parts_.find(entry);
    if (known != parts_.end()) {
      return known->second;
    }
    const TopoDS_Shape shape = XCAFDoc_ShapeTool::GetShape(label);
    const std::string name = name_or_entry(label);
    std::optional<Bodies> part;
    if (!shape.IsNull()) {
      refuse_scaled(shape.Location().Transformation(), name);
      refuse_endless(shape, fmt::format("'{}'", name), how_.nesting_depth, how_.most_occurrences);
      note_loose_faces(name, {shape}, result_.tree);
      std::vector<NamedSolid> solids = solids_of(shape);
      name_solids(label, solids);
      for (NamedSolid& solid : solids) {
        solid.shape = in_mm(solid.shape, result_.mm_per_unit);
      }
      if (!solids.empty()) {
        part = add_part(result_.tree, 0, name, solids);
        result_.labels.resize(result_.tree.parts.size(), entry);
      }
    }
    parts_.emplace(entry, part);
    return part;
  }

  TDF_Label main_;
  DocumentReading how_;
  Handle(XCAFDoc_ShapeTool) tool_;
  std::map<std::string, std::optional<Bodies>> parts_;  // by entry of the label
  std::map<std::string, double> parts_below_;           // likewise, of assemblies
  DocumentTree result_;
};

}  // namespace

std::string entry_of(const TDF_Label& label) {
  TCollection_AsciiString entry;
  TDF_Tool::Entry(label, entry);
  return entry.ToCString();
}

DocumentTree read_document_tree(const TDF_Label& main, const DocumentReading& how) {
  return DocumentReader(main, how).read();
}

Tree tree_of_shapes(const std::vector<std::pair<std::string, TopoDS_Shape>>& named_shapes) {
  Tree tree;
  std::vector<TopoDS_Shape> seen;  // as given but without place, one a part
  std::vector<Bodies> parts;
  for (const auto& [given, shape] : named_shapes) {
    const std::string clean = clean_name(given);
    const std::string name =
        clean.empty() ? fmt::format("Part {}", tree.occurrences.size() + 1) : clean;
    const Error::Where where{"", fmt::format("'{}'", name)};
    if (shape.IsNull()) {
      throw Error(ErrorCode::bad_input, where, "is no shape", "make or read it first");
    }
    const gp_Trsf placement = shape.Location().Transformation();
    refuse_scaled(placement, name);
    const TopoDS_Shape unplaced = shape.Located(TopLoc_Location());
    const ReadLimits limits;
    refuse_endless(unplaced, where.place, limits.nesting_depth, limits.occurrences);
    std::size_t part = 0;
    while (part < seen.size() && !seen[part].IsEqual(unplaced)) {
      ++part;
    }
    if (part == seen.size()) {
      const std::vector<NamedSolid> solids = solids_of(unplaced);
      if (solids.empty()) {
        throw Error(ErrorCode::bad_input, where, "holds no solid", "give solids, each a part");
      }
      note_loose_faces(name, {unplaced}, tree);
      seen.push_back(unplaced);
      parts.push_back(add_part(tree, 0, name, solids));
    }
    place_part(tree, parts[part], name, frame_of(placement));
  }
  return tree;
}

}  // namespace spotblue
