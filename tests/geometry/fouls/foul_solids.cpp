#include "geometry/fouls/foul_solids.hpp"

#include <BRepAlgoAPI_Common.hxx>
#include <BRepAlgoAPI_Cut.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepGProp.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <GProp_GProps.hxx>
#include <TopExp_Explorer.hxx>
#include <gp_Ax1.hxx>
#include <gp_Trsf.hxx>
#include <numbers>

#include "geometry/faces/product_features.hpp"
#include "geometry/occt/shape_store.hpp"

namespace spotblue::test {
namespace {

TopoDS_Shape cylinder(Point at, Direction along, double radius, double length) {
  const gp_Ax2 axes(gp_Pnt(at.x, at.y, at.z), gp_Dir(along.x(), along.y(), along.z()));
  return BRepPrimAPI_MakeCylinder(axes, radius, length).Shape();
}

/// Booleans give compounds; a single solid in one is what was meant.
TopoDS_Shape single(const TopoDS_Shape& shape) {
  TopExp_Explorer it(shape, TopAbs_SOLID);
  const TopoDS_Shape first = it.Current();
  it.Next();
  return it.More() ? shape : first;
}

TopoDS_Shape drilled_block(std::mt19937& random) {
  const double x = between(random, 20, 40);
  const double y = between(random, 20, 40);
  const double z = between(random, 10, 40);
  TopoDS_Shape block = block_solid({-x, -y, 0}, {x, y, z});
  block = cut_solid(block, cylinder({0, 0, -1}, {0, 0, 1}, between(random, 5, 15), z + 2));
  const double corner = between(random, 2, 4);
  for (const double sx : {-1.0, 1.0}) {
    block = cut_solid(block, cylinder({sx * (x - 5), sx * (y - 5), -1}, {0, 0, 1}, corner, z + 2));
  }
  return block;
}

TopoDS_Shape drilled_ring(std::mt19937& random) {
  const double inner = between(random, 5, 12);
  const double outer = inner + between(random, 3, 10);
  const double length = between(random, 15, 40);
  const TopoDS_Shape ring = bar_solid(inner, outer, 0, length);
  return cut_solid(ring, cylinder({0, 0, 0.5 * length}, {1, 0, 0}, between(random, 1, 2.5), 50));
}

TopoDS_Shape keyed_bar(std::mt19937& random) {
  const double radius = between(random, 8, 15);
  const TopoDS_Shape bar = bar_solid(0, radius, 0, 60);
  const TopoDS_Shape seat = key_solid(24, 6, 20, random() % 2 == 0);
  // Along the bar, its floor 3 mm under the surface.
  const Frame place{{{{0, 0, 1, radius - 3}, {0, 1, 0, 0}, {-1, 0, 0, 30}}}};
  return cut_solid(bar, moved_solid(seat, place));
}

TopoDS_Shape stepped_bar(std::mt19937& random) {
  const double r = between(random, 4, 12);
  const double shoulder = r + between(random, 1, 5);
  const double end = between(random, 20, 50);
  return turned_solid(
      {{0, 0}, {r - 1, 0}, {r, 1}, {r, end}, {shoulder, end}, {shoulder, end + 8}, {0, end + 8}});
}

}  // namespace

double between(std::mt19937& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}

TopoDS_Shape turned_solid(const std::vector<std::pair<double, double>>& section) {
  BRepBuilderAPI_MakePolygon outline;
  for (const auto& [r, z] : section) {
    outline.Add(gp_Pnt(r, 0, z));
  }
  outline.Close();
  const BRepBuilderAPI_MakeFace face(outline.Wire(), Standard_True);
  return BRepPrimAPI_MakeRevol(face.Face(), gp_Ax1(gp_Pnt(), gp_Dir(0, 0, 1))).Shape();
}

TopoDS_Shape bar_solid(double inner, double outer, double from, double to) {
  return turned_solid({{inner, from}, {outer, from}, {outer, to}, {inner, to}});
}

TopoDS_Shape block_solid(Point low, Point high) {
  return BRepPrimAPI_MakeBox(gp_Pnt(low.x, low.y, low.z), gp_Pnt(high.x, high.y, high.z)).Shape();
}

TopoDS_Shape key_solid(double length, double width, double height, bool round) {
  const double straight = round ? 0.5 * (length - width) : 0.5 * length;
  TopoDS_Shape key = block_solid({-straight, -0.5 * width, 0}, {straight, 0.5 * width, height});
  if (round) {
    for (const double end : {-straight, straight}) {
      key = BRepAlgoAPI_Fuse(key, cylinder({end, 0, 0}, {0, 0, 1}, 0.5 * width, height)).Shape();
    }
  }
  return single(key);
}

TopoDS_Shape cut_solid(const TopoDS_Shape& from, const TopoDS_Shape& tool) {
  return single(BRepAlgoAPI_Cut(from, tool).Shape());
}

TopoDS_Shape moved_solid(const TopoDS_Shape& solid, const Frame& frame) {
  const auto& r = frame.rows;
  gp_Trsf by;
  by.SetValues(r[0][0], r[0][1], r[0][2], r[0][3], r[1][0], r[1][1], r[1][2], r[1][3], r[2][0],
               r[2][1], r[2][2], r[2][3]);
  return BRepBuilderAPI_Transform(solid, by, Standard_True).Shape();
}

double shared_volume(const TopoDS_Shape& a, const TopoDS_Shape& b) {
  GProp_GProps props;
  // Adaptive to 1e-7: the plain rule is off by up to 1 % on faces with curved trims.
  BRepGProp::VolumeProperties(BRepAlgoAPI_Common(a, b).Shape(), props, 1e-7);
  return props.Mass();
}

Model solid_model(const std::vector<std::pair<TopoDS_Shape, Frame>>& parts) {
  Model model;
  std::vector<TopoDS_Shape> solids;
  for (const auto& [solid, frame] : parts) {
    const std::size_t index = model.products.size();
    Product product;
    product.id = product.name = "part " + std::to_string(index + 1);
    analyse_shape(solid, product);
    solids.push_back(solid);
    Occurrence occurrence;
    occurrence.id = occurrence.path = product.id;
    occurrence.product = ProductId(index);
    occurrence.frame = frame;
    occurrence.mirrored = is_mirror(frame);
    occurrence.box = place_box(frame, product.box);
    model.products.push_back(std::move(product));
    model.occurrences.push_back(std::move(occurrence));
  }
  const auto folder = make_shape_folder();
  store_shapes(folder, solids);
  model.shapes = std::make_shared<const ShapeStore>(folder);
  return model;
}

TopoDS_Shape random_solid(std::mt19937& random) {
  switch (random() % 6) {
    case 0:
      return stepped_bar(random);
    case 1: {
      const double inner = between(random, 4, 15);
      return bar_solid(inner, inner + between(random, 1, 10), 0, between(random, 5, 40));
    }
    case 2:
      return drilled_block(random);
    case 3:
      return drilled_ring(random);
    case 4:
      return keyed_bar(random);
    default:
      return key_solid(between(random, 16, 30), between(random, 4, 8), between(random, 4, 8),
                       random() % 2 == 0);
  }
}

}  // namespace spotblue::test
