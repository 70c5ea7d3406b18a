#include "geometry/seats/pair_seats.hpp"

#include <algorithm>

namespace spotblue::proof {
namespace {

std::uint64_t pair_key(OccurrenceId a, OccurrenceId b) {
  return (std::uint64_t{std::min(a, b)} << 32U) ^ std::max(a, b);
}

std::uint64_t mixed(std::uint64_t hash, std::uint64_t value) {
  hash = (hash ^ value) * 0x9E3779B97F4A7C15ULL;
  return hash ^ (hash >> 29U);
}

}  // namespace

PairSeatsIndex::PairSeatsIndex(const Seats& seats) {
  const auto add = [&](const auto& list, const auto& ends, auto member) {
    for (std::size_t i = 0; i < list.size(); ++i) {
      const auto [one, other] = ends(list[i]);
      (seats_[pair_key(one.occurrence, other.occurrence)].*member).push_back(i);
    }
  };
  seats_.reserve(seats.radial.size() + seats.axial.size());
  add(
      seats.radial,
      [](const RadialSeat& s) {
        return std::pair{s.hole, s.shaft};
      },
      &PairSeats::radial);
  add(
      seats.axial,
      [](const AxialSeat& s) {
        return std::pair{s.a, s.b};
      },
      &PairSeats::axial);
  add(
      seats.taper,
      [](const TaperSeat& s) {
        return std::pair{s.hole, s.shaft};
      },
      &PairSeats::taper);
  add(
      seats.width,
      [](const WidthSeat& s) {
        return std::pair{s.slot, s.key};
      },
      &PairSeats::width);
  add(
      seats.threads,
      [](const Thread& t) {
        return std::pair{t.hole, t.screw};
      },
      &PairSeats::threads);
}

const PairSeats& PairSeatsIndex::of(OccurrenceId a, OccurrenceId b) const {
  const auto found = seats_.find(pair_key(a, b));
  return found != seats_.end() ? found->second : none_;
}

std::uint64_t signature(const Seats& seats, const PairSeats& pair, OccurrenceId a) {
  std::uint64_t hash = 0;
  const auto add = [&](std::uint64_t kind, const FeatureRef& one, const FeatureRef& other) {
    // Which of the two parts has which feature, whatever the occurrences' numbers are.
    const bool turned = one.occurrence != a;
    hash = mixed(hash, kind * 2 + (turned ? 1 : 0));
    hash = mixed(hash, turned ? other.index : one.index);
    hash = mixed(hash, turned ? one.index : other.index);
  };
  for (const std::size_t i : pair.radial) {
    add(1, seats.radial[i].hole, seats.radial[i].shaft);
  }
  for (const std::size_t i : pair.axial) {
    add(2, seats.axial[i].a, seats.axial[i].b);
  }
  for (const std::size_t i : pair.taper) {
    add(3, seats.taper[i].hole, seats.taper[i].shaft);
  }
  for (const std::size_t i : pair.width) {
    add(4, seats.width[i].slot, seats.width[i].key);
  }
  for (const std::size_t i : pair.threads) {
    add(5, seats.threads[i].hole, seats.threads[i].screw);
  }
  return hash;
}

}  // namespace spotblue::proof
