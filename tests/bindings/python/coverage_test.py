"""Every public function and value of the number layers is in Python; tests call each function."""

from __future__ import annotations

import importlib
import re
import unittest
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[3]
HEADERS = ROOT / "kernel" / "include" / "spotblue"
LAYERS = ["base", "standards", "mechanics"]
# A C++ function that has no Python function of its name in its layer's module, and why.
ELSEWHERE = {
    "set_log_sink": "no number: it takes a function that the kernel calls from its own threads",
    "stop_asked": "how the kernel hears of Ctrl-C; interrupt_test.py shows that it does",
    "stop_if_asked": "as stop_asked",
}
TYPES_ELSEWHERE = {
    "ErrorCode": "the classes of spotblue.errors, one for each code",
    "LogLevel": "goes with set_log_sink",
}


def declared(header: Path) -> Iterator[str]:
    """Names of the free functions that a header declares at namespace level."""
    text = re.sub(r"//[^\n]*|/\*.*?\*/", "", header.read_text(encoding="utf-8"), flags=re.DOTALL)
    text = text[text.index("namespace spotblue {") :]
    # Declarations at namespace level begin a line without indent.
    for statement in re.findall(r"^(?:\[\[nodiscard\]\]|void )[^;{]*[;{]", text, re.MULTILINE):
        named = re.search(r"(\w+)\s*\(", statement.replace("[[nodiscard]]", ""))
        assert named is not None, statement
        yield named.group(1)


def functions() -> list[tuple[str, str]]:
    return [
        (layer, name)
        for layer in LAYERS
        for header in sorted((HEADERS / layer).glob("*.hpp"))
        for name in declared(header)
    ]


def types() -> list[tuple[str, str]]:
    """Structs and enumerations that the headers declare at namespace level."""
    return [
        (layer, name)
        for layer in LAYERS
        for header in sorted((HEADERS / layer).glob("*.hpp"))
        for name in re.findall(
            r"^(?:struct|enum class) (\w+)", header.read_text(encoding="utf-8"), re.MULTILINE
        )
    ]


class Coverage(unittest.TestCase):
    def test_the_headers_are_read(self) -> None:
        found = functions()
        for known in (("base", "judge"), ("standards", "fit"), ("mechanics", "require_stack")):
            self.assertIn(known, found)
        self.assertGreater(len(set(found)), 90)

    def test_every_function_has_its_python_function(self) -> None:
        for layer, name in functions():
            if name not in ELSEWHERE:
                with self.subTest(layer=layer, name=name):
                    module = importlib.import_module(f"spotblue.{layer}")
                    self.assertTrue(callable(getattr(module, name)))
                    self.assertIn(name, module.__all__)

    def test_every_struct_and_enumeration_has_its_python_class(self) -> None:
        self.assertIn(("mechanics", "SuitPlan"), types())
        for layer, name in types():
            if name not in TYPES_ELSEWHERE:
                with self.subTest(layer=layer, name=name):
                    module = importlib.import_module(f"spotblue.{layer}")
                    self.assertIsInstance(getattr(module, name), type)
                    self.assertIn(name, module.__all__)

    def test_every_function_is_called_by_a_test(self) -> None:
        texts = [
            file.read_text(encoding="utf-8")
            for file in Path(__file__).parent.glob("*.py")
            if file != Path(__file__)
        ]
        for layer, name in functions():
            if name not in ELSEWHERE:
                with self.subTest(layer=layer, name=name):
                    used = re.compile(rf"\b{layer}\.{name}\b")
                    self.assertTrue(any(used.search(text) for text in texts))

    def test_what_stands_elsewhere_still_exists(self) -> None:
        self.assertLessEqual(set(ELSEWHERE), {name for _, name in functions()})
        self.assertLessEqual(set(TYPES_ELSEWHERE), {name for _, name in types()})


if __name__ == "__main__":
    unittest.main()
