"""Ctrl-C on library and which, at any moment: no traceback, one line at most, nobody left behind."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import tempfile
import time
import unittest
from collections.abc import Sequence
from pathlib import Path

import shelf_making
import spotblue
from shelf_processes import processes_in
from spotblue._kernel import shelf as kernel
from spotblue.shelf.claim import Examined
from spotblue.shelf.store import Store

PROGRAM = Path(os.environ["SPOTBLUE_PROGRAM"])
SCRIPT = Path(spotblue.__file__).parent / "shelf" / "__main__.py"
PARTS = 30
LINE = "spotblue: interrupted; what was done is kept, and the next run goes on there\n"


def held_back() -> None:
    """As a program that starts the script may do, so that none gets lost before its first line."""
    signal.pthread_sigmask(signal.SIG_BLOCK, [signal.SIGINT])


def ignored() -> None:
    """As a shell has it for what a script starts in the background."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)


class Interrupting(unittest.TestCase):
    @classmethod
    def setUpClass(cls) -> None:
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.place = Path(folder.name)
        cls.made = shelf_making.make_shelf(PROGRAM, cls.place / "shelf", PARTS, faults=False)
        store = Store(cls.place / "some.db", kernel.version)
        store.keep([(("a", "r"), Examined("a"))])
        store.close()

    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.temp = Path(folder.name) / "temp"
        self.temp.mkdir()
        self.database = Path(folder.name) / "shelf.db"

    def start(self, *words: str) -> subprocess.Popen[str]:
        return subprocess.Popen(
            [sys.executable, "-P", SCRIPT, *words], stdout=subprocess.PIPE, stderr=subprocess.PIPE,
            text=True, start_new_session=True, env=os.environ | {"TMPDIR": str(self.temp)},
            preexec_fn=held_back,
        )  # fmt: skip

    def library(self) -> subprocess.Popen[str]:
        return self.start(
            "library", f"={self.made.manifest}", f"--database={self.database}", "--workers=2"
        )

    def interrupted(
        self, run: subprocess.Popen[str], said: Sequence[str], by: signal.Signals = signal.SIGINT
    ) -> None:
        os.killpg(run.pid, by)
        out, err = run.communicate(timeout=20)
        # One that had its answer out may have ended before the signal came.
        self.assertIn(run.returncode, (-by, 0, 1) if out else (-by,))
        self.assertIn(err, [*said, ""] if out else said)
        # Workers see the end of their pipe, on a loaded machine a moment later.
        end = time.monotonic() + 15
        while processes_in(self.temp) and time.monotonic() < end:
            time.sleep(0.05)
        self.assertEqual(processes_in(self.temp), {})
        self.assertEqual(list(self.temp.iterdir()), [])

    def wait_for_workers(self) -> None:
        end = time.monotonic() + 60
        while not any(self.temp.iterdir()) and time.monotonic() < end:
            time.sleep(0.005)

    def test_which_at_any_moment_of_its_start(self) -> None:
        for number in range(12):
            run = self.start(
                "which", f"={self.place / 'some.db'}", "--hole=38", "--hole-fit=H7/s6"
            )
            time.sleep(0.04 * number)
            with self.subTest(number=number):
                self.interrupted(run, [""])

    def test_library_at_any_moment_of_its_start(self) -> None:
        for number in range(8):
            run = self.library()
            time.sleep(0.06 * number)
            with self.subTest(number=number):
                self.interrupted(run, ["", LINE])

    def test_library_while_its_workers_start_and_read(self) -> None:
        for number in range(6):
            # What an earlier run has kept would leave this one nothing to be interrupted at.
            self.database = self.temp.parent / f"shelf-{number}.db"
            run = self.library()
            self.wait_for_workers()
            time.sleep(0.05 * number)
            with self.subTest(number=number):
                self.interrupted(run, [LINE])
        rows = spotblue.library(self.made.manifest, database=self.database).rows
        self.assertEqual({row.outcome for row in rows}, {"conforming"})

    def test_library_twice_and_more(self) -> None:
        for pause in (0.0, 0.001, 0.01):
            run = self.library()
            self.wait_for_workers()
            for _ in range(4):
                os.killpg(run.pid, signal.SIGINT)
                time.sleep(pause)
            with self.subTest(pause=pause):
                self.interrupted(run, [LINE])

    def test_library_when_its_terminal_is_closed_or_it_is_told_to_end(self) -> None:
        for by in (signal.SIGHUP, signal.SIGTERM):
            run = self.library()
            self.wait_for_workers()
            with self.subTest(by=by):
                self.interrupted(run, ["", LINE], by)

    def test_library_while_another_program_holds_the_database(self) -> None:
        store = Store(self.database, kernel.version)
        self.addCleanup(store.close)
        store.base.execute("BEGIN EXCLUSIVE")
        run = self.library()
        time.sleep(2.0)
        start = time.monotonic()
        self.interrupted(run, [LINE])
        self.assertLess(time.monotonic() - start, 3.0)

    def test_where_it_is_ignored_it_stays_so(self) -> None:
        run = subprocess.Popen(
            [sys.executable, "-P", SCRIPT, "library", f"={self.made.manifest}",
             f"--database={self.database}"],
            stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
            preexec_fn=ignored,
        )  # fmt: skip
        for _ in range(10):
            time.sleep(0.1)
            run.send_signal(signal.SIGINT)
        _, err = run.communicate(timeout=60)
        self.assertEqual((run.returncode, err), (0, ""))


if __name__ == "__main__":
    unittest.main()
