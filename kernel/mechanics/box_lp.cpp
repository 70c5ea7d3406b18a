#include "mechanics/box_lp.hpp"

#include <limits>
#include <numeric>
#include <utility>

#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

// Above the rounding of sums of lengths, below any length.
constexpr double kNothing = 1e-11;
constexpr double kLeastPivot = 1e-9;

// Rows of basic variables as sums of the others, which are 0; all variables are 0 or more.
class Dictionary {
 public:
  explicit Dictionary(std::size_t columns) : cost_(columns + 1, 0.0), others_(columns) {
    std::iota(others_.begin(), others_.end(), std::size_t{0});
  }

  void cost(std::size_t column) { cost_[column] = 1.0; }
  // Factors of the columns, and the constant last.
  void add(std::vector<double> row) {
    basic_.push_back(others_.size() + basic_.size());
    rows_.push_back(std::move(row));
  }

  // False where no values keep all rows at 0 or more.
  bool solve() {
    for (std::size_t row = leaving(); row < rows_.size(); row = leaving()) {
      stop_if_asked();
      const std::size_t column = entering(row);
      if (column == others_.size()) {
        return false;
      }
      pivot(row, column);
    }
    return true;
  }

  // By the number it was added with.
  [[nodiscard]] double value(std::size_t variable) const {
    for (std::size_t row = 0; row < rows_.size(); ++row) {
      if (basic_[row] == variable) {
        return rows_[row].back();
      }
    }
    return 0.0;
  }

 private:
  [[nodiscard]] std::size_t leaving() const {
    std::size_t chosen = rows_.size();
    for (std::size_t row = 0; row < rows_.size(); ++row) {
      if (rows_[row].back() < -kNothing &&
          (chosen == rows_.size() || basic_[row] < basic_[chosen])) {
        chosen = row;
      }
    }
    return chosen;
  }

  [[nodiscard]] std::size_t entering(std::size_t row) const {
    std::size_t chosen = others_.size();
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t column = 0; column < others_.size(); ++column) {
      const double factor = rows_[row][column];
      if (factor < kLeastPivot) {
        continue;
      }
      const double ratio = cost_[column] / factor;
      const bool tie = ratio < least + kLeastPivot;
      if (ratio < least - kLeastPivot || (tie && others_[column] < others_[chosen])) {
        chosen = column;
        least = ratio;
      }
    }
    return chosen;
  }

  void pivot(std::size_t row, std::size_t column) {
    std::vector<double>& own = rows_[row];
    const double factor = own[column];
    for (double& value : own) {
      value /= -factor;
    }
    own[column] = 1.0 / factor;
    const auto put_in = [&](std::vector<double>& other) {
      const double times = other[column];
      if (times == 0.0) {
        return;
      }
      other[column] = 0.0;
      for (std::size_t i = 0; i < other.size(); ++i) {
        other[i] += times * own[i];
      }
    };
    for (std::size_t other = 0; other < rows_.size(); ++other) {
      if (other != row) {
        put_in(rows_[other]);
      }
    }
    put_in(cost_);
    std::swap(basic_[row], others_[column]);
  }

  std::vector<std::vector<double>> rows_;
  std::vector<double> cost_;
  std::vector<std::size_t> basic_, others_;
};

}  // namespace

BoxLp::BoxLp(std::vector<double> low, std::vector<double> high)
    : low_(std::move(low)), high_(std::move(high)) {}

void BoxLp::demand(std::vector<double> factors, double constant) {
  demands_.push_back({std::move(factors), constant});
}

std::optional<std::vector<double>> BoxLp::best(std::size_t variable, Toward toward) const {
  const std::size_t count = low_.size();
  // Each variable is counted from a limit of its own, the one asked for from where it would be.
  const bool from_high = toward == Toward::greatest;
  const auto start = [&](std::size_t i) { return i == variable && from_high ? high_[i] : low_[i]; };
  const auto sign = [&](std::size_t i) { return i == variable && from_high ? -1.0 : 1.0; };
  Dictionary dictionary(count);
  dictionary.cost(variable);
  for (std::size_t i = 0; i < count; ++i) {
    std::vector<double> row(count + 1, 0.0);
    row[i] = -1.0;
    row.back() = high_[i] - low_[i];
    dictionary.add(std::move(row));
  }
  for (const Demand& demand : demands_) {
    std::vector<double> row(count + 1, 0.0);
    row.back() = demand.constant;
    for (std::size_t i = 0; i < count; ++i) {
      row[i] = sign(i) * demand.factors[i];
      row.back() += demand.factors[i] * start(i);
    }
    dictionary.add(std::move(row));
  }
  if (!dictionary.solve()) {
    return std::nullopt;
  }
  std::vector<double> values(count);
  for (std::size_t i = 0; i < count; ++i) {
    values[i] = start(i) + sign(i) * dictionary.value(i);
  }
  return values;
}

}  // namespace spotblue
