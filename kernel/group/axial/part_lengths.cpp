#include "group/axial/part_lengths.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "group/joints/part_material.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said_lengths.hpp"

namespace spotblue {
namespace {

std::pair<Subject, Subject> key_of(const FeatureRef& a, const FeatureRef& b) {
  return std::minmax({subject_of(a), subject_of(b)});
}

Limits around(Length value, Length either_way) { return {value - either_way, value + either_way}; }

[[noreturn]] void refuse(const Job& job, const PartLength& length, const std::string& rule,
                         std::string cure) {
  throw Error(ErrorCode::bad_input, entry_place(job, "lengths", length.line), rule,
              std::move(cure));
}

GeneralTolerance untoleranced_class(const Job& job) {
  try {
    return parse_general_tolerance(job.conditions.untoleranced);
  } catch (const Error& problem) {
    throw Error(problem.code(), {job.file, "conditions, untoleranced"}, problem.rule(),
                problem.cure());
  }
}

}  // namespace

PartLengths::PartLengths(const DeclaredJob& declared)
    : declared_(&declared), untoleranced_(untoleranced_class(*declared.job)) {
  for (const PartLength& length : declared.job->lengths) {
    const spotblue::Entry place{"lengths", "between", length.line};
    add(length, declared.names.feature(length.a, place), declared.names.feature(length.b, place));
  }
}

void PartLengths::add(const PartLength& length, const NamedFeature& a, const NamedFeature& b) {
  const Job& job = *declared_->job;
  for (const FeatureRef& first : a.refs) {
    const auto second = std::find_if(b.refs.begin(), b.refs.end(), [&](const FeatureRef& ref) {
      return ref.occurrence == first.occurrence;
    });
    if (second == b.refs.end() || *second == first) {
      refuse(job, length,
             fmt::format("\"{}\" and \"{}\" are no two faces of one part", length.a, length.b),
             "name two faces of the same part");
    }
    if (first.kind != FeatureKind::plane || second->kind != FeatureKind::plane) {
      refuse(job, length, "a length lies between two plane faces",
             "name faces: \"Wheel: face 60\"");
    }
    const Model& model = declared_->look->model;
    const auto& planes = model.products[model.occurrences[first.occurrence].product].planes;
    if (norm(cross(planes[first.index].normal, planes[second->index].normal)) > 1e-6) {
      refuse(job, length, "the two faces are not parallel", "name two faces square to one line");
    }
    spoken_of_.insert(first.occurrence);
    const auto [known, fresh] =
        entries_.try_emplace(key_of(first, *second), Entry{a.meant, &length});
    if (!fresh && known->second.meant == a.meant && known->second.length != &length) {
      refuse_second(job, "lengths", known->second.length->line, length.line);
    }
    if (a.meant > known->second.meant) {
      known->second = {a.meant, &length};
    }
  }
}

bool PartLengths::gives(const FeatureRef& a, const FeatureRef& b) const {
  return entries_.contains(key_of(a, b));
}

bool PartLengths::speaks_of(OccurrenceId occurrence) const {
  return spoken_of_.contains(occurrence);
}

KnownLength PartLengths::untoleranced(Length modelled) const {
  KnownLength known;
  known.nominal = modelled;
  known.source = LengthSource::general_tolerance;
  const std::string_view letter = general_tolerance_letter(untoleranced_);
  // 30 is in the step up to 30, whatever the last digit of a face's place in the assembly makes of
  // it.
  const Length on_drawing = Length::mm(1e-6 * std::round(1e6 * modelled.in_mm()));
  try {
    known.limits = around(modelled, general_deviation(on_drawing, untoleranced_));
    known.how = say(said::kLengthGeneral, letter);
  } catch (const Error&) {
    // The nearest step of the class, so that there is a number to talk of; never proof of anything.
    const auto steps = general_tolerance_steps();
    const auto column = static_cast<std::size_t>(untoleranced_);
    double deviation_mm = 0.0;
    double nearest_mm = -1.0;
    for (const GeneralToleranceStep& step : steps) {
      const double size = modelled.in_mm();
      const double off = std::max({step.over_mm - size, size - step.up_to_mm, 0.0});
      if (step.deviation_mm.at(column) && (nearest_mm < 0.0 || off < nearest_mm)) {
        nearest_mm = off;
        deviation_mm = *step.deviation_mm.at(column);
      }
    }
    known.limits = around(modelled, Length::mm(deviation_mm));
    known.source = LengthSource::assumed;
    known.how = say(said::kLengthNearest, letter);
  }
  return known;
}

std::optional<KnownLength> PartLengths::squeezed(OccurrenceId part, Length modelled) const {
  if (!is_soft(*declared_, part)) {
    return std::nullopt;
  }
  KnownLength known;
  const auto thickness = squeezed_thickness(*declared_, part);
  if (!thickness) {
    known.nominal = modelled;
    known.limits = {modelled, modelled};
    known.source = LengthSource::soft;
    known.how = say(said::kLengthSoft, softness_missing(*declared_, part));
    return known;
  }
  // Drawn free, squeezed, or anything between.
  const Length same = Length::mm(declared_->look->settings.seats.same_length_mm);
  const JobPart& job_part = *declared_->parts.at(part);
  if (modelled < thickness->lower - same || modelled > *job_part.thickness + same) {
    return std::nullopt;
  }
  known.nominal = thickness->lower + 0.5 * thickness->width();
  known.limits = *thickness;
  known.source = LengthSource::limits;
  known.how = say(said::kLengthSqueezed, at_line(job_part.line));
  return known;
}

KnownLength PartLengths::between(const FeatureRef& a, const FeatureRef& b, Length modelled) const {
  const Job& job = *declared_->job;
  const auto entry = entries_.find(key_of(a, b));
  KnownLength known;
  if (entry != entries_.end()) {
    const PartLength& length = *entry->second.length;
    if (length.measured) {
      known.nominal = *length.measured;
      known.limits =
          around(*length.measured, length.uncertainty.value_or(job.settings.default_uncertainty));
      known.spread = StackSpread::normal;
      known.source = LengthSource::measured;
      known.how = say(said::kLengthMeasured, at_line(length.line));
      return known;
    }
    if (length.limits) {
      known.nominal = modelled;
      known.limits = *length.limits;
      known.source = LengthSource::limits;
      known.how = say(said::kLengthLimits, at_line(length.line));
      return known;
    }
  }
  if (auto soft = squeezed(a.occurrence, modelled)) {
    return *std::move(soft);
  }
  if (state_of(*declared_, a.occurrence) == PartState::to_make ||
      drawn_at(*declared_, a.occurrence) == Drawn::at_nominal) {
    return untoleranced(modelled);
  }
  known.nominal = modelled;
  known.limits = around(modelled, job.settings.default_uncertainty);
  known.spread = StackSpread::normal;
  known.source = LengthSource::as_found;
  known.how = said::kLengthAsFound;
  return known;
}

KnownLength PartLengths::as_set(Length modelled, Limits off) const {
  KnownLength known;
  known.nominal = modelled;
  known.limits = around(modelled, declared_->job->settings.default_uncertainty);
  known.spread = StackSpread::normal;
  known.source = LengthSource::as_set;
  known.how = said::kLengthAsSet;
  if (!(off == Limits{})) {
    known.limits = {known.limits.lower + off.lower, known.limits.upper + off.upper};
    known.spread = StackSpread::uniform;
    known.how = said::kLengthSetByAnyFace;
  }
  return known;
}

}  // namespace spotblue
