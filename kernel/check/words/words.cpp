#include "check/words/words.hpp"

namespace spotblue {

void add_range(std::vector<Quantity>& quantities, const std::string& name, Limits range) {
  quantities.push_back({name, measure(range.lower), RangeEnd::least});
  quantities.push_back({name, measure(range.upper), RangeEnd::greatest});
}

}  // namespace spotblue
