#include "geometry/seats/centre_lines.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <unordered_map>

#include "base/disjoint_sets.hpp"
#include "geometry/model/tolerances.hpp"

namespace spotblue {
namespace {

constexpr double kSameLine = 1e-6;  // mm, within one product

// For each product: cylinder and cone -> number of the line it lies on.
struct ProductLines {
  std::vector<std::size_t> of_cylinder, of_cone;
  std::size_t count = 0;
};

ProductLines lines_of(const Product& product) {
  ProductLines result;
  std::vector<Line> lines;
  const auto number = [&lines](const Line& axis) {
    for (std::size_t i = 0; i < lines.size(); ++i) {
      if (norm(cross(lines[i].along, axis.along)) < kOneLine &&
          distance(lines[i], axis.at) < kSameLine) {
        return i;
      }
    }
    lines.push_back(axis);
    return lines.size() - 1;
  };
  for (const Cylinder& c : product.cylinders) {
    result.of_cylinder.push_back(number(c.axis));
  }
  for (const Cone& c : product.cones) {
    result.of_cone.push_back(number(c.axis));
  }
  result.count = lines.size();
  return result;
}

}  // namespace

CentreLines centre_lines(const Model& model, const std::vector<AxisTie>& ties) {
  std::vector<ProductLines> products;
  products.reserve(model.products.size());
  for (const Product& product : model.products) {
    products.push_back(lines_of(product));
  }
  std::vector<std::size_t> start(model.occurrences.size() + 1, 0);
  for (std::size_t i = 0; i < model.occurrences.size(); ++i) {
    start[i + 1] = start[i] + products[model.occurrences[i].product].count;
  }
  const auto node = [&](const FeatureRef& ref) {
    const ProductLines& lines = products[model.occurrences[ref.occurrence].product];
    const auto& of = ref.kind == FeatureKind::cone ? lines.of_cone : lines.of_cylinder;
    return start[ref.occurrence] + of[ref.index];
  };
  DisjointSets groups(start.back());
  for (const AxisTie& tie : ties) {
    groups.join(node(tie.a), node(tie.b));
  }
  CentreLines result;
  std::unordered_map<std::size_t, CentreLineId> number;
  std::vector<double> heaviest;
  for (const AxisTie& tie : ties) {
    const auto [entry, is_new] = number.try_emplace(groups.root(node(tie.a)), result.lines.size());
    const CentreLineId line = entry->second;
    if (is_new) {
      result.lines.push_back({fmt::format("centre line {}", line + 1), tie.axis, {}});
      heaviest.push_back(tie.weight);
    } else if (tie.weight > heaviest[line] + kSameLine) {
      heaviest[line] = tie.weight;
      result.lines[line].line = tie.axis;
    }
    result.lines[line].occurrences.insert(result.lines[line].occurrences.end(),
                                          {tie.a.occurrence, tie.b.occurrence});
    result.line_of.push_back(line);
  }
  for (CentreLine& line : result.lines) {
    auto& occurrences = line.occurrences;
    std::sort(occurrences.begin(), occurrences.end());
    occurrences.erase(std::unique(occurrences.begin(), occurrences.end()), occurrences.end());
  }
  return result;
}

}  // namespace spotblue
