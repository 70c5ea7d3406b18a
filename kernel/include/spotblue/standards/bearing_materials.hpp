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

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"

namespace spotblue {

/// Greatest values a material bears when it runs; absent where no limit is known. All > 0.
struct BearingLimits {
  std::optional<double> pressure_mpa;            ///< load over diameter x length
  std::optional<double> speed_m_s;               ///< of the surfaces against each other
  std::optional<double> pressure_speed_mpa_m_s;  ///< their product, what heats the bearing
};

struct BearingMaterial {
  std::string_view name;  ///< of materials.hpp where that table has it
  BearingLimits limits;
  std::optional<double> hottest_c;  ///< printed ceiling; tables disagree, see note
  std::string_view source;
  std::string_view note;  ///< what other tables print, or what the row stands in for
};

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

/// Diametral clearance for each unit of diameter, 0 < least < greatest.
struct ClearanceGuide {
  std::string_view service;
  double least = 0.0, greatest = 0.0;
  std::string_view source;
};

/// Running clearances of shop practice, tightest first.
[[nodiscard]] SPOTBLUE_EXPORT std::span<const ClearanceGuide> clearance_guides();

/// Proportions of a plain bearing; a bearing outside them may run, but deserves a second thought.
struct BearingProportions {
  double length_least = 0.5, length_usual = 1.0, length_greatest = 2.0;  ///< per diameter
  double length_relieved = 1.5;  ///< above it the middle is relieved or the ends are lined up
  double wall_least = 0.05;      ///< wall of a bush per its bore, solid bronze
  Length wall_floor = Length::mm(1.5);
  double groove_length = 0.8;       ///< per length, stopping short of both ends
  double groove_depth = 1.0 / 3.0;  ///< per wall
  double groove_width_least = 0.125, groove_width_most = 0.2;  ///< per diameter
  std::string_view length_source, wall_source, groove_source;
};
[[nodiscard]] SPOTBLUE_EXPORT const BearingProportions& bearing_proportions();

}  // namespace spotblue
