#include "group/sizes/found_fit.hpp"

namespace spotblue {

namespace {

Limits moved_by(Limits size, Limits move) {
  return {size.lower + move.lower, size.upper + move.upper};
}

Limits clearance_of(Limits hole, Limits shaft) {
  return {hole.lower - shaft.upper, hole.upper - shaft.lower};
}

// What lies within the limits however far it moves.
Limits before(Limits after, Limits move) {
  return {after.lower - move.lower, after.upper - move.upper};
}

}  // namespace

FoundFit found_fit(const SizeRange& hole, const SizeRange& shaft, const FitMoves& moves) {
  FoundFit found{hole, shaft, moves, {}, {}};
  found.clearance =
      clearance_of(moved_by(hole.limits, moves.hole), moved_by(shaft.limits, moves.shaft));
  found.without_uncertainty = clearance_of(moved_by(without_uncertainty(hole), moves.hole),
                                           moved_by(without_uncertainty(shaft), moves.shaft));
  return found;
}

Limits window_of_hole(const FoundFit& found, Limits wanted) {
  const Limits shaft = moved_by(found.shaft.limits, found.moves.shaft);
  return before({shaft.upper + wanted.lower, shaft.lower + wanted.upper}, found.moves.hole);
}

Limits window_of_shaft(const FoundFit& found, Limits wanted) {
  const Limits hole = moved_by(found.hole.limits, found.moves.hole);
  return before({hole.upper - wanted.upper, hole.lower - wanted.lower}, found.moves.shaft);
}

}  // namespace spotblue
