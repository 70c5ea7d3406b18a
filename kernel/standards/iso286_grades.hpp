#pragma once
/// @file
/// Tolerance grades of ISO 286-1:2010 table 1 and the delta of table 3 in micrometres, steps in
/// millimetres ("over ... up to and including ..."). Source keys as in tests/reference/SOURCES.md;
/// "from memory" marks what was not seen.

#include <array>

namespace spotblue::iso286_tables {

inline constexpr double kNoGrade = -1.0;
// clang-format off

// Main steps of nominal size, ISO 286-1 table 1.
inline constexpr std::array<double, 21> kItStepUpTo = {
    3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000,
     2500, 3150};

// Standard tolerance grades IT01, IT0, IT1 .. IT18, ISO 286-1 table 1 (MD-15.1 to 500 mm,
// GBT1800.3 to 1000 mm). Over 1000 up to 2500 mm from memory except IT6 and IT7, over 2500 mm from
// memory.
inline constexpr std::array<std::array<double, 20>, 21> kIt = {{
    // over 0 up to 3
    {0.3, 0.5, 0.8, 1.2, 2, 3, 4, 6, 10, 14, 25, 40, 60, 100, 140, 250, 400, 600, 1000, 1400},
    // over 3 up to 6
    {0.4, 0.6, 1, 1.5, 2.5, 4, 5, 8, 12, 18, 30, 48, 75, 120, 180, 300, 480, 750, 1200, 1800},
    // over 6 up to 10
    {0.4, 0.6, 1, 1.5, 2.5, 4, 6, 9, 15, 22, 36, 58, 90, 150, 220, 360, 580, 900, 1500, 2200},
    // over 10 up to 18
    {0.5, 0.8, 1.2, 2, 3, 5, 8, 11, 18, 27, 43, 70, 110, 180, 270, 430, 700, 1100, 1800, 2700},
    // over 18 up to 30
    {0.6, 1, 1.5, 2.5, 4, 6, 9, 13, 21, 33, 52, 84, 130, 210, 330, 520, 840, 1300, 2100, 3300},
    // over 30 up to 50
    {0.6, 1, 1.5, 2.5, 4, 7, 11, 16, 25, 39, 62, 100, 160, 250, 390, 620, 1000, 1600, 2500, 3900},
    // over 50 up to 80
    {0.8, 1.2, 2, 3, 5, 8, 13, 19, 30, 46, 74, 120, 190, 300, 460, 740, 1200, 1900, 3000, 4600},
    // over 80 up to 120
    {1, 1.5, 2.5, 4, 6, 10, 15, 22, 35, 54, 87, 140, 220, 350, 540, 870, 1400, 2200, 3500, 5400},
    // over 120 up to 180
    {1.2, 2, 3.5, 5, 8, 12, 18, 25, 40, 63, 100, 160, 250, 400, 630, 1000, 1600, 2500, 4000,
     6300},
    // over 180 up to 250
    {2, 3, 4.5, 7, 10, 14, 20, 29, 46, 72, 115, 185, 290, 460, 720, 1150, 1850, 2900, 4600, 7200},
    // over 250 up to 315
    {2.5, 4, 6, 8, 12, 16, 23, 32, 52, 81, 130, 210, 320, 520, 810, 1300, 2100, 3200, 5200, 8100},
    // over 315 up to 400
    {3, 5, 7, 9, 13, 18, 25, 36, 57, 89, 140, 230, 360, 570, 890, 1400, 2300, 3600, 5700, 8900},
    // over 400 up to 500
    {4, 6, 8, 10, 15, 20, 27, 40, 63, 97, 155, 250, 400, 630, 970, 1550, 2500, 4000, 6300, 9700},
    // over 500 up to 630
    {kNoGrade, kNoGrade, 9, 11, 16, 22, 32, 44, 70, 110, 175, 280, 440, 700, 1100, 1750, 2800,
     4400, 7000, 11000},
    // over 630 up to 800
    {kNoGrade, kNoGrade, 10, 13, 18, 25, 36, 50, 80, 125, 200, 320, 500, 800, 1250, 2000, 3200,
     5000, 8000, 12500},
    // over 800 up to 1000
    {kNoGrade, kNoGrade, 11, 15, 21, 28, 40, 56, 90, 140, 230, 360, 560, 900, 1400, 2300, 3600,
     5600, 9000, 14000},
    // over 1000 up to 1250
    {kNoGrade, kNoGrade, 13, 18, 24, 33, 47, 66, 105, 165, 260, 420, 660, 1050, 1650, 2600, 4200,
     6600, 10500, 16500},
    // over 1250 up to 1600
    {kNoGrade, kNoGrade, 15, 21, 29, 39, 55, 78, 125, 195, 310, 500, 780, 1250, 1950, 3100, 5000,
     7800, 12500, 19500},
    // over 1600 up to 2000
    {kNoGrade, kNoGrade, 18, 25, 35, 46, 65, 92, 150, 230, 370, 600, 920, 1500, 2300, 3700, 6000,
     9200, 15000, 23000},
    // over 2000 up to 2500
    {kNoGrade, kNoGrade, 22, 30, 41, 55, 78, 110, 175, 280, 440, 700, 1100, 1750, 2800, 4400,
     7000, 11000, 17500, 28000},
    // over 2500 up to 3150
    {kNoGrade, kNoGrade, 26, 36, 50, 68, 96, 135, 210, 330, 540, 860, 1350, 2100, 3300, 5400,
     8600, 13500, 21000, 33000},
}};

// Delta of grades 3 to 8, ISO 286-1 table 3, for the steps of table 1 up to 500 mm. Over 3 up to
// 180 mm from memory, each equal to IT(n) - IT(n-1) as the standard's rule has it.
inline constexpr std::array<std::array<double, 6>, 13> kDelta = {{
    {0, 0, 0, 0, 0, 0},  // over 0 up to 3
    {1, 1.5, 1, 3, 4, 6},  // over 3 up to 6
    {1, 1.5, 2, 3, 6, 7},  // over 6 up to 10
    {1, 2, 3, 3, 7, 9},  // over 10 up to 18
    {1.5, 2, 3, 4, 8, 12},  // over 18 up to 30
    {1.5, 3, 4, 5, 9, 14},  // over 30 up to 50
    {2, 3, 5, 6, 11, 16},  // over 50 up to 80
    {2, 4, 5, 7, 13, 19},  // over 80 up to 120
    {3, 4, 6, 7, 15, 23},  // over 120 up to 180
    {3, 4, 6, 9, 17, 26},  // over 180 up to 250
    {4, 4, 7, 9, 20, 29},  // over 250 up to 315
    {4, 5, 7, 11, 21, 32},  // over 315 up to 400
    {5, 5, 7, 13, 23, 34},  // over 400 up to 500
}};

// clang-format on
}  // namespace spotblue::iso286_tables
