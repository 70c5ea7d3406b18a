#include "group/sizes/seat_sizes.hpp"

namespace spotblue {
namespace {

struct Pair {
  FeatureRef hole, shaft;
  Length hole_size, shaft_size;  // as modelled
  const FitWant* want = nullptr;
};

SeatSizes sizes_of_pair(const DeclaredJob& declared, const Pair& pair) {
  SeatSizes sizes;
  if (pair.want != nullptr) {
    sizes.wanted =
        wanted_fit(*declared.job, *pair.want,
                   {pair.hole_size, pair.shaft_size, drawn_at(declared, pair.hole.occurrence),
                    drawn_at(declared, pair.shaft.occurrence)});
  }
  const auto by_class = [&sizes](std::optional<Limits> WantedFit::*side) {
    return sizes.wanted && (*sizes.wanted).*side
               ? std::optional(ClassLimits{*((*sizes.wanted).*side), sizes.wanted->nominal})
               : std::nullopt;
  };
  sizes.found =
      found_fit(size_range(declared, pair.hole, pair.hole_size, by_class(&WantedFit::hole)),
                size_range(declared, pair.shaft, pair.shaft_size, by_class(&WantedFit::shaft)));
  return sizes;
}

}  // namespace

SeatSizes seat_sizes(const DeclaredJob& declared, std::size_t radial_seat) {
  const RadialSeat& seat = declared.look->seats.radial.at(radial_seat);
  return sizes_of_pair(declared,
                       {seat.hole, seat.shaft, Length::mm(seat.hole_diameter),
                        Length::mm(seat.shaft_diameter), declared.radial_fits.at(radial_seat)});
}

SeatSizes width_seat_sizes(const DeclaredJob& declared, std::size_t width_seat) {
  const WidthSeat& seat = declared.look->seats.width.at(width_seat);
  return sizes_of_pair(declared, {seat.slot, seat.key, Length::mm(seat.slot_width),
                                  Length::mm(seat.key_width), declared.width_fits.at(width_seat)});
}

}  // namespace spotblue
