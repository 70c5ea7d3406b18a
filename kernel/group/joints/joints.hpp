#pragma once
// What each pair of parts is to each other: the one answer, for whoever asks.

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/group/joint.hpp"

namespace spotblue {

/// One joint for each pair of parts that meets in a seat or a thread or is held by a third part,
/// ascending by the two parts.
///
/// - declared: [[fixed]].
/// - screw: a screw or nut and the part it is screwed to; a part and the shaft in its bore that a
///   screw from the side reaches.
/// - press: pressing_of. Perhaps pressed, as a transition fit may come out loose, holds nothing. A
///   squeeze that the job allows of two parts (a seal, a gasket) is no press fit: they are loose.
/// - clamp: what lies in a chain of touching faces or cones between the two parts of a thread.
/// - pin: two parts that a third goes through off the line of their own seat, all three turning as
///   one; a part in holes of one body, off the line that this turns about (a dowel, a plug).
/// - taper: cones that touch, certain where they are slight enough to hold themselves. Two chamfers
///   are no joint.
/// - key: a key turns with the parts whose slots it lies in, along the axis only with the one it
///   fits tightest. A tongue of one part in a slot of another on one centre line turns with it.
/// - ring: a thin ring sprung into a groove of the other part.
/// - loose: a seat with clearance and none of these.
///
/// @throws Error of the standards or of the names, with the job's file and line.
[[nodiscard]] std::vector<Joint> joints_of(const DeclaredJob& declared);

/// Whether the two faces of an axial seat bear on each other as modelled: the same place to
/// rounding, or within what a declared touch allows.
[[nodiscard]] bool touches(const DeclaredJob& declared, std::size_t axial_seat);

/// The overlaps that the job allows, number by number, found again by the two parts.
[[nodiscard]] PairBook allowed_squeezes(const DeclaredJob& declared);

}  // namespace spotblue
