#include "geometry/ways/way_table.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

#include "geometry/ways/overlap_bands.hpp"
#include "geometry/ways/way_slot.hpp"

namespace spotblue::proof {
namespace {

/// Lines nearer than this are one.
constexpr double kOneLine = 1e-6;
/// Axes of the two parts themselves that a pair is also looked at about.
constexpr std::size_t kMostOwnAxes = 4;

bool parallel(Direction a, Direction b) { return norm(cross(a, b)) < kWayParallel; }

bool apart(Interval a, Interval b) { return a.low > b.high - kSame || b.low > a.high - kSame; }

}  // namespace

/// Fills a table from the seats, what the caller says, and the shapes.
class WayTableMaker {
 public:
  WayTableMaker(const Model& model, const Seats& seats, const WayInOptions& options,
                const WayGroup& group)
      : model_(model), seats_(seats), options_(options) {
    for (const CentreLineId line : group.lines) {
      add_axis(seats.centre_lines.at(line).line);
    }
    group_lines_ = axes_.size();
    main_ = axes_.front();
    square_ = any_square(main_.along);
    for (const OccurrenceId occurrence : group.parts) {
      add_part(occurrence);
    }
    table_.count_ = parts_.size();
    table_.along_ = main_.along;
    const std::size_t cells = parts_.size() * parts_.size();
    table_.bonds_.assign(cells, Bond::none);
    table_.up_.assign(cells, {});
    table_.outward_.assign(cells, {});
    table_.out_.assign(parts_.size(), std::nullopt);
    leave_.assign(cells, {});
    for (const auto& [a, b] : group.together) {
      bond(number_.at(a), number_.at(b), Bond::joined);
    }
  }

  WayTable make() && {
    note_seats();
    note_options();
    for (std::size_t a = 0; a < parts_.size(); ++a) {
      for (std::size_t b = 0; b < parts_.size(); ++b) {
        if (a != b) {
          table_.up_[cell(a, b)] = pass_up(a, b);
        }
      }
    }
    for (const auto& [key, slots] : slots_) {
      note_way_out(key, slots);
    }
    return std::move(table_);
  }

 private:
  struct Part {
    OccurrenceId occurrence;
    const FaceBounds* bounds;
    Frame back;                       ///< assembly to part
    std::array<Interval, 3> extents;  ///< along the main line, then square to it twice
    std::map<std::size_t, std::vector<Slab>> slabs;  ///< by axis
  };

  [[nodiscard]] std::size_t cell(std::size_t a, std::size_t b) const {
    return a * parts_.size() + b;
  }

  void add_axis(Line line) {
    if (!axes_.empty() && dot(line.along, axes_.front().along) < 0.0) {
      line.along = -line.along;
    }
    axes_.push_back(line);
  }

  void add_part(OccurrenceId occurrence) {
    const Occurrence& placed = model_.occurrences.at(occurrence);
    const Product& product = model_.products.at(placed.product);
    auto known = bounds_.find(placed.product);
    if (known == bounds_.end()) {
      known = bounds_.emplace(placed.product, bounds_of(product)).first;
    }
    Part part{occurrence, &known->second, inverse(placed.frame), {}, {}};
    const std::array<Direction, 3> directions{main_.along, square_, third(main_.along, square_)};
    for (std::size_t i = 0; i < directions.size(); ++i) {
      part.extents.at(i) = extent_along(part, directions.at(i));
    }
    table_.volumes_.push_back(product.volume > 0.0 ? product.volume
                                                   : std::pow(diagonal(product.box), 3.0));
    number_[occurrence] = parts_.size();
    parts_.push_back(std::move(part));
  }

  /// From the main line, along any direction.
  [[nodiscard]] Interval extent_along(const Part& part, Direction d) const {
    const Direction own = place_direction(part.back, d);
    return told_from(extent(*part.bounds, own), dot(own, place_point(part.back, main_.at)));
  }

  [[nodiscard]] std::optional<std::size_t> number_of(const FeatureRef& feature) const {
    const auto found = number_.find(feature.occurrence);
    return found != number_.end() ? std::optional(found->second) : std::nullopt;
  }

  void bond(std::size_t a, std::size_t b, Bond bond) {
    for (const std::size_t at : {cell(a, b), cell(b, a)}) {
      table_.bonds_[at] = std::max(table_.bonds_[at], bond);
    }
  }

  /// The pair as numbers, when both are in the group and not one part.
  template <typename Feature>
  void with_pair(const Feature& first, const Feature& second, auto&& use) {
    const auto a = number_of(first);
    const auto b = number_of(second);
    if (a && b && *a != *b) {
      use(*a, *b);
    }
  }

  void add_band(std::size_t a, std::size_t b, const OverlapBand& band) {
    for (const std::size_t at : {cell(a, b), cell(b, a)}) {
      leave_[at].bands.push_back(band);
    }
  }

  void note_seats() {
    for (const AxialSeat& seat : seats_.axial) {
      with_pair(seat.a, seat.b, [&](std::size_t a, std::size_t b) { bond(a, b, Bond::facing); });
    }
    for (const TaperSeat& seat : seats_.taper) {
      with_pair(seat.hole, seat.shaft,
                [&](std::size_t a, std::size_t b) { bond(a, b, Bond::seated); });
    }
    for (const RadialSeat& seat : seats_.radial) {
      with_pair(seat.hole, seat.shaft, [&](std::size_t a, std::size_t b) {
        bond(a, b, Bond::seated);
        if (const auto band = band_of(seat)) {
          add_band(a, b, *band);
        }
      });
    }
    for (const Thread& thread : seats_.threads) {
      with_pair(thread.hole, thread.screw, [&](std::size_t a, std::size_t b) {
        bond(a, b, Bond::threaded);
        add_band(a, b, band_of(thread));
      });
    }
    for (const WidthSeat& seat : seats_.width) {
      with_pair(seat.slot, seat.key,
                [&](std::size_t slot, std::size_t key) { note_slot(seat, slot, key); });
    }
  }

  void note_slot(const WidthSeat& seat, std::size_t slot, std::size_t key) {
    bond(slot, key, Bond::keyed);
    if (const auto shape = slot_about(model_, seat.slot, main_)) {
      // Only about the main line: the radii are told from it.
      const double low = std::max(0.0, shape->floor);
      const double high = std::hypot(shape->top, shape->half + seat.offset);
      leave_[cell(slot, key)].bands.push_back({low, high, shape->z, {}});
      leave_[cell(key, slot)].bands.push_back({low, high, {}, shape->z});
      slots_[key].emplace_back(slot, *shape);
    }
  }

  void note_options() {
    for (const auto& [a, b] : options_.pressed) {
      with_pair(FeatureRef{a}, FeatureRef{b},
                [&](std::size_t one, std::size_t other) { bond(one, other, Bond::pressed); });
    }
    for (const GivenOverlap& given : options_.given) {
      with_pair(FeatureRef{given.a}, FeatureRef{given.b}, [&](std::size_t a, std::size_t b) {
        for (const std::size_t at : {cell(a, b), cell(b, a)}) {
          leave_[at].apart = std::max(leave_[at].apart, given.depth);
        }
      });
    }
    for (const GivenOverlap& given : options_.squeezed) {
      with_pair(FeatureRef{given.a}, FeatureRef{given.b}, [&](std::size_t a, std::size_t b) {
        for (const std::size_t at : {cell(a, b), cell(b, a)}) {
          leave_[at].squeeze = std::max(leave_[at].squeeze, given.depth);
        }
      });
    }
    for (const OccurrenceId opens : options_.opens) {
      if (const auto number = number_of(FeatureRef{opens})) {
        opens_.insert(*number);
      }
    }
    for (const OccurrenceId spring : options_.springs) {
      if (const auto number = number_of(FeatureRef{spring})) {
        for (std::size_t other = 0; other < parts_.size(); ++other) {
          leave_[cell(*number, other)].moving_springs = true;
          leave_[cell(other, *number)].still_springs = true;
        }
      }
    }
  }

  const std::vector<Slab>& slabs(Part& part, std::size_t axis) {
    auto known = part.slabs.find(axis);
    if (known == part.slabs.end()) {
      known =
          part.slabs.emplace(axis, slabs_about(*part.bounds, place_line(part.back, axes_[axis])))
              .first;
    }
    return known->second;
  }

  /// Axes of the parts themselves that run along the line and are not yet among the axes.
  std::vector<std::size_t> own_axes(const Part& a, const Part& b) {
    std::vector<std::size_t> found;
    for (const Part* part : {&a, &b}) {
      const Frame& frame = model_.occurrences[part->occurrence].frame;
      std::size_t taken = 0;
      for (const Line& own : part->bounds->axes) {
        const Line line = place_line(frame, own);
        if (taken == kMostOwnAxes || !parallel(line.along, main_.along)) {
          continue;
        }
        ++taken;
        const auto known = std::ranges::find_if(
            axes_, [&](const Line& axis) { return distance(axis, line.at) < kOneLine; });
        found.push_back(static_cast<std::size_t>(known - axes_.begin()));
        if (known == axes_.end()) {
          add_axis(line);
        }
      }
    }
    return found;
  }

  Passing pass_about(std::size_t a, std::size_t b, std::size_t axis) {
    Leave leave = leave_[cell(a, b)];
    if (axis != 0) {
      // A keyway's band is told from the main line.
      std::erase_if(leave.bands,
                    [](const OverlapBand& band) { return band.moving_z || band.still_z; });
    }
    return proof::passing(slabs(parts_[a], axis), slabs(parts_[b], axis), Sense::up, leave);
  }

  Passing pass_up(std::size_t a, std::size_t b) {
    const Part& moving = parts_[a];
    const Part& still = parts_[b];
    if (opens_.contains(a) || opens_.contains(b)) {
      return {};
    }
    if (still.extents[0].high < moving.extents[0].low + kSame ||
        apart(moving.extents[1], still.extents[1]) || apart(moving.extents[2], still.extents[2])) {
      return {};
    }
    const auto sound = [](const Part& part) { return part.bounds->solid && part.bounds->closed; };
    Passing best{Way::untold, 0.0, 0.0};
    if (!sound(moving) || !sound(still)) {
      return best;
    }
    const auto look_about = [&](std::size_t axis) {
      const Passing found = pass_about(a, b, axis);
      if (best.way == Way::untold) {
        best = found;
      }
      return best.way != Way::untold;
    };
    for (std::size_t axis = 0; axis < group_lines_; ++axis) {
      if (look_about(axis)) {
        return best;
      }
    }
    for (const std::size_t axis : own_axes(moving, still)) {
      if (look_about(axis)) {
        return best;
      }
    }
    return best;
  }

  /// A key that lies in a keyseat open away from the line may leave straight out.
  void note_way_out(std::size_t key, const std::vector<std::pair<std::size_t, Slot>>& slots) {
    const Slot& slot = slots.front().second;
    table_.out_[key] = slot.out;
    const Interval across = extent_along(parts_[key], slot.across);
    const Interval depth = extent_along(parts_[key], slot.out);
    for (std::size_t other = 0; other < parts_.size(); ++other) {
      if (other == key) {
        continue;
      }
      double ceiling = depth.low;
      for (const auto& [in, shape] : slots) {
        if (in == other) {
          ceiling = std::hypot(shape.top, shape.half);
        }
      }
      if (apart(parts_[other].extents[0], parts_[key].extents[0]) ||
          apart(extent_along(parts_[other], slot.across), across) ||
          extent_along(parts_[other], slot.out).high < depth.low + kSame) {
        continue;
      }
      const double top = std::hypot(depth.high, 0.5 * (across.high - across.low));
      table_.outward_[cell(key, other)].way =
          under(parts_[other], parts_[key].extents[0], ceiling, top);
    }
  }

  /// Whether all of the part over `z` stays within the ceiling, or surely reaches over `top`.
  Way under(Part& part, Interval z, double ceiling, double top) {
    Way way = Way::free;
    for (const Slab& slab : slabs(part, 0)) {
      if (apart(slab.z, z)) {
        continue;
      }
      for (const Sector& sector : slab.occupied) {
        if (std::max(sector.high_first, sector.high_last) > ceiling + kPassing &&
            way == Way::free) {
          way = Way::untold;
        }
      }
      for (const Sector& sector : slab.filled) {
        if (std::min(sector.high_first, sector.high_last) > top + kPassing) {
          return Way::blocked;
        }
      }
    }
    return way;
  }

  const Model& model_;
  const Seats& seats_;
  const WayInOptions& options_;
  std::vector<Line> axes_;  ///< those of the group, then parts' own
  std::size_t group_lines_ = 0;
  Line main_;
  Direction square_;
  std::map<ProductId, FaceBounds> bounds_;
  std::vector<Part> parts_;
  std::map<OccurrenceId, std::size_t> number_;
  std::vector<Leave> leave_;
  std::set<std::size_t> opens_;
  std::map<std::size_t, std::vector<std::pair<std::size_t, Slot>>> slots_;  ///< by key
  WayTable table_;
};

const Passing& WayTable::passing(Leaving leaving, std::size_t moving, std::size_t still) const {
  switch (leaving) {
    case Leaving::up:
      return up_[moving * count_ + still];
    case Leaving::down:
      return up_[still * count_ + moving];
    case Leaving::out:
      break;
  }
  return outward_[moving * count_ + still];
}

Direction WayTable::direction(Leaving leaving, std::size_t part) const {
  switch (leaving) {
    case Leaving::up:
      return along_;
    case Leaving::down:
      return -along_;
    case Leaving::out:
      break;
  }
  return out_[part].value_or(along_);
}

WayTable way_table(const Model& model, const Seats& seats, const WayInOptions& options,
                   const WayGroup& group) {
  return WayTableMaker(model, seats, options, group).make();
}

}  // namespace spotblue::proof
