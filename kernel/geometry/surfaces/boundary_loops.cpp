#include "geometry/surfaces/boundary_loops.hpp"

#include <algorithm>
#include <cstddef>
#include <unordered_map>
#include <utility>

namespace spotblue {
namespace {

bool is_backwards(const EdgeCurve& edge) { return edge.first > edge.last; }

// An edge that the face uses once each way bounds nothing.
std::vector<const EdgeCurve*> without_seams(std::span<const EdgeCurve> edges) {
  std::vector<const EdgeCurve*> left;
  std::unordered_map<const void*, std::size_t> place;  // in `left`, of an edge's first use
  for (const EdgeCurve& edge : edges) {
    const auto [known, fresh] = place.emplace(edge.shared, left.size());
    if (!fresh && left[known->second] != nullptr &&
        is_backwards(*left[known->second]) != is_backwards(edge)) {
      left[known->second] = nullptr;
    } else {
      left.push_back(&edge);
    }
  }
  std::erase(left, nullptr);
  return left;
}

// Edges by the vertex they begin at; those not yet in a loop.
class OpenEdges {
 public:
  explicit OpenEdges(const std::vector<const EdgeCurve*>& edges) {
    for (auto edge = edges.rbegin(); edge != edges.rend(); ++edge) {
      from_[(*edge)->begins].push_back(*edge);
    }
  }
  // The first in the face's order that begins there; null when none is left.
  const EdgeCurve* take(const void* vertex) {
    const auto found = from_.find(vertex);
    if (found == from_.end() || found->second.empty()) {
      return nullptr;
    }
    const EdgeCurve* edge = found->second.back();
    found->second.pop_back();
    return edge;
  }
  bool take(const EdgeCurve& edge) { return std::erase(from_[edge.begins], &edge) > 0; }

 private:
  std::unordered_map<const void*, std::vector<const EdgeCurve*>> from_;
};

}  // namespace

EdgeLoops boundary_loops(std::span<const EdgeCurve> edges) {
  const std::vector<const EdgeCurve*> bounding = without_seams(edges);
  OpenEdges open(bounding);
  EdgeLoops result;
  for (const EdgeCurve* first : bounding) {
    if (!open.take(*first)) {
      continue;
    }
    EdgeLoop loop{first};
    while (loop.back()->ends != first->begins) {
      const EdgeCurve* next = open.take(loop.back()->ends);
      if (next == nullptr) {
        result.complete = false;
        break;
      }
      loop.push_back(next);
    }
    result.loops.push_back(std::move(loop));
  }
  return result;
}

}  // namespace spotblue
