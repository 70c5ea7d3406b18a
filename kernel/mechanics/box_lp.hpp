#pragma once
// The least or greatest value of one variable among numbers within limits that keep to linear
// demands: for few variables, and demands that are added one after another.

#include <cstddef>
#include <optional>
#include <vector>

namespace spotblue {

enum class Toward { least, greatest };

class BoxLp {
 public:
  /// @pre low <= high, alike many.
  BoxLp(std::vector<double> low, std::vector<double> high);

  /// Demands that the sum of factor x variable, plus the constant, is 0 or more.
  void demand(std::vector<double> factors, double constant);

  /// All variables where the one asked for is least or greatest; nothing where no numbers keep to
  /// all demands.
  ///
  /// Dual simplex method with Bland's rule (remembered: Chvatal, "Linear Programming", chapters 3
  /// and 10), which starts from the limits themselves and ends always.
  /// @throws Error stopped.
  [[nodiscard]] std::optional<std::vector<double>> best(std::size_t variable, Toward toward) const;

 private:
  struct Demand {
    std::vector<double> factors;
    double constant = 0.0;
  };
  std::vector<double> low_, high_;
  std::vector<Demand> demands_;
};

}  // namespace spotblue
