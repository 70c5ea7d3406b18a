#include "spotblue/mechanics/make_to_suit.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <utility>

#include "mechanics/suit_exact.hpp"

namespace spotblue {
namespace {

constexpr double kEndless = std::numeric_limits<double>::infinity();

// Sizes that share demands, one way or another; each such family is a problem of its own.
std::vector<std::vector<std::size_t>> families(std::size_t count,
                                               const std::vector<SuitRow>& rows) {
  std::vector<std::size_t> head(count);
  std::iota(head.begin(), head.end(), std::size_t{0});
  const auto find = [&head](std::size_t size) {
    while (head[size] != size) {
      size = head[size];
    }
    return size;
  };
  for (const SuitRow& row : rows) {
    for (const auto& [size, factor] : row.terms) {
      const std::size_t a = find(row.terms.front().first);
      const std::size_t b = find(size);
      head[std::max(a, b)] = std::min(a, b);
    }
  }
  std::vector<std::vector<std::size_t>> all(count);
  for (std::size_t size = 0; size < count; ++size) {
    all[find(size)].push_back(size);
  }
  std::erase_if(all, [](const auto& family) { return family.empty(); });
  return all;
}

class Family {
 public:
  Family(const SuitProblem& problem, const std::vector<SuitRow>& rows,
         std::vector<std::size_t> sizes)
      : problem_(problem), sizes_(std::move(sizes)) {
    for (const SuitRow& row : rows) {
      if (std::binary_search(sizes_.begin(), sizes_.end(), row.terms.front().first)) {
        rows_.push_back(row);
      }
    }
    for (const SuitSize& size : problem.sizes) {
      drawn_.push_back(size.drawn.in_mm());
    }
  }

  void add_to(SuitPlan& plan) {
    if (add_impossible_rows(plan)) {
      return;
    }
    const std::vector<Interval> open(problem_.sizes.size(), Interval{-kEndless, kEndless});
    bounds_ = exact_suit_bounds(rows_, open, drawn_);
    if (bounds_.contradiction) {
      plan.conflicts.push_back(conflict(*bounds_.contradiction));
      return;
    }
    choose_order();
    allow_for_measuring(open);
    choose_middles();
    grow();
    add_windows(plan);
  }

 private:
  [[nodiscard]] double uncertainty(std::size_t size) const {
    return problem_.sizes[size].uncertainty.in_mm();
  }

  bool add_impossible_rows(SuitPlan& plan) const {
    bool any = false;
    for (const SuitRow& row : rows_) {
      if (row.least > row.greatest + kSuitMeets) {
        SuitConflict found;
        found.size = row.terms.front().first;
        found.first = suit_source(problem_, row.source);
        found.short_by =
            Length::mm((row.least - row.greatest) / std::abs(row.terms.front().second));
        plan.conflicts.push_back(std::move(found));
        any = true;
      }
    }
    return any;
  }

  [[nodiscard]] SuitConflict conflict(const SuitContradiction& contradiction) const {
    SuitConflict found;
    found.size = contradiction.size;
    found.first = suit_source(problem_, contradiction.lower_by);
    found.second = suit_source(problem_, contradiction.upper_by);
    for (const std::size_t source : contradiction.through) {
      found.through.push_back(suit_source(problem_, source));
    }
    found.short_by = Length::mm(contradiction.short_by);
    return found;
  }

  [[nodiscard]] bool mates_exist(std::size_t size) const {
    return std::any_of(rows_.begin(), rows_.end(), [&](const SuitRow& row) {
      return row.terms.size() == 1 && row.terms.front().first == size &&
             row.source < problem_.demands.size();
    });
  }

  void choose_order() {
    order_ = sizes_;
    const auto width = [this](std::size_t size) {
      return bounds_.spans[size].high - bounds_.spans[size].low;
    };
    std::stable_sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
      const bool a_ready = mates_exist(a);
      const bool b_ready = mates_exist(b);
      return a_ready != b_ready ? a_ready : width(a) < width(b) - kSuitRounding;
    });
  }

  // Each size must be left as much as its measurement needs; where there is not that much, none is
  // set aside and the share left of the windows says so.
  void allow_for_measuring(const std::vector<Interval>& open) {
    half_.assign(problem_.sizes.size(), 0.0);
    inner_ = rows_;
    for (SuitRow& row : inner_) {
      for (const auto& [size, factor] : row.terms) {
        row.least += std::abs(factor) * uncertainty(size);
        row.greatest -= std::abs(factor) * uncertainty(size);
      }
    }
    const bool room = std::all_of(inner_.begin(), inner_.end(), [](const SuitRow& row) {
      return row.least <= row.greatest + kSuitMeets;
    });
    readings_ =
        room ? exact_suit_bounds(inner_, open, drawn_) : SuitBounds{{}, SuitContradiction{}};
    if (readings_.contradiction) {
      readings_ = bounds_;
      inner_ = rows_;
      return;
    }
    set_aside_ = true;
    for (const std::size_t size : sizes_) {
      half_[size] = uncertainty(size);
    }
  }

  [[nodiscard]] double middle(std::size_t size, const Interval& span) const {
    const double drawn = problem_.sizes[size].drawn.in_mm();
    const bool bounded = std::isfinite(span.low) && std::isfinite(span.high);
    return bounded ? 0.5 * (span.low + span.high) : std::max(span.low, std::min(span.high, drawn));
  }

  // One size after the other is set to its middle, and the rest follow.
  void choose_middles() {
    middle_.assign(problem_.sizes.size(), 0.0);
    SuitBounds left = readings_;
    for (const std::size_t size : order_) {
      middle_[size] = middle(size, left.spans[size]);
      std::vector<Interval> start = left.spans;
      start[size] = {middle_[size], middle_[size]};
      SuitBounds next = exact_suit_bounds(inner_, start, drawn_);
      // The middle is one of its values, but for rounding; the windows are proved at the end.
      if (next.contradiction) {
        next = left;
      }
      left = std::move(next);
    }
  }

  [[nodiscard]] double weight(std::size_t size) const {
    const auto own_width = [this](std::size_t other) {
      const auto& own = problem_.sizes[other].own;
      return own ? own->width().in_mm() : 0.0;
    };
    if (own_width(size) > 0.0) {
      return own_width(size);
    }
    double sum = 0.0;
    double count = 0.0;
    for (const std::size_t other : sizes_) {
      sum += own_width(other);
      count += own_width(other) > 0.0 ? 1.0 : 0.0;
    }
    return count > 0.0 ? sum / count : 1.0;
  }

  // What a row still has to give on its nearer side.
  [[nodiscard]] double slack(const SuitRow& row) const {
    double sum = 0.0;
    double used = 0.0;
    for (const auto& [size, factor] : row.terms) {
      sum += factor * middle_[size];
      used += std::abs(factor) * half_[size];
    }
    return std::min(sum - row.least, row.greatest - sum) - used;
  }

  // All windows widen together; those of a row that has no more to give stop.
  void grow() {
    std::vector<char> growing(problem_.sizes.size(), 0);
    for (const std::size_t size : sizes_) {
      growing[size] = 1;
    }
    while (true) {
      double step = kEndless;
      const SuitRow* full = nullptr;
      for (const SuitRow& row : rows_) {
        double rate = 0.0;
        for (const auto& [size, factor] : row.terms) {
          rate += growing[size] != 0 ? std::abs(factor) * weight(size) : 0.0;
        }
        const double until = rate > 0.0 ? std::max(0.0, slack(row)) / rate : kEndless;
        if (until < step) {
          step = until;
          full = &row;
        }
      }
      if (full == nullptr) {
        break;
      }
      for (const std::size_t size : sizes_) {
        half_[size] += growing[size] != 0 ? step * weight(size) : 0.0;
      }
      for (const auto& [size, factor] : full->terms) {
        growing[size] = 0;
      }
    }
  }

  // All values that keep every row whatever the others are within `spans`; reversed when none do.
  [[nodiscard]] Interval kept(std::size_t size, const std::vector<Interval>& spans) const {
    Interval span{-kEndless, kEndless};
    for (const SuitRow& row : rows_) {
      const auto term = std::find_if(row.terms.begin(), row.terms.end(),
                                     [size](const auto& entry) { return entry.first == size; });
      if (term == row.terms.end()) {
        continue;
      }
      const Interval others = sum_of_others(row, spans, size);
      const double a = (row.least - others.low) / term->second;
      const double b = (row.greatest - others.high) / term->second;
      span.low = std::max(span.low, term->second > 0.0 ? a : b);
      span.high = std::min(span.high, term->second > 0.0 ? b : a);
    }
    return span;
  }

  void add_windows(SuitPlan& plan) const {
    std::vector<Interval> hold(problem_.sizes.size());
    std::vector<Interval> measured(problem_.sizes.size());
    for (const std::size_t size : sizes_) {
      hold[size] = {middle_[size] - half_[size], middle_[size] + half_[size]};
    }
    // What one side had to give more than the other goes to the sizes in their turn.
    for (const std::size_t size : order_) {
      const Interval span = kept(size, hold);
      if (span.low > span.high + 10.0 * kSuitMeets) {
        return;
      }
      hold[size] = {std::min(span.low, span.high), std::max(span.low, span.high)};
    }
    for (const std::size_t size : sizes_) {
      const double target = 0.5 * (hold[size].low + hold[size].high);
      measured[size] = {target - uncertainty(size), target + uncertainty(size)};
    }
    for (std::size_t turn = 0; turn < order_.size(); ++turn) {
      const std::size_t size = order_[turn];
      if (!std::isfinite(hold[size].low) || !std::isfinite(hold[size].high)) {
        continue;
      }
      SuitWindow window = window_of(size, hold[size], kept(size, measured));
      window.turn = static_cast<int>(turn) + 1;
      window.of = static_cast<int>(order_.size());
      plan.windows[size] = window;
    }
  }

  [[nodiscard]] SuitWindow window_of(std::size_t size, Interval hold, Interval last) const {
    SuitWindow window;
    window.size = size;
    window.hold = {Length::mm(hold.low), Length::mm(hold.high)};
    window.target = Length::mm(0.5 * (hold.low + hold.high));
    const double width = hold.high - hold.low;
    const double left = width - 2.0 * uncertainty(size);
    if (left >= 0.0) {
      window.accept = Limits{window.hold.lower + problem_.sizes[size].uncertainty,
                             window.hold.upper - problem_.sizes[size].uncertainty};
      window.share_left = width > 0.0 ? left / width : 0.0;
    }
    const Interval& first = readings_.spans[size];
    if (std::isfinite(first.low) && std::isfinite(first.high)) {
      // These were bounds of the reading; the size goes as much further as it may be misread.
      const double around = set_aside_ ? uncertainty(size) : 0.0;
      window.first = Limits{Length::mm(first.low - around), Length::mm(first.high + around)};
    }
    window.last =
        last.low <= last.high ? Limits{Length::mm(last.low), Length::mm(last.high)} : window.hold;
    return window;
  }

  const SuitProblem& problem_;
  std::vector<std::size_t> sizes_;  // ascending
  std::vector<double> drawn_;       // by size of the problem
  std::vector<SuitRow> rows_;
  std::vector<SuitRow> inner_;  // rows_ less what measuring needs
  SuitBounds bounds_, readings_;
  std::vector<std::size_t> order_;
  std::vector<double> middle_, half_;  // by size of the problem
  bool set_aside_ = false;
};

}  // namespace

SuitPlan make_to_suit(const SuitProblem& problem) {
  const std::vector<SuitRow> rows = suit_rows(problem);
  SuitPlan plan;
  plan.windows.resize(problem.sizes.size());
  for (std::vector<std::size_t>& family : families(problem.sizes.size(), rows)) {
    Family(problem, rows, std::move(family)).add_to(plan);
  }
  return plan;
}

}  // namespace spotblue
