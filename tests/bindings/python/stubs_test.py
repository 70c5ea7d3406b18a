"""The package's types agree with what is there, and serve a strict program."""

from __future__ import annotations

import ast
import tempfile
import unittest
from pathlib import Path

import type_checker

HERE = Path(__file__).resolve().parent


class StubsTest(unittest.TestCase):
    def test_the_stub_agrees_with_the_module(self) -> None:
        allowed = str(HERE / "stubtest_allowed.txt")
        result = type_checker.stubtest(
            "spotblue._kernel", "--allowlist", allowed, "--ignore-unused-allowlist"
        )
        self.assertEqual(result.returncode, 0, result.stdout + result.stderr)

    def test_no_type_is_left_open(self) -> None:
        stubs = sorted((type_checker.BUILD / "python" / "spotblue").glob("_*/*.pyi"))
        self.assertEqual(len(stubs), 6)
        for stub in stubs:
            for node in ast.walk(ast.parse(stub.read_text(encoding="utf-8"))):
                for said in (getattr(node, "annotation", None), getattr(node, "returns", None)):
                    if said is not None and getattr(node, "arg", "") != "other":  # of __eq__
                        self.assertNotIn(ast.unparse(said), ("object", "tuple", "list", "dict"))

    def test_a_strict_program_may_use_it(self) -> None:
        result = type_checker.strict(str(HERE / "consumer_models.py"))
        self.assertEqual(result.returncode, 0, result.stdout + result.stderr)

    def test_a_wrong_field_is_seen(self) -> None:
        with tempfile.TemporaryDirectory() as folder:
            wrong = Path(folder) / "wrong.py"
            wrong.write_text('import spotblue\nspotblue.look("a").seats.radial[0].clearance\n')
            result = type_checker.strict(str(wrong))
        self.assertIn('has no attribute "clearance"', result.stdout)

    def test_the_package_itself_is_strict(self) -> None:
        result = type_checker.strict("-p", "spotblue")
        self.assertEqual(result.returncode, 0, result.stdout + result.stderr)


if __name__ == "__main__":
    unittest.main()
