"""Every public function and value of the kernel is in Python; tests call each function."""

from __future__ import annotations

import importlib
import re
import unittest
from collections.abc import Iterator
from operator import attrgetter
from pathlib import Path
from typing import Any

import spotblue
from coverage_elsewhere import FUNCTIONS, TYPES
from spotblue.choice import Choice

ROOT = Path(__file__).parents[3]
HEADERS = ROOT / "kernel" / "include" / "spotblue"
# Each layer has a module of its own, or is in the package itself.
LAYERS = {
    "base": "spotblue.base",
    "standards": "spotblue.standards",
    "mechanics": "spotblue.mechanics",
    "geometry": "spotblue",
    "job": "spotblue",
    "check": "spotblue",
    "report": "spotblue",
}
# Declarations at namespace level begin a line without indent.
NO_FUNCTION = "namespace|struct|class|enum|template|concept|using|inline constexpr|inline namespace"
DECLARED = re.compile(rf"^(?!{NO_FUNCTION})[A-Za-z\[][^;{{]*[;{{]", re.MULTILINE)


def code_of(header: Path) -> str:
    text = re.sub(r"//[^\n]*|/\*.*?\*/", "", header.read_text(encoding="utf-8"), flags=re.DOTALL)
    _, opening, declared = text.replace("SPOTBLUE_EXPORT ", "").partition("namespace spotblue {")
    return opening + declared  # empty for a header of macros


def names_in(text: str) -> Iterator[str]:
    for statement in DECLARED.findall(text):
        named = re.search(r"(operator\S+?|\w+)\s*\(", statement.replace("[[nodiscard]]", ""))
        assert named is not None, statement
        yield named.group(1)


def headers() -> Iterator[tuple[str, str]]:
    for layer in LAYERS:
        for header in sorted((HEADERS / layer).glob("*.hpp")):
            yield layer, code_of(header)


def functions() -> list[tuple[str, str]]:
    return [(layer, name) for layer, text in headers() for name in names_in(text)]


def enumerations() -> list[tuple[str, str, list[str]]]:
    """Those that the headers declare, with their values."""
    return [
        (layer, name, re.findall(r"\w+", values))
        for layer, text in headers()
        for name, values in re.findall(r"^enum class (\w+) \{([^}]*)\}", text, re.MULTILINE)
    ]


def types() -> list[tuple[str, str]]:
    """Structs and enumerations that the headers declare at namespace level."""
    return [
        (layer, name)
        for layer, text in headers()
        for name in re.findall(r"^(?:struct|enum class) (\w+) ", text, re.MULTILINE)
    ]


def in_module(layer: str, name: str) -> Any:
    module = importlib.import_module(LAYERS[layer])
    assert name in module.__all__, f"{name} is not in {LAYERS[layer]}.__all__"
    return getattr(module, name)


class Coverage(unittest.TestCase):
    def test_the_headers_are_read(self) -> None:
        found = functions()
        for known in (("base", "judge"), ("standards", "fit"), ("mechanics", "require_stack"),
                      ("geometry", "operator*"), ("job", "unit_of"), ("check", "margin_share"),
                      ("report", "look_json")):  # fmt: skip
            self.assertIn(known, found)
        self.assertGreater(len(set(found)), 160)

    def test_every_function_has_its_python_function(self) -> None:
        for layer, name in functions():
            if f"{layer}.{name}" not in FUNCTIONS:
                with self.subTest(layer=layer, name=name):
                    self.assertTrue(callable(in_module(layer, name)))

    def test_every_struct_and_enumeration_has_its_python_class(self) -> None:
        for known in (("mechanics", "SuitPlan"), ("job", "FitWant"), ("geometry", "OtherFace")):
            self.assertIn(known, types())
        for layer, name in types():
            if f"{layer}.{name}" not in TYPES:
                with self.subTest(layer=layer, name=name):
                    self.assertIsInstance(in_module(layer, name), type)

    def test_every_enumeration_has_a_member_for_each_value(self) -> None:
        self.assertGreater(len(enumerations()), 30)
        for layer, name, values in enumerations():
            if f"{layer}.{name}" not in TYPES:
                with self.subTest(layer=layer, name=name):
                    found = in_module(layer, name)
                    self.assertTrue(issubclass(found, Choice))
                    self.assertEqual([one.name.lower() for one in found], values)

    def test_every_function_is_called_by_a_test(self) -> None:
        here = Path(__file__)
        texts = [
            file.read_text(encoding="utf-8")
            for file in here.parent.rglob("*.py")
            if file.name not in (here.name, "coverage_elsewhere.py")
        ]
        text = "\n".join(texts)
        for layer, name in functions():
            path = FUNCTIONS.get(f"{layer}.{name}", (f"{LAYERS[layer]}.{name}", ""))[0]
            if path is None or "__" in path:
                continue  # operators are used in vectors_test.py
            owner, _, last = path.rpartition(".")
            # A function by its module, a method or property of whatever variable holds the value.
            of = r"\w" if owner[:1].isupper() else owner.removeprefix("spotblue.") or "spotblue"
            with self.subTest(layer=layer, name=name):
                self.assertTrue(re.search(rf"{of}\)*\]*\.{last}\b", text))

    def test_what_stands_elsewhere_still_is_declared_and_is_there(self) -> None:
        self.assertLessEqual(set(FUNCTIONS), {".".join(one) for one in functions()})
        self.assertLessEqual(set(TYPES), {".".join(one) for one in types()})
        for name, (path, reason) in (FUNCTIONS | TYPES).items():
            with self.subTest(name=name):
                self.assertTrue(reason)
                layer, _, own = name.partition(".")
                self.assertNotIn(own, importlib.import_module(LAYERS[layer]).__all__)
                if path is not None:
                    self.assertIn(path.split(".")[0], spotblue.__all__)
                    attrgetter(path)(spotblue)


if __name__ == "__main__":
    unittest.main()
