"""What models/demo builds (the target `shipped`) is enough for every command of README."""

import os
import subprocess
import unittest
from pathlib import Path

BUILD = Path(os.environ["SPOTBLUE_BUILD"])


class Shipped(unittest.TestCase):
    def test_makes_every_file_that_the_program_and_the_package_are_made_of(self) -> None:
        graph = subprocess.run(
            ["ninja", "-C", str(BUILD), "-t", "graph", "shipped"],
            capture_output=True, text=True, check=True,
        ).stdout  # fmt: skip
        used = [BUILD / "bin/spotblue", *(BUILD / "lib").rglob("*.so")]
        used += (BUILD / "python/spotblue").rglob("*")
        built = [one for one in used if one.is_file() and not one.is_symlink()]
        names = {one.relative_to(BUILD).as_posix() for one in built if one.suffix != ".pyc"}
        self.assertGreater(len(names), 5)
        self.assertEqual({one for one in names if f'label="{one}"' not in graph}, set())


if __name__ == "__main__":
    unittest.main()
