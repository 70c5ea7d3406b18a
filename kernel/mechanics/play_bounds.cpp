#include "mechanics/play_bounds.hpp"

#include <algorithm>
#include <cmath>
#include <queue>
#include <utility>

#include "mechanics/box_lp.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

// What sums of lengths are rounded by, mm.
constexpr double kSamePlay_mm = 1e-11;
// Boxes or loops looked at before it is said that there are too many.
constexpr std::size_t kMostBoxes = 20'000;
constexpr std::size_t kMostLoops = 2'000;

// Counts what is looked at.
class Count {
 public:
  explicit Count(std::size_t most) : left_(most) {}
  void one() {
    if (left_-- == 0) {
      throw TooManyWays();
    }
    stop_if_asked();
  }

 private:
  std::size_t left_;
};

std::vector<std::size_t> stops_of(const FoundLoop& loop) {
  std::vector<std::size_t> stops = loop.ahead;
  stops.insert(stops.end(), loop.back.begin(), loop.back.end());
  return stops;
}

// A box, and the tightest loop of its least gaps: nothing in the box is below that bound.
struct Branch {
  LengthBox box;
  FoundLoop loop;
  double bound = 0.0;
  bool operator<(const Branch& other) const { return bound > other.bound; }  // least first
};

// The two halves of a box that matter: a minimum of linear functions is least where the length is
// at a limit.
template <typename Look>
void look_at_limits(const LengthBox& box, std::size_t length, const Look& look) {
  for (const bool high : {false, true}) {
    LengthBox part = box;
    (high ? part.low : part.high)[length] = high ? box.high[length] : box.low[length];
    look(std::move(part));
  }
}

// Lengths within a box at which no loop found so far is too short, farther and farther.
class Cuts {
 public:
  Cuts(const PlayNet& net, const PlayWays& ways, const LengthBox& box, Limits play)
      : net_(net), ways_(ways), lp_(with(box.low, play.lower), with(box.high, play.upper)) {}

  [[nodiscard]] std::size_t play() const { return net_.lengths.size(); }

  // The sum is no less than the play.
  void no_less_than_play(PlaySum sum) {
    sum.push_back(-1.0);
    lp_.demand(std::move(sum), 0.0);
  }
  void no_less_than(PlaySum sum, double value) {
    sum.push_back(0.0);
    lp_.demand(std::move(sum), -value);
  }
  // Whether a loop was short at these lengths, which now is none.
  bool lengthen(const std::vector<double>& gaps) {
    const auto loop = ways_.short_loop(gaps);
    if (loop) {
      no_less_than(sum_of(net_, *loop), 0.0);
    }
    return loop.has_value();
  }
  [[nodiscard]] std::optional<std::vector<double>> best(std::size_t variable, Toward toward) const {
    return lp_.best(variable, toward);
  }

 private:
  static std::vector<double> with(std::vector<double> all, Length play) {
    all.push_back(play.in_mm());
    return all;
  }
  const PlayNet& net_;
  const PlayWays& ways_;
  BoxLp lp_;
};

}  // namespace

PlayLoop loop_of(const FoundLoop& found) { return {found.ahead, found.back, terms_of(found.sum)}; }

std::optional<FoundLoop> tightest(const PlayQuestion& asked, const std::vector<double>& gaps) {
  auto ahead = asked.ways.shortest(asked.on, asked.of, gaps);
  auto back = ahead ? asked.ways.shortest(asked.of, asked.on, gaps) : std::nullopt;
  if (!ahead || !back) {
    return std::nullopt;
  }
  std::reverse(back->begin(), back->end());
  FoundLoop loop{std::move(*ahead), std::move(*back), {}, 0.0, {}};
  const std::vector<std::size_t> stops = stops_of(loop);
  loop.sum = sum_of(asked.net, stops);
  for (const std::size_t stop : stops) {
    loop.value += gaps[stop];
  }
  return loop;
}

std::optional<FoundLoop> least_play(const PlayQuestion& asked, const LengthBox& box) {
  std::optional<FoundLoop> best;
  std::priority_queue<Branch> open;
  const auto look = [&](LengthBox part) {
    auto loop = tightest(asked, least_gaps(asked.net, part));
    if (!loop) {
      return;
    }
    const double bound = loop->value;
    loop->lengths = where_least(loop->sum, part);
    loop->value = value_at(loop->sum, loop->lengths);
    if (!best || loop->value < best->value) {
      best = loop;
    }
    open.push({std::move(part), std::move(*loop), bound});
  };
  look(box);
  for (Count count(kMostBoxes); !open.empty() && open.top().bound < best->value - kSamePlay_mm;) {
    count.one();
    const Branch branch = open.top();
    open.pop();
    const std::size_t length = most_shared(asked.net, stops_of(branch.loop), branch.box);
    if (length < asked.net.lengths.size()) {
      look_at_limits(branch.box, length, look);
    }
  }
  return best;
}

std::optional<FoundLoop> greatest_play(const PlayQuestion& asked, const LengthBox& box,
                                       Counting counting) {
  const auto first = tightest(asked, gaps_at(asked.net, box.low));
  if (!first) {
    return std::nullopt;
  }
  const double most = value_at(first->sum, where_greatest(first->sum, box));
  // No loop is shorter than every stop at its least, once each way.
  double least = most;
  for (const PlayStop& stop : asked.net.stops) {
    for (const PlayTerm& term : stop.gap) {
      const double longest =
          std::max(std::abs(box.low[term.length]), std::abs(box.high[term.length]));
      least -= 2.0 * std::abs(term.count) * longest;
    }
  }
  Cuts cuts(asked.net, asked.ways, box, {Length::mm(least), Length::mm(most)});
  cuts.no_less_than_play(first->sum);
  for (Count count(kMostLoops);;) {
    count.one();
    auto at = cuts.best(cuts.play(), Toward::greatest);
    if (!at) {
      return std::nullopt;
    }
    const double play = at->back();
    at->pop_back();
    const std::vector<double> gaps = gaps_at(asked.net, *at);
    if (counting == Counting::that_go_together && cuts.lengthen(gaps)) {
      continue;
    }
    auto loop = tightest(asked, gaps);
    if (loop->value >= play - kSamePlay_mm) {
      loop->lengths = std::move(*at);
      return loop;
    }
    cuts.no_less_than_play(loop->sum);
  }
}

std::optional<double> farthest_with_play(const PlayQuestion& asked, const LengthBox& box,
                                         double play, std::size_t length, bool greatest) {
  Cuts cuts(asked.net, asked.ways, box, {});
  for (Count count(kMostLoops);;) {
    count.one();
    auto at = cuts.best(length, greatest ? Toward::greatest : Toward::least);
    if (!at) {
      return std::nullopt;
    }
    at->pop_back();
    const std::vector<double> gaps = gaps_at(asked.net, *at);
    if (cuts.lengthen(gaps)) {
      continue;
    }
    const auto loop = tightest(asked, gaps);
    if (!loop || loop->value >= play - kSamePlay_mm) {
      return (*at)[length];
    }
    cuts.no_less_than(loop->sum, play);
  }
}

std::optional<std::vector<std::size_t>> tight_loop(const PlayNet& net, const PlayWays& ways,
                                                   const LengthBox& box) {
  std::vector<LengthBox> open{box};
  for (Count count(kMostBoxes); !open.empty();) {
    count.one();
    const LengthBox part = std::move(open.back());
    open.pop_back();
    auto loop = ways.short_loop(least_gaps(net, part));
    if (!loop) {
      continue;
    }
    const PlaySum sum = sum_of(net, *loop);
    if (value_at(sum, where_least(sum, part)) < 0.0) {
      return loop;
    }
    const std::size_t length = most_shared(net, *loop, part);
    if (length < net.lengths.size()) {
      look_at_limits(part, length, [&open](LengthBox half) { open.push_back(std::move(half)); });
    }
  }
  return std::nullopt;
}

bool ever_together(const PlayNet& net, const PlayWays& ways, const LengthBox& box) {
  Cuts cuts(net, ways, box, {});
  for (Count count(kMostLoops);;) {
    count.one();
    auto at = cuts.best(cuts.play(), Toward::least);
    if (!at) {
      return false;
    }
    at->pop_back();
    if (!cuts.lengthen(gaps_at(net, *at))) {
      return true;
    }
  }
}

}  // namespace spotblue
