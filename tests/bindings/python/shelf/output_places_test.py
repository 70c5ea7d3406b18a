"""Every output of every verb onto a full disk, a limit on files, a device, a pipe, a link and its inputs."""

from __future__ import annotations

import os
import resource
import shutil
import stat
import subprocess
import tempfile
import unittest
from collections.abc import Callable
from pathlib import Path

import shelf_making

PROGRAM = Path(os.environ["SPOTBLUE_PROGRAM"])
SIZES = {"seat": 40.0, "head": 50.0, "inner": 30.01, "long": 30.0, "short": 12.0, "sleeve": 40.05}
MOCKUP = 'title = "Invented part"\nunit = "mm"\n' + shelf_making.SHAPES["bush"]
SIZES_TABLE = """
[[sizes]]
feature = "Hub: bore 40"
class = "H7"
"""
OLD = "what was there before\n" * 50
ROOT = os.geteuid() == 0
# Words of each verb, its output last, and what it reads.
VERBS: dict[str, tuple[list[str], tuple[str, ...]]] = {
    "look": (["look", "part.step", "--output"], ("part.step",)),
    "look as JSON": (["look", "part.step", "--json", "--output"], ("part.step",)),
    "check": (["check", "job.toml", "--output"], ("job.toml", "part.step")),
    "check with sizes": (["check", "job.toml", "--with-sizes"], ("job.toml", "part.step")),
    "compare": (["compare", "job.toml", "job2.toml", "--output"], ("job.toml", "job2.toml", "part.step")),
    "model": (["model", "mockup.toml"], ("mockup.toml",)),
    **{
        f"library {option}": (
            ["library", "shelf.csv", "--database", "shelf.db", option],
            ("shelf.csv", "part.step", "shelf.db"),
        )
        for option in ("--csv", "--json", "--junit", "--html")
    },
}
DRAFT = ["draft", "part.step", "--output"]  # writes new files only


class Places(unittest.TestCase):
    @classmethod
    def setUpClass(cls) -> None:
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.made = Path(folder.name) / "made"
        text = shelf_making.Maker(PROGRAM, cls.made).part("pressed", SIZES)
        (cls.made / "part.step").write_text(text)
        (cls.made / "mockup.toml").write_text(MOCKUP)
        (cls.made / "shelf.csv").write_text("file,feature,size,class\npart.step,Hub: bore,40,H7\n")
        for job in ("job.toml", "job2.toml"):
            done = subprocess.run([PROGRAM, *DRAFT, job], cwd=cls.made, capture_output=True, check=True)
            assert done.returncode == 0
            with (cls.made / job).open("a") as stream:
                stream.write(SIZES_TABLE)
        subprocess.run(
            [PROGRAM, "library", "shelf.csv", "--database", "shelf.db"], cwd=cls.made,
            capture_output=True, check=False,
        )  # fmt: skip

    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = Path(folder.name) / "here"
        shutil.copytree(self.made, self.folder)
        (self.folder / "sub").mkdir()

    def ran(
        self, words: list[str], limit: Callable[[], None] | None = None
    ) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [PROGRAM, *words], cwd=self.folder, capture_output=True, text=True, check=False,
            preexec_fn=limit, timeout=120,
        )  # fmt: skip

    def refused(self, words: list[str], limit: Callable[[], None] | None = None) -> None:
        done = self.ran(words, limit)
        self.assertEqual(done.returncode, 2, done.stdout + done.stderr)
        lines = [line for line in done.stderr.splitlines() if not line.startswith("spotblue: note")]
        self.assertEqual(len(lines), 1, done.stderr)

    def drafts(self, folder: Path) -> list[str]:
        return [path.name for path in folder.iterdir() if path.name.startswith(".spotblue-")]

    def usual(self, words: list[str]) -> int:
        """Exit code where the output has a good place."""
        code = self.ran([*words, "usual.out"]).returncode
        (self.folder / "usual.out").unlink()
        self.assertIn(code, (0, 1, 3))
        return code

    def test_a_link_and_the_mode_of_what_it_leads_to_stay(self) -> None:
        for name, (words, _) in VERBS.items():
            true, link = self.folder / "sub" / "true", self.folder / "link"
            true.write_text(OLD)
            true.chmod(0o640)
            link.symlink_to("sub/true")
            with self.subTest(verb=name):
                self.assertIn(self.ran([*words, "link"]).returncode, (0, 1, 3))
                self.assertTrue(link.is_symlink())
                self.assertNotIn(OLD[:20], true.read_text())
                self.assertEqual(true.stat().st_mode & 0o777, 0o640)
            link.unlink()

    def test_its_own_inputs_by_whatever_name(self) -> None:
        for name, (words, inputs) in VERBS.items():
            for read in inputs:
                with self.subTest(verb=name, input=read):
                    true = self.folder / read
                    (self.folder / "hard").hardlink_to(true)
                    (self.folder / "link").symlink_to(read)
                    before = true.read_bytes()
                    for spelt in (read, f"./sub/../{read}", str(true), "hard", "link"):
                        self.refused([*words, spelt])
                        self.assertEqual(true.read_bytes(), before)
                        self.assertEqual(true.stat().st_nlink, 2)
                    (self.folder / "hard").unlink()
                    (self.folder / "link").unlink()

    def test_a_device_and_a_pipe_are_written_to_and_stay(self) -> None:
        pipe = self.folder / "pipe"
        os.mkfifo(pipe)
        for name, (words, _) in VERBS.items():
            with self.subTest(verb=name):
                usual = self.usual(words)
                self.assertEqual(self.ran([*words, "/dev/null"]).returncode, usual)
                self.refused([*words, "/dev/full"])
                with subprocess.Popen(["cat", pipe], stdout=subprocess.PIPE) as reader:
                    self.assertEqual(self.ran([*words, "pipe"]).returncode, usual)
                    self.assertGreater(len(reader.communicate()[0]), 20)
                self.assertTrue(stat.S_ISFIFO(pipe.stat().st_mode))
                for device in ("/dev/null", "/dev/full"):
                    self.assertTrue(stat.S_ISCHR(os.stat(device).st_mode))

    def test_a_limit_on_the_size_of_files_keeps_what_was_there(self) -> None:
        def limit() -> None:
            resource.setrlimit(resource.RLIMIT_FSIZE, (100, 100))

        for name, words in {name: words for name, (words, _) in VERBS.items()}.items():
            out = self.folder / "out"
            out.write_text(OLD)
            with self.subTest(verb=name):
                self.refused([*words, "out"], limit)
                self.assertEqual(out.read_text(), OLD)
                self.assertEqual(self.drafts(self.folder), [])

    @unittest.skipUnless(ROOT, "only root can make a small disk")
    def test_a_full_disk_keeps_what_was_there(self) -> None:
        disk = self.folder / "disk"
        disk.mkdir()
        subprocess.run(
            ["mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", str(disk)], check=True
        )
        self.addCleanup(subprocess.run, ["umount", str(disk)], check=True)
        (disk / "old").write_text(OLD)
        with (disk / "filler").open("wb", buffering=0) as filler:
            try:
                while filler.write(b"x" * 4096) == 4096:
                    pass
            except OSError:
                pass
        for name, (words, _) in VERBS.items():
            with self.subTest(verb=name):
                for target in ("disk/old", "disk/new"):
                    self.refused([*words, target])
                self.assertEqual((disk / "old").read_text(), OLD)
                self.assertEqual(sorted(path.name for path in disk.iterdir()), ["filler", "old"])

    def test_a_draft_is_written_over_nothing(self) -> None:
        (self.folder / "link").symlink_to("job.toml")
        before = {path.name: path.read_bytes() for path in self.folder.iterdir() if path.is_file()}
        for target in ("part.step", "job.toml", "link", "sub"):
            with self.subTest(target=target):
                self.refused([*DRAFT, target])
        after = {path.name: path.read_bytes() for path in self.folder.iterdir() if path.is_file()}
        self.assertEqual(after, before)


if __name__ == "__main__":
    unittest.main()
