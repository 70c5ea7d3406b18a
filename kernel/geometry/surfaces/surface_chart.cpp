#include "geometry/surfaces/surface_chart.hpp"

#include <BRep_Tool.hxx>
#include <GeomAbs_Shape.hxx>
#include <Precision.hxx>
#include <TColStd_Array1OfReal.hxx>
#include <algorithm>
#include <cmath>
#include <gp_Pnt2d.hxx>
#include <numbers>

#include "geometry/model/tolerances.hpp"
#include "geometry/occt/occt_values.hpp"

namespace spotblue {
namespace {

// An angle has no knots of its own: a rule for each quarter.
void split_turns(std::vector<double>& knots) {
  constexpr double kQuarter = 0.5 * std::numbers::pi;
  std::vector<double> split{knots.front()};
  for (std::size_t i = 1; i < knots.size(); ++i) {
    const double span = knots[i] - knots[i - 1];
    const int pieces = std::max(1, static_cast<int>(std::ceil(span / kQuarter - kSameShare)));
    for (int k = 1; k <= pieces; ++k) {
      split.push_back(knots[i - 1] + span * k / pieces);
    }
  }
  knots = std::move(split);
}

std::vector<double> finite_only(const TColStd_Array1OfReal& values) {
  std::vector<double> knots;
  for (const double value : values) {
    if (!Precision::IsInfinite(value)) {
      knots.push_back(value);
    }
  }
  return knots;
}

}  // namespace

SurfaceChart::SurfaceChart(const TopoDS_Face& face)
    : surface_(face, Standard_False),
      finder_(new ShapeAnalysis_Surface(BRep_Tool::Surface(face))),
      first_{surface_.FirstUParameter(), surface_.FirstVParameter()},
      last_{surface_.LastUParameter(), surface_.LastVParameter()} {
  const std::array<bool, 2> closed{static_cast<bool>(surface_.IsUClosed()),
                                   static_cast<bool>(surface_.IsVClosed())};
  for (std::size_t i = 0; i < 2; ++i) {
    const bool finite = !Precision::IsInfinite(first_.at(i)) && !Precision::IsInfinite(last_.at(i));
    period_.at(i) = closed.at(i) && finite ? last_.at(i) - first_.at(i) : 0.0;
  }
  TColStd_Array1OfReal u(1, surface_.NbUIntervals(GeomAbs_CN) + 1);
  surface_.UIntervals(u, GeomAbs_CN);
  TColStd_Array1OfReal v(1, surface_.NbVIntervals(GeomAbs_CN) + 1);
  surface_.VIntervals(v, GeomAbs_CN);
  knots_ = {finite_only(u), finite_only(v)};
  const GeomAbs_SurfaceType type = surface_.GetType();
  if (type == GeomAbs_SurfaceOfRevolution || type == GeomAbs_Torus) {
    split_turns(knots_[0]);
  }
  if (type == GeomAbs_Torus) {
    split_turns(knots_[1]);
  }
}

double SurfaceChart::wrapped(double value, std::size_t parameter) const {
  const double period = period_.at(parameter);
  const double first = first_.at(parameter);
  if (period == 0.0 || (value >= first && value <= last_.at(parameter))) {
    return value;
  }
  return value - period * std::floor((value - first) / period);
}

SurfacePoint SurfaceChart::at(const Parameters& where) const {
  gp_Pnt p;
  gp_Vec du;
  gp_Vec dv;
  surface_.D1(wrapped(where[0], 0), wrapped(where[1], 1), p, du, dv);
  return {from_occt(p), {from_occt(du), from_occt(dv)}};
}

Parameters SurfaceChart::near(Point p, const Parameters& guess) const {
  constexpr int kMostSteps = 12;
  constexpr double kStill = 1e-11;    // mm
  constexpr double kDamping = 1e-14;  // keeps a pole's turn, which moves nothing
  Parameters now = guess;
  for (int step = 0; step < kMostSteps; ++step) {
    const SurfacePoint s = at(now);
    const Point off = p - s.at;
    const double uu = dot(s.derivative[0], s.derivative[0]);
    const double uv = dot(s.derivative[0], s.derivative[1]);
    const double vv = dot(s.derivative[1], s.derivative[1]);
    const double bu = dot(s.derivative[0], off);
    const double bv = dot(s.derivative[1], off);
    const double a = uu * (1.0 + kDamping) + kDamping * vv;
    const double b = vv * (1.0 + kDamping) + kDamping * uu;
    const double det = a * b - uv * uv;
    if (!(det > 0.0)) {
      break;
    }
    const Parameters by{(b * bu - uv * bv) / det, (a * bv - uv * bu) / det};
    for (std::size_t i = 0; i < 2; ++i) {
      now.at(i) += by.at(i);
      if (period_.at(i) == 0.0) {
        now.at(i) = std::clamp(now.at(i), first_.at(i), last_.at(i));
      }
    }
    if (norm(by[0] * s.derivative[0] + by[1] * s.derivative[1]) < kStill) {
      break;
    }
  }
  return now;
}

Parameters SurfaceChart::find(Point p) const {
  const gp_Pnt2d found = finder_->ValueOfUV(to_pnt(p), Precision::Confusion());
  return near(p, {found.X(), found.Y()});
}

}  // namespace spotblue
