"""Every function of standards and mechanics refuses numbers that mean nothing, naming the argument.

The functions are those of the stubs, so that one added later is asked too (call_making.py).
"""

from __future__ import annotations

import math
import sys
import unittest
from collections import Counter
from collections.abc import Iterator
from typing import Any

from call_making import Call, Place, calls, dotted, leaves, spans
from spotblue import base, errors

NO_NUMBERS = (math.nan, math.inf, -math.inf)
GREATEST = 1.7e308
LEAST = 5e-324
STRENGTHS = ("youngs_modulus", "yield_", "tensile_")
# C++ says the unit by its types; Python, which says it in the name, may add it to a place.
UNITS = ("_mm", "_mm2", "_mpa", "_gpa", "_n", "_c", "_deg", "_rad", "_um")

done: Counter[str] = Counter()


def bare(name: str) -> str:
    """Without the unit: "bearings[0]" of "bearings_mm[0]"."""
    name, bracket, index = name.rpartition("[") if name.endswith("]") else (name, "", "")
    for unit in UNITS:
        name = name.removesuffix(unit)
    return name + bracket + index


def numbers(call: Call, kind: type) -> Iterator[tuple[Place, Any]]:
    for place, value in leaves(call.given):
        if type(value) is kind:
            yield place, value


def other_values(value: float) -> Iterator[float]:
    yield from (-value, 0.0, LEAST, -LEAST, GREATEST, -GREATEST, value * 1e6, value * 1e-6)


def names_place(place: Place, said: str) -> bool:
    """Whether an error's place is that argument, with or without the unit, or begins with it."""
    wanted = dotted(place)
    return any(said == one or said.startswith((one + ",", one + ".")) for one in (wanted, bare(wanted)))


def names_an_argument(call: Call, said: str) -> bool:
    first = said.split(".")[0].split("[")[0].split(",")[0]
    names = call.given if "argument" not in call.given else [*call.given, call.given["argument"]]
    return any(first in (name, bare(name)) for name in names)


class OutOfRange(unittest.TestCase):
    """Each test walks all functions; a subtest is one number of one of them."""

    calls: list[Call]

    @classmethod
    def setUpClass(cls) -> None:
        cls.calls = calls()

    @classmethod
    def tearDownClass(cls) -> None:
        told = ", ".join(f"{count} {what}" for what, count in sorted(done.items()))
        print(f"{len(cls.calls)} functions: {told}", file=sys.stderr)

    def assert_finite(self, call: Call) -> None:
        """It answers, and every number in the answer is one."""
        for place, value in leaves({"result": call.result()}):
            if isinstance(value, float):
                self.assertTrue(math.isfinite(value), f"{dotted(place)} is {value}")

    def refused(self, call: Call) -> errors.Error:
        done["refused"] += 1
        with self.assertRaises(errors.BadInputError) as caught:
            call.result()
        self.assertTrue(caught.exception.cure)
        return caught.exception

    def place_of(self, call: Call, place: Place) -> Place:
        # Some functions are told the name that their errors shall have.
        named = call.given.get("argument")
        return (named, *place[1:]) if named else place

    def test_all_take_the_values_that_the_test_gives_them(self) -> None:
        self.assertGreater(len(self.calls), 80)
        for call in self.calls:
            with self.subTest(call=str(call)):
                done["answered"] += 1
                self.assert_finite(call)

    def test_what_is_no_number_or_endless_is_refused_by_name(self) -> None:
        for call in self.calls:
            for place, _ in numbers(call, float):
                for value in NO_NUMBERS:
                    with self.subTest(call=str(call), place=dotted(place), value=value):
                        error = self.refused(call.with_value(place, value))
                        wanted = self.place_of(call, place)
                        self.assertTrue(names_place(wanted, error.place), error)

    def test_limits_that_are_reversed_are_refused_by_name(self) -> None:
        for call in self.calls:
            for place, span in spans(call.given):
                other = base.Limits(lower_mm=span.upper_mm, upper_mm=span.lower_mm)
                with self.subTest(call=str(call), place=dotted(place)):
                    error = self.refused(call.with_value(place, other))
                    self.assertTrue(names_place(place, error.place), error)

    def test_strengths_of_nothing_and_cold_beyond_all_cold_are_refused_by_name(self) -> None:
        for call in self.calls:
            for place, number in numbers(call, float):
                name = str(place[-1])
                wrong = [0.0, -number] if name.startswith(STRENGTHS) else []
                wrong += [-273.16] if name.endswith("_c") else []
                for value in wrong:
                    with self.subTest(call=str(call), place=dotted(place), value=value):
                        error = self.refused(call.with_value(place, value))
                        wanted = self.place_of(call, place)
                        self.assertTrue(names_place(wanted, error.place), error)

    def test_other_numbers_are_refused_by_name_or_answered_with_numbers(self) -> None:
        for call in self.calls:
            for place, number in numbers(call, float):
                for value in other_values(number):
                    with self.subTest(call=str(call), place=dotted(place), value=value):
                        self.refused_or_finite(call.with_value(place, value))

    def test_other_whole_numbers_are_refused_by_name_or_answered_with_numbers(self) -> None:
        for call in self.calls:
            for place, _ in numbers(call, int):
                for value in (-1, 0, 1, 2**31 - 1):
                    with self.subTest(call=str(call), place=dotted(place), value=value):
                        try:
                            self.refused_or_finite(call.with_value(place, value))
                        except TypeError:
                            self.assertLess(value, 0)  # an index that is none

    def test_texts_that_say_nothing_are_refused_by_name_or_answered(self) -> None:
        for call in self.calls:
            for place, _ in numbers(call, str):
                if place == ("argument",):
                    continue
                for value in ("", "?"):
                    with self.subTest(call=str(call), place=dotted(place), value=value):
                        self.refused_or_finite(call.with_value(place, value))

    def refused_or_finite(self, call: Call) -> None:
        done["tried"] += 1
        try:
            self.assert_finite(call)
        except errors.BadInputError as error:
            self.assertTrue(names_an_argument(call, error.place), error)
            self.assertTrue(error.cure, error)


if __name__ == "__main__":
    unittest.main()
