#pragma once
// What is said of how far a body may move along its axis.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kSaySoftness{"end-play-say-softness",
                                   "say {} of {} in its [[parts]] entry: it is soft, and how thick "
                                   "it is in its place is not known"};

inline constexpr Said kPlayFormula{
    "play-formula", "play = lengths that open it less lengths that close it, worst case of all"};
inline constexpr Said kGeneralTolerances{"play-general-tolerances", "ISO 2768-1:1989, table 1"};
inline constexpr Said kJointAsSet{"play-joint-as-set", "a joint without a stop is as it was set"};
inline constexpr Said kEndPlayWanted{"play-wanted-by", "end play wanted{}"};
inline constexpr Said kNoEndPlayDeclared{"play-not-declared", "no end play declared"};
inline constexpr Said kStopBy{"play-stop-by", "{} by {}"};
inline constexpr Said kStopOn{"play-stop-on", "{} on {}"};
inline constexpr Said kOpensBy{"play-length-opens", "+ {} {}: {}, {}"};
inline constexpr Said kClosesPlayBy{"play-length-closes", "- {} {}: {}, {}"};
inline constexpr Said kLacksAlways{"play-lacks-always",
                                   "whatever the lengths are: {} lacks up to {}"};
inline constexpr Said kLacksAtSome{"play-lacks-at-some",
                                   "at some lengths within their limits: {} lacks up to {}"};
inline constexpr Said kWarmNotKnown{"play-warm-not-known", "not known: no material for {}"};
inline constexpr Said kNoSetTogether{"play-no-set-together", "no set of parts goes together"};
inline constexpr Said kDrawnOutside{"play-drawn-outside",
                                    "{} random assemblies: {} % too tight, {} % too loose"};
inline constexpr Said kDrawnApart{"play-drawn-apart", "{} % of them do not go together at all"};
inline constexpr Said kConeIn{"play-cone-in", "{} in {}"};
inline constexpr Said kConeMayStop{"play-cone-may-stop", "the cone {} may stop it before"};
inline constexpr Said kCarriedBy{
    "play-carried-by",
    "{}, whose own play counts too; on = \"{}\" in [[wants]] asks for the play on it"};
inline constexpr Said kOverlapsAsModelled{"play-overlaps-as-modelled",
                                          "{} overlaps {} by {} as modelled: move it"};
inline constexpr Said kMeasurePlay{"play-measure", "measure the play"};
inline constexpr Said kMakeLengthMost{"play-make-length-most", "make {} {}: it takes up the most"};
inline constexpr Said kMakeLength{"play-make-length", "make {} {}"};
inline constexpr Said kNothingLeftFor{
    "play-nothing-left-for",
    "the other lengths take up all that the limits leave: nothing is left for {} beside {}; hold "
    "the others closer"};
inline constexpr Said kHoldCloser{"play-hold-closer",
                                  "hold {} closer than {}: it takes up the most"};
inline constexpr Said kMeasureLengthCloser{"play-measure-closer",
                                           "measure {} closer than {}: it takes up the most"};
inline constexpr Said kOthersTakeMore{"play-others-take-more",
                                      "the others alone take up more than the limits leave"};
inline constexpr Said kTakeOffLoop{
    "play-take-off", "take {} off a face of the loop that may be cut, or a shim less"};
inline constexpr Said kTakeUpLoop{"play-take-up",
                                  "take up {} with a washer or shim, or a longer part"};
inline constexpr Said kConeDoubt{
    "play-cone-doubt", "the cone {} may stop it before a plane face does: measure the play"};
inline constexpr Said kDoNotGoTogether{
    "play-do-not-go-together",
    "these parts do not go together as they are sized: see what is lacking, and measure it"};
inline constexpr Said kGiveLimits{"play-give-limits", "give limits for {} in [[lengths]]"};
inline constexpr Said kSayMaterialForPlay{
    "play-say-material", "say what {} is made of: the play when warm is not known"};
inline constexpr Said kMostSetsDo{"play-most-sets-do",
                                  "most sets of parts would do, the worst would not"};
inline constexpr Said kBindsWarm{
    "play-binds-warm",
    "right at the bench, but it binds when warm: leave more play, or match the materials"};
inline constexpr Said kTooManyStops{"play-too-many-stops", "not told: too many stops could end it"};
inline constexpr Said kJoinOrMeasure{
    "play-join-or-measure", "join in [[fixed]] what is held to each other, or measure the play"};
inline constexpr Said kLoopNotClosed{"play-loop-not-closed", "not closed"};
inline constexpr Said kNoChainRound{
    "play-no-chain",
    "no chain of touching faces leads round the loop: say in [[wants]] which faces touch, or in "
    "[[fixed]] what is held to what, or measure the play"};
inline constexpr Said kCanMove{
    "play-can-move",
    "{} can move {} along its axis; say in [[wants]] what end play is wanted of it"};
inline constexpr Said kCanMoveMostly{
    "play-can-move-mostly",
    "{} can move {} along its axis; most of that is open in {}; say in [[wants]] what end play is "
    "wanted of it"};
inline constexpr Said kHeldToEachOther{
    "play-held-to-each-other", "the two are held to each other: the one has no play on the other"};
inline constexpr Said kHeldToStanding{
    "play-held-to-standing",
    "it is held to the parts that stand still (the group with the greatest volume): it has no play "
    "of its own"};
inline constexpr Said kStoppedOneWay{
    "play-stopped-one-way",
    "no plane face stops it one way on {}; cones, rounded collars, springs and ball bearings are "
    "not seen: declare what holds it in [[fixed]], or judge it by hand"};
inline constexpr Said kStoppedNoWay{
    "play-stopped-no-way",
    "no plane face stops it either way on {}; cones, rounded collars, springs and ball bearings "
    "are not seen: declare what holds it in [[fixed]], or judge it by hand"};
inline constexpr Said kOnAsks{"play-on-asks",
                              "on = asks for its play on a part that floats itself"};
inline constexpr Said kNoLineTogether{
    "play-no-line-together",
    "the two lie on no centre line together: nothing is known of what stops it there"};
inline constexpr Said kNoLineWithAnother{
    "play-no-line",
    "it lies on no centre line with another part: nothing is known of what stops it"};

}  // namespace spotblue::said
