#pragma once
// Where a nut, collar or shim may be set so that all that is wanted of end plays holds.

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "group/axial/set_parts.hpp"
#include "group/axial/setting_room.hpp"
#include "group/axial/stop_net.hpp"
#include "spotblue/mechanics/play_setting.hpp"

namespace spotblue {

/// An end play that a setting has to do with: of groups, by the want's place in the job.
struct SettingWant {
  std::size_t of = 0, on = 0;
  Limits wanted;
  std::optional<JobLine> line{};
};

struct PartSetting {
  SetPart part;
  CentreLineId centre_line{};
  std::string length;                 ///< "Stud: face 1 to Nut: face 2"
  Length modelled;                    ///< as it stands in the model
  std::optional<Limits> range;        ///< in which it may be set; nothing where that is not known
  std::optional<Length> pitch;        ///< of its thread, where one is known
  std::optional<ThreadReach> thread;  ///< where the model has its thread
  SettingRoom room;                   ///< metal that ends its way
  std::vector<SettingWant> wants;     ///< empty where nothing wanted goes by it
  PlaySetting setting;                ///< by want of `wants`
};

/// The widest window; nothing where there is none.
[[nodiscard]] std::optional<Limits> widest_window(const PlaySetting& setting);

/// The length of the net that the part is set by; nothing where none of its loops goes by it.
[[nodiscard]] std::optional<std::size_t> set_length_of(const StopNet& net, std::size_t set_part);

/// Where the part may be set.
/// @param number  of the part among those that are set.
/// @param room    that metal leaves it; within it at the worst lengths.
/// @param wants   of end plays on the net's direction; those that the length has no part in are
///                left out.
/// @pre set_length_of the net and the number
[[nodiscard]] PartSetting setting_of(const DeclaredJob& declared, const SetPart& part,
                                     std::size_t number, const StopNet& net,
                                     const SettingRoom& room, std::span<const SettingWant> wants);

/// Thread that the setting leaves engaged, mm; nothing where the model has no thread of it.
[[nodiscard]] std::optional<double> thread_left(const PartSetting& setting, Length at);

/// Metal that the range ends at: what ends it at its lower end first.
[[nodiscard]] std::vector<MetalEnd> ends_of_range(const PartSetting& setting);

/// Whether the part would stand where the thread runs out before larger metal.
[[nodiscard]] bool into_run_out(const PartSetting& setting, Limits window);

/// Of a thread that holds (thread_hold).
/// @pre setting.thread
[[nodiscard]] Length least_thread(const PartSetting& setting);

/// The net with the length set anywhere in the window.
[[nodiscard]] std::shared_ptr<const StopNet> set_within(const StopNet& net, std::size_t set_part,
                                                        Limits window);

}  // namespace spotblue
