#pragma once
// Flux through a free-form face, by integration over the surface's parameters to any accuracy that
// is worth its work.

#include <TopoDS_Face.hxx>
#include <cstddef>
#include <span>
#include <vector>

#include "geometry/surfaces/chart_boundary.hpp"
#include "geometry/surfaces/edge_curve.hpp"
#include "geometry/surfaces/flux.hpp"
#include "geometry/surfaces/surface_chart.hpp"

namespace spotblue {

// The flux as face_flux gives it, by Green's theorem: an inner integral along one of the surface's
// parameters (a turned surface's meridian), an outer one along the face's edges. Each piece of an
// edge has its own bound of error and can be halved.
class FreeFormFlux {
 public:
  FreeFormFlux(const TopoDS_Face& face, std::span<const EdgeCurve> edges, Point origin);
  FreeFormFlux(const FreeFormFlux&) = delete;  // pieces refer to the edges
  FreeFormFlux& operator=(const FreeFormFlux&) = delete;
  FreeFormFlux(FreeFormFlux&&) = default;
  FreeFormFlux& operator=(FreeFormFlux&&) = default;
  ~FreeFormFlux() = default;

  // With what edges that lie off the surface may add, which no work mends.
  [[nodiscard]] Flux flux() const;

  // The error that halving pieces can lessen: of all and of the worst; halving the worst.
  [[nodiscard]] double open_error() const { return open_error_; }
  [[nodiscard]] double worst() const;
  void refine();
  // Points of the surface that were asked for so far.
  [[nodiscard]] std::size_t effort() const { return effort_; }

 private:
  struct Piece {
    std::size_t leg = 0;
    double from = 0.0, to = 1.0;
    int cuts = 1;  // of each stretch between knots of the inner integral
    double value = 0.0, outer_error = 0.0, inner_error = 0.0;
    [[nodiscard]] double error() const { return outer_error + inner_error; }
    bool operator<(const Piece& other) const { return error() < other.error(); }
  };
  struct Inner {
    double value = 0.0, error = 0.0;
  };

  bool set_up(bool forward);
  [[nodiscard]] bool ends_in_poles() const;
  [[nodiscard]] bool is_pole(double inner_end) const;
  bool choose_reference(bool forward);
  [[nodiscard]] double enclosed() const;
  void add_whole(bool forward);
  void cut(std::size_t leg);
  [[nodiscard]] double outer_speed(const ChartLeg& leg, double s, const Parameters& where) const;
  [[nodiscard]] double density(const Parameters& where);
  [[nodiscard]] Inner inner(double outer, double to, int cuts);
  void integrate(Piece& piece);
  void push(const Piece& piece);
  Piece pop();

  SurfaceChart chart_;
  std::vector<EdgeCurve> edges_;
  Point origin_;
  ChartBoundary boundary_;
  std::vector<Piece> pieces_;  // a heap, the worst first
  std::size_t way_ = 0;        // the parameter of the inner integral
  double reference_ = 0.0;     // where that begins
  Flux sum_;                   // with the error that no work mends
  double open_error_ = 0.0;    // of the pieces
  std::size_t effort_ = 0;
};

}  // namespace spotblue
