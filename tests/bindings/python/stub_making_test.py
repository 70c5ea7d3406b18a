"""make_stubs.py ends, naming the place, where a module says what it does not understand."""

from __future__ import annotations

import importlib.util
import os
import unittest
from enum import StrEnum
from pathlib import Path
from types import ModuleType
from typing import Any


def make_stubs() -> Any:
    file = Path(os.environ["SPOTBLUE_SOURCE"]) / "bindings" / "python" / "make_stubs.py"
    spec = importlib.util.spec_from_file_location("make_stubs", file)
    assert spec is not None and spec.loader is not None
    made = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(made)
    return made


MAKE = make_stubs()


class Look:
    """What was found."""


def module(name: str, **held: object) -> ModuleType:
    made = ModuleType(f"spotblue.{name}")
    vars(made).update(held)
    return made


def stub() -> Any:
    kernel = module("_kernel", Look=Look)
    return MAKE.Stub(kernel, {"Side": "spotblue._kernel"}, MAKE.classes_of([kernel]))


class StubMaking(unittest.TestCase):
    def test_known_types_are_written_as_the_module_names_them(self) -> None:
        self.assertEqual(stub().type_text("List[spotblue._kernel.Look]", taken=False), "list[Look]")
        self.assertEqual(stub().type_text("Optional[Side]", taken=True), "Side | str | None")

    def test_an_enumeration_that_nothing_bound_ends_it(self) -> None:
        with self.assertRaisesRegex(SystemExit, "spotblue._kernel: Colour: nothing bound"):
            stub().type_text("Colour", taken=True)

    def test_a_class_that_nothing_bound_ends_it(self) -> None:
        with self.assertRaisesRegex(SystemExit, "spotblue._kernel.Seats: nothing bound"):
            stub().type_text("Tuple[spotblue._kernel.Seats, int]", taken=False)

    def test_a_class_that_was_bound_too_late_ends_it(self) -> None:
        with self.assertRaisesRegex(SystemExit, "bind this before"):
            stub().type_text("spotblue::Seats", taken=False)

    def test_a_function_without_a_signature_ends_it(self) -> None:
        with self.assertRaisesRegex(SystemExit, "look: its document has no signature"):
            stub().functions("look", "Finds parts.", "")

    def test_a_method_without_a_document_ends_it(self) -> None:
        class Torn:
            """A class one of whose methods says nothing of itself."""

            def to_text(self) -> None:
                pass

        with self.assertRaisesRegex(SystemExit, "to_text: its document has no signature"):
            stub().class_lines(Torn)

    def test_one_name_of_two_enumerations_ends_it(self) -> None:
        one, other = (StrEnum("Side", ["IN"]) for _ in range(2))
        found = [module("_numbers.base", Side=one), module("_kernel", Side=other)]
        with self.assertRaisesRegex(SystemExit, "_kernel: Side: spotblue._numbers.base has"):
            MAKE.choices_of(found)


if __name__ == "__main__":
    unittest.main()
