#pragma once
/// @file
/// Plans for one repair side by side: what each makes of every seat, what it costs the parts that
/// cannot be replaced, and which one stands.

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/check/check.hpp"

namespace spotblue {

struct ComparedRow {
  std::string kind;
  std::string about;
  std::vector<std::optional<std::size_t>> findings;
};
constexpr void describe(auto& fields, const ComparedRow*) {
  fields.value("ComparedRow", "One thing that is judged in at least one of the plans.")
      .member("kind", &ComparedRow::kind, "of the findings: \"radial fit\"")
      .member("about", &ComparedRow::about,
              "parts and features without sizes, which differ from plan to plan")
      .member("findings", &ComparedRow::findings,
              "by plan: number of the finding among its findings; nothing where the plan has none "
              "such");
}

struct MarginShare {
  std::size_t finding = 0;
  double share = 0.0;
};
constexpr void describe(auto& fields, const MarginShare*) {
  fields
      .value("MarginShare",
             "A finding's margin as a part of what it may lose: 1 in the middle of the wanted "
             "limits, 0 on a limit; of one limit alone, the part of that limit which is left.")
      .member("finding", &MarginShare::finding, "its number, from 0")
      .member("share", &MarginShare::share, "1 in the middle of the limits, 0 on one");
}

struct PlanCost {
  std::vector<std::string> new_parts;
  std::vector<std::string> stock;
  std::vector<std::string> cuts_in_irreplaceable;
  double removed_mm3 = 0.0;
  std::vector<std::string> other_cuts;
  std::size_t presses = 0;
  Outcome ways_in = Outcome::conforming;
  std::size_t ways_in_judged = 0;
  bool whole = true;
  OutcomeCount outcomes;
  std::optional<MarginShare> least_margin;
};
constexpr void describe(auto& fields, const PlanCost*) {
  fields.value("PlanCost", "What a plan takes, as its job file declares it.")
      .member("new_parts", &PlanCost::new_parts, "parts to make, one entry an occurrence")
      .member("stock", &PlanCost::stock, "what they are cut from")
      .member("cuts_in_irreplaceable", &PlanCost::cuts_in_irreplaceable,
              "features cut in parts that have no second")
      .member("removed_mm3", &PlanCost::removed_mm3, "metal those cuts take off")
      .member("other_cuts", &PlanCost::other_cuts, "in other parts that exist")
      .member("presses", &PlanCost::presses, "press fits to be made, by press or by heat")
      .member("ways_in", &PlanCost::ways_in, "the worst of its way-in findings")
      .member("ways_in_judged", &PlanCost::ways_in_judged, "number")
      .member("whole", &PlanCost::whole, "all of it arrived, was looked at and judged: is_whole")
      .member("outcomes", &PlanCost::outcomes, "how many of each")
      .member("least_margin", &PlanCost::least_margin, "among the conforming findings, or None");
}

struct Comparison {
  std::vector<ComparedRow> rows;  ///< in the order of the first plan that has them
  std::vector<PlanCost> plans;
  /// Whole and without nonconforming finding; of those one without open findings before one with
  /// any, then the one with the widest least margin.
  std::optional<std::size_t> best;
};

/// Puts plans side by side; nothing is weighed against anything else.
///
/// A finding of one plan belongs to that of another when kind, parts and kinds of feature agree;
/// where several do, the first to the first. Metal removed is the declared cuts' own: a ring for a
/// diameter over the feature's length, area times depth for a face.
/// @throws Error bad_input with fewer than two plans; as judge_job for a cut that names no feature.
[[nodiscard]] SPOTBLUE_EXPORT Comparison compare_plans(std::span<const CheckResult> plans);

/// The share of the limits that is left to a finding; nothing when it has no such margin.
[[nodiscard]] SPOTBLUE_EXPORT std::optional<double> margin_share(const Finding& finding);

}  // namespace spotblue
