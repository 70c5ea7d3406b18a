#include "group/turning/rubbing.hpp"

#include <algorithm>

namespace spotblue {
namespace {

Duty harder(Duty a, Duty b) { return std::max(a, b); }

}  // namespace

std::optional<Rubbing> rubbing(const Groups& groups, const Turns& turns, OccurrenceId a,
                               OccurrenceId b) {
  const std::optional<Turn>& first = turns.of.at(a);
  const std::optional<Turn>& second = turns.of.at(b);
  if (groups.turns_with.at(a) == groups.turns_with.at(b) || (!first && !second)) {
    return std::nullopt;
  }
  const bool first_faster = first && (!second || first->rpm >= second->rpm);
  const Turn& faster = first_faster ? *first : *second;
  Rubbing found{faster.rpm,      faster.duty,          faster.load_n,
                faster.thrust_n, first_faster ? a : b, first.has_value() && second.has_value()};
  if (found.both) {
    const Turn& other = first_faster ? *second : *first;
    found.rpm += other.rpm;
    found.duty = harder(faster.duty, other.duty);
    found.load_n = std::max(faster.load_n, other.load_n);
    found.thrust_n = std::max(faster.thrust_n, other.thrust_n);
  }
  return found;
}

}  // namespace spotblue
