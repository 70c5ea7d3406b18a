#include "geometry/truth/truth_comparison.hpp"

namespace spotblue::test {
namespace {

constexpr auto kMissing = static_cast<std::size_t>(-1);

/// Whether the product, as its file draws it, is put there.
bool same_place(const Occurrence& occurrence, const Product& product, const gp_Trsf& at) {
  Frame frame = occurrence.frame;
  const Point origin = place_point(frame, -product.drawn_at);
  frame.rows[0][3] = origin.x;
  frame.rows[1][3] = origin.y;
  frame.rows[2][3] = origin.z;
  for (int row = 1; row <= 3; ++row) {
    for (int column = 1; column <= 4; ++column) {
      const double found =
          frame.rows[static_cast<std::size_t>(row - 1)][static_cast<std::size_t>(column - 1)];
      const double expected = at.Value(row, column);
      if (std::abs(found - expected) > 1e-6 + 1e-11 * std::abs(expected)) {
        return false;
      }
    }
  }
  return true;
}

void compare_counts(Comparison& c) {
  if (c.look.model.products.size() != c.assembly.products) {
    c.say(fmt::format("products: expected {}, found {}", c.assembly.products,
                      c.look.model.products.size()));
  }
  if (c.look.model.occurrences.size() != c.assembly.occurrences.size()) {
    c.say(fmt::format("occurrences: expected {}, found {}", c.assembly.occurrences.size(),
                      c.look.model.occurrences.size()));
  }
  if (c.look.model.not_compared.size() != c.assembly.open_products) {
    c.say(fmt::format("said not to be compared: expected {}, found {}", c.assembly.open_products,
                      c.look.model.not_compared.size()));
  }
  for (std::size_t i = 0; i < c.occurrences.size(); ++i) {
    if (c.occurrences[i] == kMissing) {
      c.say("missing occurrence: " + c.name(i));
    }
  }
}

}  // namespace

void compare_radial(Comparison& c) {
  const auto describe = [&](const TrueRadial& s) {
    return fmt::format("{} {:.6g} on {} {:.6g}, engaged {:.6g}", c.name(s.hole), s.hole_diameter,
                       c.name(s.shaft), s.shaft_diameter, s.engaged);
  };
  c.pair_up<TrueRadial, RadialSeat>(
      "radial seat", c.assembly.truth.radial, c.look.seats.radial,
      [&](const TrueRadial& t, const RadialSeat& f) {
        return near(
            c.is(f.hole, t.hole) && c.is(f.shaft, t.shaft) &&
                std::abs(f.hole_diameter - t.hole_diameter) < 10 * c.within(t.hole, t.shaft),
            std::abs(f.engaged - t.engaged) + 1e3 * std::abs(f.hole_diameter - t.hole_diameter));
      },
      [&](const TrueRadial& t, const RadialSeat& f) {
        const double allowed = c.within(t.hole, t.shaft);
        const std::string what = describe(t);
        c.equal(what + ": hole", f.hole_diameter, t.hole_diameter, allowed);
        c.equal(what + ": shaft", f.shaft_diameter, t.shaft_diameter, allowed);
        c.equal(what + ": clearance", f.clearance, t.hole_diameter - t.shaft_diameter, allowed);
        c.equal(what + ": offset", f.offset, t.offset, allowed);
        c.equal(what + ": tilt x length", (f.tilt - t.tilt) * t.engaged, 0.0, allowed);
        c.equal(what + ": least gap", f.least_gap, t.least_gap, allowed);
        c.equal(what + ": engaged", f.engaged, t.engaged, allowed + t.engaged_slack);
        c.equal(what + ": coverage x radius", (f.coverage - t.coverage) * t.hole_diameter / 2, 0.0,
                allowed + 0.5 * t.coverage_slack * t.hole_diameter);
        if (f.centre_line >= c.look.seats.centre_lines.size()) {
          c.say(what + ": no centre line");
        }
      },
      describe,
      [&](const RadialSeat& f) {
        return fmt::format("{} on {}, clearance {:.6g}, engaged {:.6g}", c.found_name(f.hole),
                           c.found_name(f.shaft), f.clearance, f.engaged);
      });
}

void compare_axial(Comparison& c) {
  const auto describe = [&](const TrueAxial& s) {
    return fmt::format("{} against {}, gap {:.6g}, area {:.6g}", c.name(s.a), c.name(s.b), s.gap,
                       s.area);
  };
  c.pair_up<TrueAxial, AxialSeat>(
      "axial seat", c.assembly.truth.axial, c.look.seats.axial,
      [&](const TrueAxial& t, const AxialSeat& f) {
        return near(((c.is(f.a, t.a) && c.is(f.b, t.b)) || (c.is(f.a, t.b) && c.is(f.b, t.a))) &&
                        std::abs(f.gap - t.gap) < 10 * c.within(t.a, t.b),
                    std::abs(f.area - t.area) + 1e3 * std::abs(f.gap - t.gap));
      },
      [&](const TrueAxial& t, const AxialSeat& f) {
        const double allowed = c.within(t.a, t.b);
        const std::string what = describe(t);
        c.equal(what + ": gap", f.gap, t.gap, allowed);
        // A length off by `allowed` all round moves the area by the outline's length.
        c.equal(what + ": area", f.area, t.area, allowed * (10.0 + 20.0 * std::sqrt(t.area)));
        if (f.centre_line.has_value() != t.on_centre_line) {
          c.say(what + (t.on_centre_line ? ": lacks its centre line" : ": has a centre line"));
        }
      },
      describe,
      [&](const AxialSeat& f) {
        return fmt::format("{} against {}, gap {:.6g}, area {:.6g}", c.found_name(f.a),
                           c.found_name(f.b), f.gap, f.area);
      });
}

std::vector<std::size_t> match_occurrences(const Look& look, const Assembly& assembly) {
  std::vector<std::size_t> places(assembly.occurrences.size(), kMissing);
  std::vector<bool> used(look.model.occurrences.size(), false);
  for (std::size_t i = 0; i < places.size(); ++i) {
    const TrueOccurrence& wanted = assembly.occurrences[i];
    for (std::size_t k = 0; k < used.size(); ++k) {
      const Occurrence& found = look.model.occurrences[k];
      const Product& product = look.model.products[found.product];
      if (!used[k] && product.name == wanted.product && product.body == wanted.body &&
          same_place(found, product, wanted.at)) {
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
  Comparison c{look, assembly, tolerance, match_occurrences(look, assembly), {}};
  compare_counts(c);
  compare_radial(c);
  compare_axial(c);
  compare_tapers(c);
  compare_widths(c);
  compare_threads(c);
  compare_fouls(c);
  return c.lines;
}

}  // namespace spotblue::test
