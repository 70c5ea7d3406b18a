#pragma once
// What is said of what was not looked at, is not whole or is not sound.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kWhatIsCompared{
    "unseen-what-is-compared",
    "closed solids are compared, and fits of planes, cylinders and cones measured"};
inline constexpr Said kPartialIsNeither{"unseen-partial",
                                        "what a partial model lacks is neither well nor bad"};
inline constexpr Said kCloseOthers{"unseen-close-others", "close other programs and try again"};
inline constexpr Said kGiveMore{"unseen-give-more",
                                "give it more time or memory: --seconds, --memory"};
inline constexpr Said kComeNear{
    "unseen-come-near", "{} and {} come within {} of each other where no seat says how they bear"};
inline constexpr Said kTouchNotMeasured{"unseen-touch-not-measured",
                                        "whether they touch is not measured: {}"};
inline constexpr Said kSuchPairs{"unseen-such-pairs", "{} such pairs"};
inline constexpr Said kMeasureOnParts{
    "unseen-measure-on-parts",
    "measure it on the parts, or draw it with planes, cylinders and cones that seat"};
inline constexpr Said kNotLookedAt{"unseen-not-looked-at", "not looked at: {}"};
inline constexpr Said kSeveralPartsNot{
    "unseen-several-parts",
    "what several parts do together, and what matched nothing: not all was looked at"};
inline constexpr Said kNotAllJudged{"unseen-not-all-judged",
                                    "not all that was found is judged, {} findings were made: {}"};
inline constexpr Said kNotInWhatArrived{"unseen-not-arrived",
                                        "{}{}, {}: no \"{}\" is in what arrived of the model; {}"};
inline constexpr Said kLineOf{"unseen-line", "line {}, "};
inline constexpr Said kExportWhole{
    "unseen-export-whole",
    "export the model whole and judge again; if the name is mistyped, correct it"};
inline constexpr Said kExportAsSolid{"unseen-export-as-solid",
                                     "export it as a solid, or look at what it touches by eye"};
inline constexpr Said kPutRightAndExport{"unseen-put-right",
                                         "put it right where it was drawn and export it again"};
inline constexpr Said kNothingToJudge{
    "unseen-nothing-to-judge",
    "nothing to judge: no two parts seat, screw or foul, and nothing is wanted"};
inline constexpr Said kSeeWhatItHolds{"unseen-see-file",
                                      "see what the file holds: spotblue look FILE"};
inline constexpr Said kPutRightFirst{"unsound-put-right",
                                     "put {} right where it was drawn first, and judge again"};
inline constexpr Said kUnsoundPart{"unsound-part", "{}: {}"};
inline constexpr Said kNotArrived{"partial-not-arrived", "{}: {}"};
inline constexpr Said kAndMore{"and-more", "and {} more"};
inline constexpr Said kMayStandHere{
    "partial-may-stand-here",
    "what did not arrive may stand here too and change this: export the model whole, and judge "
    "again"};

}  // namespace spotblue::said
