#include "spotblue/standards/materials.hpp"

#include <algorithm>
#include <array>
#include <cstddef>

#include "spotblue/base/ascii.hpp"

namespace spotblue {
namespace {

// clang-format off
// Name, condition, E GPa, Poisson, expansion um/(m K), yield MPa, its basis, tensile strength MPa,
// density kg/m3, source. Where printed values disagree, tests/reference/materials.csv says so.
constexpr std::array<Material, 26> kMaterials = {{
    {"carbon steel A36", MaterialKind::steel, "hot rolled",
     200, 0.29, 11.7, 250, "0.2 percent offset", std::nullopt, 7850,
     "Philpot, Mechanics of Materials, table D.1 (E, yield); Gramoll, Mechanics of Materials, "
     "appendix (nu 0.29, 6.5e-6/F); density memory"},
    {"carbon steel 1020", MaterialKind::steel, "cold rolled",
     207, 0.29, 11.7, 427, "0.2 percent offset", std::nullopt, 7850,
     "Philpot, Mechanics of Materials, table D.1 (E, yield); nu, alpha memory"},
    {"carbon steel 1040", MaterialKind::steel, "hot rolled",
     207, 0.29, 11.3, 414, "0.2 percent offset", std::nullopt, 7850,
     "Philpot, Mechanics of Materials, table D.1 (E, yield); nu, alpha memory"},
    {"alloy steel 4140", MaterialKind::steel, "oil quenched, tempered 1100 F",
     207, 0.29, 12.3, 903, "0.2 percent offset", std::nullopt, 7850,
     "Philpot, Mechanics of Materials, table D.1 (E, yield); nu, alpha memory"},
    {"alloy steel 4340", MaterialKind::steel, "heat treated",
     214, 0.29, 12.3, 910, "0.2 percent offset", std::nullopt, 7850,
     "Philpot, Mechanics of Materials, table D.1 (E, yield); nu, alpha memory"},
    {"grey cast iron A48 class 20", MaterialKind::iron, "as cast",
     84, 0.22, 10.8, std::nullopt, "none", 138, 7200,
     "Philpot, Mechanics of Materials, table D.1 (E, nu, tensile strength, 71 kN/m3); alpha "
     "memory"},
    {"grey cast iron A48 class 30", MaterialKind::iron, "as cast",
     100, 0.26, 10.8, std::nullopt, "none", 207, 7150,
     "memory"},
    {"ductile iron A536 80-55-06", MaterialKind::iron, "as cast",
     168, 0.32, 11.2, 379, "0.2 percent offset", std::nullopt, 7240,
     "Philpot, Mechanics of Materials, table D.1 (E, nu, yield); alpha memory"},
    {"ductile iron A536 65-45-12", MaterialKind::iron, "annealed",
     168, 0.29, 11.2, 310, "0.2 percent offset", std::nullopt, 7100,
     "memory"},
    {"bearing bronze C93200 (SAE 660)", MaterialKind::bronze_or_brass, "continuous cast M07",
     100, 0.34, 18, 138, "0.5 percent extension under load", std::nullopt, 8910,
     "ASTM B505 (yield 20 ksi); Copper Development Association, alloy data (14 500 ksi, "
     "10.0e-6/F, 8.91): both memory; nu memory"},
    {"aluminium bronze C95400", MaterialKind::bronze_or_brass, "continuous cast M07",
     110, 0.316, 16.2, 221, "0.5 percent extension under load", std::nullopt, 7450,
     "Philpot, Mechanics of Materials, table D.1 (E, nu); ASTM B505 (yield 32 ksi, memory); "
     "alpha, density memory"},
    {"aluminium bronze C95400 TQ50", MaterialKind::bronze_or_brass, "heat treated",
     110, 0.316, 16.2, 310, "0.2 percent offset", std::nullopt, 7450,
     "Philpot, Mechanics of Materials, table D.1 (E, nu, yield); alpha, density memory"},
    {"brass C36000 free cutting", MaterialKind::bronze_or_brass, "half hard",
     97, 0.31, 20.5, 310, "0.5 percent extension under load", std::nullopt, 8490,
     "memory"},
    {"brass C26000", MaterialKind::bronze_or_brass, "hard",
     110, 0.33, 20, 434, "not stated", std::nullopt, 8530,
     "Gramoll, Mechanics of Materials, appendix (16e6 psi, 0.33, 11.1e-6/F, 63 ksi); density "
     "memory"},
    {"red brass C23000", MaterialKind::bronze_or_brass, "wrought",
     115, 0.307, 18.7, 124, "0.2 percent offset", std::nullopt, 8750,
     "Philpot, Mechanics of Materials, table D.1 (E, nu, yield, 86 kN/m3); alpha memory"},
    {"aluminium 6061-T6", MaterialKind::aluminium, "wrought",
     69, 0.33, 23.6, 276, "0.2 percent offset", std::nullopt, 2710,
     "Philpot, Mechanics of Materials, table D.1 (E, nu, yield); alpha, density memory"},
    {"acetal copolymer (POM-C)", MaterialKind::plastic, "moulded or rod",
     2.8, 0.37, 110, 65, "tensile yield", std::nullopt, 1410,
     "memory"},
    {"nylon 6/6", MaterialKind::plastic, "dry",
     1.4, 0.4, 144, 45, "tensile yield", std::nullopt, 1105,
     "Philpot, Mechanics of Materials, table D.1 (E, yield, 1105); alpha, nu memory"},
    {"carbon steel 1045", MaterialKind::steel, "cold drawn",
     205, 0.29, 11.7, 530, "0.2 percent offset", std::nullopt, 7850,
     "Shigley, Mechanical Engineering Design, table A-20 (yield 530, memory); the rest memory"},
    {"stainless steel 304", MaterialKind::steel, "annealed",
     193, 0.29, 17.3, 215, "0.2 percent offset", std::nullopt, 8000,
     "ASTM A240 wants 205; typical 215 and the rest memory"},
    {"wrought iron", MaterialKind::iron, "old bar or forging",
     190, 0.28, 11.5, 180, "tensile yield", std::nullopt, 7700,
     "memory"},
    {"phosphor bronze, cast", MaterialKind::bronze_or_brass, "chill or continuous cast",
     105, 0.34, 18, 170, "0.2 percent offset", std::nullopt, 8800,
     "memory"},
    {"gunmetal C83600", MaterialKind::bronze_or_brass, "sand cast",
     93, 0.34, 18, 97, "0.5 percent extension under load", std::nullopt, 8830,
     "memory"},
    {"white metal, tin base", MaterialKind::white_metal, "cast",
     50, 0.36, 22, 42, "0.125 percent offset, in compression", std::nullopt, 7390,
     "memory"},
    {"silver steel", MaterialKind::steel, "annealed, ground bar",
     207, 0.29, 11, 420, "0.2 percent offset", std::nullopt, 7830,
     "memory"},
    {"bearing steel 52100", MaterialKind::steel, "hardened",
     205, 0.29, 12, 2000, "0.2 percent offset", std::nullopt, 7810,
     "memory"},
}};

struct ShortName {
  std::string_view name;
  std::size_t material;  // place in kMaterials
};

constexpr std::array<ShortName, 57> kShortNames = {{
    {"steel", 0},  // carbon steel A36
    {"mild steel", 0},  // carbon steel A36
    {"structural steel", 0},  // carbon steel A36
    {"cold rolled steel", 1},  // carbon steel 1020
    {"cold drawn steel", 1},  // carbon steel 1020
    {"machine steel", 2},  // carbon steel 1040
    {"1020", 1},  // carbon steel 1020
    {"1040", 2},  // carbon steel 1040
    {"1045", 18},  // carbon steel 1045
    {"C45", 18},  // carbon steel 1045
    {"alloy steel", 3},  // alloy steel 4140
    {"4140", 3},  // alloy steel 4140
    {"4340", 4},  // alloy steel 4340
    {"stainless steel", 19},  // stainless steel 304
    {"304", 19},  // stainless steel 304
    {"iron", 5},  // grey cast iron A48 class 20
    {"cast iron", 5},  // grey cast iron A48 class 20
    {"grey iron", 5},  // grey cast iron A48 class 20
    {"gray iron", 5},  // grey cast iron A48 class 20
    {"grey cast iron", 5},  // grey cast iron A48 class 20
    {"gray cast iron", 5},  // grey cast iron A48 class 20
    {"ductile iron", 8},  // ductile iron A536 65-45-12
    {"nodular iron", 8},  // ductile iron A536 65-45-12
    {"SG iron", 8},  // ductile iron A536 65-45-12
    {"bronze", 9},  // bearing bronze C93200 (SAE 660)
    {"bearing bronze", 9},  // bearing bronze C93200 (SAE 660)
    {"leaded bronze", 9},  // bearing bronze C93200 (SAE 660)
    {"leaded tin bronze", 9},  // bearing bronze C93200 (SAE 660)
    {"SAE 660", 9},  // bearing bronze C93200 (SAE 660)
    {"C93200", 9},  // bearing bronze C93200 (SAE 660)
    {"aluminium bronze", 10},  // aluminium bronze C95400
    {"aluminum bronze", 10},  // aluminium bronze C95400
    {"C95400", 10},  // aluminium bronze C95400
    {"brass", 12},  // brass C36000 free cutting
    {"free cutting brass", 12},  // brass C36000 free cutting
    {"C36000", 12},  // brass C36000 free cutting
    {"cartridge brass", 13},  // brass C26000
    {"C26000", 13},  // brass C26000
    {"red brass", 14},  // red brass C23000
    {"C23000", 14},  // red brass C23000
    {"aluminium", 15},  // aluminium 6061-T6
    {"aluminum", 15},  // aluminium 6061-T6
    {"6061-T6", 15},  // aluminium 6061-T6
    {"acetal", 16},  // acetal copolymer (POM-C)
    {"POM", 16},  // acetal copolymer (POM-C)
    {"nylon", 17},  // nylon 6/6
    {"medium carbon steel", 2},  // carbon steel 1040
    {"medium-carbon steel", 2},  // carbon steel 1040
    {"phosphor bronze", 21},  // phosphor bronze, cast
    {"gunmetal", 22},  // gunmetal C83600
    {"gun metal", 22},  // gunmetal C83600
    {"C83600", 22},  // gunmetal C83600
    {"white metal", 23},  // white metal, tin base
    {"drill rod", 24},  // silver steel
    {"bearing steel", 25},  // bearing steel 52100
    {"52100", 25},  // bearing steel 52100
    {"100Cr6", 25},  // bearing steel 52100
}};

constexpr std::array<std::string_view, 5> kSoft{"felt", "paper", "cork", "leather", "rubber"};
// clang-format on

constexpr std::array<std::string_view, kMaterials.size() + kShortNames.size()> all_names() {
  std::array<std::string_view, kMaterials.size() + kShortNames.size()> names;
  for (std::size_t i = 0; i < kMaterials.size(); ++i) {
    names[i] = kMaterials[i].name;
  }
  for (std::size_t i = 0; i < kShortNames.size(); ++i) {
    names[kMaterials.size() + i] = kShortNames[i].name;
  }
  return names;
}

constexpr auto kNames = all_names();

}  // namespace

std::span<const Material> materials() { return kMaterials; }

const Material* find_material(std::string_view name) {
  for (const Material& material : kMaterials) {
    if (same_ascii_word(material.name, name)) {
      return &material;
    }
  }
  for (const ShortName& entry : kShortNames) {
    if (same_ascii_word(entry.name, name)) {
      return &kMaterials[entry.material];
    }
  }
  return nullptr;
}

bool is_soft_material(std::string_view name) {
  return std::any_of(kSoft.begin(), kSoft.end(),
                     [name](std::string_view soft) { return same_ascii_word(soft, name); });
}

std::span<const std::string_view> soft_materials() { return kSoft; }

std::span<const std::string_view> material_names() { return kNames; }

}  // namespace spotblue
