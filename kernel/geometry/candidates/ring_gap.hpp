#pragma once
// What a part has in the thin ring between the two surfaces of a possible radial seat: its faces
// there, exactly where they are turned about the seat's axis, and whether the rest is metal.

#include <vector>

#include "geometry/candidates/near_part.hpp"
#include "geometry/candidates/seat_candidates.hpp"
#include "geometry/faces/air_probe.hpp"

namespace spotblue {

class RingGap {
 public:
  // Which part it is. What one of the seat's own two has beside its own surface is known: air, or
  // metal where they overlap; of a third it is found out by a point.
  enum class Part { hole, shaft, third };

  RingGap(const RadialCandidate& c, const NearPart& part, Part which, const SeatSettings& settings);

  // Whether nothing of the part is to be heeded in the ring, wherever the station.
  [[nodiscard]] bool is_free() const;
  // Stations at which what is in the ring may change.
  void add_cuts(std::vector<double>& cuts) const;
  // Those of the angles at which there is a face, or else the material that makes a difference:
  // metal where air is expected, air where metal is.
  [[nodiscard]] std::vector<Arc> taken(double z, const std::vector<Arc>& angles) const;

 private:
  // A stretch of a cylinder or cone about the seat's axis.
  struct Coaxial {
    double radius;  // at station `zero`
    double zero;
    double slope;
    double from, to;
    std::vector<Arc> arcs;
    [[nodiscard]] double radius_at(double z) const { return radius + slope * (z - zero); }
  };
  // Any other face that comes into the ring.
  struct Odd {
    const proof::Turned* turned = nullptr;
    const proof::Flat* flat = nullptr;  // neither: a rounded or free-form face
    double from, to;                    // stations
    Arc angles;
  };

  void add_coaxial();
  void add_odd();
  template <typename Face>
  void add_if_odd(const Face& face, const proof::Turned* turned, const proof::Flat* flat);
  void add_other(const OtherFace& face);
  template <typename Feature>
  void add(const Feature& feature, double radius, double slope);
  [[nodiscard]] bool is_coaxial(const Line& axis) const;
  [[nodiscard]] Point point(double r, double angle, double z) const;
  [[nodiscard]] proof::Medium medium(double r, double angle, double z) const;
  [[nodiscard]] bool differs(double angle, double z, const std::vector<const Odd*>& near) const;
  void add_sampled(std::vector<Arc>& found, const Arc& cell, double z,
                   const std::vector<const Odd*>& near) const;

  const RadialCandidate& c_;
  const NearPart& part_;
  Part which_;
  proof::Medium own_;  // beside the surfaces of the two; unknown of a third
  double same_;
  double near_;  // how far apart axes may be that count as one
  double tilt_;
  double inner_, outer_;
  double low_, high_;  // stations of the seat
  Frame to_part_;
  Box box_;            // round the ring, in the part's frame
  bool away_ = false;  // the part's box does not come to the ring
  std::vector<Coaxial> coaxial_;
  std::vector<Odd> odd_;
  std::vector<double> levels_;  // stations of faces square to the axis
};

}  // namespace spotblue
