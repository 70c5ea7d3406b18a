#pragma once
/// @file
/// What counts as nothing, as all and as the same, in every room of this layer. What a user may
/// choose is in settings.hpp; what one way of working alone needs is named where it is needed.
/// Choices of this program, no source, unless one is named.

namespace spotblue {

/// mm. A shorter length, step or gap is none: a kilometre in 15 digits ends at 1e-9 mm.
inline constexpr double kNoLength = 1e-9;
/// mm. Places nearer than this are one: as near as any file's uncertainty is taken for.
inline constexpr double kOnePlace = 1e-6;
/// mm. What Open CASCADE takes for one place (Precision::Confusion).
inline constexpr double kConfusion = 1e-7;
/// rad, or the sine of an angle. A smaller turn is none.
inline constexpr double kNoTurn = 1e-9;
/// rad. What lacks no more of a whole turn goes all round: circles come in pieces.
inline constexpr double kTurnSlack = 1e-6;
/// The sine between two directions that are one as files write them.
inline constexpr double kOneDirection = 1e-6;
/// The sine between two directions that come of one and the same, by sums of our own.
inline constexpr double kSameDirection = 1e-9;
/// The same of the axes of two features that are on one line.
inline constexpr double kOneLine = 1e-8;
/// The same where a list is kept of directions that have been tried.
inline constexpr double kTriedDirection = 1e-10;
/// No unit, or of lengths of about 1. What rounding leaves where nothing should be.
inline constexpr double kRounding = 1e-12;
/// No unit. Two values that differ by no more of their size are one.
inline constexpr double kSameShare = 1e-9;
/// mm. As near as Open CASCADE's classifier is asked whether a point is in a solid.
inline constexpr double kProbeSlack = 1e-9;

}  // namespace spotblue
