#include <set>

#include "python/values/numbers.hpp"

namespace spotblue::python {

std::string_view kept_text(const std::string& text) {
  // Called under Python's lock; a set's strings never move. Left alive for values that outlive it.
  static auto* const kept = new std::set<std::string, std::less<>>;
  return *kept->insert(text).first;
}

}  // namespace spotblue::python
