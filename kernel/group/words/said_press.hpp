#pragma once
// What a press fit bears, how it is joined, and why that may not be known.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kPressedThereToo{
    "press-third-part", "{} is pressed there too, and the stresses of all together are not known"};
inline constexpr Said kWallsNotFound{"press-walls-not-found",
                                     "the walls round the joint could not be found"};
inline constexpr Said kGoesRoundOnly{"press-round-only",
                                     "the seat goes round {} only: no whole ring to press"};
inline constexpr Said kWallNotKnown{"press-wall-not-known", "the wall of {} is not known"};

inline constexpr Said kHubBore{"press-at-hub-bore", "the hub's bore"};
inline constexpr Said kHubOutside{"press-at-hub-outside", "the hub's outside"};
inline constexpr Said kInnerOutside{"press-at-inner-outside", "the inner part's outside"};
inline constexpr Said kInnerBore{"press-at-inner-bore", "the inner part's bore"};
inline constexpr Said kNoStrength{"press-no-strength", "no strength is known for {}"};
inline constexpr Said kGivesWay{"press-gives-way",
                                "{} gives way at {}: {} percent of its strength is used"};
inline constexpr Said kMayGiveWay{
    "press-may-give-way",
    "{} may give way at {}: with the metal beyond the joint's ends, which makes the parts stiffer, "
    "up to {} percent of its strength is used"};
inline constexpr Said kEnoughInterference{"press-enough-interference",
                                          "keep the interference to {} or less"};
inline constexpr Said kWillNotHold{
    "press-will-not-hold",
    "it will come out without hold: roughness alone takes up to {} of the interference"};
inline constexpr Said kMayNotHold{
    "press-may-not-hold",
    "it may come out without hold: roughness alone takes up to {} of the interference"};
inline constexpr Said kCutsNotAllowedFor{
    "press-cuts-not-allowed-for",
    "what is cut through or into the wall takes of its hold and strength by how much is not worked "
    "out: judge it by hand"};
inline constexpr Said kHowToPress{
    "press-how", "press with up to {}, square and oiled, or warm {} to {} and slip {} in"};
inline constexpr Said kPressOnly{"press-only", "press with up to {}, square and oiled"};
inline constexpr Said kYieldsBeforeItSlips{
    "press-yields-before-slips",
    "keep the hub below {}: an inner part warmed by it yields there, before the two slip together"};
inline constexpr Said kLosesTemper{
    "press-loses-temper", "above {} hardened steel loses its temper: chill the inner part"};
inline constexpr Said kDryIceWillDo{"press-dry-ice", "dry ice is cold enough"};
inline constexpr Said kLiquidNitrogenWillDo{"press-liquid-nitrogen",
                                            "liquid nitrogen is cold enough, dry ice is not"};
inline constexpr Said kNothingColdEnough{"press-nothing-cold-enough",
                                         "no usual medium is cold enough"};

inline constexpr Said kLetsGoWarm{
    "press-warm-lets-go",
    "it lets go when warm: of the interference {} is left there at most, and roughness takes that"};
inline constexpr Said kMayLetGoWarm{"press-warm-may-let-go",
                                    "it may let go when warm: the hub outgrows the inner part"};
inline constexpr Said kComesBackLoose{
    "press-warm-comes-back-loose",
    "warmed to {} {} yields so far that it comes back loose in the hub and tight on its shaft"};
inline constexpr Said kLooseFrom{"press-warm-loose-from", "that begins at {}"};
inline constexpr Said kYieldsWarm{
    "press-warm-yields",
    "{} begins to yield at {} and runs at {}: it loses some of its interference for good"};

inline constexpr Said kThickRings{"press-basis-rings",
                                  "thick rings, plane stress (Lame), by stretches of wall"};
inline constexpr Said kRoughnessLost{
    "press-basis-roughness",
    "roughness Rz {} and {}, of which {} (DIN 7190-1:2017) is lost at the tightest and {} (DIN "
    "7190 before) at the loosest"};
inline constexpr Said kFrictionUsed{"press-basis-friction", "friction {} to {}"};
inline constexpr Said kSlipByJob{"press-basis-slip-by-job", "slip clearance from the job"};
inline constexpr Said kSlipByPractice{
    "press-basis-slip-by-practice",
    "slip clearance {} of the diameter (common practice, no source)"};
inline constexpr Said kYieldRules{"press-basis-yield",
                                  "yield by von Mises, castings by greatest tension"};
inline constexpr Said kElasticOnly{"press-basis-elastic", "elastic, no edges, no keyways"};

}  // namespace spotblue::said
