#pragma once
// Stops of bodies on parallel centre lines as a net of lengths: each gap the sum of the lengths
// between the two faces and their bodies' own first faces.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "group/axial/face_path.hpp"
#include "group/axial/net_length.hpp"
#include "group/axial/set_parts.hpp"
#include "spotblue/geometry/axial_stops.hpp"
#include "spotblue/mechanics/play_net.hpp"

namespace spotblue {

/// A stop of a direction: `a` looks along it, whichever way its centre line points.
struct LineStop {
  AxialStop stop;
  CentreLineId centre_line{};
  Line line;  ///< the centre line, pointing along the direction
};

struct StopNet {
  std::vector<std::size_t> groups;   ///< of Groups::moves_with, by body of the nets
  std::vector<LineStop> stops;       ///< by stop of the nets: those that others do not imply
  std::vector<StackLength> lengths;  ///< by length of the nets
  PlayNet bench;
  std::optional<PlayNet> warm;  ///< where any part is warmer; unknown materials as if not

  /// @pre the group is one of the net's
  [[nodiscard]] std::size_t body_of(std::size_t group) const;
};

/// Makes the net of some stops.
///
/// Of a body with more than two faces that stop something, those are dimensioned from each other
/// that one loop goes over, the tightest first: as a drawing would.
/// A part that is set has its place on the rest of its body by one length, whatever touches.
/// Where no chain of touching faces and joints leads from one face to the next, a length of source
/// not_closed stands in for it.
[[nodiscard]] StopNet make_stop_net(const DeclaredJob& declared, const Groups& groups,
                                    const FacePaths& paths, std::span<const SetPart> set,
                                    std::vector<LineStop> stops);

}  // namespace spotblue
