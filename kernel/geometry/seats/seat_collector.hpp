#pragma once
// The seats of a model, row by row, and the centre line of each.

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/seats/centre_lines.hpp"
#include "geometry/seats/open_seats.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue {

// Collects seats pair by pair and keeps what is needed to name their centre lines afterwards.
class SeatCollector {
 public:
  // All must outlive this.
  SeatCollector(const Model& model, const SeatSettings& settings, Seats& seats)
      : model_(model), settings_(settings), seats_(seats) {}

  // Room for all there can be at once: growing by doubling would hold half as much again. Of more
  // than half a million there is most likely no room for all.
  void expect(std::size_t radial, std::size_t axial, std::size_t ties);

  // Throws LimitReached where there is no memory for the rows.
  void add_pair(OccurrenceId a, OccurrenceId b, const PairCandidates& candidates,
                const OpenSeats& open);

  // Once, behind all pairs.
  void finish();

 private:
  // What a seat and a thread have in common: where two cylinders are engaged.
  struct Engaged {
    FeatureRef hole, shaft;
    Alignment aligned;
    Line axis;  // at the middle
    double length = 0.0;
    double from = 0.0, to = 0.0;  // from there
    std::size_t tied = 0;
  };

  [[nodiscard]] FeatureRef ref(Which which, FeatureKind kind, std::size_t index) const;
  std::size_t tie(const FeatureRef& a, const FeatureRef& b, const Line& axis, double weight);
  Engaged engaged(const RadialCandidate& c, const OpenRadial& open);
  void add_radial(const RadialCandidate& c, const OpenRadial& open);
  void add_thread(const RadialCandidate& c, const Engaged& at);
  void add_seat(const RadialCandidate& c, const OpenRadial& open, const Engaged& at);
  void add_taper(const TaperCandidate& c);
  void add_axial(const OpenAxialSeat& open, const std::vector<CommonAxis>& axes,
                 std::size_t first_tie);
  void add_width(const WidthCandidate& c, double open_area);
  [[nodiscard]] const Cone& cone(const FeatureRef& r) const;
  [[nodiscard]] const Width& width(const FeatureRef& r) const;

  const Model& model_;
  const SeatSettings& settings_;
  Seats& seats_;
  OccurrenceId first_, second_;
  Frame frame_;
  std::vector<AxisTie> ties_;
  std::vector<std::size_t> radial_tie_, thread_tie_, taper_tie_;
  std::vector<std::optional<std::size_t>> axial_tie_;
};

}  // namespace spotblue
