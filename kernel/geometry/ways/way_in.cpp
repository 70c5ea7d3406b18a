#include "spotblue/geometry/way_in.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>

#include "geometry/ways/way_groups.hpp"
#include "geometry/ways/way_table.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

using proof::Bond;
using proof::Leaving;
using proof::Way;
using proof::WayTable;

constexpr std::size_t kMostParts = 150;

using Numbers = std::vector<std::size_t>;  ///< parts of the group, as the table numbers them

/// What stands in the way when only what is proved clear passes, or when only what is proved to
/// block does not.
enum class Trust { proved_clear, all_but_blocked };
enum class Pressed { stay_together, come_apart };

struct Removal {
  Numbers set;   ///< leaves ...
  Numbers rest;  ///< ... these
  Leaving leaving = Leaving::up;
};

/// Takes a group apart, as many parts at a time as have to move together.
class Dismantling {
 public:
  explicit Dismantling(const WayTable& table) : table_(table) {
    Numbers all(table.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    take_apart(std::move(all));
  }

  [[nodiscard]] const std::vector<Removal>& removals() const { return removals_; }
  /// Sets that do not come apart.
  [[nodiscard]] const std::vector<Numbers>& stuck() const { return stuck_; }

  [[nodiscard]] std::size_t base_of(const Numbers& set) const {
    return *std::ranges::max_element(set, {}, [&](std::size_t part) {
      return std::pair{table_.volume(part), set.size() - part};
    });
  }

 private:
  /// Whether all of them were put together before.
  [[nodiscard]] bool is_one(const Numbers& set) const {
    Numbers reached{set.front()};
    for (std::size_t next = 0; next < reached.size(); ++next) {
      for (const std::size_t part : set) {
        if (table_.bond(reached[next], part) == Bond::joined &&
            std::ranges::find(reached, part) == reached.end()) {
          reached.push_back(part);
        }
      }
    }
    return reached.size() == set.size();
  }

  void take_apart(Numbers set) {
    while (set.size() > 1 && !is_one(set)) {
      std::optional<Removal> removal = find(set, Trust::proved_clear);
      if (!removal) {
        removal = find(set, Trust::all_but_blocked);
      }
      if (!removal) {
        stuck_.push_back(std::move(set));
        return;
      }
      Numbers taken = removal->set;
      set = removal->rest;
      removals_.push_back(std::move(*removal));
      take_apart(std::move(taken));
    }
  }

  [[nodiscard]] bool in_way(Leaving leaving, std::size_t moving, std::size_t still,
                            Trust trust) const {
    const Way way = table_.passing(leaving, moving, still).way;
    return way == Way::blocked || (way == Way::untold && trust == Trust::proved_clear);
  }

  /// All that has to move when `first` does; nothing when the base would.
  [[nodiscard]] std::optional<Numbers> moved_with(std::size_t first, const Numbers& set,
                                                  Leaving leaving, Trust trust,
                                                  Pressed pressed) const {
    const std::size_t base = base_of(set);
    Numbers moving{first};
    for (std::size_t next = 0; next < moving.size(); ++next) {
      for (const std::size_t still : set) {
        const Bond bond = table_.bond(moving[next], still);
        const bool joined =
            bond == Bond::joined || (pressed == Pressed::stay_together && bond == Bond::pressed);
        if (std::ranges::find(moving, still) != moving.end() ||
            (!joined && !in_way(leaving, moving[next], still, trust))) {
          continue;
        }
        if (still == base || leaving == Leaving::out) {
          return {};
        }
        moving.push_back(still);
      }
    }
    return moving;
  }

  [[nodiscard]] std::size_t untold(const Numbers& moving, const Numbers& set,
                                   Leaving leaving) const {
    std::size_t count = 0;
    for (const std::size_t part : moving) {
      for (const std::size_t still : set) {
        const bool rests = std::ranges::find(moving, still) == moving.end();
        count += rests && table_.passing(leaving, part, still).way == Way::untold ? 1 : 0;
      }
    }
    return count;
  }

  /// How much speaks against taking these first, the weightiest first: what is taken on trust,
  /// pieces that are not pressed together, and how firmly they sit on the base.
  using Cost = std::tuple<std::size_t, std::size_t, Bond, std::size_t>;
  [[nodiscard]] Cost cost_of(const Numbers& moving, const Numbers& set, Leaving leaving) const {
    std::size_t pieces = moving.size();
    Bond held = Bond::none;
    const std::size_t base = base_of(set);
    for (std::size_t i = 0; i < moving.size(); ++i) {
      const Bond bond = table_.bond(moving[i], base);
      held = std::max(held, bond == Bond::threaded ? Bond::none : bond);
      for (std::size_t j = i + 1; j < moving.size(); ++j) {
        pieces -= table_.bond(moving[i], moving[j]) == Bond::pressed && pieces > 1 ? 1 : 0;
      }
    }
    return {untold(moving, set, leaving), pieces, held, moving.size()};
  }

  /// The set to take first, of those that can leave.
  [[nodiscard]] std::optional<Removal> find(const Numbers& set, Trust trust) const {
    const std::size_t base = base_of(set);
    for (const Pressed pressed : {Pressed::stay_together, Pressed::come_apart}) {
      std::optional<Removal> best;
      Cost least;
      for (const std::size_t part : set) {
        for (const Leaving leaving : {Leaving::up, Leaving::down, Leaving::out}) {
          if (part == base || (leaving == Leaving::out && !table_.goes_out(part))) {
            continue;
          }
          std::optional<Numbers> moving = moved_with(part, set, leaving, trust, pressed);
          if (!moving) {
            continue;
          }
          const Cost cost = cost_of(*moving, set, leaving);
          if (!best || cost < least) {
            least = cost;
            best = Removal{std::move(*moving), {}, leaving};
          }
        }
      }
      if (best) {
        for (const std::size_t part : set) {
          if (std::ranges::find(best->set, part) == best->set.end()) {
            best->rest.push_back(part);
          }
        }
        return best;
      }
    }
    return {};
  }

  const WayTable& table_;
  std::vector<Removal> removals_;
  std::vector<Numbers> stuck_;
};

/// Turns what came apart into an order of assembly.
class Account {
 public:
  Account(const WayTable& table, const proof::WayGroup& group, const WayInOptions& options)
      : table_(table), group_(group), options_(options), apart_(table) {}

  void write(WayIn& way) const {
    Numbers all(table_.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    way.base = group_.parts[apart_.base_of(all)];
    const std::vector<Removal>& removals = apart_.removals();
    for (auto removal = removals.rbegin(); removal != removals.rend(); ++removal) {
      way.steps.push_back(step_of(*removal));
      note_trust(*removal, way);
    }
    for (const Numbers& set : apart_.stuck()) {
      note_stuck(set, way);
    }
  }

 private:
  [[nodiscard]] WayStep step_of(const Removal& removal) const {
    WayStep step;
    step.along = -table_.direction(removal.leaving, removal.set.front());
    const auto [bond, inside, onto] = strongest(removal);
    step.onto = group_.parts[onto];
    step.how = how(removal, bond, inside, onto);
    Numbers set = removal.set;
    std::ranges::stable_sort(set, std::greater{},
                             [&](std::size_t part) { return table_.volume(part); });
    for (const std::size_t part : set) {
      step.parts.push_back(group_.parts[part]);
    }
    for (const std::size_t part : removal.rest) {
      if (part != apart_.base_of(removal.rest) && may_leave(part, removal.rest) &&
          !may_leave(part, together(removal))) {
        step.holds.push_back(group_.parts[part]);
      }
    }
    return step;
  }

  [[nodiscard]] std::tuple<Bond, std::size_t, std::size_t> strongest(const Removal& removal) const {
    std::tuple<Bond, std::size_t, std::size_t> best{Bond::none, removal.set.front(),
                                                    apart_.base_of(removal.rest)};
    for (const std::size_t part : removal.set) {
      for (const std::size_t still : removal.rest) {
        if (table_.bond(part, still) > std::get<0>(best)) {
          best = {table_.bond(part, still), part, still};
        }
      }
    }
    return best;
  }

  [[nodiscard]] bool springs(std::size_t part) const {
    return std::ranges::find(options_.springs, group_.parts[part]) != options_.springs.end();
  }

  [[nodiscard]] WayHow how(const Removal& removal, Bond bond, std::size_t inside,
                           std::size_t onto) const {
    if (bond == Bond::pressed) {
      return WayHow::press;
    }
    if (bond == Bond::threaded) {
      return WayHow::screw;
    }
    if (springs(inside) || springs(onto)) {
      return WayHow::spring_in;
    }
    return removal.leaving == Leaving::out ? WayHow::drop_in : WayHow::slide;
  }

  [[nodiscard]] static Numbers together(const Removal& removal) {
    Numbers all = removal.rest;
    all.insert(all.end(), removal.set.begin(), removal.set.end());
    return all;
  }

  [[nodiscard]] bool may_leave(std::size_t part, const Numbers& set) const {
    return std::ranges::any_of(
        std::initializer_list<Leaving>{Leaving::up, Leaving::down, Leaving::out},
        [&](Leaving leaving) {
          return (leaving != Leaving::out || table_.goes_out(part)) &&
                 std::ranges::all_of(set, [&](std::size_t still) {
                   return still == part || table_.passing(leaving, part, still).way == Way::free;
                 });
        });
  }

  void note_trust(const Removal& removal, WayIn& way) const {
    for (const std::size_t part : removal.set) {
      for (const std::size_t still : removal.rest) {
        if (table_.passing(removal.leaving, part, still).way == Way::untold) {
          way.not_told.push_back(
              {group_.parts[part], group_.parts[still], table_.direction(removal.leaving, part)});
        }
      }
    }
  }

  /// For each part but the base and each way along the line, who shuts it most.
  void note_stuck(const Numbers& set, WayIn& way) const {
    for (const std::size_t part : set) {
      for (const Leaving leaving : {Leaving::up, Leaving::down}) {
        std::optional<Blockage> worst;
        for (const std::size_t still : set) {
          const proof::Passing& passing = table_.passing(leaving, part, still);
          if (part == apart_.base_of(set) || still == part || passing.way != Way::blocked ||
              (worst && passing.needs - passing.has <= worst->needs - worst->has.value_or(0.0))) {
            continue;
          }
          worst = Blockage{group_.parts[part], group_.parts[still], table_.direction(leaving, part),
                           passing.needs,
                           passing.has > 0.0 ? std::optional(passing.has) : std::nullopt};
        }
        if (worst) {
          way.blocked.push_back(*worst);
        }
      }
    }
  }

  const WayTable& table_;
  const proof::WayGroup& group_;
  const WayInOptions& options_;
  Dismantling apart_;
};

}  // namespace

std::vector<WayIn> ways_in(const Model& model, const Seats& seats, const WayInOptions& options) {
  std::vector<WayIn> ways;
  for (const proof::WayGroup& group : proof::way_groups(model, seats)) {
    stop_if_asked();
    WayIn way;
    way.centre_lines = group.lines;
    way.parts = group.parts;
    way.together = group.together;
    if (group.parts.size() > kMostParts) {
      way.base = group.parts.front();
      way.too_many = true;
    } else {
      const WayTable table = proof::way_table(model, seats, options, group);
      Account(table, group, options).write(way);
    }
    ways.push_back(std::move(way));
  }
  return ways;
}

}  // namespace spotblue
