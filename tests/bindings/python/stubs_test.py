"""The package's types agree with what is there, and serve a strict program."""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

HERE = Path(__file__).resolve().parent
PACKAGE = Path(os.environ["SPOTBLUE_BUILD"]) / "python"


# One for all tests here: numpy's types alone take the checker twenty seconds to read.
CACHE = tempfile.TemporaryDirectory()


def said(*words: str | Path) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", *map(str, words)],
        check=False,
        capture_output=True,
        text=True,
        cwd=PACKAGE,
        env=os.environ | {"MYPY_CACHE_DIR": CACHE.name},
    )


class StubsTest(unittest.TestCase):
    def test_the_stub_agrees_with_the_module(self) -> None:
        allowed = HERE / "stubtest_allowed.txt"
        result = said(
            "mypy.stubtest", "spotblue._kernel", "--allowlist", allowed, "--ignore-unused-allowlist"
        )
        self.assertEqual(result.returncode, 0, result.stdout + result.stderr)

    def test_a_strict_program_may_use_it(self) -> None:
        result = said("mypy", "--strict", HERE / "consumer_models.py")
        self.assertEqual(result.returncode, 0, result.stdout + result.stderr)

    def test_a_wrong_field_is_seen(self) -> None:
        with tempfile.TemporaryDirectory() as folder:
            wrong = Path(folder) / "wrong.py"
            wrong.write_text('import spotblue\nspotblue.look("a").seats.radial[0].clearance\n')
            result = said("mypy", "--strict", wrong)
        self.assertIn('has no attribute "clearance"', result.stdout)

    def test_the_package_itself_is_strict(self) -> None:
        result = said("mypy", "--strict", "-p", "spotblue")
        self.assertEqual(result.returncode, 0, result.stdout + result.stderr)


if __name__ == "__main__":
    unittest.main()
