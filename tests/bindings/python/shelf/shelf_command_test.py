"""`spotblue library` and `spotblue which` as a person runs them."""

from __future__ import annotations

import csv
import json
import os
import shutil
import subprocess
import tempfile
import unittest
import xml.etree.ElementTree as ElementTree
from pathlib import Path
from unittest import mock

import shelf_making
from spotblue.base import path_of_shown
from spotblue.shelf import command
from spotblue.shelf.manifest import read_manifest

PROGRAM = Path(os.environ["SPOTBLUE_PROGRAM"])
SIZES = {"seat": 40.0, "head": 50.0, "inner": 30.01, "long": 30.0, "short": 12.0}
HEAD = "file,feature,size,class,tolerance,notes\n"
GOOD = "bush.step,bore 30,30,H7,,\n"
WRONG = "bush.step,outside 40,40,r6,,should be pressed\n"
OPEN = "bush.step,outside 50,50,,,\n"


class Running(unittest.TestCase):
    @classmethod
    def setUpClass(cls) -> None:
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.text = shelf_making.Maker(PROGRAM, Path(folder.name)).part("bush", SIZES)

    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = Path(folder.name)
        (self.folder / "bush.step").write_text(self.text)

    def manifest(self, rows: str) -> str:
        path = self.folder / "shelf.csv"
        path.write_text(HEAD + rows)
        return str(path)

    def run_program(self, *words: str, code: int) -> subprocess.CompletedProcess[str]:
        done = subprocess.run([PROGRAM, *words], capture_output=True, text=True, check=False)
        self.assertEqual(done.returncode, code, done.stdout + done.stderr)
        if code == 2:
            self.assertEqual(done.stdout, "")
            self.assertRegex(done.stderr, r"\Aspotblue: [^\n]+\n\Z")
        return done

    def test_a_shelf_that_conforms_ends_with_0(self) -> None:
        done = self.run_program("library", self.manifest(GOOD), code=0)
        self.assertIn("1 rows on 1 files: 0 nonconforming, 0 undecided, 1 conforming", done.stdout)
        self.assertEqual(done.stderr, "")

    def test_something_nonconforming_ends_with_1_and_is_shown(self) -> None:
        done = self.run_program("library", self.manifest(GOOD + WRONG), code=1)
        self.assertIn("nonconforming  bush.step, line 3: size", done.stdout)
        self.assertIn("40 r6: 40.034 to 40.05 mm", done.stdout)  # ISO 286-2: r6 at 40, +50/+34 um
        self.assertIn("should be pressed", done.stdout)
        self.assertNotIn("conforming     bush", done.stdout)

    def test_only_undecided_ends_with_3(self) -> None:
        done = self.run_program("library", self.manifest(GOOD + OPEN), code=3)
        self.assertIn("give a class, limits or a tolerance", done.stdout)

    def test_a_missing_file_is_a_row_and_the_nearest_is_named(self) -> None:
        done = self.run_program("library", self.manifest(GOOD + "bosh.step,,,,,\n"), code=1)
        self.assertIn("bosh.step, line 3: missing file", done.stdout)
        self.assertIn("the nearest name there is bush.step", done.stdout)
        self.assertIn("1 conforming", done.stdout)

    def test_a_pipe_in_place_of_a_file_is_a_row(self) -> None:
        os.mkfifo(self.folder / "pipe.step")
        done = self.run_program("library", self.manifest("pipe.step,,,,,\n"), code=1)
        self.assertIn("no regular file", done.stdout)

    def test_a_missing_feature_is_a_row_and_the_nearest_is_named(self) -> None:
        done = self.run_program("library", self.manifest(GOOD + "bush.step,bore 35,,,,\n"), code=1)
        self.assertIn("line 3: missing feature", done.stdout)
        self.assertIn("the nearest is Bush: bore, 30.01 mm", done.stdout)

    def test_a_bad_manifest_is_one_line_with_place_and_cure(self) -> None:
        done = self.run_program("library", self.manifest("bush.step,boar 30,,,,\n"), code=2)
        self.assertIn("shelf.csv, line 2, feature: boar 30 is no feature's name", done.stderr)
        self.assertIn("the nearest is bore", done.stderr)

    def test_a_database_that_cannot_be_written_is_one_line(self) -> None:
        manifest = self.manifest(GOOD)
        done = self.run_program("library", manifest, "--database", "/proc/shelf.db", code=2)
        self.assertIn("/proc/shelf.db: database: ", done.stderr)

    def test_a_report_that_cannot_be_written_is_one_line_and_results_are_kept(self) -> None:
        manifest = self.manifest(GOOD)
        done = self.run_program("library", manifest, "--html", "/proc/no/shelf.html", code=2)
        self.assertIn("/proc/no/shelf.html: ", done.stderr)
        self.assertIn("looked at 0 files", self.run_program("library", manifest, code=0).stdout)

    def test_an_option_that_is_not_known_is_one_line(self) -> None:
        done = self.run_program("library", self.manifest(GOOD), "--quick", code=2)
        self.assertIn("spotblue library --help shows how", done.stderr)

    def test_help_teaches_by_example(self) -> None:
        for verb in ("library", "which"):
            self.assertIn("Examples:", self.run_program(verb, "--help", code=0).stdout)

    def test_progress_has_a_rate_when_it_is_asked_for(self) -> None:
        done = self.run_program("library", self.manifest(GOOD), "--progress", code=0)
        self.assertRegex(done.stderr, r"1 of 1 files, \d+\.\d a second")

    def test_reports_hold_the_same_rows(self) -> None:
        manifest = self.manifest(GOOD + WRONG + OPEN + "gone.step,,,,,\n")
        paths = {
            kind: str(self.folder / f"out.{kind}") for kind in ("csv", "json", "junit", "html")
        }
        words = [word for kind, path in paths.items() for word in (f"--{kind}", path)]
        self.run_program("library", manifest, *words, code=1)
        with open(paths["csv"], newline="") as stream:
            by_csv = [row["outcome"] for row in csv.DictReader(stream)]
        by_json = [row["outcome"] for row in json.loads(Path(paths["json"]).read_text())["rows"]]
        self.assertEqual(by_csv, ["conforming", "nonconforming", "undecided", "nonconforming"])
        self.assertEqual(by_json, by_csv)
        suite = ElementTree.parse(paths["junit"]).getroot()
        counts = {key: suite.get(key) for key in ("tests", "failures", "errors", "skipped")}
        self.assertEqual(counts, {"tests": "4", "failures": "1", "errors": "1", "skipped": "1"})
        self.assertEqual(
            [len(suite.findall(f"testcase/{tag}")) for tag in ("failure", "error", "skipped")],
            [1, 1, 1],
        )

    def test_the_overview_says_outcomes_by_word_and_sign_and_escapes_names(self) -> None:
        page = self.folder / "out.html"
        rows = GOOD + WRONG + '"<b>.step",,,,,"a & b"\n'
        self.run_program("library", self.manifest(rows), "--html", str(page), code=1)
        text = page.read_text()
        self.assertIn('<span class="sign">!</span>nonconforming', text)
        self.assertIn("&lt;b&gt;.step", text)
        self.assertIn("a &amp; b", text)
        self.assertNotIn("http", text.replace("http-equiv", ""))

    def test_a_dash_writes_a_report_in_place_of_the_text(self) -> None:
        done = self.run_program("library", self.manifest(GOOD), "--json", "-", code=0)
        self.assertEqual(json.loads(done.stdout)["outcomes"]["conforming"], 1)

    def test_a_folder_is_surveyed_and_the_draft_runs(self) -> None:
        (self.folder / "torn.step").write_text(self.text[:2000])
        done = self.run_program("library", str(self.folder), code=1)
        self.assertIn("torn.step, line 2: bad file", done.stdout)
        draft = self.folder / "manifest.csv"
        rows = list(csv.reader(draft.read_text().splitlines()))
        self.assertIn(["bush.step", "Bush: bore", "30.01", "", "", ""], rows)
        self.assertEqual([row[0] for row in rows if "not read" in row[5]], ["torn.step"])
        self.run_program("library", str(draft), code=1)

    def test_a_draft_holds_no_formula_and_names_the_same_files_and_features(self) -> None:
        names = ["=1+2.step", "+a.step", "-b.step", "@c.step", "'=d.step", "''-e.step", "x\u202ey.step"]
        made = {"=SUM(A1)": "=1+2.step", "@'\\x\\D": "x\u202ey.step"}
        for name in names:
            text = self.text
            for part, file in made.items():
                text = text.replace("'bush'", f"'{part}'") if file == name else text
            (self.folder / name).write_text(text)
        (self.folder / "bush.step").unlink()
        self.run_program("library", str(self.folder), code=3)
        draft = (self.folder / "manifest.csv").read_text()
        self.assertNotRegex(draft, "\u202e")
        for row in csv.reader(draft.splitlines()):
            for cell in row:
                self.assertNotRegex(cell, r"\A[=+@-]")
        read = read_manifest(self.folder / "manifest.csv")
        files = {str(path_of_shown(claim.file)) for claim in read.claims}
        self.assertEqual(files, set(names))
        done = self.run_program("library", str(self.folder / "manifest.csv"), code=3)
        self.assertNotIn("missing", done.stdout)
        self.assertNotIn("no such feature", done.stdout)

    def test_a_draft_never_overwrites_a_manifest(self) -> None:
        kept = self.folder / "manifest.csv"
        kept.write_text(HEAD + GOOD)
        done = self.run_program("library", str(self.folder), code=2)
        self.assertIn("is there already and is kept", done.stderr)
        self.assertEqual(kept.read_text(), HEAD + GOOD)

    def test_which_finds_the_bush_and_says_what_to_cut(self) -> None:
        self.run_program("library", self.manifest(GOOD), code=0)
        database = str(self.folder / "shelf.shelf.db")
        words = ("which", database, "--shaft", "30.1", "--shaft-fit", "0.02 to 0.06")
        self.run_program(*words, code=1)
        done = self.run_program(*words, "--cut", "0.5", code=0)
        # 30.1 + 0.04 - 30.01
        self.assertIn("Bush: bore (30.0100): cut 0.1300 to bore 30.1400, clearance 0.0400", done.stdout)

    def test_nothing_is_said_of_a_cut_that_was_not_asked_for(self) -> None:
        self.run_program("library", self.manifest(GOOD), code=0)
        words = ("which", str(self.folder / "shelf.shelf.db"), "--shaft", "99", "--shaft-fit", "H7/g6")
        self.assertEqual(self.run_program(*words, code=1).stdout, "nothing on the shelf fits\n")
        done = self.run_program(*words, "--cut", "0.1", code=1)
        self.assertEqual(done.stdout, "nothing on the shelf fits, nor would after that cut\n")

    def test_text_is_in_inches_where_they_are_asked_for_and_json_in_mm(self) -> None:
        manifest = self.manifest("bush.step,bore 30 mm,30 mm,H7,,30 mm stock\n")
        words = ("library", manifest, "--unit", "in", "--every")
        text = self.run_program(*words, code=0).stdout
        # ISO 286-2: 30 H7 is +0.021/0; 30.00 / 25.4 = 1.18110, 30.021 / 25.4 = 1.18193.
        self.assertIn("wanted  1.1811 in H7: 1.1811 to 1.18193 in", text)
        self.assertIn("of      Bush: bore\n", text)
        self.assertIn("found   1.1815 in", text)  # 30.01 / 25.4 = 1.18150
        self.assertIn("margin  0.00039 in", text)  # 0.010 mm
        self.assertIn("notes   30 mm stock", text)
        rows = json.loads(self.run_program(*words, "--json", "-", code=0).stdout)["rows"]
        self.assertEqual(rows[0]["wanted"], "30 H7: 30 to 30.021 mm")
        words = ("which", str(self.folder / "shelf.shelf.db"), "--unit", "in", "--cut", "0.5")
        text = self.run_program(
            *words, "--shaft", "30.1 mm", "--shaft-fit", "0.02 mm to 0.06 mm", code=0
        ).stdout
        # As in mm below: cut 0.13 to 30.14, clearance 0.04, margin 0.02.
        self.assertIn("bore (1.18150): cut 0.00512 to bore 1.18661, clearance 0.00157 to", text)
        self.assertIn("margin 0.00079 in", text)

    def test_a_draft_in_inches_says_so(self) -> None:
        self.run_program("library", str(self.folder), "--unit", "in", code=0)
        draft = self.folder / "manifest.csv"
        self.assertIn("bush.step,Bush: bore,1.1815 in,", draft.read_text())
        for unit in ("mm", "in"):
            done = self.run_program("library", str(draft), "--unit", unit, code=3)
            self.assertNotIn("nonconforming  ", done.stdout)

    def test_a_limit_that_makes_no_sense_is_one_line(self) -> None:
        for option, value, told in (
            ("--seconds", "0", "takes a number of more than 0"),
            ("--seconds", "1e9", "seconds: 1e+09 is more than 1e+06"),
            ("--memory", "0", "takes a number of more than 0"),
            ("--uncertainty", "1e7", "uncertainty: 1e+07 mm makes no sense"),
        ):
            done = self.run_program("library", self.manifest(GOOD), option, value, code=2)
            self.assertIn(told, done.stderr)

    def test_a_fault_of_our_own_is_one_line_and_never_a_finding(self) -> None:
        with (
            mock.patch.object(command, "run_which", side_effect=KeyError("x")),
            mock.patch.object(command, "complain") as said,
        ):
            self.assertEqual(command.main(["which"]), 2)
        self.assertIn("KeyError: 'x'; this is a fault of spotblue", said.call_args[0][0])

    def test_without_the_python_package_it_says_so(self) -> None:
        alone = self.folder / "spotblue"
        shutil.copy(PROGRAM, alone)
        done = subprocess.run([alone, "which", "x"], capture_output=True, text=True, check=False)
        self.assertEqual(done.returncode, 2)
        self.assertIn("the Python package spotblue is not there", done.stderr)


if __name__ == "__main__":
    unittest.main()
