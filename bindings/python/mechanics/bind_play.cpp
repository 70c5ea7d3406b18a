#include "python/values/numbers.hpp"
#include "spotblue/mechanics/play_draw.hpp"
#include "spotblue/mechanics/play_net.hpp"
#include "spotblue/mechanics/play_setting.hpp"

namespace spotblue::python {
namespace {

void bind_play_values(py::module_& module) {
  bind_records<PlayTerm, PlayStop, PlayNet>(module);
  choice<GoTogether>(module);
  bind_records<PlayLoop, RelativePlay, PlayOutcome, PlayWant, WantWindows, PlaySetting>(module);
}

}  // namespace

void bind_play(py::module_& module) {
  bind_play_values(module);
  module.def(
      "relative_play",
      [](const PlayNet& net, std::size_t of, std::size_t on) {
        const py::gil_scoped_release others_run;
        return relative_play(net, of, on);
      },
      py::arg("net"), py::arg("of"), py::kw_only(), py::arg("on"),
      R"(Play of one body relative to another over all stops: at worst, exactly, and by chance.

Args:
    net: bodies, lengths and stops, mm.
    of: body that moves, into net.bodies.
    on: body that it moves on, into net.bodies.
Raises: BadInputError for what require_play_net refuses, or bodies that are not there or the same.)");
  module.def(
      "loop_at",
      [](const PlayNet& net, std::size_t of, std::size_t on, const std::vector<double>& gaps_mm) {
        return loop_at(net, of, on, Crossing<std::vector<Length>>::in(gaps_mm));
      },
      py::arg("net"), py::arg("of"), py::kw_only(), py::arg("on"), py::arg("gaps_mm"),
      R"(The tightest loop through two bodies where each stop has the gap given.

Returns: the loop; None where `of` is not stopped both ways, or there are too many ways to tell.
Raises: BadInputError as relative_play, and for gaps of another number or not finite.)");
  module.def(
      "draw_plays",
      [](const PlayNet& net, std::size_t of, std::size_t on, const Limits& wanted,
         const StackDraw& draw) {
        const py::gil_scoped_release others_run;
        return draw_plays(net, of, on, wanted, draw);
      },
      py::arg("net"), py::arg("of"), py::kw_only(), py::arg("on"), py::arg("wanted"),
      py::arg("draw"),
      R"(Draws every length of the net by lot and takes the play of each draw, over all stops.

Args:
    net: bodies, lengths and stops, mm.
    of: body that moves, into net.bodies.
    on: body that it moves on, into net.bodies.
    wanted: limits of the play, mm.
    draw: samples, seed, threads; one seed gives one answer on any number of threads.
Raises: BadInputError as relative_play, for no samples, and where `of` is not stopped both ways.)");
  module.def(
      "setting_windows",
      [](const PlayNet& net, std::size_t length, const std::vector<PlayWant>& wants) {
        const py::gil_scoped_release others_run;
        return setting_windows(net, length, wants);
      },
      py::arg("net"), py::arg("length"), py::kw_only(), py::arg("wants"),
      R"(Where a nut, collar or shim may be set so that all wants hold whatever the other lengths are.

Args:
    net: bodies, lengths and stops, mm.
    length: into net.lengths; its limits are the range in which it may be set.
    wants: plays wanted, one at least.
Raises: BadInputError as relative_play, for a length that is not there, no wants, and wanted limits
    that are reversed or not finite.)");
  module.def(
      "require_play_net", [](const PlayNet& net) { require_play_net(net); }, py::arg("net"),
      "Refuses nets that break a rule.\n\nRaises: BadInputError naming the stop or length.");
}

}  // namespace spotblue::python
