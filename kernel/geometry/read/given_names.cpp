#include "geometry/read/given_names.hpp"

#include <StepShape_FaceSurface.hxx>
#include <TCollection_AsciiString.hxx>
#include <TCollection_HAsciiString.hxx>
#include <TDF_ChildIterator.hxx>
#include <TDataStd_Name.hxx>
#include <TopoDS_Shape.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "geometry/model/feature_names.hpp"
#include "geometry/part21/step_name.hpp"
#include "geometry/sizes/face_book.hpp"
#include "spotblue/base/ascii.hpp"

namespace spotblue {
namespace {

struct CalledFace {
  TopoDS_Shape face;
  std::string name;
};

// A name on more faces of one part is no feature's: programs put the part's own there. Choice of
// this program, no source.
constexpr std::size_t kMostFaces = 16;

std::string without_digits(std::string name) {
  std::erase_if(name, is_ascii_digit);
  return name;
}

// Faces of one part by their names.
using FacesByName = std::map<std::string, std::vector<FaceBook::Place>>;

// Whether a program counted the faces: all have a name, and all the same but for its digits.
bool is_counted(const FacesByName& faces, std::size_t of_part) {
  std::set<std::string> words;
  std::size_t named = 0;
  for (const auto& [name, places] : faces) {
    words.insert(without_digits(name));
    named += places.size();
  }
  return named >= of_part && words.size() == 1;
}

void add_name(std::vector<std::string>& given, const std::string& name) {
  if (const auto at = std::ranges::lower_bound(given, name); at == given.end() || *at != name) {
    given.insert(at, name);
  }
}

void name_feature(Product& product, const ProductFeatureRef& feature, const std::string& name) {
  switch (feature.kind) {
    case FeatureKind::cylinder:
      return add_name(product.cylinders.at(feature.index).given, name);
    case FeatureKind::cone:
      return add_name(product.cones.at(feature.index).given, name);
    case FeatureKind::plane:
      return add_name(product.planes.at(feature.index).given, name);
    case FeatureKind::width:
      return;
  }
}

// A name that both its faces have is the width's own.
void name_widths(Product& product) {
  for (Width& width : product.widths) {
    const std::vector<std::string>& one = product.planes.at(width.first).given;
    const std::vector<std::string>& two = product.planes.at(width.second).given;
    width.given.clear();
    std::ranges::set_intersection(one, two, std::back_inserter(width.given));
  }
}

void name_by(const std::vector<CalledFace>& named, const Tree& tree, Model& model) {
  if (named.empty()) {
    return;
  }
  FaceBook book(tree, model);
  std::map<ProductId, FacesByName> by_part;
  for (const CalledFace& one : named) {
    for (const FaceBook::Place& place : book.places(one.face)) {
      by_part[place.part][one.name].push_back(place);
    }
  }
  for (const auto& [part, faces] : by_part) {
    Product& product = model.products.at(part);
    if (is_counted(faces, static_cast<std::size_t>(product.faces))) {
      continue;
    }
    for (const auto& [name, places] : faces) {
      if (places.size() > kMostFaces) {
        continue;
      }
      for (const FaceBook::Place& place : places) {
        if (const ProductFeatureRef* feature = book.feature(place)) {
          name_feature(product, *feature, name);
        }
      }
    }
    name_widths(product);
    name_features(product);
  }
}

void add_labels(const TDF_Label& part, std::vector<CalledFace>& named) {
  for (TDF_ChildIterator each(part, false); each.More(); each.Next()) {
    Handle(TDataStd_Name) name;
    const TDF_Label label = each.Value();
    if (!XCAFDoc_ShapeTool::IsSubShape(label) ||
        !label.FindAttribute(TDataStd_Name::GetID(), name)) {
      continue;
    }
    const TopoDS_Shape face = XCAFDoc_ShapeTool::GetShape(label);
    std::string said =
        name_by_a_maker(clean_name(TCollection_AsciiString(name->Get()).ToCString()));
    if (!face.IsNull() && face.ShapeType() == TopAbs_FACE && !said.empty()) {
      named.push_back({face, std::move(said)});
    }
  }
}

}  // namespace

void add_given_names(const StepReader& reader, const Tree& tree, Model& model) {
  std::vector<CalledFace> named;
  const auto& entities = reader.entities();
  for (int i = 1; i <= entities->NbEntities(); ++i) {
    const Handle(StepShape_Face) face = Handle(StepShape_Face)::DownCast(entities->Value(i));
    if (face.IsNull() || face->Name().IsNull() || face->Name()->IsEmpty()) {
      continue;
    }
    if (std::string name = name_by_a_maker(clean_name(face->Name()->ToCString())); !name.empty()) {
      if (const TopoDS_Shape shape = reader.shape_of(face); !shape.IsNull()) {
        named.push_back({shape, std::move(name)});
      }
    }
  }
  name_by(named, tree, model);
}

void add_given_names(const TDF_Label& main, const Tree& tree, Model& model) {
  std::vector<CalledFace> named;
  const TDF_Label shapes = XCAFDoc_DocumentTool::ShapeTool(main)->Label();
  for (TDF_ChildIterator each(shapes, false); each.More(); each.Next()) {
    add_labels(each.Value(), named);
  }
  name_by(named, tree, model);
}

}  // namespace spotblue
