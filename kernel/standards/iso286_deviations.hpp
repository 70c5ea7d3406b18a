#pragma once
/// @file
/// The fundamental deviations of ISO 286-1:2010, tables 2 to 5, in micrometres, steps in
/// millimetres ("over ... up to and including ..."). Read as text extracts of ISO-identical
/// national standards and handbooks; the source keys are those of tests/reference/SOURCES.md. "From
/// memory" marks what was not seen.
///
/// Only the shaft deviations are tabulated: tables 2 and 3 of the standard (holes) are tables 4 and
/// 5 (shafts) with the sign turned and the allowance "delta" of grades 3 to 8, but for J, K and N
/// above grade 8, and M6 over 250 up to 315 mm, which are kept here as they stand. Every hole row
/// of tests/reference/iso286_hole_deviations.csv is checked against what this gives.

#include <array>
#include <limits>
#include <string_view>

namespace spotblue::iso286_tables {

inline constexpr int kNone = std::numeric_limits<int>::min();
// clang-format off

// Steps of nominal size of the fundamental deviations, ISO 286-1 tables 2 to 5.
inline constexpr std::array<double, 41> kStepUpTo = {
    3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315,
     355, 400, 450, 500, 560, 630, 710, 800, 900, 1000, 1120, 1250, 1400, 1600, 1800, 2000, 2240,
     2500, 2800, 3150};

struct ShaftDeviation {
  std::string_view letters;
  std::array<int, 25> um;  // kNone where the standard leaves the place empty
};

// ISO 286-1 tables 4 and 5, up to 500 mm. a to h: upper deviation es, every grade; k: lower
// deviation ei of grades 4 to 7, else 0; m to zc: lower deviation ei, every grade. Sources:
// MD-15.2, MH31-6a, MD-15.3 mirrored. u over 200 up to 225 mm and x over 355 up to 400 mm follow the
// generating formula against a misprint in MD-15.3.
inline constexpr std::array<ShaftDeviation, 26> kShaft = {{
    {"a", {-270, -270, -280, -290, -290, -300, -300, -310, -320, -340, -360, -380, -410, -460,
     -520, -580, -660, -740, -820, -920, -1050, -1200, -1350, -1500, -1650}},
    {"b", {-140, -140, -150, -150, -150, -160, -160, -170, -180, -190, -200, -220, -240, -260,
     -280, -310, -340, -380, -420, -480, -540, -600, -680, -760, -840}},
    {"c", {-60, -70, -80, -95, -95, -110, -110, -120, -130, -140, -150, -170, -180, -200, -210,
     -230, -240, -260, -280, -300, -330, -360, -400, -440, -480}},
    {"cd", {-34, -46, -56, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone,
     kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone}},
    {"d", {-20, -30, -40, -50, -50, -65, -65, -80, -80, -100, -100, -120, -120, -145, -145, -145,
     -170, -170, -170, -190, -190, -210, -210, -230, -230}},
    {"e", {-14, -20, -25, -32, -32, -40, -40, -50, -50, -60, -60, -72, -72, -85, -85, -85, -100,
     -100, -100, -110, -110, -125, -125, -135, -135}},
    {"ef", {-10, -14, -18, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone,
     kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone}},
    {"f", {-6, -10, -13, -16, -16, -20, -20, -25, -25, -30, -30, -36, -36, -43, -43, -43, -50,
     -50, -50, -56, -56, -62, -62, -68, -68}},
    {"fg", {-4, -6, -8, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone,
     kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone}},
    {"g", {-2, -4, -5, -6, -6, -7, -7, -9, -9, -10, -10, -12, -12, -14, -14, -14, -15, -15, -15,
     -17, -17, -18, -18, -20, -20}},
    {"h", {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
    {"k", {0, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 3, 3, 3, 3, 3, 4, 4, 4, 4, 4, 4, 4, 5, 5}},
    {"m", {2, 4, 6, 7, 7, 8, 8, 9, 9, 11, 11, 13, 13, 15, 15, 15, 17, 17, 17, 20, 20, 21, 21, 23,
     23}},
    {"n", {4, 8, 10, 12, 12, 15, 15, 17, 17, 20, 20, 23, 23, 27, 27, 27, 31, 31, 31, 34, 34, 37,
     37, 40, 40}},
    {"p", {6, 12, 15, 18, 18, 22, 22, 26, 26, 32, 32, 37, 37, 43, 43, 43, 50, 50, 50, 56, 56, 62,
     62, 68, 68}},
    {"r", {10, 15, 19, 23, 23, 28, 28, 34, 34, 41, 43, 51, 54, 63, 65, 68, 77, 80, 84, 94, 98,
     108, 114, 126, 132}},
    {"s", {14, 19, 23, 28, 28, 35, 35, 43, 43, 53, 59, 71, 79, 92, 100, 108, 122, 130, 140, 158,
     170, 190, 208, 232, 252}},
    {"t", {kNone, kNone, kNone, kNone, kNone, kNone, 41, 48, 54, 66, 75, 91, 104, 122, 134, 146,
     166, 180, 196, 218, 240, 268, 294, 330, 360}},
    {"u", {18, 23, 28, 33, 33, 41, 48, 60, 70, 87, 102, 124, 144, 170, 190, 210, 236, 258, 284,
     315, 350, 390, 435, 490, 540}},
    {"v", {kNone, kNone, kNone, kNone, 39, 47, 55, 68, 81, 102, 120, 146, 172, 202, 228, 252, 284,
     310, 340, 385, 425, 475, 530, 595, 660}},
    {"x", {20, 28, 34, 40, 45, 54, 64, 80, 97, 122, 146, 178, 210, 248, 280, 310, 350, 385, 425,
     475, 525, 590, 660, 740, 820}},
    {"y", {kNone, kNone, kNone, kNone, kNone, 63, 75, 94, 114, 144, 174, 214, 254, 300, 340, 380,
     425, 470, 520, 580, 650, 730, 820, 920, 1000}},
    {"z", {26, 35, 42, 50, 60, 73, 88, 112, 136, 172, 210, 258, 310, 365, 415, 465, 520, 575, 640,
     710, 790, 900, 1000, 1100, 1250}},
    {"za", {32, 42, 52, 64, 77, 98, 118, 148, 180, 226, 274, 335, 400, 470, 535, 600, 670, 740,
     820, 920, 1000, 1150, 1300, 1450, 1600}},
    {"zb", {40, 50, 67, 90, 108, 136, 160, 200, 242, 300, 360, 445, 525, 620, 700, 780, 880, 960,
     1050, 1200, 1300, 1500, 1650, 1850, 2100}},
    {"zc", {60, 80, 97, 130, 150, 188, 218, 274, 325, 405, 480, 585, 690, 800, 900, 1000, 1150,
     1250, 1350, 1550, 1700, 1900, 2100, 2400, 2600}},
}};

struct LargeShaftDeviation {
  std::string_view letters;
  std::array<int, 16> um;
};

// The same for the steps above 500 mm, d to u, grades 6 to 16 (REF500). h is in force for every
// grade there (from memory).
inline constexpr std::array<LargeShaftDeviation, 13> kShaftAbove500 = {{
    {"d", {-260, -260, -290, -290, -320, -320, -350, -350, -390, -390, -430, -430, -480, -480,
     -520, -520}},
    {"e", {-145, -145, -160, -160, -170, -170, -195, -195, -220, -220, -240, -240, -260, -260,
     -290, -290}},
    {"f", {-76, -76, -80, -80, -86, -86, -98, -98, -110, -110, -120, -120, -130, -130, -145,
     -145}},
    {"g", {-22, -22, -24, -24, -26, -26, -28, -28, -30, -30, -32, -32, -34, -34, -38, -38}},
    {"h", {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
    {"k", {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
    {"m", {26, 26, 30, 30, 34, 34, 40, 40, 48, 48, 58, 58, 68, 68, 76, 76}},
    {"n", {44, 44, 50, 50, 56, 56, 66, 66, 78, 78, 92, 92, 110, 110, 135, 135}},
    {"p", {78, 78, 88, 88, 100, 100, 120, 120, 140, 140, 170, 170, 195, 195, 240, 240}},
    {"r", {150, 155, 175, 185, 210, 220, 250, 260, 300, 330, 370, 400, 440, 460, 550, 580}},
    {"s", {280, 310, 340, 380, 430, 470, 520, 580, 640, 720, 820, 920, 1000, 1100, 1250, 1400}},
    {"t", {400, 450, 500, 560, 620, 680, 780, 840, 960, 1050, 1200, 1350, 1500, 1650, 1900,
     2100}},
    {"u", {600, 660, 740, 840, 940, 1050, 1150, 1300, 1450, 1600, 1850, 2000, 2300, 2500, 2900,
     3200}},
}};

// Letter j: lower deviation ei, ISO 286-1 table 5, up to 500 mm; j8 up to 3 mm only. j7 over 10 up
// to 180 mm from memory, j5 and j6 over 14 up to 180 mm from bearing tables (BRG), else MD-15.2.
inline constexpr std::array<int, 25> kShaftJ5J6 = {
    -2, -2, -2, -3, -3, -4, -4, -5, -5, -7, -7, -9, -9, -11, -11, -11, -13, -13, -13, -16, -16,
     -18, -18, -20, -20};
inline constexpr std::array<int, 25> kShaftJ7 = {
    -4, -4, -5, -6, -6, -8, -8, -10, -10, -12, -12, -15, -15, -18, -18, -18, -21, -21, -21, -26,
     -26, -28, -28, -32, -32};
inline constexpr int kShaftJ8UpTo3 = -6;

// Letter J: upper deviation ES, ISO 286-1 table 3 (MD-15.3), up to 500 mm.
inline constexpr std::array<std::array<int, 25>, 3> kHoleJ6J7J8 = {{
    {2, 5, 5, 6, 6, 8, 8, 10, 10, 13, 13, 16, 16, 18, 18, 18, 22, 22, 22, 25, 25, 29, 29, 33, 33},
    {4, 6, 8, 10, 10, 12, 12, 14, 14, 18, 18, 22, 22, 26, 26, 26, 30, 30, 30, 36, 36, 39, 39, 43,
     43},
    {6, 10, 12, 15, 15, 20, 20, 24, 24, 28, 28, 34, 34, 41, 41, 41, 47, 47, 47, 55, 55, 60, 60,
     66, 66},
}};

// M6 over 250 up to 315 mm: ES = -9, not -11; note to ISO 286-1 table 3 (MD-15.3).
inline constexpr int kHoleM6Over250UpTo315 = -9;

// clang-format on
}  // namespace spotblue::iso286_tables
