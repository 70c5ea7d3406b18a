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
  std::optional<double> running_c;  ///< its temperature when running; the job's when absent
  bool springs = false;  ///< is sprung in by hand: a shoulder or bore smaller than it lets it pass
  int line = 0;          ///< of the job file, 1-based; 0 for jobs made in code
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

/// Hole and shaft each by limits of its own; job files have no entry for it, models' stated sizes
/// make it.
struct LimitsOfBoth {
  Limits hole, shaft;
  std::optional<Length> hole_nominal, shaft_nominal;
  std::string text;   ///< "H7/s6"
  std::string basis;  ///< where the limits are from, for the report
};

using FitRule = std::variant<ClassFit, ClearanceLimits, PerDiameter, LimitsOfBoth>;

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
  std::optional<double> tensile_mpa;  ///< of a brittle material, in place of a yield
  int line = 0;
};

/// How hard a running pair works; it decides which limits apply.
enum class Duty { no_load_slow, intermittent, continuous };

/// A part that turns, with all that is joined to it; what it turns on or in is found.
struct Turning {
  std::string part;  ///< product id or occurrence path
  double rpm = 0.0;  ///< > 0
  Duty duty = Duty::intermittent;
  std::optional<double> load_n;    ///< across the axis, shared by its bearings; >= 0
  std::optional<double> thrust_n;  ///< along the axis, >= 0
  int line = 0;
};

/// Two parts held to each other along the axis and in turning, by something no fit shows.
struct Join {
  std::string a, b;  ///< product ids or occurrence paths
  std::string by;    ///< "set screw", "pin", "clamped by the nut": for the report
  int line = 0;
};

/// Two parts that must stay off each other, by at least so much.
struct KeepOff {
  std::string a, b;  ///< product ids or occurrence paths
  Length least;      ///< > 0
  std::string reason;
  int line = 0;
};

/// The roughness of one feature, as peak-to-valley height Rz.
struct Surface {
  std::string feature;
  double rz_um = 0.0;  ///< >= 0
  int line = 0;
};

/// The distance between two faces of one part, or how far it may be off: measured, or toleranced.
struct PartLength {
  std::string a, b;                ///< names of two faces of one part
  std::optional<Length> measured;  ///< replaces the model's
  std::optional<Length> uncertainty;
  std::optional<Limits> limits;  ///< limit sizes of a length still to be made
  int line = 0;
};

/// How far a captured part shall travel along its axis.
struct EndPlayWant {
  std::string of;  ///< product id or occurrence path
  Limits gap;      ///< least >= 0
  int line = 0;
};

/// A span over several teeth, or a size over two pins (three where the number of teeth is odd).
struct ToothSpan {
  int teeth = 0;  ///< spanned, >= 2
  Length over;
};
struct OverPins {
  Length pin;
  Length over;
};

/// One gear of a mesh; of thickness, span and pins at most one is given.
struct MeshGear {
  std::string part;
  int teeth = 0;
  std::optional<Length> thickness;  ///< of a tooth on the reference circle, in the normal plane
  std::optional<ToothSpan> span;
  std::optional<OverPins> pins;
  std::optional<Length> tip_diameter, root_diameter;  ///< from the module when absent
};

/// Two external involute gears that run together.
struct Mesh {
  MeshGear a, b;
  Length module;  ///< normal; 25.4 mm / diametral pitch
  double pressure_angle_deg = 20.0;
  double helix_angle_deg = 0.0;
  std::optional<Limits> backlash;  ///< wanted, on the working circle
  int line = 0;
};

/// Metal that comes off a part that exists; the named feature is as it will be.
struct Cut {
  std::string feature;  ///< "Stud: outside 28.97", "Wheel: bore 38.012", "Wheel: face 55 @ 0"
  Length before;        ///< diameter before the cut; 0 for a face
  Length depth;         ///< faced off; 0 for a diameter
  // Of a shaft turned down:
  std::optional<Length> fillet;       ///< radius left in the corner of the new shoulder
  std::optional<Length> mate_corner;  ///< radius or chamfer of the part that comes against it
  std::optional<double> torque_nm, bending_nm;
  int line = 0;
};

/// What holds for the whole job; the defaults are common practice, no source, and each finding that
/// uses one says so.
struct Conditions {
  double bench_c = 20.0;
  double running_c = 20.0;                                ///< of parts without one of their own
  double friction_least = 0.08, friction_greatest = 0.2;  ///< of pressed joints
  double rz_um = 6.3;                    ///< of features without a [[surfaces]] entry
  std::optional<Length> slip_clearance;  ///< for a slip-in assembly; 0.001 of the diameter
  std::string untoleranced = "m";        ///< ISO 2768-1 class of lengths without limits
  Length cleaning = Length::mm(1.0);     ///< metal to clean off each side of the stock
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
  Conditions conditions;
  std::vector<Turning> turning;
  std::vector<Join> joins;
  std::vector<KeepOff> keep_off;
  std::vector<Surface> surfaces;
  std::vector<PartLength> lengths;
  std::vector<EndPlayWant> end_play;
  std::vector<Mesh> meshes;
  std::vector<Cut> cuts;
  JobSettings settings;
};

}  // namespace spotblue
