#include "geometry/ways/free_travel.hpp"

#include <algorithm>
#include <limits>
#include <optional>
#include <vector>

#include "geometry/faces/face_bounds.hpp"
#include "geometry/ways/overlap_bands.hpp"

namespace spotblue::proof {
namespace {

constexpr double kForEver = std::numeric_limits<double>::infinity();

Interval radii_of(const Sector& sector) {
  return {std::min(sector.low_first, sector.low_last),
          std::max(sector.high_first, sector.high_last)};
}

// The stations at which a line that runs from `first` to `last` over z is at most `most`.
std::optional<Interval> at_most(double first, double last, double most, Interval z) {
  if (first <= most && last <= most) {
    return z;
  }
  if (first > most && last > most) {
    return std::nullopt;
  }
  const double at = z.low + (z.high - z.low) * (most - first) / (last - first);
  return first <= most ? Interval{z.low, at} : Interval{at, z.high};
}

// The stations at which the sector has a radius.
std::optional<Interval> stations_at(const Sector& sector, Interval z, double radius) {
  const auto low = at_most(sector.low_first, sector.low_last, radius, z);
  const auto high = at_most(-sector.high_first, -sector.high_last, -radius, z);
  if (!low || !high) {
    return std::nullopt;
  }
  const Interval both{std::max(low->low, high->low), std::min(low->high, high->high)};
  return both.low <= both.high ? std::optional(both) : std::nullopt;
}

// What is left of a stretch of radii beside the bands, thinner than nothing left out.
std::vector<Interval> beside(Interval radii, std::span<const OverlapBand> bands) {
  std::vector<Interval> left{radii};
  for (const OverlapBand& band : bands) {
    std::vector<Interval> next;
    for (const Interval& one : left) {
      next.push_back({one.low, std::min(one.high, band.low)});
      next.push_back({std::max(one.low, band.high), one.high});
    }
    left = std::move(next);
  }
  std::erase_if(left, [](const Interval& one) { return one.high - one.low <= kPassing; });
  return left;
}

// How far the one goes before it meets the other, and where on it that is.
struct Contact {
  double travel = kForEver;
  double at = 0.0;
};

// At a radius; never where the other lies behind.
Contact contact_at(Interval moving, Interval still, Sense sense) {
  const bool up = sense == Sense::up;
  const bool behind =
      up ? still.high <= moving.low + kPassing : still.low >= moving.high - kPassing;
  if (behind) {
    return {};
  }
  const double at = up ? moving.high : moving.low;
  return {std::max(0.0, up ? still.low - at : at - still.high), at};
}

const Contact& sooner(const Contact& a, const Contact& b) { return b.travel < a.travel ? b : a; }

// Both are convex, so the way between them is shortest at a corner or an end of the radii.
Contact contact_of(const Slab& moving, const Sector& a, const Slab& still, const Sector& b,
                   Sense sense, std::span<const OverlapBand> bands) {
  const Interval ra = radii_of(a);
  const Interval rb = radii_of(b);
  Contact soonest;
  for (const Interval& radii :
       beside({std::max(ra.low, rb.low), std::min(ra.high, rb.high)}, bands)) {
    const double low = radii.low + 0.5 * kPassing;
    const double high = radii.high - 0.5 * kPassing;
    for (const double corner : {low, high, a.low_first, a.low_last, a.high_first, a.high_last,
                                b.low_first, b.low_last, b.high_first, b.high_last}) {
      const double radius = std::clamp(corner, low, high);
      const auto za = stations_at(a, moving.z, radius);
      const auto zb = stations_at(b, still.z, radius);
      if (za && zb) {
        soonest = sooner(soonest, contact_at(*za, *zb, sense));
      }
    }
  }
  return soonest;
}

// Of the sectors that `told` gives of a slab.
Contact soonest_of(std::span<const Slab> moving, std::span<const Slab> still,
                   std::vector<Sector> Slab::*told, Sense sense,
                   std::span<const OverlapBand> bands) {
  Contact soonest;
  for (const Slab& a : moving) {
    for (const Slab& b : still) {
      for (const Sector& sa : a.*told) {
        for (const Sector& sb : b.*told) {
          soonest = sooner(soonest, contact_of(a, sa, b, sb, sense, bands));
        }
      }
    }
  }
  return soonest;
}

std::vector<Slab> slabs_of(const Model& model, OccurrenceId part, const Line& line) {
  const Occurrence& placed = model.occurrences[part];
  const FaceBounds bounds = bounds_of(model.products[placed.product]);
  return bounds.solid && bounds.closed
             ? slabs_about(bounds, place_line(inverse(placed.frame), line))
             : std::vector<Slab>();
}

}  // namespace

FreeTravel free_travel(std::span<const Slab> moving, std::span<const Slab> still, Sense sense,
                       std::span<const OverlapBand> bands) {
  const Contact clear = soonest_of(moving, still, &Slab::occupied, sense, bands);
  const Contact meets = soonest_of(moving, still, &Slab::filled, sense, bands);
  return {clear.travel, meets.travel, clear.at};
}

FreeTravel free_travel(const Model& model, const Seats& seats, OccurrenceId moving,
                       OccurrenceId still, const Line& line, Sense sense) {
  const auto of_both = [&](const FeatureRef& a, const FeatureRef& b) {
    return (a.occurrence == moving && b.occurrence == still) ||
           (a.occurrence == still && b.occurrence == moving);
  };
  std::vector<OverlapBand> bands;
  for (const Thread& thread : seats.threads) {
    if (of_both(thread.hole, thread.screw)) {
      bands.push_back(band_of(thread));
    }
  }
  for (const RadialSeat& seat : seats.radial) {
    if (const auto band = of_both(seat.hole, seat.shaft) ? band_of(seat) : std::nullopt) {
      bands.push_back(*band);
    }
  }
  const std::vector<Slab> a = slabs_of(model, moving, line);
  const std::vector<Slab> b = slabs_of(model, still, line);
  if (a.empty() || b.empty()) {
    return {0.0, kForEver, 0.0};
  }
  return free_travel(a, b, sense, bands);
}

}  // namespace spotblue::proof
