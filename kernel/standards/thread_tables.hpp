#pragma once
/// @file
/// Sizes, pitches and tap drills of screw threads, from memory; each printed value that could be
/// had is checked in tests/standards/threads_test.cpp.

#include <array>
#include <string_view>

namespace spotblue::thread_tables {

// A rare pitch is neither the coarse one nor a fine one that ISO 262 selects.
enum class Series { coarse, fine, rare };

struct Metric {
  double diameter_mm;
  double pitch_mm;
  double tap_drill_mm;
  Series series;
};

struct Unified {
  std::string_view designation;
  double diameter_in;
  double threads_per_inch;
  double tap_drill_in;
};

// clang-format off
// ISO 261:1998 table 2 and ISO 262:1998 table 1 (diameter, pitch, and which of the fine ones are
// selected: from memory), ISO 2306:1972 (tap drill); M1.7,
// M2.3 and M2.6 are older than ISO and still met (pitches [M-OLD], drills from memory).
inline constexpr std::array<Metric, 155> kMetric = {{
    {1, 0.25, 0.75, Series::coarse}, {1, 0.2, 0.8, Series::rare},
    {1.1, 0.25, 0.85, Series::coarse}, {1.1, 0.2, 0.9, Series::rare},
    {1.2, 0.25, 0.95, Series::coarse}, {1.2, 0.2, 1, Series::rare},
    {1.4, 0.3, 1.1, Series::coarse}, {1.4, 0.2, 1.2, Series::rare},
    {1.6, 0.35, 1.25, Series::coarse}, {1.6, 0.2, 1.4, Series::rare},
    {1.7, 0.35, 1.35, Series::coarse},
    {1.8, 0.35, 1.45, Series::coarse}, {1.8, 0.2, 1.6, Series::rare},
    {2, 0.4, 1.6, Series::coarse}, {2, 0.25, 1.75, Series::rare},
    {2.2, 0.45, 1.75, Series::coarse}, {2.2, 0.25, 1.95, Series::rare},
    {2.3, 0.4, 1.9, Series::coarse},
    {2.5, 0.45, 2.05, Series::coarse}, {2.5, 0.35, 2.15, Series::rare},
    {2.6, 0.45, 2.15, Series::coarse},
    {3, 0.5, 2.5, Series::coarse}, {3, 0.35, 2.65, Series::rare}, {3.5, 0.6, 2.9, Series::coarse},
    {3.5, 0.35, 3.15, Series::rare}, {4, 0.7, 3.3, Series::coarse}, {4, 0.5, 3.5, Series::rare},
    {4.5, 0.75, 3.7, Series::coarse}, {4.5, 0.5, 4, Series::rare}, {5, 0.8, 4.2, Series::coarse},
    {5, 0.5, 4.5, Series::rare}, {6, 1, 5, Series::coarse}, {6, 0.75, 5.2, Series::rare},
    {7, 1, 6, Series::coarse}, {7, 0.75, 6.2, Series::rare}, {8, 1.25, 6.8, Series::coarse},
    {8, 1, 7, Series::fine}, {8, 0.75, 7.2, Series::rare}, {9, 1.25, 7.8, Series::coarse},
    {9, 1, 8, Series::rare}, {9, 0.75, 8.2, Series::rare}, {10, 1.5, 8.5, Series::coarse},
    {10, 1.25, 8.8, Series::fine}, {10, 1, 9, Series::fine}, {10, 0.75, 9.2, Series::rare},
    {11, 1.5, 9.5, Series::coarse}, {11, 1, 10, Series::rare}, {11, 0.75, 10.2, Series::rare},
    {12, 1.75, 10.2, Series::coarse}, {12, 1.5, 10.5, Series::fine},
    {12, 1.25, 10.8, Series::fine}, {12, 1, 11, Series::rare}, {14, 2, 12, Series::coarse},
    {14, 1.5, 12.5, Series::fine}, {14, 1.25, 12.8, Series::rare}, {14, 1, 13, Series::rare},
    {15, 1.5, 13.5, Series::rare}, {15, 1, 14, Series::rare}, {16, 2, 14, Series::coarse},
    {16, 1.5, 14.5, Series::fine}, {16, 1, 15, Series::rare}, {17, 1.5, 15.5, Series::rare},
    {17, 1, 16, Series::rare}, {18, 2.5, 15.5, Series::coarse}, {18, 2, 16, Series::fine},
    {18, 1.5, 16.5, Series::fine}, {18, 1, 17, Series::rare}, {20, 2.5, 17.5, Series::coarse},
    {20, 2, 18, Series::fine}, {20, 1.5, 18.5, Series::fine}, {20, 1, 19, Series::rare},
    {22, 2.5, 19.5, Series::coarse}, {22, 2, 20, Series::fine}, {22, 1.5, 20.5, Series::fine},
    {22, 1, 21, Series::rare}, {24, 3, 21, Series::coarse}, {24, 2, 22, Series::fine},
    {24, 1.5, 22.5, Series::rare}, {24, 1, 23, Series::rare}, {25, 2, 23, Series::rare},
    {25, 1.5, 23.5, Series::rare}, {25, 1, 24, Series::rare}, {27, 3, 24, Series::coarse},
    {27, 2, 25, Series::fine}, {27, 1.5, 25.5, Series::rare}, {27, 1, 26, Series::rare},
    {28, 2, 26, Series::rare}, {28, 1.5, 26.5, Series::rare}, {28, 1, 27, Series::rare},
    {30, 3.5, 26.5, Series::coarse}, {30, 3, 27, Series::rare}, {30, 2, 28, Series::fine},
    {30, 1.5, 28.5, Series::rare}, {30, 1, 29, Series::rare}, {32, 2, 30, Series::rare},
    {32, 1.5, 30.5, Series::rare}, {33, 3.5, 29.5, Series::coarse}, {33, 3, 30, Series::rare},
    {33, 2, 31, Series::fine}, {33, 1.5, 31.5, Series::rare}, {35, 1.5, 33.5, Series::rare},
    {36, 4, 32, Series::coarse}, {36, 3, 33, Series::fine}, {36, 2, 34, Series::rare},
    {36, 1.5, 34.5, Series::rare}, {38, 1.5, 36.5, Series::rare}, {39, 4, 35, Series::coarse},
    {39, 3, 36, Series::fine}, {39, 2, 37, Series::rare}, {39, 1.5, 37.5, Series::rare},
    {40, 3, 37, Series::rare}, {40, 2, 38, Series::rare}, {40, 1.5, 38.5, Series::rare},
    {42, 4.5, 37.5, Series::coarse}, {42, 4, 38, Series::rare}, {42, 3, 39, Series::fine},
    {42, 2, 40, Series::rare}, {42, 1.5, 40.5, Series::rare}, {45, 4.5, 40.5, Series::coarse},
    {45, 4, 41, Series::rare}, {45, 3, 42, Series::fine}, {45, 2, 43, Series::rare},
    {45, 1.5, 43.5, Series::rare}, {48, 5, 43, Series::coarse}, {48, 4, 44, Series::rare},
    {48, 3, 45, Series::fine}, {48, 2, 46, Series::rare}, {48, 1.5, 46.5, Series::rare},
    {50, 3, 47, Series::rare}, {50, 2, 48, Series::rare}, {50, 1.5, 48.5, Series::rare},
    {52, 5, 47, Series::coarse}, {52, 4, 48, Series::fine}, {52, 3, 49, Series::rare},
    {52, 2, 50, Series::rare}, {52, 1.5, 50.5, Series::rare}, {55, 4, 51, Series::rare},
    {55, 3, 52, Series::rare}, {55, 2, 53, Series::rare}, {55, 1.5, 53.5, Series::rare},
    {56, 5.5, 50.5, Series::coarse}, {56, 4, 52, Series::fine}, {56, 3, 53, Series::rare},
    {56, 2, 54, Series::rare}, {56, 1.5, 54.5, Series::rare}, {60, 5.5, 54.5, Series::coarse},
    {60, 4, 56, Series::fine}, {60, 3, 57, Series::rare}, {60, 2, 58, Series::rare},
    {60, 1.5, 58.5, Series::rare}, {64, 6, 58, Series::coarse}, {64, 4, 60, Series::fine},
    {64, 3, 61, Series::rare}, {64, 2, 62, Series::rare}, {64, 1.5, 62.5, Series::rare},
}};

// ASME B1.1-2003 tables 1 (UNC) and 2 (UNF); numbered sizes are 0.060 in + 0.013 in a number.
// Tap drills for about 75 % of full thread: common practice.
inline constexpr std::array<Unified, 49> kUnified = {{
    {"No. 0-80 UNF", 0.06, 80, 0.046875}, {"No. 1-64 UNC", 0.073, 64, 0.0595},
    {"No. 1-72 UNF", 0.073, 72, 0.0595}, {"No. 2-56 UNC", 0.086, 56, 0.07},
    {"No. 2-64 UNF", 0.086, 64, 0.07}, {"No. 3-48 UNC", 0.099, 48, 0.0785},
    {"No. 3-56 UNF", 0.099, 56, 0.082}, {"No. 4-40 UNC", 0.112, 40, 0.089},
    {"No. 4-48 UNF", 0.112, 48, 0.0935}, {"No. 5-40 UNC", 0.125, 40, 0.1015},
    {"No. 5-44 UNF", 0.125, 44, 0.104}, {"No. 6-32 UNC", 0.138, 32, 0.1065},
    {"No. 6-40 UNF", 0.138, 40, 0.113}, {"No. 8-32 UNC", 0.164, 32, 0.136},
    {"No. 8-36 UNF", 0.164, 36, 0.136}, {"No. 10-24 UNC", 0.19, 24, 0.1495},
    {"No. 10-32 UNF", 0.19, 32, 0.159}, {"No. 12-24 UNC", 0.216, 24, 0.177},
    {"No. 12-28 UNF", 0.216, 28, 0.182}, {"1/4-20 UNC", 0.25, 20, 0.201},
    {"1/4-28 UNF", 0.25, 28, 0.213}, {"5/16-18 UNC", 0.3125, 18, 0.257},
    {"5/16-24 UNF", 0.3125, 24, 0.272}, {"3/8-16 UNC", 0.375, 16, 0.3125},
    {"3/8-24 UNF", 0.375, 24, 0.332}, {"7/16-14 UNC", 0.4375, 14, 0.368},
    {"7/16-20 UNF", 0.4375, 20, 0.390625}, {"1/2-13 UNC", 0.5, 13, 0.421875},
    {"1/2-20 UNF", 0.5, 20, 0.453125}, {"9/16-12 UNC", 0.5625, 12, 0.484375},
    {"9/16-18 UNF", 0.5625, 18, 0.515625}, {"5/8-11 UNC", 0.625, 11, 0.53125},
    {"5/8-18 UNF", 0.625, 18, 0.578125}, {"3/4-10 UNC", 0.75, 10, 0.65625},
    {"3/4-16 UNF", 0.75, 16, 0.6875}, {"7/8-9 UNC", 0.875, 9, 0.765625},
    {"7/8-14 UNF", 0.875, 14, 0.8125}, {"1-8 UNC", 1, 8, 0.875}, {"1-12 UNF", 1, 12, 0.921875},
    {"1 1/8-7 UNC", 1.125, 7, 0.984375}, {"1 1/8-12 UNF", 1.125, 12, 1.046875},
    {"1 1/4-7 UNC", 1.25, 7, 1.109375}, {"1 1/4-12 UNF", 1.25, 12, 1.171875},
    {"1 3/8-6 UNC", 1.375, 6, 1.21875}, {"1 3/8-12 UNF", 1.375, 12, 1.296875},
    {"1 1/2-6 UNC", 1.5, 6, 1.34375}, {"1 1/2-12 UNF", 1.5, 12, 1.421875},
    {"1 3/4-5 UNC", 1.75, 5, 1.5625}, {"2-4.5 UNC", 2, 4.5, 1.78125},
}};
// clang-format on

}  // namespace spotblue::thread_tables
