#pragma once
// Whether a screw has enough thread in its hole.

#include <cstddef>
#include <optional>

#include "group/match/declared.hpp"
#include "spotblue/standards/materials.hpp"

namespace spotblue {

struct ThreadHold {
  Length engaged;                      ///< as drawn
  Length least;                        ///< as declared, else half the screw's diameter
  Length diameter;                     ///< of the screw by its table, else as drawn
  bool enough = true;                  ///< engaged is no less
  std::optional<MaterialKind> tapped;  ///< what the hole is in, where that is known

  /// Usual in that, for a screw of that diameter.
  [[nodiscard]] Length usual(MaterialKind in) const;
};

/// @param thread  number in the look.
[[nodiscard]] ThreadHold thread_hold(const DeclaredJob& declared, std::size_t thread);

}  // namespace spotblue
