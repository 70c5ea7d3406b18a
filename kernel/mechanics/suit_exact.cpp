#include "mechanics/suit_exact.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <set>
#include <utility>

#include "mechanics/box_lp.hpp"

namespace spotblue {
namespace {

// What is not bounded is looked for as far as this times the largest size drawn: beyond that is no
// size of these parts.
constexpr double kFar = 10.0;
// Sizes of the programme are of this order at most, so that its rounding is far below any length.
constexpr double kOrder = 100.0;
// What every row gives, of the programme's unit, so that rows without any room are not lost to
// rounding.
constexpr double kGives = 1e-10;
// Ends farther apart than this, mm, are not one.
constexpr double kOtherEnd_mm = 1e-3;

// Rows and sizes as the two kinds of node of a graph: a tree has one edge less
// than nodes.
bool is_tree(const std::vector<SuitRow>& rows) {
  std::set<std::size_t> sizes;
  std::size_t shared = 0;
  std::size_t edges = 0;
  for (const SuitRow& row : rows) {
    for (const auto& [size, factor] : row.terms) {
      sizes.insert(size);
    }
    if (row.terms.size() > 1) {
      ++shared;
      edges += row.terms.size();
    }
  }
  return edges < shared + sizes.size();
}

// The rows as demands of linear programmes, counted from the middle of the span
// of each size.
class Programme {
 public:
  Programme(const std::vector<SuitRow>& rows, const std::vector<Interval>& spans,
            const std::vector<double>& drawn, double reach = kFar)
      : rows_(rows) {
    double largest = 1.0;
    for (const SuitRow& row : rows) {
      for (const auto& [size, factor] : row.terms) {
        sizes_.push_back(size);
        largest = std::max(largest, std::abs(drawn[size]));
      }
    }
    std::sort(sizes_.begin(), sizes_.end());
    sizes_.erase(std::unique(sizes_.begin(), sizes_.end()), sizes_.end());
    far_ = reach * largest;
    for (const std::size_t size : sizes_) {
      const auto [low, high] = spans[size];
      const double from = std::isfinite(low) ? low : -far_;
      const double to = std::isfinite(high) ? high : far_;
      zero_.push_back(0.5 * (from + to));
      reach_.push_back(0.5 * (to - from));
      unit_ = std::max(unit_, reach_.back() / kOrder);
    }
  }

  // What the size may be; nothing where no sizes keep all rows.
  [[nodiscard]] std::optional<Interval> span(std::size_t number) const {
    const auto least = best(number, Toward::least);
    const auto greatest = best(number, Toward::greatest);
    if (!least || !greatest) {
      return std::nullopt;
    }
    return Interval{zero_[number] + unit_ * (*least)[number],
                    zero_[number] + unit_ * (*greatest)[number]};
  }

  // By how much one row must give for all to hold; nothing where that does not
  // do.
  [[nodiscard]] std::optional<double> must_give(std::size_t row) const {
    BoxLp programme = box(row);
    const auto found = programme.best(sizes_.size(), Toward::least);
    return found ? std::optional(unit_ * found->back()) : std::nullopt;
  }

  [[nodiscard]] const std::vector<std::size_t>& sizes() const { return sizes_; }

 private:
  [[nodiscard]] std::optional<std::vector<double>> best(std::size_t number, Toward toward) const {
    return box(rows_.size()).best(number, toward);
  }

  // The variables are the sizes, and last what the row `gives` is let off by.
  [[nodiscard]] BoxLp box(std::size_t gives) const {
    std::vector<double> low, high;
    for (const double reach : reach_) {
      low.push_back(-reach / unit_);
      high.push_back(reach / unit_);
    }
    low.push_back(0.0);
    high.push_back(gives < rows_.size() ? far_ / unit_ : 0.0);
    BoxLp programme(std::move(low), std::move(high));
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      const SuitRow& row = rows_[i];
      std::vector<double> factors(sizes_.size() + 1, 0.0);
      double middle = 0.0;
      for (const auto& [size, factor] : row.terms) {
        const auto at = static_cast<std::size_t>(
            std::lower_bound(sizes_.begin(), sizes_.end(), size) - sizes_.begin());
        factors[at] = factor;
        middle += factor * zero_[at];
      }
      factors.back() = i == gives ? 1.0 : 0.0;
      programme.demand(factors, (middle - row.least) / unit_ + kGives);
      for (double& factor : factors) {
        factor = -factor;
      }
      factors.back() = -factors.back();
      programme.demand(std::move(factors), (row.greatest - middle) / unit_ + kGives);
    }
    return programme;
  }

  const std::vector<SuitRow>& rows_;
  std::vector<std::size_t> sizes_;    // ascending
  std::vector<double> zero_, reach_;  // by place in sizes_
  double far_ = 0.0;                  // mm
  double unit_ = 1.0;                 // mm for 1 of the programme
};

// Rows that can not hold together, none of which can be left out.
SuitContradiction contradiction_of(std::vector<SuitRow> rows, const std::vector<Interval>& start,
                                   const std::vector<double>& drawn) {
  for (std::size_t i = rows.size(); i-- > 0;) {
    std::vector<SuitRow> fewer = rows;
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
    if (!fewer.empty() && !Programme(fewer, start, drawn).span(0)) {
      rows = std::move(fewer);
    }
  }
  const auto& [size, factor] = rows.front().terms.front();
  SuitContradiction found{size, rows.front().source, rows.back().source, {}, 0.0};
  for (std::size_t i = 1; i + 1 < rows.size(); ++i) {
    found.through.push_back(rows[i].source);
  }
  found.short_by = Programme(rows, start, drawn).must_give(0).value_or(0.0) / std::abs(factor);
  return found;
}

}  // namespace

SuitBounds exact_suit_bounds(const std::vector<SuitRow>& rows, const std::vector<Interval>& start,
                             const std::vector<double>& drawn) {
  SuitBounds bounds = suit_bounds(rows, start);
  if (bounds.contradiction || is_tree(rows)) {
    return bounds;
  }
  // What ends elsewhere when it is looked for farther has no end.
  const Programme programme(rows, bounds.spans, drawn);
  const Programme farther(rows, bounds.spans, drawn, 2.0 * kFar);
  for (std::size_t i = 0; i < programme.sizes().size(); ++i) {
    const auto exact = programme.span(i);
    const auto other = farther.span(i);
    if (!exact || !other) {
      bounds.contradiction = contradiction_of(rows, start, drawn);
      return bounds;
    }
    Interval& span = bounds.spans[programme.sizes()[i]];
    if (std::abs(exact->low - other->low) < kOtherEnd_mm) {
      span.low = std::max(span.low, exact->low);
    }
    if (std::abs(exact->high - other->high) < kOtherEnd_mm) {
      span.high = std::max(span.low, std::min(span.high, exact->high));
    }
  }
  return bounds;
}

}  // namespace spotblue
