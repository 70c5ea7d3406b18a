#pragma once
// What is said of a hole and its shaft.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kJudgedByStandard{"judged-by-standard", "ISO 14253-1"};
inline constexpr Said kUncertaintyNotKnown{"uncertainty-not-known",
                                           "the uncertainty of measurement is not known"};
inline constexpr Said kNoFitDeclared{"fit-not-declared", "no fit declared; sizes {} and {}"};
inline constexpr Said kWouldBe{"fit-would-be", "no fit declared; with {} clearance it would be {}"};
inline constexpr Said kSuitsNone{"fit-suits-none",
                                 "no fit declared; with {} clearance it suits none of the usual "
                                 "fits: say what it is for"};
inline constexpr Said kOneFit{"fit-one", "{} ({})"};
inline constexpr Said kTwoFits{"fit-two", "{} ({}) or {} ({})"};
inline constexpr Said kThreeFits{"fit-three", "{} ({}), {} ({}) or {} ({})"};

inline constexpr Said kSleeveIt{"fit-sleeve-it", "sleeve {}, or make a new mate to suit"};
inline constexpr Said kMakeBetween{"fit-make-between",
                                   "make something between them to suit; neither may be replaced"};
inline constexpr Said kOpenOrReduce{"fit-open-or-reduce", "open {} or reduce {}"};
inline constexpr Said kOpen{"fit-open", "open {}"};
inline constexpr Said kReduce{"fit-reduce", "reduce {}"};
inline constexpr Said kNeitherMayBeCut{
    "fit-neither-may-be-cut", "both parts are irreplaceable: think again before cutting either"};
inline constexpr Said kTooTight{"fit-too-tight", "too tight by up to {}: {}"};
inline constexpr Said kTooLoose{"fit-too-loose", "too loose by up to {}: {}"};
inline constexpr Said kNoSizeSuits{"fit-no-size-suits",
                                   "no size of {} suits every size its mate may have: measure or "
                                   "hold the mate closer"};
inline constexpr Said kMeasureCloser{
    "fit-measure-closer", "measure {} closer: the uncertainties together must come below {}"};
inline constexpr Said kMeasureBothCloser{
    "fit-measure-both-closer",
    "measure {} and {} closer: the uncertainties together must come below {}"};
inline constexpr Said kNotAtBasicSize{
    "not-at-basic-size",
    "model is not drawn at its nominal size: {} is {}, its nominal is {}; draw it at that, state "
    "the nominal, or say drawn = \"at the size wanted\""};
inline constexpr Said kStandsOff{
    "press-stands-off",
    "out of line by {} on one side, and the interference there is {}: it stands off on that side; "
    "true up the bore or what it hangs on"};
inline constexpr Said kFoulsOffAxis{
    "fit-fouls-off-axis",
    "fouls: out of line by {} on one side, the clearance leaves {}; true up the bore or the seat "
    "it hangs on"};
inline constexpr Said kMayFoulOffAxis{
    "fit-may-foul-off-axis",
    "may foul at the least clearance: out of line by {} on one side; true it up or allow more "
    "clearance"};
inline constexpr Said kWornHereAndThere{
    "fit-worn-here-and-there",
    "worn: the clearance is {} where it is tightest and {} where it is loosest, and only one of "
    "them is well; measure along and across, then true it up"};
inline constexpr Said kMovesNotKnown{"pressing-moves-not-known",
                                     "pressing moves its sizes, by how much is not known: {}"};

inline constexpr Said kTooMuchClearance{"apart-too-much-clearance",
                                        "the clearance of {} is more than a seat's of {}"};
inline constexpr Said kTooMuchOverlap{"apart-too-much-overlap",
                                      "they overlap by {}, more than a press fit's {}"};
inline constexpr Said kSomethingBetween{
    "apart-something-between",
    "something lies between them, lands on both sides of one stand nearer, or a narrower entry "
    "speaks of them"};
inline constexpr Said kAxesTilted{"apart-axes-tilted", "their axes stand {} to each other"};
inline constexpr Said kAxesApart{"apart-axes", "their axes are {} apart"};
inline constexpr Said kNoSharedLength{"apart-no-shared-length",
                                      "they share no length: {} apart along the axis"};
inline constexpr Said kTilted{"apart-tilted", "they stand {} to each other"};
inline constexpr Said kMiddlesApart{"apart-middles", "their middles are {} apart"};
inline constexpr Said kNotFacing{"apart-not-facing", "they do not face each other"};
inline constexpr Said kAreApart{"apart-along", "they are {} apart"};
inline constexpr Said kOverlapBy{"apart-overlap", "they overlap by {}"};
inline constexpr Said kApartNotOver{
    "apart-not-over",
    "they are {} apart, but do not lie over each other or something lies between"};

}  // namespace spotblue::said
