// Properties of windows on random trees of demands, with fixed seeds.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstddef>
#include <string>
#include <vector>

#include "spotblue/mechanics/make_to_suit.hpp"
#include "support/chance.hpp"

namespace spotblue::make_to_suit_random_test {

using test::Chance;
using ::testing::IsEmpty;

constexpr double kNear = 1e-8;

Limits mm(double lower, double upper) { return {Length::mm(lower), Length::mm(upper)}; }

SuitSize size(const std::string& name, double drawn, double uncertainty) {
  return {name, Length::mm(drawn), std::nullopt, "", Length::mm(uncertainty)};
}
SuitTerm made(std::size_t index, double factor) { return {SuitOf::to_make, index, factor}; }
SuitTerm known(std::size_t index, double factor) { return {SuitOf::known, index, factor}; }

// A tree: each size after the first shares one demand with an earlier one; some also have a mate
// that exists. Demands are made round true sizes, so that they can be met.
struct Tree {
  SuitProblem problem;
  std::vector<double> mates;  // true sizes of the known ones
};

Tree random_tree(Chance& chance) {
  Tree tree;
  const std::size_t count = 2 + chance.below(4);
  std::vector<double> truth;
  for (std::size_t i = 0; i < count; ++i) {
    truth.push_back(chance.between(10.0, 40.0));
    tree.problem.sizes.push_back(size("s" + std::to_string(i), truth[i], 0.001));
    const double room = chance.between(0.03, 0.09);
    if (i > 0) {
      const std::size_t other = chance.below(i);
      const double factor = chance.sign() * chance.between(0.3, 1.2);
      const double sum = truth[i] + factor * truth[other];
      const double shift = chance.between(0.3, 0.7) * room;
      tree.problem.demands.push_back({"d" + std::to_string(i),
                                      {made(i, 1.0), made(other, factor)},
                                      {},
                                      mm(sum - shift, sum + room - shift)});
    }
    if (i == 0 || chance.in(0.5)) {
      const double mate = chance.between(10.0, 40.0);
      tree.mates.push_back(mate);
      tree.problem.known.push_back({"k", mm(mate - 0.002, mate + 0.002)});
      tree.problem.demands.push_back(
          {"m" + std::to_string(i),
           {made(i, -1.0), known(tree.problem.known.size() - 1, 1.0)},
           {},
           mm(mate - truth[i] - 0.5 * room, mate - truth[i] + 0.5 * room)});
    }
  }
  return tree;
}

// The size is made and measured: it becomes a known one.
SuitProblem with_made(SuitProblem problem, std::size_t index, double reading) {
  const Length half = problem.sizes[index].uncertainty;
  const Length value = Length::mm(reading);
  problem.known.push_back({problem.sizes[index].name, {value - half, value + half}});
  for (SuitDemand& demand : problem.demands) {
    for (SuitTerm& term : demand.terms) {
      if (term.of == SuitOf::to_make && term.index == index) {
        term = known(problem.known.size() - 1, term.factor);
      }
    }
  }
  return problem;
}

TEST(MakeToSuit, MakingAndMeasuringInAnyOrderNarrowsTheRestAndNeverConflicts) {
  Chance chance(20261125);
  int made_sizes = 0;
  for (int round = 0; round < 200; ++round) {
    SuitProblem problem = random_tree(chance).problem;
    std::vector<std::size_t> open(problem.sizes.size());
    for (std::size_t i = 0; i < open.size(); ++i) {
      open[i] = i;
    }
    SuitPlan plan = make_to_suit(problem);
    while (!open.empty()) {
      ASSERT_THAT(plan.conflicts, IsEmpty()) << round;
      const std::size_t pick = chance.below(open.size());
      const std::size_t index = open[pick];
      const SuitWindow window = plan.windows[index].value();
      const Limits accept = window.accept.value();
      // Readings anywhere in the window that proves it, and, made first, anywhere it may be.
      const Limits range = chance.in(0.5)
                               ? accept
                               : Limits{window.first->lower + problem.sizes[index].uncertainty,
                                        window.first->upper - problem.sizes[index].uncertainty};
      problem = with_made(problem, index, chance.between(range.lower.in_mm(), range.upper.in_mm()));
      open.erase(open.begin() + static_cast<std::ptrdiff_t>(pick));
      const SuitPlan next = make_to_suit(problem);
      for (const std::size_t other : open) {
        ASSERT_TRUE(next.windows[other].has_value()) << round;
        EXPECT_GE(next.windows[other]->first->lower.in_mm(),
                  plan.windows[other]->first->lower.in_mm() - kNear);
        EXPECT_LE(next.windows[other]->first->upper.in_mm(),
                  plan.windows[other]->first->upper.in_mm() + kNear);
      }
      plan = next;
      ++made_sizes;
    }
  }
  EXPECT_GT(made_sizes, 400);
}

TEST(MakeToSuit, AnySizesWithinTheirWindowsKeepEveryDemand) {
  Chance chance(5);
  for (int round = 0; round < 300; ++round) {
    const SuitProblem problem = random_tree(chance).problem;
    const SuitPlan plan = make_to_suit(problem);
    for (int draw = 0; draw < 20; ++draw) {
      const auto end = [&chance](Limits limits) {
        return chance.in(0.5) ? limits.lower.in_mm() : limits.upper.in_mm();
      };
      std::vector<double> sizes;
      for (const auto& window : plan.windows) {
        sizes.push_back(end(window.value().hold));
      }
      std::vector<double> mates;
      for (const SuitKnown& mate : problem.known) {
        mates.push_back(end(mate.limits));
      }
      for (const SuitDemand& demand : problem.demands) {
        double sum = 0.0;
        for (const SuitTerm& term : demand.terms) {
          sum += term.factor * (term.of == SuitOf::to_make ? sizes : mates)[term.index];
        }
        EXPECT_GE(sum, demand.wanted.lower.in_mm() - kNear) << demand.name;
        EXPECT_LE(sum, demand.wanted.upper.in_mm() + kNear) << demand.name;
      }
    }
  }
}

}  // namespace spotblue::make_to_suit_random_test
