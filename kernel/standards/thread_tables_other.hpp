#pragma once
/// @file
/// Sizes, pitches and usual drills of threads that a restorer meets besides metric and unified
/// ones. Where no source is named a value is from memory; what could be had in print is checked in
/// tests/standards/threads_test.cpp.

#include <array>
#include <string_view>

namespace spotblue::thread_tables {

// Of Whitworth's form: 0.640327 P deep (BS 84, ISO 228-1).
struct Whitworth {
  std::string_view designation;
  double diameter_mm;
  double threads_per_inch;
  double tap_drill_mm;
};

// 0.6 P deep [BA-FORM].
struct Association {
  int number;
  double diameter_mm;
  double pitch_mm;
  double tap_drill_mm;
};

// Neither has a minor diameter by its form: one is rolled over a core, one is tapered.
struct Stated {
  std::string_view designation;
  double diameter_mm;
  double pitch_mm;
  double minor_mm;
  double tap_drill_mm;
};

constexpr double kInch = 25.4;

// clang-format off
// BS 84:1956, Whitworth coarse: diameters, threads and most drills [THR-CHART]; the drills of 1/16,
// 3/32, 5/32, 7/32, 11/16 and 1 3/8 in from memory.
inline constexpr std::array<Whitworth, 23> kWhitworthCoarse = {{
    {"1/16 BSW", kInch / 16, 60, 1.15}, {"3/32 BSW", 3 * kInch / 32, 48, 1.85},
    {"1/8 BSW", kInch / 8, 40, 2.55}, {"5/32 BSW", 5 * kInch / 32, 32, 3.1},
    {"3/16 BSW", 3 * kInch / 16, 24, 3.7}, {"7/32 BSW", 7 * kInch / 32, 24, 4.5},
    {"1/4 BSW", kInch / 4, 20, 5.1}, {"5/16 BSW", 5 * kInch / 16, 18, 6.5},
    {"3/8 BSW", 3 * kInch / 8, 16, 7.9375}, {"7/16 BSW", 7 * kInch / 16, 14, 9.25},
    {"1/2 BSW", kInch / 2, 12, 10.5}, {"9/16 BSW", 9 * kInch / 16, 12, 12.1},
    {"5/8 BSW", 5 * kInch / 8, 11, 13.5}, {"11/16 BSW", 11 * kInch / 16, 11, 15},
    {"3/4 BSW", 3 * kInch / 4, 10, 16.271875}, {"7/8 BSW", 7 * kInch / 8, 9, 19.25},
    {"1 BSW", kInch, 8, 22}, {"1 1/8 BSW", 9 * kInch / 8, 7, 24.75},
    {"1 1/4 BSW", 5 * kInch / 4, 7, 27.78125}, {"1 3/8 BSW", 11 * kInch / 8, 6, 30.2},
    {"1 1/2 BSW", 3 * kInch / 2, 6, 33.5}, {"1 3/4 BSW", 7 * kInch / 4, 5, 39},
    {"2 BSW", 2 * kInch, 4.5, 44.5},
}};

// BS 84:1956, Whitworth fine: threads to 7/8 in [BSF-LIST], the rest and all drills from memory.
inline constexpr std::array<Whitworth, 20> kWhitworthFine = {{
    {"3/16 BSF", 3 * kInch / 16, 32, 4}, {"7/32 BSF", 7 * kInch / 32, 28, 4.6},
    {"1/4 BSF", kInch / 4, 26, 5.3}, {"9/32 BSF", 9 * kInch / 32, 26, 6.1},
    {"5/16 BSF", 5 * kInch / 16, 22, 6.8}, {"3/8 BSF", 3 * kInch / 8, 20, 8.3},
    {"7/16 BSF", 7 * kInch / 16, 18, 9.7}, {"1/2 BSF", kInch / 2, 16, 11.1},
    {"9/16 BSF", 9 * kInch / 16, 16, 12.7}, {"5/8 BSF", 5 * kInch / 8, 14, 14},
    {"11/16 BSF", 11 * kInch / 16, 14, 15.5}, {"3/4 BSF", 3 * kInch / 4, 12, 16.75},
    {"7/8 BSF", 7 * kInch / 8, 11, 19.75}, {"1 BSF", kInch, 10, 22.75},
    {"1 1/8 BSF", 9 * kInch / 8, 9, 25.5}, {"1 1/4 BSF", 5 * kInch / 4, 9, 28.5},
    {"1 3/8 BSF", 11 * kInch / 8, 8, 31.5}, {"1 1/2 BSF", 3 * kInch / 2, 8, 34.5},
    {"1 3/4 BSF", 7 * kInch / 4, 7, 40.5}, {"2 BSF", 2 * kInch, 7, 47},
}};

// ISO 228-1:2000 table 1, parallel pipe threads: threads per inch and minor diameters [G-CHART],
// major diameters and drills from memory. ISO 7-1:1994 has the same diameters at its gauge plane:
// an R in an Rp or Rc can not be told from a G where both are drawn as cylinders.
inline constexpr std::array<Whitworth, 19> kPipe = {{
    {"G 1/16", 7.723, 28, 6.8}, {"G 1/8", 9.728, 28, 8.8}, {"G 1/4", 13.157, 19, 11.8},
    {"G 3/8", 16.662, 19, 15.25}, {"G 1/2", 20.955, 14, 19}, {"G 5/8", 22.911, 14, 21},
    {"G 3/4", 26.441, 14, 24.5}, {"G 7/8", 30.201, 14, 28.25}, {"G 1", 33.249, 11, 30.75},
    {"G 1 1/8", 37.897, 11, 35.5}, {"G 1 1/4", 41.91, 11, 39.5}, {"G 1 1/2", 47.803, 11, 45.25},
    {"G 1 3/4", 53.746, 11, 51.25}, {"G 2", 59.614, 11, 57}, {"G 2 1/4", 65.71, 11, 63.25},
    {"G 2 1/2", 75.184, 11, 72.75}, {"G 2 3/4", 81.534, 11, 79}, {"G 3", 87.884, 11, 85.5},
    {"G 4", 113.03, 11, 110.5},
}};

// BS 93:1951: diameters of 0 to 4 and 12 [BA-LETTER], the others from memory; pitches 0.9^number
// rounded to 0.01 mm [BA-FORM]; drills of 4 to 12 [BA-LIST], the others from memory.
inline constexpr std::array<Association, 13> kAssociation = {{
    {0, 6, 1, 5.1}, {1, 5.3, 0.9, 4.5}, {2, 4.7, 0.81, 4}, {3, 4.1, 0.73, 3.4},
    {4, 3.6, 0.66, 3}, {5, 3.2, 0.59, 2.65}, {6, 2.8, 0.53, 2.3}, {7, 2.5, 0.48, 2.05},
    {8, 2.2, 0.43, 1.8}, {9, 1.9, 0.39, 1.55}, {10, 1.7, 0.35, 1.4}, {11, 1.5, 0.31, 1.2},
    {12, 1.3, 0.28, 1.05},
}};

// ISO 1478:1999, tapping screws: greatest major diameter and pitch [ST-HOLES, ST-PITCH]; greatest
// core diameter from memory; a hole about the middle of those for sheets of all thicknesses
// [ST-HOLES].
inline constexpr std::array<Stated, 8> kTapping = {{
    {"ST2.2", 2.24, 0.8, 1.63, 1.8}, {"ST2.9", 2.9, 1.1, 2.18, 2.4},
    {"ST3.5", 3.53, 1.3, 2.64, 2.9}, {"ST3.9", 3.91, 1.3, 2.92, 3.2},
    {"ST4.2", 4.22, 1.4, 3.1, 3.5}, {"ST4.8", 4.8, 1.6, 3.58, 4},
    {"ST5.5", 5.46, 1.8, 4.17, 4.7}, {"ST6.3", 6.25, 1.8, 4.88, 5.5},
}};

// ASME B1.20.1-1983, taper pipe threads, as cylinders: outside diameter of the pipe, and the basic
// minor diameter at its end, pitch diameter E0 - 0.8 P; E0 to 1 1/4 in [NPT-CHART], above from
// memory; drills [NPT-DRILL], 1/16 in from memory.
inline constexpr std::array<Stated, 14> kTaperPipe = {{
    {"1/16-27 NPT", 0.3125 * kInch, kInch / 27, (0.27118 - 0.8 / 27) * kInch, 6.25},
    {"1/8-27 NPT", 0.405 * kInch, kInch / 27, (0.36351 - 0.8 / 27) * kInch, 0.339 * kInch},
    {"1/4-18 NPT", 0.54 * kInch, kInch / 18, (0.47739 - 0.8 / 18) * kInch, 0.4375 * kInch},
    {"3/8-18 NPT", 0.675 * kInch, kInch / 18, (0.61201 - 0.8 / 18) * kInch, 0.578125 * kInch},
    {"1/2-14 NPT", 0.84 * kInch, kInch / 14, (0.75843 - 0.8 / 14) * kInch, 0.71875 * kInch},
    {"3/4-14 NPT", 1.05 * kInch, kInch / 14, (0.96768 - 0.8 / 14) * kInch, 0.921875 * kInch},
    {"1-11.5 NPT", 1.315 * kInch, kInch / 11.5, (1.21363 - 0.8 / 11.5) * kInch, 1.15625 * kInch},
    {"1 1/4-11.5 NPT", 1.66 * kInch, kInch / 11.5, (1.55713 - 0.8 / 11.5) * kInch, 1.5 * kInch},
    {"1 1/2-11.5 NPT", 1.9 * kInch, kInch / 11.5, (1.79609 - 0.8 / 11.5) * kInch, 1.734375 * kInch},
    {"2-11.5 NPT", 2.375 * kInch, kInch / 11.5, (2.26902 - 0.8 / 11.5) * kInch, 2.21875 * kInch},
    {"2 1/2-8 NPT", 2.875 * kInch, kInch / 8, (2.71953 - 0.8 / 8) * kInch, 2.625 * kInch},
    {"3-8 NPT", 3.5 * kInch, kInch / 8, (3.34062 - 0.8 / 8) * kInch, 3.25 * kInch},
    {"3 1/2-8 NPT", 4 * kInch, kInch / 8, (3.8375 - 0.8 / 8) * kInch, 3.75 * kInch},
    {"4-8 NPT", 4.5 * kInch, kInch / 8, (4.33438 - 0.8 / 8) * kInch, 4.25 * kInch},
}};
// clang-format on

}  // namespace spotblue::thread_tables
