#include "mechanics/suit_bounds.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

// Of a size in a demand; beyond these what is left of the sum is rounding. Choice of this program,
// no source.
constexpr double kLeastFactor = 1e-6;
constexpr double kMostFactor = 1e6;

void require_term(const SuitProblem& problem, const std::string& demand, const SuitTerm& term,
                  const std::string& place) {
  const std::size_t count =
      term.of == SuitOf::to_make ? problem.sizes.size() : problem.known.size();
  if (term.index >= count) {
    throw Error(ErrorCode::bad_input, {"", place + ".index"},
                fmt::format("{} needs an index below {}, got {}", demand, count, term.index),
                "list the size before the demand that speaks of it");
  }
  if (std::abs(term.factor) < kLeastFactor || std::abs(term.factor) > kMostFactor) {
    throw Error(ErrorCode::bad_input, {"", place + ".factor"},
                fmt::format("{} needs a factor of {:g} to {:g}, either sign, got {}", demand,
                            kLeastFactor, kMostFactor, term.factor),
                "leave the term out");
  }
}

void require_problem(const SuitProblem& problem) {
  require_value(problem, "problem");
  for (std::size_t i = 0; i < problem.demands.size(); ++i) {
    const SuitDemand& demand = problem.demands[i];
    for (std::size_t j = 0; j < demand.terms.size(); ++j) {
      require_term(problem, demand.name, demand.terms[j],
                   fmt::format("problem.demands[{}].terms[{}]", i, j));
    }
  }
}

SuitRow row_of(const SuitProblem& problem, std::size_t demand_number) {
  const SuitDemand& demand = problem.demands[demand_number];
  // The same size may stand on both sides of a demand; its factors are one.
  std::map<std::size_t, double> to_make;
  std::map<std::size_t, double> known;
  for (const SuitTerm& term : demand.terms) {
    (term.of == SuitOf::to_make ? to_make : known)[term.index] += term.factor;
  }
  SuitRow row;
  row.source = demand_number;
  row.least = (demand.wanted.lower - demand.constant).in_mm();
  row.greatest = (demand.wanted.upper - demand.constant).in_mm();
  for (const auto& [index, factor] : known) {
    const double a = factor * problem.known[index].limits.lower.in_mm();
    const double b = factor * problem.known[index].limits.upper.in_mm();
    row.least -= std::min(a, b);
    row.greatest -= std::max(a, b);
  }
  for (const auto& [index, factor] : to_make) {
    if (factor != 0.0) {
      row.terms.emplace_back(index, factor);
    }
  }
  return row;
}

// One end of what a size may be, and the sources that put it there.
struct End {
  std::size_t by = 0;
  std::set<std::size_t> behind;
};

struct Ends {
  std::vector<End> lower, upper;
};

class Inward {
 public:
  explicit Inward(const std::vector<Interval>& start) {
    bounds_.spans = start;
    ends_.lower.resize(start.size());
    ends_.upper.resize(start.size());
  }

  // Whether any bound of the row's sizes moved.
  bool apply(const SuitRow& row) {
    bool moved = false;
    for (const auto& [size, factor] : row.terms) {
      const Interval others = sum_of_others(row, bounds_.spans, size);
      const double a = (row.least - others.high) / factor;
      const double b = (row.greatest - others.low) / factor;
      moved = raise(size, std::min(a, b), row) || moved;
      moved = sink(size, std::max(a, b), row) || moved;
      Interval& span = bounds_.spans[size];
      if (span.low > span.high + kSuitMeets) {
        contradict(size);
        return false;
      }
      span.high = std::max(span.high, span.low);
    }
    return moved;
  }

  [[nodiscard]] bool stands() const { return !bounds_.contradiction.has_value(); }
  [[nodiscard]] SuitBounds result() const { return bounds_; }

 private:
  bool raise(std::size_t size, double value, const SuitRow& row) {
    if (!(value > bounds_.spans[size].low + kSuitRounding)) {
      return false;
    }
    bounds_.spans[size].low = value;
    ends_.lower[size] = end(size, row);
    return true;
  }

  bool sink(std::size_t size, double value, const SuitRow& row) {
    if (!(value < bounds_.spans[size].high - kSuitRounding)) {
      return false;
    }
    bounds_.spans[size].high = value;
    ends_.upper[size] = end(size, row);
    return true;
  }

  [[nodiscard]] End end(std::size_t size, const SuitRow& row) const {
    End made{row.source, {row.source}};
    for (const auto& [other, factor] : row.terms) {
      if (other != size) {
        made.behind.insert(ends_.lower[other].behind.begin(), ends_.lower[other].behind.end());
        made.behind.insert(ends_.upper[other].behind.begin(), ends_.upper[other].behind.end());
      }
    }
    return made;
  }

  void contradict(std::size_t size) {
    const End& lower = ends_.lower[size];
    const End& upper = ends_.upper[size];
    std::set<std::size_t> through = lower.behind;
    through.insert(upper.behind.begin(), upper.behind.end());
    through.erase(lower.by);
    through.erase(upper.by);
    bounds_.contradiction = SuitContradiction{size,
                                              lower.by,
                                              upper.by,
                                              {through.begin(), through.end()},
                                              bounds_.spans[size].low - bounds_.spans[size].high};
  }

  SuitBounds bounds_;
  Ends ends_;
};

}  // namespace

std::vector<SuitRow> suit_rows(const SuitProblem& problem) {
  require_problem(problem);
  std::vector<SuitRow> rows;
  for (std::size_t i = 0; i < problem.sizes.size(); ++i) {
    if (const auto& own = problem.sizes[i].own) {
      rows.push_back(
          {{{i, 1.0}}, own->lower.in_mm(), own->upper.in_mm(), problem.demands.size() + i});
    }
  }
  for (std::size_t i = 0; i < problem.demands.size(); ++i) {
    SuitRow row = row_of(problem, i);
    if (!row.terms.empty()) {
      rows.push_back(std::move(row));
    }
  }
  return rows;
}

const std::string& suit_source(const SuitProblem& problem, std::size_t source) {
  const std::size_t demands = problem.demands.size();
  return source < demands ? problem.demands[source].name : problem.sizes[source - demands].own_by;
}

Interval sum_of_others(const SuitRow& row, const std::vector<Interval>& sizes,
                       std::size_t without) {
  Interval sum;
  for (const auto& [size, factor] : row.terms) {
    if (size != without) {
      sum.low += factor * (factor > 0.0 ? sizes[size].low : sizes[size].high);
      sum.high += factor * (factor > 0.0 ? sizes[size].high : sizes[size].low);
    }
  }
  return sum;
}

SuitBounds suit_bounds(const std::vector<SuitRow>& rows, const std::vector<Interval>& start) {
  Inward inward(start);
  // A tree of demands settles within as many rounds as it is deep; demands in a ring may creep.
  const std::size_t rounds = 4 * start.size() + 8;
  for (std::size_t round = 0; round < rounds && inward.stands(); ++round) {
    bool moved = false;
    for (const SuitRow& row : rows) {
      moved = inward.apply(row) || moved;
      if (!inward.stands()) {
        break;
      }
    }
    if (!moved) {
      break;
    }
  }
  return inward.result();
}

}  // namespace spotblue
