#include "geometry/boundary_loops.hpp"

#include <algorithm>
#include <cstddef>

namespace spotblue {
namespace {

constexpr double kSameSpot = 1e-5;  // mm: vertices of files that state no finer uncertainty

bool same(Point a, Point b) { return norm(a - b) < kSameSpot; }

// One is the other run backwards.
bool undoes(const EdgeCurve& a, const EdgeCurve& b) {
  return same(a.from, b.to) && same(a.to, b.from) &&
         same(point_along(a, 0.37).at, point_along(b, 0.63).at) &&
         same(point_along(a, 0.71).at, point_along(b, 0.29).at);
}

std::vector<const EdgeCurve*> without_seams(std::span<const EdgeCurve> edges) {
  std::vector<const EdgeCurve*> left;
  for (const EdgeCurve& edge : edges) {
    const auto back = std::find_if(left.begin(), left.end(),
                                   [&](const EdgeCurve* other) { return undoes(*other, edge); });
    if (back == left.end()) {
      left.push_back(&edge);
    } else {
      left.erase(back);
    }
  }
  return left;
}

}  // namespace

EdgeLoops boundary_loops(std::span<const EdgeCurve> edges) {
  std::vector<const EdgeCurve*> open = without_seams(edges);
  EdgeLoops result;
  while (!open.empty()) {
    EdgeLoop loop{open.back()};
    open.pop_back();
    while (!same(loop.back()->to, loop.front()->from)) {
      const auto next = std::find_if(open.begin(), open.end(), [&](const EdgeCurve* edge) {
        return same(edge->from, loop.back()->to);
      });
      if (next == open.end()) {
        result.complete = false;
        break;
      }
      loop.push_back(*next);
      open.erase(next);
    }
    result.loops.push_back(std::move(loop));
  }
  return result;
}

}  // namespace spotblue
