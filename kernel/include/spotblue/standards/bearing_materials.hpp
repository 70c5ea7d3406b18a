#pragma once
/// @file
/// What plain bearing materials bear: greatest pressure, surface speed and their product, boundary
/// lubricated; and the proportions that shop practice gives a plain bearing.
///
/// The limits serve to compare and to warn: they are printed for a clean, oiled or greased bearing
/// in line with a smooth steel shaft, and printed tables disagree. Where they do, the lesser stands
/// here and `note` says what else is printed. Sources in full: tests/reference/SOURCES.md.
/// Checked by: tests/standards/bearing_materials_test.cpp, the printed rows.

#include <optional>
#include <span>
#include <string_view>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"

namespace spotblue {

struct BearingLimits {
  std::optional<double> pressure_mpa;
  std::optional<double> speed_m_s;
  std::optional<double> pressure_speed_mpa_m_s;
};
constexpr void describe(auto& fields, const BearingLimits*) {
  fields
      .value(
          "BearingLimits",
          "Greatest values a material bears when it runs; absent where no limit is known. All > 0.")
      .member("pressure_mpa", &BearingLimits::pressure_mpa, "load over diameter x length, MPa")
      .range(kOver0)
      .member("speed_m_s", &BearingLimits::speed_m_s, "of the surfaces against each other, m/s")
      .range(kOver0)
      .member("pressure_speed_mpa_m_s", &BearingLimits::pressure_speed_mpa_m_s,
              "their product, what heats the bearing")
      .range(kOver0);
}

struct BearingMaterial {
  std::string_view name;
  BearingLimits limits;
  std::optional<double> hottest_c;
  std::string_view source;
  std::string_view note;
};
constexpr void describe(auto& fields, const BearingMaterial*) {
  fields.value("BearingMaterial", "What a plain bearing material bears.")
      .member("name", &BearingMaterial::name, "of materials() where that table has it")
      .member("limits", &BearingMaterial::limits, "pressure, speed and their product")
      .member("hottest_c", &BearingMaterial::hottest_c,
              "printed ceiling; tables disagree, see note")
      .member("source", &BearingMaterial::source, "where the values are from")
      .member("note", &BearingMaterial::note,
              "what other tables print, or what the row stands in for");
}

/// Every row of the table.
[[nodiscard]] SPOTBLUE_EXPORT std::span<const BearingMaterial> bearing_materials();

/// The row of a material by the names of find_material or of this table, letter case aside.
/// @return nothing (nullptr) for materials that are no bearing material, steel among them.
[[nodiscard]] SPOTBLUE_EXPORT const BearingMaterial* find_bearing_material(std::string_view name);

/// Whether it is a material that shafts are made of and that sets no limit of its own when it runs
/// on a bearing material: steel and wrought iron.
[[nodiscard]] SPOTBLUE_EXPORT bool is_journal_material(std::string_view name);

/// The lesser of each limit; a limit that one does not have is the other's.
[[nodiscard]] SPOTBLUE_EXPORT BearingLimits weaker(const BearingLimits& a, const BearingLimits& b);

struct ClearanceGuide {
  std::string_view service;
  double least = 0.0, greatest = 0.0;
  std::string_view source;
};
constexpr void describe(auto& fields, const ClearanceGuide*) {
  fields
      .value("ClearanceGuide",
             "Diametral clearance for each unit of diameter, 0 < least < greatest.")
      .member("service", &ClearanceGuide::service, "what kind of running")
      .member("least", &ClearanceGuide::least, "diametral, per unit of diameter, > 0")
      .member("greatest", &ClearanceGuide::greatest, "diametral, per unit of diameter")
      .member("source", &ClearanceGuide::source, "where it is from");
}

/// Running clearances of shop practice, tightest first.
[[nodiscard]] SPOTBLUE_EXPORT std::span<const ClearanceGuide> clearance_guides();

struct BearingProportions {
  double length_least = 0.5, length_usual = 1.0, length_greatest = 2.0;
  double length_relieved = 1.5;
  double wall_least = 0.05;
  Length wall_floor = Length::mm(1.5);
  double groove_length = 0.8;
  double groove_depth = 1.0 / 3.0;
  double groove_width_least = 0.125, groove_width_most = 0.2;
  std::string_view length_source, wall_source, groove_source;
};
constexpr void describe(auto& fields, const BearingProportions*) {
  fields
      .value("BearingProportions",
             "Proportions of a plain bearing; a bearing outside them may run, but deserves a "
             "second thought.")
      .member("length_least", &BearingProportions::length_least, "length per diameter")
      .member("length_usual", &BearingProportions::length_usual, "length per diameter")
      .member("length_greatest", &BearingProportions::length_greatest, "length per diameter")
      .member("length_relieved", &BearingProportions::length_relieved,
              "above it the middle is relieved or the ends are lined up")
      .member("wall_least", &BearingProportions::wall_least,
              "wall of a solid bronze bush per its bore")
      .member("wall_floor_mm", &BearingProportions::wall_floor, "least wall, mm")
      .member("groove_length", &BearingProportions::groove_length,
              "per length, stopping short of both ends")
      .member("groove_depth", &BearingProportions::groove_depth, "per wall")
      .member("groove_width_least", &BearingProportions::groove_width_least, "per diameter")
      .member("groove_width_most", &BearingProportions::groove_width_most, "per diameter")
      .member("length_source", &BearingProportions::length_source, "where the lengths are from")
      .member("wall_source", &BearingProportions::wall_source, "where the walls are from")
      .member("groove_source", &BearingProportions::groove_source, "where the grooves are from");
}
[[nodiscard]] SPOTBLUE_EXPORT const BearingProportions& bearing_proportions();

}  // namespace spotblue
