#include "spotblue/standards/bearing_materials.hpp"

#include <algorithm>
#include <array>

#include "base/require.hpp"
#include "spotblue/base/ascii.hpp"
#include "spotblue/standards/materials.hpp"

namespace spotblue {
namespace {

// 1 lbf/in2 = 6894.757 Pa, 1 ft = 0.3048 m: the rows stand as they are printed.
constexpr double psi(double value) { return value * 0.006894757; }
constexpr double ft_min(double value) { return value * 0.3048 / 60.0; }
constexpr double psi_ft_min(double value) { return psi(ft_min(value)); }

constexpr BearingLimits limits(std::optional<double> pressure, std::optional<double> speed,
                               std::optional<double> pressure_speed) {
  return {pressure, speed, pressure_speed};
}

constexpr std::string_view kAluminiumBronzeNote =
    // 20 to 30 MPa, 5 to 8 m/s, 12 to 15 MPa m/s
    "Chinese handbooks print otherwise; wants a hard shaft";

// clang-format off
constexpr std::array<BearingMaterial, 14> kRows = {{
    {"bearing bronze C93200 (SAE 660)", limits(psi(3000), ft_min(750), psi_ft_min(75000)), 260.0,
     "product: Mott, Machine Elements in Mechanical Design, table 16-1; "
     "pressure and speed: bush makers' tables, memory",
     // 260 C by bush makers, 225 C for lead bronze by Carvill; a bush maker prints 4000 psi
     "temperature ceilings disagree: bush makers print a higher one than Carvill, Mechanical "
     "Engineer's Data Handbook, p. 92; a bush maker prints a greater pressure"},
    {"aluminium bronze C95400", limits(psi(4000), ft_min(225), psi_ft_min(125000)), 399.0,
     "product: Mott, Machine Elements in Mechanical Design, table 16-1; "
     "pressure and speed: bush makers' tables, memory",
     kAluminiumBronzeNote},
    {"aluminium bronze C95400 TQ50", limits(psi(4000), ft_min(225), psi_ft_min(125000)), 399.0,
     "as aluminium bronze C95400", kAluminiumBronzeNote},
    {"manganese bronze C86300", limits(psi(8000), ft_min(225), psi_ft_min(150000)), 204.0,
     "product: Mott, Machine Elements in Mechanical Design, table 16-1 (C86200); pressure and "
     "speed memory",
     // bush makers: 250 ft/min and 8000 psi
     "bush makers print otherwise: the least stands"},
    {"tin bronze", limits(8.0, 3.0, 15.0), 260.0,
     "Pu and others, Mechanical Design (Beijing), table 12-2 (ZCuSn5Pb5Zn5, memory); Carvill, "
     "Mechanical Engineer's Data Handbook, p. 92 (temperature)",
     "ZCuSn10P1 is printed higher"},
    {"sintered bronze (SAE 841)", limits(psi(2000), ft_min(1200), 0.7), 75.0,
     "Carvill, Mechanical Engineer's Data Handbook, p. 92 (product, temperature); pressure "
     "and speed memory",
     // Mott 50 000 psi ft/min; Carvill 30 MPa, 7.5 m/s
     "Mott, Machine Elements in Mechanical Design, table 16-1, and Carvill print higher"},
    {"grey cast iron A48 class 20", limits(4.0, 2.0, 2.0), 150.0,
     "Pu and others, Mechanical Design (Beijing), table 12-2 (HT150 to HT250; memory)",
     "light loads without shock"},
    {"grey cast iron A48 class 30", limits(4.0, 2.0, 2.0), 150.0,
     "Pu and others, Mechanical Design (Beijing), table 12-2 (HT150 to HT250; memory)",
     "light loads without shock"},
    {"ductile iron A536 65-45-12", limits(12.0, 5.0, 2.5), std::nullopt,
     "Cheng (ed.), Handbook of Mechanical Design (Beijing), plain bearing metals (QT450-10; "
     "memory)",
     "the product is the lesser of the two printed"},
    {"ductile iron A536 80-55-06", limits(12.0, 5.0, 2.5), std::nullopt,
     "Cheng (ed.), Handbook of Mechanical Design (Beijing), plain bearing metals (QT500-7; "
     "memory)",
     "the product is the lesser of the two printed; wants a hardened shaft"},
    {"brass C36000 free cutting", limits(10.0, 1.0, 10.0), 200.0,
     "Cheng (ed.), Handbook of Mechanical Design (Beijing), plain bearing metals "
     "(ZCuZn38Mn2Pb2; memory)",
     "stands in: a cast leaded brass, not C36000 itself"},
    {"tin babbitt", limits(5.5, std::nullopt, psi_ft_min(30000)), 150.0,
     "Carvill, Mechanical Engineer's Data Handbook, p. 92 (pressure, temperature); product: "
     "Mott, Machine Elements in Mechanical Design, table 16-1",
     "the pressure is the lesser printed"},
    {"acetal copolymer (POM-C)", limits(10.0, ft_min(1000), psi_ft_min(3000)), 100.0,
     "Neale, The Tribology Handbook, A5.1 (pressure, static, and temperature); speed and product "
     "memory, dry",
     "creeps under steady load"},
    {"nylon 6/6", limits(7.0, 2.5, psi_ft_min(3000)), 95.0,
     "Carvill, Mechanical Engineer's Data Handbook, p. 92 (pressure, speed, temperature); "
     "product: Mott, Machine Elements in Mechanical Design, table 16-1",
     // Carvill: 0.875 MPa m/s
     "Carvill prints a greater product; swells when wet"},
}};

constexpr std::array<std::string_view, 9> kJournals = {{
    "carbon steel A36", "carbon steel 1020", "carbon steel 1040", "carbon steel 1045",
    "alloy steel 4140", "alloy steel 4340", "stainless steel 304", "wrought iron", "tool steel",
}};

// Limits of the shaft in a basic hole at 1 in; classes Z, Y, X.
constexpr std::array<ClearanceGuide, 5> kGuides = {{
    {"fine tool work", 0.0007, 0.0012, "Jones, Turning and Boring, 1914, class Z at 1 in"},
    {"high speed and good average work", 0.0010, 0.0020,
     "Jones, Turning and Boring, 1914, class Y at 1 in"},
    {"engine and easy fits", 0.0012, 0.0027, "Jones, Turning and Boring, 1914, class X at 1 in"},
    {"dirty or rough machinery", 0.0020, 0.0030, "common practice, no source"},
    {"slow pins, greased", 0.0020, 0.0040, "common practice, no source"},
}};
// clang-format on

constexpr BearingProportions kProportions = [] {
  BearingProportions proportions;
  proportions.length_source =
      "0.5 to 2, usual 1: Bhandari, Design of Machine Elements, ch. 16 (memory); relieve "
      "above 1.5: common practice, no source";
  proportions.wall_source = "common practice, no source";
  proportions.groove_source = "common practice, no source";
  return proportions;
}();

// A short name of the table of materials stands for its full one.
std::string_view full_name(std::string_view name) {
  const Material* material = find_material(name);
  return material == nullptr ? name : material->name;
}

std::optional<double> lesser(const std::optional<double>& a, const std::optional<double>& b) {
  if (!a || !b) {
    return a ? a : b;
  }
  return std::min(*a, *b);
}

}  // namespace

std::span<const BearingMaterial> bearing_materials() { return kRows; }

const BearingMaterial* find_bearing_material(std::string_view name) {
  const std::string_view wanted = full_name(name);
  const auto* found = std::find_if(kRows.begin(), kRows.end(), [&](const BearingMaterial& row) {
    return same_ascii_word(row.name, wanted);
  });
  return found == kRows.end() ? nullptr : found;
}

bool is_journal_material(std::string_view name) {
  const std::string_view wanted = full_name(name);
  return std::any_of(kJournals.begin(), kJournals.end(),
                     [&](std::string_view journal) { return same_ascii_word(journal, wanted); });
}

BearingLimits weaker(const BearingLimits& a, const BearingLimits& b) {
  require_value(a, "a");
  require_value(b, "b");
  return {lesser(a.pressure_mpa, b.pressure_mpa), lesser(a.speed_m_s, b.speed_m_s),
          lesser(a.pressure_speed_mpa_m_s, b.pressure_speed_mpa_m_s)};
}

std::span<const ClearanceGuide> clearance_guides() { return kGuides; }

const BearingProportions& bearing_proportions() { return kProportions; }

}  // namespace spotblue
