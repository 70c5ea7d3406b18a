#pragma once
// Where sizes are from, and why they are not known.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kFromLine{"from-line", " (job file, line {})"};
inline constexpr Said kFromLineOf{"from-line-of", " ({}, line {})"};
inline constexpr Said kLimits{"limits", "{}"};
inline constexpr Said kLimitsOfPair{"limits-of-pair", "hole {}, shaft {}"};
inline constexpr Said kMeasured{"measured", "measured"};
inline constexpr Said kAsModelled{"as-modelled", "as modelled"};
inline constexpr Said kToItsLimits{"to-its-limits", "to its limits"};

inline constexpr Said kIsoClass{"iso-class", "ISO 286-1:2010, {} {}"};
inline constexpr Said kB41Class{"b4-1-class", "ANSI B4.1, {} in {}"};
inline constexpr Said kLimitsOfClearance{"limits-of-clearance", "limits of the clearance{}"};
inline constexpr Said kLimitsOfSize{"limits-of-size", "limits of the size{}"};
inline constexpr Said kAllowance{"allowance-per-diameter",
                                 "allowance {} x {} +- {}, shop practice{}"};

inline constexpr Said kNoMaterial{"no-material", "no material is given for {}"};
inline constexpr Said kMaterialNotWhole{"material-not-whole",
                                        "{} of {} needs modulus, Poisson's ratio and expansion"};
inline constexpr Said kMaterialNotKnown{"material-not-known", "{} of {} is not known"};
inline constexpr Said kSqueezeMissing{"soft-squeeze-missing", "squeeze"};
inline constexpr Said kThicknessAndSqueezeMissing{"soft-thickness-and-squeeze-missing",
                                                  "thickness and squeeze"};
inline constexpr Said kMaterialSoft{"material-soft",
                                    "{} of {} is soft: nothing elastic is worked out for it"};
inline constexpr Said kCutThrough{"ring-cut-through",
                                  "the wall of {} is cut through: it is no ring"};
inline constexpr Said kNotAllRound{"ring-not-all-round",
                                   "{} is pressed {} round only: no whole ring to press"};
inline constexpr Said kCutAtBore{"ring-cut-at-bore",
                                 "{} is cut into at its bore: it goes out of round when it is "
                                 "pressed, by more than rings tell"};
inline constexpr Said kCutAtOutside{"ring-cut-at-outside",
                                    "{} is cut into at its outside: it goes out of round when it "
                                    "is pressed, by more than rings tell"};
inline constexpr Said kUnevenWall{"ring-uneven-wall",
                                  "{} has a wall of very different thickness round it: it goes out "
                                  "of round when it is pressed, by more than rings tell"};
inline constexpr Said kTooManyRings{"rings-too-many", "more than {} rings one in another"};

}  // namespace spotblue::said
