#include "check/judging/plan_cost.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "check/findings/unseen_findings.hpp"
#include "check/fits/fit_verdict.hpp"
#include "group/cuts/shaft_cut.hpp"
#include "group/match/declared.hpp"

namespace spotblue {
namespace {

double length_of(const Cylinder& cylinder) {
  double length = 0.0;
  for (const auto& [from, to] : cylinder.intervals) {
    length += to - from;
  }
  return length;
}

// Metal between the surface as it was and as it will be.
double removed_mm3(const DeclaredJob& declared, const FeatureRef& feature, const Cut& cut) {
  const Model& model = declared.look->model;
  const Product& product = model.products.at(model.occurrences.at(feature.occurrence).product);
  if (feature.kind == FeatureKind::plane) {
    if (!cut.depth) {
      throw Error(ErrorCode::bad_input, entry_place(*declared.job, "cuts", cut.line),
                  cut.feature + " is faced, but how much comes off is missing", "give \"depth\"");
    }
    return std::abs(area(product.planes.at(feature.index).outline)) * cut.depth->in_mm();
  }
  const Cylinder& cylinder = product.cylinders.at(feature.index);
  const double before = size_before(*declared.job, cut).in_mm();
  const double ring =
      0.25 * std::numbers::pi * std::abs(before * before - cylinder.diameter * cylinder.diameter);
  return ring * length_of(cylinder) * cylinder.coverage / (2.0 * std::numbers::pi);
}

void add_cuts(const DeclaredJob& declared, PlanCost& cost) {
  for (const Cut& cut : declared.job->cuts) {
    const NamedFeature named = declared.names.feature(cut.feature, {"cuts", "feature", cut.line});
    for (const FeatureRef& feature : named.refs) {
      const JobPart* const part = declared.parts.at(feature.occurrence);
      if (part == nullptr || part->state == PartState::to_make) {
        continue;
      }
      if (part->irreplaceable) {
        cost.cuts_in_irreplaceable.push_back(cut.feature);
        cost.removed_mm3 += removed_mm3(declared, feature, cut);
      } else {
        cost.other_cuts.push_back(cut.feature);
      }
    }
  }
}

std::string stock_text(const Stock& stock, LengthUnit unit) {
  const auto size = [unit](const std::optional<Length>& length) {
    return length ? format_size(*length, unit) : std::string("?");
  };
  const std::string length =
      stock.length ? fmt::format(" x {}", format_size(*stock.length, unit)) : std::string();
  switch (stock.form) {
    case StockForm::bar:
      return fmt::format("bar {}{}", size(stock.diameter), length);
    case StockForm::tube:
      return fmt::format("tube {}/{}{}", size(stock.diameter), size(stock.inner_diameter), length);
    case StockForm::slug:
      return fmt::format("slug {}{}", size(stock.diameter), length);
    case StockForm::plate:
      break;
  }
  return fmt::format("plate {} x {}{}", size(stock.thickness), size(stock.width), length);
}

void add_parts(const DeclaredJob& declared, PlanCost& cost) {
  const Model& model = declared.look->model;
  for (std::size_t i = 0; i < model.occurrences.size(); ++i) {
    const JobPart* const part = declared.parts.at(i);
    if (part == nullptr || part->state != PartState::to_make) {
      continue;
    }
    cost.new_parts.push_back(model.products.at(model.occurrences[i].product).id);
    if (part->stock) {
      cost.stock.push_back(stock_text(*part->stock, declared.job->unit));
    }
  }
}

bool is_to_make(const DeclaredJob& declared, OccurrenceId occurrence) {
  return state_of(declared, occurrence) == PartState::to_make;
}

// A pair that exists stays together; only what is new must be pressed.
std::size_t presses(const DeclaredJob& declared, const std::vector<Finding>& findings) {
  const auto& seats = declared.look->seats.radial;
  return static_cast<std::size_t>(
      std::count_if(findings.begin(), findings.end(), [&](const Finding& finding) {
        return finding.kind == "press fit" &&
               std::any_of(seats.begin(), seats.end(), [&](const RadialSeat& seat) {
                 return finding.about.size() >= 2 &&
                        finding.about[0] == declared.names.id_of(seat.hole) &&
                        finding.about[1] == declared.names.id_of(seat.shaft) &&
                        (is_to_make(declared, seat.hole.occurrence) ||
                         is_to_make(declared, seat.shaft.occurrence));
               });
      }));
}

void add_outcomes(const std::vector<Finding>& findings, PlanCost& cost) {
  cost.outcomes = count_outcomes(findings);
  for (std::size_t i = 0; i < findings.size(); ++i) {
    const Finding& finding = findings[i];
    if (finding.kind == "way in") {
      ++cost.ways_in_judged;
      cost.ways_in = worse(cost.ways_in, finding.outcome);
    }
    const auto share = margin_share(finding);
    if (finding.outcome == Outcome::conforming && share &&
        (!cost.least_margin || *share < cost.least_margin->share)) {
      cost.least_margin = MarginShare{i, *share};
    }
  }
}

}  // namespace

PlanCost cost_of(const CheckResult& plan) {
  PlanCost cost;
  cost.whole = is_whole(plan);
  if (lacks_parts(plan.look)) {
    add_outcomes(plan.findings, cost);
    return cost;
  }
  const DeclaredJob declared = declare(plan.job, plan.look);
  add_parts(declared, cost);
  add_cuts(declared, cost);
  cost.presses = presses(declared, plan.findings);
  add_outcomes(plan.findings, cost);
  return cost;
}

}  // namespace spotblue
