"""No layer includes a later one; Open CASCADE stays in kernel/geometry's sources."""

import unittest
from pathlib import Path

import include_rules as rules

TOP = Path(__file__).resolve().parents[2]


class Layers(unittest.TestCase):
    def RulesCatchWhatTheyShould(self):
        wrong = [
            ("kernel/base/unit.cpp", '#include "spotblue/geometry/region.hpp"'),
            ("kernel/geometry/read.cpp", '#include "job/toml_table.hpp"'),
            ("kernel/include/spotblue/job/job.hpp", '#  include "spotblue/check/check.hpp"'),
            ("kernel/check/check.cpp", "#include <TopoDS_Shape.hxx>"),
            ("kernel/include/spotblue/geometry/look.hpp", "#include <gp_Pnt.hxx>"),
            ("kernel/include/spotblue/base/log.hpp", "#include <spdlog/spdlog.h>"),
            ("kernel/include/spotblue/base/log.hpp", '#include "base/logger.hpp"'),
        ]
        for path, text in wrong:
            with self.subTest(path=path, text=text):
                self.assertEqual(len(rules.kernel_problems(Path(path), text)), 1)
        right = [
            ("kernel/geometry/read.cpp", "#include <STEPControl_Reader.hxx>"),
            ("kernel/geometry/read.cpp", '#include "geometry/contained.hpp"'),
            ("kernel/report/text.cpp", '#include "spotblue/check/finding.hpp"'),
            ("kernel/include/spotblue/base/log.hpp", "#include <string_view>"),
        ]
        for path, text in right:
            with self.subTest(path=path, text=text):
                self.assertEqual(rules.kernel_problems(Path(path), text), [])
        command = Path("bindings/command/main.cpp")
        self.assertEqual(len(rules.outside_problems(command, '#include "base/logger.hpp"')), 1)
        self.assertEqual(len(rules.outside_problems(command, "#include <TDF_Label.hxx>")), 1)
        self.assertEqual(rules.outside_problems(command, '#include "command/look.hpp"'), [])
        plugin = Path("plugin/session.cpp")
        self.assertEqual(len(rules.plugin_problems(plugin, '#include "geometry/step_tree.hpp"')), 1)
        self.assertEqual(rules.plugin_problems(plugin, "#include <TDF_Label.hxx>"), [])
        versions = '#include "geometry/occt_versions.hpp"'
        self.assertEqual(rules.plugin_problems(plugin, versions), [])
        self.assertEqual(len(rules.outside_problems(command, versions)), 1)

    def TheSourcesKeepThem(self):
        self.assertGreater(len(list(rules.sources(TOP, "kernel"))), 10)
        self.assertEqual("\n".join(rules.problems(TOP)), "")


if __name__ == "__main__":
    unittest.main()
