// The three laws that judging a group keeps, on random groups: small changes are small, the picture
// does not matter, and what more is known opens nothing.

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "laws/random_stand.hpp"
#include "spotblue/check/judge_job.hpp"
#include "spotblue/group/group.hpp"
#include "support/chance.hpp"
#include "support/findings.hpp"
#include "support/value_parts.hpp"

namespace spotblue::test::group_laws_test {

// SPOTBLUE_LAWS groups are tried, or this many.
unsigned groups() {
  const char* count = std::getenv("SPOTBLUE_LAWS");
  return count == nullptr ? 300 : static_cast<unsigned>(std::atoi(count));
}

struct Judged {
  Outcome outcome = Outcome::undecided;
  std::map<std::string, double> numbers;  // by "found/clearance_min_mm"
};

using Judgement = std::map<std::string, Judged>;  // by kind and what it is about

Judgement judged(const Stand& stand, const Picture& picture = {}) {
  const StandJob made = drawn(stand, picture);
  Judgement all;
  for (const Finding& finding : judge_job(made.job, made.look)) {
    std::string key = finding.kind;
    std::vector<std::string> about;
    for (const Reference& one : finding.about) {
      std::string name = one.name;
      for (auto at = name.find(picture.names); !picture.names.empty() && at != std::string::npos;
           at = name.find(picture.names)) {
        name.erase(at, picture.names.size());
      }
      about.push_back(name);
    }
    std::ranges::sort(about);
    for (const std::string& one : about) {
      key += " | " + one;
    }
    Judged judged{finding.outcome, {}};
    const auto take = [&](const char* role, const std::vector<Quantity>& quantities) {
      for (const Quantity& quantity : quantities) {
        // A random draw is as good as its count, of loops equally tight any one governs, and where
        // things are goes with the picture.
        if (number_in(quantity) != nullptr && !quantity.name.starts_with("at_") &&
            quantity.name.find("by_lot") == std::string::npos &&
            quantity.name.find("root_sum_square") == std::string::npos) {
          judged.numbers[fmt::format("{}/{}", role, key_of(quantity))] = *number_in(quantity);
        }
      }
    };
    take("wanted", finding.wanted);
    take("found", finding.found);
    take("margin", finding.margin);
    for (int again = 2; !all.try_emplace(key, judged).second; ++again) {
      key += fmt::format(" ({})", again);
    }
  }
  return all;
}

bool near(double a, double b, double share) {
  return std::abs(a - b) <= share * std::max({1e-2, std::abs(a), std::abs(b)});
}

// Empty, or the first thing that differs by more than that share.
std::string difference(const Judgement& a, const Judgement& b, double share) {
  for (const auto& [key, one] : a) {
    const auto other = b.find(key);
    if (other == b.end()) {
      return key + " is gone";
    }
    if (one.outcome != other->second.outcome) {
      return fmt::format("{}: {} is {}", key, outcome_name(one.outcome),
                         outcome_name(other->second.outcome));
    }
    for (const auto& [name, value] : one.numbers) {
      // Of two near numbers the difference says little where they may be a little off.
      if (share > 1e-3 && name.starts_with("margin/")) {
        continue;
      }
      const auto same = other->second.numbers.find(name);
      if (same == other->second.numbers.end()) {
        return fmt::format("{}: {} is gone", key, name);
      }
      if (!near(value, same->second, share)) {
        return fmt::format("{}: {} {} is {}", key, name, value, same->second);
      }
    }
  }
  for (const auto& [key, one] : b) {
    if (!a.contains(key)) {
      return key + " is new";
    }
  }
  return {};
}

TEST(ThePictureDoesNotMatter, NorTheOrderPlaceChamfersOrNames) {
  for (unsigned seed = 0; seed < groups(); ++seed) {
    const Stand stand = random_stand(seed);
    const Judgement plain = judged(stand);
    Picture placed;
    placed.whole = rotated(unit(Point{1.0, 0.3 + 0.01 * seed, -0.4}), 0.2 + 0.37 * seed);
    placed.whole.rows[0][3] = 310.0;
    placed.whole.rows[2][3] = -95.0;
    Picture reversed;
    reversed.reversed = true;
    Picture chamfered;
    chamfered.chamfered = true;
    Picture named;
    named.names = "Old ";
    for (const auto& [what, picture] : {std::pair("placed", placed),
                                        {"reversed", reversed},
                                        {"chamfered", chamfered},
                                        {"named", named}}) {
      // A broken edge is less metal: what that changes is small.
      const double share = picture.chamfered ? 0.03 : 1e-6;
      EXPECT_EQ(difference(plain, judged(stand, picture), share), "")
          << "seed " << seed << ", " << what;
    }
  }
}

// What is measured lies within what was drawn with its limits or its uncertainty.
TEST(MoreIsKnown, WidensNoRangeAndOpensNothingThatWasDecided) {
  constexpr double kWithin = 0.001;
  for (unsigned seed = 0; seed < groups(); ++seed) {
    Chance chance(7000 + seed);
    Stand stand = random_stand(seed);
    const Judgement before = judged(stand);
    const Size which = static_cast<Size>(chance.below(gear_seat + 1));
    const bool made =
        stand.to_make && (which == bush_outside || which == bush_bore || which == gear_bore);
    const double half = !made ? 0.002 : which == bush_bore ? 0.01 : 0.008;
    stand.measured_within = kWithin;
    stand.measured.at(which) = stand.sizes.at(which) + chance.between(-1, 1) * (half - kWithin);
    const Judgement after = judged(stand);
    for (const auto& [key, one] : after) {
      const auto known = before.find(key);
      if (known == before.end()) {
        continue;
      }
      // What may still be made, and a promise that a measurement takes the place of, may fail; what
      // bears, and with it each bearing's load, goes by which seats are tight.
      if (key.starts_with("make to suit") || key.starts_with("plain bearing")) {
        continue;
      }
      EXPECT_FALSE(known->second.outcome == Outcome::conforming &&
                   one.outcome != known->second.outcome)
          << "seed " << seed << ", size " << which << ": " << key << " is "
          << outcome_name(one.outcome);
      EXPECT_FALSE(!made && one.outcome == Outcome::undecided &&
                   known->second.outcome != Outcome::undecided)
          << "seed " << seed << ", size " << which << ": " << key << " was "
          << outcome_name(known->second.outcome);
      for (const auto& [name, value] : one.numbers) {
        const auto was = known->second.numbers.find(name);
        if (!name.starts_with("found/") || was == known->second.numbers.end()) {
          continue;
        }
        const double slack = 1e-5 * std::max(1.0, std::abs(value));
        if (name.find("_min") != std::string::npos) {
          EXPECT_GE(value, was->second - slack)
              << "seed " << seed << ", size " << which << ": " << key << ", " << name;
        } else if (name.find("_max") != std::string::npos) {
          EXPECT_LE(value, was->second + slack)
              << "seed " << seed << ", size " << which << ": " << key << ", " << name;
        }
      }
    }
  }
}

// The number or the outcome that changes most between two judgements.
struct Change {
  std::string key, name;  // no name: an outcome
  double share = 0.0;
};

std::optional<Change> worst_change(const Judgement& a, const Judgement& b) {
  std::optional<Change> worst;
  for (const auto& [key, one] : a) {
    const auto other = b.find(key);
    if (other == b.end()) {
      continue;
    }
    for (const auto& [name, value] : one.numbers) {
      const auto same = other->second.numbers.find(name);
      if (same != other->second.numbers.end()) {
        const double share = std::abs(value - same->second) /
                             std::max({1e-2, std::abs(value), std::abs(same->second)});
        if (!worst || share > worst->share) {
          worst = Change{key, name, share};
        }
      }
    }
  }
  return worst;
}

double of(const Judgement& judgement, const Change& change, double otherwise) {
  const auto found = judgement.find(change.key);
  if (found == judgement.end() || !found->second.numbers.contains(change.name)) {
    return otherwise;
  }
  return found->second.numbers.at(change.name);
}

// What carries what, and how.
std::string parts_of_group(const Stand& stand) {
  const StandJob made = drawn(stand);
  const Group group = make_group(made.job, made.look);
  std::string text;
  for (const Joint& joint : group.joints) {
    text += fmt::format("{} {} {} {};", std::size_t{joint.a}, std::size_t{joint.b},
                        static_cast<int>(joint.kind), static_cast<int>(joint.certainty));
  }
  for (const Bearing& bearing : group.bearings) {
    text += fmt::format("{} {} {} {};", bearing.seat, static_cast<int>(bearing.certainty),
                        bearing.moment_nm.has_value(), bearing.doubt == Saying());
  }
  return text;
}

// Between two sizes the number that changes most has no step: halved often enough, the change
// goes.
TEST(SmallChangesAreSmall, NoNumberHasAStep) {
  constexpr int kHalvings = 22;
  for (unsigned seed = 0; seed < groups(); ++seed) {
    Chance chance(9000 + seed);
    Stand low = random_stand(seed);
    Stand high = low;
    const Size which = static_cast<Size>(chance.below(size_count));
    high.sizes.at(which) += chance.sign() * chance.between(0.001, 0.02);
    Judgement at_low = judged(low);
    Judgement at_high = judged(high);
    const std::optional<Change> change = worst_change(at_low, at_high);
    if (!change) {
      continue;
    }
    double below = of(at_low, *change, 0.0);
    double above = of(at_high, *change, 0.0);
    bool there = true;
    for (int i = 0; i < kHalvings && there; ++i) {
      Stand middle = low;
      middle.sizes.at(which) = 0.5 * (low.sizes.at(which) + high.sizes.at(which));
      const Judgement at_middle = judged(middle);
      const double between = of(at_middle, *change, std::nan(""));
      there = !std::isnan(between);
      if (std::abs(between - below) > std::abs(above - between)) {
        high = middle;
        above = between;
      } else {
        low = middle;
        below = between;
      }
    }
    // Rigid parts do step where one more bearing can be reached, or a seat begins to press.
    if (there && parts_of_group(low) != parts_of_group(high)) {
      continue;
    }
    EXPECT_TRUE(!there || near(below, above, 1e-3))
        << "seed " << seed << ", size " << which << " at " << low.sizes.at(which) << ": "
        << change->key << ", " << change->name << " steps from " << below << " to " << above;
  }
}

}  // namespace spotblue::test::group_laws_test
