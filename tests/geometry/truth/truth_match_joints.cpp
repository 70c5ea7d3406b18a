// Tapers, widths, threads and fouls against the truth.

#include <algorithm>
#include <set>
#include <utility>
#include <vector>

#include "geometry/truth/truth_comparison.hpp"

namespace spotblue::test {

void compare_tapers(Comparison& c) {
  const auto describe = [&](const TrueTaper& s) {
    return fmt::format("{} on {}, gap {:.6g}", c.name(s.hole), c.name(s.shaft), s.gap);
  };
  c.pair_up<TrueTaper, TaperSeat>(
      "taper seat", c.assembly.truth.taper, c.look.seats.taper,
      [&](const TrueTaper& t, const TaperSeat& f) {
        return near(c.is(f.hole, t.hole) && c.is(f.shaft, t.shaft), std::abs(f.gap - t.gap));
      },
      [&](const TrueTaper& t, const TaperSeat& f) {
        const double allowed = c.within(t.hole, t.shaft);
        const std::string what = describe(t);
        c.equal(what + ": hole half angle x length",
                (f.hole_half_angle - t.hole_half_angle) * t.engaged, 0.0, allowed);
        c.equal(what + ": shaft half angle x length",
                (f.shaft_half_angle - t.shaft_half_angle) * t.engaged, 0.0, allowed);
        c.equal(what + ": gap", f.gap, t.gap, allowed);
        c.equal(what + ": engaged", f.engaged, t.engaged, allowed);
        c.equal(what + ": diameter", f.diameter, t.diameter, allowed);
        c.equal(what + ": offset", f.offset, 0.0, allowed);
      },
      describe,
      [&](const TaperSeat& f) {
        return fmt::format("{} on {}, gap {:.6g}", c.found_name(f.hole), c.found_name(f.shaft),
                           f.gap);
      });
}

void compare_widths(Comparison& c) {
  const auto describe = [&](const TrueWidth& s) {
    return fmt::format("{} {:.6g} round {} {:.6g}", c.name(s.slot), s.slot_width, c.name(s.key),
                       s.key_width);
  };
  c.pair_up<TrueWidth, WidthSeat>(
      "width seat", c.assembly.truth.width, c.look.seats.width,
      [&](const TrueWidth& t, const WidthSeat& f) {
        return near(c.is(f.slot, t.slot) && c.is(f.key, t.key) &&
                        std::abs(f.slot_width - t.slot_width) < 1e-3,
                    std::abs(std::abs(f.offset) - t.offset) + 1e-6 * std::abs(f.area - t.area));
      },
      [&](const TrueWidth& t, const WidthSeat& f) {
        const double allowed = c.within(t.slot, t.key);
        const std::string what = describe(t);
        c.equal(what + ": slot", f.slot_width, t.slot_width, allowed);
        c.equal(what + ": key", f.key_width, t.key_width, allowed);
        c.equal(what + ": clearance", f.clearance, t.slot_width - t.key_width, allowed);
        c.equal(what + ": offset", std::abs(f.offset), t.offset, allowed);
        c.equal(what + ": area", f.area, t.area, allowed * (10.0 + 20.0 * std::sqrt(t.area)));
      },
      describe,
      [&](const WidthSeat& f) {
        return fmt::format("{} round {}, clearance {:.6g}", c.found_name(f.slot),
                           c.found_name(f.key), f.clearance);
      });
}

void compare_threads(Comparison& c) {
  const auto describe = [&](const TrueThread& s) {
    return fmt::format("{} in {} {:.6g}, {}", c.name(s.screw), c.name(s.hole), s.hole_diameter,
                       s.size);
  };
  c.pair_up<TrueThread, Thread>(
      "thread", c.assembly.truth.threads, c.look.seats.threads,
      [&](const TrueThread& t, const Thread& f) {
        return near(c.is(f.hole, t.hole) && c.is(f.screw, t.screw),
                    std::abs(f.hole_diameter - t.hole_diameter));
      },
      [&](const TrueThread& t, const Thread& f) {
        const double allowed = c.within(t.hole, t.screw);
        const std::string what = describe(t);
        if (f.size != t.size) {
          c.say(what + ": called " + f.size);
        }
        c.equal(what + ": hole", f.hole_diameter, t.hole_diameter, allowed);
        c.equal(what + ": screw", f.screw_diameter, t.screw_diameter, allowed);
        c.equal(what + ": engaged", f.engaged, t.engaged, allowed);
      },
      describe,
      [&](const Thread& f) {
        return fmt::format("{} in {}, {}", c.found_name(f.screw), c.found_name(f.hole), f.size);
      });
}

namespace {

// The rows of a foul in pieces but its first are no others.
std::vector<Foul> one_row_each(const Comparison& c) {
  std::vector<Foul> rows;
  std::set<std::pair<std::size_t, std::size_t>> met;
  for (const Foul& row : c.look.fouls.found) {
    const bool pieces = std::ranges::any_of(c.assembly.truth.fouls, [&](const TrueFoul& t) {
      const std::size_t a = c.occurrences[t.a];
      const std::size_t b = c.occurrences[t.b];
      return t.in_pieces && ((row.a == a && row.b == b) || (row.a == b && row.b == a));
    });
    if (met.emplace(row.a, row.b).second || !pieces) {
      rows.push_back(row);
    }
  }
  return rows;
}

}  // namespace

void compare_fouls(Comparison& c) {
  const auto describe = [&](const TrueFoul& s) {
    return fmt::format("{} and {}, depth {:.6g}", c.name(s.a), c.name(s.b), s.depth);
  };
  c.pair_up<TrueFoul, Foul>(
      "foul", c.assembly.truth.fouls, one_row_each(c),
      [&](const TrueFoul& t, const Foul& f) {
        const auto a = c.occurrences[t.a];
        const auto b = c.occurrences[t.b];
        return near((f.a == a && f.b == b) || (f.a == b && f.b == a),
                    std::abs(f.volume - t.volume.value_or(0.0)));
      },
      [&](const TrueFoul& t, const Foul& f) {
        const std::string what = describe(t);
        const double allowed = c.within(t.a, t.b);
        if (t.volume) {
          c.equal(what + ": volume", f.volume, *t.volume, 1e-3 * *t.volume + 20.0 * allowed);
        } else if (!(f.volume > 0.0)) {
          c.say(what + ": no volume");
        }
        if (t.depth > 0.0) {
          c.equal(what + ": depth", f.depth, t.depth, 0.05 * t.depth + 2e-3);
        }
        if (f.undecided()) {
          c.say(what + ": " + f.cause);
        }
      },
      describe,
      [&](const Foul& f) {
        return fmt::format("{} and {}, volume {:.6g}, depth {:.6g}, {}",
                           c.look.model.occurrences[f.a].id, c.look.model.occurrences[f.b].id,
                           f.volume, f.depth, f.cause);
      });
}

}  // namespace spotblue::test
