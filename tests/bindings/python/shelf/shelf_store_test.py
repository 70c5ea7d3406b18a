"""The database: nothing lost, nothing doubled, and one clear line for each way it can fail."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
import tempfile
import time
import unittest
from pathlib import Path

import spotblue
from spotblue.shelf.claim import Examined, Row
from spotblue.shelf.runner import Settings, ShelfFile, make_tasks
from spotblue.shelf.store import Store

KEY = ("a", "r")
FULL = """
import resource, signal, sys
from pathlib import Path
import spotblue
from spotblue.shelf.claim import Examined, Row
from spotblue.shelf.store import Store
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
store = Store(Path(sys.argv[1]), "1")
resource.setrlimit(resource.RLIMIT_FSIZE, (200_000, 200_000))
for number in range(10_000):
    try:
        done = Examined(f"{number:064}", [Row("size", "conforming", "x" * 500)])
        store.keep([((done.sha256, "r"), done)])
    except spotblue.FileAccessError as error:
        print(number)
        print(error)
        break
"""


class Keeping(unittest.TestCase):
    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.path = Path(folder.name) / "shelf.db"

    def open(self, version: str = "1") -> Store:
        store = Store(self.path, version)
        self.addCleanup(store.close)
        return store

    def test_a_result_comes_back_as_it_was_written(self) -> None:
        store = self.open()
        rows = [
            Row("size", "undecided", "44", "44.01", 0.001, claim=0),
            Row("foul", "nonconforming"),
        ]
        store.keep([(KEY, Examined("a", rows))])
        self.assertEqual(self.open().results(), {KEY: rows})

    def test_a_database_that_another_program_holds_is_told_within_ten_seconds(self) -> None:
        self.open().close()
        holder = sqlite3.connect(self.path, isolation_level=None)
        self.addCleanup(holder.close)
        holder.execute("PRAGMA locking_mode=EXCLUSIVE")
        holder.execute("BEGIN EXCLUSIVE")
        began = time.monotonic()
        with self.assertRaisesRegex(spotblue.FileAccessError, "another program holds it"):
            self.open().keep([(KEY, Examined("a", [Row("foul", "nonconforming")]))])
        self.assertLess(time.monotonic() - began, 15.0)

    def test_a_second_result_for_one_key_is_left_out(self) -> None:
        store = self.open()
        store.keep([(KEY, Examined("a", [Row("size", "conforming")]))])
        store.keep([(KEY, Examined("a", [Row("size", "nonconforming")]))])
        self.assertEqual(store.results(), {KEY: [Row("size", "conforming")]})

    def test_what_the_machine_had_no_room_for_is_held_for_this_run_only(self) -> None:
        store, rows = self.open(), [Row("bad file", "nonconforming")]
        store.lease([KEY], 60.0)
        store.keep([(KEY, Examined("a", rows, passing=True))])
        self.assertEqual(store.results(), {KEY: rows})
        store.close()
        self.assertEqual(self.open().results(), {})
        self.assertEqual(self.open().lease([KEY], 60.0), {KEY})

    def test_results_of_another_version_are_not_taken(self) -> None:
        self.open("1").keep([(KEY, Examined("a", [Row("size", "conforming")]))])
        self.assertEqual(self.open("2").results(), {})

    def test_a_lease_is_taken_once_among_runs_that_share(self) -> None:
        one, other = self.open(), self.open()
        other.owner = '["another machine", 1, "1"]'
        self.assertEqual(one.lease([KEY], 60.0), {KEY})
        self.assertEqual(other.lease([KEY], 60.0), set())

    def test_of_several_keys_those_that_are_free_are_taken(self) -> None:
        one, other = self.open(), self.open()
        other.owner = '["another machine", 1, "1"]'
        one.lease([KEY], 60.0)
        self.assertEqual(other.lease([KEY, ("b", "r")], 60.0), {("b", "r")})

    def test_the_lease_of_a_process_that_is_gone_is_free(self) -> None:
        one, other = self.open(), self.open()
        gone = subprocess.Popen(["/bin/true"])
        gone.wait()
        one.owner = one.owner.replace(one.owner.split(", ")[1], str(gone.pid))
        self.assertEqual(one.lease([KEY], 1e6), {KEY})
        self.assertEqual(other.lease([KEY], 60.0), {KEY})

    def test_what_is_done_is_not_leased(self) -> None:
        store = self.open()
        store.keep([(KEY, Examined("a"))])
        self.assertEqual(store.lease([KEY], 60.0), set())

    def test_a_file_that_is_no_database_is_left_as_it_is(self) -> None:
        self.path.write_text("a list of parts, kept by hand\n" * 100)
        with self.assertRaisesRegex(spotblue.FileAccessError, "not a database; name another"):
            Store(self.path, "1")
        self.assertIn("kept by hand", self.path.read_text())

    def test_another_program_s_database_is_left_as_it_is(self) -> None:
        with sqlite3.connect(self.path) as base:
            base.execute("CREATE TABLE stock (part TEXT)")
        with self.assertRaisesRegex(spotblue.FileAccessError, "no shelf of this spotblue"):
            Store(self.path, "1")
        with sqlite3.connect(self.path) as base:
            self.assertEqual(base.execute("SELECT COUNT(*) FROM sqlite_master").fetchone(), (1,))

    def test_a_folder_that_is_not_there_is_one_clear_line(self) -> None:
        with self.assertRaisesRegex(spotblue.FileAccessError, "unable to open .*; make its folder"):
            Store(self.path / "below" / "shelf.db", "1")

    def test_a_place_that_cannot_be_written_is_one_clear_line(self) -> None:
        with self.assertRaisesRegex(spotblue.FileAccessError, "^/proc/shelf.db: database: "):
            Store(Path("/proc/shelf.db"), "1")

    def test_a_name_that_no_file_can_have_is_one_clear_line(self) -> None:
        for name in ("a\0b.db", "x" * 300 + ".db"):
            with self.assertRaisesRegex(spotblue.FileAccessError, "database: .*; name another|look at"):
                Store(self.path.with_name(name), "1")

    def test_a_full_disk_is_one_clear_line_and_what_was_written_stays(self) -> None:
        words = [sys.executable, "-c", FULL, str(self.path)]
        done = subprocess.run(words, capture_output=True, text=True, check=True)
        number, message = done.stdout.strip().split("\n")
        self.assertGreater(int(number), 10)
        self.assertRegex(message, "database: (database or disk is full|disk I/O error); make room")
        self.assertEqual(len(self.open().results()), int(number))


class FilesBeside(unittest.TestCase):
    """A file that leaves shapes to files beside it is judged anew when one of these changes."""

    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = Path(folder.name)
        self.store = Store(self.folder / "shelf.db", "1")
        self.addCleanup(self.store.close)
        self.main = self.folder / "main.stp"
        self.main.write_text("#1=DOCUMENT_FILE('part.stp','',$,#2,'',$);")
        os.utime(self.main, (1e9, 1e9))  # long ago: its stamp is believed
        (self.folder / "part.stp").write_text("one")

    def key(self) -> tuple[str, str]:
        file = ShelfFile("main.stp", self.main, [])
        make_tasks([file], self.store, Settings())
        assert file.task is not None
        return file.task.key()

    def test_the_key_follows_the_part(self) -> None:
        first = self.key()
        self.assertEqual(self.key(), first)
        (self.folder / "part.stp").write_text("two")
        self.assertNotEqual(self.key(), first)
        (self.folder / "part.stp").write_text("one")
        self.assertEqual(self.key(), first)

    def test_a_part_that_comes_later_counts(self) -> None:
        (self.folder / "part.stp").unlink()
        first = self.key()
        (self.folder / "part.stp").write_text("one")
        self.assertNotEqual(self.key(), first)

    def test_other_files_do_not(self) -> None:
        first = self.key()
        (self.folder / "other.stp").write_text("one")
        self.assertEqual(self.key(), first)


if __name__ == "__main__":
    unittest.main()
