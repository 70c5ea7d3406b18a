#include "spotblue/check/compare.hpp"

#include <fmt/format.h>

#include <cmath>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "check/judging/plan_cost.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

std::string leaf(const std::string& path) {
  const auto slash = path.rfind('/');
  return slash == std::string::npos ? path : path.substr(slash + 1);
}

std::string subject(const Finding& finding) {
  std::string text;
  for (const Reference& about : finding.about) {
    text += (text.empty() ? "" : " / ") + leaf(about.name);
  }
  return text;
}

// What a row is about by the first plan that has it, with sizes; `whole` with the places too.
std::string about_in_full(const ComparedRow& row, std::span<const CheckResult> plans, bool whole) {
  for (std::size_t plan = 0; plan < plans.size(); ++plan) {
    if (const auto& index = row.findings[plan]) {
      std::string text;
      for (const Reference& about : plans[plan].findings[*index].about) {
        text += (text.empty() ? "" : " / ") + (whole ? about.name : leaf(about.name));
      }
      return text;
    }
  }
  return row.about;
}

// Rows that would read alike get sizes, then places, then numbers, whatever tells them apart.
void tell_apart(std::vector<ComparedRow>& rows, const std::vector<std::size_t>& alike,
                std::span<const CheckResult> plans) {
  std::vector<std::string> names;
  for (const bool whole : {false, true}) {
    names.clear();
    for (const std::size_t row : alike) {
      names.push_back(about_in_full(rows[row], plans, whole));
    }
    if (std::set(names.begin(), names.end()).size() == names.size()) {
      break;
    }
  }
  std::map<std::string, int> met;
  for (std::size_t i = 0; i < alike.size(); ++i) {
    const int nth = ++met[names[i]];
    rows[alike[i]].about = nth == 1 ? names[i] : fmt::format("{} ({})", names[i], nth);
  }
}

std::vector<ComparedRow> rows_of(std::span<const CheckResult> plans) {
  std::vector<ComparedRow> rows;
  std::map<std::pair<std::string, std::string>, std::vector<std::size_t>> alike;
  for (std::size_t plan = 0; plan < plans.size(); ++plan) {
    std::map<std::pair<std::string, std::string>, std::size_t> met;
    const std::vector<Finding>& findings = plans[plan].findings;
    for (std::size_t i = 0; i < findings.size(); ++i) {
      const std::pair key{findings[i].kind, subject(findings[i])};
      const std::size_t nth = met[key]++;
      std::vector<std::size_t>& known = alike[key];
      if (nth == known.size()) {
        known.push_back(rows.size());
        rows.push_back({key.first, key.second,
                        std::vector<std::optional<std::size_t>>(plans.size(), std::nullopt)});
      }
      rows[known[nth]].findings[plan] = i;
    }
  }
  for (const auto& [key, known] : alike) {
    if (known.size() > 1) {
      tell_apart(rows, known, plans);
    }
  }
  return rows;
}

std::optional<std::size_t> best_of(const std::vector<PlanCost>& plans) {
  std::optional<std::size_t> best;
  const auto least = [&plans](std::size_t plan) {
    return plans[plan].least_margin ? plans[plan].least_margin->share : 0.0;
  };
  // What is still open may turn out either way: a plan that is decided goes first.
  const auto is_open = [&plans](std::size_t plan) { return plans[plan].outcomes.undecided > 0; };
  for (std::size_t plan = 0; plan < plans.size(); ++plan) {
    const bool clean = plans[plan].whole && plans[plan].outcomes.nonconforming == 0;
    const auto before = [&](std::size_t other) {
      return is_open(plan) != is_open(other) ? is_open(other) : least(plan) > least(other);
    };
    if (clean && (!best || before(*best))) {
      best = plan;
    }
  }
  return best;
}

}  // namespace

std::optional<double> margin_share(const Finding& finding) {
  const auto wanted = [&finding](const Quantity& of, RangeEnd end) -> std::optional<double> {
    const double* limit = nullptr;
    for (const Quantity& quantity : finding.wanted) {
      if (quantity.name == of.name && quantity.end == end &&
          dimension_of(quantity) == dimension_of(of)) {
        limit = number_in(quantity);
      }
    }
    return limit != nullptr ? std::optional(*limit) : std::nullopt;
  };
  std::optional<double> least;
  for (const Quantity& margin : finding.margin) {
    const double* const number = number_in(margin);
    if (number == nullptr) {
      continue;
    }
    std::optional<double> share;
    const auto lower = wanted(margin, RangeEnd::least);
    const auto upper = wanted(margin, RangeEnd::greatest);
    if (lower && upper && *upper > *lower) {
      share = *number / (0.5 * (*upper - *lower));
    } else if ((lower && *lower != 0.0) || (upper && *upper != 0.0)) {
      share = *number / std::abs(lower && *lower != 0.0 ? *lower : *upper);
    }
    if (share && (!least || *share < *least)) {
      least = share;
    }
  }
  return least;
}

Comparison compare_plans(std::span<const CheckResult> plans) {
  if (plans.size() < 2) {
    throw Error(ErrorCode::bad_input, {"", "plans"},
                fmt::format("need two plans or more, got {}", plans.size()),
                "name the job file of each plan");
  }
  Comparison comparison;
  comparison.rows = rows_of(plans);
  for (const CheckResult& plan : plans) {
    comparison.plans.push_back(cost_of(plan));
  }
  comparison.best = best_of(comparison.plans);
  return comparison;
}

}  // namespace spotblue
