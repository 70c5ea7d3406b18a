#pragma once
/// @file
/// The numbers that say what is a seat, defaults are design section 8, and how a look is taken.

#include <limits>
#include <optional>

#include "spotblue/base/export.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

struct SeatSettings {
  double coaxial_offset_mm = 0.5;
  double coaxial_offset_per_diameter = 0.02;
  double coaxial_tilt_deg = 1.0;
  double radial_gap_mm = 1.0;
  double radial_gap_per_diameter = 0.02;
  double radial_overlap_mm = 0.02;
  double radial_overlap_per_diameter = 0.005;
  double facing_tilt_deg = 1.0;
  double axial_gap_least_mm = -1.0;
  double axial_gap_most_mm = 2.0;
  /// Ten times Open CASCADE's own Precision::Confusion.
  double same_length_mm = 1e-6;
  bool operator==(const SeatSettings&) const = default;
};
constexpr void describe(auto& fields, const SeatSettings*) {
  fields
      .value("SeatSettings",
             "The numbers that say what is a seat: what is near-coaxial, adjacent and facing.")
      .member("coaxial_offset_mm", &SeatSettings::coaxial_offset_mm,
              "axes of a seat may differ by this ...")
      .member("coaxial_offset_per_diameter", &SeatSettings::coaxial_offset_per_diameter,
              "... or by this part of the diameter, the greater")
      .member("coaxial_tilt_deg", &SeatSettings::coaxial_tilt_deg, "between those axes, at most")
      .member("radial_gap_mm", &SeatSettings::radial_gap_mm, "greatest radial gap of a seat ...")
      .member("radial_gap_per_diameter", &SeatSettings::radial_gap_per_diameter,
              "... or this part of the diameter, the greater")
      .member("radial_overlap_mm", &SeatSettings::radial_overlap_mm,
              "greatest radial overlap of a press fit ...")
      .member("radial_overlap_per_diameter", &SeatSettings::radial_overlap_per_diameter,
              "... or this part of the diameter, the greater")
      .member("facing_tilt_deg", &SeatSettings::facing_tilt_deg,
              "between the normals of faces that seat, at most")
      .member("axial_gap_least_mm", &SeatSettings::axial_gap_least_mm,
              "of an axial seat; negative: overlap")
      .member("axial_gap_most_mm", &SeatSettings::axial_gap_most_mm, "of an axial seat")
      .member("same_length_mm", &SeatSettings::same_length_mm, "nearer lengths are the same");
}

/// Where Open CASCADE reads a file: in a child process made for it, or in this one, which is faster
/// by the making of the child, but ends with a file that crashes Open CASCADE and keeps no bounds
/// on time and memory: only for a process that its maker bounds, watches and can lose, and from one
/// thread.
enum class ReadIn { child_process, this_process };
constexpr auto describe(const ReadIn*) {
  return words(
      "Where a file is read: in this process only when it can be lost, and from one thread.",
      "child process", "this process");
}

struct ReadLimits {
  double seconds = 120.0;
  double memory_mb = 6000.0;
  double file_mb = 1000.0;
  int nesting_depth = 500;
  double occurrences = 2'000'000;
  int token_kb = 16;
  ReadIn read_in = ReadIn::child_process;
};
constexpr void describe(auto& fields, const ReadLimits*) {
  fields.value("ReadLimits", "Bounds on the contained read of a file from outside.")
      .member("seconds", &ReadLimits::seconds, "of wall time for one file")
      .member("memory_mb", &ReadLimits::memory_mb,
              "of address space beyond what the program has at the start, 10^6 bytes")
      .member("file_mb", &ReadLimits::file_mb, "10^6 bytes; a larger file is refused unread")
      .member("nesting_depth", &ReadLimits::nesting_depth, "of assemblies and of brackets")
      .member("occurrences", &ReadLimits::occurrences,
              "more than this after unfolding the assembly is refused")
      .member("token_kb", &ReadLimits::token_kb,
              "of one token, 1024 bytes; Open CASCADE refuses longer ones after a long time")
      .member("read_in", &ReadLimits::read_in, "\"child process\" or \"this process\"");
}

enum class Completeness { all_or_error, accept_partial };
constexpr auto describe(const Completeness*) {
  return words("What becomes of a file that reads only in part.", "all or error", "accept partial");
}

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
