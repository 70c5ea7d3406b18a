#include "geometry/mockup/mockup_solid.hpp"

#include <fmt/format.h>

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepCheck_Analyzer.hxx>
#include <BRepLib.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <GC_MakeArcOfCircle.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/mockup/block_faces.hpp"
#include "geometry/mockup/turned_profile.hpp"
#include "geometry/mockup/workpiece.hpp"
#include "geometry/occt/guard.hpp"

namespace spotblue {
namespace {

constexpr double kBeyond = 1.0;      // mm: how far tools reach past the part
constexpr double kSamePoint = 1e-9;  // mm

gp_Pnt in_section(double z, double r) { return {r, 0.0, z}; }

// Draws the half section and turns it round z.
class Section {
 public:
  void to(const ProfilePoint& point) {
    if (!started_) {
      first_ = last_ = point;
      started_ = true;
      return;
    }
    if (std::hypot(point.z - last_.z, point.r - last_.r) <= kSamePoint) {
      return;
    }
    const gp_Pnt from = in_section(last_.z, last_.r);
    const gp_Pnt end = in_section(point.z, point.r);
    if (point.by) {
      const gp_Pnt middle = in_section(point.by->first, point.by->second);
      wire_.Add(BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(from, middle, end).Value()).Edge());
    } else {
      wire_.Add(BRepBuilderAPI_MakeEdge(from, end).Edge());
    }
    last_ = point;
  }

  TopoDS_Shape turned() {
    ProfilePoint close = first_;
    close.by.reset();
    to(close);
    const TopoDS_Face face = BRepBuilderAPI_MakeFace(wire_.Wire(), true).Face();
    TopExp_Explorer solid(BRepPrimAPI_MakeRevol(face, gp::OZ()).Shape(), TopAbs_SOLID);
    TopoDS_Solid result = TopoDS::Solid(solid.Current());
    BRepLib::OrientClosedSolid(result);
    return result;
  }

 private:
  BRepBuilderAPI_MakeWire wire_;
  bool started_ = false;
  ProfilePoint first_, last_;
};

TopoDS_Shape turned_body(const TurnedPart& part) {
  const std::vector<ProfilePoint> outside = profile_path(part, Side::external);
  const std::vector<ProfilePoint> inside = profile_path(part, Side::internal);
  Section section;
  for (const ProfilePoint& point : outside) {
    section.to(point);
  }
  // Back along the inside: the arc that led to a point now leads away from it.
  std::optional<std::pair<double, double>> by;
  for (auto point = inside.rbegin(); point != inside.rend(); ++point) {
    section.to({point->z, point->r, by});
    by = point->by;
  }
  return section.turned();
}

TopTools_ListOfShape one(const TopoDS_Shape& tool) {
  TopTools_ListOfShape list;
  list.Append(tool);
  return list;
}

double greatest_radius(const TurnedPart& part) {
  double greatest = 0.0;
  for (const Step& step : part.outside) {
    greatest = std::max({greatest, step.diameter / 2, step.end_diameter / 2});
  }
  return greatest;
}

TopoDS_Shape keyseat_tool(const TurnedPart& part, const Keyseat& seat) {
  const double radius = outside_radius(part, seat.at + seat.length / 2);
  return key_tool(turned_axes(0, 0, seat.at, seat.angle),
                  {radius - seat.depth, -seat.width / 2, 0.0},
                  {greatest_radius(part) + kBeyond, seat.width / 2, seat.length}, seat.ends);
}

TopoDS_Shape keyway_tool(const TurnedPart& part, const Keyway& way) {
  const double length = turned_length(part);
  const double from = way.at ? *way.at : -kBeyond;
  const double to = way.at ? *way.at + *way.length : length + kBeyond;
  const double bore = way.bore ? *way.bore : 2 * inside_radius(part, (from + to) / 2);
  return box_tool(turned_axes(way.x, way.y, 0.0, way.angle), {0.0, -way.width / 2, from},
                  {bore / 2 + way.depth, way.width / 2, to});
}

TopTools_ListOfShape flats_tools(const TurnedPart& part, const Flats& flats) {
  const double reach = greatest_radius(part) + kBeyond;
  const double distance = flats.count == 1
                              ? flats.across - outside_radius(part, flats.at + flats.length / 2)
                              : flats.across / 2;
  TopTools_ListOfShape tools;
  for (int i = 0; i < flats.count; ++i) {
    const double angle = flats.angle + 2 * std::numbers::pi * i / flats.count;
    tools.Append(box_tool(turned_axes(0, 0, flats.at, angle), {distance, -reach, 0.0},
                          {reach, reach, flats.length}));
  }
  return tools;
}

TopoDS_Shape cross_hole_tool(const TurnedPart& part, const CrossHole& hole) {
  const double reach = greatest_radius(part) + kBeyond;
  const double to = hole.depth ? outside_radius(part, hole.at) - *hole.depth : -reach;
  const gp_Vec radial(std::cos(hole.angle), std::sin(hole.angle), 0.0);
  const gp_Vec aside(-std::sin(hole.angle), std::cos(hole.angle), 0.0);
  const gp_Pnt start = gp_Pnt(0.0, 0.0, hole.at).Translated(radial * to + aside * hole.offset);
  return cylinder_tool(gp_Ax2(start, gp_Dir(radial)), hole.diameter / 2, reach - to);
}

// How a bore runs on the axis of its face: it starts at `face` and cuts from `outer` to the far
// side of the part, `through`.
struct BoreReach {
  double face = 0.0;
  double outer = 0.0;
  double through = 0.0;
};

TopTools_ListOfShape bore_tools(const Bore& bore, FacePoint centre, const BoreReach& reach) {
  const int sense = face_sense(bore.face);
  const auto disc = [&](double diameter, double begin, double end) {
    const Point from = face_point(bore.face, centre, begin);
    const Point to = face_point(bore.face, centre, end);
    const gp_Vec way(to.x - from.x, to.y - from.y, to.z - from.z);
    return cylinder_tool(gp_Ax2(gp_Pnt(from.x, from.y, from.z), gp_Dir(way)), diameter / 2,
                         way.Magnitude());
  };
  const auto tool = [&](double diameter, double end) { return disc(diameter, reach.outer, end); };
  TopTools_ListOfShape tools;
  tools.Append(tool(bore.diameter, bore.depth ? reach.face - sense * *bore.depth : reach.through));
  if (bore.counterbore) {
    tools.Append(tool(bore.counterbore->diameter, reach.face - sense * bore.counterbore->depth));
  }
  for (const BoreGroove& groove : bore.grooves) {
    const double near = reach.face - sense * groove.depth;
    tools.Append(disc(groove.diameter, near, near - sense * groove.width));
  }
  return tools;
}

void cut_end_bores(const MockupPlace& place, const TurnedPart& part, Workpiece& work) {
  const double length = turned_length(part);
  for (std::size_t i = 0; i < part.bores.size(); ++i) {
    const bool from_last = part.bores[i].face == PartFace::last;
    const BoreReach reach{from_last ? length : 0.0, from_last ? length + kBeyond : -kBeyond,
                          from_last ? -kBeyond : length + kBeyond};
    TopTools_ListOfShape tools;
    for (const FacePoint& centre : bore_centres(part.bores[i])) {
      TopTools_ListOfShape more = bore_tools(part.bores[i], centre, reach);
      tools.Append(more);
    }
    work.cut(place.in("bores", i), tools);
  }
}

TopoDS_Shape turned_solid(const MockupPlace& place, const TurnedPart& part) {
  Workpiece work(turned_body(part));
  for (std::size_t i = 0; i < part.flats.size(); ++i) {
    work.cut(place.in("flats", i), flats_tools(part, part.flats[i]));
  }
  cut_end_bores(place, part, work);
  for (std::size_t i = 0; i < part.cross_holes.size(); ++i) {
    work.cut(place.in("cross_holes", i), one(cross_hole_tool(part, part.cross_holes[i])));
  }
  for (std::size_t i = 0; i < part.keyseats.size(); ++i) {
    work.cut(place.in("keyseats", i), one(keyseat_tool(part, part.keyseats[i])));
  }
  for (std::size_t i = 0; i < part.keyways.size(); ++i) {
    work.cut(place.in("keyways", i), one(keyway_tool(part, part.keyways[i])));
  }
  return work.solid();
}

// The whole block with what was added to it.
Box block_box(const BlockPart& block) {
  Box box{{0, 0, 0}, block.size};
  for (const AddedBlock& added : block.added) {
    extend(box, added.corner);
    extend(box, added.corner + added.size);
  }
  for (const Boss& boss : block.bosses) {
    const double top = face_station(block, boss.face) + face_sense(boss.face) * boss.height;
    extend(box, face_point(boss.face, {boss.u, boss.v}, top));
  }
  return box;
}

double line_on_axis(Point p, int axis) { return axis == 0 ? p.x : axis == 1 ? p.y : p.z; }

TopoDS_Shape boss_tool(const BlockPart& block, const Boss& boss) {
  const int axis = face_axis(boss.face);
  const double face = face_station(block, boss.face);
  // Rooted half way through the block, so that no two faces coincide while joining.
  const double root = face - face_sense(boss.face) * line_on_axis(block.size, axis) / 2;
  const Point from = face_point(boss.face, {boss.u, boss.v}, root);
  const Point to =
      face_point(boss.face, {boss.u, boss.v}, face + face_sense(boss.face) * boss.height);
  const gp_Vec way(to.x - from.x, to.y - from.y, to.z - from.z);
  return cylinder_tool(gp_Ax2(gp_Pnt(from.x, from.y, from.z), gp_Dir(way)), boss.diameter / 2,
                       way.Magnitude());
}

BoreReach block_reach(const BlockPart& block, const Bore& bore, FacePoint centre) {
  const int axis = face_axis(bore.face);
  const int sense = face_sense(bore.face);
  const Box box = block_box(block);
  const double low = line_on_axis(box.low, axis) - kBeyond;
  const double high = line_on_axis(box.high, axis) + kBeyond;
  BoreReach reach{face_station(block, bore.face), sense > 0 ? high : low, sense > 0 ? low : high};
  for (const Boss& boss : block.bosses) {
    if (boss.face == bore.face &&
        std::hypot(centre.u - boss.u, centre.v - boss.v) < boss.diameter / 2) {
      reach.face = face_station(block, bore.face) + sense * boss.height;
    }
  }
  return reach;
}

TopoDS_Shape block_solid(const MockupPlace& place, const BlockPart& block) {
  const gp_Ax2 axes(gp::Origin(), gp::DZ(), gp::DX());
  Workpiece work(box_tool(axes, {0, 0, 0}, block.size));
  for (std::size_t i = 0; i < block.added.size(); ++i) {
    const AddedBlock& added = block.added[i];
    work.join(place.in("added", i), one(box_tool(axes, added.corner, added.corner + added.size)));
  }
  for (std::size_t i = 0; i < block.bosses.size(); ++i) {
    work.join(place.in("bosses", i), one(boss_tool(block, block.bosses[i])));
  }
  if (!block.added.empty() || !block.bosses.empty()) {
    work.merge_faces();
  }
  for (std::size_t i = 0; i < block.bores.size(); ++i) {
    TopTools_ListOfShape tools;
    for (const FacePoint& centre : bore_centres(block.bores[i])) {
      TopTools_ListOfShape more =
          bore_tools(block.bores[i], centre, block_reach(block, block.bores[i], centre));
      tools.Append(more);
    }
    work.cut(place.in("bores", i), tools);
  }
  return work.solid();
}

TopoDS_Shape ring_solid(const MockupPlace& place, const RingPart& ring) {
  TurnedPart turned;
  turned.outside = {{"", 0.0, ring.thickness, ring.outside, ring.outside, {}, {}}};
  turned.inside = {{"", 0.0, ring.thickness, ring.inside, ring.inside, {}, {}}};
  Workpiece work(turned_body(turned));
  if (ring.gap > 0.0) {
    work.cut(place.in("gap"),
             one(box_tool(turned_axes(0, 0, 0, 0), {0.0, -ring.gap / 2, -kBeyond},
                          {ring.outside, ring.gap / 2, ring.thickness + kBeyond})));
  }
  return work.solid();
}

TopoDS_Shape shape_of(const MockupPlace& place, const MockupPart& part) {
  if (const auto* turned = std::get_if<TurnedPart>(&part.shape)) {
    return turned_solid(place, *turned);
  }
  if (const auto* block = std::get_if<BlockPart>(&part.shape)) {
    return block_solid(place, *block);
  }
  if (const auto* ring = std::get_if<RingPart>(&part.shape)) {
    return ring_solid(place, *ring);
  }
  const auto& key = std::get<KeyPart>(part.shape);
  return key_tool(turned_axes(0, 0, 0, 0), {0.0, -key.width / 2, 0.0},
                  {key.height, key.width / 2, key.length}, key.ends);
}

}  // namespace

TopoDS_Shape make_solid(const MockupPlace& place, const MockupPart& part) {
  return guarded("making " + place.part, [&] {
    TopoDS_Shape solid = shape_of(place, part);
    if (!BRepCheck_Analyzer(solid).IsValid()) {
      throw Error(ErrorCode::open_cascade_failed, {place.file, place.part},
                  "Open CASCADE made no sound solid of these sizes",
                  "change the sizes a little where cuts meet");
    }
    return solid;
  });
}

}  // namespace spotblue
