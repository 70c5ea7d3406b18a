#pragma once
// Where metal ends the way of a part that is set on others.

#include <optional>
#include <span>

#include "group/axial/face_path.hpp"
#include "group/axial/net_length.hpp"
#include "group/axial/set_parts.hpp"

namespace spotblue {

/// Metal that the part, or one that it carries along, comes to.
struct MetalEnd {
  OccurrenceId part{}, by{};
  Limits at;            ///< of the length that is set, where the two meet
  bool certain = true;  ///< false: they are only not proved clear from there on
};

/// How short and how long the length may be set; nothing where no metal ends it.
struct SettingRoom {
  std::optional<MetalEnd> shorter, longer;
};

/// Of the parts that move as one with the part that is set, those that hang on what it is set from
/// stand still, the others go with it; those that are set themselves have no place. Seen as rings
/// about the line.
/// @param own  the length that is set.
/// @pre the length is of a part that is held by others
[[nodiscard]] SettingRoom setting_room(const DeclaredJob& declared, const Groups& groups,
                                       const PartLengths& lengths, const FacePaths& paths,
                                       std::span<const SetPart> set, const StackLength& own,
                                       const Line& line);

}  // namespace spotblue
