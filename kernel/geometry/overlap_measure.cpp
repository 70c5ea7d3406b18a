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
#include <array>
#include <cmath>
#include <numbers>

#include "geometry/occt_values.hpp"
#include "geometry/solid_overlap.hpp"
#include "geometry/solid_probe.hpp"

namespace spotblue::proof {
namespace {

/// How much more than the seat says is cut away: well over the kernel's tolerance, so that nothing
/// coincides, and well under what anyone measures.
constexpr double kGrown = 1e-5;
constexpr double kLeastVolume = 1e-6;

std::vector<Point> mesh_points(const TopoDS_Shape& shape) {
  const BRepMesh_IncrementalMesh mesher(shape, 0.02, Standard_True, 0.2);
  std::vector<Point> points;
  for (TopExp_Explorer it(shape, TopAbs_FACE); it.More(); it.Next()) {
    TopLoc_Location where;
    const auto mesh = BRep_Tool::Triangulation(TopoDS::Face(it.Current()), where);
    if (mesh.IsNull()) {
      continue;
    }
    for (int i = 1; i <= mesh->NbNodes(); ++i) {
      points.push_back(from_occt(mesh->Node(i).Transformed(where.Transformation())));
    }
  }
  return points;
}

double least_extent(const std::vector<Point>& points, const std::vector<Direction>& directions) {
  double least = std::numeric_limits<double>::infinity();
  for (const Direction d : directions) {
    const auto [low, high] = std::ranges::minmax(points, {}, [&](Point p) { return dot(p, d); });
    least = std::min(least, dot(high - low, d));
  }
  return points.empty() ? 0.0 : least;
}

/// Directions for one solid: the pair's own, away from each axis, and the solid's own three.
std::vector<Direction> directions_for(const GProp_GProps& props, const OpenPair& pair) {
  std::vector<Direction> directions = pair.directions;
  const Point centre = from_occt(props.CentreOfMass());
  for (const Line& axis : pair.accounted.axes) {
    const Point away = centre - at_station(axis, station(axis, centre));
    if (norm(away) > 1e-6) {
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

Point point_inside(const TopoDS_Shape& solid, Point centre, double depth) {
  SolidProbe probe(solid);
  if (probe.inside(centre, 1e-9)) {
    return centre;
  }
  const auto points = face_points(solid, 200);
  for (const double share : {0.5, 0.25, 0.1, 0.02}) {
    for (const FacePoint& p : points) {
      const Point in = p.at - share * depth * p.out;
      if (probe.inside(in, 1e-9)) {
        return in;
      }
    }
  }
  return points.empty() ? centre : points.front().at;
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
  const Direction y = cross(band.normal, x);
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
  GProp_GProps props;
  BRepGProp::VolumeProperties(shape, props);
  return props.Mass();
}

std::vector<FacePoint> face_points(const TopoDS_Shape& shape, std::size_t most) {
  constexpr std::array<double, 3> kShares{0.5, 0.07, 0.93};
  std::vector<FacePoint> points;
  for (TopExp_Explorer it(shape, TopAbs_FACE); it.More() && points.size() < most; it.Next()) {
    const TopoDS_Face& face = TopoDS::Face(it.Current());
    double u0 = 0.0, u1 = 0.0, v0 = 0.0, v1 = 0.0;
    BRepTools::UVBounds(face, u0, u1, v0, v1);
    const BRepAdaptor_Surface surface(face);
    for (const double u : kShares) {
      for (const double v : kShares) {
        const gp_Pnt2d at(u0 + u * (u1 - u0), v0 + v * (v1 - v0));
        BRepClass_FaceClassifier where(face, at, 1e-7);
        gp_Pnt p;
        gp_Vec du, dv;
        surface.D1(at.X(), at.Y(), p, du, dv);
        const gp_Vec normal = du.Crossed(dv);
        if (where.State() == TopAbs_IN && normal.Magnitude() > 1e-12) {
          const double sense = face.Orientation() == TopAbs_REVERSED ? -1.0 : 1.0;
          points.push_back({from_occt(p), sense * unit(from_occt(normal))});
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
  overlap.state = Overlap::State::clear;
  double greatest = 0.0;
  for (const TopoDS_Shape& solid : solids_of(shared)) {
    GProp_GProps props;
    BRepGProp::VolumeProperties(solid, props, 1e-7);
    const double volume = std::abs(props.Mass());
    const double depth = least_extent(mesh_points(solid), directions_for(props, pair));
    if (volume < kLeastVolume || depth <= pair.same_length) {
      continue;
    }
    overlap.state = Overlap::State::shared;
    overlap.volume += volume;
    overlap.depth = std::max(overlap.depth, depth);
    if (volume > greatest) {
      greatest = volume;
      overlap.at = point_inside(solid, from_occt(props.CentreOfMass()), depth);
    }
  }
  return overlap;
}

}  // namespace spotblue::proof
