#include "geometry/part21/step_axes.hpp"

#include <fmt/format.h>

#include <charconv>
#include <cmath>
#include <optional>
#include <string_view>
#include <unordered_set>

#include "spotblue/geometry/vector.hpp"

namespace spotblue {
namespace {

// A shorter one is as good as none: Open CASCADE's own bound for a direction.
constexpr double kLeastLength = 1e-12;
// Open CASCADE takes a longer one for the z axis, without a word: the square of its length is no
// number any more. Choice of this program, no source.
constexpr double kGreatestLength = 1e100;
// Sine of the angle between two directions in one line.
constexpr double kInLine = 1e-9;

std::vector<double> numbers(std::string_view list) {
  std::vector<double> all;
  if (list.size() < 2 || list.front() != '(' || list.back() != ')') {
    return all;
  }
  for (std::string_view one : split_arguments(list.substr(1, list.size() - 2))) {
    one.remove_prefix(one.starts_with('+') ? 1 : 0);
    double value = 0.0;
    const auto read = std::from_chars(one.data(), one.data() + one.size(), value);
    if (read.ec == std::errc::invalid_argument) {
      return {};
    }
    all.push_back(read.ec == std::errc{} ? value : 0.0);
  }
  return all;
}

class Axes {
 public:
  explicit Axes(const StepText& text) : text_(text) {}

  std::vector<Note> faults() {
    for (const StepText::Entity& entity : text_.entities()) {
      const std::string_view keyword = text_.keyword(entity);
      if (keyword == "DIRECTION") {
        look_at_direction(entity);
      } else if (keyword == "AXIS2_PLACEMENT_3D") {
        look_at_placement(entity);
      }
    }
    return std::move(faults_);
  }

 private:
  void tell(const StepText::Entity& entity, const char* what) {
    faults_.push_back({fmt::format("#{}, {}", entity.id, text_.keyword(entity)), what});
  }

  void look_at_direction(const StepText::Entity& entity) {
    const auto arguments = text_.arguments(entity, "DIRECTION");
    if (!arguments || arguments->size() < 2) {
      return;  // Open CASCADE's own list tells
    }
    double square = 0.0;
    for (const double one : numbers(arguments->back())) {
      if (std::abs(one) > kGreatestLength) {
        tell(entity, "it is so long that it points nowhere: write it one long");
        return;
      }
      square += one * one;
    }
    if (square < kLeastLength * kLeastLength) {
      tell(entity, "it is of no length and points nowhere");
    }
  }

  [[nodiscard]] std::optional<Point> three_of(std::string_view argument, std::string_view keyword) {
    constexpr std::size_t kMostLetters = 1000;  // of three numbers and the brackets
    const auto id = reference(argument);
    const StepText::Entity* entity = id && !endless_.contains(*id) ? text_.find(*id) : nullptr;
    const auto arguments = entity != nullptr ? text_.arguments(*entity, keyword) : std::nullopt;
    if (!arguments || arguments->empty()) {
      return std::nullopt;
    }
    if (arguments->back().size() > kMostLetters) {
      endless_.insert(*id);
      return std::nullopt;
    }
    const auto all = numbers(arguments->back());
    return all.size() == 3 ? std::optional(Point{all[0], all[1], all[2]}) : std::nullopt;
  }

  void look_at_placement(const StepText::Entity& entity) {
    const auto arguments = text_.arguments(entity, "AXIS2_PLACEMENT_3D");
    if (!arguments || arguments->size() != 4) {
      return;  // Open CASCADE's own list tells
    }
    if (!three_of((*arguments)[1], "CARTESIAN_POINT")) {
      tell(entity, "its place is no point of three numbers");
      return;
    }
    const auto given = [&](std::size_t i) {
      return (*arguments)[i] != "$" && (*arguments)[i] != "*";
    };
    const auto axis = three_of((*arguments)[2], "DIRECTION");
    const auto other = three_of((*arguments)[3], "DIRECTION");
    if ((given(2) && !axis) || (given(3) && !other)) {
      tell(entity, "one of its directions is none of three numbers");
      return;
    }
    if (axis && other) {
      const double size = norm(*axis) * norm(*other);
      if (size > 0.0 && norm(cross(*axis, *other)) < kInLine * size) {
        tell(entity, "its two directions lie in one line");
      }
    }
  }

  const StepText& text_;
  std::vector<Note> faults_;
  std::unordered_set<int> endless_;  // lists that are read once, however many share them
};

}  // namespace

std::vector<Note> axis_faults(const StepText& text) { return Axes(text).faults(); }

}  // namespace spotblue
