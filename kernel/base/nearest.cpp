#include "spotblue/base/nearest.hpp"

#include <algorithm>
#include <cstddef>
#include <limits>
#include <numeric>
#include <vector>

#include "spotblue/base/ascii.hpp"

namespace spotblue {
namespace {

// The time grows with the product of two words' lengths.
constexpr std::size_t kMostCompared = 200;

std::size_t edits(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t change =
          diagonal + (ascii_lower(a[i - 1]) == ascii_lower(b[j - 1]) ? 0 : 1);
      diagonal = row[j];
      row[j] = std::min({row[j] + 1, row[j - 1] + 1, change});
    }
  }
  return row.back();
}

}  // namespace

std::string nearest_word(std::string_view word, std::span<const std::string> known) {
  std::string best;
  std::size_t fewest = std::numeric_limits<std::size_t>::max();
  word = word.substr(0, kMostCompared);
  for (const std::string& candidate : known) {
    const std::string_view compared = std::string_view(candidate).substr(0, kMostCompared);
    const std::size_t longer = std::max(compared.size(), word.size());
    if (longer - std::min(compared.size(), word.size()) >= fewest) {
      continue;  // takes that many edits at the least
    }
    const std::size_t distance = edits(word, compared);
    if (distance < fewest) {
      fewest = distance;
      best = candidate;
    }
  }
  return best;
}

std::string likely_word(std::string_view word, std::span<const std::string> known) {
  std::string nearest = nearest_word(word, known);
  const std::size_t most = std::max<std::size_t>(1, word.size() / 4);
  word = word.substr(0, kMostCompared);
  const bool likely = edits(word, std::string_view(nearest).substr(0, kMostCompared)) <= most;
  return likely ? nearest : std::string();
}

}  // namespace spotblue
