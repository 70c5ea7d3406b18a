#pragma once
/// @file
/// A station: a few parts that mate in a known way, in their own frame with the centre line on z.
/// Everything a station does not list as true keeps more than 2.5 mm apart or does not face.

#include <TopoDS_Shape.hxx>
#include <cstddef>
#include <gp_Trsf.hxx>
#include <string>
#include <vector>

#include "support/chance.hpp"
#include "support/solids.hpp"
#include "support/truth.hpp"

namespace spotblue::test {

struct Part {
  std::string name;
  TopoDS_Shape shape;
  bool fitted = false;  ///< surfaces written as B-splines: lengths are true to 1e-4 only
};

struct Placed {
  std::size_t part = 0;
  gp_Trsf at;
};

struct Station {
  std::string kind;
  std::vector<Part> parts;
  std::vector<Placed> placed;
  Truth truth;                       ///< indexes into placed
  std::vector<TopoDS_Shape> open{};  ///< faces that bound no solid, in the station's frame
  double reach = 80.0;               ///< mm: no part lies farther from the origin along x or y

  /// Adds a new part and places it once; its index in `placed`.
  std::size_t add(const std::string& name, const TopoDS_Shape& shape, const Finish& finish,
                  const gp_Trsf& at = gp_Trsf());
  /// Places the part of `like` once more.
  std::size_t add_again(std::size_t like, const gp_Trsf& at);
};

/// Where sizes and faces come from. Faces have their own numbers, so that the same sizes can be
/// made with other faces.
struct Shop {
  Chance sizes;
  Chance faces;
  FaceStyle style = FaceStyle::mixed;
  Finish finish() { return choose_finish(style, faces); }
};

/// Finish for the first step of a part that is still to be cut: seams yes, other surfaces later.
Finish before_cutting(const Finish& finish);

/// Area between two diameters, mm2; 0 where the ring is empty.
double ring_area(double inner, double outer);
/// Length two stretches share; 0 where none.
double shared(double from_a, double to_a, double from_b, double to_b);
/// Diametral interference or clearance of a press, line-to-line or running fit within the limits.
double some_clearance(Chance& chance, double diameter);
double press_limit(double diameter);  ///< greatest radial overlap of a seat

/// Distance of two faces: none, small, or up to the greatest of a seat.
double face_gap(Chance& chance);
/// Adds an axial seat and, where the faces have sunk into one another, the foul it is.
void add_faces(Station& station, std::size_t a, std::size_t b, double gap, double area,
               bool on_centre_line = true);
/// A radial seat of two parts on one axis.
TrueRadial centred(std::size_t hole, std::size_t shaft, double big, double small, double engaged);

// Round parts in one another.
Station running(Shop& shop);
Station sleeve(Shop& shop);
Station cross_pin(Shop& shop);
Station taper(Shop& shop);
// Faces against one another.
Station flanged(Shop& shop);
Station shoulder(Shop& shop);
Station plates(Shop& shop);
Station ring_in_groove(Shop& shop);
// Joints.
Station keyed(Shop& shop);
Station screwed(Shop& shop);
Station fork(Shop& shop);
Station tongue(Shop& shop);
// What must not be taken for a seat, and what must be found as a foul.
Station decoy(Shop& shop);
Station block_foul(Shop& shop);

}  // namespace spotblue::test
