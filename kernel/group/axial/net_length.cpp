#include "group/axial/net_length.hpp"

#include "group/joints/part_growth.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said_lengths.hpp"

namespace spotblue {

StackLength step_length(const DeclaredJob& declared, const PathLength& path) {
  const PartGrowth growth = growth_of(declared, path.from.occurrence);
  StackLength length;
  length.dimension = {declared.names.id_of(path.from) + " to " + declared.names.id_of(path.to),
                      path.known.nominal,
                      path.known.limits,
                      StackSense::opens,
                      path.known.spread,
                      growth.expansion_per_k.value_or(0.0),
                      growth.warmer_by_k};
  length.source = path.known.source;
  length.how = path.known.how;
  length.part = path.from.occurrence;
  length.of_one_part = path.from.occurrence == path.to.occurrence;
  length.to_make = length.of_one_part && state_of(declared, length.part) == PartState::to_make;
  length.warm_unknown = growth.warmer_by_k != 0.0 && !growth.expansion_per_k;
  return length;
}

StackLength not_closed_length(const DeclaredJob& declared, const FeatureRef& from,
                              const FeatureRef& to, Length apart) {
  StackLength length;
  length.dimension.name = declared.names.id_of(from) + " to " + declared.names.id_of(to);
  length.dimension.nominal = apart;
  length.dimension.limits = {apart, apart};
  length.source = LengthSource::not_closed;
  length.how = said::kLengthNoChain;
  length.part = from.occurrence;
  length.of_one_part = false;
  return length;
}

StackLength gap_length(const DeclaredJob& declared, const AxialStop& stop, const MeasuredGap& gap) {
  const Length either_way = gap.uncertainty.value_or(declared.job->settings.default_uncertainty);
  StackLength length;
  length.dimension.name =
      "gap " + declared.names.id_of(stop.a) + " to " + declared.names.id_of(stop.b);
  length.dimension.nominal = gap.value;
  length.dimension.limits = {gap.value - either_way, gap.value + either_way};
  length.dimension.spread = StackSpread::normal;
  length.source = LengthSource::measured;
  length.how = say(said::kLengthMeasured, at_line(gap.line));
  length.part = stop.a.occurrence;
  length.of_one_part = false;
  return length;
}

}  // namespace spotblue
