#include "group/sizes/wanted_fit.hpp"

#include <fmt/format.h>

#include <utility>

#include "group/match/declared.hpp"
#include "group/sizes/nominal.hpp"
#include "group/words/at_line.hpp"
#include "spotblue/standards/b4_1.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue {
namespace {

// A standard's refusal, placed at the entry of the job file that asked for it.
template <typename Work>
auto at_entry(const Job& job, std::string_view list, const std::optional<JobLine>& line,
              const Work& work) {
  try {
    return work();
  } catch (const Error& problem) {
    throw Error(problem.code(), entry_place(job, list, line), problem.rule(), problem.cure());
  }
}

// The basic size names the nominal; two worn ones leave it between them.
Length nominal_of(const PairSizes& sizes, FitSystem system) {
  if (sizes.hole_meant == Drawn::at_nominal) {
    return nominal_of_basic(sizes.hole);
  }
  if (sizes.shaft_meant == Drawn::at_nominal) {
    return nominal_of_basic(sizes.shaft);
  }
  return nominal_of_actual(0.5 * (sizes.hole + sizes.shaft), system);
}

struct Wanting {
  const Job& job;
  const FitWant& want;
  const PairSizes& sizes;

  WantedFit operator()(const ClassFit& rule) const {
    const Length nominal = rule.nominal.value_or(nominal_of(sizes, rule.system));
    const bool iso = rule.system == FitSystem::iso_286;
    const Fit known = at_entry(job, "fits", want.line, [&] {
      return iso ? fit(nominal, rule.text) : b4_1_fit(nominal, rule.text);
    });
    WantedFit wanted;
    wanted.clearance = {known.least_clearance, known.greatest_clearance};
    wanted.hole = known.hole;
    wanted.shaft = known.shaft;
    wanted.nominal = nominal;
    wanted.text = rule.text;
    wanted.basis = iso ? say(said::kIsoClass, format_size(nominal, LengthUnit::mm), rule.text)
                       : say(said::kB41Class, format_size(nominal, LengthUnit::inch), rule.text);
    return wanted;
  }

  WantedFit operator()(const ClearanceLimits& rule) const {
    WantedFit wanted;
    wanted.clearance = {rule.least, rule.greatest};
    wanted.basis = say(said::kLimitsOfClearance, at_line(want.line));
    return wanted;
  }

  WantedFit operator()(const PerDiameter& rule) const {
    const Length nominal = rule.nominal.value_or(nominal_of(sizes, FitSystem::iso_286));
    const Length middle = rule.clearance * nominal;
    WantedFit wanted;
    wanted.clearance = {middle - rule.tolerance, middle + rule.tolerance};
    wanted.nominal = nominal;
    wanted.basis = say(said::kAllowance, fmt::format("{:g}", rule.clearance), DrawnSize{nominal},
                       DrawnSize{rule.tolerance}, at_line(want.line));
    return wanted;
  }

  WantedFit operator()(const LimitsOfBoth& rule) const {
    WantedFit wanted;
    wanted.clearance = {rule.hole.lower - rule.shaft.upper, rule.hole.upper - rule.shaft.lower};
    wanted.hole = rule.hole;
    wanted.shaft = rule.shaft;
    if (rule.hole_nominal == rule.shaft_nominal) {
      wanted.nominal = rule.hole_nominal;
    }
    wanted.text = rule.text;
    wanted.basis = rule.basis;
    return wanted;
  }
};

}  // namespace

Saying told(const WantedFit& wanted) {
  if (!wanted.text.empty()) {
    return wanted.text;
  }
  return wanted.hole && wanted.shaft ? say(said::kLimitsOfPair, *wanted.hole, *wanted.shaft)
                                     : say(said::kLimits, wanted.clearance);
}

Saying told(const WantedSize& wanted) {
  return wanted.text.empty() ? say(said::kLimits, wanted.limits) : Saying(wanted.text);
}

WantedFit wanted_fit(const Job& job, const FitWant& want, const PairSizes& sizes) {
  return std::visit(Wanting{job, want, sizes}, want.rule);
}

WantedSize wanted_size(const Job& job, const SizeWant& want, Length modelled, Drawn meant) {
  WantedSize wanted;
  if (const auto* given = std::get_if<Limits>(&want.rule)) {
    wanted.limits = *given;
    wanted.basis = say(said::kLimitsOfSize, at_line(want.line));
    return wanted;
  }
  const auto& tolerance_class = std::get<std::string>(want.rule);
  const Length nominal = want.nominal.value_or(
      meant == Drawn::at_nominal ? nominal_of_basic(modelled)
                                 : nominal_of_actual(modelled, FitSystem::iso_286));
  wanted.limits =
      at_entry(job, "sizes", want.line, [&] { return limits(nominal, tolerance_class); });
  wanted.nominal = nominal;
  wanted.text = tolerance_class;
  wanted.basis = say(said::kIsoClass, format_size(nominal, LengthUnit::mm), tolerance_class);
  return wanted;
}

}  // namespace spotblue
