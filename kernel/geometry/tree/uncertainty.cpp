#include "geometry/tree/uncertainty.hpp"

#include <STEPConstruct_UnitContext.hxx>
#include <StepBasic_NamedUnit.hxx>
#include <StepBasic_UncertaintyMeasureWithUnit.hxx>
#include <StepBasic_Unit.hxx>
#include <StepData_StepModel.hxx>
#include <cmath>

#include "geometry/occt/occt_versions.hpp"

namespace spotblue {

double stated_uncertainty(const StepReader& reader) {
  double most = 0.0;
  const auto& entities = reader.entities();
  for (int i = 1; i <= entities->NbEntities(); ++i) {
    const auto measure = Handle(StepBasic_UncertaintyMeasureWithUnit)::DownCast(entities->Value(i));
    if (measure.IsNull() || measure->ValueComponentMember().IsNull()) {
      continue;
    }
    const Handle(StepBasic_NamedUnit) unit = measure->UnitComponent().NamedUnit();
    STEPConstruct_UnitContext factors;
    if (unit.IsNull() || occt::compute_factors(factors, unit) != 0 || !factors.LengthDone()) {
      continue;
    }
    const double value = measure->ValueComponent() * factors.LengthFactor();
    most = std::isfinite(value) ? std::max(most, value) : most;
  }
  return most;
}

}  // namespace spotblue
