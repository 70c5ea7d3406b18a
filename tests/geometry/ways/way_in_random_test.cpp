// Random stacks of rings on stepped shafts: an order is found exactly when trying all of them finds
// one. The trial here works on the numbers the parts were made from and splits the parts in two in
// every way, one half going up or down.
#include <gmock/gmock.h>

#include <algorithm>
#include <map>
#include <random>

#include "spotblue/geometry/way_in.hpp"
#include "support/value_parts.hpp"

namespace spotblue::way_in_random_test {

/// A length of metal all round.
struct Piece {
  double from, to, inner, outer;
};
using Body = std::vector<Piece>;

Product product_of(const Body& body) {
  std::vector<test::SectionCorner> section;
  for (const Piece& piece : body) {
    section.push_back({piece.outer, piece.from});
    section.push_back({piece.outer, piece.to});
  }
  for (auto piece = body.rbegin(); piece != body.rend(); ++piece) {
    section.push_back({piece->inner, piece->to});
    section.push_back({piece->inner, piece->from});
  }
  return test::turned_part(section);
}

bool hits_going_up(const Body& moving, const Body& still) {
  for (const Piece& a : moving) {
    for (const Piece& b : still) {
      if (b.to > a.from && std::max(a.inner, b.inner) < std::min(a.outer, b.outer)) {
        return true;
      }
    }
  }
  return false;
}

class EveryOrder {
 public:
  explicit EveryOrder(const std::vector<Body>& bodies) : bodies_(bodies) {}

  /// Whether the parts whose bits are set come apart.
  bool comes_apart(unsigned set) {
    if ((set & (set - 1)) == 0) {
      return true;
    }
    const auto known = known_.find(set);
    if (known != known_.end()) {
      return known->second;
    }
    bool apart = false;
    for (unsigned half = (set - 1) & set; half != 0 && !apart; half = (half - 1) & set) {
      apart = !meets(half, set & ~half) && comes_apart(half) && comes_apart(set & ~half);
    }
    return known_[set] = apart;
  }

 private:
  [[nodiscard]] bool meets(unsigned moving, unsigned still) const {
    for (std::size_t a = 0; a < bodies_.size(); ++a) {
      for (std::size_t b = 0; b < bodies_.size(); ++b) {
        if (((moving >> a) & 1U) != 0 && ((still >> b) & 1U) != 0 &&
            hits_going_up(bodies_[a], bodies_[b])) {
          return true;
        }
      }
    }
    return false;
  }

  const std::vector<Body>& bodies_;
  std::map<unsigned, bool> known_;
};

/// A stepped shaft and rings, some of them stepped, that fit on it where they are.
std::vector<Body> random_stack(unsigned seed) {
  std::mt19937 chance(seed);
  const auto pick = [&](int low, int high) {
    return static_cast<double>(std::uniform_int_distribution<int>(low, high)(chance));
  };
  Body shaft;
  for (int i = 0; i < 6; ++i) {
    const double outer = pick(10, 12);
    if (!shaft.empty() && shaft.back().outer == outer) {
      shaft.back().to = 10.0 * (i + 1);
    } else {
      shaft.push_back({10.0 * i, 10.0 * (i + 1), 0.0, outer});
    }
  }
  const auto shaft_at = [&](double z) {
    return std::ranges::find_if(shaft, [&](const Piece& p) { return z > p.from && z < p.to; })
        ->outer;
  };
  std::vector<Body> bodies{shaft};
  const int rings = static_cast<int>(pick(2, 4));
  for (int i = 0; i < rings; ++i) {
    // One ring to a third of the shaft or two thirds, nested where they share it.
    const double place = pick(0, 5);
    const double inner = shaft_at(10.0 * place + 5.0) + 0.01;
    Body ring{{10.0 * place + 1.0, 10.0 * place + 9.0, inner, inner + pick(3, 6)}};
    const bool crowded = std::ranges::any_of(bodies, [&](const Body& other) {
      return other.front().inner > 0.0 && std::abs(other.front().from - ring.front().from) < 9.0;
    });
    if (!crowded) {
      bodies.push_back(ring);
    }
  }
  // A sleeve with two bores over all of it may trap the rings.
  if (pick(0, 1) > 0.0) {
    bodies.push_back({{0.0, 30.0, pick(14, 18) + 0.02, 30.0}, {30.0, 60.0, 19.02, 30.0}});
  }
  return bodies;
}

bool overlap_in_place(const std::vector<Body>& bodies) {
  for (std::size_t a = 0; a < bodies.size(); ++a) {
    for (std::size_t b = a + 1; b < bodies.size(); ++b) {
      for (const Piece& p : bodies[a]) {
        for (const Piece& q : bodies[b]) {
          if (p.from < q.to && q.from < p.to &&
              std::max(p.inner, q.inner) < std::min(p.outer, q.outer)) {
            return true;
          }
        }
      }
    }
  }
  return false;
}

TEST(RandomStacks, HaveAnOrderExactlyWhenTryingAllFindsOne) {
  int looked_at = 0;
  int apart = 0;
  for (unsigned seed = 1; seed <= 400; ++seed) {
    const std::vector<Body> bodies = random_stack(seed);
    if (bodies.size() < 2 || overlap_in_place(bodies)) {
      continue;
    }
    std::vector<std::pair<Product, Frame>> parts;
    Seats seats;
    seats.centre_lines = {{"centre line 1", {{0, 0, 0}, {0, 0, 1}}, {}}};
    for (const Body& body : bodies) {
      seats.centre_lines[0].occurrences.emplace_back(parts.size());
      parts.emplace_back(product_of(body), Frame{});
    }
    const std::vector<WayIn> ways = ways_in(test::placed_model(parts), seats, {});
    ASSERT_EQ(ways.size(), 1U);
    EXPECT_TRUE(ways[0].not_told.empty()) << "seed " << seed;
    const bool expected = EveryOrder(bodies).comes_apart((1U << bodies.size()) - 1U);
    EXPECT_EQ(ways[0].blocked.empty(), expected) << "seed " << seed;
    ++looked_at;
    apart += expected ? 1 : 0;
  }
  EXPECT_GT(looked_at, 150);
  EXPECT_GT(apart, 30);
  EXPECT_GT(looked_at - apart, 30);
}

}  // namespace spotblue::way_in_random_test
