#include "geometry/surfaces/free_form_flux.hpp"

#include <BRepBuilderAPI_Copy.hxx>
#include <BRepGProp_Domain.hxx>
#include <BRepGProp_Face.hxx>
#include <BRepGProp_Vinert.hxx>
#include <ShapeFix_Shape.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <algorithm>
#include <cmath>
#include <utility>

#include "geometry/model/tolerances.hpp"
#include "geometry/occt/occt_values.hpp"
#include "geometry/surfaces/edge_integral.hpp"
#include "geometry/surfaces/gauss_kronrod.hpp"

namespace spotblue {
namespace {

constexpr double kOneTangent = 1e-20;  // of squared lengths: the two directions are one

constexpr double kStill = 1e-13;    // of the outer range: an edge that runs along the inner way
constexpr double kShortest = 1e-6;  // of an edge: no piece is halved below
constexpr int kMostCuts = 64;

double range_of(const std::vector<double>& knots) {
  return knots.size() < 2 ? 1.0 : knots.back() - knots.front();
}

// Open CASCADE's own integration of a fixed order, of a mended copy: mending the face itself would
// change its neighbours.
double fixed_order(const TopoDS_Face& face, Point origin) {
  BRepBuilderAPI_Copy copy(face, Standard_False);
  ShapeFix_Shape fix(copy.Shape());
  fix.Perform();
  double flux = 0.0;
  for (TopExp_Explorer it(fix.Shape(), TopAbs_FACE); it.More(); it.Next()) {
    BRepGProp_Face integrand(TopoDS::Face(it.Current()));
    BRepGProp_Domain domain(TopoDS::Face(it.Current()));
    BRepGProp_Vinert volume;
    volume.SetLocation(to_pnt(origin));
    volume.Perform(integrand, domain);
    flux += 3.0 * volume.Mass();
  }
  return flux;
}

// Knots that lie between two values, these included; ascending, whichever is the greater. A closed
// surface's knots come again after each period.
std::vector<double> stretches(const std::vector<double>& knots, double period, double a, double b) {
  const auto [low, high] = std::minmax(a, b);
  std::vector<double> ends{low};
  const double first = period > 0.0 ? std::floor((low - knots.front()) / period) : 0.0;
  const double last = period > 0.0 ? std::floor((high - knots.front()) / period) : 0.0;
  for (double turn = first; turn <= last; turn += 1.0) {
    for (const double knot : knots) {
      const double at = knot + turn * period;
      if (at > ends.back() + kRounding * (high - low) && at < high) {
        ends.push_back(at);
      }
    }
  }
  ends.push_back(high);
  return ends;
}

}  // namespace

FreeFormFlux::FreeFormFlux(const TopoDS_Face& face, std::span<const EdgeCurve> edges, Point origin)
    : chart_(face), edges_(edges.begin(), edges.end()), origin_(origin) {
  if (!set_up(face.Orientation() != TopAbs_REVERSED)) {
    pieces_.clear();
    const double flux = fixed_order(face, origin);
    sum_ = {flux, std::abs(flux)};
    open_error_ = 0.0;
  }
}

bool FreeFormFlux::set_up(bool forward) {
  auto boundary = chart_boundary(chart_, edges_);
  if (!boundary || (boundary->most[0] != 0.0 && boundary->most[1] != 0.0)) {
    return false;
  }
  boundary_ = std::move(*boundary);
  // A loop that goes round in the inner parameter would not close.
  way_ = boundary_.most[0] != 0.0   ? 1
         : boundary_.most[1] != 0.0 ? 0
         : chart_.period(0) > 0.0   ? 1
                                    : 0;
  if (!choose_reference(forward)) {
    return false;
  }
  const double sense = (way_ == 0) == forward ? 1.0 : -1.0;
  const double whole = range_of(chart_.knots(0)) * range_of(chart_.knots(1));
  // What lies on the wrong side of a boundary has a negative area; the whole surface is missing.
  constexpr double kClearly = 1e-3;
  if (boundary_.empty || (ends_in_poles() && sense * enclosed() < -kClearly * whole)) {
    add_whole(forward);
  }
  for (std::size_t i = 0; i < boundary_.legs.size(); ++i) {
    cut(i);
    const ChartLeg& leg = boundary_.legs[i];
    sum_.error += leg.edge == nullptr ? 0.0 : strip_flux(*leg.edge, leg.off, origin_);
  }
  return true;
}

bool FreeFormFlux::is_pole(double inner_end) const {
  constexpr double kPoint = 1e-7;  // mm a unit of the parameter's range
  const std::size_t outer = 1 - way_;
  for (const double share : {0.1, 0.45, 0.8}) {
    Parameters where{};
    where.at(way_) = inner_end;
    where.at(outer) = chart_.first(outer) + share * chart_.period(outer);
    if (norm(chart_.at(where).derivative.at(outer)) * range_of(chart_.knots(outer)) > kPoint) {
      return false;
    }
  }
  return true;
}

bool FreeFormFlux::ends_in_poles() const {
  const std::size_t outer = 1 - way_;
  return chart_.period(outer) > 0.0 &&
         (chart_.period(way_) > 0.0 || (is_pole(chart_.first(way_)) && is_pole(chart_.last(way_))));
}

// A face about a pole is integrated from there; any other from its own least parameter.
bool FreeFormFlux::choose_reference(bool forward) {
  const std::size_t outer = 1 - way_;
  const double turns = boundary_.turns.at(outer);
  if (turns == 0.0) {
    reference_ = chart_.first(way_);
    if (boundary_.empty || ends_in_poles()) {
      return true;
    }
    bool first = true;
    for (const ChartLeg& leg : boundary_.legs) {
      for (const Parameters& place : leg.places) {
        reference_ = first ? place.at(way_) : std::min(reference_, place.at(way_));
        first = false;
      }
    }
    return true;
  }
  // Counter-clockwise with u to the right and v up the face lies on the left.
  const bool above = ((turns > 0.0) == forward) == (way_ == 1);
  reference_ = above ? chart_.last(way_) : chart_.first(way_);
  return std::abs(turns) == 1.0 && chart_.period(way_) == 0.0 && is_pole(reference_);
}

// Integral along the boundary of the inner parameter from the reference by the outer one.
double FreeFormFlux::enclosed() const {
  double area = 0.0;
  for (const ChartLeg& leg : boundary_.legs) {
    for (std::size_t i = 1; i < leg.places.size(); ++i) {
      const Parameters& a = leg.places[i - 1];
      const Parameters& b = leg.places[i];
      area += (b.at(1 - way_) - a.at(1 - way_)) * (0.5 * (a.at(way_) + b.at(way_)) - reference_);
    }
  }
  return area;
}

// The far side of the whole surface's parameters, run so that the surface is on the left.
void FreeFormFlux::add_whole(bool forward) {
  const std::size_t outer = 1 - way_;
  Parameters from{};
  Parameters to{};
  const double far = reference_ + range_of(chart_.knots(way_));
  from.at(way_) = to.at(way_) = far;
  from.at(outer) = chart_.first(outer);
  to.at(outer) = chart_.last(outer);
  if ((way_ == 0) != forward) {
    std::swap(from, to);
  }
  boundary_.legs.push_back({nullptr, {0.0, 1.0}, {from, to}, 0.0});
}

// Pieces between the edge's own knots and those of the surface that it crosses.
void FreeFormFlux::cut(std::size_t index) {
  const ChartLeg& leg = boundary_.legs[index];
  const std::size_t outer = 1 - way_;
  const double range = range_of(chart_.knots(outer));
  const auto [least, most] = std::minmax_element(
      leg.places.begin(), leg.places.end(),
      [outer](const Parameters& a, const Parameters& b) { return a.at(outer) < b.at(outer); });
  if (most->at(outer) - least->at(outer) <= kStill * range) {
    return;
  }
  std::vector<double> ends =
      leg.edge == nullptr ? std::vector{0.0, 1.0} : smooth_stretches(*leg.edge);
  for (std::size_t i = 1; i < leg.places.size(); ++i) {
    const double a = leg.places[i - 1].at(outer);
    const double b = leg.places[i].at(outer);
    const std::vector<double> knots = stretches(chart_.knots(outer), chart_.period(outer), a, b);
    for (std::size_t k = 1; k + 1 < knots.size(); ++k) {
      double low = leg.fractions[i - 1];
      double high = leg.fractions[i];
      for (int step = 0; step < 40 && high - low > kRounding; ++step) {
        const double middle = 0.5 * (low + high);
        ((place_at(chart_, leg, middle).at(outer) < knots[k]) == (a < b) ? low : high) = middle;
      }
      ends.push_back(0.5 * (low + high));
    }
  }
  std::sort(ends.begin(), ends.end());
  double from = 0.0;
  for (const double end : ends) {
    if (end - from > kNoLength) {
      Piece piece;
      piece.leg = index;
      piece.from = from;
      piece.to = end;
      integrate(piece);
      push(piece);
      from = end;
    }
  }
}

// By the leg's fraction.
double FreeFormFlux::outer_speed(const ChartLeg& leg, double s, const Parameters& where) const {
  const std::size_t outer = 1 - way_;
  if (leg.edge == nullptr) {
    return leg.places.back().at(outer) - leg.places.front().at(outer);
  }
  const CurvePoint p = point_along(*leg.edge, s);
  const SurfacePoint on = chart_.at(where);
  const Point& along = on.derivative.at(outer);
  const Point& across = on.derivative.at(way_);
  const double aa = dot(along, along);
  const double ac = dot(along, across);
  const double cc = dot(across, across);
  const double det = aa * cc - ac * ac;
  return det > kOneTangent * aa * cc
             ? (dot(p.derivative, along) * cc - dot(p.derivative, across) * ac) / det
             : 0.0;
}

double FreeFormFlux::density(const Parameters& where) {
  ++effort_;
  const SurfacePoint s = chart_.at(where);
  return dot(s.at - origin_, cross(s.derivative[0], s.derivative[1]));
}

FreeFormFlux::Inner FreeFormFlux::inner(double outer, double to, int cuts) {
  Inner sum;
  if (to == reference_) {
    return sum;
  }
  const std::vector<double> ends =
      stretches(chart_.knots(way_), chart_.period(way_), reference_, to);
  Parameters where{};
  where.at(1 - way_) = outer;
  for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
    const double half = 0.5 * (ends[i + 1] - ends[i]) / cuts;
    for (int cut = 0; cut < cuts; ++cut) {
      KronrodSum piece;
      for (std::size_t k = 0; k < kKronrod.size(); ++k) {
        where.at(way_) = ends[i] + half * (2.0 * cut + 1.0 + kKronrod[k].at);
        piece.add(k, half, density(where));
      }
      sum.value += piece.value();
      sum.error += piece.error();
    }
  }
  if (to < reference_) {
    sum.value = -sum.value;
  }
  return sum;
}

void FreeFormFlux::integrate(Piece& piece) {
  const ChartLeg& leg = boundary_.legs[piece.leg];
  const double half = 0.5 * (piece.to - piece.from);
  const double sense = way_ == 0 ? 1.0 : -1.0;
  KronrodSum sum;
  piece.inner_error = 0.0;
  for (std::size_t k = 0; k < kKronrod.size(); ++k) {
    const double s = piece.from + half * (1.0 + kKronrod[k].at);
    const Parameters where = place_at(chart_, leg, s);
    const double speed = outer_speed(leg, s, where);
    const Inner value =
        speed == 0.0 ? Inner{} : inner(where.at(1 - way_), where.at(way_), piece.cuts);
    sum.add(k, half, sense * speed * value.value);
    piece.inner_error += half * kKronrod[k].weight * std::abs(speed) * value.error;
  }
  piece.value = sum.value();
  piece.outer_error = sum.error();
}

void FreeFormFlux::push(const Piece& piece) {
  pieces_.push_back(piece);
  std::push_heap(pieces_.begin(), pieces_.end());
  sum_ = sum_ + Flux{piece.value, 0.0};
  open_error_ += piece.error();
}

FreeFormFlux::Piece FreeFormFlux::pop() {
  std::pop_heap(pieces_.begin(), pieces_.end());
  const Piece piece = pieces_.back();
  pieces_.pop_back();
  sum_ = sum_ + Flux{-piece.value, 0.0};
  open_error_ -= piece.error();
  return piece;
}

Flux FreeFormFlux::flux() const {
  return {sum_.value, std::max(0.0, sum_.error) + std::max(0.0, open_error_)};
}

double FreeFormFlux::worst() const { return pieces_.empty() ? 0.0 : pieces_.front().error(); }

void FreeFormFlux::refine() {
  if (pieces_.empty()) {
    return;
  }
  Piece piece = pop();
  if (piece.inner_error > piece.outer_error && piece.cuts < kMostCuts) {
    piece.cuts *= 2;
    integrate(piece);
    push(piece);
  } else if (piece.to - piece.from < kShortest) {
    sum_ = sum_ + Flux{piece.value, piece.error()};
  } else {
    Piece second = piece;
    piece.to = second.from = 0.5 * (piece.from + piece.to);
    integrate(piece);
    integrate(second);
    push(piece);
    push(second);
  }
}

}  // namespace spotblue
