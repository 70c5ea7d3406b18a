"""Nothing that is read, found or written depends on the locale."""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
import unittest
from functools import cache
from pathlib import Path
from typing import Any

import locales

PROGRAM = os.environ["SPOTBLUE_PROGRAM"]
HOST = os.environ["SPOTBLUE_LOCALE_HOST"]
SOURCE = Path(os.environ["SPOTBLUE_SOURCE"])
# A metric demo and one in inches have every form of number there is.
PLANS = ("hand-pump-crank", "ink-disc-plan-b")
# The user's locale in force, as in a notebook or a program with a window; then all that README shows.
IN_PYTHON = """
import json, locale, sys
locale.setlocale(locale.LC_ALL, "")
import spotblue
from spotblue import standards
said = [sorted(spotblue.Outcome.__members__), sorted(spotblue.FeatureKind.__members__)]
said += [str(standards.find_material("TIN BRONZE")), str(standards.find_material("Tin Bronze"))]
said += [spotblue.base.parse_length("1 5/16 in", "mm"), str(standards.limits(25.4, "js6"))]
plan = sys.argv[1]
spotblue.model(f"{plan}.mockup.toml", f"out/{plan}-python.step")
said += [json.loads(spotblue.look(f"out/{plan}-python.step").to_json())]
result = spotblue.check(f"{plan}.job.toml")
said += [json.loads(result.to_json()), result.to_text(), result.look.to_text()]
said += [json.loads(spotblue.library("shelf.csv", database=sys.argv[2]).to_json())]
print(json.dumps(said))
"""


def timeless(value: Any) -> Any:
    """Without the times that things took and the hashes of files that tell when they were made."""
    if isinstance(value, dict):
        left_out = ("seconds", "sha256")
        return {key: timeless(item) for key, item in value.items() if key not in left_out}
    return [timeless(item) for item in value] if isinstance(value, list) else value


def same_step(path: Path) -> str:
    """A STEP file's text but for its time."""
    return re.sub(r"'\d{4}-\d\d-\d\dT[\d:]+'", "'time'", path.read_text(encoding="utf-8"))


@cache
def models() -> Path:
    """A copy of models/ with every demo's STEP file."""
    top = Path(tempfile.mkdtemp(prefix="spotblue-locale-"))
    unittest.addModuleCleanup(shutil.rmtree, top)
    for pattern in ("*.toml", "*.csv"):
        for file in (SOURCE / "models").glob(pattern):
            shutil.copy(file, top)
    (top / "out").mkdir()
    for plan in PLANS:
        subprocess.run(
            [PROGRAM, "model", f"{plan}.mockup.toml", f"out/{plan}.step"], cwd=top, check=True
        )
    return top


def said(name: str, *words: str) -> str:
    done = subprocess.run(
        words, cwd=models(), env=locales.environment(name), capture_output=True, text=True,
        encoding="utf-8", check=False,
    )  # fmt: skip
    assert done.returncode in (0, 1, 3), done.stderr
    return done.stdout


class Locales(unittest.TestCase):
    def same_everywhere(self, *words: str) -> None:
        first = timeless(json.loads(said("C", *words)))
        for name in locales.NAMES[1:]:
            with self.subTest(locale=name):
                self.assertEqual(timeless(json.loads(said(name, *words))), first)

    def test_the_locales_are_what_they_are_called(self) -> None:
        code = "import locale; locale.setlocale(locale.LC_ALL, ''); print(f'{1234.5:n}')"
        for name, shown in zip(locales.NAMES, ("1234.5", "1.234,5", "1.234,5", "1,234.5")):
            self.assertEqual(said(name, sys.executable, "-c", code).strip(), shown)

    def test_the_program_says_the_same_of_every_demo(self) -> None:
        for plan in PLANS:
            with self.subTest(plan=plan):
                self.same_everywhere(PROGRAM, "look", f"out/{plan}.step", "--json")
                self.same_everywhere(PROGRAM, "check", f"{plan}.job.toml", "--json")

    def test_the_shelf_says_the_same(self) -> None:
        everywhere = []
        for name in locales.NAMES:
            database = f"out/{name}.db"
            words = ("library", "shelf.csv", "--database", database, "--json", "-")
            everywhere.append(json.loads(said(name, PROGRAM, *words)))
        self.assertEqual([item == everywhere[0] for item in everywhere], [True] * 4)

    def test_python_that_has_set_the_locale_says_the_same(self) -> None:
        everywhere = []
        for name in locales.NAMES:
            words = (sys.executable, "-c", IN_PYTHON, PLANS[0], f"out/{name}-python.db")
            everywhere.append(timeless(json.loads(said(name, *words))))
        for name, item in zip(locales.NAMES, everywhere):
            with self.subTest(locale=name):
                self.assertEqual(item, everywhere[0])

    def test_a_host_program_that_has_set_the_locale_gets_and_writes_the_same(self) -> None:
        everywhere = []
        for name in locales.NAMES:
            results = said(name, HOST, str(models()), *PLANS)
            texts = re.sub(r'"(seconds|sha256)": ("\w+"|\{[^}]*\})', '"at": 0', results)
            everywhere.append([texts] + [same_step(models() / f"out/{x}.step") for x in PLANS])
        for name, item in zip(locales.NAMES, everywhere):
            for index, text in enumerate(item):
                with self.subTest(locale=name, text=index):
                    self.assertEqual(text, everywhere[0][index])


if __name__ == "__main__":
    unittest.main()
