"""The comparison of reports from two machines blanks versions and times and nothing else."""

import tempfile
import unittest
from importlib.machinery import SourceFileLoader
from importlib.util import module_from_spec, spec_from_loader
from pathlib import Path

SCRIPT = Path(__file__).resolve().parents[2] / ".ci" / "same_reports"
LOADER = SourceFileLoader("same_reports", str(SCRIPT))
same_reports = module_from_spec(spec_from_loader("same_reports", LOADER))
LOADER.exec_module(same_reports)

REPORT = """{
 "schema": 2,
 "spotblue": "4.1.0",
 "kernel": "7.6.3",
 "settings": {"limits": {"seconds": 120}},
 "radial_seats": [{"hole_mm": 44.0, "kernel": "7.6.3"}],
 "seconds": {"read": 0.1, "total": 0.2}
}
"""


class SameReports(unittest.TestCase):
    def compared(self, changed, name="one.look.json"):
        with tempfile.TemporaryDirectory() as folder:
            one, other = Path(folder, "one"), Path(folder, "other")
            for place, file, text in ((one, "one.look.json", REPORT), (other, name, changed)):
                place.mkdir()
                (place / file).write_text(text, encoding="utf-8")
            return same_reports.main(one, other)

    def VersionsAndTimesMayDiffer(self):
        other = REPORT.replace(' "kernel": "7.6.3",\n', ' "kernel": "7.8.1",\n')
        self.assertEqual(self.compared(other.replace("0.1,", "12e-3,").replace('"4.1.0"', '"4.2.0"')), 0)

    def NothingElseMay(self):
        for old, new in (("44.0", "44.0000001"), ("120", "121"), ('44.0, "kernel": "7.6.3"',
                         '44.0, "kernel": "7.8.1"'), ("}\n", "}")):
            self.assertEqual(self.compared(REPORT.replace(old, new)), 1, old)

    def LastDigitsAndTheModelsHashMayDiffer(self):
        one = REPORT.replace(' "settings"', ' "file": {"name": "a.step", "sha256": "ab12"},\n "settings"')
        two = one.replace("ab12", "cd34").replace("44.0", "44.00000000001")
        with tempfile.TemporaryDirectory() as folder:
            for place, text in (("one", one), ("two", two)):
                Path(folder, place).mkdir()
                Path(folder, place, "x.look.json").write_text(text, encoding="utf-8")
            self.assertEqual(same_reports.main(Path(folder, "one"), Path(folder, "two")), 0)

    def AReportThatIsMissingIsADifference(self):
        self.assertEqual(self.compared(REPORT, "other.look.json"), 1)

    def FoldersWithoutReportsAreNoAgreement(self):
        self.assertEqual(self.compared(REPORT, "model.step"), 2)


if __name__ == "__main__":
    unittest.main()
