#include "geometry/tree/step_operator.hpp"

#include <Interface_EntityIterator.hxx>
#include <STEPConstruct_UnitContext.hxx>
#include <StepGeom_Axis2Placement3d.hxx>
#include <StepGeom_CartesianPoint.hxx>
#include <StepGeom_Direction.hxx>
#include <StepGeom_GeomRepContextAndGlobUnitAssCtxAndGlobUncertaintyAssCtx.hxx>
#include <StepGeom_GeometricRepresentationContextAndGlobalUnitAssignedContext.hxx>
#include <StepRepr_GlobalUnitAssignedContext.hxx>
#include <StepRepr_RepresentationContext.hxx>
#include <StepRepr_RepresentationMap.hxx>
#include <cmath>

#include "geometry/model/tolerances.hpp"
#include "geometry/occt/occt_versions.hpp"
#include "spotblue/geometry/vector.hpp"

namespace spotblue {
namespace {

// A scale nearer to 1 than this is rounding of the file's digits.
constexpr double kTrueScale = 1e-9;

Handle(StepRepr_GlobalUnitAssignedContext)
    units_of(const Handle(StepRepr_RepresentationContext) & context) {
  using Both = Handle(StepGeom_GeometricRepresentationContextAndGlobalUnitAssignedContext);
  using All = Handle(StepGeom_GeomRepContextAndGlobUnitAssCtxAndGlobUncertaintyAssCtx);
  if (const All all = All::DownCast(context); !all.IsNull()) {
    return all->GlobalUnitAssignedContext();
  }
  if (const Both both = Both::DownCast(context); !both.IsNull()) {
    return both->GlobalUnitAssignedContext();
  }
  return Handle(StepRepr_GlobalUnitAssignedContext)::DownCast(context);
}

Point ratios_of(const Handle(StepGeom_Direction) & direction) {
  return direction.IsNull() || direction->NbDirectionRatios() < 3
             ? Point{}
             : Point{direction->DirectionRatiosValue(1), direction->DirectionRatiosValue(2),
                     direction->DirectionRatiosValue(3)};
}

Point coordinates_of(const Handle(StepGeom_CartesianPoint) & point) {
  return point.IsNull() || point->NbCoordinates() < 3
             ? Point{}
             : Point{point->CoordinatesValue(1), point->CoordinatesValue(2),
                     point->CoordinatesValue(3)};
}

// `wanted`, or else `otherwise`, without its parts along `used` and `also`; none when it has none
// left.
std::optional<Direction> square_to(Point wanted, Point otherwise, Point used, Point also) {
  const Point start = norm(wanted) > 0.0 ? Point(unit(wanted)) : otherwise;
  Point rest = start - dot(start, used) * used;
  rest = rest - dot(rest, also) * also;
  return norm(rest) > kNoLength ? std::optional(unit(rest)) : std::nullopt;
}

gp_Trsf matrix(Direction x, Direction y, Direction z, Point at, double scale) {
  gp_Trsf result;
  result.SetValues(scale * x.x(), scale * y.x(), scale * z.x(), at.x,  //
                   scale * x.y(), scale * y.y(), scale * z.y(), at.y,  //
                   scale * x.z(), scale * y.z(), scale * z.z(), at.z);
  return result;
}

// mm per unit of the representation that holds the item.
double unit_of_users(const Handle(StepRepr_MappedItem) & item, const Interface_Graph& graph) {
  double factor = 1.0;
  for (Interface_EntityIterator user = graph.Sharings(item); user.More(); user.Next()) {
    const auto representation = Handle(StepRepr_Representation)::DownCast(user.Value());
    factor = representation.IsNull() ? factor : mm_per_unit(representation);
  }
  return factor;
}

}  // namespace

gp_Trsf axes_placement(const Handle(StepGeom_Axis2Placement3d) & axes, double mm_per_unit) {
  const Direction z = axes->HasAxis() ? unit(ratios_of(axes->Axis())) : Direction(0, 0, 1);
  const Point wanted = axes->HasRefDirection() ? ratios_of(axes->RefDirection()) : Point{};
  const auto first = square_to(wanted, {1, 0, 0}, z, {});
  const Direction x = first ? *first : square_to({0, 1, 0}, {}, z, {}).value_or(any_square(z));
  return matrix(x, third(z, x), z, mm_per_unit * coordinates_of(axes->Location()), 1.0);
}

bool is_rigid(const gp_Trsf& placement) {
  return std::abs(std::abs(placement.ScaleFactor()) - 1.0) <= kTrueScale;
}

bool is_straight(const gp_Trsf& placement) {
  return is_rigid(placement) && !placement.IsNegative();
}

double mm_per_unit(const Handle(StepRepr_Representation) & representation) {
  const Handle(StepRepr_GlobalUnitAssignedContext) units =
      units_of(representation->ContextOfItems());
  STEPConstruct_UnitContext factors;
  if (units.IsNull()) {
    return 1.0;
  }
  occt::compute_factors(factors, units);
  return factors.LengthDone() ? factors.LengthFactor() : 1.0;
}

// ISO 10303-42, base_axis of three dimensions: axis3 first, axis1 square to it, axis2 square to
// both, each pointing as given; so the three may be left-handed.
std::optional<gp_Trsf> transformation_of(const Handle(StepGeom_CartesianTransformationOperator3d) &
                                             placing,
                                         double mm_per_unit) {
  const Direction z =
      square_to(placing->HasAxis3() ? ratios_of(placing->Axis3()) : Point{}, {0, 0, 1}, {}, {})
          .value_or(Direction(0, 0, 1));
  const Point wanted_x = placing->HasAxis1() ? ratios_of(placing->Axis1()) : Point{};
  auto x = square_to(wanted_x, {1, 0, 0}, z, {});
  if (!x && !(norm(wanted_x) > 0.0)) {
    x = square_to({0, 1, 0}, {}, z, {});
  }
  if (!x) {
    return std::nullopt;
  }
  const Point wanted_y = placing->HasAxis2() ? ratios_of(placing->Axis2()) : Point{};
  const auto y =
      norm(wanted_y) > 0.0 ? square_to(wanted_y, {}, z, *x) : std::optional(third(z, *x));
  const double scale = placing->HasScale() ? placing->Scale() : 1.0;
  if (!y || !(scale > 0.0)) {
    return std::nullopt;
  }
  return matrix(*x, *y, z, mm_per_unit * coordinates_of(placing->LocalOrigin()), scale);
}

std::optional<gp_Trsf> crooked_placement(const Handle(StepRepr_MappedItem) & item,
                                         const Interface_Graph& graph) {
  using Operator = Handle(StepGeom_CartesianTransformationOperator3d);
  const Operator placing = Operator::DownCast(item->MappingTarget());
  if (placing.IsNull() || item->MappingSource().IsNull()) {
    return std::nullopt;
  }
  const double factor = unit_of_users(item, graph);
  const auto target = transformation_of(placing, factor);
  const auto axes =
      Handle(StepGeom_Axis2Placement3d)::DownCast(item->MappingSource()->MappingOrigin());
  if (!target || axes.IsNull() || is_straight(*target)) {
    return std::nullopt;
  }
  return *target * axes_placement(axes, factor).Inverted();
}

std::optional<gp_Trsf> plain_placement(const Handle(StepRepr_MappedItem) & item,
                                       const Interface_Graph& graph) {
  using Axes = Handle(StepGeom_Axis2Placement3d);
  const Axes target = Axes::DownCast(item->MappingTarget());
  const Handle(StepRepr_RepresentationMap) source = item->MappingSource();
  const Axes origin = source.IsNull() ? Axes() : Axes::DownCast(source->MappingOrigin());
  if (target.IsNull() || origin.IsNull()) {
    return std::nullopt;
  }
  const Handle(StepRepr_Representation) copied = source->MappedRepresentation();
  const double own_unit = copied.IsNull() ? 1.0 : mm_per_unit(copied);
  return axes_placement(target, unit_of_users(item, graph)) *
         axes_placement(origin, own_unit).Inverted();
}

}  // namespace spotblue
