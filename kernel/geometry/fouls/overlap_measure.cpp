#include "geometry/fouls/overlap_measure.hpp"

#include <BRepAdaptor_Surface.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepClass_FaceClassifier.hxx>
#include <BRepGProp.hxx>
#include <BRepMesh_IncrementalMesh.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <BRepTools.hxx>
#include <BRep_Tool.hxx>
#include <GProp_GProps.hxx>
#include <GProp_PrincipalProps.hxx>
#include <Poly_Triangulation.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/faces/face_bounds.hpp"
#include "geometry/fouls/solid_probe.hpp"
#include "geometry/model/tolerances.hpp"
#include "geometry/occt/occt_values.hpp"
#include "geometry/surfaces/plain_faces.hpp"

namespace spotblue::proof {
namespace {

constexpr double kVolumeKnown = 1e-7;  // of it

constexpr double kLeastVolume = 1e-6;

}  // namespace

SolidPoints mesh_points(const TopoDS_Shape& shape) {
  const BRepMesh_IncrementalMesh mesher(shape, 0.02, Standard_True, 0.2);
  SolidPoints points;
  for (TopExp_Explorer it(shape, TopAbs_FACE); it.More(); it.Next()) {
    TopLoc_Location where;
    const auto mesh = BRep_Tool::Triangulation(TopoDS::Face(it.Current()), where);
    if (mesh.IsNull()) {
      continue;
    }
    const auto node = [&](int i) {
      return from_occt(mesh->Node(i).Transformed(where.Transformation()));
    };
    for (int i = 1; i <= mesh->NbNodes(); ++i) {
      points.corners.push_back(node(i));
    }
    for (int i = 1; i <= mesh->NbTriangles(); ++i) {
      int a = 0;
      int b = 0;
      int c = 0;
      mesh->Triangle(i).Get(a, b, c);
      points.spread.push_back((1.0 / 3.0) * (node(a) + node(b) + node(c)));
    }
  }
  return points;
}

namespace {

Interval span_along(const std::vector<Point>& points, Direction d) {
  const auto [low, high] = std::ranges::minmax(points, {}, [&](Point p) { return dot(p, d); });
  return {dot(low, d), dot(high, d)};
}

/// Least and greatest extent over the directions.
Interval extents(const std::vector<Point>& points, const std::vector<Direction>& directions) {
  Interval span{std::numeric_limits<double>::infinity(), 0.0};
  for (const Direction d : directions) {
    const Interval along = span_along(points, d);
    span = {std::min(span.low, along.high - along.low),
            std::max(span.high, along.high - along.low)};
  }
  return span;
}

/// Directions for one solid: the pair's own, away from each axis, and the solid's own three.
std::vector<Direction> directions_for(const GProp_GProps& props, const OpenPair& pair) {
  std::vector<Direction> directions = pair.directions;
  const Point centre = from_occt(props.CentreOfMass());
  for (const Line& axis : pair.accounted.axes) {
    const Point away = centre - at_station(axis, station(axis, centre));
    if (norm(away) > kOnePlace) {
      directions.push_back(unit(away));
    }
  }
  const GProp_PrincipalProps own = props.PrincipalProperties();
  for (const gp_Vec& v :
       {own.FirstAxisOfInertia(), own.SecondAxisOfInertia(), own.ThirdAxisOfInertia()}) {
    if (v.Magnitude() > 0.5) {
      directions.push_back(unit(from_occt(v)));
    }
  }
  return directions;
}

std::optional<Point> point_inside(const TopoDS_Shape& solid, Point centre, double depth) {
  SolidProbe probe(solid);
  if (probe.inside(centre, kProbeSlack)) {
    return centre;
  }
  const auto points = face_points(solid, 200);
  for (const double share : {0.5, 0.25, 0.1, 0.02}) {
    for (const FacePoint& p : points) {
      const Point in = p.at - share * depth * p.out;
      if (probe.inside(in, kProbeSlack)) {
        return in;
      }
    }
  }
  return {};
}

TopoDS_Shape ring_solid(const Ring& ring) {
  const Direction x = any_square(ring.axis.along);
  const auto corner = [&](double radius, double at) {
    return to_pnt(at_station(ring.axis, at) + std::max(0.0, radius) * x);
  };
  BRepBuilderAPI_MakePolygon outline;
  outline.Add(corner(ring.inner_from - kGrown, ring.from - kGrown));
  outline.Add(corner(ring.outer_from + kGrown, ring.from - kGrown));
  outline.Add(corner(ring.outer_to + kGrown, ring.to + kGrown));
  outline.Add(corner(ring.inner_to - kGrown, ring.to + kGrown));
  outline.Close();
  const BRepBuilderAPI_MakeFace face(outline.Wire(), Standard_True);
  return BRepPrimAPI_MakeRevol(face.Face(), gp_Ax1(to_pnt(ring.axis.at), to_dir(ring.axis.along)))
      .Shape();
}

TopoDS_Shape band_solid(const Band& band, double reach) {
  const Direction x = any_square(band.normal);
  const Direction y = third(band.normal, x);
  const double size = reach + norm(band.at);
  const Point corner = band.at - size * x - size * y + (band.low - kGrown) * band.normal;
  const gp_Ax2 axes(to_pnt(corner), to_dir(band.normal), to_dir(x));
  return BRepPrimAPI_MakeBox(axes, 2.0 * size, 2.0 * size, band.high - band.low + 2.0 * kGrown)
      .Shape();
}

}  // namespace

std::vector<TopoDS_Shape> solids_of(const TopoDS_Shape& shape) {
  std::vector<TopoDS_Shape> solids;
  for (TopExp_Explorer it(shape, TopAbs_SOLID); it.More(); it.Next()) {
    solids.push_back(it.Current());
  }
  return solids;
}

double volume_of(const TopoDS_Shape& shape) {
  // Halved until it is known: by a fixed number of points Open CASCADE is 1 % off on splines, and
  // finds less than nothing in a thin ring of them.
  constexpr double kShare = 1e-6;
  GProp_GProps props;
  BRepGProp::VolumeProperties(shape, props, kShare);
  return props.Mass();
}

namespace {

/// Where a face is looked at: shares of its range, and of a torus the circles farthest out, in, up
/// and down, of a sphere its equator, a little beside any seam there.
std::vector<double> looked_at(GeomAbs_SurfaceType type, double from, double to) {
  std::vector<double> found;
  for (const double share : {0.5, 0.07, 0.93}) {
    found.push_back(from + share * (to - from));
  }
  if (type == GeomAbs_Torus || type == GeomAbs_Sphere) {
    constexpr double kBeside = 1e-3;
    constexpr double kQuarter = 0.5 * std::numbers::pi;
    for (double at = kQuarter * std::ceil(from / kQuarter); at <= to; at += kQuarter) {
      for (const double near : {at - kBeside, at + kBeside}) {
        if (near > from && near < to) {
          found.push_back(near);
        }
      }
    }
  }
  return found;
}

}  // namespace

std::vector<FacePoint> face_points(const TopoDS_Shape& shape, std::size_t most) {
  std::vector<FacePoint> points;
  for (TopExp_Explorer it(shape, TopAbs_FACE); it.More() && points.size() < most; it.Next()) {
    const TopoDS_Face& face = TopoDS::Face(it.Current());
    double u0 = 0.0, u1 = 0.0, v0 = 0.0, v1 = 0.0;
    BRepTools::UVBounds(face, u0, u1, v0, v1);
    const BRepAdaptor_Surface surface(face);
    for (const double v : looked_at(surface.GetType(), v0, v1)) {
      for (const double u : looked_at(GeomAbs_Plane, u0, u1)) {
        const gp_Pnt2d at(u, v);
        BRepClass_FaceClassifier where(face, at, kConfusion);
        gp_Pnt p;
        gp_Vec du, dv;
        surface.D1(at.X(), at.Y(), p, du, dv);
        const gp_Vec normal = du.Crossed(dv);
        if (where.State() == TopAbs_IN && normal.Magnitude() > kRounding) {
          const Direction out = unit(from_occt(normal));
          points.push_back({from_occt(p), face.Orientation() == TopAbs_REVERSED ? -out : out});
        }
      }
    }
  }
  return points;
}

std::vector<TopoDS_Shape> accounted_solids(const Accounted& accounted, double reach) {
  std::vector<TopoDS_Shape> solids;
  for (const Ring& ring : accounted.rings) {
    solids.push_back(ring_solid(ring));
  }
  for (const Band& band : accounted.bands) {
    solids.push_back(band_solid(band, reach));
  }
  return solids;
}

Overlap measured_overlap(const TopoDS_Shape& shared, const OpenPair& pair) {
  Overlap overlap;
  for (const TopoDS_Shape& solid : solids_of(shared)) {
    GProp_GProps props;
    BRepGProp::VolumeProperties(solid, props, kVolumeKnown);
    OverlapRegion region{
        .volume = std::abs(props.Mass()), .exact = has_plain_faces(solid), .at = {}};
    const SolidPoints points = mesh_points(solid);
    if (region.volume < kLeastVolume || points.corners.empty()) {
      continue;
    }
    const std::vector<Direction> directions = directions_for(props, pair);
    const Interval extent = extents(points.corners, directions);
    const MetalDepth through = metal_depth(solid, points, {directions, pair.axes});
    const bool known = through.depth > 0.0;
    region.depth = known ? through.depth : extent.low;
    region.length = known ? through.length : extent.high;
    if (region.depth <= pair.same_length) {
      continue;
    }
    region.at = point_inside(solid, from_occt(props.CentreOfMass()), region.depth);
    SolidProbe probe(solid);
    for (std::size_t i = 0; i < std::min<std::size_t>(pair.inside.size(), 32); ++i) {
      region.holds |= probe.inside(pair.inside[i], kProbeSlack) ? std::uint32_t{1} << i : 0;
    }
    overlap.regions.push_back(region);
  }
  std::ranges::stable_sort(overlap.regions, std::greater{}, &OverlapRegion::volume);
  while (overlap.regions.size() > kMostRegions) {
    OverlapRegion& last = overlap.regions[kMostRegions - 1];
    const OverlapRegion& over = overlap.regions.back();
    last.volume += over.volume;
    last.exact = last.exact && over.exact;
    last.depth = std::max(last.depth, over.depth);
    last.length = std::max(last.length, over.length);
    last.holds |= over.holds;
    overlap.regions.pop_back();
  }
  overlap.state = overlap.regions.empty() ? Overlap::State::clear : Overlap::State::shared;
  return overlap;
}

}  // namespace spotblue::proof
