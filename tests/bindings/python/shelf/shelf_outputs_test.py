"""Results are written where they are wanted, and over nothing that a run reads or keeps."""

from __future__ import annotations

import csv
import errno
import io
import json
import os
import resource
import stat
import subprocess
import tempfile
import unittest
from pathlib import Path
from unittest import mock

import shelf_making
import spotblue
from spotblue.shelf import command, outputs
from spotblue.shelf.claim import CONFORMING, Row
from spotblue.shelf.reports import ShelfReport

PROGRAM = Path(os.environ["SPOTBLUE_PROGRAM"])
SIZES = {"seat": 40.0, "head": 50.0, "inner": 30.01, "long": 30.0, "short": 12.0}
MANIFEST = "file,feature\nbush.step,bore\n"


class InAFolder(unittest.TestCase):
    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = Path(folder.name)


class Refusing(InAFolder):
    @classmethod
    def setUpClass(cls) -> None:
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.text = shelf_making.Maker(PROGRAM, Path(folder.name)).part("bush", SIZES)

    def setUp(self) -> None:
        super().setUp()
        (self.folder / "bush.step").write_text(self.text)
        (self.folder / "other.step").write_text(self.text)
        (self.folder / "man.csv").write_text(MANIFEST)
        (self.folder / "here").symlink_to(".")
        (self.folder / "link.csv").symlink_to("man.csv")
        (self.folder / "hard.csv").hardlink_to(self.folder / "man.csv")

    def contents(self) -> dict[str, bytes]:
        return {path.name: path.read_bytes() for path in self.folder.iterdir() if path.is_file()}

    def ran(self, *words: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [PROGRAM, "library", "man.csv", *words], capture_output=True, text=True, check=False,
            cwd=self.folder,
        )  # fmt: skip

    def refused(self, *words: str) -> str:
        before = self.contents()
        done = self.ran(*words)
        self.assertEqual((done.returncode, done.stdout), (2, ""), done.stderr)
        self.assertRegex(done.stderr, r"\Aspotblue: [^\n]+\n\Z")
        self.assertEqual(self.contents(), before)  # nothing was done: there is no database
        return done.stderr

    def test_a_report_over_the_manifest_however_it_is_spelt(self) -> None:
        whole = str(self.folder / "man.csv")
        for target in ("man.csv", "./here/./man.csv", whole, "link.csv", "here/man.csv", "hard.csv"):
            with self.subTest(target=target):
                said = self.refused("--csv", target)
                self.assertIn(f"--csv {target}: this is the manifest man.csv, which would", said)
                self.assertIn("give another name", said)

    def test_a_report_over_a_model_that_a_claim_names(self) -> None:
        for option in ("--csv", "--json", "--junit", "--html"):
            with self.subTest(option=option):
                said = self.refused(option, "here/bush.step")
                self.assertIn(f"{option} here/bush.step: this is a model of the shelf", said)

    def test_a_report_over_a_model_that_no_claim_names(self) -> None:
        self.assertIn("--csv other.step: this is a model", self.refused("--csv", "other.step"))

    def test_a_report_over_the_database_or_a_part_of_it(self) -> None:
        for target in ("x.db", "here/x.db", "x.db-wal", "x.db-shm"):
            with self.subTest(target=target):
                said = self.refused("--database", "x.db", "--html", target)
                self.assertIn("database", said)
        self.assertIn("man.shelf.db", self.refused("--csv", "man.shelf.db"))

    def test_a_report_over_any_other_database(self) -> None:
        (self.folder / "theirs").write_bytes(b"SQLite format 3\0" + bytes(100))
        self.assertIn("--csv theirs: this is a database", self.refused("--csv", "theirs"))

    def test_a_database_over_the_manifest_or_an_empty_model(self) -> None:
        (self.folder / "none.step").touch()
        (self.folder / "man.csv").write_text(MANIFEST + "none.step,\n")
        said = self.refused("--database", "here/none.step")
        self.assertIn("--database here/none.step: this is a model of the shelf", said)
        self.assertIn("this is the manifest", self.refused("--database", "link.csv"))

    def test_a_database_whose_parts_would_be_the_manifest_or_a_model(self) -> None:
        for end in ("-wal", "-shm", "-journal"):
            (self.folder / f"x.db{end}").write_text(MANIFEST)
            before = self.contents()
            done = subprocess.run(
                [PROGRAM, "library", f"x.db{end}", "--database", "x.db"], capture_output=True,
                text=True, check=False, cwd=self.folder,
            )  # fmt: skip
            self.assertEqual(done.returncode, 2)
            self.assertIn(f"x.db{end}: this is the manifest", done.stderr)
            self.assertEqual(self.contents(), before)

    def test_a_name_that_no_file_can_have_is_refused_in_one_line(self) -> None:
        with self.assertRaisesRegex(spotblue.FileAccessError, "--csv a.*b: embedded null byte; name"):
            outputs.write_result("a\0b", "text", "--csv")
        done = self.ran("--csv", "x" * 300)
        self.assertEqual(done.returncode, 2)
        self.assertRegex(done.stderr, r"\Aspotblue: --csv x+: [^\n]*ile name too long; [^\n]+\n\Z")

    def test_a_pipe_that_nothing_reads_is_told_and_stays(self) -> None:
        os.mkfifo(self.folder / "pipe")
        done = self.ran("--csv", "pipe")
        self.assertEqual(done.returncode, 2)
        told = r"\Aspotblue: [^\n]*pipe: it is a pipe that nothing reads; [^\n]+\n\Z"
        self.assertRegex(done.stderr, told)
        self.assertTrue(stat.S_ISFIFO(os.stat(self.folder / "pipe").st_mode))

    def test_python_refuses_such_a_database_too(self) -> None:
        man = self.folder / "man.csv"
        with self.assertRaisesRegex(spotblue.BadInputError, "this is the manifest"):
            spotblue.library(man, database=self.folder / "here" / "man.csv")

    def test_two_reports_in_one_file(self) -> None:
        for one, other in (("k", "k"), ("k", "here/k"), ("-", "-"), ("/dev/stdout", "-")):
            with self.subTest(one=one, other=other):
                said = self.refused("--csv", one, "--json", other)
                self.assertIn(f"--json {other}: --csv {one} goes there too", said)
                self.assertIn("give each a file of its own", said)

    def test_a_report_over_the_draft_of_a_folder(self) -> None:
        os.unlink(self.folder / "man.csv")
        os.rename(self.folder / "bush.step", self.folder / "a.step")
        done = subprocess.run(
            [PROGRAM, "library", ".", "--csv", "manifest.csv"], capture_output=True, text=True,
            check=False, cwd=self.folder,
        )  # fmt: skip
        self.assertEqual(done.returncode, 2)
        self.assertIn("--csv manifest.csv: this is the manifest", done.stderr)

    def test_a_device_takes_a_report_and_stays_one(self) -> None:
        done = self.ran("--json", "/dev/null", "--junit", "/dev/null", "--csv", "/dev/stderr")
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertIn("file,line,outcome", done.stderr)
        self.assertTrue(stat.S_ISCHR(os.stat("/dev/null").st_mode))

    def test_a_full_device_is_told_with_place_and_cure(self) -> None:
        done = self.ran("--csv", "/dev/full")
        self.assertEqual((done.returncode, done.stdout), (2, ""))
        self.assertRegex(done.stderr, r"\Aspotblue: --csv /dev/full: [^\n]*No space [^\n]+; make room[^\n]+\n\Z")
        self.assertTrue(stat.S_ISCHR(os.stat("/dev/full").st_mode))

    def test_a_full_or_closed_standard_output_is_told(self) -> None:
        for shell, words in (
            (">/dev/full", "standard output: no room is left there; make room"),
            (">&-", "standard output: it is closed; "),
            ("--csv - >/dev/full", "--csv -: no room is left there; make room"),
        ):
            with self.subTest(shell=shell):
                done = subprocess.run(
                    f"exec '{PROGRAM}' library man.csv {shell}", shell=True, capture_output=True,
                    text=True, check=False, cwd=self.folder,
                )  # fmt: skip
                self.assertEqual(done.returncode, 2, done.stderr)
                self.assertIn(f"spotblue: {words}", done.stderr)

    def test_a_report_to_the_file_that_standard_output_is_goes_after_what_is_in_it(self) -> None:
        (self.folder / "log").write_text("before\n")
        done = subprocess.run(
            f"exec '{PROGRAM}' library man.csv --csv /dev/stdout >> log", shell=True, check=False,
            cwd=self.folder,
        )  # fmt: skip
        self.assertEqual(done.returncode, 0)
        self.assertRegex((self.folder / "log").read_text(), r"\Abefore\nfile,line,outcome")

    def test_a_database_that_is_no_file_is_refused_in_one_line(self) -> None:
        os.mkfifo(self.folder / "pipe")
        for target in (".", "/dev/null", "pipe"):
            with self.subTest(target=target):
                said = self.refused("--database", target)
                self.assertIn(f"{target}: database: no regular file", said)
                self.assertIn("name another with --database", said)

    def test_the_parts_of_a_database_behind_a_link_are_kept_too(self) -> None:
        (self.folder / "sub").mkdir()
        (self.folder / "x.db").symlink_to("sub/true.db")
        said = self.refused("--database", "x.db", "--csv", "sub/true.db-wal")
        self.assertIn("--csv sub/true.db-wal: this is a part of the database", said)

    def test_a_standard_error_that_is_full_changes_no_exit_code(self) -> None:
        for words, code in (("man.csv", 0), ("gone.csv", 2)):
            done = subprocess.run(
                f"exec '{PROGRAM}' library {words} --progress 2>/dev/full", shell=True,
                capture_output=True, check=False, cwd=self.folder,
            )  # fmt: skip
            self.assertEqual(done.returncode, code)


class Cells(unittest.TestCase):
    @staticmethod
    def report(row: Row) -> ShelfReport:
        return ShelfReport("shelf.csv", [row], 1, 1, 0.0, Path("shelf.db"))

    def test_a_text_that_a_spreadsheet_would_run_has_an_apostrophe(self) -> None:
        for text in ("=1+1", "+A1", "-A1", "@SUM(A1)", "-1+2"):
            row = Row("size", CONFORMING, text, found="-0.0380", file="-5")
            first = next(csv.DictReader(io.StringIO(self.report(row).to_csv(), newline="")))
            self.assertEqual(first["wanted"], "'" + text)
            self.assertEqual(first["found"], "-0.0380")
            self.assertEqual(first["file"], "-5")

    def test_no_letter_ends_a_cell_or_a_row_before_its_end(self) -> None:
        text = self.report(Row("size", CONFORMING, "\r=1\t=2\n=3")).to_csv()
        self.assertNotRegex(text, "[\r\t]")
        self.assertEqual(text.count("\n"), 2)

    def test_letters_that_steer_a_terminal_are_escaped_in_json(self) -> None:
        row = Row("size", CONFORMING, "a\x9b31mb\u202ec")
        text = self.report(row).to_json()
        self.assertNotRegex(text, "[\x9b\u202e]")
        self.assertEqual(json.loads(text)["rows"][0]["wanted"], "a\x9b31mb\u202ec")

    def test_letters_that_steer_are_shown_as_bytes_on_pages(self) -> None:
        report = self.report(Row("size", CONFORMING, "a\x9b31m<b>\u202ec"))
        for page in (report.to_html(), report._repr_html_()):
            self.assertNotRegex(page, "[\x9b\u202e]|<b>")
            self.assertIn(r"a\xC2\x9B31m&lt;b&gt;\xE2\x80\xAEc", page)


class Complaining(unittest.TestCase):
    def test_no_complaint_is_longer_than_a_message_may_be(self) -> None:
        for message in ("\x9b" * 5000, "\ud800" * 5000, "ä" * 5000):
            read, write = os.pipe()
            stderr = os.dup(2)
            os.dup2(write, 2)
            try:
                command.complain(message)
            finally:
                os.dup2(stderr, 2)
                os.close(write)
                os.close(stderr)
            with open(read, "rb") as said:
                text = said.read()
            self.assertLessEqual(len(text), 2100)
            self.assertEqual(text.count(b"\n"), 1)


class Writing(InAFolder):
    def names(self) -> list[str]:
        return sorted(path.name for path in self.folder.iterdir())

    def test_a_link_stays_and_what_it_leads_to_is_replaced(self) -> None:
        (self.folder / "true").write_text("old")
        os.chmod(self.folder / "true", 0o640)
        (self.folder / "link").symlink_to("true")
        outputs.write_result(self.folder / "link", "new")
        self.assertTrue((self.folder / "link").is_symlink())
        self.assertEqual((self.folder / "true").read_text(), "new")
        self.assertEqual((self.folder / "true").stat().st_mode & 0o777, 0o640)
        self.assertEqual(self.names(), ["link", "true"])

    def test_a_name_that_standard_error_is_goes_after_what_is_in_it(self) -> None:
        with (self.folder / "log").open("w") as log:
            log.write("before\n")
            log.flush()
            saved = os.dup(2)
            os.dup2(log.fileno(), 2)
            try:
                outputs.write_result("/dev/stderr", "new\n")
            finally:
                os.dup2(saved, 2)
                os.close(saved)
        self.assertEqual((self.folder / "log").read_text(), "before\nnew\n")

    def test_a_hard_link_is_not_written_through(self) -> None:
        (self.folder / "one").write_text("old")
        (self.folder / "two").hardlink_to(self.folder / "one")
        outputs.write_result(self.folder / "two", "new")
        self.assertEqual((self.folder / "one").read_text(), "old")

    def test_a_link_to_what_is_not_there_makes_it(self) -> None:
        (self.folder / "link").symlink_to("true")
        outputs.write_result(self.folder / "link", "new")
        self.assertEqual((self.folder / "true").read_text(), "new")

    def test_a_pipe_is_written_to(self) -> None:
        pipe = self.folder / "pipe"
        os.mkfifo(pipe)
        with subprocess.Popen(["cat", pipe], stdout=subprocess.PIPE) as reader:
            outputs.write_result(pipe, "new")
            self.assertEqual(reader.communicate()[0], b"new")
        self.assertEqual(self.names(), ["pipe"])

    def test_what_cannot_be_written_leaves_the_old_and_no_draft(self) -> None:
        (self.folder / "out").write_text("old")
        soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
        resource.setrlimit(resource.RLIMIT_FSIZE, (1000, hard))  # ends writing as a full disk does
        try:
            with self.assertRaisesRegex(spotblue.MachineError, "--csv .*out: .*too large; make"):
                outputs.write_result(self.folder / "out", "new" * 5000, "--csv")
            with self.assertRaisesRegex(spotblue.MachineError, "other: .*too large; make"):
                outputs.write_new(self.folder / "other", "new" * 5000)
        finally:
            resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))
        self.assertEqual(self.names(), ["out"])
        self.assertEqual((self.folder / "out").read_text(), "old")

    def test_a_loop_of_links_and_a_folder_are_told(self) -> None:
        (self.folder / "loop").symlink_to("loop")
        for name in ("loop", "."):
            with self.assertRaises(spotblue.FileAccessError):
                outputs.write_result(self.folder / name, "new")
        self.assertEqual(self.names(), ["loop"])

    def test_a_new_file_is_written_over_nothing(self) -> None:
        new = self.folder / "new"
        outputs.write_new(new, "one")
        with self.assertRaisesRegex(spotblue.FileAccessError, "new: file exists"):
            outputs.write_new(new, "two")
        self.assertEqual((self.names(), new.read_text()), (["new"], "one"))

    def test_a_new_file_where_there_are_no_links(self) -> None:
        new = self.folder / "new"
        with mock.patch("os.link", side_effect=PermissionError(errno.EPERM, "")):
            outputs.write_new(new, "one")
            with self.assertRaises(spotblue.FileAccessError):
                outputs.write_new(new, "two")
        self.assertEqual((self.names(), new.read_text()), (["new"], "one"))


if __name__ == "__main__":
    unittest.main()
