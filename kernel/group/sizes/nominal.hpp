#pragma once
// The nominal size that a drawing would have shown for a size that was measured or modelled.

#include "spotblue/job/job.hpp"

namespace spotblue {

/// How near a basic size in the model must be to the nominal it stands for.
inline constexpr double kAtBasicSize_mm = 0.0005;

/// Nominal of a basic size: the size itself when it is one that drawings use (tenths and quarters
/// of a millimetre, 1/64 and 0.005 in), else the nearest tenth of a millimetre.
[[nodiscard]] Length nominal_of_basic(Length modelled);

/// Nominal of an actual size, worn or oversize: the half millimetre or 1/32 in within 0.1 mm of it,
/// first the one that the fit's system was made for; else the size itself.
[[nodiscard]] Length nominal_of_actual(Length size, FitSystem system);

}  // namespace spotblue
