#include "check/findings/size_findings.hpp"

#include <algorithm>
#include <cstddef>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include "check/words/words.hpp"
#include "group/sizes/size_range.hpp"
#include "group/sizes/wanted_fit.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said.hpp"
#include "group/words/said_seats.hpp"

namespace spotblue {
namespace {

FeatureRef ref_of(const Subject& subject) {
  return {subject.occurrence, *subject.kind, subject.index};
}

struct Modelled {
  Length size;
  Side side = Side::internal;
  Limits worn_by{Length(), Length()};  // how far off `size` it measures somewhere
};

Modelled modelled(const DeclaredJob& declared, const FeatureRef& feature) {
  const Model& model = declared.look->model;
  const Product& product = model.products.at(model.occurrences.at(feature.occurrence).product);
  if (feature.kind == FeatureKind::width) {
    const Width& width = product.widths.at(feature.index);
    return {Length::mm(width.width), width.side};
  }
  const Cylinder& cylinder = product.cylinders.at(feature.index);
  Modelled result{Length::mm(cylinder.diameter), cylinder.side};
  for (const DiameterAt& size : cylinder.sizes) {
    result.worn_by.lower =
        std::min(result.worn_by.lower, Length::mm(size.least - cylinder.diameter));
    result.worn_by.upper =
        std::max(result.worn_by.upper, Length::mm(size.greatest - cylinder.diameter));
  }
  return result;
}

// The name that means all of them: the product's when there are several.
Reference name_of(const DeclaredJob& declared, const std::vector<Subject>& subjects) {
  const FeatureRef first = ref_of(subjects.front());
  if (subjects.size() == 1) {
    return declared.names.reference(first);
  }
  const Model& model = declared.look->model;
  return {model.products.at(model.occurrences.at(first.occurrence).product).id + ": " +
              feature_name(model, first),
          first};
}

Saying size_cure(Side side, bool too_large, Length by) {
  if (side == Side::internal) {
    return say(too_large ? said::kSizeTooLargeHole : said::kSizeTooSmallHole, by);
  }
  return say(too_large ? said::kSizeTooLargeShaft : said::kSizeTooSmallShaft, by);
}

Finding judge_size(const DeclaredJob& declared, const WantedSize& wanted,
                   const std::vector<Subject>& subjects) {
  const FeatureRef feature = ref_of(subjects.front());
  const Modelled model = modelled(declared, feature);
  SizeRange range = size_range(declared, feature, model.size, std::nullopt);
  const bool worn = model.worn_by.width() > Length() && range.source == SizeSource::modelled;
  if (worn) {
    range.limits = {range.limits.lower + model.worn_by.lower,
                    range.limits.upper + model.worn_by.upper};
  }
  const Limits wide{wanted.limits.lower - kSizeRounding, wanted.limits.upper + kSizeRounding};
  Finding finding;
  finding.kind = "size";
  finding.about = {name_of(declared, subjects)};
  finding.wanted = {{"size", told(wanted)}};
  if (wanted.nominal) {
    finding.wanted.push_back({"nominal", measure(*wanted.nominal)});
  }
  add_range(finding.wanted, "size", wanted.limits);
  add_range(finding.found, "size", range.limits);
  finding.found.push_back({"size", source_said(range.source)});
  finding.found.push_back({"modelled", measure(model.size)});
  finding.margin = {{"size", measure(margin(range.limits, wanted.limits))}};
  finding.basis = wanted.basis + judged_by(has_uncertainty(range));
  finding.outcome = range.basic ? Outcome::nonconforming : judge(range.limits, wide);
  if (range.basic) {
    finding.advice = say(said::kSizeNotNominal, DrawnSize{model.size}, DrawnSize{*range.basic});
  } else if (finding.outcome == Outcome::conforming) {
    finding.advice = range.to_make ? say(said::kMakeIt, wanted.limits) : Saying(said::kLeaveAsItIs);
  } else if (finding.outcome == Outcome::undecided) {
    finding.advice = worn ? say(said::kSizeWorn, range.limits)
                          : say(said::kSizeMeasureCloser, 0.5 * range.limits.width());
  } else {
    const bool too_large = range.limits.lower > wanted.limits.upper;
    finding.advice = size_cure(model.side, too_large,
                               too_large ? range.limits.upper - wanted.limits.upper
                                         : wanted.limits.lower - range.limits.lower);
  }
  return finding;
}

// Occurrences of one product share a finding unless one was measured by itself.
std::vector<std::vector<Subject>> grouped(const DeclaredJob& declared,
                                          const std::vector<Subject>& subjects) {
  std::vector<std::vector<Subject>> groups;
  std::vector<std::pair<const MeasuredSize*, const JobPart*>> keys;
  for (const Subject& subject : subjects) {
    const auto measured = declared.measured.find(subject);
    const std::pair key{measured == declared.measured.end() ? nullptr : measured->second,
                        declared.parts.at(subject.occurrence)};
    const auto known = std::find(keys.begin(), keys.end(), key);
    if (known == keys.end()) {
      keys.push_back(key);
      groups.push_back({subject});
    } else {
      groups[static_cast<std::size_t>(known - keys.begin())].push_back(subject);
    }
  }
  return groups;
}

std::vector<Finding> wanted_by_job(const DeclaredJob& declared) {
  std::vector<Finding> findings;
  for (const SizeWant& want : declared.job->sizes) {
    std::vector<Subject> subjects;
    for (const auto& [subject, chosen] : declared.sizes) {
      if (chosen == &want) {
        subjects.push_back(subject);
      }
    }
    for (const std::vector<Subject>& group : grouped(declared, subjects)) {
      const FeatureRef feature = ref_of(group.front());
      const WantedSize wanted = wanted_size(*declared.job, want, modelled(declared, feature).size,
                                            drawn_at(declared, feature.occurrence));
      findings.push_back(judge_size(declared, wanted, group));
    }
  }
  return findings;
}

// Features in seats that are judged by both sizes the model states.
std::set<Subject> in_stated_fits(const DeclaredJob& declared) {
  std::set<Subject> judged;
  const auto add = [&](const FitWant* want, const FeatureRef& hole, const FeatureRef& shaft) {
    if (want != nullptr && std::holds_alternative<LimitsOfBoth>(want->rule)) {
      judged.insert({subject_of(hole), subject_of(shaft)});
    }
  };
  const Seats& seats = declared.look->seats;
  for (std::size_t i = 0; i < seats.radial.size(); ++i) {
    add(declared.radial_fits.at(i), seats.radial[i].hole, seats.radial[i].shaft);
  }
  for (std::size_t i = 0; i < seats.width.size(); ++i) {
    add(declared.width_fits.at(i), seats.width[i].slot, seats.width[i].key);
  }
  return judged;
}

// One for each feature that the model states a size for, unless its seat is judged by that.
std::vector<Finding> stated_by_model(const DeclaredJob& declared) {
  const Model& model = declared.look->model;
  const std::set<Subject> in_fits = in_stated_fits(declared);
  std::map<std::tuple<ProductId, std::optional<FeatureKind>, std::size_t>, std::vector<Subject>>
      by_feature;
  for (const auto& [subject, want] : declared.semantic->sizes) {
    if (!in_fits.contains(subject)) {
      by_feature[{model.occurrences.at(subject.occurrence).product, subject.kind, subject.index}]
          .push_back(subject);
    }
  }
  std::vector<Finding> findings;
  for (const auto& [feature, subjects] : by_feature) {
    const StatedWant& want = declared.semantic->sizes.at(subjects.front());
    for (const std::vector<Subject>& group : grouped(declared, subjects)) {
      findings.push_back(
          judge_size(declared, {want.limits, want.nominal, want.text, want.basis}, group));
    }
  }
  return findings;
}

bool left_to_job(const DeclaredJob& declared, const SemanticSize& size) {
  const Model& model = declared.look->model;
  const std::set<Subject>& spoken_of = declared.semantic->left_to_job;
  return std::any_of(spoken_of.begin(), spoken_of.end(), [&](const Subject& subject) {
    return model.occurrences.at(subject.occurrence).product == *size.product &&
           std::any_of(size.features.begin(), size.features.end(),
                       [&](const ProductFeatureRef& one) {
                         return subject_of({subject.occurrence, one.kind, one.index}) == subject;
                       });
  });
}

// A stated size that does not make sense can be no reason to call its feature good or bad.
std::vector<Finding> doubtful_in_model(const DeclaredJob& declared) {
  const Model& model = declared.look->model;
  std::vector<Finding> findings;
  for (const SemanticSize& size : model.semantic_sizes) {
    if (size.doubt.empty() || !size.product || size.features.empty() ||
        left_to_job(declared, size)) {
      continue;
    }
    Finding finding;
    finding.kind = "size";
    const Product& product = model.products.at(*size.product);
    for (const ProductFeatureRef& feature : size.features) {
      finding.about.push_back(product.id + ": " +
                              (feature.kind == FeatureKind::width
                                   ? product.widths.at(feature.index).name
                                   : product.cylinders.at(feature.index).name));
    }
    finding.wanted = {{"size", semantic_size_text(size)}};
    finding.basis = say(said::kStatedInModel, entity_text(size));
    finding.advice = say(said::kSizeDoubtful, size.doubt);
    findings.push_back(std::move(finding));
  }
  return findings;
}

std::set<Subject> judged_features(const DeclaredJob& declared) {
  std::set<Subject> judged;
  const Seats& seats = declared.look->seats;
  for (const RadialSeat& seat : seats.radial) {
    judged.insert({subject_of(seat.hole), subject_of(seat.shaft)});
  }
  for (const WidthSeat& seat : seats.width) {
    judged.insert({subject_of(seat.slot), subject_of(seat.key)});
  }
  for (std::size_t i = 0; i < seats.threads.size(); ++i) {
    if (declared.thread_fits.at(i) != nullptr) {
      judged.insert({subject_of(seats.threads[i].hole), subject_of(seats.threads[i].screw)});
    }
  }
  for (const auto& [subject, want] : declared.sizes) {
    judged.insert(subject);
  }
  for (const auto& [subject, want] : declared.semantic->sizes) {
    judged.insert(subject);
  }
  return judged;
}

Finding unused_measurement(const DeclaredJob& declared, const MeasuredSize& measured,
                           const std::vector<Subject>& subjects) {
  const Length uncertainty =
      measured.uncertainty.value_or(declared.job->settings.default_uncertainty);
  Finding finding;
  finding.kind = "size";
  finding.about = {name_of(declared, subjects)};
  finding.found = {{"measured", measure(measured.value)},
                   {"uncertainty", measure(uncertainty)},
                   {"modelled", measure(modelled(declared, ref_of(subjects.front())).size)}};
  finding.basis = say(said::kMeasuredSize, at_line(measured.line));
  finding.advice = said::kMeasuredForNothing;
  return finding;
}

std::vector<Finding> unused_measurements(const DeclaredJob& declared) {
  const std::set<Subject> judged = judged_features(declared);
  std::map<const MeasuredSize*, std::vector<Subject>> unused;
  std::set<const MeasuredSize*> used;
  for (const auto& [subject, measured] : declared.measured) {
    if (judged.count(subject) > 0) {
      used.insert(measured);
    } else {
      unused[measured].push_back(subject);
    }
  }
  std::vector<Finding> findings;
  for (const MeasuredSize& measured : declared.job->measured) {
    const auto found = unused.find(&measured);
    if (found != unused.end() && used.count(&measured) == 0) {
      findings.push_back(unused_measurement(declared, measured, found->second));
    }
  }
  return findings;
}

}  // namespace

std::vector<Finding> size_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings = wanted_by_job(declared);
  for (std::vector<Finding> more :
       {stated_by_model(declared), doubtful_in_model(declared), unused_measurements(declared)}) {
    std::move(more.begin(), more.end(), std::back_inserter(findings));
  }
  return findings;
}

}  // namespace spotblue
