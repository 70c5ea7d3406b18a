#include "geometry/occt/unfolding.hpp"

#include <TopoDS_Iterator.hxx>
#include <TopoDS_TShape.hxx>

namespace spotblue {
namespace {

using Counted = UnfoldingCount<const TopoDS_TShape*>;

Unfolding unfold(const TopoDS_Shape& shape, const std::string& place, Counted& counted) {
  if (shape.ShapeType() != TopAbs_COMPOUND && shape.ShapeType() != TopAbs_COMPSOLID) {
    return {1.0, 0};
  }
  return counted.count(shape.TShape().get(), place, [&](const auto& add) {
    for (TopoDS_Iterator each(shape); each.More(); each.Next()) {
      add(unfold(each.Value(), place, counted));
    }
  });
}

}  // namespace

Error too_many_parts(double most) {
  return {ErrorCode::unreadable,
          {"", ""},
          fmt::format("the model unfolds to more than {:.0f} solids", most),
          "export a part of it, or raise the limit"};
}

void refuse_endless(const TopoDS_Shape& shape, const std::string& place, int deepest, double most) {
  Counted counted(deepest);
  if (unfold(shape, place, counted).leaves > most) {
    throw too_many_parts(most);
  }
}

}  // namespace spotblue
