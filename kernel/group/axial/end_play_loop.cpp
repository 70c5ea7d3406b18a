#include "group/axial/end_play_loop.hpp"

#include <utility>

namespace spotblue {
namespace {

class Loop {
 public:
  Loop(const FacePaths& paths, const Line& line) : paths_(paths), line_(line) {}

  // What a step along the line does to the play; one back does the opposite.
  bool add(const FeatureRef& from, const FeatureRef& to, StackSense along) {
    const auto path = paths_.path(from, to, line_);
    if (!path) {
      return false;
    }
    const StackSense against = along == StackSense::opens ? StackSense::closes : StackSense::opens;
    for (const PathLength& length : *path) {
      lengths_.push_back({length, length.step_mm >= 0.0 ? along : against});
    }
    return true;
  }

  [[nodiscard]] std::vector<LoopLength> lengths() && { return std::move(lengths_); }

 private:
  const FacePaths& paths_;
  const Line& line_;
  std::vector<LoopLength> lengths_;
};

}  // namespace

std::optional<std::vector<LoopLength>> loop_of(const std::vector<AxialStop>& back,
                                               const std::vector<AxialStop>& ahead,
                                               const FacePaths& paths, const Line& line) {
  Loop loop(paths, line);
  bool found = loop.add(back.back().a, ahead.back().b, StackSense::opens);
  FeatureRef entered = back.back().b;
  for (std::size_t i = back.size() - 1; i > 0; --i) {
    found = found && loop.add(entered, back[i - 1].a, StackSense::closes);
    entered = back[i - 1].b;
  }
  for (const AxialStop& stop : ahead) {
    found = found && loop.add(entered, stop.a, StackSense::closes);
    entered = stop.b;
  }
  if (!found) {
    return std::nullopt;
  }
  return std::move(loop).lengths();
}

}  // namespace spotblue
