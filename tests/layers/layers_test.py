"""No layer and no room includes a later one; Open CASCADE stays where it is asked for."""

import unittest
from pathlib import Path

import include_rules as rules
import name_rules
import room_rules
import said_rules

TOP = Path(__file__).resolve().parents[2]


class Layers(unittest.TestCase):
    def RulesCatchWhatTheyShould(self):
        wrong = [
            ("kernel/base/unit.cpp", '#include "spotblue/geometry/region.hpp"'),
            ("kernel/geometry/read/read.cpp", '#include "job/toml_table.hpp"'),
            ("kernel/include/spotblue/job/job.hpp", '#  include "spotblue/check/check.hpp"'),
            ("kernel/check/judging/check.cpp", "#include <TopoDS_Shape.hxx>"),
            ("kernel/include/spotblue/geometry/look.hpp", "#include <gp_Pnt.hxx>"),
            ("kernel/include/spotblue/base/log.hpp", "#include <spdlog/spdlog.h>"),
            ("kernel/include/spotblue/base/log.hpp", '#include "base/logger.hpp"'),
        ]
        for path, text in wrong:
            with self.subTest(path=path, text=text):
                self.assertEqual(len(rules.kernel_problems(Path(path), text)), 1)
        right = [
            ("kernel/geometry/read/read.cpp", "#include <STEPControl_Reader.hxx>"),
            ("kernel/geometry/read/read.cpp", '#include "geometry/occt/contained.hpp"'),
            ("kernel/report/text.cpp", '#include "spotblue/check/finding.hpp"'),
            ("kernel/include/spotblue/base/log.hpp", "#include <string_view>"),
        ]
        for path, text in right:
            with self.subTest(path=path, text=text):
                self.assertEqual(rules.kernel_problems(Path(path), text), [])
        source = Path("kernel/geometry/faces/worn.cpp")
        self.assertEqual(len(rules.bare_tolerances(source, "if (a < 1e-9) {}")), 1)
        named = "constexpr double kNoLength = 1e-9;  // mm, as 1e-9"
        self.assertEqual(rules.bare_tolerances(source, named), [])
        worn = [source, Path("kernel/include/spotblue/geometry/worn.hpp")]
        self.assertEqual(len(rules.without_own_header(worn[:1])), 1)
        self.assertEqual(rules.without_own_header(worn), [])
        command = Path("bindings/command/main.cpp")
        self.assertEqual(len(rules.outside_problems(command, '#include "base/logger.hpp"')), 1)
        self.assertEqual(len(rules.outside_problems(command, "#include <TDF_Label.hxx>")), 1)
        self.assertEqual(rules.outside_problems(command, '#include "command/look.hpp"'), [])
        plugin = Path("plugin/harness/session.cpp")
        self.assertEqual(len(rules.plugin_problems(plugin, '#include "geometry/tree/step_tree.hpp"')), 1)
        self.assertEqual(rules.plugin_problems(plugin, "#include <TDF_Label.hxx>"), [])
        versions = '#include "geometry/occt/occt_versions.hpp"'
        self.assertEqual(rules.plugin_problems(plugin, versions), [])
        self.assertEqual(len(rules.outside_problems(command, versions)), 1)

    def TheSourcesKeepThem(self):
        self.assertGreater(len(list(rules.sources(TOP, "kernel"))), 10)
        self.assertEqual("\n".join(rules.problems(TOP)), "")


class Names(unittest.TestCase):
    def RulesCatchWhatTheyShould(self):
        def source(*functions):
            return "namespace {\n" + "".join(f"{one}\n}}\n" for one in functions) + "}  // namespace\n"

        box = source("Box box_of(const auto& face) {")
        stored = source("const Box& box_of(const Flat& f) {", "bool is_flat(const Flat& f) {")
        one, other = Path("kernel/geometry/faces/a.cpp"), Path("kernel/geometry/faces/b.cpp")
        self.assertEqual(name_rules.unnamed_functions(stored), {"box_of", "is_flat"})
        self.assertEqual(len(name_rules.shared_names([(one, box), (other, stored)])), 1)
        elsewhere = Path("kernel/geometry/seats/b.cpp")
        self.assertEqual(name_rules.shared_names([(one, box), (elsewhere, stored)]), [])

    def NoTwoSourcesOfAFolderShareOne(self):
        texts = [(path, text) for folder in ("kernel", "plugin", "bindings/python")
                 for path, text in rules.sources(TOP, folder) if path.suffix == ".cpp"]
        self.assertGreater(len(texts), 100)
        self.assertEqual("\n".join(name_rules.shared_names(texts)), "")


class Catalogue(unittest.TestCase):
    def RulesCatchWhatTheyShould(self):
        def problems(said, others="said::kTwo"):
            return said_rules.problems([("said_x.hpp", f"inline constexpr Said {said};")], others,
                                       "ISO 286-1")

        self.assertEqual(problems('kTwo{"two-words", "no more than {} at {}"}'), [])
        self.assertEqual(len(problems('kTwo{"Two_words", "at {}"}')), 1)
        self.assertEqual(len(problems('kTwo{\n"two", "at most "\n"{} mm"}')), 1)
        self.assertEqual(len(problems('kTwo{"two", "at {}"}', "said::kTwoOthers")), 1)
        again = 'kTwo{"two", "at {}"}; constexpr Said kOther{"two", "on {}"}'
        self.assertEqual(len(problems(again, "said::kTwo, said::kOther")), 1)
        self.assertEqual(problems('kTwo{"two", "by ISO 286-1 {}"}'), [])
        self.assertEqual(len(problems('kTwo{"two", "by ISO 99999 {}"}')), 1)

    def TheSentencesKeepThem(self):
        headers = sorted((TOP / "kernel/group/words").glob("said*.hpp"))
        texts = [(path.relative_to(TOP), path.read_text()) for path in headers]
        self.assertEqual(sum(text.count("constexpr Said ") for _, text in texts),
                         sum(len(list(said_rules.sentences(text))) for _, text in texts))
        others = "\n".join(text for _, text in rules.sources(TOP, "kernel"))
        self.assertEqual("\n".join(said_rules.problems(texts, others, (TOP / "tests/reference/SOURCES.md").read_text())), "")


ROOMS = """
spotblue_room(geometry plane
  SOURCES region.cpp
  HEADERS region.hpp)
spotblue_room(geometry faces OCCT USES plane LIBRARIES spdlog::spdlog
  SOURCES cone.cpp)
spotblue_room(geometry seats USES plane faces
  SOURCES seats.cpp)
"""
LAYERS_WITH_ROOMS = ("geometry", "group", "check")
FOLDERS = ("kernel", "bindings", "plugin", "tests")


class Rooms(unittest.TestCase):
    def RulesCatchWhatTheyShould(self):
        rooms = room_rules.rooms_in(ROOMS)
        plane, faces, seats = rooms
        self.assertEqual([room.occt for room in rooms], [False, True, False])
        self.assertEqual(seats.uses, ["plane", "faces"])
        self.assertEqual(room_rules.order_problems(rooms), [])
        self.assertEqual(len(room_rules.order_problems([seats, plane, faces])), 2)
        for room, text, problems in (
            (plane, '#include "geometry/faces/cone.hpp"', 1),
            (faces, '#include "geometry/seats/seats.hpp"', 1),
            (seats, '#include "geometry/faces/cone.hpp"', 0),
            (seats, '#include "spotblue/geometry/region.hpp"', 0),
            (faces, "#include <TopoDS_Face.hxx>", 0),
            (seats, "#include <TopoDS_Face.hxx>", 1),
        ):
            with self.subTest(room=room.name, text=text):
                found = room_rules.include_problems(Path("x.cpp"), text, room, rooms)
                self.assertEqual(len(found), problems, found)

    def TheSourcesKeepThem(self):
        for layer in LAYERS_WITH_ROOMS:
            text = (TOP / "kernel" / layer / "CMakeLists.txt").read_text()
            rooms = room_rules.rooms_in(text)
            self.assertGreater(len(rooms), 5)
            print(f"{layer}:", *room_rules.drawn(rooms), "", sep="\n  ")
            self.assertEqual("\n".join(room_rules.layer_problems(TOP, layer)), "")

    def NoFolderIsCrowded(self):
        self.assertEqual("\n".join(room_rules.crowded(TOP, FOLDERS)), "")


if __name__ == "__main__":
    unittest.main()
