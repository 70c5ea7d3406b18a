"""1,000 parts with 37 planted faults, 5 bad files and 3 duplicates: all found, no more."""

from __future__ import annotations

import os
import random
import signal
import subprocess
import sys
import tempfile
import time
import unittest
from pathlib import Path

import spotblue
from spotblue.shelf import ShelfReport
from spotblue.shelf.store import Store

import shelf_making

PROGRAM = Path(os.environ["SPOTBLUE_PROGRAM"])
PARTS = int(os.environ.get("SPOTBLUE_SHELF_PARTS", "1000"))
# The reader of Open CASCADE 7.8 survives a loop of edges called a direction; the part lacks a face then.
CRASHING = "bad-crashing.step"
SURVIVES = tuple(map(int, spotblue.open_cascade_version().split(".")[:2])) >= (7, 8)
LIMITS = {"seconds": 3.0, "memory_mb": 3000.0}
RUN = """
import sys, spotblue
spotblue.library(sys.argv[1], database=sys.argv[2], workers=2, seconds=3.0, memory_mb=3000.0)
"""


def flagged(report: ShelfReport) -> dict[str, set[str]]:
    """Kinds of the rows that do not conform, by file."""
    found: dict[str, set[str]] = {}
    for row in report.rows:
        if row.outcome != "conforming":
            found.setdefault(row.file, set()).add(row.kind)
    return found


class AShelfOfAThousand(unittest.TestCase):
    """One shelf, made once; its first run is one that is killed ten times."""

    made: shelf_making.Shelf
    folder: tempfile.TemporaryDirectory[str]
    resumed: ShelfReport
    kills: int

    @classmethod
    def setUpClass(cls) -> None:
        cls.folder = tempfile.TemporaryDirectory()
        place = Path(cls.folder.name)
        cls.made = shelf_making.make_shelf(PROGRAM, place / "shelf", PARTS)
        cls.made.bad -= {CRASHING} if SURVIVES else set()
        cls.database = place / "killed.db"
        cls.kills = cls.killed_runs(10)
        cls.resumed = spotblue.library(
            cls.made.manifest, database=cls.database, workers=2, **LIMITS
        )

    @classmethod
    def tearDownClass(cls) -> None:
        cls.folder.cleanup()

    @classmethod
    def killed_runs(cls, times: int) -> int:
        """Starts the run and kills it with SIGKILL at a random moment, so many times."""
        chance = random.Random(4)
        kills = 0
        for _ in range(times):
            words = [sys.executable, "-c", RUN, str(cls.made.manifest), str(cls.database)]
            process = subprocess.Popen(words)
            time.sleep(chance.uniform(0.3, 0.003 * PARTS))
            kills += process.poll() is None
            process.send_signal(signal.SIGKILL)
            process.wait()
        return kills

    def test_each_planted_fault_is_found_and_nothing_else_is_flagged(self) -> None:
        wanted = {file: {kind} for file, kind in self.made.faults.items()}
        for kinds in wanted.values():
            # Nothing measured on an open shell is good or bad.
            kinds |= {"size"} if "open shell" in kinds else set()
        wanted |= {file: {"bad file"} for file in self.made.bad}
        wanted |= {CRASHING: {"missing feature", "open shell"}} if SURVIVES else {}
        wanted |= {file: {"duplicate"} for file in self.made.duplicates}
        self.assertEqual(flagged(self.resumed), wanted)

    def test_what_was_planted_is_what_the_acceptance_asks_for(self) -> None:
        self.assertEqual(len(self.made.faults), 37)
        self.assertGreaterEqual(len(set(self.made.faults.values())), 8)
        self.assertEqual((len(self.made.bad) + SURVIVES, len(self.made.duplicates)), (5, 3))
        self.assertEqual(self.resumed.files, PARTS)

    def test_every_claim_has_its_row(self) -> None:
        lines = {row.line for row in self.resumed.rows}
        claims = len(self.made.manifest.read_text().splitlines()) - 1
        bad_claims = sum(
            line.split(",")[0] in self.made.bad
            for line in self.made.manifest.read_text().splitlines()
        )
        self.assertEqual(len(lines), claims - bad_claims + len(self.made.bad))

    def test_ten_runs_were_killed_and_the_result_is_that_of_one_that_was_not(self) -> None:
        self.assertEqual(self.kills, 10)
        whole = spotblue.library(
            self.made.manifest, database=Path(self.folder.name) / "whole.db", workers=2, **LIMITS
        )
        self.assertEqual(whole.worked, PARTS - len(self.made.duplicates))
        self.assertLess(self.resumed.worked, PARTS)
        slow = "bad-slow.step"  # its reason tells a time, or what gave out first
        self.assertEqual(
            [row for row in whole.rows if row.file != slow],
            [row for row in self.resumed.rows if row.file != slow],
        )

    def test_each_content_has_one_result(self) -> None:
        store = Store(self.database, spotblue._kernel.shelf.version)
        results = store.base.execute(
            "SELECT COUNT(*), COUNT(DISTINCT sha256) FROM result"
        ).fetchone()
        store.close()
        contents = PARTS - len(self.made.duplicates)
        self.assertEqual(results, (contents, contents))

    def test_an_unchanged_shelf_is_not_looked_at_again(self) -> None:
        again = spotblue.library(self.made.manifest, database=self.database, workers=2, **LIMITS)
        self.assertEqual(again.worked, 0)
        self.assertEqual(again.rows, self.resumed.rows)

    def test_a_changed_file_alone_is_looked_at_again(self) -> None:
        path = self.made.folder / "part-0000.step"
        before = path.read_text()
        database = Path(self.folder.name) / "changed.db"
        database.write_bytes(self.database.read_bytes())
        try:
            path.write_text(before.replace("Invented part", "Invented Part"))
            again = spotblue.library(self.made.manifest, database=database, workers=2, **LIMITS)
        finally:
            path.write_text(before)
        self.assertEqual(again.worked, 1)


if __name__ == "__main__":
    unittest.main()
