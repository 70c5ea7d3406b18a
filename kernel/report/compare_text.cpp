#include "spotblue/report/compare_text.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <functional>
#include <string_view>
#include <vector>

#include "report/finding_text.hpp"
#include "report/text_paint.hpp"
#include "report/text_table.hpp"
#include "report/text_words.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

class CompareText {
 public:
  CompareText(const Comparison& comparison, std::span<const CheckResult> plans,
              const TextStyle& style)
      : comparison_(comparison), plans_(plans), style_(style), paint_(style.colour) {}

  [[nodiscard]] std::string text() const {
    return fitted_text(heading() + findings() + costs() + verdict() + in_short(), style_.width);
  }

 private:
  [[nodiscard]] std::string heading() const {
    std::string text = paint_.heading("Plans side by side") +
                       fmt::format("; lengths in {}, margins positive inside the limits\n",
                                   unit_word(style_.unit));
    for (std::size_t plan = 0; plan < plans_.size(); ++plan) {
      text += fmt::format("  {}  {}\n", number(plan), title(plan));
    }
    return text + '\n';
  }

  [[nodiscard]] static std::string number(std::size_t plan) {
    return fmt::format("plan {}", plan + 1);
  }

  [[nodiscard]] std::string title(std::size_t plan) const {
    const Job& job = plans_[plan].job;
    return job.title.empty() ? shown_text(job.file)
                             : fmt::format("{} ({})", shown_text(job.title), shown_text(job.file));
  }

  [[nodiscard]] const Finding* finding_of(const ComparedRow& row, std::size_t plan) const {
    const auto& at = row.findings[plan];
    return at ? &plans_[plan].findings.at(*at) : nullptr;
  }

  [[nodiscard]] std::string cell(const ComparedRow& row, std::size_t plan) const {
    const Finding* const finding = finding_of(row, plan);
    if (finding == nullptr) {
      return "-";
    }
    const std::string margin = margin_text(*finding, style_.unit);
    return fmt::format("{}{}{}", outcome_name(finding->outcome), margin.empty() ? "" : " ", margin);
  }

  [[nodiscard]] bool is_shown(const ComparedRow& row, const std::vector<std::string>& cells) const {
    const bool differs = std::any_of(cells.begin(), cells.end(), [&cells](const std::string& text) {
      return text != cells.front();
    });
    const Finding* const first = finding_of(row, 0);
    return differs || first == nullptr || first->outcome != Outcome::conforming;
  }

  [[nodiscard]] std::vector<Column> columns(std::string_view first) const {
    std::vector<Column> columns{{std::string(first)}};
    for (std::size_t plan = 0; plan < plans_.size(); ++plan) {
      columns.push_back({number(plan)});
    }
    return columns;
  }

  [[nodiscard]] std::string findings() const {
    TextTable table(columns("finding"));
    std::size_t alike = 0;
    for (const ComparedRow& row : comparison_.rows) {
      std::vector<std::string> cells;
      for (std::size_t plan = 0; plan < plans_.size(); ++plan) {
        cells.push_back(cell(row, plan));
      }
      if (is_shown(row, cells)) {
        cells.insert(cells.begin(), fmt::format("{}: {}", row.kind, shown_text(row.about)));
        table.add(cells);
      } else {
        ++alike;
      }
    }
    return paint_.heading("Findings that differ or do not conform") + '\n' +
           table.text(kTableIndent, style_.width) +
           fmt::format("  {} alike and conforming in every plan: not shown\n\n",
                       counted(alike, "finding", "findings"));
  }

  using CostCell = std::function<std::string(const PlanCost&, std::size_t)>;

  void add_cost(TextTable& table, const std::string& name, const CostCell& cell) const {
    std::vector<std::string> cells{name};
    for (std::size_t plan = 0; plan < plans_.size(); ++plan) {
      cells.push_back(cell(comparison_.plans[plan], plan));
    }
    table.add(cells);
  }

  [[nodiscard]] std::string list(const std::vector<std::string>& names) const {
    std::vector<std::string> spelt;
    spelt.reserve(names.size());
    for (const std::string& name : names) {
      spelt.push_back(shown_text(name));
    }
    return names.empty() ? "none" : fmt::format("{}: {}", names.size(), fmt::join(spelt, ", "));
  }

  [[nodiscard]] std::string costs() const {
    TextTable table(columns("what it takes"));
    add_cost(table, "new parts",
             [this](const PlanCost& c, std::size_t) { return list(c.new_parts); });
    add_cost(table, "stock", [this](const PlanCost& c, std::size_t) { return list(c.stock); });
    add_cost(table, "cuts in irreplaceable parts",
             [this](const PlanCost& c, std::size_t) { return list(c.cuts_in_irreplaceable); });
    add_cost(
        table, fmt::format("metal off them, {}3", unit_name(style_.unit)),
        [this](const PlanCost& c, std::size_t) { return volume_cell(c.removed_mm3, style_.unit); });
    add_cost(table, "cuts in other parts that exist",
             [this](const PlanCost& c, std::size_t) { return list(c.other_cuts); });
    add_cost(table, "press or heat fits to make",
             [](const PlanCost& c, std::size_t) { return fmt::format("{}", c.presses); });
    add_cost(table, "ways in", [](const PlanCost& c, std::size_t) {
      return c.ways_in_judged == 0 ? "not judged" : std::string(outcome_name(c.ways_in));
    });
    for (const Outcome outcome :
         {Outcome::nonconforming, Outcome::undecided, Outcome::conforming}) {
      add_cost(
          table, std::string(outcome_name(outcome)), [outcome](const PlanCost& c, std::size_t) {
            return fmt::format("{}", outcome == Outcome::conforming      ? c.outcomes.conforming
                                     : outcome == Outcome::nonconforming ? c.outcomes.nonconforming
                                                                         : c.outcomes.undecided);
          });
    }
    add_cost(table, "least margin", [this](const PlanCost& c, std::size_t plan) {
      return c.least_margin ? margin_words(*c.least_margin, plan) : std::string("none");
    });
    return paint_.heading("What each plan takes, as its job file declares it") + '\n' +
           table.text(kTableIndent, style_.width) + '\n';
  }

  [[nodiscard]] std::string margin_words(const MarginShare& margin, std::size_t plan) const {
    const Finding& finding = plans_[plan].findings.at(margin.finding);
    return fmt::format("{:.0f} % of its limits ({}, {})", 100.0 * margin.share,
                       margin_text(finding, style_.unit), finding.id);
  }

  // What stands against each plan, and what would have to change for another to come first.
  [[nodiscard]] std::string verdict() const {
    if (!comparison_.best) {
      const bool open = std::ranges::any_of(comparison_.plans, [](const PlanCost& plan) {
        return !plan.whole && plan.outcomes.nonconforming == 0;
      });
      return fmt::format("No plan is {}free of nonconforming findings; {}\n",
                         open ? "known to be " : "", in_the_way());
    }
    const std::size_t best = *comparison_.best;
    const PlanCost& cost = comparison_.plans[best];
    std::string text = fmt::format("{} has no nonconforming finding", title(best));
    if (cost.least_margin) {
      text +=
          fmt::format(" and the widest least margin, {}", margin_words(*cost.least_margin, best));
    }
    if (cost.outcomes.undecided > 0) {
      text += fmt::format(
          "; {} undecided stay open",
          counted(static_cast<std::size_t>(cost.outcomes.undecided), "finding", "findings"));
    }
    return text + "; " + in_the_way() + '\n';
  }  // What each plan costs in one line, and by what the choice is made.
  [[nodiscard]] std::string in_short() const {
    std::vector<std::string> plans;
    for (std::size_t plan = 0; plan < plans_.size(); ++plan) {
      const PlanCost& cost = comparison_.plans[plan];
      const std::size_t cuts = cost.cuts_in_irreplaceable.size() + cost.other_cuts.size();
      plans.push_back(
          fmt::format("{} takes {} {}3 off irreplaceable parts, {} and {}", number(plan),
                      volume_cell(cost.removed_mm3, style_.unit), unit_name(style_.unit),
                      counted(cost.new_parts.size(), "new part", "new parts"),
                      counted(cuts + cost.presses, "cut or press fit", "cuts and press fits")));
    }
    return fmt::format("{}; {}\n", fmt::join(plans, "; "), decided_by());
  }

  [[nodiscard]] std::string decided_by() const {
    if (!comparison_.best) {
      return "not decided: each has something nonconforming or was not judged whole";
    }
    const auto all = [this](const auto& is) {
      for (std::size_t plan = 0; plan < plans_.size(); ++plan) {
        if (plan != *comparison_.best && !is(comparison_.plans[plan])) {
          return false;
        }
      }
      return true;
    };
    const auto fails = [](const PlanCost& plan) {
      return !plan.whole || plan.outcomes.nonconforming > 0;
    };
    const bool open = comparison_.plans[*comparison_.best].outcomes.undecided > 0;
    const auto is_open = [&](const PlanCost& plan) {
      return fails(plan) || (!open && plan.outcomes.undecided > 0);
    };
    return fmt::format("{} comes first {}", number(*comparison_.best),
                       all(fails)     ? "as the only one with nothing nonconforming"
                       : all(is_open) ? "as the only one with nothing open"
                                      : "by its least margin");
  }

  [[nodiscard]] std::string in_the_way() const {
    std::vector<std::string> reasons;
    for (std::size_t plan = 0; plan < plans_.size(); ++plan) {
      if (comparison_.best == plan) {
        continue;
      }
      const std::string ids = ids_of(plan, Outcome::nonconforming);
      if (!ids.empty()) {
        reasons.push_back(fmt::format("{} would need {} put right", number(plan), ids));
      } else if (!comparison_.plans[plan].whole) {
        reasons.push_back(
            fmt::format("{} {}", number(plan),
                        plans_[plan].look.model.not_compared.empty()
                            ? "was not looked at whole and would need more time or memory"
                            : "did not arrive whole and would need its whole model"));
      } else if (comparison_.plans[plan].outcomes.undecided > 0 && comparison_.best &&
                 comparison_.plans[*comparison_.best].outcomes.undecided == 0) {
        reasons.push_back(fmt::format("{} has {} open: {}", number(plan),
                                      comparison_.plans[plan].outcomes.undecided,
                                      ids_of(plan, Outcome::undecided)));
      } else if (const auto& margin = comparison_.plans[plan].least_margin; margin) {
        reasons.push_back(fmt::format(
            "{} would come first with more margin than that in {}, now "
            "{}",
            number(plan), plans_[plan].findings[margin->finding].id, margin_words(*margin, plan)));
      }
    }
    return fmt::format("{}", fmt::join(reasons, "; "));
  }

  [[nodiscard]] std::string ids_of(std::size_t plan, Outcome outcome) const {
    std::vector<std::string> ids;
    for (const Finding& finding : plans_[plan].findings) {
      if (finding.outcome == outcome) {
        ids.push_back(finding.id);
      }
    }
    return fmt::format("{}", fmt::join(ids, ", "));
  }

  const Comparison& comparison_;
  std::span<const CheckResult> plans_;
  const TextStyle& style_;
  Paint paint_;
};

}  // namespace

std::string compare_text(const Comparison& comparison, std::span<const CheckResult> plans,
                         const TextStyle& style) {
  return CompareText(comparison, plans, style).text();
}

}  // namespace spotblue
