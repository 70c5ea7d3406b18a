"""The stubs of base, standards and mechanics are true and precise enough for strict checking."""

from __future__ import annotations

import ast
import importlib
import os
import re
import subprocess
import sys
import unittest
from pathlib import Path

import type_checker

HERE = Path(__file__).parent
MODULES = ["spotblue.base", "spotblue.standards", "spotblue.mechanics"]


def stub(module: str) -> ast.Module:
    name = module.removeprefix("spotblue.")
    folder = Path(os.environ["PYTHONPATH"]) / "spotblue" / "_numbers"
    return ast.parse((folder / f"{name}.pyi").read_text(encoding="utf-8"))


def parameters(function: ast.FunctionDef) -> list[str]:
    given = [argument.arg for argument in function.args.args]
    named = [argument.arg for argument in function.args.kwonlyargs]
    return given + (["*", *named] if named else [])


def documented(function: object, name: str) -> list[list[str]]:
    """Parameters of each overload, as the compiled function's own text has them."""
    line = rf"^(?:\d+\. )?{name}\((.*)\) -> "
    signatures = re.findall(line, function.__doc__ or "", re.MULTILINE)
    return [
        re.findall(r"(?:^|, )(\w+|\*)(?=:|,)", signature)
        for signature in signatures
        if signature != "*args, **kwargs"
    ]


class Stubs(unittest.TestCase):
    # The type checker cannot ask a compiled function for its parameters; its text has them.
    def test_name_the_parameters_that_the_functions_have(self) -> None:
        compared = 0
        for module in MODULES:
            found: dict[str, list[list[str]]] = {}
            for node in stub(module).body:
                if isinstance(node, ast.FunctionDef):
                    found.setdefault(node.name, []).append(parameters(node))
            for name, overloads in found.items():
                with self.subTest(module=module, name=name):
                    function = getattr(importlib.import_module(module), name)
                    self.assertEqual(overloads, documented(function, name))
                    compared += len(overloads)
        self.assertGreater(compared, 90)

    def test_name_the_fields_that_the_records_have(self) -> None:
        compared = 0
        for module in MODULES:
            for node in stub(module).body:
                if not isinstance(node, ast.ClassDef) or node.name.startswith("_"):
                    continue
                made = [n for n in node.body if isinstance(n, ast.FunctionDef)]
                for function in made:
                    if function.name == "__init__":
                        record = getattr(importlib.import_module(module), node.name)
                        fields = tuple(a.arg for a in function.args.kwonlyargs)
                        self.assertEqual(fields, record._fields, node.name)
                        record(**{name: getattr(record(), name) for name in fields})
                        compared += 1
        self.assertGreater(compared, 60)

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
