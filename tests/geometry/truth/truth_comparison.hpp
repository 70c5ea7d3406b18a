#pragma once
/// @file
/// The parts of a comparison of a Look with the truth: who is who, what is equal, and one line for
/// whatever is not.

#include <fmt/format.h>

#include <cmath>
#include <functional>
#include <limits>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "geometry/truth/truth_match.hpp"

namespace spotblue::test {

/// How badly a pair goes together, or nothing where it does not.
inline std::optional<double> near(bool together, double misfit) {
  return together ? std::optional(misfit) : std::nullopt;
}

/// Lines are added by each of the checks below.
struct Comparison {
  const Look& look;
  const Assembly& assembly;
  Tolerance tolerance;
  std::vector<std::size_t> occurrences;  ///< by true occurrence
  std::vector<std::string> lines;

  void say(std::string line) { lines.push_back(std::move(line)); }
  std::string name(std::size_t true_occurrence) const {
    return fmt::format("{} (#{})", assembly.occurrences[true_occurrence].product, true_occurrence);
  }
  std::string found_name(const FeatureRef& feature) const {
    return look.model.occurrences[feature.occurrence].id + " / " + feature_id(look.model, feature);
  }
  bool is(const FeatureRef& feature, std::size_t true_occurrence) const {
    return feature.occurrence == occurrences[true_occurrence];
  }
  double within(std::size_t a, std::size_t b) const {
    return assembly.occurrences[a].fitted || assembly.occurrences[b].fitted ? tolerance.fitted
                                                                            : tolerance.exact;
  }
  void equal(const std::string& what, double found, double expected, double allowed) {
    if (!(std::abs(found - expected) <= allowed)) {
      say(fmt::format("{}: expected {:.12g}, found {:.12g} (off {:.3g}, allowed {:.3g})", what,
                      expected, found, found - expected, allowed));
    }
  }

  /// Each true one with the found one that `misfit` finds nearest; none where it has no value.
  template <class True, class Found>
  void pair_up(const char* kind, const std::vector<True>& all_true,
               const std::vector<Found>& all_found,
               const std::function<std::optional<double>(const True&, const Found&)>& misfit,
               const std::function<void(const True&, const Found&)>& check,
               const std::function<std::string(const True&)>& describe,
               const std::function<std::string(const Found&)>& describe_found) {
    std::vector<bool> used(all_found.size(), false);
    for (const True& seat : all_true) {
      std::size_t best = all_found.size();
      double least = std::numeric_limits<double>::infinity();
      for (std::size_t i = 0; i < all_found.size(); ++i) {
        const auto off = used[i] ? std::nullopt : misfit(seat, all_found[i]);
        if (off && *off < least) {
          best = i;
          least = *off;
        }
      }
      if (best < all_found.size()) {
        used[best] = true;
        check(seat, all_found[best]);
      } else {
        say(fmt::format("missing {}: {}", kind, describe(seat)));
      }
    }
    for (std::size_t i = 0; i < all_found.size(); ++i) {
      if (!used[i]) {
        say(fmt::format("invented {}: {}", kind, describe_found(all_found[i])));
      }
    }
  }
};

void compare_radial(Comparison& c);
void compare_axial(Comparison& c);
void compare_tapers(Comparison& c);
void compare_widths(Comparison& c);
void compare_threads(Comparison& c);
void compare_fouls(Comparison& c);

}  // namespace spotblue::test
