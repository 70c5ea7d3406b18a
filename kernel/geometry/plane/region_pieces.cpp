#include "geometry/plane/region_pieces.hpp"

#include "base/disjoint_sets.hpp"
#include "geometry/plane/region_edge.hpp"

namespace spotblue {
namespace {

struct Cut {
  double t = 0.0;
  std::size_t point = 0;
};

/// The edges with their ends (points 2 i and 2 i + 1 for edge i) and the cuts found so far.
struct Cutting {
  const std::vector<OwnedEdge>& edges;
  double tolerance = 0.0;
  std::vector<Point2> points;
  std::vector<std::vector<Cut>> cuts;
};

void cut_at(Cutting& work, std::size_t i, std::size_t k, Point2 p, std::size_t point) {
  const auto ti = parameter_on(work.edges[i].edge, p, work.tolerance);
  if (!ti) {
    return;
  }
  const auto tk = parameter_on(work.edges[k].edge, p, work.tolerance);
  if (!tk) {
    return;
  }
  if (point == work.points.size()) {
    work.points.push_back(p);
  }
  if (*ti > 0.0 && *ti < 1.0) {
    work.cuts[i].push_back({*ti, point});
  }
  if (*tk > 0.0 && *tk < 1.0) {
    work.cuts[k].push_back({*tk, point});
  }
}

void cut_pair(Cutting& work, std::size_t i, std::size_t k) {
  const OwnedEdge& a = work.edges[i];
  const OwnedEdge& b = work.edges[k];
  for (const std::size_t point : {2 * i, 2 * i + 1, 2 * k, 2 * k + 1}) {
    cut_at(work, i, k, work.points[point], point);
  }
  if (a.owner != b.owner) {
    for (const Point2 p : carrier_crossings(a.edge, b.edge, work.tolerance)) {
      cut_at(work, i, k, p, work.points.size());
    }
  }
}

void cut_all(Cutting& work) {
  std::vector<Extent2> boxes;
  boxes.reserve(work.edges.size());
  for (const OwnedEdge& owned : work.edges) {
    boxes.push_back(edge_extent(owned.edge));
  }
  std::vector<std::size_t> order(work.edges.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&](std::size_t i, std::size_t k) {
    return boxes[i].low.u != boxes[k].low.u ? boxes[i].low.u < boxes[k].low.u : i < k;
  });
  for (std::size_t n = 0; n < order.size(); ++n) {
    const Extent2& box = boxes[order[n]];
    for (std::size_t m = n + 1;
         m < order.size() && boxes[order[m]].low.u <= box.high.u + work.tolerance; ++m) {
      if (boxes_meet(box, boxes[order[m]], work.tolerance)) {
        cut_pair(work, std::min(order[n], order[m]), std::max(order[n], order[m]));
      }
    }
  }
}

/// The node of each point: the first of the points that lie together.
std::vector<std::size_t> nodes_of(const std::vector<Point2>& points, double tolerance) {
  std::vector<std::size_t> order(points.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&](std::size_t i, std::size_t k) {
    return points[i].u != points[k].u ? points[i].u < points[k].u : i < k;
  });
  DisjointSets sets(points.size());
  for (std::size_t n = 0; n < order.size(); ++n) {
    const Point2 p = points[order[n]];
    for (std::size_t m = n + 1; m < order.size() && points[order[m]].u - p.u <= tolerance; ++m) {
      if (norm(points[order[m]] - p) <= tolerance) {
        sets.join(order[n], order[m]);
      }
    }
  }
  std::vector<std::size_t> nodes(points.size());
  for (std::size_t i = 0; i < nodes.size(); ++i) {
    nodes[i] = sets.root(i);
  }
  return nodes;
}

void add_pieces(const Cutting& work, const std::vector<std::size_t>& nodes, std::size_t i,
                std::vector<Piece>& pieces) {
  const Edge2& edge = work.edges[i].edge;
  const double length = edge_length(edge);
  double t = 0.0;
  std::size_t node = nodes[2 * i];
  const auto add_up_to = [&](double end_t, std::size_t end_node) {
    const double piece_length = (end_t - t) * length;
    // What has shrunk to a node is dropped; a full circle comes back to its node the long way.
    if (end_node != node || piece_length > 8.0 * work.tolerance) {
      Edge2 part = stretch(edge, t, end_t);
      const Point2 middle = point_at(part, 0.5);
      part.from = work.points[node];
      part.to = work.points[end_node];
      pieces.push_back({part, node, end_node, work.edges[i].owner, middle, piece_length});
    }
    t = end_t;
    node = end_node;
  };
  for (const Cut& cut : work.cuts[i]) {
    add_up_to(cut.t, nodes[cut.point]);
  }
  add_up_to(1.0, nodes[2 * i + 1]);
}

}  // namespace

Pieces cut_where_they_meet(const std::vector<OwnedEdge>& edges, double tolerance) {
  Cutting work{edges, tolerance, {}, std::vector<std::vector<Cut>>(edges.size())};
  work.points.reserve(2 * edges.size());
  for (const OwnedEdge& owned : edges) {
    work.points.push_back(owned.edge.from);
    work.points.push_back(owned.edge.to);
  }
  cut_all(work);
  const std::vector<std::size_t> nodes = nodes_of(work.points, tolerance);
  Pieces result{{}, work.points.size()};
  result.pieces.reserve(2 * edges.size());
  for (std::size_t i = 0; i < edges.size(); ++i) {
    std::sort(work.cuts[i].begin(), work.cuts[i].end(),
              [](const Cut& x, const Cut& y) { return x.t < y.t; });
    add_pieces(work, nodes, i, result.pieces);
  }
  return result;
}

}  // namespace spotblue
