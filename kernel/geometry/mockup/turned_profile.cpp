#include "geometry/mockup/turned_profile.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace spotblue {
namespace {

// Draws one side of the section; `sign` makes an inside look like an outside, with the material
// towards lower values.
class PathWriter {
 public:
  PathWriter(const TurnedPart& part, Side side)
      : part_(part),
        side_(side),
        sign_(side == Side::external ? 1.0 : -1.0),
        steps_(side == Side::external ? part.outside : part.inside),
        grooves_(side == Side::external ? part.outside_grooves : part.inside_grooves) {
    std::sort(grooves_.begin(), grooves_.end(),
              [](const Groove& a, const Groove& b) { return a.at < b.at; });
  }

  std::vector<ProfilePoint> write() {
    double reached = 0.0;
    for (std::size_t i = 0; i < steps_.size(); ++i) {
      if (steps_[i].start > reached + kSameStation) {
        add(reached, 0.0);
        add(steps_[i].start, 0.0);
      }
      write_step(i);
      reached = steps_[i].start + steps_[i].length;
    }
    const double length = turned_length(part_);
    if (length > reached + kSameStation) {
      add(reached, 0.0);
      add(length, 0.0);
    }
    return std::move(path_);
  }

 private:
  void write_step(std::size_t i) {
    const Step& step = steps_[i];
    const double end = step.start + step.length;
    write_break(step.at_start, i, 0);
    for (const Groove& groove : grooves_) {
      if (groove.at >= step.start - kSameStation &&
          groove.at + groove.width <= end + kSameStation) {
        add(groove.at, radius_at(step, groove.at));
        add(groove.at, groove.diameter / 2);
        add(groove.at + groove.width, groove.diameter / 2);
        add(groove.at + groove.width, radius_at(step, groove.at + groove.width));
      }
    }
    write_break(step.at_end, i, 1);
  }

  // The two points of a chamfer or fillet, or the one of a sharp edge, in the order of the path.
  void write_break(const EdgeBreak& edge, std::size_t i, int end) {
    const Step& step = steps_[i];
    const double z = end == 0 ? step.start : step.start + step.length;
    const double own = sign_ * (end == 0 ? step.diameter : step.end_diameter) / 2;
    if (edge.kind == BreakKind::sharp) {
      add(z, sign_ * own);
      return;
    }
    const auto neighbour = neighbour_radius(part_, side_, i, end);
    const bool corner = neighbour && sign_ * *neighbour > own;
    const double away = corner ? edge.size : -edge.size;  // towards or from the neighbour
    const double inward = end == 0 ? edge.size : -edge.size;
    ProfilePoint at_face{z, sign_ * (own + away), {}};
    ProfilePoint on_step{z + inward, radius_at(step, z + inward), {}};
    ProfilePoint& second = end == 0 ? on_step : at_face;
    if (edge.kind == BreakKind::fillet) {
      const double half = std::numbers::sqrt2 / 2;
      second.by = std::pair(z + inward - inward * half, sign_ * (own + away - away * half));
    }
    add(end == 0 ? at_face : on_step);
    add(second);
  }

  static double radius_at(const Step& step, double z) {
    const double share = (z - step.start) / step.length;
    return (step.diameter + share * (step.end_diameter - step.diameter)) / 2;
  }

  void add(double z, double r) { add(ProfilePoint{z, r, {}}); }
  void add(const ProfilePoint& point) {
    if (path_.empty() ||
        std::hypot(point.z - path_.back().z, point.r - path_.back().r) > kSameStation) {
      path_.push_back(point);
    }
  }

  const TurnedPart& part_;
  Side side_;
  double sign_;
  const std::vector<Step>& steps_;
  std::vector<Groove> grooves_;
  std::vector<ProfilePoint> path_;
};

double radius_in(const std::vector<Step>& steps, double z) {
  double greatest = 0.0;
  for (const Step& step : steps) {
    if (z >= step.start - kSameStation && z <= step.start + step.length + kSameStation) {
      const double share = std::clamp((z - step.start) / step.length, 0.0, 1.0);
      greatest =
          std::max(greatest, (step.diameter + share * (step.end_diameter - step.diameter)) / 2);
    }
  }
  return greatest;
}

}  // namespace

double turned_length(const TurnedPart& part) {
  return part.outside.empty() ? 0.0 : part.outside.back().start + part.outside.back().length;
}

double outside_radius(const TurnedPart& part, double z) { return radius_in(part.outside, z); }
double inside_radius(const TurnedPart& part, double z) { return radius_in(part.inside, z); }

std::optional<double> neighbour_radius(const TurnedPart& part, Side side, std::size_t step,
                                       int end) {
  const std::vector<Step>& steps = side == Side::external ? part.outside : part.inside;
  const double z = steps[step].start + (end == 0 ? 0.0 : steps[step].length);
  if (end == 0 && step > 0 &&
      std::abs(steps[step - 1].start + steps[step - 1].length - z) <= kSameStation) {
    return steps[step - 1].end_diameter / 2;
  }
  if (end == 1 && step + 1 < steps.size() && std::abs(steps[step + 1].start - z) <= kSameStation) {
    return steps[step + 1].diameter / 2;
  }
  const bool part_ends = z <= kSameStation || z >= turned_length(part) - kSameStation;
  return part_ends ? std::nullopt : std::optional(0.0);
}

std::vector<ProfilePoint> profile_path(const TurnedPart& part, Side side) {
  return PathWriter(part, side).write();
}

}  // namespace spotblue
