#include "spotblue/geometry/axial_stops.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "geometry/model/plane_map.hpp"
#include "geometry/seats/occurrence_pairs.hpp"
#include "spotblue/geometry/region_overlay.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

// As for axial seats: outlines that share less only touch.
constexpr double kLeastArea = 1e-3;  // mm2
// Faces that one face meets before all behind them is left out.
constexpr int kMost = 3;

const Plane& plane_of(const Model& model, const FeatureRef& face) {
  return model.products[model.occurrences[face.occurrence].product].planes[face.index];
}

Direction normal_of(const Model& model, const FeatureRef& face) {
  return place_direction(model.occurrences[face.occurrence].frame, plane_of(model, face).normal);
}

double facing_cosine(const SeatSettings& settings) {
  return std::cos(most_tilt(settings.facing_tilt_deg, settings));
}

// A face square to a line, with its place on the line and distances from it.
struct SquareFace {
  FeatureRef face;
  double at = 0.0;
  Reach reach;
};

struct LineFaces {
  std::vector<SquareFace> along, against;  // by where they look; the second sorted by place
};

LineFaces faces_on(const Model& model, const CentreLine& line, const SeatSettings& settings) {
  LineFaces faces;
  for (const OccurrenceId occurrence : line.occurrences) {
    const Occurrence& placed = model.occurrences[occurrence];
    for (const FeatureRef& face : faces_square_to(model, occurrence, line.line, settings)) {
      const double at = station_of_face(model, face, line.line);
      const Point foot = place_point(inverse(placed.frame), at_station(line.line, at));
      const Plane& plane = plane_of(model, face);
      const SquareFace square{face, at, reach(plane.outline, in_plane(plane, foot))};
      const bool looks_along = dot(normal_of(model, face), line.line.along) > 0.0;
      (looks_along ? faces.along : faces.against).push_back(square);
    }
  }
  std::stable_sort(faces.against.begin(), faces.against.end(),
                   [](const SquareFace& a, const SquareFace& b) { return a.at < b.at; });
  return faces;
}

double shared_area(const Model& model, const FeatureRef& a, const FeatureRef& b) {
  const Frame frame =
      relative_frame(model.occurrences[a.occurrence], model.occurrences[b.occurrence]);
  const Plane& own = plane_of(model, a);
  const Region shared = intersect(own.outline, outline_in(own, plane_of(model, b), frame));
  return shared.edges.empty() ? 0.0 : area(shared);
}

// The nearest stop of each two occurrences, the one that looks along first.
class Nearest {
 public:
  void add(const AxialStop& stop) {
    const auto [known, fresh] = stops_.try_emplace({stop.a.occurrence, stop.b.occurrence}, stop);
    if (!fresh && stop.gap < known->second.gap) {
      known->second = stop;
    }
  }
  [[nodiscard]] std::vector<AxialStop> all() const {
    std::vector<AxialStop> list;
    for (const auto& [pair, stop] : stops_) {
      list.push_back(stop);
    }
    return list;
  }

 private:
  std::map<OccurrencePair, AxialStop> stops_;
};

class StopFinder {
 public:
  StopFinder(const Model& model, const Seats& seats, std::span<const std::size_t> group_of,
             const SeatSettings& settings)
      : model_(model), seats_(seats), group_of_(group_of), settings_(settings) {
    seats_of_.resize(model.occurrences.size());
    for (std::size_t i = 0; i < seats.axial.size(); ++i) {
      seats_of_[seats.axial[i].a.occurrence].push_back(i);
    }
    on_line_.resize(model.occurrences.size(), false);
  }

  [[nodiscard]] std::vector<AxialStop> on(const CentreLine& line) {
    Nearest nearest;
    if (has_two_groups(line)) {
      add_seats(line, nearest);
      add_wide(line, nearest);
    }
    return nearest.all();
  }

 private:
  [[nodiscard]] bool apart(const FeatureRef& a, const FeatureRef& b) const {
    return group_of_[a.occurrence] != group_of_[b.occurrence];
  }
  [[nodiscard]] bool has_two_groups(const CentreLine& line) const {
    return std::any_of(line.occurrences.begin(), line.occurrences.end(), [&](OccurrenceId part) {
      return group_of_[part] != group_of_[line.occurrences.front()];
    });
  }

  void add_seats(const CentreLine& line, Nearest& nearest) {
    for (const OccurrenceId part : line.occurrences) {
      on_line_[part] = true;
    }
    for (const OccurrenceId part : line.occurrences) {
      for (const std::size_t i : seats_of_[part]) {
        const AxialSeat& seat = seats_.axial[i];
        const double cosine = dot(seat.axis.along, line.line.along);
        if (on_line_[seat.b.occurrence] && apart(seat.a, seat.b) &&
            std::abs(cosine) >= facing_cosine(settings_)) {
          const bool along = cosine > 0.0;
          nearest.add({along ? seat.a : seat.b, along ? seat.b : seat.a, seat.gap, seat.area, i});
        }
      }
    }
    for (const OccurrenceId part : line.occurrences) {
      on_line_[part] = false;
    }
  }

  void add_wide(const CentreLine& line, Nearest& nearest) const {
    const LineFaces faces = faces_on(model_, line, settings_);
    for (const SquareFace& a : faces.along) {
      const double from = a.at + settings_.axial_gap_most_mm + settings_.same_length_mm;
      auto b = std::upper_bound(faces.against.begin(), faces.against.end(), from,
                                [](double at, const SquareFace& face) { return at < face.at; });
      for (int met = 0; b != faces.against.end() && met < kMost; ++b) {
        if (!apart(a.face, b->face) || a.reach.greatest <= b->reach.least ||
            b->reach.greatest <= a.reach.least) {
          continue;
        }
        const double shared = shared_area(model_, a.face, b->face);
        if (shared > kLeastArea) {
          nearest.add({a.face, b->face, b->at - a.at, shared, std::nullopt});
          ++met;
        }
      }
    }
  }

  const Model& model_;
  const Seats& seats_;
  std::span<const std::size_t> group_of_;
  const SeatSettings& settings_;
  std::vector<std::vector<std::size_t>> seats_of_;  // by the occurrence of the seat's first face
  std::vector<bool> on_line_;
};

}  // namespace

double station_of_face(const Model& model, const FeatureRef& face, const Line& line) {
  const Point at = place_point(model.occurrences[face.occurrence].frame, plane_of(model, face).at);
  const Direction normal = normal_of(model, face);
  return dot(at - line.at, normal) / dot(line.along, normal);
}

std::vector<FeatureRef> faces_square_to(const Model& model, OccurrenceId occurrence,
                                        const Line& line, const SeatSettings& settings) {
  std::vector<FeatureRef> faces;
  const Occurrence& placed = model.occurrences[occurrence];
  const double cosine = facing_cosine(settings);
  const std::size_t count = model.products[placed.product].planes.size();
  for (std::size_t i = 0; i < count; ++i) {
    const FeatureRef face{occurrence, FeatureKind::plane, i};
    if (std::abs(dot(normal_of(model, face), line.along)) >= cosine) {
      faces.push_back(face);
    }
  }
  return faces;
}

std::vector<std::vector<AxialStop>> find_axial_stops(const Model& model, const Seats& seats,
                                                     std::span<const std::size_t> group_of,
                                                     const SeatSettings& settings) {
  StopFinder finder(model, seats, group_of, settings);
  std::vector<std::vector<AxialStop>> stops;
  stops.reserve(seats.centre_lines.size());
  for (const CentreLine& line : seats.centre_lines) {
    stops.push_back(finder.on(line));
  }
  return stops;
}

}  // namespace spotblue
