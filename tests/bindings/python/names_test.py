"""File names with blanks, umlauts, line ends and bytes that are no UTF-8, through every verb."""

from __future__ import annotations

import csv
import io
import json
import os
import shutil
import subprocess
import tempfile
import tomllib
import unittest
import xml.etree.ElementTree as ElementTree
from pathlib import Path

import demo
import spotblue
from spotblue import base

NAMES = {
    b"two words.step": "two words.step",
    "Büchse.step".encode(): "Büchse.step",
    b"R\xe4d.step": r"R\xE4d.step",
    b"two\nlines.step": r"two\x0Alines.step",
    b" before.step": r"\x20before.step",
    b"#remark.step": "#remark.step",
}


class Names(unittest.TestCase):
    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = Path(folder.name)
        for index, name in enumerate(NAMES):
            part = spotblue.RingPart(outside_mm=40 + index, inside_mm=20, thickness_mm=8)
            ring = spotblue.MockupPart(name="Ring", shape=part)
            place = spotblue.Placement(name="Ring", part="Ring", at_mm=0)
            mockup = spotblue.Mockup(title="ring", parts=[ring], placements=[place])
            spotblue.model(mockup, self.folder / os.fsdecode(name))

    def run_program(self, *words: str | bytes | Path, code: int = 0) -> tuple[str, str]:
        done = subprocess.run(
            [demo.PROGRAM, *words], capture_output=True, check=False, cwd=self.folder
        )
        self.assertEqual(done.returncode, code, done.stderr)
        return done.stdout.decode("utf-8"), done.stderr.decode("utf-8")

    def test_a_shown_name_stands_for_the_very_file(self) -> None:
        for name, shown in NAMES.items():
            self.assertEqual(base.shown_name(os.fsdecode(name)), shown)
            self.assertEqual(os.fsencode(base.path_of_shown(shown)), name)
        self.assertEqual(base.shown_text("one\ntwo"), r"one\x0Atwo")
        self.assertEqual(base.shown_text("turned \u202e"), r"turned \xE2\x80\xAE")
        self.assertEqual(base.shortened("0123456789abcdefghij", 17), "01234567 ... ghij")
        self.assertEqual(base.shortened("Büchse", 16), "Büchse")

    def test_no_message_is_endless_or_acts_on_a_terminal(self) -> None:
        told = spotblue.BadInputError("\x1b[2J\u202e" + "ü" * 100_000, "f" * 5000, rule="\x9b")
        self.assertLessEqual(len(str(told).encode()), 2000)
        self.assertTrue(str(told).startswith(r"\x1B[2J\xE2\x80\xAEüü"))
        self.assertEqual((told.file, told.rule), ("f" * 5000, r"\xC2\x9B"))
        with self.assertRaises(spotblue.BadInputError) as caught:
            base.parse_unit("\u202e" + "x" * 100_000)
        self.assertLessEqual(len(str(caught.exception).encode()), 2000)

    def test_json_and_html_show_what_a_terminal_would_act_on(self) -> None:
        job = spotblue.Job(title="<b>\x9b\u202e")
        text = spotblue.to_json(job)
        self.assertIn(r"<b>\u009b\u202e", text)
        self.assertEqual(spotblue.from_json(text).title, job.title)
        look = spotblue.look(self.folder / "two words.step")
        page = spotblue.judge(job, look)._repr_html_()
        self.assertIn(r"&lt;b&gt;\xC2\x9B\xE2\x80\xAE", page)

    def test_look_draft_and_check_take_each_name(self) -> None:
        for name, shown in NAMES.items():
            with self.subTest(name=shown):
                self.assertEqual(self.run_program("look", name)[0].split(",")[0], shown)
                found = json.loads(self.run_program("look", name, "--json")[0])
                self.assertEqual(found["file"]["name"], shown)
                job = name + b".job.toml"
                self.run_program("draft", name, "--output", job)
                text = (self.folder / os.fsdecode(job)).read_text(encoding="utf-8")
                self.assertEqual(tomllib.loads(text)["model"], shown)
                checked = json.loads(self.run_program("check", job, "--json", code=3)[0])
                self.assertEqual(checked["job"]["model"], shown)
                self.assertEqual(checked["job"]["file"], base.shown_name(os.fsdecode(job)))

    def test_python_takes_each_name(self) -> None:
        for name, shown in NAMES.items():
            with self.subTest(name=shown):
                file = self.folder / os.fsdecode(name)
                look = spotblue.look(file)
                self.assertEqual(look.model.file.name, base.shown_name(file))
                self.assertIn(shown.removeprefix(r"\x20"), repr(look))
                job = spotblue.Job(model=file)
                self.assertEqual(spotblue.from_json(spotblue.to_json(job)).model, file)

    def test_an_error_is_one_line_that_names_the_file(self) -> None:
        for verb in ("look", "draft", "check", "library"):
            words = self.run_program(verb, b"R\xe4der\n.step", code=2)[1]
            self.assertRegex(words, r"\Aspotblue: [^\n]*R\\xE4der\\x0A.step[^\n]*\n\Z")
        with self.assertRaises(spotblue.FileAccessError) as caught:
            spotblue.look(os.fsdecode(b"R\xe4der\n.step"))
        self.assertEqual(os.fsencode(base.path_of_shown(caught.exception.file)), b"R\xe4der\n.step")

    def test_a_shelf_of_them_is_looked_through_and_its_draft_run(self) -> None:
        text = self.run_program("library", ".", "--json", "j", "--csv", "c", "--junit", "x", "--html", "h")
        self.assertIn("6 rows on 6 files: 0 nonconforming, 0 undecided, 6 conforming", text[0])
        shown = sorted(NAMES.values())
        rows = json.loads((self.folder / "j").read_text(encoding="utf-8"))["rows"]
        self.assertEqual(sorted(row["file"] for row in rows), shown)
        table = list(csv.DictReader(io.StringIO((self.folder / "c").read_text(encoding="utf-8"))))
        self.assertEqual(sorted(row["file"] for row in table), shown)
        cases = ElementTree.parse(self.folder / "x").iter("testcase")
        self.assertEqual(sorted(case.attrib["classname"] for case in cases), shown)
        page = (self.folder / "h").read_text(encoding="utf-8")
        self.assertEqual([name for name in shown if f"<td>{name}<small>" not in page], [])
        again = self.run_program("library", "manifest.csv", code=3)[0]
        self.assertIn("18 rows on 6 files: 0 nonconforming, 18 undecided, 0 conforming", again)
        found = self.run_program("which", "manifest.shelf.db", "--shaft", "20", "--shaft-fit", "H7/h6")
        self.assertEqual([name for name in shown if name.removeprefix(r"\x20") + ", Ring" not in found[0]], [])

    def test_a_manifest_in_toml_names_them_too(self) -> None:
        rows = [f'[[claim]]\nfile = "{name}"\n'.replace("\\", "\\\\") for name in NAMES.values()]
        (self.folder / "m.toml").write_text("\n".join(rows), encoding="utf-8")
        self.assertIn("6 conforming", self.run_program("library", "m.toml")[0])

    def test_a_reader_that_has_gone_ends_the_shelf_quietly_and_its_files_are_written(self) -> None:
        command = f"{{ sleep 0.3; '{demo.PROGRAM}' library . --json rows.json; echo $? >&2; }} | true"
        done = subprocess.run(
            ["bash", "-c", command], cwd=self.folder, capture_output=True, text=True, check=False
        )
        self.assertEqual(done.stderr, "141\n")
        self.assertEqual(len(json.loads((self.folder / "rows.json").read_text())["rows"]), 6)


class ByteOrderMark(unittest.TestCase):
    def test_it_is_taken_at_the_start_of_every_kind_of_file(self) -> None:
        top = demo.folder()
        marked = top / "marked"
        marked.mkdir()
        plan = "hand-pump-crank"
        demo.step(plan)
        for file in (*top.glob(f"{plan}.*"), top / "out" / f"{plan}.step"):
            (marked / file.name).write_bytes(b"\xef\xbb\xbf" + file.read_bytes())
        (marked / "out").mkdir()
        shutil.copy(marked / f"{plan}.step", marked / "out")
        plain = spotblue.check(top / f"{plan}.job.toml")
        self.assertEqual(spotblue.check(marked / f"{plan}.job.toml").findings, plain.findings)
        self.assertEqual(demo.said("check", marked / f"{plan}.step")[:5], demo.said("check", demo.step(plan))[:5])
        spotblue.model(marked / f"{plan}.mockup.toml", marked / "made.step")
        shelf = f"file,feature\n{plan}.step,\n"
        (marked / "shelf.csv").write_text(shelf, encoding="utf-8-sig")
        (marked / "shelf.toml").write_text(f'[[claim]]\nfile = "{plan}.step"\n', encoding="utf-8-sig")
        for manifest in ("shelf.csv", "shelf.toml"):
            report = spotblue.library(marked / manifest)
            self.assertEqual([row.kind for row in report.rows if row.kind == "bad file"], [])


class MissingPackages(unittest.TestCase):
    def run_without(
        self, package: str, *words: str, why: str = ""
    ) -> subprocess.CompletedProcess[str]:
        """Where it is not installed, or fails to load for a reason (an expression)."""
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        (Path(folder.name) / f"{package}.py").write_text(
            f"raise {why or f'ModuleNotFoundError(name={package!r})'}\n"
        )
        paths = os.pathsep.join([folder.name, os.environ["PYTHONPATH"]])
        shutil.copy(demo.step("ink-disc-plan-b"), folder.name)
        return subprocess.run(
            words, cwd=folder.name, env=os.environ | {"PYTHONPATH": paths}, capture_output=True,
            text=True, check=False,
        )  # fmt: skip

    def test_jinja2_costs_the_page_and_not_the_report(self) -> None:
        (demo.folder() / "one.csv").write_text("file\nout/ink-disc-plan-b.step\n")
        demo.step("ink-disc-plan-b")
        done = self.run_without(
            "jinja2", demo.PROGRAM, "library", str(demo.folder() / "one.csv"), "--html", "page.html"
        )
        self.assertEqual(done.returncode, 1, done.stderr)  # the fouls planted in it
        self.assertIn("rows on 1 files", done.stdout)
        self.assertEqual(
            done.stderr,
            "spotblue: --html page.html: the Python package jinja2 is not installed, and the page "
            "needs it; apt-get install python3-jinja2\n",
        )

    def test_dask_is_one_line_and_2(self) -> None:
        (demo.folder() / "two.csv").write_text("file\nout/ink-disc-plan-b.step\n")
        demo.step("ink-disc-plan-b")
        done = self.run_without(
            "distributed", demo.PROGRAM, "library", str(demo.folder() / "two.csv"), "--scheduler",
            "tcp://127.0.0.1:1",
        )  # fmt: skip
        self.assertEqual(done.returncode, 2)
        self.assertRegex(done.stderr, r"\Aspotblue: [^\n]*python3-distributed\n\Z")

    def test_numpy_is_an_error_of_ours(self) -> None:
        code = (
            "import spotblue\ntry: spotblue.look('ink-disc-plan-b.step').radial_seats_array()\n"
            "except spotblue.Error as error: print(error.cure)"
        )
        done = self.run_without("numpy", "/usr/bin/python3", "-c", code)
        self.assertEqual(done.stdout, "apt-get install python3-numpy\n", done.stderr)

    def test_one_that_does_not_load_is_not_called_missing(self) -> None:
        code = (
            "import spotblue\ntry: spotblue.look('ink-disc-plan-b.step').radial_seats_array()\n"
            "except spotblue.Error as error: print(error)"
        )
        for why in ("ImportError('advice\\n\\nlibblas.so.3: no such file\\n')", "ValueError()"):
            done = self.run_without("numpy", "/usr/bin/python3", "-c", code, why=why)
            self.assertIn("the Python package numpy does not load", done.stdout, done.stderr)
            self.assertIn("libblas.so.3: no such file" if "lib" in why else "ValueError", done.stdout)
            self.assertNotIn("not installed", done.stdout)


if __name__ == "__main__":
    unittest.main()
