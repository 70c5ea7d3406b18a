#include "geometry/outline/passing.hpp"

#include <algorithm>
#include <array>

namespace spotblue::proof {
namespace {

/// A sprung ring gives by this part of its radius; common practice, no source.
constexpr double kSpring = 0.1;

/// Stations of the moving and of the still part at once.
struct Meeting {
  double moving, still;
};

/// Corners of all meetings of the two slabs in which the still one lies ahead.
class Meetings {
 public:
  Meetings(Interval moving, Interval still, Sense sense) {
    const double sign = sense == Sense::up ? 1.0 : -1.0;
    const auto add = [&](double a, double b) {
      if (sign * (b - a) >= -kSame) {
        corners_.at(count_++) = {a, b};
      }
    };
    for (const double a : {moving.low, moving.high}) {
      for (const double b : {still.low, still.high}) {
        add(a, b);
      }
      if (a > still.low && a < still.high) {
        add(a, a);
      }
    }
    for (const double b : {still.low, still.high}) {
      if (b > moving.low && b < moving.high) {
        add(b, b);
      }
    }
  }
  [[nodiscard]] std::span<const Meeting> corners() const { return {corners_.data(), count_}; }

 private:
  std::array<Meeting, 8> corners_{};
  std::size_t count_ = 0;
};

Interval radii_at(const Sector& sector, Interval z, double at) {
  const double length = z.high - z.low;
  const double share = length > 0.0 ? std::clamp((at - z.low) / length, 0.0, 1.0) : 0.0;
  return {sector.low_first + (sector.low_last - sector.low_first) * share,
          sector.high_first + (sector.high_last - sector.high_first) * share};
}

bool holds(const std::optional<Interval>& window, Interval z) {
  return !window || (z.low > window->low - kPassing && z.high < window->high + kPassing);
}

bool springs_past(bool springs, Interval ring, Interval other) {
  if (!springs) {
    return false;
  }
  const double pressed_in = ring.high - other.low;
  const double spread = other.high - ring.low;
  return pressed_in <= kSpring * ring.high || spread <= kSpring * ring.low;
}

/// The deepest overlap of two sectors over their meetings, if it is one.
class SlabOverlap {
 public:
  SlabOverlap(const Slab& moving, const Sector& a, const Slab& still, const Sector& b, Sense sense,
              const Leave& leave) {
    double most_out = 0.0;
    double most_in = 0.0;
    bool given = true;
    const Meetings meetings(moving.z, still.z, sense);
    for (const Meeting& meeting : meetings.corners()) {
      const Interval ra = radii_at(a, moving.z, meeting.moving);
      const Interval rb = radii_at(b, still.z, meeting.still);
      most_out = std::max(most_out, ra.high - rb.low);
      most_in = std::max(most_in, rb.high - ra.low);
      const Interval shared{std::max(ra.low, rb.low), std::min(ra.high, rb.high)};
      const double depth = shared.high - shared.low;
      given = given && (depth <= kPassing || allowed(shared, ra, rb, moving.z, still.z, leave));
      if (depth > depth_) {
        depth_ = depth;
        moving_ = ra;
        still_ = rb;
      }
    }
    possible_ = most_out > kPassing && most_in > kPassing && !(given && depth_ > kPassing);
    certain_ = possible_ && depth_ > kPassing;
  }

  /// Some meeting of the two may overlap.
  [[nodiscard]] bool possible() const { return possible_; }
  /// A meeting that does was found.
  [[nodiscard]] bool certain() const { return certain_; }
  [[nodiscard]] double depth() const { return depth_; }
  [[nodiscard]] Passing blocked() const {
    const bool inside = moving_.low < still_.low || moving_.low == 0.0;
    return inside ? Passing{Way::blocked, 2.0 * moving_.high, 2.0 * still_.low}
                  : Passing{Way::blocked, 2.0 * still_.high, 2.0 * moving_.low};
  }

 private:
  static bool allowed(Interval shared, Interval ra, Interval rb, Interval moving_z,
                      Interval still_z, const Leave& leave) {
    if (shared.high - shared.low <= leave.squeeze + kPassing ||
        springs_past(leave.moving_springs, ra, rb) || springs_past(leave.still_springs, rb, ra)) {
      return true;
    }
    return std::ranges::any_of(leave.bands, [&](const OverlapBand& band) {
      return shared.low > band.low - kPassing && shared.high < band.high + kPassing &&
             holds(band.moving_z, moving_z) && holds(band.still_z, still_z);
    });
  }

  double depth_ = 0.0;
  Interval moving_, still_;
  bool possible_ = false;
  bool certain_ = false;
};

bool ahead(Interval moving, Interval still, Sense sense) {
  return sense == Sense::up ? still.high > moving.low + kSame : still.low < moving.high - kSame;
}

/// How far the moving slab goes until it has left the still one behind.
double exit_travel(Interval moving, Interval still, Sense sense) {
  return sense == Sense::up ? still.high - moving.low : moving.high - still.low;
}

}  // namespace

std::vector<Slab> slabs_about(const FaceBounds& part, const Line& axis) {
  std::vector<Slab> slabs;
  const std::vector<Image> images = images_about(part, axis);
  if (images.empty()) {
    return slabs;
  }
  Interval window = images.front().z;
  for (const Image& image : images) {
    window = {std::min(window.low, image.z.low), std::max(window.high, image.z.high)};
  }
  const std::vector<double> ends = stations(images, {}, window, kMostStations);
  for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
    slabs.push_back(slab_of(part, axis, images, {ends[i], ends[i + 1]}));
  }
  return slabs;
}

Passing passing(std::span<const Slab> moving, std::span<const Slab> still, Sense sense,
                const Leave& leave) {
  Passing found;
  double deepest = 0.0;
  for (const Slab& a : moving) {
    for (const Slab& b : still) {
      if (!ahead(a.z, b.z, sense) || exit_travel(a.z, b.z, sense) <= leave.apart + kPassing) {
        continue;
      }
      for (const Sector& sa : a.occupied) {
        for (const Sector& sb : b.occupied) {
          if (found.way == Way::free && SlabOverlap(a, sa, b, sb, sense, leave).possible()) {
            found.way = Way::untold;
          }
        }
      }
      for (const Sector& sa : a.filled) {
        for (const Sector& sb : b.filled) {
          const SlabOverlap overlap(a, sa, b, sb, sense, leave);
          if (overlap.certain() && overlap.depth() > deepest) {
            deepest = overlap.depth();
            found = overlap.blocked();
          }
        }
      }
    }
  }
  return found;
}

}  // namespace spotblue::proof
