#include "spotblue/geometry/wall.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <optional>
#include <utility>

#include "geometry/ways/faces_over.hpp"

namespace spotblue {
namespace {

using proof::FaceOver;
using proof::Looks;
using proof::NamedBounds;

constexpr double kInfinity = std::numeric_limits<double>::infinity();
/// Distances nearer than this are the same one.
constexpr double kSameRadius = 1e-6;

/// A part seen along a seat it has, in its own frame.
struct View {
  const Product* product;
  NamedBounds faces;
  Line axis;
  double contact;           ///< radius of the seat's surface
  const Cylinder* surface;  ///< the seat's own
};

View view_of(const Model& model, const RadialSeat& seat, const FeatureRef& feature) {
  const Occurrence& occurrence = model.occurrences.at(feature.occurrence);
  const Product& product = model.products.at(occurrence.product);
  const Cylinder& surface = product.cylinders.at(feature.index);
  return {&product, proof::named_bounds_of(product),
          place_line(inverse(occurrence.frame), seat.axis), 0.5 * surface.diameter, &surface};
}

/// Whether the seat's own surface is there at this station.
bool has_surface(const View& view, double at) {
  const double own = station(view.surface->axis, at_station(view.axis, at));
  return std::ranges::any_of(view.surface->intervals, [&](const auto& interval) {
    return own > interval.low && own < interval.high;
  });
}

bool is_same(double a, double b) { return std::abs(a - b) < kSameRadius; }
bool is_same(Interval a, Interval b) { return is_same(a.low, b.low) && is_same(a.high, b.high); }

class WallBook {
 public:
  void blind(std::string clause) {
    auto& known = wall_.blind_spots;
    if (std::ranges::find(known, clause) == known.end()) {
      known.push_back(std::move(clause));
    }
  }
  void add(const WallStretch& next) {
    if (!wall_.stretches.empty()) {
      WallStretch& last = wall_.stretches.back();
      if (last.to == next.from && is_same(last.inner, next.inner) &&
          is_same(last.outer, next.outer) && is_same(last.begins, next.begins) &&
          is_same(last.ends, next.ends)) {
        last.to = next.to;
        return;
      }
    }
    wall_.stretches.push_back(next);
  }
  [[nodiscard]] Wall close() && { return std::move(wall_); }

 private:
  Wall wall_;
};

/// Greatest distance from the axis to a corner of the part's box.
double box_corner(const View& view) {
  const Box& box = view.product->box;
  double greatest = 0.0;
  for (const double x : {box.low.x, box.high.x}) {
    for (const double y : {box.low.y, box.high.y}) {
      for (const double z : {box.low.z, box.high.z}) {
        greatest = std::max(greatest, distance(view.axis, {x, y, z}));
      }
    }
  }
  return greatest;
}

/// Least distance from the axis to a side of the part's box.
double box_reach(const View& view, double at) {
  const Point middle = at_station(view.axis, at);
  const Box& box = view.product->box;
  double least = kInfinity;
  for (const Direction side : {Direction{1, 0, 0}, Direction{0, 1, 0}, Direction{0, 0, 1}}) {
    const double square = norm(cross(side, view.axis.along));
    if (square > 0.1) {
      least = std::min(
          {least, dot(side, box.high - middle) / square, dot(side, middle - box.low) / square});
    }
  }
  return least;
}

/// The floor of a groove turned into the bore, or the bore itself.
double bore_floor(const std::vector<FaceOver>& over, double contact, double outer) {
  double floor = contact;
  for (const FaceOver& face : over) {
    if (face.looks == Looks::inward && face.ring && face.greatest < outer) {
      floor = std::max(floor, face.greatest);
    }
  }
  return floor;
}

/// Nearest place where metal ends going outward from the bore, and what ends it.
std::pair<double, const FaceOver*> outer_end(const std::vector<FaceOver>& over, double contact) {
  std::pair<double, const FaceOver*> end{kInfinity, nullptr};
  for (const FaceOver& face : over) {
    if (face.looks == Looks::outward && face.least > contact + kSameRadius &&
        face.least < end.first) {
      end = {face.least, &face};
    }
  }
  const double floor = bore_floor(over, contact, end.first);
  for (const FaceOver& face : over) {
    // A fillet in the corner of a groove belongs to the groove.
    if (face.looks == Looks::unknown && face.greatest > floor + kSameRadius &&
        face.least > contact + kSameRadius && face.least < end.first) {
      end = {face.least, &face};
    }
  }
  return end;
}

/// A feature's pieces that are no rings, as one.
std::vector<FaceOver> joined(const std::vector<FaceOver>& over) {
  std::vector<FaceOver> whole;
  for (const FaceOver& face : over) {
    const auto same = std::ranges::find_if(whole, [&](const FaceOver& w) {
      return w.name == face.name && w.looks == face.looks && !face.ring;
    });
    if (same == whole.end() || face.ring) {
      whole.push_back(face);
    } else {
      same->least = std::min(same->least, face.least);
      same->greatest = std::max(same->greatest, face.greatest);
    }
  }
  return whole;
}

/// How far out the metal may reach. A ring ends it all the way round; anything else lets it go on
/// to what lies beyond.
double farthest(const View& view, const std::vector<FaceOver>& over, const FaceOver* end) {
  if (end == nullptr) {
    return box_corner(view);
  }
  double reach = end->greatest;
  for (const FaceOver& face : over) {
    reach = end->ring || face.looks == Looks::inward ? reach : std::max(reach, face.greatest);
  }
  return reach;
}

/// Notes what is cut into the bore, and says how deep.
double note_hub(WallBook& book, const std::vector<FaceOver>& over, double contact, double floor,
                double outer) {
  double deepest = floor;
  for (const FaceOver& face : joined(over)) {
    const bool at_bore = face.least < contact + kSameRadius || face.looks == Looks::inward;
    if (!at_bore || face.ring || face.greatest < floor + kSameRadius ||
        face.least > outer - kSameRadius || face.greatest < contact + kSameRadius) {
      continue;
    }
    deepest = std::max(deepest, face.greatest);
    book.blind(face.greatest > outer - kSameRadius
                   ? fmt::format("{} opens through the wall", face.name)
                   : fmt::format("{} is cut into the bore: the wall is thinner there", face.name));
  }
  return deepest;
}

double shaft_bore(const std::vector<FaceOver>& over, double contact) {
  double bore = 0.0;
  for (const FaceOver& face : over) {
    const bool inside = face.greatest < contact - kSameRadius;
    if (inside && face.looks == Looks::inward && face.ring) {
      bore = std::max(bore, face.greatest);
    }
  }
  return bore;
}

/// The floor of a groove turned into the shaft, or the shaft itself.
double shaft_floor(const std::vector<FaceOver>& over, double contact, double bore) {
  double floor = contact;
  for (const FaceOver& face : over) {
    if (face.looks == Looks::outward && face.ring && face.least > bore) {
      floor = std::min(floor, face.least);
    }
  }
  return floor;
}

/// Narrowest bore of a ring that holds all the metal; 0 where some of it reaches the axis.
double least_bore(const std::vector<FaceOver>& over, double bore) {
  double least = 0.0;
  for (const FaceOver& face : over) {
    if (face.looks == Looks::inward && face.ring && face.least < bore + kSameRadius) {
      least = least > 0.0 ? std::min(least, face.least) : face.least;
    }
  }
  return least;
}

/// Notes what is cut into the shaft: how far inward from its outside, and outward from its bore.
Interval note_shaft(WallBook& book, const std::vector<FaceOver>& over, double bore, double floor) {
  Interval left{bore, floor};
  for (const FaceOver& face : joined(over)) {
    if (face.ring || face.least > floor - kSameRadius || face.greatest < bore + kSameRadius) {
      continue;
    }
    // What reaches the outside is cut in from there, whichever way its sides look.
    if (face.looks == Looks::inward && face.greatest < floor - kSameRadius) {
      left.low = std::max(left.low, face.greatest);
    } else {
      left.high = std::min(left.high, face.least);
    }
    book.blind(face.looks == Looks::inward
                   ? fmt::format("{} is hollow beside or across the axis", face.name)
                   : fmt::format("{} is cut into the shaft: it is weaker there", face.name));
  }
  return left;
}

/// Calls one(stretch, faces over it) for every stretch of the seat between two faces' ends.
void for_each_stretch(const View& view, const RadialSeat& seat, auto&& one) {
  const std::vector<double> ends =
      proof::face_stations(view.faces, view.axis, Interval{seat.from, seat.to});
  for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
    one(Interval{ends[i], ends[i + 1]},
        proof::faces_over(view.faces, view.axis, {ends[i], ends[i + 1]}));
  }
}

}  // namespace

Wall wall_of_hub(const Model& model, const RadialSeat& seat) {
  const View view = view_of(model, seat, seat.hole);
  WallBook book;
  for_each_stretch(view, seat, [&](Interval z, const std::vector<FaceOver>& over) {
    const double middle = 0.5 * (z.low + z.high);
    auto [outer, end] = outer_end(over, view.contact);
    if (end == nullptr) {
      outer = box_reach(view, middle);
      book.blind("no face bounds the wall from outside: taken to the box round the part");
    } else if (end->looks == Looks::unknown) {
      book.blind(fmt::format("{} is taken at its nearest to the axis", end->name));
    }
    const double floor = bore_floor(over, view.contact, outer);
    if (outer < floor + kSameRadius) {
      book.blind("the wall could not be told over part of the seat");
    } else if (has_surface(view, middle) || floor > view.contact) {
      const double deepest = note_hub(book, over, view.contact, floor, outer);
      const double reach = std::max(outer, farthest(view, over, end));
      book.add({z.low,
                z.high,
                2.0 * floor,
                2.0 * outer,
                {2.0 * floor, 2.0 * deepest},
                {2.0 * outer, 2.0 * reach}});
    }
  });
  return std::move(book).close();
}

Wall wall_of_shaft(const Model& model, const RadialSeat& seat) {
  const View view = view_of(model, seat, seat.shaft);
  WallBook book;
  for_each_stretch(view, seat, [&](Interval z, const std::vector<FaceOver>& over) {
    double bore = shaft_bore(over, view.contact);
    const double floor = shaft_floor(over, view.contact, bore);
    for (const FaceOver& face : over) {
      if (face.looks == Looks::unknown && face.greatest > bore &&
          face.least < floor - kSameRadius && face.greatest < floor - kSameRadius) {
        bore = face.greatest;
        book.blind(fmt::format("{} is taken at its farthest from the axis", face.name));
      }
    }
    if (has_surface(view, 0.5 * (z.low + z.high)) || floor < view.contact) {
      const Interval left = note_shaft(book, over, bore, floor);
      book.add({z.low,
                z.high,
                2.0 * bore,
                2.0 * floor,
                {2.0 * least_bore(over, bore), 2.0 * left.low},
                {2.0 * left.high, 2.0 * floor}});
    }
  });
  return std::move(book).close();
}

}  // namespace spotblue
