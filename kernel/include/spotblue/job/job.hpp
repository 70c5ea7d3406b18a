#pragma once
/// @file
/// A job as values: which model, what is known of its parts, what was measured and what is wanted.
/// Lengths are lengths whatever unit the job file was written in; names are kept as written and are
/// matched to the model by the check layer, which names `line` when one does not match.

#include <filesystem>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "spotblue/base/length.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

/// Whether a part exists and is measured, or is still to be cut.
enum class PartState { as_found, to_make };

/// Whether 44 in the model means "44, and a class makes the limits" or "measured 44".
enum class SizesMeant { basic, actual };

enum class StockForm { bar, tube, slug, plate };

/// What a part is to be cut from; the sizes that a form does not have are absent.
struct Stock {
  StockForm form = StockForm::bar;
  std::optional<Length> diameter;        ///< bar, tube, slug: outside
  std::optional<Length> inner_diameter;  ///< tube
  std::optional<Length> length;
  std::optional<Length> width;      ///< plate
  std::optional<Length> thickness;  ///< plate
};

struct JobPart {
  std::string part;      ///< product id, or an occurrence path for that one only
  std::string material;  ///< empty when not given
  PartState state = PartState::as_found;
  SizesMeant sizes = SizesMeant::actual;
  bool irreplaceable = false;
  std::optional<Stock> stock;
  int line = 0;  ///< of the job file, 1-based; 0 for jobs made in code
};

enum class FitSystem { iso_286, ansi_b4_1 };

/// A class of a standard: "H7/s6" or "FN2".
struct ClassFit {
  FitSystem system = FitSystem::iso_286;
  std::string text;
  std::optional<Length> nominal;  ///< taken from the features when absent
};

/// Plain limits of the diametral clearance, least <= greatest; interference is negative.
struct ClearanceLimits {
  Length least, greatest;
};

/// Old shop practice: so much clearance for each unit of diameter, give or take a tolerance.
struct PerDiameter {
  double clearance = 0.0;  ///< length per length; negative is interference
  Length tolerance;        ///< >= 0, either way
  std::optional<Length> nominal;
};

using FitRule = std::variant<ClassFit, ClearanceLimits, PerDiameter>;

/// How a hole and a shaft, or a slot and a key, shall fit.
struct FitWant {
  std::string hole, shaft;  ///< feature names: "Wheel: bore 44"
  FitRule rule;
  int line = 0;
};

/// What one feature's own size shall be: a tolerance class ("H7") or limits.
struct SizeWant {
  std::string feature;
  std::variant<std::string, Limits> rule;
  std::optional<Length> nominal;  ///< for a class; taken from the feature when absent
  int line = 0;
};

/// A size taken with an instrument; it replaces the model's.
struct MeasuredSize {
  std::string feature;
  Length value;
  std::optional<Length> uncertainty;  ///< expanded, k = 2; the default one when absent
  int line = 0;
};

/// A gap between two faces taken with a feeler or an indicator; it replaces the model's.
struct MeasuredGap {
  std::string a, b;  ///< feature names of two faces
  Length value;
  std::optional<Length> uncertainty;
  int line = 0;
};

enum class AxialWantKind { gap, end_play, touch };

/// The gap wanted between two faces, or at every axial seat between two parts.
struct AxialWant {
  AxialWantKind kind = AxialWantKind::gap;
  std::string a, b;  ///< feature names, product ids or occurrence paths
  Length least, greatest;
  int line = 0;
};

/// How near two cones that bear on each other must agree.
struct TaperWant {
  std::string hole, shaft;
  double angle_within_deg = 0.0;       ///< greatest difference of the half angles
  std::optional<ClearanceLimits> gap;  ///< square to the surface
  int line = 0;
};

/// An overlap of two parts that is meant: a squeezed ring, a gear mesh drawn as blanks.
struct AllowedOverlap {
  std::string a, b;  ///< product ids or occurrence paths
  std::string reason;
  Length depth;  ///< greatest
  int line = 0;
};

/// A material of the job's own; the missing numbers are unknown, not zero.
struct OwnMaterial {
  std::string name;
  double youngs_modulus_gpa = 0.0;
  double poisson_ratio = 0.0;
  double expansion_um_per_m_k = 0.0;
  std::optional<double> yield_mpa;
  int line = 0;
};

struct JobSettings {
  SeatSettings seats;
  /// Of sizes that have none of their own: measured values, and actual sizes from the model.
  Length default_uncertainty;
  ReadLimits limits;
  Completeness completeness = Completeness::all_or_error;
};

struct Job {
  std::string file;             ///< as the caller gave it; empty for jobs made in code
  std::filesystem::path model;  ///< resolved against the job file's folder
  LengthUnit unit = LengthUnit::mm;
  std::string title;
  std::vector<JobPart> parts;
  std::vector<FitWant> fits;
  std::vector<SizeWant> sizes;
  std::vector<MeasuredSize> measured;
  std::vector<MeasuredGap> measured_gaps;
  std::vector<AxialWant> axial;
  std::vector<TaperWant> tapers;
  std::vector<AllowedOverlap> allowed;
  std::vector<OwnMaterial> materials;
  JobSettings settings;
};

}  // namespace spotblue
