#pragma once
// What a fit of the job asks for, in clearances and where it is a class also in sizes.

#include <optional>
#include <string>

#include "spotblue/group/sentence.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

struct WantedFit {
  Limits clearance;                   ///< diametral, negative is interference
  std::optional<Limits> hole, shaft;  ///< sizes, where a class gives them
  std::optional<Length> nominal;
  std::string text;  ///< "H7/s6"; empty where it is by limits
  Saying basis;      ///< "ISO 286-1:2010, 44 H7/s6"
};

/// The modelled sizes of the pair and how each is meant.
struct PairSizes {
  Length hole, shaft;
  Drawn hole_meant = Drawn::at_the_size_wanted, shaft_meant = Drawn::at_the_size_wanted;
};

/// @throws Error of the standard, with the job's file and line.
[[nodiscard]] WantedFit wanted_fit(const Job& job, const FitWant& want, const PairSizes& sizes);

/// "H7/s6", "0.02 to 0.05 mm".
[[nodiscard]] Saying told(const WantedFit& wanted);

struct WantedSize {
  Limits limits;
  std::optional<Length> nominal;  ///< of a class
  std::string text;               ///< "H7"; empty where it is by limits
  Saying basis;
};

/// "H7", "24.98 to 25 mm".
[[nodiscard]] Saying told(const WantedSize& wanted);

/// @throws Error of the standard, with the job's file and line.
[[nodiscard]] WantedSize wanted_size(const Job& job, const SizeWant& want, Length modelled,
                                     Drawn meant);

}  // namespace spotblue
