#include "laws/random_stand.hpp"

#include <algorithm>
#include <utility>

#include "geometry/model/feature_names.hpp"
#include "spotblue/geometry/seats.hpp"
#include "support/chance.hpp"
#include "support/value_parts.hpp"

namespace spotblue::test {
namespace {

constexpr double kChamfer = 0.3;

// A ring from `from` to `to`, its outer edges broken where that is asked for.
std::vector<SectionCorner> ring(double inner, double outer, double from, double to, double broken) {
  if (broken == 0.0) {
    return {{inner, from}, {outer, from}, {outer, to}, {inner, to}};
  }
  return {{inner, from},        {outer - broken, from}, {outer, from + broken},
          {outer, to - broken}, {outer - broken, to},   {inner, to}};
}

class Drawing {
 public:
  Drawing(const Stand& stand, const Picture& picture) : stand_(stand), picture_(picture) {}

  StandJob take() {
    parts();
    told();
    if (picture_.reversed) {
      std::ranges::reverse(all_);
    }
    for (auto& [part, frame] : all_) {
      place(std::move(part), compose(picture_.whole, frame));
    }
    made_.look.seats = find_seats(made_.look.model, made_.look.settings.seats);
    if (picture_.reversed) {
      std::ranges::reverse(made_.look.seats.radial);
      std::ranges::reverse(made_.look.seats.axial);
      std::ranges::reverse(made_.job.fits);
      std::ranges::reverse(made_.job.measured);
      std::ranges::reverse(made_.job.parts);
    }
    return std::move(made_);
  }

 private:
  [[nodiscard]] double size(Size of) const { return stand_.sizes.at(of); }
  [[nodiscard]] double radius(Size of) const { return 0.5 * size(of); }
  [[nodiscard]] std::string name(const std::string& part) const { return picture_.names + part; }

  void add(const std::string& part, Product product, double volume) {
    product.id = product.name = name(part);
    product.volume = volume;
    name_features(product);
    all_.emplace_back(std::move(product), shifted(0, 0, 0));
  }

  void parts() {
    const double broken = picture_.chamfered ? kChamfer : 0.0;
    const double wall = 30.0 + size(wall_gap);
    Product frame = turned_part(ring(radius(frame_bore), 45, 0, 30, broken));
    join(frame, turned_part(ring(radius(far_bore), 45, wall, wall + 25, broken)));
    add("Frame", frame, 3e5);
    add("Bush", turned_part(ring(radius(bush_bore), radius(bush_outside), 0, 30, 0.0)), 1e4);
    const double j = radius(shaft_journal);
    const double seat = radius(gear_seat);
    const double far = radius(far_journal);
    const double end = wall + 45;
    add("Shaft",
        turned_part({{0, -5},
                     {j, -5},
                     {j, 31},
                     {22, 31},
                     {22, 36},
                     {seat, 36},
                     {seat, 66},
                     {far, 66},
                     {far, end},
                     {0, end}}),
        2e5);
    if (stand_.hub_on_sleeve) {
      add("Sleeve", turned_part(ring(radius(gear_bore), radius(sleeve_outside), 36, 66, 0.0)), 2e4);
      add("Hub", turned_part(ring(radius(hub_bore), 40, 37.5, 62, broken)), 6e4);
    } else {
      add("Gear", turned_part(ring(radius(gear_bore), 40, 36, 66, broken)), 8e4);
    }
    const double collar = wall + 25 + size(collar_at);
    add("Collar", turned_part(ring(far, far + 8, collar, collar + 8, 0.0)), 5e3);
  }

  void place(Product product, const Frame& frame) {
    Model& model = made_.look.model;
    model.occurrences.push_back({.id = "Group/" + product.name,
                                 .path = "Group/" + product.name,
                                 .product = ProductId(model.products.size()),
                                 .frame = frame,
                                 .mirrored = false,
                                 .box = place_box(frame, product.box)});
    model.products.push_back(std::move(product));
  }

  // The feature of the part that has that diameter.
  [[nodiscard]] std::string feature(const std::string& part, Side side, Size of) const {
    for (const auto& [product, frame] : all_) {
      for (const Cylinder& one : product.cylinders) {
        if (product.id == name(part) && one.side == side && one.diameter == size(of)) {
          return product.id + ": " + one.name;
        }
      }
    }
    return name(part) + ": none";
  }

  void part(const std::string& of, std::size_t material, bool made) {
    JobPart told;
    told.part = name(of);
    told.material = stand_.materials.at(material);
    told.state = made ? PartState::to_make : PartState::as_found;
    told.drawn = made ? Drawn::at_nominal : Drawn::at_the_size_wanted;
    made_.job.parts.push_back(told);
  }

  void fit(const std::string& hole, const std::string& shaft, double least, double greatest) {
    FitWant want;
    want.hole = hole;
    want.shaft = shaft;
    want.rule = ClearanceLimits{Length::mm(least), Length::mm(greatest)};
    made_.job.fits.push_back(want);
  }

  void limits(const std::string& of, Size size_of, double half) {
    SizeWant want;
    want.feature = of;
    const Length middle = Length::mm(limits_middle(size_of));
    want.rule = Limits{middle - Length::mm(half), middle + Length::mm(half)};
    made_.job.sizes.push_back(want);
  }
  [[nodiscard]] double limits_middle(Size of) const { return size(of); }

  void told() {
    Job& job = made_.job;
    job.settings.default_uncertainty = Length::mm(0.002);
    job.conditions.running_c = stand_.running_c;
    part("Frame", 0, false);
    part("Bush", 1, stand_.to_make);
    part("Shaft", 2, false);
    const std::string pressed = stand_.hub_on_sleeve ? "Sleeve" : "Gear";
    part(pressed, 3, stand_.to_make);
    if (stand_.hub_on_sleeve) {
      part("Hub", 4, false);
      fit(feature("Hub", Side::internal, hub_bore),
          feature("Sleeve", Side::external, sleeve_outside), 0.02, 0.15);
    }
    part("Collar", 2, false);
    const std::string bush = feature("Bush", Side::external, bush_outside);
    fit(feature("Frame", Side::internal, frame_bore), bush, -0.08, -0.005);
    fit(feature("Bush", Side::internal, bush_bore), feature("Shaft", Side::external, shaft_journal),
        0.01, 0.15);
    fit(feature("Frame", Side::internal, far_bore), feature("Shaft", Side::external, far_journal),
        0.01, 0.15);
    const std::string seat = feature(pressed, Side::internal, gear_bore);
    fit(seat, feature("Shaft", Side::external, gear_seat), -0.08, -0.005);
    if (stand_.to_make) {
      limits(bush, bush_outside, 0.008);
      limits(feature("Bush", Side::internal, bush_bore), bush_bore, 0.01);
      limits(seat, gear_bore, 0.008);
    }
    measure("Frame", Side::internal, frame_bore);
    measure("Bush", Side::external, bush_outside);
    measure("Bush", Side::internal, bush_bore);
    measure("Shaft", Side::external, shaft_journal);
    measure("Frame", Side::internal, far_bore);
    measure("Shaft", Side::external, far_journal);
    measure(pressed, Side::internal, gear_bore);
    measure("Shaft", Side::external, gear_seat);
    job.fixed.push_back({name("Collar"), name("Shaft"), "cross pin", {}});
    Turning turning;
    turning.part = name("Shaft");
    turning.rpm = stand_.rpm;
    turning.load_n = stand_.load_n;
    turning.thrust_n = 0.2 * stand_.load_n;
    job.turning.push_back(turning);
    job.end_play.push_back({name("Shaft"), {Length::mm(0.05), Length::mm(4.0)}, {}});
  }

  void measure(const std::string& of, Side side, Size which) {
    if (stand_.measured.at(which) > 0.0) {
      made_.job.measured.push_back({feature(of, side, which),
                                    Length::mm(stand_.measured.at(which)),
                                    Length::mm(stand_.measured_within),
                                    {}});
    }
  }

  const Stand& stand_;
  const Picture& picture_;
  std::vector<std::pair<Product, Frame>> all_;
  StandJob made_;
};

}  // namespace

Stand random_stand(unsigned seed) {
  Chance chance(seed);
  Stand stand;
  const auto set = [&](Size of, double value) {
    stand.sizes.at(of) = std::round(1000.0 * value) / 1000.0;
  };
  set(frame_bore, chance.between(32, 40));
  set(bush_outside, stand.sizes[frame_bore] + chance.between(-0.01, 0.07));
  set(bush_bore, chance.between(22, 26));
  set(shaft_journal, stand.sizes[bush_bore] - chance.between(0.02, 0.12));
  set(far_bore, chance.between(18, 21));
  set(far_journal, stand.sizes[far_bore] - chance.between(0.02, 0.12));
  set(gear_seat, stand.sizes[far_journal] + chance.between(3, 6));
  set(gear_bore, stand.sizes[gear_seat] - chance.between(-0.01, 0.06));
  set(sleeve_outside, stand.sizes[gear_bore] + chance.between(6, 12));
  set(hub_bore, stand.sizes[sleeve_outside] + chance.between(0.03, 0.1));
  set(wall_gap, chance.between(36.2, 37));
  set(collar_at, chance.between(0.1, 1.0));
  static const std::array<std::string, 5> kMetals{
      "grey cast iron A48 class 20", "bearing bronze C93200 (SAE 660)", "carbon steel 1045",
      "carbon steel 1020", "aluminium 6061-T6"};
  for (std::string& material : stand.materials) {
    material = kMetals.at(chance.below(kMetals.size()));
  }
  stand.running_c = chance.in(0.3) ? 20.0 : std::round(chance.between(-10, 120));
  stand.rpm = std::round(chance.between(20, 600));
  stand.load_n = std::round(chance.between(0, 2000));
  stand.hub_on_sleeve = chance.in(0.5);
  stand.to_make = chance.in(0.5);
  return stand;
}

StandJob drawn(const Stand& stand, const Picture& picture) {
  return Drawing(stand, picture).take();
}

}  // namespace spotblue::test
