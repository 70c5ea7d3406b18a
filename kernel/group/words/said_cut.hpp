#pragma once
// What a cut leaves of a shaft.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kYieldOf{"cut-yield", "yield of {}"};
inline constexpr Said kTensileOf{"cut-tensile", "tensile strength of {}"};
inline constexpr Said kThreadIn{"cut-thread", "{} ({})"};

inline constexpr Said kCutIntoKeyseat{"cut-into-keyseat",
                                      "the cut runs into {}: it is left {} less deep"};
inline constexpr Said kCutNearKeyseat{"cut-near-keyseat",
                                      "the cut ends only {} from {}: their stresses add up"};
inline constexpr Said kStopOff{"cut-stop-off",
                               "stop a tenth of the diameter off or more (common practice)"};
inline constexpr Said kCutIntoThread{"cut-into-thread", "the cut runs into the thread {}"};
inline constexpr Said kMateRidesUp{
    "cut-mate-rides-up",
    "the mate's corner rides up on the fillet: relieve it to {} or more, or undercut the corner"};
inline constexpr Said kSharpCorner{
    "cut-sharp-corner",
    "a sharp corner has no known stress: leave a fillet, {} or more keeps within the published "
    "curves, as large as the mate allows"};
inline constexpr Said kCornerNotKnown{"cut-corner-not-known",
                                      "stress in the new corner not known: {}"};
inline constexpr Said kFromKeyseat{"cut-from-keyseat", "{} from {}"};

inline constexpr Said kStrengthLeft{"cut-strength-left",
                                    "{} % of its strength against torsion and bending is left"};
inline constexpr Said kGiveLoad{"cut-give-load",
                                "give torque_nm and bending_nm (0 for none) to have it judged"};
inline constexpr Said kSayMaterial{"cut-say-material", "say in [[parts]] what it is made of"};
inline constexpr Said kOverYield{
    "cut-over-yield", "{} in the plain section is over the {}: it bends or twists for good"};
inline constexpr Said kOverHalfOnSkin{
    "cut-over-half-on-skin",
    "{} on its skin is over half the {}: a larger fillet, or have its fatigue worked out"};
inline constexpr Said kOverHalfInCorner{
    "cut-over-half-in-corner",
    "{} in the corner is over half the {}: a larger fillet, or have its fatigue worked out"};
inline constexpr Said kOverHalfInGroove{
    "cut-over-half-in-groove", "{} in the groove is over half the {}: have its fatigue worked out"};
inline constexpr Said kStressInGroove{"cut-stress-in-groove", "{} in the groove under this load"};
inline constexpr Said kGrooveFactors{
    "cut-groove-factors",
    "a groove by first-pass factors of a ring groove (Shigley's Mechanical Engineering Design, "
    "table 7-1)"};
inline constexpr Said kCutBroken{
    "cut-broken", "{} breaks into the cut: its section and stress there are not worked out"};
inline constexpr Said kStressOnSkin{"cut-stress-on-skin", "{} on its skin under this load"};
inline constexpr Said kStressInCorner{"cut-stress-in-corner", "{} in the corner under this load"};

inline constexpr Said kRoundShaft{"cut-round-shaft", "elastic section of a round shaft"};
inline constexpr Said kCornerCurves{
    "cut-corner-curves",
    "corner by Peterson's curve fits, keyseat by first-pass factors (end-milled {} bending and {} "
    "torsion; Peterson's fit for bending at r/d 0.02 gives 2.20)"};
inline constexpr Said kHalfOfYield{"cut-half-of-yield",
                                   "half of yield in the corner: common practice, no source"};
inline constexpr Said kNoFatigue{"cut-no-fatigue", "fatigue not worked out"};

inline constexpr Said kCutCaution{
    "cut-caution",
    "Turning an old shaft: support it between centres, keep sleeves and hair clear, no files by "
    "hand near the chuck; a cut can not be undone and a shaft that breaks can hurt people: have a "
    "shaft that carries people or lifts loads judged by a licensed engineer, by your local rules."};

}  // namespace spotblue::said
