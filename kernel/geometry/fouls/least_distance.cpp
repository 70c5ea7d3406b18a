#include "geometry/fouls/least_distance.hpp"

#include <fmt/format.h>

#include <BRepExtrema_DistShapeShape.hxx>
#include <algorithm>
#include <array>
#include <cstddef>
#include <cstring>
#include <limits>
#include <utility>
#include <vector>

#include "base/work_limit.hpp"
#include "geometry/fouls/solid_overlap.hpp"
#include "geometry/occt/contained.hpp"
#include "geometry/occt/guard.hpp"
#include "geometry/occt/occt_values.hpp"
#include "geometry/occt/shape_store.hpp"

namespace spotblue {
namespace {

struct BoxedPair {
  OccurrencePair pair;
  double boxes_apart = 0.0;
};

// What the child hands back: which pair, how far, and where.
using Numbers = std::array<double, 8>;

struct Found {
  double gap = std::numeric_limits<double>::infinity();
  Point at_a, at_b;
};

Found distance_of(const Model& model, const OccurrencePair& pair) {
  const auto placed = [&model](OccurrenceId part) {
    const Occurrence& occurrence = model.occurrences[part];
    return proof::placed_shape(model.shapes->load_healed(occurrence.product), occurrence.frame);
  };
  BRepExtrema_DistShapeShape nearest(placed(pair.first), placed(pair.second));
  if (!nearest.IsDone() || nearest.NbSolution() == 0) {
    throw Error(ErrorCode::open_cascade_failed, {"", ""},
                "Open CASCADE found no distance between two solids", "measure it on the parts");
  }
  return {nearest.InnerSolution() ? 0.0 : nearest.Value(), from_occt(nearest.PointOnShape1(1)),
          from_occt(nearest.PointOnShape2(1))};
}

std::string search(const Model& model, const std::vector<BoxedPair>& pairs) {
  Numbers numbers{};
  Found best;
  for (std::size_t i = 0; i < pairs.size() && pairs[i].boxes_apart < best.gap; ++i) {
    const Found found = guarded("measuring how far two solids are apart",
                                [&] { return distance_of(model, pairs[i].pair); });
    if (found.gap < best.gap) {
      best = found;
      numbers = {static_cast<double>(i),
                 best.gap,
                 best.at_a.x,
                 best.at_a.y,
                 best.at_a.z,
                 best.at_b.x,
                 best.at_b.y,
                 best.at_b.z};
    }
  }
  std::string bytes(sizeof numbers, '\0');
  std::memcpy(bytes.data(), numbers.data(), sizeof numbers);
  return bytes;
}

std::string why_not(const Contained& contained) {
  switch (contained.end) {
    case Contained::End::out_of_time:
      return "Open CASCADE ran out of time on it";
    case Contained::End::out_of_memory:
      return "Open CASCADE ran out of memory on it";
    case Contained::End::lacking:
      return fmt::format("the machine lacked what it takes ({})", contained.detail);
    default:
      return fmt::format("Open CASCADE failed on it ({})", contained.detail);
  }
}

}  // namespace

double boxes_apart(const Box& a, const Box& b) {
  const double x = std::max(a.low.x - b.high.x, b.low.x - a.high.x);
  const double y = std::max(a.low.y - b.high.y, b.low.y - a.high.y);
  const double z = std::max(a.low.z - b.high.z, b.low.z - a.high.z);
  return std::max({x, y, z});
}

std::optional<LeastDistance> least_distance(const Model& model,
                                            std::span<const OccurrencePair> pairs,
                                            const ReadLimits& limits) {
  if (pairs.empty() || model.shapes == nullptr) {
    return std::nullopt;
  }
  std::vector<BoxedPair> nearest_first;
  for (const OccurrencePair& pair : pairs) {
    nearest_first.push_back(
        {pair, boxes_apart(model.occurrences[pair.first].box, model.occurrences[pair.second].box)});
  }
  std::ranges::stable_sort(nearest_first, {}, &BoxedPair::boxes_apart);
  ReadLimits of_child = limits;
  of_child.seconds = std::min(limits.seconds, seconds_left());
  of_child.memory_mb = std::min(limits.memory_mb, std::max(0.0, memory_mb_left()));
  const Contained contained = run_contained([&] { return search(model, nearest_first); }, of_child);
  Numbers numbers{};
  if (contained.end != Contained::End::finished || contained.bytes.size() != sizeof numbers) {
    const OccurrencePair& first = nearest_first.front().pair;
    return LeastDistance{first.first, first.second, {}, {}, {}, why_not(contained)};
  }
  std::memcpy(numbers.data(), contained.bytes.data(), sizeof numbers);
  const OccurrencePair& of = nearest_first.at(static_cast<std::size_t>(numbers[0])).pair;
  return LeastDistance{of.first,
                       of.second,
                       numbers[1],
                       {numbers[2], numbers[3], numbers[4]},
                       {numbers[5], numbers[6], numbers[7]},
                       {}};
}

}  // namespace spotblue
