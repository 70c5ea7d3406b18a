#include "job/job_conditions.hpp"

#include <fmt/format.h>

#include <array>
#include <string>

#include "job/entry_keys.hpp"

namespace spotblue {
namespace {

constexpr std::array<std::string_view, 4> kGeneralTolerances{"f", "m", "c", "v"};

void read_friction(const TomlTable& entry, Conditions& conditions) {
  constexpr Interval friction{0.01, 1.0};
  conditions.friction_least =
      find_number(entry, "friction_least", friction).value_or(conditions.friction_least);
  conditions.friction_greatest =
      find_number(entry, "friction_greatest", friction).value_or(conditions.friction_greatest);
  if (conditions.friction_least > conditions.friction_greatest) {
    throw entry.error(entry.has("friction_least") ? "friction_least" : "friction_greatest",
                      fmt::format("the limits are reversed: {} is more than {}",
                                  conditions.friction_least, conditions.friction_greatest),
                      "give both, the lesser one as friction_least");
  }
}

}  // namespace

Conditions read_conditions(const TomlTable& top, LengthUnit unit) {
  Conditions conditions;
  const auto entry = top.find_table("conditions");
  if (!entry) {
    return conditions;
  }
  conditions.bench_c =
      find_in_units(*entry, "bench", kTemperatures, kTemperatures_c).value_or(conditions.bench_c);
  // Without a running temperature nothing gets warm: as at the bench, whatever that is.
  conditions.running_c =
      find_in_units(*entry, "running", kTemperatures, kTemperatures_c).value_or(conditions.bench_c);
  read_friction(*entry, conditions);
  conditions.rz_um =
      find_in_units(*entry, "rz", kRoughnesses, kHeights_um).value_or(conditions.rz_um);
  if (entry->has("slip_clearance")) {
    conditions.slip_clearance = read_tolerance(*entry, "slip_clearance", unit);
  }
  if (const auto general = entry->find_text("untoleranced")) {
    (void)read_choice(*entry, "untoleranced", *general, kGeneralTolerances);
    conditions.untoleranced = *general;
  }
  if (entry->has("cleaning")) {
    conditions.cleaning = read_tolerance(*entry, "cleaning", unit);
  }
  entry->refuse_unknown();
  return conditions;
}

}  // namespace spotblue
