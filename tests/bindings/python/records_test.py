"""Records and enumerations behave as a Python programmer expects them to."""

from __future__ import annotations

import ast
import copy
import enum
import json
import pickle
import re
import unittest
from pathlib import Path
from typing import Any

import spotblue
from spotblue import base, mechanics
from spotblue.choice import Choice


CLASSES: dict[str, type[Any]] = {
    name: value
    for module in (spotblue, base, spotblue.standards, mechanics)
    for name, value in vars(module).items()
    if isinstance(value, type)
}
RECORDS = sorted(
    (value for value in set(CLASSES.values()) if "__match_args__" in vars(value) and value._fields),
    key=lambda value: value.__name__,
)
PLAIN: dict[str, Any] = {"float": 7.5, "int": 7, "bool": True, "str": "seven", "PathLike": Path("7")}


def taken_by(record: type[Any], name: str) -> ast.expr:
    """The type in the setter's signature."""
    said = re.findall(r", \w+: ([^\n]*)\) -> None", vars(record)[name].fset.__doc__)[-1]
    return ast.parse(said, mode="eval").body


def held_in(said: ast.expr) -> ast.expr:
    """The type in a list; one of a fixed length is "List[float[4]]", of later pybind11 Annotated."""
    while isinstance(said, ast.Subscript):
        first = said.slice.elts[0] if isinstance(said.slice, ast.Tuple) else said.slice
        kind = ast.unparse(said.value).rpartition(".")[2].lower()
        if kind not in ("list", "annotated"):
            return said.value if isinstance(first, ast.Constant) else said
        said = first
    return said


def value_of(said: ast.expr, now: object) -> Any:
    """A value of that type, another one than there is now."""
    if isinstance(now, tuple) and now:  # as many as there are
        return tuple(value_of(held_in(said), one) for one in now)
    if isinstance(now, bool):
        return not now
    if isinstance(now, (int, float)):
        return now + 1
    if isinstance(said, ast.Subscript):
        inner = said.slice.elts if isinstance(said.slice, ast.Tuple) else [said.slice]
        kind = ast.unparse(said.value).rpartition(".")[2].lower()
        if kind == "tuple":
            return tuple(value_of(one, index) for index, one in enumerate(inner))
        return [value_of(held_in(said), None)] if kind == "list" else value_of(inner[0], now)
    name = ast.unparse(said).rpartition(".")[2]
    if name in PLAIN:
        return PLAIN[name]
    if issubclass(CLASSES[name], Choice):
        return next(member for member in CLASSES[name] if member != now)
    made = CLASSES[name]()
    setattr(made, made._fields[0], other_than(made, made._fields[0]))
    return made


def other_than(record: Any, name: str) -> Any:
    """A value that its field takes and does not have."""
    return value_of(taken_by(type(record), name), getattr(record, name))


class EnumerationTest(unittest.TestCase):
    def test_a_member_equals_its_word(self) -> None:
        self.assertTrue(issubclass(spotblue.PartState, enum.StrEnum))
        self.assertEqual(spotblue.PartState.TO_MAKE, "to make")
        self.assertEqual(f"{spotblue.Duty.NO_LOAD_SLOW}", "no load, slow")
        self.assertEqual(json.dumps([base.Outcome.CONFORMING]), '["conforming"]')

    def test_a_field_takes_a_member_or_its_word_and_hands_out_the_member(self) -> None:
        part = spotblue.JobPart(state="to make")
        self.assertIs(part.state, spotblue.PartState.TO_MAKE)
        part.state = spotblue.PartState.AS_FOUND
        self.assertIs(part.state, spotblue.PartState.AS_FOUND)

    def test_an_argument_takes_a_member_or_its_word(self) -> None:
        for unit in (base.LengthUnit.INCH, "inch", "in"):
            self.assertEqual(base.format_size(25.4, unit), "1")
        self.assertEqual(spotblue.feature_word_name("taper bore"), "taper bore")
        self.assertEqual(
            spotblue.size_characteristic_name(spotblue.SizeCharacteristic.RADIUS), "radius"
        )

    def test_all_layers_share_one_class(self) -> None:
        self.assertIs(spotblue.Outcome, base.Outcome)
        self.assertIs(type(spotblue.Job().unit), base.LengthUnit)

    def test_a_mistyped_word_is_refused_with_the_nearest(self) -> None:
        with self.assertRaisesRegex(spotblue.BadInputError, "nearest is 'to make'") as caught:
            spotblue.JobPart(state="to mak")
        self.assertEqual(caught.exception.rule, "PartState has no 'to mak'")
        with self.assertRaises(spotblue.BadInputError):
            spotblue.PartState("to mak")
        with self.assertRaises(spotblue.BadInputError):
            spotblue.JobPart().state = "to mak"  # type: ignore[assignment]
        with self.assertRaisesRegex(spotblue.BadInputError, "ShaftLoad has no 'bendng'"):
            mechanics.keyseat_factor(50.0, 1.0, load="bendng")

    def test_members_survive_pickle_and_copy_as_themselves(self) -> None:
        for kind in Choice.__subclasses__():
            for member in kind:
                self.assertIs(pickle.loads(pickle.dumps(member)), member)
                self.assertIs(copy.deepcopy(member), member)
                self.assertEqual(repr(member), f"{kind.__name__}.{member.name}")


class RecordTest(unittest.TestCase):
    def test_several_values_are_a_tuple_that_takes_no_more(self) -> None:
        job = spotblue.Job(fits=(spotblue.FitWant(hole=name) for name in "ab"))
        self.assertEqual([fit.hole for fit in job.fits], ["a", "b"])
        with self.assertRaises(AttributeError):
            job.fits.append(spotblue.FitWant())  # type: ignore[attr-defined]
        job.fits = (*job.fits, spotblue.FitWant(hole="c"))
        self.assertEqual(len(job.fits), 3)
        self.assertEqual(pickle.loads(pickle.dumps(job)), job)

    def test_a_field_that_is_set_changes_no_other(self) -> None:
        self.assertGreater(len(RECORDS), 60)
        for kind in RECORDS:
            for name in kind._fields:
                record, before = kind(), kind()
                with self.subTest(record=kind.__name__, field=name):
                    setattr(record, name, other_than(record, name))
                    changed = [
                        each
                        for each in kind._fields
                        if getattr(record, each) != getattr(before, each)
                    ]
                    self.assertEqual(changed, [name])

    def test_a_text_is_no_list_of_letters(self) -> None:
        with self.assertRaises(TypeError):
            spotblue.BlockPart(bores="abc")  # type: ignore[arg-type]

    def test_a_record_in_a_record_is_changed_where_it_is(self) -> None:
        job = spotblue.Job()
        job.settings.seats.radial_gap_mm = 0.7
        self.assertEqual(job.settings.seats.radial_gap_mm, 0.7)
        self.assertNotEqual(spotblue.Job(), job)

    def test_a_value_of_another_kind_is_refused_with_what_is_taken(self) -> None:
        with self.assertRaisesRegex(TypeError, "^JobPart.running_c takes float or None, not 'hot'"):
            spotblue.JobPart(running_c="hot")  # type: ignore[arg-type]
        with self.assertRaisesRegex(TypeError, r"^Job.fits takes several FitWant values, not"):
            spotblue.Job(fits=[3])  # type: ignore[list-item]

    def test_a_long_tuple_of_records_is_shown_by_its_length(self) -> None:
        few = spotblue.Job(fixed=[spotblue.Fixing(a="Wheel", b="Pin", by="pin")])
        self.assertIn("fixed=(Fixing(a='Wheel', b='Pin', by='pin', line=None),)", repr(few))
        many = spotblue.Job(fixed=[spotblue.Fixing()] * 4)
        self.assertIn("fixed=<4 of them>", repr(many))

    def test_the_modules_of_the_numbers_come_with_the_package(self) -> None:
        self.assertEqual(spotblue.standards.fit(44.0, "H7/s6").kind, "interference")
        self.assertIs(spotblue.mechanics, mechanics)

    def test_a_mistyped_field_is_refused_with_the_nearest(self) -> None:
        with self.assertRaisesRegex(AttributeError, "Job has no field 'fit'; the nearest is fits"):
            spotblue.Job().fit = ()  # type: ignore[attr-defined]


if __name__ == "__main__":
    unittest.main()
