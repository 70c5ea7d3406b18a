#pragma once
// The sizes that a job still has to make, and what its fits ask of them.
//
// A class fit is a range of clearances: with a mate that exists, the mate's size and that range
// give the limits of the other, not the class's own limits. Where both sizes are still to be made,
// each gets the limits of its class; with plain limits of the clearance the two share them.

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "check/press/close_in.hpp"
#include "spotblue/mechanics/make_to_suit.hpp"

namespace spotblue {

/// The close-in of a bore, and what the bore must be once it is pressed in.
struct PressedBore {
  CloseIn close_in;
  std::optional<Limits> after;  ///< where the shaft that runs in it exists or has a class
};

struct SuitJob {
  SuitProblem problem;
  std::vector<FeatureRef> features;                 ///< by size
  std::vector<std::optional<PressedBore>> pressed;  ///< by size
  std::vector<Saying> open;             ///< by size: why what pressing does to its fit is not known
  std::vector<Saying> asked;            ///< by demand: the fit and what it asks
  std::map<std::string, Saying> wants;  ///< by the name that the problem has for a want
};

/// @throws Error of the standard, with the job's file and line.
[[nodiscard]] SuitJob suit_job(const WorkedGroup& worked);

}  // namespace spotblue
