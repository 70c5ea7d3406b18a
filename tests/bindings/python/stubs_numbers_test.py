"""The stubs of base, standards and mechanics are true and precise enough for strict checking."""

from __future__ import annotations

import subprocess
import sys
import unittest
from pathlib import Path

import type_checker

HERE = Path(__file__).parent
MODULES = ["spotblue.base", "spotblue.standards", "spotblue.mechanics"]


class Stubs(unittest.TestCase):
    def test_say_what_the_modules_have(self) -> None:
        done = type_checker.stubtest(*MODULES)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)

    def test_let_a_user_s_program_pass_the_strict_check(self) -> None:
        done = type_checker.strict(str(HERE / "consumer_numbers.py"))
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)

    def test_refuse_each_wrong_use(self) -> None:
        file = HERE / "refused_numbers.py"
        done = type_checker.strict(str(file))
        wrong = {
            number
            for number, line in enumerate(file.read_text(encoding="utf-8").splitlines(), 1)
            if "  # " in line
        }
        refused = {
            int(line.split(":")[1]) for line in done.stdout.splitlines() if ": error:" in line
        }
        self.assertEqual(refused, wrong, done.stdout)

    def test_the_user_s_program_runs(self) -> None:
        words = [sys.executable, str(HERE / "consumer_numbers.py")]
        done = subprocess.run(words, capture_output=True, text=True, check=False)
        self.assertTrue(done.stdout.rstrip().endswith(" conforming"), done.stdout + done.stderr)


if __name__ == "__main__":
    unittest.main()
