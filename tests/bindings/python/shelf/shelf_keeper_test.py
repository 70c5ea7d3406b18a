"""A keeper and its worker process: a crash, a hang and greed cost one row, and nothing else."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import tempfile
import threading
import time
import unittest
from dataclasses import replace
from pathlib import Path
from unittest import mock

from spotblue.shelf import keeper, worker
from spotblue.shelf.claim import Claim, Examined, Limits, Task
from spotblue.shelf.keeper import Keeper

# A worker whose judging does what the file's name says.
WORKER = """
import os, subprocess, tempfile, time
from pathlib import Path
from spotblue.shelf import worker
from spotblue.shelf import keeper
from spotblue.shelf.claim import Examined, Row, bad_file

def judge(task):
    if "at it" in task.path:
        Path(os.environ["TMPDIR"], "at-it").write_text(str(os.getpid()))
    if "litter" in task.path:
        tempfile.mkdtemp()
    if "only apart" in task.path and not task.apart:
        if "dies" in task.path:
            os.abort()
        return Examined(task.sha256, [bad_file("not here")])
    if "crash" in task.path:
        os.abort()
    if "hang" in task.path:
        while True:
            pass
    if "with child" in task.path:
        subprocess.Popen(["/bin/sleep", "100"])
    if "sleep" in task.path:
        time.sleep(60)
    if "killed" in task.path:
        os.kill(os.getpid(), 9)
    if "greed" in task.path:
        bytearray(3_000_000_000)
    if "raise" in task.path:
        raise KeyError("no such thing")
    if "once" in task.path and not os.path.exists(task.path):
        open(task.path, "w").close()
        os._exit(3)
    print("noise between the answers", flush=True)
    return Examined(task.sha256, [Row("file", "conforming")])

worker.judge_file = judge
worker.serve()
"""


# A process that keeps a worker and does nothing against its own end.
KEEPER = """
import sys
from spotblue.shelf.claim import Claim, Limits, Task
from spotblue.shelf.keeper import Keeper
task = Task(sys.argv[2], "0" * 64, (Claim(1, "f"),), Limits(60.0, 1000.0), 0.0, "rules")
Keeper((sys.executable, sys.argv[1])).examine(task)
"""


def members(group: int) -> list[str]:
    """Living processes of a group."""
    found = []
    for process in Path("/proc").glob("[0-9]*"):
        try:
            words = (process / "stat").read_text().rpartition(")")[2].split()
        except OSError:  # it ended in the meantime
            continue
        if int(words[2]) == group and words[0] != "Z":
            found.append(process.name)
    return found


def task(name: str, seconds: float = 30.0) -> Task:
    return Task(name, "0" * 64, (Claim(1, name),), Limits(seconds, 1000.0), 0.0, "rules")


class Examining(unittest.TestCase):
    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = Path(folder.name)
        script = self.folder / "worker.py"
        script.write_text(WORKER)
        self.keeper = Keeper((sys.executable, str(script)))
        self.addCleanup(self.keeper.close)

    def only_row(self, done: Examined) -> tuple[str, str]:
        self.assertEqual(len(done.rows), 1)
        return done.rows[0].kind, done.rows[0].found

    def still_works(self) -> None:
        self.assertEqual(self.only_row(self.keeper.examine(task("good")))[0], "file")

    def test_a_worker_that_is_ended_by_a_signal_each_time_is_passing_and_names_it(self) -> None:
        for name, signal in (("crash", "Aborted"), ("killed", "Killed")):
            done = self.keeper.examine(task(name))
            kind, found = self.only_row(done)
            self.assertEqual((kind, done.passing), ("not read", True))
            self.assertIn(signal, found)
            self.still_works()

    def test_a_worker_that_cannot_be_started_is_passing(self) -> None:
        with mock.patch("subprocess.Popen", side_effect=OSError(11, "no room for a process")):
            done = self.keeper.examine(task("good"))
        self.assertEqual((self.only_row(done)[0], done.passing), ("not read", True))
        self.assertIn("no room for a process", done.rows[0].found)
        self.still_works()

    def test_a_file_that_only_waits_until_its_time_is_up_is_passing(self) -> None:
        self.still_works()
        done = self.keeper.examine(task("sleep", 0.5))
        self.assertEqual((self.only_row(done)[0], done.passing), ("not read", True))
        self.assertIn("waited", done.rows[0].found)
        self.still_works()

    def test_a_file_that_ends_the_worker_is_read_in_a_child_of_the_next(self) -> None:
        done = self.keeper.examine(task("dies, good only apart"))
        self.assertEqual(self.only_row(done)[0], "file")

    def test_a_file_that_fails_in_the_worker_is_read_in_a_child_and_the_worker_replaced(self) -> None:
        self.still_works()
        first = self.keeper.process
        done = self.keeper.examine(task("good only apart"))
        self.assertEqual(self.only_row(done)[0], "file")
        self.still_works()
        self.assertIsNot(self.keeper.process, first)

    def test_what_a_worker_leaves_in_the_temp_folder_goes_with_it(self) -> None:
        temp = self.folder / "temp"
        temp.mkdir()
        with mock.patch.dict(os.environ, TMPDIR=str(temp)):
            self.keeper.examine(task("litter, crash"))
            self.assertEqual(list(temp.iterdir()), [])
            self.keeper.examine(task("litter"))
            self.assertEqual(len(list(temp.iterdir())), 1)
        process = self.keeper.process
        assert process is not None and process.stdin is not None
        process.stdin.close()
        process.wait(10.0)
        self.assertEqual(list(temp.iterdir()), [])

    def test_what_a_thread_is_just_making_for_a_worker_goes_with_the_process(self) -> None:
        temp = self.folder / "made"
        temp.mkdir()
        made = threading.Event()

        def slowly(**_: str) -> str:
            (temp / "worker").mkdir()
            made.set()
            time.sleep(0.2)
            return str(temp / "worker")

        with (
            mock.patch.object(keeper, "_all", [self.keeper]),
            mock.patch.object(keeper, "_ending", False),
            mock.patch("tempfile.mkdtemp", slowly),
        ):
            thread = threading.Thread(target=self.keeper.examine, args=(task("good"),))
            thread.start()
            made.wait(10.0)
            keeper.kill_all()
            self.assertEqual(list(temp.iterdir()), [])
            thread.join(10.0)
        process = self.keeper.process
        self.assertTrue(process is None or process.wait(10.0) < 0)

    def test_a_hang_is_ended_and_is_a_row_that_names_the_limit(self) -> None:
        start = time.monotonic()
        done = self.keeper.examine(task("hang", 0.5))
        self.assertEqual(self.only_row(done), ("bad file", "took longer than 0.5 s"))
        self.assertFalse(done.passing)
        self.assertLess(time.monotonic() - start, 10.0)
        self.still_works()

    def test_greed_is_a_row_that_names_the_limit(self) -> None:
        kind, found = self.only_row(self.keeper.examine(task("greed")))
        self.assertEqual((kind, found), ("bad file", "needs more than 1000 MB"))
        self.still_works()

    def test_greed_beyond_its_workers_share_of_the_machine_is_passing_and_says_so(self) -> None:
        done = self.keeper.examine(replace(task("greed"), share_mb=500.0))
        self.assertTrue(done.passing)
        kind, found = self.only_row(done)
        self.assertEqual(kind, "not read")
        self.assertIn("more than the 500 MB", found)
        self.still_works()

    def test_greed_on_a_machine_that_has_no_more_is_passing(self) -> None:
        with mock.patch.object(worker, "judge_file", side_effect=MemoryError):
            self.assertFalse(worker.judged(task("good")).passing)
            with mock.patch.object(worker, "machine_lacks", return_value=True):
                self.assertTrue(worker.judged(task("good")).passing)
        self.assertFalse(worker.machine_lacks(1.0))
        self.assertTrue(worker.machine_lacks(1e9))

    def test_an_error_in_python_is_a_row_that_names_it(self) -> None:
        done = self.keeper.examine(task("raise"))
        self.assertEqual(self.only_row(done), ("not read", "KeyError: 'no such thing'"))
        self.assertTrue(done.passing)
        self.still_works()

    def test_a_worker_that_was_killed_by_others_is_tried_again(self) -> None:
        done = self.keeper.examine(task(str(self.folder / "once")))
        self.assertEqual(self.only_row(done)[0], "file")

    def test_one_worker_serves_many_files(self) -> None:
        self.still_works()
        first = self.keeper.process
        self.still_works()
        self.assertIs(self.keeper.process, first)

    def test_a_worker_at_work_and_what_it_started_end_however_its_keeper_does(self) -> None:
        temp = self.folder / "temp"
        temp.mkdir()
        for by in (signal.SIGKILL, signal.SIGTERM, signal.SIGHUP, signal.SIGINT):
            for name in ("at it, hang", "at it, with child, sleep"):
                run = subprocess.Popen(
                    [sys.executable, "-c", KEEPER, str(self.folder / "worker.py"), name],
                    stderr=subprocess.DEVNULL, env=os.environ | {"TMPDIR": str(temp)},
                )  # fmt: skip
                end = time.monotonic() + 60.0
                said = ""
                while not said and time.monotonic() < end:
                    time.sleep(0.02)
                    said = "".join(path.read_text() for path in temp.glob("*/at-it"))
                group = int(said)
                run.send_signal(by)
                run.wait(20.0)
                end = time.monotonic() + 10.0
                while (left := members(group)) and time.monotonic() < end:
                    time.sleep(0.02)
                with self.subTest(by=by, name=name):
                    self.assertEqual((left, list(temp.iterdir())), ([], []))

    def test_the_worker_ends_when_its_keeper_goes_away(self) -> None:
        self.still_works()
        process = self.keeper.process
        assert process is not None and process.stdin is not None
        process.stdin.close()
        self.assertEqual(process.wait(10.0), 0)


if __name__ == "__main__":
    unittest.main()
