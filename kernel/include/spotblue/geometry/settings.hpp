#pragma once
/// @file
/// The numbers that say what is a seat, defaults are design section 8, and how a look is taken.

#include <limits>
#include <optional>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// What is near-coaxial, adjacent and facing. Lengths in mm, angles in degrees.
struct SeatSettings {
  double coaxial_offset_mm = 0.5;             ///< axes may differ by this ...
  double coaxial_offset_per_diameter = 0.02;  ///< ... or this part of the diameter, the greater
  double coaxial_tilt_deg = 1.0;
  double radial_gap_mm = 1.0;  ///< greatest radial gap of a seat ...
  double radial_gap_per_diameter = 0.02;
  double radial_overlap_mm = 0.02;  ///< greatest radial overlap of a press fit ...
  double radial_overlap_per_diameter = 0.005;
  double facing_tilt_deg = 1.0;
  double axial_gap_least_mm = -1.0;
  double axial_gap_most_mm = 2.0;
  /// Lengths nearer than this are the same length: Open CASCADE's own Precision::Confusion times
  /// ten.
  double same_length_mm = 1e-6;
  bool operator==(const SeatSettings&) const = default;
};

/// Where Open CASCADE reads a file: in a child process made for it, or in this one, which is faster
/// by the making of the child, but ends with a file that crashes Open CASCADE and keeps no bounds
/// on time and memory: only for a process that its maker bounds, watches and can lose, and from one
/// thread.
enum class ReadIn { child_process, this_process };

/// Bounds on the contained read of a file from outside.
struct ReadLimits {
  double seconds = 120.0;          ///< of wall time for one file
  double memory_mb = 6000.0;       ///< of address space beyond what the program has at the start
  double file_mb = 1000.0;         ///< a larger file is refused unread
  int nesting_depth = 500;         ///< of assemblies and of brackets
  double occurrences = 2'000'000;  ///< more than this after unfolding the assembly is refused
  int token_kb = 16;               ///< Open CASCADE refuses longer ones after a long time
  ReadIn read_in = ReadIn::child_process;
};

enum class Completeness { all_or_error, accept_partial };

struct LookSettings {
  SeatSettings seats;
  ReadLimits limits;
  Completeness completeness = Completeness::all_or_error;
  /// Wall time for all of it, s, more than 0; what is not looked at by then is told. Without it the
  /// read may take limits.seconds, and what comes after as long again.
  double seconds = std::numeric_limits<double>::infinity();
};

/// What a caller gives a look: one pair for the read and for all that comes after it, and whether
/// part of a model will do.
struct LookBounds {
  std::optional<double> seconds;    ///< wall time for all of it, more than 0
  std::optional<double> memory_mb;  ///< 10^6 bytes, more than 0: see look
  bool accept_partial = false;      ///< else as the settings have it
};

/// The settings with what is given in place of their own limits.
/// @throws Error bad_input naming what is not more than 0.
[[nodiscard]] SPOTBLUE_EXPORT LookSettings bounded(LookSettings settings, const LookBounds& bounds);

}  // namespace spotblue
