#include "geometry/document_tree.hpp"

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

#include "geometry/step_name.hpp"
#include "geometry/step_operator.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

std::string name_of(const TDF_Label& label) {
  Handle(TDataStd_Name) name;
  if (!label.FindAttribute(TDataStd_Name::GetID(), name)) {
    return {};
  }
  const TCollection_AsciiString utf8(name->Get());
  return clean_name(utf8.ToCString());
}

std::vector<TopoDS_Shape> solids_of(const TopoDS_Shape& shape) {
  std::vector<TopoDS_Shape> solids;
  for (TopExp_Explorer each(shape, TopAbs_SOLID); each.More(); each.Next()) {
    solids.push_back(each.Current());
  }
  return solids;
}

void refuse_scaled(const gp_Trsf& placement, const std::string& name) {
  if (!is_rigid(placement)) {
    throw Error(ErrorCode::bad_input, {"", fmt::format("'{}'", name)},
                fmt::format("is placed with a scale of {:g}, so that its sizes would be wrong",
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
    if (std::abs(unit.GetUnitValue() - metres) <= 1e-9) {
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
    TDF_LabelSequence roots;
    tool_->GetFreeShapes(roots);
    for (TDF_LabelSequence::Iterator each(roots); each.More(); each.Next()) {
      place_root(each.Value());
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
    result_.unit = unit_name(*unit);
    if (std::abs(unit->GetUnitValue() - mm) <= 1e-9) {
      return;
    }
    if (how_.other_lengths == OtherLengths::turned_into_mm) {
      result_.mm_per_unit = unit->GetUnitValue() / mm;
    } else {
      throw Error(ErrorCode::bad_input, {"", "length unit"},
                  fmt::format("the document's lengths are in units of {:g} mm, not in mm",
                              unit->GetUnitValue() / mm),
                  "read the file anew with the kernel's setting xstep.cascade.unit at MM");
    }
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
      place(product, folder + name, compose(frame, own));
    }
  }

  void place(const TDF_Label& label, const std::string& path, const Frame& frame) {
    if (!XCAFDoc_ShapeTool::IsAssembly(label)) {
      if (const auto part = part_of(label)) {
        result_.tree.occurrences.push_back({{}, path, *part, frame, is_mirror(frame), {}});
        if (static_cast<double>(result_.tree.occurrences.size()) > how_.most_occurrences) {
          throw too_many_parts(how_.most_occurrences);
        }
      }
      return;
    }
    TDF_LabelSequence components;
    XCAFDoc_ShapeTool::GetComponents(label, components);
    for (TDF_LabelSequence::Iterator each(components); each.More(); each.Next()) {
      place_component(each.Value(), path + "/", frame);
    }
  }

  std::optional<std::size_t> part_of(const TDF_Label& label) {
    const std::string entry = entry_of(label);
    const auto known = parts_.find(entry);
    if (known != parts_.end()) {
      return known->second;
    }
    const TopoDS_Shape shape = XCAFDoc_ShapeTool::GetShape(label);
    const std::string name = name_or_entry(label);
    std::optional<std::size_t> part;
    if (!shape.IsNull()) {
      refuse_scaled(shape.Location().Transformation(), name);
      note_loose_faces(name, {shape}, result_.tree.notes);
      const std::vector<TopoDS_Shape> solids = solids_of(shape);
      if (!solids.empty()) {
        part = result_.tree.parts.size();
        result_.tree.parts.push_back({0, name, in_mm(together(solids), result_.mm_per_unit)});
        result_.labels.push_back(entry);
      }
    }
    parts_.emplace(entry, part);
    return part;
  }

  TDF_Label main_;
  DocumentReading how_;
  Handle(XCAFDoc_ShapeTool) tool_;
  std::map<std::string, std::optional<std::size_t>> parts_;  // by entry of the label
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

Error too_many_parts(double most) {
  return {ErrorCode::unreadable,
          {"", ""},
          fmt::format("the model unfolds to more than {:.0f} solids", most),
          "export a part of it, or raise the limit"};
}

Tree tree_of_shapes(const std::vector<std::pair<std::string, TopoDS_Shape>>& named_shapes) {
  Tree tree;
  std::vector<TopoDS_Shape> seen;  // as given but without place, one a part
  for (const auto& [name, shape] : named_shapes) {
    const Error::Where where{"", fmt::format("'{}'", name)};
    if (shape.IsNull()) {
      throw Error(ErrorCode::bad_input, where, "is no shape", "make or read it first");
    }
    const gp_Trsf placement = shape.Location().Transformation();
    refuse_scaled(placement, name);
    const TopoDS_Shape unplaced = shape.Located(TopLoc_Location());
    std::size_t part = 0;
    while (part < seen.size() && !seen[part].IsEqual(unplaced)) {
      ++part;
    }
    if (part == seen.size()) {
      const std::vector<TopoDS_Shape> solids = solids_of(unplaced);
      if (solids.empty()) {
        throw Error(ErrorCode::bad_input, where, "holds no solid", "give solids, each a part");
      }
      note_loose_faces(name, {unplaced}, tree.notes);
      seen.push_back(unplaced);
      tree.parts.push_back({0, name, together(solids)});
    }
    const Frame frame = frame_of(placement);
    tree.occurrences.push_back({{}, name, part, frame, is_mirror(frame), {}});
  }
  return tree;
}

}  // namespace spotblue
