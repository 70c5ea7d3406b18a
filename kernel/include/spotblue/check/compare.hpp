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

/// One thing that is judged in at least one of the plans.
struct ComparedRow {
  std::string kind;   ///< of the findings: "radial fit"
  std::string about;  ///< parts and features without sizes, which differ from plan to plan
  /// By plan: number of the finding among its findings; nothing where the plan has none such.
  std::vector<std::optional<std::size_t>> findings;
};

/// A finding's margin as a part of what it may lose: 1 in the middle of the wanted limits, 0 on a
/// limit; of one limit alone, the part of that limit which is left.
struct MarginShare {
  std::size_t finding = 0;
  double share = 0.0;
};

/// What a plan takes, as its job file declares it.
struct PlanCost {
  std::vector<std::string> new_parts;              ///< parts to make, one entry an occurrence
  std::vector<std::string> stock;                  ///< what they are cut from
  std::vector<std::string> cuts_in_irreplaceable;  ///< features cut in parts that have no second
  double removed_mm3 = 0.0;                        ///< metal those cuts take off
  std::vector<std::string> other_cuts;             ///< in other parts that exist
  std::size_t presses = 0;                         ///< press fits to be made, by press or by heat
  Outcome ways_in = Outcome::conforming;           ///< the worst of its way-in findings
  std::size_t ways_in_judged = 0;
  bool whole = true;  ///< all of it was looked at and judged: is_whole
  OutcomeCount outcomes;
  std::optional<MarginShare> least_margin;  ///< among the conforming findings
};

struct Comparison {
  std::vector<ComparedRow> rows;  ///< in the order of the first plan that has them
  std::vector<PlanCost> plans;
  /// Whole and without nonconforming finding, and of those the one with the widest least margin.
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
