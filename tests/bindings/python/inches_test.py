"""In an inch shop nothing metric is left in what the program says and writes."""

from __future__ import annotations

import re
import tempfile
import unittest
from pathlib import Path

import demo

METRIC = re.compile(r"(?<![\w.])(mm[23]?|um|k?N|MPa|GPa|N m|deg C|m/s)(?!\w)")
METRIC_KEY = re.compile(r"\b\w+_(mm|um|n|nm|mpa|gpa|c)\b(?= *=)")
PLANS = sorted(
    file.name.removesuffix(".mockup.toml")
    for file in (demo.SOURCE / "models").glob("*.mockup.toml")
)
PUMP = "hand-pump-crank"


def metric_lines(text: str) -> list[str]:
    return [line.strip() for line in text.splitlines() if METRIC.search(line)]


class InchesTest(unittest.TestCase):
    def test_no_report_on_a_demo_has_a_metric_unit(self) -> None:
        for plan in PLANS:
            with self.subTest(plan=plan):
                said = demo.said("check", "--group", "--unit", "in", demo.job(plan))
                self.assertIn("findings", said)
                self.assertEqual(metric_lines(said), [])

    def test_no_comparison_has_a_metric_unit(self) -> None:
        plans = [demo.job(plan) for plan in PLANS if plan != PUMP]
        said = demo.said("compare", "--unit", "in", *plans)
        self.assertIn("comes first", said)
        self.assertEqual(metric_lines(said), [])

    def test_no_look_has_a_metric_unit(self) -> None:
        for plan in PLANS:
            with self.subTest(plan=plan):
                said = demo.said("look", "--unit", "in", demo.step(plan))
                # The first line says of the file itself that it is written in mm.
                self.assertEqual(metric_lines(said.partition("\n")[2]), [])

    def test_the_materials_are_told_in_pounds_and_inches(self) -> None:
        said = demo.said("materials", "--unit", "in")
        self.assertIn("psi", said)
        self.assertEqual(metric_lines(said), [])

    def test_the_pumps_files_have_nothing_metric(self) -> None:
        for file in (demo.SOURCE / "models").glob(f"{PUMP}.*.toml"):
            with self.subTest(file=file.name):
                text = file.read_text(encoding="utf-8")
                self.assertEqual(metric_lines(text), [])
                self.assertIsNone(METRIC_KEY.search(text))

    def test_what_draft_writes_in_inches_is_taken_and_has_nothing_metric(self) -> None:
        with tempfile.TemporaryDirectory() as folder:
            model = demo.step(PUMP)
            drafted = model.parent / f"drafted-{Path(folder).name}.job.toml"
            demo.said("draft", model, "--unit", "in", "--output", drafted)
            text = drafted.read_text(encoding="utf-8")
            self.assertEqual(metric_lines(text), [])
            self.assertIsNone(METRIC_KEY.search(text))
            checked = demo.said("check", drafted)
            self.assertIn("findings", checked)
            self.assertEqual(metric_lines(checked), [])


if __name__ == "__main__":
    unittest.main()
