#include "geometry/fouls/exact_overlap.hpp"

#include <fmt/format.h>
#include <sys/mman.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstring>
#include <map>
#include <memory>
#include <numeric>

#include "base/work_limit.hpp"
#include "geometry/fouls/nearest_contact.hpp"
#include "geometry/fouls/plain_solid.hpp"
#include "geometry/fouls/solid_overlap.hpp"
#include "geometry/occt/contained.hpp"
#include "geometry/occt/guard.hpp"
#include "geometry/occt/shape_store.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue::proof {
namespace {

/// An answer as the child leaves it in memory it shares with us: it outlives a crash.
struct Slot {
  bool begun = false, done = false;
  Overlap::State state = Overlap::State::undecided;
  std::size_t regions = 0;
  std::array<OverlapRegion, kMostRegions> region{};
  bool contact_begun = false, contact_done = false;
  std::optional<NearestContact> contact;
  std::array<char, 200> why{};
};

/// Slots in memory that a forked child shares.
class SharedSlots {
 public:
  explicit SharedSlots(std::size_t count) : bytes_(std::max<std::size_t>(1, count) * sizeof(Slot)) {
    memory_ = mmap(nullptr, bytes_, PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0);
    if (memory_ == MAP_FAILED) {
      throw Error(ErrorCode::system, {}, "no memory for the foul search", "close other programs");
    }
    std::uninitialized_value_construct_n(static_cast<Slot*>(memory_), count);
  }
  ~SharedSlots() { munmap(memory_, bytes_); }
  SharedSlots(const SharedSlots&) = delete;
  SharedSlots& operator=(const SharedSlots&) = delete;
  SharedSlots(SharedSlots&&) = delete;
  SharedSlots& operator=(SharedSlots&&) = delete;

  Slot& operator[](std::size_t i) { return static_cast<Slot*>(memory_)[i]; }

 private:
  std::size_t bytes_;
  void* memory_;
};

void keep_text(Slot& slot, const std::string& why) {
  const std::size_t length = std::min(why.size(), slot.why.size() - 1);
  std::copy_n(why.begin(), length, slot.why.begin());
  slot.why[length] = '\0';
}

/// Shapes loaded once each in a child.
class Shelf {
 public:
  explicit Shelf(const ShapeStore& store) : store_(store) {}
  const TopoDS_Shape& of(std::size_t product) {
    const auto known = shapes_.find(product);
    return known != shapes_.end()
               ? known->second
               : shapes_.emplace(product, plain_solid(store_, product)).first->second;
  }
  [[nodiscard]] TopoDS_Shape as_written(std::size_t product) const {
    return store_.load_healed(product);
  }

 private:
  const ShapeStore& store_;
  std::map<std::size_t, TopoDS_Shape> shapes_;
};

void find_contact(Shelf& shelf, const OpenPair& pair, Slot& slot) {
  slot.contact_begun = true;
  try {
    slot.contact = guarded("looking where two solids touch", [&] {
      return nearest_contact(shelf.of(pair.product_a),
                             placed_shape(shelf.of(pair.product_b), pair.b_to_a), pair.contact,
                             pair.reach);
    });
    slot.contact_done = true;
  } catch (const Error& error) {
    keep_text(slot, error.rule());
  }
}

void find_overlap(Shelf& shelf, const OpenPair& pair, Slot& slot) {
  try {
    const Overlap overlap = guarded("comparing two solids", [&] {
      const TopoDS_Shape b = placed_shape(shelf.of(pair.product_b), pair.b_to_a);
      Overlap plain = solid_overlap(shelf.of(pair.product_a), b, pair);
      if (plain.state != Overlap::State::undecided) {
        return plain;
      }
      // Two copies in one place are told by their faces as written, and not as plain ones.
      return solid_overlap(shelf.as_written(pair.product_a),
                           placed_shape(shelf.as_written(pair.product_b), pair.b_to_a), pair);
    });
    slot.state = overlap.state;
    slot.regions = std::min(overlap.regions.size(), kMostRegions);
    std::copy_n(overlap.regions.begin(), slot.regions, slot.region.begin());
    keep_text(slot, overlap.why);
  } catch (const Error& error) {
    keep_text(slot, error.rule());
  }
}

void decide(Shelf& shelf, const OpenPair& pair, Slot& slot) {
  slot.begun = true;
  if (pair.proved_clear) {
    slot.state = Overlap::State::clear;
  } else {
    find_overlap(shelf, pair, slot);
  }
  if (slot.state == Overlap::State::clear && pair.contact != ContactQuestion::none) {
    find_contact(shelf, pair, slot);
  }
  slot.done = true;
}

std::string ending(const Contained& contained) {
  switch (contained.end) {
    case Contained::End::out_of_time:
      return "Open CASCADE ran out of time on it";
    case Contained::End::out_of_memory:
      return "Open CASCADE ran out of memory on it";
    case Contained::End::lacking:
      return fmt::format("the machine lacked what it takes ({})", contained.detail);
    case Contained::End::crashed:
      return fmt::format("Open CASCADE crashed on it ({})", contained.detail);
    default:
      return fmt::format("Open CASCADE failed on it ({})", contained.detail);
  }
}

/// One child works through the list until half its time is gone, so that no pair has less than
/// the other half.
Contained run_round(const ShapeStore& shapes, std::span<const OpenPair> pairs,
                    const std::vector<std::size_t>& waiting, SharedSlots& slots,
                    const ReadLimits& limits) {
  // What this process has grown by is no more to be had for its child.
  ReadLimits of_child = limits;
  of_child.memory_mb = std::min(limits.memory_mb, std::max(0.0, memory_mb_left()));
  return run_contained(
      [&] {
        using Clock = std::chrono::steady_clock;
        const auto start = Clock::now();
        Shelf shelf(shapes);
        for (const std::size_t i : waiting) {
          decide(shelf, pairs[i], slots[i]);
          if (std::chrono::duration<double>(Clock::now() - start).count() > 0.5 * limits.seconds) {
            break;
          }
        }
        return std::string();
      },
      of_child);
}

/// Settles the pair a child died on, or all when it died before the first.
void settle(const std::vector<std::size_t>& waiting, SharedSlots& slots, const std::string& why) {
  const auto hit = std::ranges::find_if(
      waiting, [&](std::size_t i) { return slots[i].begun && !slots[i].done; });
  for (const std::size_t i : waiting) {
    if (hit != waiting.end() ? i == *hit : !slots[i].done) {
      keep_text(slots[i], why);
      slots[i].done = true;
    }
  }
}

void decide_all(const ShapeStore& shapes, std::span<const OpenPair> pairs, SharedSlots& slots,
                const ReadLimits& limits) {
  std::vector<std::size_t> waiting(pairs.size());
  std::iota(waiting.begin(), waiting.end(), std::size_t{0});
  while (!waiting.empty()) {
    const std::size_t before = waiting.size();
    const Contained contained = run_round(shapes, pairs, waiting, slots, limits);
    if (contained.end != Contained::End::finished) {
      settle(waiting, slots, ending(contained));
    }
    std::erase_if(waiting, [&](std::size_t i) { return slots[i].done; });
    if (waiting.size() == before) {
      settle(waiting, slots, "Open CASCADE did not begin on it");
      return;
    }
  }
}

Overlap answer(const Slot& slot) {
  Overlap overlap;
  const bool known = slot.done;
  overlap.state = known ? slot.state : Overlap::State::not_looked_at;
  // What a child that crashed has written there may be anything.
  overlap.regions = {slot.region.begin(),
                     slot.region.begin() + std::min(slot.regions, kMostRegions)};
  overlap.contact = slot.contact;
  if (slot.contact_begun && !slot.contact_done) {
    overlap.no_contact_why = slot.why.data();
  } else {
    overlap.why = slot.why.data();
  }
  return overlap;
}

/// As many as one piece of shared memory has slots for: some 20 MB.
constexpr std::size_t kAtATime = 4096;

/// Whether it came to its end within the limits.
bool decide_some(const ShapeStore& shapes, std::span<const OpenPair> pairs,
                 const ReadLimits& limits, std::span<Overlap> overlaps) {
  try {
    SharedSlots slots(pairs.size());
    const bool done = done_within_limits([&] { decide_all(shapes, pairs, slots, limits); });
    for (std::size_t i = 0; i < pairs.size(); ++i) {
      overlaps[i] = answer(slots[i]);
    }
    return done;
  } catch (const Error& error) {
    stop_if_asked();
    std::ranges::for_each(overlaps, [&](Overlap& overlap) {
      overlap.state = Overlap::State::undecided;
      overlap.why = error.rule();
    });
    return true;
  }
}

}  // namespace

std::vector<Overlap> exact_overlaps(const ShapeStore* shapes, std::span<const OpenPair> pairs,
                                    const ReadLimits& limits) {
  Overlap undecided;
  if (shapes == nullptr) {
    undecided.why = "the model holds no solids to compare";
  } else {
    undecided.state = Overlap::State::not_looked_at;
  }
  std::vector<Overlap> overlaps(pairs.size(), undecided);
  bool over = shapes == nullptr;
  for (std::size_t from = 0; from < pairs.size() && !over; from += kAtATime) {
    const std::size_t count = std::min(kAtATime, pairs.size() - from);
    over = !decide_some(*shapes, pairs.subspan(from, count), limits,
                        std::span(overlaps).subspan(from, count));
  }
  return overlaps;
}

}  // namespace spotblue::proof
