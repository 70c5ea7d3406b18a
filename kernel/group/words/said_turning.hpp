#pragma once
// What is said of bodies that turn, what carries them, and faces that take their thrust.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

// Where a load acts, and how a bearing's share is known.
inline constexpr Said kLoadAt{"load-at", "at {}"};
inline constexpr Said kLoadPast{"load-past", "{} past {}"};
inline constexpr Said kLoadAtMiddle{"load-at-middle", "at the middle of {}, no place is given"};
inline constexpr Said kNoLoadGiven{"load-none-given", "no load is given"};
inline constexpr Said kNoPlaceGiven{"load-no-place", "no place is given"};
inline constexpr Said kNoLoadGivenFor{"load-none-given-for", "no load is given for {}"};
inline constexpr Said kWholeLoadHere{"load-comes-in-here", "the whole load, which comes in here"};
inline constexpr Said kBesideLine{
    "load-beside-line",
    "it lies beside the line on which {} turns: what it carries is not known; say with at = where "
    "the load comes in"};
inline constexpr Said kPerhapsNotReached{
    "load-perhaps-not-reached",
    "the other bearings may keep the shaft off it, as their sizes come out: what it carries is not "
    "known, the others are judged as if it carried nothing"};
inline constexpr Said kLiftedOpen{
    "load-lifted-open",
    "it goes only {} round and is lifted against the load: towards where it is open it holds "
    "nothing, and from which side the load comes is not known"};
inline constexpr Said kManySidesOpen{
    "load-many-sides-open",
    "it goes only {} round, and the loads on the part may come from any side: towards where it is "
    "open it holds nothing"};
inline constexpr Said kEvenlyNotBalanced{
    "load-evenly-not-balanced",
    "even shares leave a moment of {} unbalanced: bearings that give alike would carry {} here"};
inline constexpr Said kPassedOnNotKnown{"load-passed-on-not-known",
                                        "what {} puts on it is not known"};
inline constexpr Said kLoadPlaceNotKnown{"load-place-not-known",
                                         "where the load acts is not known: name it with at ="};
inline constexpr Said kLoad{"load", "load {}"};
inline constexpr Said kNoLoadOfItsOwn{"load-none-of-its-own", "no load of its own is given"};
inline constexpr Said kWithWhatRunsOnIt{"load-with-what-runs-on-it",
                                        "with what runs on it, directions not given: all at worst"};
inline constexpr Said kSharedEvenly{"load-shared-evenly",
                                    "shared evenly by {} bearings, as declared"};
inline constexpr Said kOneCarriesAll{"load-one-carries-all",
                                     "one bearing carries all, and the moment about it"};
inline constexpr Said kByStatics{"load-by-statics", "by statics over two bearings {} apart"};
inline constexpr Said kSayShared{"load-say-shared",
                                 "{}; say shared = \"evenly\" where they may be taken to"};
inline constexpr Said kSeatsAtOnePlace{"load-seats-at-one-place",
                                       "{} seats at one place, each taken to carry all of it"};
inline constexpr Said kStopSooner{"thrust-stop-sooner",
                                  "{} and {} stop the two {} sooner as drawn"};

// Bearings.
inline constexpr Said kNoClearanceAtAll{"bearing-pressed",
                                        "at all its sizes the two are pressed: that is no bearing"};
inline constexpr Said kNoRunningClearance{"bearing-no-clearance",
                                          "it may have no running clearance at all"};
inline constexpr Said kClearanceSmall{
    "bearing-clearance-small",
    "clearance may be only {} of the diameter, common practice is {} or more: it may bind warm or "
    "dry"};
inline constexpr Said kClearanceLarge{
    "bearing-clearance-large",
    "clearance may be {} of the diameter, common practice is {} or less: it knocks and loses its "
    "oil"};
inline constexpr Said kBearingShort{
    "bearing-short", "only {} of its diameter long, usual is {} to {}: the edges carry the load"};
inline constexpr Said kBearingLong{
    "bearing-long",
    "{} of its diameter long, usual is {} to {}: relieve the middle and line up the ends"};
inline constexpr Said kWallThin{"bearing-wall-thin",
                                "the wall is thinner than a solid bush is usually made"};
inline constexpr Said kGroove{
    "bearing-groove",
    "feed hole in the unloaded side, one groove {} long stopping short of both ends, {} wide, "
    "edges rounded (common practice, no source)"};
inline constexpr Said kGrooveDeep{
    "bearing-groove-deep",
    "feed hole in the unloaded side, one groove {} long stopping short of both ends, {} wide, {} "
    "deep, edges rounded (common practice, no source)"};
inline constexpr Said kBearingFormula{
    "bearing-formula", "pressure = load/(diameter x length), speed = pi x diameter x rpm"};
inline constexpr Said kNoMaterialLimits{"bearing-no-material-limits", "no limits of the materials"};
inline constexpr Said kMaterialLimits{"bearing-material-limits", "limits: {}"};
inline constexpr Said kMaterialLimitsNote{"bearing-material-limits-note", "limits: {} ({})"};
inline constexpr Said kHarderEnd{
    "bearing-harder-end",
    "pressure at its harder end, (load + 6 moment/length)/(diameter x length)"};
inline constexpr Said kLifted{"bearing-lifted", "this one is lifted against the load"};
inline constexpr Said kGoesRound{
    "bearing-goes-round",
    "it goes {} round: pressed on the chord of that, the load towards its middle"};
inline constexpr Said kBothTurn{"bearing-both-turn", "both turn: taken as against each other"};
inline constexpr Said kGuides{"bearing-guides", "clearance per diameter: {}; length: {}; wall: {}"};
inline constexpr Said kDutyCounts{"bearing-duty-counts",
                                  "what counts for \"{}\": common practice, no source"};
inline constexpr Said kLoadOffMiddle{
    "bearing-load-off-middle",
    "its load acts {} off its middle, more than a sixth of its length: the far end lifts, and on "
    "that side it is open"};
inline constexpr Said kPressureNotKnown{"bearing-pressure-not-known", "{}: pressure is not known"};
inline constexpr Said kRollingBearing{"bearing-rolling",
                                      "a rolling bearing goes by its maker's table"};

// Thrust faces.
inline constexpr Said kBandNarrow{
    "thrust-band-narrow",
    "the faces share a band of only {}: give it {} or more, with a washer or a larger shoulder"};
inline constexpr Said kMeetNotKnown{"thrust-meet-not-known",
                                    "judged as if the two met, which is not known: {}"};
inline constexpr Said kOthersMayStop{
    "thrust-others-may-stop",
    "others may stop the two first, as the lengths of the parts come out"};
inline constexpr Said kNoMeanRadius{"thrust-no-mean-radius",
                                    "the faces lie round no centre line: no mean radius"};
inline constexpr Said kNoThrustGiven{"thrust-none-given",
                                     "no thrust is given for {}: pressure is not known"};
inline constexpr Said kLeaveThrustFace{"thrust-leave-it",
                                       "leave it as it is; oil reaches it by a groove or the bore"};
inline constexpr Said kThrustBasis{
    "thrust-basis",
    "net area of the faces as they lie; mean radius 2/3 (Ro3 - Ri3)/(Ro2 - Ri2), uniform pressure; "
    "the whole thrust on this face; {}; least band: {} or 0.05 of the diameter, common practice, "
    "no "
    "source"};

}  // namespace spotblue::said
