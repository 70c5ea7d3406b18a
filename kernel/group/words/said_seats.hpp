#pragma once
// What is said of faces, cones, screws, single sizes and of parts that foul.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kAllowed{"allowed", "allowed as declared"};
inline constexpr Said kNone{"none", "none"};

// Faces.
inline constexpr Said kGapMeasured{"gap-measured", "measured"};
inline constexpr Said kGapWanted{"gap-wanted", "{} wanted{}"};
inline constexpr Said kMeasureGapCloser{
    "gap-measure-closer", "measure the gap closer than +- {}, with a feeler or indicator"};
inline constexpr Said kTakeOffFace{"gap-take-off",
                                   "take {} off a face that may be cut, or a shim less"};
inline constexpr Said kTakeUp{"gap-take-up", "take up {} with a washer or shim, or a thicker part"};
inline constexpr Said kAllowedOverlap{"gap-allowed-overlap", "allowed{}: {}; allowed overlap {}"};
inline constexpr Said kFacesCannotOverlap{"faces-cannot-overlap",
                                          "two faces cannot overlap; no allowance declared"};
inline constexpr Said kFacesOverlap{"faces-overlap",
                                    "the faces overlap by {}: face one back, or move the part"};
inline constexpr Said kNoGapDeclared{"gap-not-declared", "no gap declared"};
inline constexpr Said kFacesTouch{"faces-touch",
                                  "the faces touch; say in [[wants]] whether they should"};
inline constexpr Said kHeldTogether{"faces-held", "the faces touch and are held together"};
inline constexpr Said kOneBody{"faces-of-one-body", "both faces are of one body"};
inline constexpr Said kFacesApart{
    "faces-apart", "{} apart; say in [[wants]] what gap, end play or touch is wanted"};

// Fouls.
inline constexpr Said kExact{"volume-exact", "exact"};
inline constexpr Said kNotProven{"volume-not-proven", "not proven"};
inline constexpr Said kTrueUpBore{"foul-true-up", "true up the bore or the seat it hangs on"};
inline constexpr Said kFaceOneBack{"foul-face-back", "face one back, or move the part along"};
inline constexpr Said kCutClear{"foul-cut-clear", "cut one clear of the other, or move it"};
inline constexpr Said kFoulsBy{"fouls-by", "fouls by {}, {} shared: {}"};
inline constexpr Said kFoulsBeyondSeat{
    "fouls-beyond-seat",
    "beyond what such a seat may overlap the two go {} deeper and share {}: {}"};
inline constexpr Said kNotDecided{"foul-not-decided", "Open CASCADE could not decide: {}"};
inline constexpr Said kLookByEye{"foul-look-by-eye",
                                 "look at this pair by eye, or mend the solids and check again"};
inline constexpr Said kAllowedFoul{"foul-allowed", "allowed{}: {}; allowed overlap {}, {} deep"};
inline constexpr Said kDeeperThanAllowed{"foul-deeper-than-allowed",
                                         "deeper than the {} allowed{}"};
inline constexpr Said kSolidsShareSpace{"foul-solids-share-space",
                                        "two solids cannot share space; no allowance declared"};
inline constexpr Said kNothingOverlaps{"allowed-nothing-overlaps",
                                       "allowed{}: {}; nothing overlaps"};
inline constexpr Said kAllowanceMayGo{"allowance-may-go",
                                      "the parts do not overlap; the allowance may go"};

// Screws.
inline constexpr Said kPlainFitOfThread{"thread-plain-fit",
                                        "declared as a plain fit, the sizes are those of {}"};
inline constexpr Said kThreadTable{"thread-table",
                                   "thread table: {}; allowed overlap {} on the diameter"};
inline constexpr Said kScrewInHole{"thread-screw-in-hole", "a {} screw in its tapped hole"};
inline constexpr Said kScrewOutOfLine{
    "thread-out-of-line",
    "{} is out of line with its tapped hole by {}: see whether it starts by hand"};
inline constexpr Said kThreadDeclared{"thread-declared", "{} as declared{}"};
inline constexpr Said kThreadRare{"thread-rare",
                                  "drawn as {}, a pitch that is seldom met: say in [[threads]] "
                                  "whether it is that one, or measure it"};
inline constexpr Said kThreadDrawnAsOther{
    "thread-drawn-as-other",
    "{} is declared{}, and the hole of {} and the screw of {} are drawn as no such thread: measure "
    "both, or mend the entry"};
inline constexpr Said kThreadsApart{
    "threads-apart",
    "a screw has one thread, and the parts that share this one are drawn for {}: measure the "
    "pitch and say it in [[threads]]"};
inline constexpr Said kThreadsContradict{
    "threads-contradict",
    "a screw has one thread, and of this one {} are said: they do not screw together"};
inline constexpr Said kThreadFew{
    "thread-few",
    "{} of {} are engaged, less than half the diameter; usual is at least {}: see whether it holds "
    "what it must, and say in [[threads]] how much is enough, and why"};
inline constexpr Said kThreadUsualIn{"thread-usual-in", "{} in {}"};
inline constexpr Said kThreadUsualAnywhere{"thread-usual-anywhere",
                                           "{} in steel, {} in iron, bronze and brass, {} in "
                                           "softer ones"};
inline constexpr Said kThreadTooFew{"thread-too-few",
                                    "{} of {} are engaged, and {} are declared to be enough{}"};
inline constexpr Said kThreadEnough{"thread-enough", "{} engaged are enough as declared{}: {}"};
inline constexpr Said kEngagementUsual{
    "thread-engagement-usual",
    "least engagement of half the diameter, and what is usual: common practice, no source"};
inline constexpr Said kThreadNotFound{
    "thread-not-found",
    "declared thread not found{}: the two are drawn as no screw in its tapped hole; place the "
    "parts, draw the hole at its minor diameter, or drop the entry"};

// Tapers.
inline constexpr Said kNoTaperDeclared{"taper-not-declared", "no taper declared"};
inline constexpr Said kTaperDiffers{
    "taper-differs",
    "half angles differ by {}; say in [[tapers]] how near they must agree, or blue it"};
inline constexpr Said kLimitsOfTaper{"taper-limits", "limits of the taper{}"};
inline constexpr Said kBearsAtSmallEnd{
    "taper-bears-small", "the cones bear at the small end only: half angles differ by {}"};
inline constexpr Said kBearsAtLargeEnd{
    "taper-bears-large", "the cones bear at the large end only: half angles differ by {}"};
inline constexpr Said kConesOffLine{
    "taper-off-line",
    "out of line by {} on one side, and the interference there is {}: the cones stand off on that "
    "side; true up the bore or what it hangs on"};
inline constexpr Said kConesFoul{
    "taper-fouls",
    "fouls: out of line by {} on one side, the gap between the cones leaves {}; "
    "true up the bore or what it hangs on"};
inline constexpr Said kProveWithBlue{"taper-prove", "prove it with blue before use"};
inline constexpr Said kConesApart{"taper-apart",
                                  "the gap between the cones is {}: move them along the axis"};

// Single sizes.
inline constexpr Said kSizeTooLargeHole{"size-hole-too-large",
                                        "too large by {}: bush or sleeve it"};
inline constexpr Said kSizeTooSmallHole{"size-hole-too-small", "too small by {}: open it"};
inline constexpr Said kSizeTooLargeShaft{"size-shaft-too-large", "too large by {}: take it down"};
inline constexpr Said kSizeTooSmallShaft{"size-shaft-too-small",
                                         "too small by {}: sleeve it or make a new one"};
inline constexpr Said kSizeNotNominal{
    "size-not-nominal", "model is not drawn at its nominal size: it is {}, its nominal is {}"};
inline constexpr Said kMakeIt{"size-make-it", "make it {}"};
inline constexpr Said kSizeWorn{"size-worn", "worn, {}: not all of it is well; true it up"};
inline constexpr Said kSizeMeasureCloser{"size-measure-closer", "measure it closer than +- {}"};
inline constexpr Said kStatedInModel{"size-stated", "stated in the model{}"};
inline constexpr Said kSizeDoubtful{"size-doubtful",
                                    "{}: see the drawing, and say in a job file what it shall be"};
inline constexpr Said kMeasuredSize{"size-measured", "measured size{}"};
inline constexpr Said kMeasuredForNothing{
    "size-measured-for-nothing",
    "measured, but it makes no seat in the model and no [[sizes]] entry asks for it: place its "
    "mate, or say what the size should be"};

// What the job pairs and the model does not.
inline constexpr Said kLimitsOfSeat{"seat-limits", "limits of a seat in the job's settings"};
inline constexpr Said kFitNotFound{
    "fit-not-found", "declared fit not found{}: {}; place the parts, or drop the entry"};
inline constexpr Said kTaperNotFound{
    "taper-not-found", "declared taper not found{}: the two cones make no seat as they are placed"};
inline constexpr Said kGapNotFound{
    "gap-not-found",
    "nothing to judge{}: {}; place the parts, or widen axial_gap_most_mm in [settings]"};
inline constexpr Said kNoFaceLooks{"gap-no-faces-near",
                                   "no face of one looks at a face of the other from near"};
inline constexpr Said kMeasuredGapNotFound{
    "gap-measured-not-found", "the measured gap{} lies between faces that make no seat"};

}  // namespace spotblue::said
