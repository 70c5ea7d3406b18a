#include "geometry/outline/profile.hpp"

#include <algorithm>
#include <array>
#include <numbers>

namespace spotblue::proof {
namespace {

/// Images that touch, as one block, with what its bounding walls say of the cells beside it.
struct Block {
  Sector sector;
  bool air_below = false, material_below = false;
  bool air_above = false, material_above = false;
};

bool near(double a, double b) { return std::abs(a - b) <= kSame; }

bool is_thin(const Image& image) {
  return near(image.low_first, image.high_first) && near(image.low_last, image.high_last);
}

// No face is in the cell beside a block: it is all air or all material, and where a wall meets it
// at one end of the slab it tells which, as a chamfer does whose other end lies within the block.
void note_side(Block& block, const Image& wall) {
  const Sector& s = block.sector;
  if (near(wall.low_first, s.low_first) || near(wall.low_last, s.low_last)) {
    (wall.side == Side::internal ? block.air_below : block.material_below) = true;
  }
  if (near(wall.high_first, s.high_first) || near(wall.high_last, s.high_last)) {
    (wall.side == Side::internal ? block.material_above : block.air_above) = true;
  }
}

/// The image cut to the slab; one that reaches only part of it stands over all of it as a block.
Image cut_to(const Image& image, Interval z) {
  const double length = image.z.high - image.z.low;
  if (image.z.low > z.low + kSame || image.z.high < z.high - kSame || length <= 0.0) {
    const double low = std::min(image.low_first, image.low_last);
    const double high = std::max(image.high_first, image.high_last);
    return {z, low, low, high, high};
  }
  const auto at = [&](double first, double last, double station) {
    return first + (last - first) * std::clamp((station - image.z.low) / length, 0.0, 1.0);
  };
  return {z,
          at(image.low_first, image.low_last, z.low),
          at(image.low_first, image.low_last, z.high),
          at(image.high_first, image.high_last, z.low),
          at(image.high_first, image.high_last, z.high),
          image.wall,
          image.side};
}

std::vector<Block> blocks_in(std::span<const Image> images, Interval z) {
  std::vector<Image> here;
  for (const Image& image : images) {
    if (image.z.low < z.high - kSame && image.z.high > z.low + kSame) {
      here.push_back(cut_to(image, z));
    }
  }
  std::ranges::sort(here, {}, [](const Image& i) { return i.low_first + i.low_last; });
  std::vector<Block> blocks;
  std::size_t begin = 0;
  while (begin < here.size()) {
    const Image& first = here[begin];
    Block block{.sector = {first.low_first, first.low_last, first.high_first, first.high_last}};
    std::size_t end = begin + 1;
    for (; end < here.size() && (here[end].low_first <= block.sector.high_first + kSame ||
                                 here[end].low_last <= block.sector.high_last + kSame);
         ++end) {
      Sector& s = block.sector;
      s = {std::min(s.low_first, here[end].low_first), std::min(s.low_last, here[end].low_last),
           std::max(s.high_first, here[end].high_first),
           std::max(s.high_last, here[end].high_last)};
    }
    for (std::size_t i = begin; i < end; ++i) {
      // In the width of a wall off the axis another face may hide; it then tells nothing.
      if (here[i].wall && (end - begin == 1 || is_thin(here[i]))) {
        note_side(block, here[i]);
      }
    }
    blocks.push_back(block);
    begin = end;
  }
  return blocks;
}

/// Whether a circle in the cell has a point outside the part's box: then all of the cell is air.
/// The widest circles are the likeliest.
bool leaves_box(const FaceBounds& part, const Line& axis, Interval z, const Sector& cell) {
  constexpr std::size_t kAngles = 8;
  const double station = 0.5 * (z.low + z.high);
  const double low = 0.5 * (cell.low_first + cell.low_last);
  const double high = 0.5 * (cell.high_first + cell.high_last);
  const Direction x = any_square(axis.along);
  const Direction y = third(axis.along, x);
  const Point middle = at_station(axis, station);
  for (const double share : {0.5, 0.999}) {
    const double radius = low + share * (high - low);
    for (std::size_t i = 0; i < kAngles; ++i) {
      const double angle = 2.0 * std::numbers::pi * static_cast<double>(i) / kAngles;
      const Point p = middle + radius * std::cos(angle) * x + radius * std::sin(angle) * y;
      if (!overlap(part.box, Box{p, p})) {
        return true;
      }
    }
  }
  return false;
}

enum class Cell { air, material, untold };

/// What is known of the cell under `above` and over `below` (absent at the axis).
Cell cell_between(const FaceBounds& part, const Line& axis, Interval z, const Block* below,
                  const Block& above) {
  const bool air = above.air_below || (below != nullptr && below->air_above);
  const bool material = above.material_below || (below != nullptr && below->material_above);
  if (air || material) {
    return air && material ? Cell::untold : (air ? Cell::air : Cell::material);
  }
  const Sector cell{below != nullptr ? below->sector.high_first : 0.0,
                    below != nullptr ? below->sector.high_last : 0.0, above.sector.low_first,
                    above.sector.low_last};
  return leaves_box(part, axis, z, cell) ? Cell::air : Cell::untold;
}

}  // namespace

Slab slab_of(const FaceBounds& part, const Line& axis, std::span<const Image> images, Interval z) {
  Slab slab{z, {}, {}};
  std::vector<Sector>& sectors = slab.occupied;
  const std::vector<Block> blocks = blocks_in(images, z);
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    const Block* below = i > 0 ? &blocks[i - 1] : nullptr;
    const Sector& sector = blocks[i].sector;
    const Cell cell = cell_between(part, axis, z, below, blocks[i]);
    if (cell == Cell::material) {
      slab.filled.push_back({below != nullptr ? below->sector.high_first : 0.0,
                             below != nullptr ? below->sector.high_last : 0.0, sector.low_first,
                             sector.low_last});
    }
    if (cell == Cell::air) {
      sectors.push_back(sector);
    } else if (sectors.empty()) {
      sectors.push_back({0.0, 0.0, sector.high_first, sector.high_last});
    } else {
      sectors.back().high_first = sector.high_first;
      sectors.back().high_last = sector.high_last;
    }
  }
  return slab;
}

std::vector<Sector> occupied(const FaceBounds& part, const Line& axis,
                             std::span<const Image> images, Interval z) {
  return slab_of(part, axis, images, z).occupied;
}

std::vector<double> stations(std::span<const Image> a, std::span<const Image> b, Interval window,
                             std::size_t most) {
  std::vector<double> found{window.low, window.high};
  const auto add = [&](std::span<const Image> images, auto wanted) {
    for (const Image& image : images) {
      for (const double z : {image.z.low, image.z.high}) {
        if (wanted(image) && z > window.low && z < window.high && found.size() < most) {
          found.push_back(z);
        }
      }
    }
  };
  const auto flat = [](const Image& i) { return i.z.high - i.z.low <= kSame; };
  const auto sharp = [&](const Image& i) { return i.wall || flat(i); };
  const auto blunt = [&](const Image& i) { return !i.wall && !flat(i); };
  add(a, sharp);
  add(b, sharp);
  add(a, blunt);
  add(b, blunt);
  std::ranges::sort(found);
  const auto twins = [](double low, double high) { return high - low <= kSame; };
  found.erase(std::unique(found.begin(), found.end(), twins), found.end());
  return found;
}

}  // namespace spotblue::proof
