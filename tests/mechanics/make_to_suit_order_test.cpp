// Making the sizes of random plans one by one, whatever the demands share, with fixed seeds.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "spotblue/mechanics/make_to_suit.hpp"
#include "support/chance.hpp"

namespace spotblue::make_to_suit_order_test {

using test::Chance;

constexpr double kNear = 2e-7;  // mm
constexpr double kNanometre = 1e-6;
constexpr int kPlans = 3000;

Limits mm(double lower, double upper) { return {Length::mm(lower), Length::mm(upper)}; }

Limits around(double middle, double half) { return mm(middle - half, middle + half); }

// Demands on any sizes, several on the same ones too, made round true sizes so that they can hold.
struct Plan {
  SuitProblem problem;
  std::vector<double> mates;  // true sizes of the known ones
};

void add_demand(Chance& chance, Plan& plan, const std::vector<double>& truth) {
  SuitDemand demand;
  demand.name = "d" + std::to_string(plan.problem.demands.size());
  double sum = 0.0;
  const std::size_t terms = 1 + chance.below(3);
  std::vector<std::size_t> of(truth.size());
  for (std::size_t i = 0; i < of.size(); ++i) {
    of[i] = i;
  }
  for (std::size_t i = 0; i < std::min(terms, truth.size()); ++i) {
    std::swap(of[i], of[i + chance.below(of.size() - i)]);
    const double factor = chance.sign() * (chance.in(0.5) ? 1.0 : chance.between(0.3, 1.2));
    demand.terms.push_back({SuitOf::to_make, of[i], factor});
    sum += factor * truth[of[i]];
  }
  if (terms == 1 || chance.in(0.3)) {
    const double mate = chance.between(10.0, 40.0);
    plan.mates.push_back(mate);
    plan.problem.known.push_back({"k", around(mate, chance.between(0.0, 0.003))});
    demand.terms.push_back({SuitOf::known, plan.problem.known.size() - 1, -1.0});
    sum -= mate;
  }
  const double room = chance.between(0.02, 0.09);
  const double below = chance.between(0.2, 0.8) * room;
  demand.wanted = mm(sum - below, sum + room - below);
  plan.problem.demands.push_back(std::move(demand));
}

Plan random_plan(Chance& chance) {
  Plan plan;
  std::vector<double> truth;
  const std::size_t count = 2 + chance.below(4);
  for (std::size_t i = 0; i < count; ++i) {
    truth.push_back(chance.between(10.0, 40.0));
    SuitSize size;
    size.name = "s" + std::to_string(i);
    size.drawn = Length::mm(truth[i] + chance.between(-0.01, 0.01));
    size.uncertainty = Length::mm(chance.in(0.2) ? 0.0 : chance.between(0.0005, 0.004));
    if (chance.in(0.3)) {
      size.own = around(truth[i], chance.between(0.01, 0.04));
      size.own_by = "own";
    }
    plan.problem.sizes.push_back(size);
  }
  for (std::size_t i = 0; i < 1 + chance.below(count + 2); ++i) {
    add_demand(chance, plan, truth);
  }
  return plan;
}

// As often at an end as between them; a nanometre within, where rounding is nothing.
double somewhere(Chance& chance, Limits limits) {
  const double inside = std::min(kNanometre, 0.5 * limits.width().in_mm());
  const double low = limits.lower.in_mm() + inside;
  const double high = limits.upper.in_mm() - inside;
  return chance.in(0.6) ? (chance.in(0.5) ? low : high) : chance.between(low, high);
}

// The demands that speak of one size, or all.
void expect_kept(const Plan& plan, const std::vector<double>& sizes,
                 const std::vector<double>& mates, std::optional<std::size_t> of = std::nullopt) {
  const auto speaks = [of](const SuitDemand& demand) {
    return !of || std::any_of(demand.terms.begin(), demand.terms.end(), [of](const SuitTerm& term) {
      return term.of == SuitOf::to_make && term.index == *of;
    });
  };
  for (const SuitDemand& demand : plan.problem.demands) {
    double sum = demand.constant.in_mm();
    for (const SuitTerm& term : demand.terms) {
      sum += term.factor * (term.of == SuitOf::to_make ? sizes : mates)[term.index];
    }
    if (speaks(demand)) {
      EXPECT_GE(sum, demand.wanted.lower.in_mm() - kNear) << demand.name;
      EXPECT_LE(sum, demand.wanted.upper.in_mm() + kNear) << demand.name;
    }
  }
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const auto& own = plan.problem.sizes[i].own;
    if (own && (!of || of == i)) {
      EXPECT_GE(sizes[i], own->lower.in_mm() - kNear) << i;
      EXPECT_LE(sizes[i], own->upper.in_mm() + kNear) << i;
    }
  }
}

std::vector<double> drawn_mates(Chance& chance, const Plan& plan) {
  std::vector<double> mates;
  for (const SuitKnown& mate : plan.problem.known) {
    mates.push_back(somewhere(chance, mate.limits));
  }
  return mates;
}

// The size is made and measured: it becomes a known one.
SuitProblem with_made(SuitProblem problem, std::size_t index, double reading) {
  const Length half = problem.sizes[index].uncertainty;
  problem.known.push_back(
      {problem.sizes[index].name, {Length::mm(reading) - half, Length::mm(reading) + half}});
  problem.sizes[index].own.reset();
  for (SuitDemand& demand : problem.demands) {
    for (SuitTerm& term : demand.terms) {
      if (term.of == SuitOf::to_make && term.index == index) {
        term = {SuitOf::known, problem.known.size() - 1, term.factor};
      }
    }
  }
  return problem;
}

bool all_have_windows(const SuitPlan& plan) {
  return std::all_of(plan.windows.begin(), plan.windows.end(),
                     [](const auto& window) { return window.has_value(); });
}

TEST(MakeToSuitInOrder, SizesAnywhereInTheirWindowsKeepEveryDemand) {
  Chance chance(20261203);
  int judged = 0;
  for (int round = 0; round < kPlans && !::testing::Test::HasFailure(); ++round) {
    SCOPED_TRACE(round);
    const Plan plan = random_plan(chance);
    const SuitPlan made = make_to_suit(plan.problem);
    if (!all_have_windows(made)) {
      continue;
    }
    ++judged;
    std::vector<double> sizes;
    for (const auto& window : made.windows) {
      sizes.push_back(somewhere(chance, window->hold));
    }
    expect_kept(plan, sizes, drawn_mates(chance, plan));
  }
  EXPECT_GT(judged, kPlans / 4);
}

TEST(MakeToSuitInOrder, WhatIsMadeLastKeepsItsDemandsWhenTheOthersAreAtTheirTargets) {
  Chance chance(20261201);
  int judged = 0;
  for (int round = 0; round < kPlans && !::testing::Test::HasFailure(); ++round) {
    SCOPED_TRACE(round);
    const Plan plan = random_plan(chance);
    const SuitPlan made = make_to_suit(plan.problem);
    if (!all_have_windows(made)) {
      continue;
    }
    for (std::size_t last = 0; last < made.windows.size(); ++last) {
      std::vector<double> sizes;
      for (std::size_t i = 0; i < made.windows.size(); ++i) {
        const SuitWindow& window = *made.windows[i];
        const double off = window.accept ? plan.problem.sizes[i].uncertainty.in_mm() : 0.0;
        sizes.push_back(
            somewhere(chance, i == last ? window.last : around(window.target.in_mm(), off)));
      }
      ++judged;
      expect_kept(plan, sizes, drawn_mates(chance, plan), last);
    }
  }
  EXPECT_GT(judged, kPlans / 2);
}

// What is still to make, and what has been made so far.
struct Bench {
  SuitProblem problem;
  std::vector<std::size_t> open;
  std::vector<double> sizes;  // true ones, of those that are made
};

// Makes one size by its window: a reading that proves it or, where there is room for all to be
// measured, anywhere that it may be when made first. False where measuring can not prove any.
bool make_one(Chance& chance, const SuitPlan& plan, Bench& bench) {
  const std::size_t pick = chance.below(bench.open.size());
  const std::size_t index = bench.open[pick];
  const SuitWindow& window = *plan.windows[index];
  if (!window.accept) {
    return false;
  }
  const Length half = bench.problem.sizes[index].uncertainty;
  const bool room = std::all_of(bench.open.begin(), bench.open.end(), [&](std::size_t other) {
    return plan.windows[other]->accept.has_value();
  });
  const bool first = room && window.first && chance.in(0.5);
  const double reading =
      somewhere(chance, first ? Limits{window.first->lower + half, window.first->upper - half}
                              : *window.accept);
  bench.sizes[index] = somewhere(chance, around(reading, half.in_mm()));
  bench.problem = with_made(std::move(bench.problem), index, reading);
  bench.open.erase(bench.open.begin() + static_cast<std::ptrdiff_t>(pick));
  return true;
}

TEST(MakeToSuitInOrder, MakingOneAfterAnotherKeepsEveryDemandAndLosesNoWindow) {
  Chance chance(20261202);
  int made = 0;
  for (int round = 0; round < kPlans && !::testing::Test::HasFailure(); ++round) {
    SCOPED_TRACE(round);
    const Plan plan = random_plan(chance);
    SuitPlan asked = make_to_suit(plan.problem);
    if (!all_have_windows(asked)) {
      continue;
    }
    Bench bench{plan.problem, std::vector<std::size_t>(asked.windows.size()),
                std::vector<double>(asked.windows.size())};
    std::iota(bench.open.begin(), bench.open.end(), std::size_t{0});
    while (!bench.open.empty() && make_one(chance, asked, bench)) {
      asked = make_to_suit(bench.problem);
      for (const SuitConflict& conflict : asked.conflicts) {
        ADD_FAILURE() << conflict.first << " and " << conflict.second << " miss each other by "
                      << conflict.short_by.in_mm() << " mm";
      }
      for (const std::size_t index : bench.open) {
        ASSERT_TRUE(asked.windows[index].has_value()) << "size " << index;
      }
    }
    if (bench.open.empty()) {
      ++made;
      expect_kept(plan, bench.sizes, drawn_mates(chance, plan));
    }
  }
  EXPECT_GT(made, kPlans / 8);
}

}  // namespace spotblue::make_to_suit_order_test
