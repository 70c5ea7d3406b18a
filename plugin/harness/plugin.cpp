// The plug-in's door: Tcl's own `load` finds Spotblue_Init and every command is there.

#include <fmt/format.h>
#include <tcl.h>

#include <Draw.hxx>
#include <Draw_Interpretor.hxx>
#include <array>
#include <nlohmann/json.hpp>
#include <string>
#include <utility>

#include "plugin/harness/commands.hpp"

namespace spotblue::plugin {
namespace {

// clang-format off
constexpr std::array kCommands{
    Command{"sblook", "TARGET ?-text? ?-json? ?-unit UNIT? ?-seconds N? ?-memory MB?",
            "Looks anew at TARGET, the name of an XDE document, or names of shapes, each a part.\n"
            "\t\t: Result: a dict of how many parts, seats of each kind, threads and fouls there are;\n"
            "\t\t: with -text the report in words, with -json the one that programs read (schema 2).\n"
            "\t\t: It ends within so many seconds and 10^6 bytes of memory, with what was found by then.",
            look_command},
    Command{"sbfeatures", "TARGET ?PART?",
            "Features that parts have, by the names that jobs and sbclass use: a list of dicts.",
            features_command},
    Command{"sbseats", "TARGET",
            "Where parts bear on each other: a list of dicts. Clearance is positive, in mm.",
            seats_command},
    Command{"sbfouls", "TARGET",
            "Overlaps that no press fit, thread or seat accounts for: a list of dicts.",
            fouls_command},
    Command{"sbcheck", "TARGET ?JOB.toml? ?-text? ?-json? ?-unit UNIT? ?-seconds N? ?-memory MB?",
            "Judges TARGET by a job file (its model is TARGET, whatever file it names), or without\n"
            "\t\t: one by the sizes in the document. Result: how many of each outcome. What was not looked\n"
            "\t\t: at within so many seconds and 10^6 bytes of memory is undecided.",
            check_command},
    Command{"sbfindings", "TARGET ?conforming|nonconforming|undecided?",
            "What the last sbcheck found: a list of dicts.",
            findings_command},
    Command{"sbclass", "DOC FEATURE ?SIZE? ?-remove?",
            "Sets the size of a feature in the document: H7 on the size as modelled, \"38 H7\" on one of\n"
            "\t\t: its own, deviations (\"38 +0.025/0\", \"38 +-0.1\") or limits (\"37.9 to 38.1\").\n"
            "\t\t: Without SIZE: what it has. Result: a dict with limits.",
            class_command},
    Command{"sbclasses", "DOC",
            "Every size in the document, and why it is in doubt where it is: a list of dicts.",
            classes_command},
    Command{"sbtake", "DOC FILE.step",
            "Takes the sizes that the STEP file states, and its names of faces, into DOC, which was read\n"
            "\t\t: from it: Open CASCADE's own reader loses signs and units of deviations, and all names\n"
            "\t\t: of faces. Result: how many sizes and names, and what was left.",
            take_command},
    Command{"sbmark", "DOC ?-off?",
            "Colours faces of seats and parts that foul in the document: by outcome after sbcheck.\n"
            "\t\t: seat light blue, conforming blue, undecided orange, nonconforming red-orange.\n"
            "\t\t: -off gives the faces back the colours they had. Result: what was marked.",
            mark_command},
    Command{"sbshow", "TARGET ?-off?",
            "Shows the parts in the viewer, seats and fouls coloured as by sbmark and labelled.",
            show_command},
    Command{"sbkeep", "DOC",
            "Keeps the findings of the last sbcheck in the document: named data, and notes on the\n"
            "\t\t: faces and parts of those that do not conform. Save it with SaveAs.",
            keep_command},
    Command{"sbkept", "DOC",
            "Findings that the document holds from an earlier sbkeep: a list of dicts.",
            kept_command},
    Command{"sbsave", "DOC FILE.step",
            "Writes the document as STEP AP242, in mm, its sizes as semantic sizes on their faces.",
            save_command},
};
// clang-format on

template <std::size_t I>
int call(Draw_Interpretor& interpreter, int count, const char** words) {
  return run(interpreter, kCommands[I], count, words);
}

template <std::size_t... I>
void add_all(Draw_Interpretor& interpreter, std::index_sequence<I...> /*each*/) {
  (interpreter.Add(
       kCommands[I].name,
       fmt::format("{} {}\n\t\t: {}", kCommands[I].name, kCommands[I].arguments, kCommands[I].help)
           .c_str(),
       "", call<I>, "Fits by spotblue"),
   ...);
}

}  // namespace
}  // namespace spotblue::plugin

/// What Tcl calls when it loads the library: a second time does no harm.
extern "C" __attribute__((visibility("default"))) int Spotblue_Init(Tcl_Interp* interpreter) {
  Draw_Interpretor& harness = Draw::GetInterpretor();
  if (harness.Interp() != interpreter) {
    Tcl_SetResult(interpreter,
                  const_cast<char*>("spotblue is for Open CASCADE's own harness (occt-draw)"),
                  TCL_STATIC);
    return TCL_ERROR;
  }
  spotblue::plugin::add_all(harness,
                            std::make_index_sequence<std::size(spotblue::plugin::kCommands)>());
  return Tcl_PkgProvide(interpreter, "spotblue", SPOTBLUE_VERSION);
}
