#include "geometry/surfaces/edge_curve.hpp"

#include <BRep_Tool.hxx>
#include <TopExp.hxx>
#include <TopoDS_Vertex.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <gp_Circ.hxx>
#include <numbers>
#include <utility>

#include "geometry/occt/occt_values.hpp"

namespace spotblue {
namespace {

// A spline within this of a line or circle is that line or circle: exact conversions agree to
// 1e-12, and anything this near changes no measured length by more than the spline itself is off.
constexpr double kSameCurve = 1e-7;

void set_circle(EdgeCurve& edge, const gp_Circ& circle) {
  edge.kind = EdgeCurve::Kind::circle;
  edge.centre = from_occt(circle.Location());
  edge.radius = circle.Radius();
  // A left-handed placement runs clockwise about its own axis.
  const Direction normal =
      unit(cross(from_occt(circle.XAxis().Direction()), from_occt(circle.YAxis().Direction())));
  edge.axis = edge.last > edge.first ? normal : -normal;
  edge.sweep = std::abs(edge.last - edge.first);
}

// Recognises a spline that is straight or circular from nine of its points.
void recognise_spline(EdgeCurve& edge) {
  constexpr int kPoints = 8;
  std::array<Point, kPoints + 1> p;
  for (int i = 0; i <= kPoints; ++i) {
    p[static_cast<std::size_t>(i)] = point_along(edge, static_cast<double>(i) / kPoints).at;
  }
  const Point chord = p[kPoints] - p[0];
  if (norm(chord) > kSameCurve) {
    const Line line{p[0], unit(chord)};
    if (std::all_of(p.begin(), p.end(), [&](Point q) { return distance(line, q) < kSameCurve; })) {
      edge.kind = EdgeCurve::Kind::line;
      return;
    }
  }
  // Three well-spread points fix the circle; on a closed curve the last point is the first.
  const Point a = p[1] - p[0];
  const Point b = p[kPoints / 2 + 1] - p[0];
  const Point n = cross(a, b);
  if (norm(n) < kSameCurve * std::max(norm(a), norm(b))) {
    return;
  }
  const Point to_centre =
      (1.0 / (2.0 * dot(n, n))) * (dot(b, b) * cross(n, a) + dot(a, a) * cross(b, n));
  const Point centre = p[0] + to_centre;
  const double radius = norm(to_centre);
  const Direction axis = unit(n);
  for (const Point q : p) {
    if (std::abs(norm(q - centre) - radius) > kSameCurve ||
        std::abs(dot(q - centre, axis)) > kSameCurve) {
      return;
    }
  }
  double sweep = 0.0;
  for (std::size_t i = 1; i < p.size(); ++i) {
    const Point u = p[i - 1] - centre;
    const Point v = p[i] - centre;
    sweep += std::atan2(dot(cross(u, v), axis), dot(u, v));
  }
  edge.kind = EdgeCurve::Kind::circle;
  edge.centre = centre;
  edge.radius = radius;
  edge.axis = sweep > 0.0 ? axis : -axis;
  edge.sweep = std::abs(sweep);
}

const void* vertex_of(const TopoDS_Vertex& vertex) {
  return vertex.IsNull() ? nullptr : vertex.TShape().get();
}

Point place_of(const TopoDS_Vertex& vertex, Point without) {
  return vertex.IsNull() ? without : from_occt(BRep_Tool::Pnt(vertex));
}

}  // namespace

std::optional<EdgeCurve> edge_curve(const TopoDS_Edge& edge) {
  if (BRep_Tool::Degenerated(edge)) {
    return std::nullopt;
  }
  double first = 0.0;
  double last = 0.0;
  if (BRep_Tool::Curve(edge, first, last).IsNull()) {
    return std::nullopt;
  }
  EdgeCurve result;
  result.curve.Initialize(edge);
  result.first = result.curve.FirstParameter();
  result.last = result.curve.LastParameter();
  if (edge.Orientation() == TopAbs_REVERSED) {
    std::swap(result.first, result.last);
  }
  result.from = from_occt(result.curve.Value(result.first));
  result.to = from_occt(result.curve.Value(result.last));
  result.shared = edge.TShape().get();
  const TopoDS_Vertex first_vertex = TopExp::FirstVertex(edge, Standard_True);
  const TopoDS_Vertex last_vertex = TopExp::LastVertex(edge, Standard_True);
  result.begins = vertex_of(first_vertex);
  result.ends = vertex_of(last_vertex);
  result.from_vertex = place_of(first_vertex, result.from);
  result.to_vertex = place_of(last_vertex, result.to);
  switch (result.curve.GetType()) {
    case GeomAbs_Line:
      result.kind = EdgeCurve::Kind::line;
      break;
    case GeomAbs_Circle:
      set_circle(result, result.curve.Circle());
      break;
    case GeomAbs_BSplineCurve:
    case GeomAbs_BezierCurve:
      recognise_spline(result);
      break;
    default:
      break;
  }
  return result;
}

CurvePoint point_along(const EdgeCurve& edge, double s) {
  gp_Pnt at;
  gp_Vec derivative;
  const double span = edge.last - edge.first;
  edge.curve.D1(edge.first + s * span, at, derivative);
  return {from_occt(at), span * from_occt(derivative)};
}

void run_backwards(EdgeCurve& edge) {
  std::swap(edge.from, edge.to);
  std::swap(edge.from_vertex, edge.to_vertex);
  std::swap(edge.first, edge.last);
  std::swap(edge.begins, edge.ends);
  edge.axis = -edge.axis;
}

}  // namespace spotblue
