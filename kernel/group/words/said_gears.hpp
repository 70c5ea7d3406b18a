#pragma once
// What is said of two gears that run together.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kThicknessGiven{"mesh-thickness-given", "given"};
inline constexpr Said kThicknessFromSpan{"mesh-thickness-from-span", "from the span"};
inline constexpr Said kThicknessFromPins{"mesh-thickness-from-pins", "from the size over pins"};
inline constexpr Said kThicknessAssumed{"mesh-thickness-assumed", "standard, assumed"};
inline constexpr Said kAxesNotParallel{"mesh-axes-not-parallel",
                                       "the two axes are {} out of parallel: true them up"};
inline constexpr Said kFacesNotKnown{
    "mesh-faces-not-known",
    "no outside near the tip diameter in the model: face overlap not known; check module, teeth "
    "and tip_diameter"};
inline constexpr Said kFacesDoNotMeet{"mesh-faces-do-not-meet",
                                      "the faces of the two gears do not overlap: move one along"};
inline constexpr Said kFacesMeetTooLittle{
    "mesh-faces-meet-too-little", "the faces overlap by only {} of {}, wanted {}: line them up"};
inline constexpr Said kEndPlayTakesFaces{
    "mesh-end-play-takes-faces",
    "end play takes the faces to {} of {}, wanted {}: take up end play, or line them up in the "
    "middle of it"};
inline constexpr Said kFacesOverlapOnly{"mesh-faces-overlap-only",
                                        "the faces overlap by only {} of {}: line them up"};
inline constexpr Said kFacesAsPlaced{"mesh-faces-as-placed",
                                     "not known: the faces are judged as they are placed"};
inline constexpr Said kTipsBottom{
    "mesh-tips-bottom",
    "tips bottom in the roots by {}: move the centres apart, or turn the tips down"};
inline constexpr Said kLetsGo{
    "mesh-lets-go",
    "contact ratio {}: one pair lets go before the next takes hold; move the centres together"};
inline constexpr Said kUndercut{
    "mesh-undercut",
    "a tip reaches past the mate's base circle: the roots must be undercut for it; roll the pair "
    "by hand with blue on the teeth"};
inline constexpr Said kNoisy{
    "mesh-noisy", "contact ratio only {}: expect it to be noisy (1.2 or more: common practice)"};
inline constexpr Said kMeasureSpan{
    "mesh-measure-span",
    "tooth thickness not known, standard assumed: measure over {} teeth of {} ({} without "
    "backlash), or over pins"};
inline constexpr Said kMeasureSpans{
    "mesh-measure-spans",
    "tooth thickness not known, standard assumed: measure over {} teeth of {} ({} without "
    "backlash) and over {} teeth of {} ({} without backlash), or over pins"};
inline constexpr Said kTeethBind{
    "mesh-teeth-bind",
    "the teeth bind: no backlash is left at a centre distance of {}; move the centres apart or "
    "thin the teeth"};
inline constexpr Said kTeethBindAskew{"mesh-teeth-bind-askew", "the teeth bind: true up the axes"};
inline constexpr Said kBacklashAsWanted{"mesh-backlash-as-wanted", "backlash {}: as wanted"};
inline constexpr Said kBacklashNotAsWanted{
    "mesh-backlash-not-as-wanted",
    "backlash {}, wanted {}: shift the centre distance, {} of backlash for 1 of centre"};
inline constexpr Said kFeeler{"mesh-feeler",
                              "feeler between the flanks: {}; the least recommended is {}"};
inline constexpr Said kFeelerTooLittle{
    "mesh-feeler-too-little",
    "feeler between the flanks: {}, less than the {} recommended: open the centres by {}, or say "
    "in [[meshes]] what backlash is wanted"};
inline constexpr Said kBaseCirclesOverlap{"mesh-base-circles-overlap",
                                          "the base circles of the two gears overlap there"};
inline constexpr Said kNoSuchPair{
    "mesh-no-such-pair",
    "no such pair meshes at this centre distance: check module, numbers of teeth and where the "
    "parts are placed"};
inline constexpr Said kBacklashByJob{"mesh-backlash-by-job", "as wanted{}"};
inline constexpr Said kBacklashByStandard{"mesh-backlash-by-standard",
                                          "by ISO/TR 10064-2 annex A (from memory)"};
inline constexpr Said kFaceShare{"mesh-face-share", "{} of the narrower face in mesh"};
inline constexpr Said kFaceShareUsual{
    "mesh-face-share-usual", "{} of the narrower face in mesh (common practice, no source)"};
inline constexpr Said kMeshBasis{
    "mesh-basis",
    "involute geometry of ISO 21771, exact; bearing play {} each way; least backlash {}; {}; "
    "pitch error and runout of the teeth not known"};
inline constexpr Said kNoOutside{"mesh-no-outside", "no outside cylinder in the model{}"};
inline constexpr Said kGearHasOutside{
    "mesh-gear-has-outside",
    "a gear has an outside to turn about: check the names of the two parts"};

}  // namespace spotblue::said
