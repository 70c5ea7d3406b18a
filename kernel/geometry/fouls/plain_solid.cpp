#include "geometry/fouls/plain_solid.hpp"

#include <BRepCheck_Analyzer.hxx>
#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>

#include "geometry/occt/guard.hpp"
#include "geometry/surfaces/plain_faces.hpp"

namespace spotblue {
namespace {

// Faces turned the wrong way make neither. The volume is not held against what it was before: of
// B-spline faces Open CASCADE's own is far off, and may be negative.
bool is_sound(const TopoDS_Shape& made) {
  GProp_GProps volume;
  BRepGProp::VolumeProperties(made, volume);
  return volume.Mass() > 0.0 && BRepCheck_Analyzer(made).IsValid();
}

}  // namespace

TopoDS_Shape plain_solid(const ShapeStore& store, std::size_t product) {
  const TopoDS_Shape shape = store.load(product);
  return guarded("mending a shape", [&] {
    const TopoDS_Shape plain = with_plain_faces(shape);
    if (!plain.IsSame(shape)) {
      TopoDS_Shape made = healed(plain);
      if (is_sound(made)) {
        return made;
      }
    }
    return healed(shape);
  });
}

}  // namespace spotblue
