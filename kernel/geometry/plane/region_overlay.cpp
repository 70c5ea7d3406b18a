#include "spotblue/geometry/region_overlay.hpp"

#include <array>
#include <cstdlib>
#include <limits>
#include <optional>
#include <span>
#include <utility>

#include "base/disjoint_sets.hpp"
#include "geometry/plane/region_edge.hpp"
#include "geometry/plane/region_pieces.hpp"

// Intersection and difference: cut all edges where they meet, let pieces that run on one another
// stand as one, ask of every chain of pieces whether it lies inside the other region, and keep what
// bounds the answer.

namespace spotblue {
namespace {

enum class Wanted { shared, rest };

constexpr double kTolerance = 1e-7;

/// Pieces that run on one another: how often each region runs along them, counted against itself,
/// and one piece of each in the direction that is left over.
struct Bundle {
  int net_a = 0, net_b = 0;
  std::size_t piece_a = 0, piece_b = 0;
};

/// +1 for a piece that runs from its lower to its higher node; a closed circle by its sweep.
int direction(const Piece& piece) {
  return piece.from == piece.to ? (piece.edge.sweep > 0.0 ? 1 : -1)
                                : (piece.from < piece.to ? 1 : -1);
}

std::pair<std::size_t, std::size_t> ends(const Piece& piece) {
  return std::minmax(piece.from, piece.to);
}

Bundle bundle_of(const std::vector<Piece>& pieces, std::span<const std::size_t> members) {
  Bundle bundle;
  for (const std::size_t i : members) {
    (pieces[i].owner == Owner::a ? bundle.net_a : bundle.net_b) += direction(pieces[i]);
  }
  for (const std::size_t i : members) {
    const bool of_a = pieces[i].owner == Owner::a;
    if ((of_a ? bundle.net_a : bundle.net_b) * direction(pieces[i]) > 0) {
      (of_a ? bundle.piece_a : bundle.piece_b) = i;
    }
  }
  return bundle;
}

std::vector<Bundle> bundles_of(const std::vector<Piece>& pieces, double tolerance) {
  std::vector<std::size_t> order(pieces.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&](std::size_t i, std::size_t k) {
    return std::pair{ends(pieces[i]), i} < std::pair{ends(pieces[k]), k};
  });
  std::vector<Bundle> bundles;
  for (auto first = order.begin(); first != order.end();) {
    const Piece& lead = pieces[*first];
    const auto same_ends = std::find_if(
        first, order.end(), [&](std::size_t i) { return ends(pieces[i]) != ends(lead); });
    // Nodes move a piece by up to the tolerance, hence twice it between two of them.
    const auto members = std::stable_partition(first, same_ends, [&](std::size_t i) {
      return norm(pieces[i].middle - lead.middle) <= 2.0 * tolerance;
    });
    bundles.push_back(bundle_of(pieces, {first, members}));
    first = members;
  }
  return bundles;
}

bool lies_inside(const Piece& piece, const Region& other, double tolerance) {
  Point2 best = piece.middle;
  double clearance = boundary_distance(other, best);
  for (const double t : {0.25, 0.75, 0.1, 0.9}) {
    if (clearance > 10.0 * tolerance) {
      break;
    }
    const Point2 p = point_at(piece.edge, t);
    const double away = boundary_distance(other, p);
    if (away > clearance) {
      best = p;
      clearance = away;
    }
  }
  return contains(other, best);
}

/// The region without its seams, when it has any: a point on a seam is neither left nor right of
/// it.
std::optional<Region> without_seams(const Region& region, Owner owner, const Pieces& cut,
                                    const std::vector<Bundle>& bundles,
                                    const std::vector<Edge2>& uncut) {
  Region clean{uncut, region.exact};
  std::size_t pieces = 0;
  for (const Piece& piece : cut.pieces) {
    pieces += piece.owner == owner ? 1 : 0;
  }
  for (const Bundle& bundle : bundles) {
    const int net = owner == Owner::a ? bundle.net_a : bundle.net_b;
    const std::size_t i = owner == Owner::a ? bundle.piece_a : bundle.piece_b;
    for (int n = 0; n < std::abs(net); ++n) {
      clean.edges.push_back(cut.pieces[i].edge);
    }
  }
  if (clean.edges.size() == uncut.size() + pieces) {
    return std::nullopt;
  }
  return clean;
}

/// Pieces that must lie on the same side of the other region, because they join where it has no
/// edge; each chain is asked once, at its longest piece.
class Chains {
 public:
  explicit Chains(const Pieces& cut) : cut_(cut), sets_(cut.pieces.size()) {
    constexpr std::size_t kNone = std::numeric_limits<std::size_t>::max();
    std::vector<std::array<std::size_t, 2>> at(cut.nodes, {kNone, kNone});
    for (std::size_t i = 0; i < cut.pieces.size(); ++i) {
      const Piece& piece = cut.pieces[i];
      for (const std::size_t node : {piece.from, piece.to}) {
        at[node][piece.owner == Owner::a ? 0 : 1] = i;
      }
    }
    for (std::size_t i = 0; i < cut.pieces.size(); ++i) {
      const Piece& piece = cut.pieces[i];
      for (const std::size_t node : {piece.from, piece.to}) {
        const auto [of_a, of_b] = at[node];
        if (of_a == kNone || of_b == kNone) {
          sets_.join(i, of_a == kNone ? of_b : of_a);
        }
      }
    }
    longest_.resize(cut.pieces.size());
    inside_.resize(cut.pieces.size());
    std::iota(longest_.begin(), longest_.end(), std::size_t{0});
    for (std::size_t i = 0; i < cut.pieces.size(); ++i) {
      std::size_t& longest = longest_[sets_.root(i)];
      longest = cut.pieces[i].length > cut.pieces[longest].length ? i : longest;
    }
  }

  bool inside(std::size_t piece, const Region& other, double tolerance) {
    const std::size_t chain = sets_.root(piece);
    if (!inside_[chain]) {
      inside_[chain] = lies_inside(cut_.pieces[longest_[chain]], other, tolerance);
    }
    return *inside_[chain];
  }

 private:
  const Pieces& cut_;
  DisjointSets sets_;
  std::vector<std::size_t> longest_;
  std::vector<std::optional<bool>> inside_;
};

/// A piece of the answer's boundary; `turned` when the answer runs along it the other way.
struct Kept {
  std::size_t piece = 0;
  bool turned = false;
};

std::optional<Kept> kept_of(const Bundle& bundle, Wanted wanted, Chains& chains, const Region& a,
                            const Region& b, double tolerance) {
  const bool shared = wanted == Wanted::shared;
  if (bundle.net_a != 0 && bundle.net_b != 0) {
    const bool same_side = (bundle.net_a > 0) == (bundle.net_b > 0);
    return same_side == shared ? std::optional<Kept>{{bundle.piece_a, false}} : std::nullopt;
  }
  if (bundle.net_a != 0 && chains.inside(bundle.piece_a, b, tolerance) == shared) {
    return Kept{bundle.piece_a, false};
  }
  if (bundle.net_b != 0 && chains.inside(bundle.piece_b, a, tolerance)) {
    return Kept{bundle.piece_b, !shared};
  }
  return std::nullopt;
}

struct Answer {
  Region region;
  bool closed = true;
};

/// The edges that can bound the answer, and those of each region that can only tell sides.
struct Sorted {
  std::vector<OwnedEdge> near;
  std::vector<Edge2> far_a, far_b;
};

Sorted sorted_by_reach(const Region& a, const Region& b, const Extent2& common, Wanted wanted,
                       double tolerance) {
  Sorted sorted;
  for (const Edge2& edge : a.edges) {
    if (wanted == Wanted::rest || boxes_meet(edge_extent(edge), common, tolerance)) {
      sorted.near.push_back({edge, Owner::a});
    } else {
      sorted.far_a.push_back(edge);
    }
  }
  for (const Edge2& edge : b.edges) {
    if (boxes_meet(edge_extent(edge), common, tolerance)) {
      sorted.near.push_back({edge, Owner::b});
    } else {
      sorted.far_b.push_back(edge);
    }
  }
  return sorted;
}

Answer overlay(const Region& a, const Region& b, const Extent2& common, Wanted wanted,
               double tolerance) {
  const auto [near, far_a, far_b] = sorted_by_reach(a, b, common, wanted, tolerance);
  const Pieces cut = cut_where_they_meet(near, tolerance);
  const std::vector<Bundle> bundles = bundles_of(cut.pieces, tolerance);
  const auto clean_a = without_seams(a, Owner::a, cut, bundles, far_a);
  const auto clean_b = without_seams(b, Owner::b, cut, bundles, far_b);
  Chains chains(cut);
  Answer answer{{{}, a.exact && b.exact}, true};
  std::vector<int> balance(cut.nodes, 0);
  for (const Bundle& bundle : bundles) {
    const auto kept =
        kept_of(bundle, wanted, chains, clean_a ? *clean_a : a, clean_b ? *clean_b : b, tolerance);
    if (kept) {
      const Piece& piece = cut.pieces[kept->piece];
      answer.region.edges.push_back(kept->turned ? reversed(piece.edge) : piece.edge);
      balance[piece.from] += kept->turned ? -1 : 1;
      balance[piece.to] -= kept->turned ? -1 : 1;
    }
  }
  answer.closed = std::all_of(balance.begin(), balance.end(), [](int n) { return n == 0; });
  return answer;
}

/// An answer whose loops do not close means that the tolerance fell between two features of the
/// outlines; another tolerance then sees them apart or together.
Region closed_overlay(const Region& a, const Region& b, const Extent2& common, Wanted wanted) {
  Answer first = overlay(a, b, common, wanted, kTolerance);
  for (const double tolerance : {0.1 * kTolerance, 5.0 * kTolerance, 0.01 * kTolerance}) {
    if (first.closed) {
      break;
    }
    Answer next = overlay(a, b, common, wanted, tolerance);
    if (next.closed) {
      first = std::move(next);
    }
  }
  first.region.exact = first.region.exact && first.closed;
  return first.region;
}

Region answer_of(const Region& a, const Region& b, Wanted wanted) {
  const Region nothing{{}, a.exact && b.exact};
  if (is_empty(a) || is_empty(b)) {
    return wanted == Wanted::shared ? nothing : a;
  }
  const Extent2 box_a = extent(a);
  const Extent2 box_b = extent(b);
  if (!boxes_meet(box_a, box_b, -kTolerance)) {
    return wanted == Wanted::shared ? nothing : a;
  }
  const Extent2 common{
      {std::max(box_a.low.u, box_b.low.u), std::max(box_a.low.v, box_b.low.v)},
      {std::min(box_a.high.u, box_b.high.u), std::min(box_a.high.v, box_b.high.v)}};
  return closed_overlay(a, b, common, wanted);
}

}  // namespace

Region intersect(const Region& a, const Region& b) { return answer_of(a, b, Wanted::shared); }

Region subtract(const Region& a, const Region& b) { return answer_of(a, b, Wanted::rest); }

}  // namespace spotblue
