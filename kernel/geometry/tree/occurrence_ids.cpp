#include "geometry/tree/occurrence_ids.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstddef>
#include <map>
#include <unordered_map>
#include <utility>
#include <vector>

#include "geometry/part21/step_name.hpp"

namespace spotblue {

std::string root_of(const std::string& path) {
  const std::string first = path.substr(0, path.find('/'));
  return first.substr(0, first.rfind('#'));
}

bool has_one_root(const List<Occurrence>& occurrences) {
  return !occurrences.empty() &&
         std::all_of(occurrences.begin(), occurrences.end(),
                     [root = root_of(occurrences.front().path)](const Occurrence& one) {
                       return root_of(one.path) == root;
                     });
}

void name_occurrences(Model& model) {
  const bool one_root = has_one_root(model.occurrences);
  std::map<ProductId, std::size_t> places;
  for (const Occurrence& one : model.occurrences) {
    ++places[one.product];
  }
  std::unordered_map<std::string, std::size_t> alike;
  for (Occurrence& one : model.occurrences) {
    const auto slash = one.path.find('/');
    one.id = one_root && slash != std::string::npos ? one.path.substr(slash + 1) : one.path;
    ++alike[one.id];
  }
  for (const auto& [product, count] : places) {
    if (count > 1) {
      ++alike[model.products[product].id];
    }
  }
  UniqueNames names;
  std::unordered_map<std::string, int> numbers;
  for (Occurrence& one : model.occurrences) {
    const std::string plain = one.id;
    one.id = names.take(alike[plain] > 1 ? fmt::format("{} ({})", plain, ++numbers[plain]) : plain);
  }
}

}  // namespace spotblue
