#include "group/joints/named_turning.hpp"

namespace spotblue {

std::set<OccurrenceId> named_turning(const DeclaredJob& declared) {
  std::set<OccurrenceId> turning;
  for (const Turning& entry : declared.job->turning) {
    const NamedPart named = declared.names.part(entry.part, {"turning", "part", entry.line});
    turning.insert(named.occurrences.begin(), named.occurrences.end());
  }
  return turning;
}

}  // namespace spotblue
