#include "plugin/harness/saved_document.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "base/error_kinds.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/geometry/read.hpp"

namespace spotblue::plugin {
namespace {

// Digits that are lost in writing and reading decimal numbers, and no more.
constexpr double kSame = 1e-6;

using Place = std::array<double, 4>;  // the volume's cube root and the middle of the box, mm

std::vector<Place> places_of(const Model& model) {
  std::vector<Place> places;
  for (const Occurrence& one : model.occurrences) {
    places.push_back(
        {std::cbrt(model.products[one.product].volume), 0.5 * (one.box.low.x + one.box.high.x),
         0.5 * (one.box.low.y + one.box.high.y), 0.5 * (one.box.low.z + one.box.high.z)});
  }
  return places;
}

bool is_same(const Place& one, const Place& other, double size) {
  return std::ranges::equal(one, other,
                            [&](double a, double b) { return std::abs(a - b) <= kSame * size; });
}

// Each of one is found in the other, where as many are left.
std::string difference(const Model& meant, const Model& written) {
  std::vector<Place> there = places_of(written);
  if (there.size() != meant.occurrences.size()) {
    return fmt::format("{} solids in place of {}", there.size(), meant.occurrences.size());
  }
  const std::vector<Place> wanted = places_of(meant);
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    const Box& box = meant.occurrences[i].box;
    const double size = std::max(
        {diagonal(box), std::abs(box.low.x), std::abs(box.low.y), std::abs(box.low.z), 1.0});
    const auto found = std::ranges::find_if(
        there, [&](const Place& one) { return is_same(one, wanted[i], size); });
    if (found == there.end()) {
      return fmt::format("{} is another or elsewhere", meant.occurrences[i].id);
    }
    *found = there.back();
    there.pop_back();
  }
  return {};
}

Error not_as_meant(const std::filesystem::path& target, const std::string& why) {
  return {ErrorCode::open_cascade_failed,
          {shown_name(target), ""},
          "not written, since it does not read back as meant: " + why,
          "what was there is as it was; check the document's shapes with checkshape"};
}

Model read_back(const std::filesystem::path& draft, const std::filesystem::path& target) {
  try {
    return read_step(draft, {}, Completeness::all_or_error);
  } catch (const Error& error) {
    if (says_nothing_of_content(error.code())) {
      throw;
    }
    throw not_as_meant(target, error.rule());
  }
}

}  // namespace

void require_as_meant(const std::filesystem::path& draft, const Model& meant, std::size_t sizes,
                      const std::filesystem::path& target) {
  const Model written = read_back(draft, target);
  const std::string why = difference(meant, written);
  if (!why.empty()) {
    throw not_as_meant(target, why);
  }
  if (written.semantic_sizes.size() < sizes) {
    throw not_as_meant(
        target, fmt::format("{} sizes in place of {}", written.semantic_sizes.size(), sizes));
  }
}

}  // namespace spotblue::plugin
