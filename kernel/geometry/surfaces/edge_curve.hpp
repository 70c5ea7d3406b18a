#pragma once
// An edge of a face as the curve it is (straight, circular or other), run in the sense that keeps
// the face's material on the left seen from outside; needs no curve in the surface's parameters.

#include <BRepAdaptor_Curve.hxx>
#include <TopoDS_Edge.hxx>
#include <optional>

#include "spotblue/geometry/vector.hpp"

namespace spotblue {

struct EdgeCurve {
  enum class Kind { line, circle, other };
  Kind kind = Kind::other;
  Point from, to;
  Point from_vertex, to_vertex;  // where its vertices stand; `from` and `to` without them
  Point centre;                  // of a circle
  Direction axis;                // of a circle: the edge turns counter-clockwise about it
  double radius = 0.0;           // of a circle
  double sweep = 0.0;            // of a circle, rad, > 0
  BRepAdaptor_Curve curve;
  double first = 0.0, last = 0.0;  // parameters of `from` and `to`; first > last when reversed
  const void* shared = nullptr;    // one for all uses of the edge, in whichever face
  const void* begins = nullptr;    // its vertex at `from`, as shared among edges; null without one
  const void* ends = nullptr;
};

// Nothing for an edge without a curve in space (a cone's apex, a sphere's pole).
[[nodiscard]] std::optional<EdgeCurve> edge_curve(const TopoDS_Edge& edge);

// The point at fraction s in [0, 1] of the way (by parameter), and the derivative by s.
struct CurvePoint {
  Point at;
  Point derivative;
};
[[nodiscard]] CurvePoint point_along(const EdgeCurve& edge, double s);

// The same edge from its end to its beginning.
void run_backwards(EdgeCurve& edge);

}  // namespace spotblue
