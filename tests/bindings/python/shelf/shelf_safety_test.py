"""A shelf whose runs and workers are killed, whose files come and go, whose database is damaged.

In the end its rows are those of a run that nothing disturbed, or one clear line says what is wrong.
A short form in CI; SPOTBLUE_SHELF_KILLS=200 SPOTBLUE_SHELF_MOMENTS=50 is what the acceptance asks for.
"""

from __future__ import annotations

import os
import random
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import unittest
from pathlib import Path

import shelf_making
import spotblue
from shelf_damage import crashing, deep
from shelf_processes import processes_in
from spotblue.shelf import Row

PROGRAM = Path(os.environ["SPOTBLUE_PROGRAM"])
KILLS = int(os.environ.get("SPOTBLUE_SHELF_KILLS", "16"))
MOMENTS = int(os.environ.get("SPOTBLUE_SHELF_MOMENTS", "5"))
PARTS = 30
SIGNALS = (signal.SIGINT, signal.SIGTERM, signal.SIGHUP, signal.SIGKILL)
# Far from what a loaded machine needs: nothing here may depend on its speed.
LIMITS = ("--seconds=300", "--memory=3000")


class Disturbed(unittest.TestCase):
    @classmethod
    def setUpClass(cls) -> None:
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.place = Path(folder.name)
        cls.made = shelf_making.make_shelf(PROGRAM, cls.place / "shelf", PARTS, faults=False)
        for name, damage in (("part-0003.step", crashing), ("part-0007.step", deep)):
            path = cls.made.folder / name
            path.write_text(damage(path.read_text()))
        shutil.copy(cls.made.folder / "part-0000.step", cls.made.folder / "part-0005.step")
        start = time.monotonic()
        cls.whole = cls.rows(cls.place / "whole.db")
        cls.seconds = time.monotonic() - start

    @classmethod
    def rows(cls, database: Path) -> list[Row]:
        """Of a run that nothing disturbs."""
        return spotblue.library(
            cls.made.manifest, database=database, workers=2, seconds=300.0, memory_mb=3000.0
        ).rows

    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.temp = Path(folder.name) / "temp"
        self.temp.mkdir()
        self.database = Path(folder.name) / "shelf.db"
        self.chance = random.Random(20261129)

    def start(self) -> subprocess.Popen[str]:
        return subprocess.Popen(
            [PROGRAM, "library", self.made.manifest, "--database", self.database, "--workers", "2",
             *(word for pair in LIMITS for word in pair.split("="))],
            stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
            env=os.environ | {"TMPDIR": str(self.temp)},
        )  # fmt: skip

    def wait_for_a_moment(self, run: subprocess.Popen[str]) -> None:
        """Of its start, or twice as often of its work."""
        if self.chance.randrange(3) == 0:
            time.sleep(self.chance.uniform(0.0, 1.0))
            return
        end = time.monotonic() + 60.0
        while not any(self.temp.iterdir()) and run.poll() is None and time.monotonic() < end:
            time.sleep(0.005)
        time.sleep(self.chance.uniform(0.0, self.seconds))

    def wait_until_all_have_ended(self) -> None:
        end = time.monotonic() + 20.0
        while (left := processes_in(self.temp)) and time.monotonic() < end:
            time.sleep(0.02)
        self.assertEqual(left, {})

    def killed(self, run: subprocess.Popen[str], number: int) -> str:
        """Ends the run or one of its workers, or both at once; says which."""
        by = SIGNALS[number % len(SIGNALS)]
        workers = [process for process in processes_in(self.temp) if process != run.pid]
        target = ("run", "run", "worker", "worker", "both")[self.chance.randrange(5)] if workers else "run"
        for process in workers if target == "both" else workers[:1] if target == "worker" else []:
            try:
                os.kill(process, by)
            except ProcessLookupError:
                pass
        if target != "worker":
            run.send_signal(by)
        return target

    def test_kills_of_runs_and_workers(self) -> None:
        done = {"run": 0, "worker": 0, "both": 0}
        ended = left = 0
        while sum(done.values()) < KILLS:
            number = sum(done.values())
            run = self.start()
            self.wait_for_a_moment(run)
            if run.poll() is None:
                done[self.killed(run, number)] += 1
            out, err = run.communicate(timeout=600)
            self.assertNotIn("Traceback", err)
            self.assertLessEqual(err.count("\n"), 1, err)
            self.assertIn(run.returncode, (0, 1, 3, *(-by for by in SIGNALS)), out + err)
            self.wait_until_all_have_ended()
            left += len(list(self.temp.iterdir()))
            if run.returncode >= 0:  # begin anew, or nothing would be left to kill at
                ended += 1
                with self.subTest(number=number):
                    self.assertEqual(self.rows(self.database), self.whole)
                for path in self.database.parent.glob("shelf.db*"):
                    path.unlink()
        run = self.start()
        run.communicate(timeout=600)
        self.wait_until_all_have_ended()
        self.assertEqual(list(self.temp.iterdir()), [])
        self.assertEqual(self.rows(self.database), self.whole)
        print(f"{done} kills, {ended} runs ended, {left} folders left to the next", file=sys.stderr)

    def test_files_that_are_taken_away_and_put_back(self) -> None:
        folder, aside = self.made.folder, self.place / "aside"
        aside.mkdir()
        self.addCleanup(aside.rmdir)
        shown = 0
        for number in range(MOMENTS):
            run = self.start()
            self.wait_for_a_moment(run)
            names = [path.name for path in folder.glob("*.step")]
            names = names if number % 3 == 0 else self.chance.sample(names, 10)
            for name in names:
                (folder / name).rename(aside / name)
            time.sleep(self.chance.uniform(0.0, 0.3))
            for name in names:
                (aside / name).rename(folder / name)
            out, err = run.communicate(timeout=600)
            self.assertIn(run.returncode, (0, 1, 3), err)
            shown += "not read" in out or "missing file" in out
            with self.subTest(number=number):
                self.assertEqual(self.rows(self.database), self.whole)
            for path in self.database.parent.glob("shelf.db*"):
                path.unlink()
        print(f"{MOMENTS} moments, {shown} runs showed it", file=sys.stderr)

    def test_databases_with_flipped_bits(self) -> None:
        whole = (self.place / "whole.db").read_bytes()
        ends = {"as it was": 0, "salvaged": 0}
        for number in range(MOMENTS):
            data = bytearray(whole)
            for _ in range(self.chance.choice((1, 2, 8))):
                data[self.chance.randrange(len(data))] ^= 1 << self.chance.randrange(8)
            for path in self.database.parent.glob("shelf.*"):
                path.unlink()
            self.database.write_bytes(data)
            run = self.start()
            out, err = run.communicate(timeout=600)
            self.assertLessEqual(err.count("\n"), 1, err)
            database, end = self.database, "as it was"
            if run.returncode == 2:
                self.assertEqual(out, "")
                self.assertIn("shelf.salvaged.db", err)
                database, end = self.database.with_name("shelf.salvaged.db"), "salvaged"
            ends[end] += 1
            with self.subTest(number=number):
                self.assertEqual(self.rows(database), self.whole)
        print(f"{MOMENTS} databases with flipped bits: {ends}", file=sys.stderr)


if __name__ == "__main__":
    unittest.main()
