#pragma once
/// @file
/// Where a nut, collar or shim may be set so that every play comes out as wanted, whatever the
/// other lengths are within their limits.

#include <cstddef>
#include <span>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/mechanics/play_net.hpp"

namespace spotblue {

struct PlayWant {
  std::size_t of = 0;
  std::size_t on = 0;
  Limits wanted;
};
constexpr void describe(auto& fields, const PlayWant*) {
  fields.value("PlayWant", "The play that one body shall have relative to another.")
      .member("of", &PlayWant::of, "into the net's bodies")
      .member("on", &PlayWant::on, "into the net's bodies; not of")
      .member("wanted", &PlayWant::wanted, "mm");
}

struct WantWindows {
  std::vector<Limits> windows;
};
constexpr void describe(auto& fields, const WantWindows*) {
  fields.value("WantWindows", "Where a length may be set for one want.")
      .member("windows", &WantWindows::windows,
              "mm, ascending and apart; none where no setting holds it");
}

struct PlaySetting {
  std::vector<Limits> windows;
  std::vector<WantWindows> by_want;
  std::vector<std::size_t> contradict;
  bool settled = true;
};
constexpr void describe(auto& fields, const PlaySetting*) {
  fields.value("PlaySetting", "Where a length may be set so that all wants hold at worst.")
      .member("windows", &PlaySetting::windows,
              "mm, ascending and apart, mostly one: a play can be small enough on either side of "
              "where two settings' loops are alike; none where no setting holds them all")
      .member("by_want", &PlaySetting::by_want, "the same for each want alone, in their order")
      .member("contradict", &PlaySetting::contradict,
              "wants that no setting holds together: one that none holds by itself, else two that "
              "none holds both of, else all; empty where there is a window")
      .member("settled", &PlaySetting::settled,
              "False where the search was given up: there are too many ways to tell");
}

/// Where the length may be set within its own limits.
///
/// Each play is then within its limits whatever all other lengths are, and no loop that the length
/// is part of is too short. Exact to 1e-9 mm: where a play is least it is a concave function of the
/// setting, and where it is greatest too, both straight from loop to loop.
/// @param length  into the net's lengths; its limits are the range in which it may be set.
/// @throws Error bad_input as relative_play; for a length that is not there, no wants, and wanted
///         limits that are reversed or not finite; stopped.
[[nodiscard]] SPOTBLUE_EXPORT PlaySetting setting_windows(const PlayNet& net, std::size_t length,
                                                          std::span<const PlayWant> wants);

}  // namespace spotblue
