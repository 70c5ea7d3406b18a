#pragma once
// Whether two faces that stop each other can meet, whatever else stops their parts.

#include <vector>

#include "group/axial/body_plays.hpp"
#include "spotblue/group/turning.hpp"

namespace spotblue {

/// Over all that the lengths of the net may be when it runs.
enum class Meeting { never, perhaps, always };

/// Nothing where there are too many ways to tell, or where what says never hangs on a length that
/// no chain of faces closes.
/// @param stop  of the net's stops.
[[nodiscard]] std::optional<Meeting> meeting_of(const StopNet& net, std::size_t stop);

/// What is left between the faces of a stop when all that the parts may travel towards each other
/// is taken up, mm, 0 where they meet; nothing where that is not known.
[[nodiscard]] std::optional<Interval> least_left(const StopNet& net, std::size_t stop);

/// The faces that can meet. What the net of a play says of two goes before what is drawn; where no
/// net has them, faces that others keep apart by more than lengths usually make up for are none.
[[nodiscard]] std::vector<ThrustFace> faces_that_meet(std::vector<ThrustFace> faces,
                                                      const BodyPlays& plays);

}  // namespace spotblue
