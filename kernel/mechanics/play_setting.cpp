#include "spotblue/mechanics/play_setting.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

#include "base/require.hpp"
#include "mechanics/play_bounds.hpp"

namespace spotblue {
namespace {

// A window narrower than this is where rounding meets, mm.
constexpr double kSameSetting_mm = 1e-10;
// Loops that bound one setting, before it is said that there are too many.
constexpr int kMostBounds = 1'000;

struct Window {
  double low = 0.0, high = 0.0;
};
using Windows = std::vector<Window>;

// What a loop is short of at one setting, and how much of that each mm of setting gives back.
struct Shortage {
  double value = 0.0;
  double per_mm = 0.0;
};

class Setting {
 public:
  Setting(const PlayNet& net, std::size_t length)
      : net_(net), ways_(net), length_(length), box_(box_of(net)) {}

  [[nodiscard]] Windows windows(const PlayWant& want) const {
    const PlayQuestion asked{net_, ways_, want.of, want.on};
    if (!ways_.leads(want.on, want.of) || !ways_.leads(want.of, want.on)) {
      return {};
    }
    const auto wide = wide_enough(asked, want.wanted.lower.in_mm());
    return wide ? narrow_enough(asked, want.wanted.upper.in_mm(), *wide) : Windows{};
  }

 private:
  [[nodiscard]] LengthBox with(Window setting) const {
    LengthBox box = box_;
    box.low[length_] = setting.low;
    box.high[length_] = setting.high;
    return box;
  }

  [[nodiscard]] std::optional<Shortage> shortage(const PlayQuestion& asked, double least,
                                                 double setting) const {
    const LengthBox box = with({setting, setting});
    if (const auto loop = least_play(asked, box); loop->value < least - kSameSetting_mm) {
      return Shortage{least - loop->value, loop->sum[length_]};
    }
    // A loop elsewhere that the setting makes too short; one that it has no part in is none of it.
    if (const auto tight = tight_loop(net_, ways_, box)) {
      const PlaySum sum = sum_of(net_, *tight);
      const double value = value_at(sum, where_least(sum, box));
      if (sum[length_] != 0.0 && value < -kSameSetting_mm) {
        return Shortage{-value, sum[length_]};
      }
    }
    return std::nullopt;
  }

  // Where no loop is too short at any other lengths: one stretch, since what the tightest leaves
  // is a concave function of the setting.
  [[nodiscard]] std::optional<Window> wide_enough(const PlayQuestion& asked, double least) const {
    Window window{box_.low[length_], box_.high[length_]};
    for (const bool from_low : {true, false}) {
      double& end = from_low ? window.low : window.high;
      for (int bounds = 0;; ++bounds) {
        const auto lacks = shortage(asked, least, end);
        if (!lacks) {
          break;
        }
        if (bounds == kMostBounds) {
          throw TooManyWays();
        }
        if (from_low ? lacks->per_mm <= 0.0 : lacks->per_mm >= 0.0) {
          return std::nullopt;
        }
        end += lacks->value / lacks->per_mm;
        if (window.low > window.high + kSameSetting_mm) {
          return std::nullopt;
        }
      }
    }
    window.high = std::max(window.low, window.high);
    return window;
  }

  [[nodiscard]] double most_play(const PlayQuestion& asked, Window setting) const {
    const auto most = greatest_play(asked, with(setting), Counting::that_go_together);
    return most ? most->value : 0.0;
  }

  // Of a stretch what is left without the settings at which the play may be more: these lie
  // together, since the greatest play is a concave function of the setting.
  [[nodiscard]] Windows narrow_enough(const PlayQuestion& asked, double most, Window window) const {
    if (most_play(asked, window) <= most + kSameSetting_mm) {
      return {window};
    }
    const LengthBox box = with(window);
    const auto from = farthest_with_play(asked, box, most, length_, false);
    const auto to = farthest_with_play(asked, box, most, length_, true);
    Windows left;
    const auto keep = [&](Window part) {
      if (part.high > part.low + kSameSetting_mm ||
          most_play(asked, {part.low, part.low}) <= most + kSameSetting_mm) {
        left.push_back(part);
      }
    };
    keep({window.low, from.value_or(window.high)});
    keep({to.value_or(window.low), window.high});
    return left;
  }

  const PlayNet& net_;
  PlayWays ways_;
  std::size_t length_;
  LengthBox box_;
};

Windows common(const Windows& a, const Windows& b) {
  Windows both;
  for (const Window& one : a) {
    for (const Window& other : b) {
      const Window part{std::max(one.low, other.low), std::min(one.high, other.high)};
      if (part.low <= part.high) {
        both.push_back(part);
      }
    }
  }
  return both;
}

std::vector<Limits> in_limits(const Windows& windows) {
  std::vector<Limits> limits;
  for (const Window& window : windows) {
    limits.push_back({Length::mm(window.low), Length::mm(window.high)});
  }
  return limits;
}

// @pre nothing is common to all of them
std::vector<std::size_t> contradiction(const std::vector<Windows>& by_want) {
  std::vector<std::size_t> all;
  for (std::size_t i = 0; i < by_want.size(); ++i) {
    if (by_want[i].empty()) {
      return {i};
    }
    all.push_back(i);
  }
  for (std::size_t i = 0; i < by_want.size(); ++i) {
    for (std::size_t j = i + 1; j < by_want.size(); ++j) {
      if (common(by_want[i], by_want[j]).empty()) {
        return {i, j};
      }
    }
  }
  return all;
}

void require_wants(const PlayNet& net, std::span<const PlayWant> wants) {
  require_index(0, wants.size(), "wants", "want");
  for (std::size_t i = 0; i < wants.size(); ++i) {
    const std::string place = fmt::format("wants[{}]", i);
    require_bodies(net, wants[i].of, wants[i].on, place + ".");
    require_value(wants[i], place);
  }
}

}  // namespace

PlaySetting setting_windows(const PlayNet& net, std::size_t length,
                            std::span<const PlayWant> wants) {
  require_play_net(net);
  require_index(length, net.lengths.size(), "length", "length");
  require_wants(net, wants);
  PlaySetting setting;
  try {
    const Setting ask(net, length);
    std::vector<Windows> by_want;
    Windows all;
    for (const PlayWant& want : wants) {
      by_want.push_back(ask.windows(want));
      all = by_want.size() == 1 ? by_want.front() : common(all, by_want.back());
      setting.by_want.push_back({in_limits(by_want.back())});
    }
    setting.windows = in_limits(all);
    if (all.empty()) {
      setting.contradict = contradiction(by_want);
    }
  } catch (const TooManyWays&) {
    setting = {{}, {}, {}, false};
  }
  return setting;
}

}  // namespace spotblue
