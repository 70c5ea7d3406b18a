#include "geometry/fouls/solid_overlap.hpp"

#include <BRepAlgoAPI_Common.hxx>
#include <BRepAlgoAPI_Cut.hxx>
#include <BRepBndLib.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepGProp.hxx>
#include <BRep_Builder.hxx>
#include <Bnd_Box.hxx>
#include <GProp_GProps.hxx>
#include <TopLoc_Location.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS_Compound.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <gp_Trsf.hxx>
#include <iterator>

#include "geometry/fouls/overlap_measure.hpp"
#include "geometry/fouls/solid_probe.hpp"
#include "geometry/model/tolerances.hpp"
#include "geometry/occt/occt_values.hpp"

namespace spotblue::proof {
namespace {

/// Boundary points tried against the other solid when a boolean comes back empty.
constexpr std::size_t kProbes = 400;
/// A probe this deep inside contradicts an empty boolean.
constexpr double kProbeDepth = 1e-5;
/// Looser and looser gluing of what nearly coincides.
constexpr std::array<double, 4> kFuzzy{0.0, 1e-6, 1e-5, 1e-4};
constexpr double kNoVolume = 1e-9;       // mm3
constexpr double kVolumesDiffer = 2e-3;  // of each

TopTools_ListOfShape list_of(const TopoDS_Shape& shape) {
  TopTools_ListOfShape list;
  list.Append(shape);
  return list;
}

template <typename Operation>
std::optional<TopoDS_Shape> boolean(const TopTools_ListOfShape& arguments,
                                    const TopTools_ListOfShape& tools, double fuzzy) {
  Operation operation;
  operation.SetArguments(arguments);
  operation.SetTools(tools);
  operation.SetNonDestructive(true);
  operation.SetRunParallel(false);
  operation.SetFuzzyValue(fuzzy);
  operation.Build();
  if (!operation.IsDone() || operation.HasErrors() || operation.Shape().IsNull()) {
    return {};
  }
  return operation.Shape();
}

/// Points a quarter of its mean thickness under a solid's faces that lie in it.
std::vector<Point> points_under_faces(const TopoDS_Shape& solid) {
  constexpr std::size_t kMostPoints = 40;
  GProp_GProps area;
  BRepGProp::SurfaceProperties(solid, area);
  const double deep = 0.25 * std::abs(volume_of(solid)) / std::max(area.Mass(), kNoVolume);
  SolidProbe probe(solid);
  std::vector<Point> points;
  for (const FacePoint& p : face_points(solid, kMostPoints)) {
    const Point under = p.at - deep * p.out;
    if (probe.inside(under, kProbeSlack)) {
      points.push_back(under);
    }
  }
  return points;
}

bool probe_inside(const TopoDS_Shape& probed, const TopoDS_Shape& solid) {
  SolidProbe probe(solid);
  const auto is_inside = [&](Point p) { return probe.deep_inside(p, kProbeDepth); };
  // Of two copies in one place no face lies within the other; and where the classifier finds
  // nothing in a solid itself, what it says is no evidence of being apart.
  const std::vector<Point> under = points_under_faces(probed);
  return under.empty() || std::ranges::any_of(under, is_inside) ||
         std::ranges::any_of(face_points(probed, kProbes), is_inside, &FacePoint::at);
}

Overlap undecided(std::string why) {
  Overlap overlap;
  overlap.why = std::move(why);
  return overlap;
}

struct CommonPart {
  std::optional<TopoDS_Shape> shape;
  std::string why;  ///< when there is none
};

/// Those of the points that are inside both.
std::vector<Point> inside_both(const TopoDS_Shape& a, const TopoDS_Shape& b,
                               const std::vector<Point>& points) {
  std::vector<Point> found;
  if (!points.empty()) {
    SolidProbe in_a(a);
    SolidProbe in_b(b);
    std::ranges::copy_if(points, std::back_inserter(found), [&](Point p) {
      return in_a.deep_inside(p, kProbeDepth) && in_b.deep_inside(p, kProbeDepth);
    });
  }
  return found;
}

bool holds_all(const TopoDS_Shape& shape, const std::vector<Point>& points) {
  SolidProbe probe(shape);
  return std::ranges::all_of(points, [&](Point p) { return probe.inside(p, kProbeSlack); });
}

/// Whether more than one of the points of what both should fill lies outside one of them: the
/// classifier may err on a point.
bool leaves_either(const TopoDS_Shape& shared, const TopoDS_Shape& a, const TopoDS_Shape& b) {
  SolidProbe in_a(a);
  SolidProbe in_b(b);
  return std::ranges::any_of(solids_of(shared), [&](const TopoDS_Shape& solid) {
    return std::ranges::count_if(points_under_faces(solid), [&](Point p) {
             return !in_a.inside(p, 0.0) || !in_b.inside(p, 0.0);
           }) > 1;
  });
}

/// What is left of the solids that no ring or band holds whole.
TopoDS_Shape without_accounted(const TopoDS_Shape& shared, const Accounted& accounted) {
  TopoDS_Compound left;
  const BRep_Builder builder;
  builder.MakeCompound(left);
  for (const TopoDS_Shape& solid : solids_of(shared)) {
    // Corners tell how far it reaches, points within faces whether it fills a ring's middle.
    std::vector<Point> points = mesh_points(solid).corners;
    const bool meshed = !points.empty();
    for (const FacePoint& p : face_points(solid, kProbes)) {
      points.push_back(p.at);
    }
    if (!meshed || !one_holds_all(accounted, points, kGrown)) {
      builder.Add(left, solid);
    }
  }
  return left;
}

/// The solids less the tool, believed only where what is left was there and is not in the tool.
std::optional<TopoDS_Shape> cut_away(const TopoDS_Shape& from, const TopoDS_Shape& tool) {
  SolidProbe before(from);
  SolidProbe in_tool(tool);
  for (const double fuzzy : kFuzzy) {
    auto left = boolean<BRepAlgoAPI_Cut>(list_of(from), list_of(tool), fuzzy);
    const auto is_wrong = [&](const TopoDS_Shape& solid) {
      return std::ranges::count_if(points_under_faces(solid), [&](Point p) {
               return !before.inside(p, 0.0) || in_tool.inside(p, 0.0);
             }) > 1;
    };
    if (left && std::ranges::none_of(solids_of(*left), is_wrong)) {
      return left;
    }
  }
  return {};
}

/// The common part, believed only when its volume can be and no probe is against it.
CommonPart common_part(const TopoDS_Shape& a, const TopoDS_Shape& b, const OpenPair& pair) {
  const std::vector<Point> inside = inside_both(a, b, pair.inside);
  // Where edges are B-splines Open CASCADE's volumes of one solid differ by a thousandth.
  const double most = pair.most_shared * (1.0 + kVolumesDiffer) + kNoVolume;
  std::optional<bool> touched;
  CommonPart none;
  for (const double fuzzy : kFuzzy) {
    const auto shared = boolean<BRepAlgoAPI_Common>(list_of(a), list_of(b), fuzzy);
    if (!shared) {
      none.why = "Open CASCADE's boolean failed";
      continue;
    }
    const double volume = volume_of(*shared);
    if (volume < -kNoVolume || volume > most) {
      none.why = "Open CASCADE's boolean gave a volume that can not be";
      continue;
    }
    if (volume <= kNoVolume && !touched) {
      touched = !inside.empty() || probe_inside(a, b) || probe_inside(b, a);
    }
    if (volume <= kNoVolume && *touched) {
      none.why = "Open CASCADE's boolean gave nothing though one part's surface lies in the other";
      continue;
    }
    if (!holds_all(*shared, inside)) {
      none.why = "Open CASCADE's boolean left out a place that both parts fill";
      continue;
    }
    if (volume > kNoVolume && leaves_either(*shared, a, b)) {
      none.why = "Open CASCADE's boolean gave a place that only one of the parts fills";
      continue;
    }
    return {shared, ""};
  }
  return none;
}

double reach_of(const TopoDS_Shape& shape) {
  Bnd_Box box;
  BRepBndLib::Add(shape, box);
  if (box.IsVoid()) {
    return 0.0;
  }
  return std::sqrt(box.SquareExtent()) + box.CornerMax().Distance(gp_Pnt()) +
         box.CornerMin().Distance(gp_Pnt());
}

}  // namespace

TopoDS_Shape placed_shape(const TopoDS_Shape& shape, const Frame& frame) {
  gp_Trsf by = to_trsf(frame);
  if (is_mirror(frame)) {
    return BRepBuilderAPI_Transform(shape, by, Standard_True).Shape();
  }
  by.SetScaleFactor(1.0);
  return shape.Moved(TopLoc_Location(by));
}

Overlap solid_overlap(const TopoDS_Shape& a, const TopoDS_Shape& b, const OpenPair& pair) {
  Overlap clear;
  clear.state = Overlap::State::clear;
  const CommonPart common = common_part(a, b, pair);
  if (!common.shape) {
    return undecided(common.why);
  }
  if (volume_of(*common.shape) <= kNoVolume) {
    return clear;
  }
  TopoDS_Shape rest = without_accounted(*common.shape, pair.accounted);
  if (volume_of(rest) <= kNoVolume) {
    return clear;
  }
  const auto allowed = accounted_solids(pair.accounted, reach_of(rest));
  for (const TopoDS_Shape& tool : allowed) {
    const auto cut = cut_away(rest, tool);
    if (!cut) {
      return undecided("what its seats account for could not be cut away");
    }
    rest = *cut;
    if (volume_of(rest) <= kNoVolume) {
      return clear;
    }
  }
  return measured_overlap(rest, pair);
}

}  // namespace spotblue::proof
