#include "spotblue/mechanics/bearing_loads.hpp"

#include <fmt/format.h>

#include <cmath>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

// Two bearings nearer than this are one place, whose loads would be the difference of two infinite
// ones.
constexpr double kOnePlace_mm = 1e-6;

[[noreturn]] void refuse(const std::string& argument, const std::string& what,
                         const std::string& cure) {
  throw Error(ErrorCode::bad_input, {"", argument}, what, cure);
}

void require(std::span<const StationForce> forces, std::span<const Length> bearings) {
  for (std::size_t i = 0; i < forces.size(); ++i) {
    require_finite(forces[i].at.in_mm(), fmt::format("forces[{}].at_mm", i), "mm");
    require_finite(forces[i].force_n, fmt::format("forces[{}].force_n", i), "N");
  }
  if (bearings.empty()) {
    refuse("bearings", "need one bearing or more, got none", "say where the bearings are");
  }
  for (std::size_t i = 0; i < bearings.size(); ++i) {
    require_finite(bearings[i].in_mm(), fmt::format("bearings[{}]", i), "mm");
  }
}

double moment_about(std::span<const StationForce> forces, Length place) {
  double moment = 0.0;
  for (const StationForce& force : forces) {
    moment += force.force_n * (force.at - place).in_mm();
  }
  return moment;
}

std::vector<double> two_loads(std::span<const StationForce> forces, Length first, Length second) {
  const double apart = (second - first).in_mm();
  if (!(std::abs(apart) > kOnePlace_mm)) {
    refuse("bearings[1]", "need two bearings apart, got both at one place",
           "give the middle of each bearing's length");
  }
  return {-moment_about(forces, second) / apart, moment_about(forces, first) / apart};
}

}  // namespace

BearingLoads bearing_loads(std::span<const StationForce> forces, std::span<const Length> bearings,
                           LoadSharing sharing) {
  require(forces, bearings);
  BearingLoads loads;
  if (sharing == LoadSharing::by_statics && bearings.size() == 2) {
    loads.loads_n = two_loads(forces, bearings[0], bearings[1]);
    return loads;
  }
  if (sharing == LoadSharing::by_statics && bearings.size() > 2) {
    loads.unknown = fmt::format(
        "{} bearings: how they share goes by how stiff the part is and how true they stand",
        bearings.size());
    return loads;
  }
  double sum = 0.0;
  for (const StationForce& force : forces) {
    sum += force.force_n;
  }
  const double each = sum / static_cast<double>(bearings.size());
  loads.loads_n.assign(bearings.size(), each);
  double unbalanced = moment_about(forces, bearings[0]);
  for (const Length bearing : bearings) {
    unbalanced -= each * (bearing - bearings[0]).in_mm();
  }
  loads.moment_nm = unbalanced / 1000.0;
  return loads;
}

}  // namespace spotblue
