#include "check/seat_sizes.hpp"

namespace spotblue {
namespace {

std::optional<ClassLimits> class_limits(const std::optional<Limits>& limits,
                                        const std::optional<WantedFit>& wanted) {
  return limits ? std::optional(ClassLimits{*limits, wanted->nominal}) : std::nullopt;
}

}  // namespace

SeatSizes seat_sizes(const DeclaredJob& declared, std::size_t radial_seat) {
  const RadialSeat& seat = declared.look->seats.radial.at(radial_seat);
  const Length hole = Length::mm(seat.hole_diameter);
  const Length shaft = Length::mm(seat.shaft_diameter);
  SeatSizes sizes;
  if (const FitWant* want = declared.radial_fits.at(radial_seat)) {
    sizes.wanted = wanted_fit(*declared.job, *want,
                              {hole, shaft, sizes_of(declared, seat.hole.occurrence),
                               sizes_of(declared, seat.shaft.occurrence)});
  }
  const auto hole_class =
      class_limits(sizes.wanted ? sizes.wanted->hole : std::nullopt, sizes.wanted);
  const auto shaft_class =
      class_limits(sizes.wanted ? sizes.wanted->shaft : std::nullopt, sizes.wanted);
  sizes.found = found_fit(size_range(declared, seat.hole, hole, hole_class),
                          size_range(declared, seat.shaft, shaft, shaft_class));
  return sizes;
}

}  // namespace spotblue
