#include "group/sizes/size_range.hpp"

#include <cmath>

#include "group/sizes/nominal.hpp"
#include "group/sizes/wanted_fit.hpp"
#include "group/words/said_sizes.hpp"

namespace spotblue {
namespace {

SizeRange around(Length value, Length uncertainty, SizeSource source) {
  SizeRange range;
  range.limits = {value - uncertainty, value + uncertainty};
  range.source = source;
  range.centre = value;
  return range;
}

std::optional<ClassLimits> own_limits(const DeclaredJob& declared, const FeatureRef& feature,
                                      Length modelled) {
  const auto want = declared.sizes.find(subject_of(feature));
  if (want == declared.sizes.end()) {
    return std::nullopt;
  }
  const WantedSize wanted = wanted_size(*declared.job, *want->second, modelled, Drawn::at_nominal);
  return ClassLimits{wanted.limits, wanted.nominal};
}

SizeRange to_limits(Length modelled, const ClassLimits& given) {
  SizeRange range;
  range.limits = given.limits;
  range.source = SizeSource::class_limits;
  range.centre = 0.5 * (given.limits.lower + given.limits.upper);
  const bool at_basic =
      !given.nominal || std::abs((modelled - *given.nominal).in_mm()) <= kAtBasicSize_mm;
  if (!at_basic) {
    range.basic = given.nominal;
  }
  return range;
}

// A feature drawn at the nominal that its model states, of a part the job says nothing about: the
// model shows what is meant, and the stated limits what will be made.
std::optional<ClassLimits> stated_limits(const DeclaredJob& declared, const FeatureRef& feature,
                                         Length modelled) {
  const auto stated = declared.semantic->sizes.find(subject_of(feature));
  if (stated == declared.semantic->sizes.end() ||
      declared.parts.at(feature.occurrence) != nullptr || !stated->second.nominal ||
      std::abs((modelled - *stated->second.nominal).in_mm()) > kAtBasicSize_mm) {
    return std::nullopt;
  }
  return ClassLimits{stated->second.limits, stated->second.nominal};
}

}  // namespace

SizeRange size_range(const DeclaredJob& declared, const FeatureRef& feature, Length modelled,
                     const std::optional<ClassLimits>& from_fit) {
  const Length fallback = declared.job->settings.default_uncertainty;
  const auto measured = declared.measured.find(subject_of(feature));
  if (measured != declared.measured.end()) {
    const MeasuredSize& size = *measured->second;
    return around(size.value, size.uncertainty.value_or(fallback), SizeSource::measured);
  }
  SizeRange range;
  if (const auto stated = stated_limits(declared, feature, modelled)) {
    range = to_limits(modelled, *stated);
    range.to_make = true;  // a drawing's limits are a promise, not a measurement
    return range;
  }
  if (drawn_at(declared, feature.occurrence) == Drawn::at_the_size_wanted) {
    const bool exists = state_of(declared, feature.occurrence) == PartState::as_found;
    range = around(modelled, exists ? fallback : Length(), SizeSource::modelled);
  } else if (const auto own = own_limits(declared, feature, modelled)) {
    range = to_limits(modelled, *own);
  } else if (from_fit) {
    range = to_limits(modelled, *from_fit);
  } else {
    range = around(modelled, Length(), SizeSource::modelled);
  }
  range.to_make = state_of(declared, feature.occurrence) == PartState::to_make;
  return range;
}

bool has_uncertainty(const SizeRange& range) {
  return range.to_make || range.limits.width() > Length();
}

Limits without_uncertainty(const SizeRange& range) {
  const bool promised = range.to_make && range.source == SizeSource::class_limits;
  return promised ? range.limits : Limits{range.centre, range.centre};
}

const Said& source_said(SizeSource source) {
  switch (source) {
    case SizeSource::measured:
      return said::kMeasured;
    case SizeSource::modelled:
      return said::kAsModelled;
    case SizeSource::class_limits:
      break;
  }
  return said::kToItsLimits;
}

}  // namespace spotblue
