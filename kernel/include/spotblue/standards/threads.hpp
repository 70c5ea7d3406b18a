#pragma once
/// @file
/// Screw threads, as far as needed to know a screw in a tapped hole when both are modelled as plain
/// cylinders: metric M1 to M64 with the old M1.7, M2.3 and M2.6, the unified coarse and fine series
/// No. 0 to 2 in, pipe threads G 1/16 to G 4 and 1/16 to 4 in NPT, Whitworth BSW and BSF to 2 in,
/// 0 to 12 BA, and tapping screws ST2.2 to ST6.3.
///
/// Sources: sizes and pitches ISO 261:1998 and ISO 262:1998 (first and second choice with the usual
/// fine pitches, and the fine pitches of bearing lock nuts) and ASME B1.1, from memory; minor
/// diameter by the basic profile, ISO 68-1; tap drills ISO 2306 for metric threads, common practice
/// for unified ones, from memory. The others: ISO 228-1:2000, ASME B1.20.1-1983, BS 84:1956,
/// BS 93:1951, ISO 1478:1999; which of their values were seen in print stands beside the tables.
/// Checked by: tests/standards/threads_test.cpp against printed thread tables.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/standards/materials.hpp"

namespace spotblue {

struct ThreadSize {
  std::string designation;
  Length major_diameter;
  Length pitch;
  Length minor_diameter;
  Length tap_drill;
  bool usual = true;
};
constexpr void describe(auto& fields, const ThreadSize*) {
  fields.value("ThreadSize", "Basic sizes of one thread, mm.")
      .member("designation", &ThreadSize::designation,
              "\"M10\", \"M10x1\", \"3/8-16 UNC\", \"No. 10-32 UNF\", \"G 1/2\", \"1/2-14 NPT\", "
              "\"1/4 BSW\", \"2 BA\", \"ST4.2\"")
      .member("major_diameter_mm", &ThreadSize::major_diameter, "basic major diameter d = D")
      .member("pitch_mm", &ThreadSize::pitch, "pitch P, mm")
      .member("minor_diameter_mm", &ThreadSize::minor_diameter,
              "basic minor diameter of the nut thread, by the form: D1 = D - 1.0825318 P for "
              "metric and unified ones; of a taper thread at the pipe's end; of a tapping screw "
              "its greatest core")
      .member("tap_drill_mm", &ThreadSize::tap_drill, "usual drill before tapping, mm")
      .member("usual", &ThreadSize::usual,
              "the coarse pitch, or a fine one that ISO 262 selects; of other tables all");
}

/// Every thread of the tables, smallest first; a coarse metric thread carries no pitch in its name.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<ThreadSize> threads();

/// A thread by its designation as threads() writes it, letter case aside.
/// @return nothing when the tables have no such thread.
[[nodiscard]] SPOTBLUE_EXPORT std::optional<ThreadSize> find_thread(std::string_view designation);

/// The screw thread whose screw and tapped hole have these two plain diameters.
///
/// Models show a thread as a cylinder of about its major diameter in a hole of about its minor
/// diameter or tap drill. The tolerances are our choice, P being the pitch:
/// - screw from 0.08 mm + 0.13 P under the major diameter (wider than tolerance class 6g of ISO
///   965-1 in every size) to 0.05 mm over it;
/// - hole from 0.08 mm + 0.15 P under the minor diameter to as much over the tap drill (wider than
///   class 6H);
/// - screw over hole by 0.4 P or more, so that no press fit is ever taken for a thread: the test
///   shows it for H7/x6 at every size.
/// - BSW, BSF, BA and tapping screws only where the screw is no more than 0.03 mm + 0.03 P under
/// its
///   major diameter, since others of about the same size are met more often.
/// Of several threads that would do, one whose major diameter is the screw's within 0.02 mm, then
/// the one whose minor diameter or tap drill is nearest to the hole, a tenth of the screw's
/// distance from the major diameter added, and for those four 0.02 P; where that is alike too, as
/// with two pitches that take one drill, the coarser.
///
/// Some can't be told from each other as cylinders: G is said for ISO 7-1's R, Rp and Rc too.
///
/// @param hole   of the internal cylinder.
/// @param screw  of the external cylinder.
/// @return designation such as "M10", or nothing.
/// @throws Error bad_input naming the diameter that is not a positive number.
/// Cost: one pass over some 300 rows, no allocation unless a thread is found.
[[nodiscard]] SPOTBLUE_EXPORT std::optional<std::string> thread_of(Diameter hole, Diameter screw);

/// Every thread that two such plain diameters may be, the one that thread_of gives first.
/// @throws Error as thread_of.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<std::string> possible_threads(Diameter hole,
                                                                        Diameter screw);

/// Thread that is usually engaged at least, in diameters of the screw, before it holds what a steel
/// screw holds: 1 in steel, 1.5 in iron, bronze and brass, 2 in softer ones. Common practice, no
/// source.
[[nodiscard]] SPOTBLUE_EXPORT double usual_engagement(MaterialKind tapped);

}  // namespace spotblue
