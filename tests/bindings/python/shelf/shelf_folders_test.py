"""Folders for temporary files: what killed runs have left is swept, and nothing of anybody else's."""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path
from unittest import mock

from spotblue.shelf import folders

MAKER = """
import os, sys
from spotblue.shelf import folders
print(folders.make()[0], flush=True)
if sys.argv[1] == "dies":
    os._exit(9)
sys.stdin.read()
"""
# Hands its folder on to a child and dies: the child lives and holds the lock, as a worker may.
LEAVER = """
import os, subprocess
from spotblue.shelf import folders
folder, lock = folders.make()
subprocess.Popen(["/bin/cat"], stdout=subprocess.DEVNULL, pass_fds=(lock,))
print(folder, flush=True)
os._exit(9)
"""


class Sweeping(unittest.TestCase):
    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.temp = Path(folder.name)
        patched = mock.patch.dict(os.environ, TMPDIR=folder.name)
        patched.start()
        self.addCleanup(patched.stop)
        self.addCleanup(folders.remove_all)

    def run_maker(self, program: str, *words: str) -> tuple[subprocess.Popen[str], Path]:
        run = subprocess.Popen(
            [sys.executable, "-c", program, *words], stdin=subprocess.PIPE, stdout=subprocess.PIPE,
            text=True, env=os.environ | {"TMPDIR": str(self.temp)},
        )  # fmt: skip
        assert run.stdout is not None
        folder = Path(run.stdout.readline().strip())
        (folder / "below").mkdir()
        (folder / "below" / "litter").touch()
        return run, folder

    def test_what_a_killed_process_has_left_is_swept(self) -> None:
        run, folder = self.run_maker(MAKER, "dies")
        run.communicate()
        folders.sweep()
        self.assertFalse(folder.exists())

    def test_what_a_living_process_uses_stays(self) -> None:
        run, folder = self.run_maker(MAKER, "lives")
        folders.sweep()
        self.assertTrue(folder.exists())
        run.communicate("")
        folders.sweep()
        self.assertFalse(folder.exists())

    def test_what_a_worker_of_a_killed_process_still_uses_stays(self) -> None:
        run, folder = self.run_maker(LEAVER)
        run.wait()
        folders.sweep()
        self.assertTrue(folder.exists())
        run.communicate("")  # the end of the child's input
        end = [folders.sweep() for _ in range(200) if folder.exists() and not os.sched_yield()]
        self.assertFalse(folder.exists(), len(end))

    def test_its_own_stay_and_go_when_they_are_removed(self) -> None:
        folder, _ = folders.make()
        folders.sweep()
        self.assertTrue(os.path.exists(folder))
        folders.remove(folder)
        folders.remove(folder)
        self.assertFalse(os.path.exists(folder))

    def test_one_of_its_own_number_from_an_earlier_life_goes(self) -> None:
        # As in a container, where each run may be process 7.
        old = self.temp / f"spotblue-shelf-{os.getpid()}-old"
        old.mkdir()
        folders.sweep()
        self.assertFalse(old.exists())

    def test_other_names_and_links_stay(self) -> None:
        gone = subprocess.Popen(["/bin/true"])
        gone.wait()
        precious = self.temp / "precious"
        precious.mkdir()
        (precious / "file").touch()
        (self.temp / f"spotblue-shelf-{gone.pid}-link").symlink_to(precious)
        for name in (f"spotblue-shelf-{gone.pid}", "spotblue-shelf-x-y", f"spotblue-{gone.pid}-abc"):
            (self.temp / name).mkdir()
        (self.temp / f"spotblue-shelf-{gone.pid}-file").touch()
        before = sorted(self.temp.rglob("*"))
        folders.sweep()
        self.assertEqual(sorted(self.temp.rglob("*")), before)

    @unittest.skipIf(os.geteuid() != 0, "only root can make what is another's")
    def test_another_user_s_stay(self) -> None:
        gone = subprocess.Popen(["/bin/true"])
        gone.wait()
        theirs = self.temp / f"spotblue-shelf-{gone.pid}-theirs"
        theirs.mkdir()
        os.chown(theirs, 65534, 65534)
        folders.sweep()
        self.assertTrue(theirs.exists())


if __name__ == "__main__":
    unittest.main()
