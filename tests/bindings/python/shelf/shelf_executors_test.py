"""The same rows whoever does the work: processes, any executor, a Dask cluster, two runs."""

from __future__ import annotations

import os
import signal
import socket
import sqlite3
import subprocess
import sys
import tempfile
import threading
import time
import unittest
from concurrent.futures import Executor, Future, ProcessPoolExecutor, ThreadPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from contextlib import closing
from pathlib import Path
from typing import Any
from unittest import mock

import spotblue
from spotblue.shelf import Row

import shelf_making

PROGRAM = Path(os.environ["SPOTBLUE_PROGRAM"])
PARTS = 60
RUN = """
import sys, spotblue
report = spotblue.library(sys.argv[1], database=sys.argv[2], workers=1)
print(report.worked)
"""


def wait_for_results(database: Path) -> None:
    """Until a run has written its first result, which it does at once: it is in its middle then."""
    end = time.monotonic() + 60.0
    while time.monotonic() < end:
        try:
            with closing(sqlite3.connect(f"file:{database}?mode=ro", uri=True)) as base:
                if base.execute("SELECT COUNT(*) FROM result").fetchone() > (0,):
                    return
        except sqlite3.Error:
            pass  # it is not there yet
        time.sleep(0.01)


class LosesEach(Executor):
    """An executor whose workers are lost under every file."""

    def __init__(self) -> None:
        self.asked = 0

    def submit(self, *_: Any, **__: Any) -> Future[Any]:
        self.asked += 1
        future: Future[Any] = Future()
        future.set_exception(ConnectionError("gone"))
        return future


class ForgetsEachOnce(Executor):
    """An executor that never answers when it is given a file for the first time."""

    def __init__(self) -> None:
        self.forgotten: set[str] = set()

    def submit(self, *given: Any, **_: Any) -> Future[Any]:
        examine, task = given
        future: Future[Any] = Future()
        if task.path in self.forgotten:
            future.set_result(examine(task))
        self.forgotten.add(task.path)
        return future


class OneShelf(unittest.TestCase):
    """One shelf and the rows that this machine's own processes give."""

    @classmethod
    def setUpClass(cls) -> None:
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.place = Path(folder.name)
        cls.made = shelf_making.make_shelf(PROGRAM, cls.place / "shelf", PARTS, faults=False)
        cls.rows = cls.run_rows("own.db", workers=2)

    @classmethod
    def run_rows(cls, database: str, **options: Any) -> list[Row]:
        return spotblue.library(cls.made.manifest, database=cls.place / database, **options).rows

    def test_a_process_pool_gives_the_same_rows(self) -> None:
        with ProcessPoolExecutor(2) as pool:
            self.assertEqual(self.run_rows("pool.db", executor=pool, workers=2), self.rows)

    def test_a_thread_pool_gives_the_same_rows(self) -> None:
        with ThreadPoolExecutor(2) as pool:
            self.assertEqual(self.run_rows("threads.db", executor=pool, workers=2), self.rows)

    def test_a_pool_that_breaks_in_the_middle_loses_nothing(self) -> None:
        with ProcessPoolExecutor(2) as pool:
            victim = pool.submit(os.getpid).result()

            def kill() -> None:
                wait_for_results(self.place / "broken.db")
                os.kill(victim, signal.SIGKILL)

            killer = threading.Thread(target=kill)
            killer.start()
            self.assertEqual(self.run_rows("broken.db", executor=pool, workers=2), self.rows)
            killer.join()
            with self.assertRaises(BrokenProcessPool):
                pool.submit(os.getpid)

    def test_files_whose_workers_are_lost_three_times_are_named(self) -> None:
        executor = LosesEach()
        rows = self.run_rows("lost.db", executor=executor, workers=2)
        self.assertEqual(executor.asked, 3 * PARTS)
        self.assertEqual({row.kind for row in rows}, {"not read"})
        self.assertIn("lost 3 times: ConnectionError", rows[0].found)
        self.assertEqual(self.run_rows("lost.db", workers=2), self.rows)

    def test_a_file_that_the_executor_forgets_is_given_to_it_again(self) -> None:
        executor = ForgetsEachOnce()
        with mock.patch("spotblue.shelf.schedule.lease_seconds", return_value=0.5):
            rows = self.run_rows("forgotten.db", executor=executor, workers=PARTS)
        self.assertEqual(len(executor.forgotten), PARTS)
        self.assertEqual(rows, self.rows)

    def test_two_runs_share_a_database_and_nothing_is_done_twice(self) -> None:
        words = [sys.executable, "-c", RUN, str(self.made.manifest), str(self.place / "shared.db")]
        runs = [subprocess.Popen(words, stdout=subprocess.PIPE, text=True) for _ in range(2)]
        worked = [int(run.communicate(timeout=200)[0]) for run in runs]
        self.assertEqual([run.returncode for run in runs], [0, 0])
        self.assertEqual(self.run_rows("shared.db"), self.rows)
        self.assertEqual(sum(worked), PARTS)

    def test_an_interrupt_ends_in_one_line_and_the_next_run_goes_on(self) -> None:
        database = self.place / "interrupted.db"
        words = [str(PROGRAM), "library", str(self.made.manifest), "--database", str(database)]
        run = subprocess.Popen(words, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
        wait_for_results(database)
        run.send_signal(signal.SIGINT)
        out, err = run.communicate(timeout=20)
        self.assertEqual((run.returncode, out), (-signal.SIGINT, ""))
        self.assertRegex(err, r"\Aspotblue: interrupted; [^\n]+\n\Z")
        self.assertEqual(self.run_rows("interrupted.db"), self.rows)

    def test_workers_of_the_kernel_that_are_killed_lose_nothing(self) -> None:
        killed: list[int] = []

        def kill_one_after_another() -> None:
            wait_for_results(self.place / "killed.db")
            for _ in range(3):
                found = subprocess.run(
                    ["pgrep", "-P", str(os.getpid()), "-f", "spotblue.shelf.worker"],
                    capture_output=True, text=True, check=False,
                ).stdout.split()  # fmt: skip
                if found:
                    killed.append(int(found[0]))
                    os.kill(killed[-1], signal.SIGKILL)
                time.sleep(0.2)

        killer = threading.Thread(target=kill_one_after_another)
        killer.start()
        rows = self.run_rows("killed.db", workers=2)
        killer.join()
        self.assertEqual(rows, self.rows)
        self.assertTrue(killed)


class NoCluster(unittest.TestCase):
    """Addresses that no scheduler answers at, as the verb meets them."""

    def refused(self, address: str) -> str:
        code = (
            "import sys\n"
            "from spotblue.shelf import command, executors\n"
            "executors.CONNECT_SECONDS = 2\n"
            "sys.exit(command.main(['library', *sys.argv[1:]]))\n"
        )
        with tempfile.TemporaryDirectory() as folder:
            manifest = Path(folder) / "man.csv"
            manifest.write_text("file\nbush.step\n")
            (Path(folder) / "bush.step").write_text("nothing looks into it")
            start = time.monotonic()
            done = subprocess.run(
                [sys.executable, "-c", code, f"={manifest}", f"--scheduler={address}"],
                capture_output=True, text=True, check=False, timeout=100,
            )  # fmt: skip
        self.assertLess(time.monotonic() - start, 20.0)  # not the client's own 30 s on top
        self.assertEqual((done.returncode, done.stdout), (2, ""))
        self.assertRegex(done.stderr, r"\Aspotblue: [^\n]+; give the address it printed[^\n]+\n\Z")
        return done.stderr

    def test_what_is_no_address_is_one_line(self) -> None:
        self.assertIn("--scheduler foo: no scheduler answers: missing port", self.refused("foo"))

    def test_where_nothing_listens_is_one_line(self) -> None:
        self.assertIn("Timed out", self.refused("tcp://127.0.0.1:9"))

    def test_where_something_else_listens_is_one_line(self) -> None:
        with socket.create_server(("127.0.0.1", 0)) as silent:
            self.refused(f"tcp://127.0.0.1:{silent.getsockname()[1]}")


class ADaskCluster(unittest.TestCase):
    """A real local cluster of two processes with one thread each."""

    @classmethod
    def setUpClass(cls) -> None:
        from distributed import LocalCluster

        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.place = Path(folder.name)
        cls.made = shelf_making.make_shelf(PROGRAM, cls.place / "shelf", 2 * PARTS)
        limits = {"seconds": 3.0, "memory_mb": 3000.0}
        cls.limits: dict[str, Any] = limits
        cls.rows = spotblue.library(cls.made.manifest, database=cls.place / "own.db", **limits).rows
        cls.cluster = LocalCluster(
            n_workers=2, threads_per_worker=1, processes=True, host="127.0.0.1",
            dashboard_address=None,
        )  # fmt: skip
        cls.addClassCleanup(cls.cluster.close)

    def alike(self, rows: list[Row]) -> None:
        slow = "bad-slow.step"  # its reason tells a time, or what gave out first
        self.assertEqual(
            [row for row in rows if row.file != slow],
            [row for row in self.rows if row.file != slow],
        )

    def run_rows(self, database: str) -> list[Row]:
        return spotblue.library(
            self.made.manifest,
            database=self.place / database,
            scheduler=self.cluster.scheduler_address,
            **self.limits,
        ).rows

    def test_the_cluster_gives_the_same_rows(self) -> None:
        self.alike(self.run_rows("dask.db"))

    def test_a_worker_killed_in_the_middle_loses_nothing(self) -> None:
        victim = next(iter(self.cluster.workers.values())).pid
        killed = []

        def kill() -> None:
            wait_for_results(self.place / "dask-killed.db")
            os.kill(victim, signal.SIGKILL)
            killed.append(victim)

        killer = threading.Thread(target=kill)
        killer.start()
        rows = self.run_rows("dask-killed.db")
        self.assertEqual(killed, [victim])  # the run had not ended before
        killer.join()
        self.alike(rows)

    def test_an_address_where_nobody_answers_is_one_clear_line(self) -> None:
        with self.assertRaisesRegex(spotblue.BadInputError, "--scheduler .*: no scheduler answers"):
            spotblue.library(
                self.made.manifest, database=self.place / "none.db", scheduler="tcp://127.0.0.1:9"
            )


if __name__ == "__main__":
    unittest.main()
