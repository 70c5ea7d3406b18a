#include "check/words/words.hpp"

#include <utility>

#include "spotblue/base/angle.hpp"

namespace spotblue {

void add_range(std::vector<Quantity>& quantities, const std::string& key, Limits range) {
  quantities.push_back(millimetres(key + "_min_mm", range.lower));
  quantities.push_back(millimetres(key + "_max_mm", range.upper));
}

Quantity millimetres(std::string key, Length length) { return {std::move(key), length.in_mm()}; }

Quantity degrees(std::string key, double radians) { return {std::move(key), degrees(radians)}; }

}  // namespace spotblue
