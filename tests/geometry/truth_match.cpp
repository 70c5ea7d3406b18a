#include "geometry/truth_match.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>

namespace spotblue::test {
namespace {

constexpr auto kMissing = static_cast<std::size_t>(-1);

bool same_place(const Frame& frame, const gp_Trsf& at) {
  for (int row = 1; row <= 3; ++row) {
    for (int column = 1; column <= 4; ++column) {
      const double found =
          frame.rows[static_cast<std::size_t>(row - 1)][static_cast<std::size_t>(column - 1)];
      if (std::abs(found - at.Value(row, column)) > 1e-6) {
        return false;
      }
    }
  }
  return true;
}

class Match {
 public:
  Match(const Look& look, const Assembly& assembly, const Tolerance& tolerance)
      : look_(look),
        true_(assembly),
        tolerance_(tolerance),
        occurrences_(match_occurrences(look, assembly)) {}

  std::vector<std::string> run() {
    counts();
    radial();
    axial();
    tapers();
    widths();
    threads();
    clashes();
    return lines_;
  }

 private:
  void say(std::string line) { lines_.push_back(std::move(line)); }

  std::string name(std::size_t true_occurrence) const {
    return fmt::format("{} (#{})", true_.occurrences[true_occurrence].product, true_occurrence);
  }
  std::string found_name(const FeatureRef& feature) const {
    return look_.model.occurrences[feature.occurrence].id + " / " +
           feature_id(look_.model, feature);
  }
  bool is(const FeatureRef& feature, std::size_t true_occurrence) const {
    return feature.occurrence == occurrences_[true_occurrence];
  }
  double within(std::size_t a, std::size_t b) const {
    return true_.occurrences[a].fitted || true_.occurrences[b].fitted ? tolerance_.fitted
                                                                      : tolerance_.exact;
  }
  void equal(const std::string& what, double found, double expected, double allowed) {
    if (!(std::abs(found - expected) <= allowed)) {
      say(fmt::format("{}: expected {:.12g}, found {:.12g} (off {:.3g}, allowed {:.3g})", what,
                      expected, found, found - expected, allowed));
    }
  }

  // The found seat that answers each true one; `fits` says whether it may, `check` compares values.
  template <class True, class Found>
  void pair_up(const char* kind, const std::vector<True>& all_true,
               const std::vector<Found>& all_found,
               const std::function<bool(const True&, const Found&)>& fits,
               const std::function<void(const True&, const Found&)>& check,
               const std::function<std::string(const True&)>& describe,
               const std::function<std::string(const Found&)>& describe_found) {
    std::vector<bool> used(all_found.size(), false);
    for (const True& seat : all_true) {
      bool met = false;
      for (std::size_t i = 0; i < all_found.size() && !met; ++i) {
        if (!used[i] && fits(seat, all_found[i])) {
          met = used[i] = true;
          check(seat, all_found[i]);
        }
      }
      if (!met) {
        say(fmt::format("missing {}: {}", kind, describe(seat)));
      }
    }
    for (std::size_t i = 0; i < all_found.size(); ++i) {
      if (!used[i]) {
        say(fmt::format("invented {}: {}", kind, describe_found(all_found[i])));
      }
    }
  }

  void counts() {
    if (look_.model.products.size() != true_.products) {
      say(fmt::format("products: expected {}, found {}", true_.products,
                      look_.model.products.size()));
    }
    if (look_.model.occurrences.size() != true_.occurrences.size()) {
      say(fmt::format("occurrences: expected {}, found {}", true_.occurrences.size(),
                      look_.model.occurrences.size()));
    }
    for (std::size_t i = 0; i < occurrences_.size(); ++i) {
      if (occurrences_[i] == kMissing) {
        say("missing occurrence: " + name(i));
      }
    }
  }

  void radial() {
    const auto describe = [&](const TrueRadial& s) {
      return fmt::format("{} {:.6g} on {} {:.6g}, engaged {:.6g}", name(s.hole), s.hole_diameter,
                         name(s.shaft), s.shaft_diameter, s.engaged);
    };
    pair_up<TrueRadial, RadialSeat>(
        "radial seat", true_.truth.radial, look_.seats.radial,
        [&](const TrueRadial& t, const RadialSeat& f) {
          return is(f.hole, t.hole) && is(f.shaft, t.shaft) &&
                 std::abs(f.hole_diameter - t.hole_diameter) < 1e-3;
        },
        [&](const TrueRadial& t, const RadialSeat& f) {
          const double allowed = within(t.hole, t.shaft);
          const std::string what = describe(t);
          equal(what + ": hole", f.hole_diameter, t.hole_diameter, allowed);
          equal(what + ": shaft", f.shaft_diameter, t.shaft_diameter, allowed);
          equal(what + ": clearance", f.clearance, t.hole_diameter - t.shaft_diameter, allowed);
          equal(what + ": offset", f.offset, t.offset, allowed);
          equal(what + ": tilt x length", (f.tilt - t.tilt) * t.engaged, 0.0, allowed);
          equal(what + ": least gap", f.least_gap, t.least_gap, allowed);
          equal(what + ": engaged", f.engaged, t.engaged, allowed + t.engaged_slack);
          equal(what + ": coverage x radius", (f.coverage - t.coverage) * t.hole_diameter / 2, 0.0,
                allowed);
          if (f.centre_line >= look_.seats.centre_lines.size()) {
            say(what + ": no centre line");
          }
        },
        describe,
        [&](const RadialSeat& f) {
          return fmt::format("{} on {}, clearance {:.6g}, engaged {:.6g}", found_name(f.hole),
                             found_name(f.shaft), f.clearance, f.engaged);
        });
  }

  void axial() {
    const auto describe = [&](const TrueAxial& s) {
      return fmt::format("{} against {}, gap {:.6g}, area {:.6g}", name(s.a), name(s.b), s.gap,
                         s.area);
    };
    pair_up<TrueAxial, AxialSeat>(
        "axial seat", true_.truth.axial, look_.seats.axial,
        [&](const TrueAxial& t, const AxialSeat& f) {
          return ((is(f.a, t.a) && is(f.b, t.b)) || (is(f.a, t.b) && is(f.b, t.a))) &&
                 std::abs(f.gap - t.gap) < 1e-3;
        },
        [&](const TrueAxial& t, const AxialSeat& f) {
          const double allowed = within(t.a, t.b);
          const std::string what = describe(t);
          equal(what + ": gap", f.gap, t.gap, allowed);
          // A length off by `allowed` all round moves the area by the outline's length.
          equal(what + ": area", f.area, t.area, allowed * (10.0 + 20.0 * std::sqrt(t.area)));
          if ((f.centre_line != kNoCentreLine) != t.on_centre_line) {
            say(what + (t.on_centre_line ? ": lacks its centre line" : ": has a centre line"));
          }
        },
        describe,
        [&](const AxialSeat& f) {
          return fmt::format("{} against {}, gap {:.6g}, area {:.6g}", found_name(f.a),
                             found_name(f.b), f.gap, f.area);
        });
  }

  void tapers() {
    const auto describe = [&](const TrueTaper& s) {
      return fmt::format("{} on {}, gap {:.6g}", name(s.hole), name(s.shaft), s.gap);
    };
    pair_up<TrueTaper, TaperSeat>(
        "taper seat", true_.truth.taper, look_.seats.taper,
        [&](const TrueTaper& t, const TaperSeat& f) {
          return is(f.hole, t.hole) && is(f.shaft, t.shaft);
        },
        [&](const TrueTaper& t, const TaperSeat& f) {
          const double allowed = within(t.hole, t.shaft);
          const std::string what = describe(t);
          equal(what + ": hole half angle x length",
                (f.hole_half_angle - t.hole_half_angle) * t.engaged, 0.0, allowed);
          equal(what + ": shaft half angle x length",
                (f.shaft_half_angle - t.shaft_half_angle) * t.engaged, 0.0, allowed);
          equal(what + ": gap", f.gap, t.gap, allowed);
          equal(what + ": engaged", f.engaged, t.engaged, allowed);
          equal(what + ": diameter", f.diameter, t.diameter, allowed);
          equal(what + ": offset", f.offset, 0.0, allowed);
        },
        describe,
        [&](const TaperSeat& f) {
          return fmt::format("{} on {}, gap {:.6g}", found_name(f.hole), found_name(f.shaft),
                             f.gap);
        });
  }

  void widths() {
    const auto describe = [&](const TrueWidth& s) {
      return fmt::format("{} {:.6g} round {} {:.6g}", name(s.slot), s.slot_width, name(s.key),
                         s.key_width);
    };
    pair_up<TrueWidth, WidthSeat>(
        "width seat", true_.truth.width, look_.seats.width,
        [&](const TrueWidth& t, const WidthSeat& f) {
          return is(f.slot, t.slot) && is(f.key, t.key) &&
                 std::abs(f.slot_width - t.slot_width) < 1e-3;
        },
        [&](const TrueWidth& t, const WidthSeat& f) {
          const double allowed = within(t.slot, t.key);
          const std::string what = describe(t);
          equal(what + ": slot", f.slot_width, t.slot_width, allowed);
          equal(what + ": key", f.key_width, t.key_width, allowed);
          equal(what + ": clearance", f.clearance, t.slot_width - t.key_width, allowed);
          equal(what + ": offset", std::abs(f.offset), t.offset, allowed);
          equal(what + ": area", f.area, t.area, allowed * (10.0 + 20.0 * std::sqrt(t.area)));
        },
        describe,
        [&](const WidthSeat& f) {
          return fmt::format("{} round {}, clearance {:.6g}", found_name(f.slot), found_name(f.key),
                             f.clearance);
        });
  }

  void threads() {
    const auto describe = [&](const TrueThread& s) {
      return fmt::format("{} in {} {:.6g}, {}", name(s.screw), name(s.hole), s.hole_diameter,
                         s.size);
    };
    pair_up<TrueThread, Thread>(
        "thread", true_.truth.threads, look_.seats.threads,
        [&](const TrueThread& t, const Thread& f) {
          return is(f.hole, t.hole) && is(f.screw, t.screw);
        },
        [&](const TrueThread& t, const Thread& f) {
          const double allowed = within(t.hole, t.screw);
          const std::string what = describe(t);
          if (f.size != t.size) {
            say(what + ": called " + f.size);
          }
          equal(what + ": hole", f.hole_diameter, t.hole_diameter, allowed);
          equal(what + ": screw", f.screw_diameter, t.screw_diameter, allowed);
          equal(what + ": engaged", f.engaged, t.engaged, allowed);
        },
        describe,
        [&](const Thread& f) {
          return fmt::format("{} in {}, {}", found_name(f.screw), found_name(f.hole), f.size);
        });
  }

  void clashes() {
    const auto describe = [&](const TrueClash& s) {
      return fmt::format("{} and {}, depth {:.6g}", name(s.a), name(s.b), s.depth);
    };
    pair_up<TrueClash, Clash>(
        "clash", true_.truth.clashes, look_.clash.clashes,
        [&](const TrueClash& t, const Clash& f) {
          const auto a = occurrences_[t.a];
          const auto b = occurrences_[t.b];
          return (f.a == a && f.b == b) || (f.a == b && f.b == a);
        },
        [&](const TrueClash& t, const Clash& f) {
          const std::string what = describe(t);
          const double allowed = within(t.a, t.b);
          if (t.volume) {
            equal(what + ": volume", f.volume, *t.volume, 1e-3 * *t.volume + 20.0 * allowed);
          } else if (!(f.volume > 0.0)) {
            say(what + ": no volume");
          }
          if (t.depth > 0.0) {
            equal(what + ": depth", f.depth, t.depth, 0.05 * t.depth + 2e-3);
          }
          if (!f.exact) {
            say(what + ": undecided: " + f.cause);
          }
        },
        describe,
        [&](const Clash& f) {
          return fmt::format("{} and {}, volume {:.6g}, depth {:.6g}, {}",
                             look_.model.occurrences[f.a].id, look_.model.occurrences[f.b].id,
                             f.volume, f.depth, f.cause);
        });
  }

  const Look& look_;
  const Assembly& true_;
  Tolerance tolerance_;
  std::vector<std::size_t> occurrences_;
  std::vector<std::string> lines_;
};

}  // namespace

std::vector<std::size_t> match_occurrences(const Look& look, const Assembly& assembly) {
  std::vector<std::size_t> places(assembly.occurrences.size(), kMissing);
  std::vector<bool> used(look.model.occurrences.size(), false);
  for (std::size_t i = 0; i < places.size(); ++i) {
    const TrueOccurrence& wanted = assembly.occurrences[i];
    for (std::size_t k = 0; k < used.size(); ++k) {
      const Occurrence& found = look.model.occurrences[k];
      if (!used[k] && look.model.products[found.product].name == wanted.product &&
          same_place(found.frame, wanted.at)) {
        places[i] = k;
        used[k] = true;
        break;
      }
    }
  }
  return places;
}

std::vector<std::string> disagreements(const Look& look, const Assembly& assembly,
                                       const Tolerance& tolerance) {
  return Match(look, assembly, tolerance).run();
}

}  // namespace spotblue::test
