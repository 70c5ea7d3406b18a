#include "geometry/seats/open_seats.hpp"

#include <algorithm>

#include "geometry/candidates/relief.hpp"
#include "geometry/model/plane_map.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

// Less than that is a sliver and bears nothing: mm2, or of the lesser face, whichever is less.
// Choices of this program, no source.
constexpr double kLeastSeatArea = 0.5;
constexpr double kLeastShare = 1e-3;
constexpr double kTouch = 1e-3;  // mm2: less is two outlines that only touch

double least_area(const PlaneCandidate& c, const Surroundings& around) {
  const double lesser = std::min(area(around.first.product->planes[c.first].outline),
                                 area(around.second.product->planes[c.second].outline));
  return std::min(kLeastSeatArea, kLeastShare * lesser);
}

// The least area counts as enough, within the least length that counts, a millimetre wide.
bool is_sliver(double open_area, double least, const SeatSettings& settings) {
  constexpr double kWide = 1.0;  // mm
  return open_area < least - kWide * settings.same_length_mm;
}

void drop_reliefs(std::vector<OpenRadialSeat>& seats, const Surroundings& around,
                  const SeatSettings& settings) {
  std::vector<OpenStretches> open;
  open.reserve(seats.size());
  for (const OpenRadialSeat& seat : seats) {
    open.push_back({seat.candidate, &seat.open.stretches});
  }
  const std::vector<bool> relief =
      reliefs(open, *around.first.product, *around.second.product, settings);
  std::size_t i = 0;
  std::erase_if(seats, [&](const OpenRadialSeat&) { return relief[i++]; });
}

}  // namespace

OpenSeats open_seats(const PairCandidates& candidates, const Surroundings& around,
                     const SeatSettings& settings) {
  const Product& first = *around.first.product;
  OpenSeats seats;
  for (const RadialCandidate& c : candidates.radial) {
    stop_if_asked();
    OpenRadial open = open_part(c, around, settings);
    if (total_length(open.stretches) > settings.same_length_mm) {
      seats.radial.push_back({&c, std::move(open)});
    }
  }
  drop_reliefs(seats.radial, around, settings);
  for (const PlaneCandidate& c : candidates.planes) {
    stop_if_asked();
    const Plane& plane = first.planes[c.first];
    const Region open = open_part(c, candidates.radial, around, settings);
    const double open_area = open.edges.empty() ? 0.0 : area(open);
    if (!is_sliver(open_area, std::max(kTouch, least_area(c, around)), settings)) {
      std::optional<Reach> distances;
      if (c.axis) {
        const double s = station(*c.axis, plane.at);
        distances = reach(open, in_plane(plane, at_station(*c.axis, s)));
      }
      seats.axial.push_back({&c, open_area, distances});
    }
  }
  for (const TaperCandidate& c : candidates.tapers) {
    if (is_open(c, around, settings)) {
      seats.tapers.push_back(&c);
    }
  }
  for (const WidthCandidate& c : candidates.widths) {
    double open_area = c.area;
    double least = kTouch;
    for (const PlaneCandidate* side : {&c.one, &c.two}) {
      const Region open = open_part(*side, candidates.radial, around, settings);
      open_area = std::min(open_area, open.edges.empty() ? 0.0 : area(open));
      least = std::max(least, least_area(*side, around));
    }
    // What a press fit beside the key pushes into its side's edge is no third part between: up to
    // 1.9 % in random assemblies. Choice of this program, no source.
    constexpr double kWhole = 0.95;
    open_area = open_area > kWhole * c.area ? c.area : open_area;
    if (!is_sliver(open_area, least, settings)) {
      seats.widths.emplace_back(&c, open_area);
    }
  }
  return seats;
}

}  // namespace spotblue
