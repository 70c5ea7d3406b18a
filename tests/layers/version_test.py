"""The version stands in CMakeLists.txt and heads CHANGELOG.md; everything else is told it."""

import re
import subprocess
import unittest
from pathlib import Path

TOP = Path(__file__).resolve().parents[2]
VERSION = re.search(r"project\(spotblue VERSION ([\d.]+)", (TOP / "CMakeLists.txt").read_text())[1]
PLACES = {"CMakeLists.txt", "CHANGELOG.md"}
SKIPPED = {".git", "__pycache__", "out", "node_modules"}


def texts():
    for path in sorted(TOP.rglob("*")):
        inside = path.relative_to(TOP)
        folders = inside.parts[:-1]
        # README's wheel is built inside the package's own folder.
        made = any(one.startswith("build") or one.endswith(".egg-info") for one in folders)
        generated = made or SKIPPED & set(folders)
        if path.is_file() and not generated:
            yield inside.as_posix(), path.read_text(errors="replace")


def says(text, version):
    return re.search(rf"(?<![\d.]){re.escape(version)}(?![\d.]*\d)", text) is not None


class Version(unittest.TestCase):
    def StandsInOnePlace(self):
        found = [name for name, text in texts() if says(text, VERSION)]
        self.assertEqual([name for name in found if name not in PLACES], [])

    def HeadsTheListOfChanges(self):
        headings = re.findall(r"^## (\S+)", (TOP / "CHANGELOG.md").read_text(), re.MULTILINE)
        self.assertEqual(headings[0], VERSION)

    def OfThePythonPackageIsTheSame(self):
        told = subprocess.run(
            ["/usr/bin/python3", "setup.py", "--version"], cwd=TOP / "bindings/python",
            capture_output=True, text=True, check=True)  # fmt: skip
        self.assertEqual(told.stdout.splitlines()[-1], VERSION)


class Changes(unittest.TestCase):
    def ComeAsBreakingAddedAndFixed(self):
        text = (TOP / "CHANGELOG.md").read_text()
        for release in re.split(r"^## ", text, flags=re.MULTILINE)[1:]:
            with self.subTest(release=release.splitlines()[0]):
                sections = re.findall(r"^### (.+)$", release, re.MULTILINE)
                self.assertEqual(sections, ["Breaking", "Added", "Fixed"])


if __name__ == "__main__":
    unittest.main()
