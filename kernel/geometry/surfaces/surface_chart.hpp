#pragma once
// A face's surface by its parameters, with points of space found on it; needs no curves in the
// surface's parameters, which a file need not bring and may bring the wrong way round.

#include <BRepAdaptor_Surface.hxx>
#include <ShapeAnalysis_Surface.hxx>
#include <TopoDS_Face.hxx>
#include <array>
#include <cstddef>
#include <vector>

#include "spotblue/geometry/vector.hpp"

namespace spotblue {

// Both parameters, u and v, in this order.
using Parameters = std::array<double, 2>;

struct SurfacePoint {
  Point at;
  std::array<Point, 2> derivative;  // by each parameter
};

class SurfaceChart {
 public:
  explicit SurfaceChart(const TopoDS_Face& face);

  // The length after which the surface comes back to itself in a parameter; 0 where it doesn't.
  [[nodiscard]] double period(std::size_t parameter) const { return period_.at(parameter); }
  // Ends of the parameter; one without end has infinite ones.
  [[nodiscard]] double first(std::size_t parameter) const { return first_.at(parameter); }
  [[nodiscard]] double last(std::size_t parameter) const { return last_.at(parameter); }
  // Where the surface is not smooth in the parameter, ends included, ascending, finite.
  [[nodiscard]] const std::vector<double>& knots(std::size_t parameter) const {
    return knots_.at(parameter);
  }

  // A parameter past a period's end is taken back into it.
  [[nodiscard]] SurfacePoint at(const Parameters& where) const;

  // The nearest place to a point: near a known place, and anywhere.
  [[nodiscard]] Parameters near(Point p, const Parameters& guess) const;
  [[nodiscard]] Parameters find(Point p) const;

 private:
  [[nodiscard]] double wrapped(double value, std::size_t parameter) const;

  BRepAdaptor_Surface surface_;
  Handle(ShapeAnalysis_Surface) finder_;
  std::array<double, 2> first_{}, last_{}, period_{};
  std::array<std::vector<double>, 2> knots_;
};

}  // namespace spotblue
