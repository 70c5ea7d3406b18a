"""Calls of any function of standards and mechanics, made of the stubs that the build writes.

A parameter's value is that of VALUES (by function and name), else a guess by its type: 1.0 for a
number, the first word of a choice, a record with RECORDS' fields. Where a function is added that
refuses the guess, its value goes into VALUES.
"""

from __future__ import annotations

import ast
import copy
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import spotblue
from spotblue import base, mechanics, standards
from spotblue.choice import Choice

MODULES = {"standards": standards, "mechanics": mechanics}
STUBS = Path(spotblue.__file__).parent / "_numbers"

Place = tuple[str | int, ...]


def steel(**fields: Any) -> mechanics.Elastic:
    given: dict[str, Any] = {
        "name": "steel",
        "youngs_modulus_mpa": 205000.0,
        "poisson_ratio": 0.29,
        "expansion_per_k": 11.7e-6,
        "yield_mpa": 530.0,
        "tensile_mpa": 600.0,
    }
    return mechanics.Elastic(**given | fields)


def bronze() -> mechanics.Elastic:
    return steel(name="bronze", youngs_modulus_mpa=100000.0, expansion_per_k=18e-6, yield_mpa=138.0)


def limits(lower: float, upper: float) -> base.Limits:
    return base.Limits(lower_mm=lower, upper_mm=upper)


def ring(inner: float, outer: float, of: mechanics.Elastic) -> mechanics.Ring:
    return mechanics.Ring(inner_mm=inner, outer_mm=outer, material=of)


def chain() -> list[mechanics.ChainRing]:
    rings = [ring(8.0, 30.0, steel()), ring(29.99, 44.05, bronze()), ring(44.0, 90.0, steel())]
    return [mechanics.ChainRing(free=one, temperature_c=60.0) for one in rings]


def loop() -> list[mechanics.StackDimension]:
    return [
        mechanics.StackDimension(
            name=sense,
            nominal_mm=size,
            limits=limits(size - 0.1, size + 0.1),
            sense=sense,
            expansion_per_k=11e-6,
            warmer_by_k=40.0,
        )
        for size, sense in ((20.0, "opens"), (8.0, "closes"), (11.5, "closes"))
    ]


def suit() -> mechanics.SuitProblem:
    terms = [
        mechanics.SuitTerm(of="to make", index=0, factor=1.0),
        mechanics.SuitTerm(of="known", index=0, factor=-1.0),
    ]
    return mechanics.SuitProblem(
        sizes=[
            mechanics.SuitSize(
                name="bore", drawn_mm=44.0, own=limits(43.9, 44.1), uncertainty_mm=0.002
            )
        ],
        known=[mechanics.SuitKnown(name="shaft", limits=limits(43.97, 43.98))],
        demands=[
            mechanics.SuitDemand(
                name="runs", terms=terms, constant_mm=0.001, wanted=limits(0.02, 0.06)
            )
        ],
    )


def net() -> mechanics.PlayNet:
    """A shaft in a hub, stopped both ways; the one gap is a length less another."""
    lengths = loop()
    for length in lengths:
        length.sense = "opens"
    ahead = [mechanics.PlayTerm(length=0, count=1), mechanics.PlayTerm(length=2, count=-1)]
    return mechanics.PlayNet(
        bodies=["hub", "shaft"],
        lengths=lengths,
        stops=[
            mechanics.PlayStop(a=1, b=0, gap=ahead),
            mechanics.PlayStop(a=0, b=1, gap=[mechanics.PlayTerm(length=1, count=-1)]),
        ],
    )


# Fields of a record that must be given for it to mean anything.
RECORDS: dict[str, dict[str, Any]] = {
    "BearingLimits": {"pressure_mpa": 20.0, "speed_m_s": 3.0, "pressure_speed_mpa_m_s": 2.0},
    "BearingSizes": {"diameter_mm": 20.0, "length_mm": 25.0, "wall_mm": 3.0},
    "BlockStock": {"length_mm": 90.0, "width_mm": 60.0, "thickness_mm": 25.0},
    "BushInHub": {
        "bore_mm": 30.0,
        "joint_mm": 44.0,
        "hub_outside_mm": 160.0,
        "interference_mm": 0.044,
        "bush": bronze(),
        "hub": steel(),
    },
    "Elastic": {name: getattr(steel(), name) for name in steel()._fields},
    "FlatSidedPart": {"length_mm": 80.0, "width_mm": 50.0, "thickness_mm": 20.0},
    "Limits": {"lower_mm": 0.01, "upper_mm": 0.05},
    "Material": {
        name: getattr(standards.materials()[0], name) for name in standards.materials()[0]._fields
    },
    "MeshedGear": {"teeth": 20, "thickness_mm": 3.1, "tip_mm": 44.0, "root_mm": 35.0},
    "NominalStress": {"bending_mpa": 80.0, "torsion_mpa": 40.0},
    "ParallelKey": {
        name: getattr(standards.parallel_keys()[5], name)
        for name in standards.parallel_keys()[5]._fields
    },
    "PressFit": {
        "joint_mm": 44.0,
        "interference_mm": 0.05,
        "hub": steel(),
        "inner": bronze(),
        "stretches": [
            mechanics.PressStretch(length_mm=20.0, hub_outside_mm=80.0, inner_bore_mm=30.0)
        ],
    },
    "Ring": {"inner_mm": 30.0, "outer_mm": 60.0, "material": steel()},
    "RingLoad": {"inside_mpa": 30.0, "outside_mpa": 5.0},
    "RoundPart": {"outside_mm": 40.0, "bore_mm": 20.0, "length_mm": 30.0},
    "RoundSection": {"outer_mm": 30.0, "inner_mm": 10.0},
    "RoundStock": {"diameter_mm": 50.0, "inner_mm": 10.0, "length_mm": 90.0},
    "RunningLoad": {"speed_m_s": 1.0, "pressure_mpa": 2.0, "pressure_speed_mpa_m_s": 2.0},
    "SlipBounds": {"coldest_c": -190.0, "hottest_c": 300.0},
    "StackDraw": {"samples": 500, "threads": 1},
    "SteppedShaft": {"larger_mm": 40.0, "smaller_mm": 30.0, "fillet_mm": 2.0},
    "SurfaceStress": {"hoop_mpa": 50.0, "radial_mpa": -30.0, "equivalent_mpa": 70.0},
    "ThrustRing": {"inner_mm": 20.0, "outer_mm": 40.0},
    "ToothForm": {"module_mm": 2.0, "pressure_angle_deg": 20.0, "helix_angle_deg": 15.0},
}

# Values of parameters by name, and by function and name where they differ.
VALUES: dict[str, Any] = {
    "argument": "named",
    "b4_1_fit.cls": "FN2",
    "centre_mm": 42.0,
    "fit.text": "H7/s6",
    "gaps_mm": [0.5, 0.5],
    "general_deviation.nominal_mm": 40.0,
    "grade": "IT7",
    "helix_angle_deg": 15.0,
    "highest_c": 300.0,
    "joint_mm": 44.0,
    "keyseat_factor.bottom_radius_mm": 0.5,
    "keyseat_factor.diameter_mm": 30.0,
    "letter": "m",
    "loop": loop(),
    "net": net(),
    "net_area_mm2": 700.0,
    "nominal_mm": 44.0,
    "of": 1,
    "on": 0,
    "over_mm": 46.0,
    "per_inch": 12.0,
    "pin_mm": 3.4,
    "pressure_angle_deg": 20.0,
    "problem": suit(),
    "require_stack.loop": loop(),
    "rings": chain(),
    "shaft_diameter_mm": 25.0,
    "slip_in.bench_c": 20.0,
    "slip_in.interference_mm": 0.04,
    "span_mm": 15.5,
    "spanned": 3,
    "strength_left.after": mechanics.RoundSection(outer_mm=29.0, inner_mm=10.0),
    "teeth": 20,
    "teeth_a": 20,
    "teeth_b": 30,
    "thickness_mm": 3.1,
    "tolerance": standards.GeneralTolerance.MEDIUM,
    "tolerance_class": "H7",
    "warmed_bush.temperature_c": 250.0,
    "value": 0.02,
    "wants": [mechanics.PlayWant(of=1, on=0, wanted=limits(0.2, 0.9))],
}


@dataclass(frozen=True)
class Call:
    """One function, or one overload of it, with arguments that it takes."""

    module: str
    name: str
    given: dict[str, Any]

    def __str__(self) -> str:
        return f"{self.module}.{self.name}"

    def result(self) -> Any:
        return getattr(MODULES[self.module], self.name)(**self.given)

    def with_value(self, place: Place, value: Any) -> Call:
        return Call(self.module, self.name, replaced(self.given, place, value))


def calls() -> list[Call]:
    """Every function that takes anything, its overloads one by one."""
    found = []
    for module in MODULES:
        tree = ast.parse((STUBS / f"{module}.pyi").read_text(encoding="utf-8"))
        for node in tree.body:
            if isinstance(node, ast.FunctionDef):
                parameters = node.args.args + node.args.kwonlyargs
                given = {one.arg: value_of(module, node.name, one) for one in parameters}
                if given:
                    found.append(Call(module, node.name, given))
    return found


def value_of(module: str, function: str, parameter: ast.arg) -> Any:
    for name in (f"{function}.{parameter.arg}", parameter.arg):
        if name in VALUES:
            return copy.deepcopy(VALUES[name])
    assert parameter.annotation is not None
    return guess(module, ast.unparse(parameter.annotation))


def guess(module: str, annotation: str) -> Any:
    kind = annotation.split(" | ")[0]
    if kind.startswith("Sequence["):
        return [guess(module, kind[len("Sequence[") : -1])]
    if kind in ("float", "int", "str"):
        return {"float": 1.0, "int": 1, "str": "1"}[kind]
    owner, _, name = kind.rpartition(".")
    found = getattr({**MODULES, "base": base}[owner or module], name)
    if issubclass(found, Choice):
        return next(iter(found))
    fields = {key: copy.deepcopy(value) for key, value in RECORDS.get(name, {}).items()}
    record = found(**fields)
    if name == "BearingSizes":
        record.clearance = limits(0.02, 0.05)
    return record


def is_record(value: Any) -> bool:
    return hasattr(value, "_fields")


def replaced(value: Any, place: Place, new: Any) -> Any:
    """A copy of arguments, records or lists with the one thing at `place` another."""
    if not place:
        return new
    first, rest = place[0], place[1:]
    if isinstance(value, dict):
        return {**value, first: replaced(value[first], rest, new)}
    if isinstance(value, list | tuple):
        assert isinstance(first, int)
        return [replaced(one, rest, new) if i == first else one for i, one in enumerate(value)]
    other = copy.deepcopy(value)
    setattr(other, str(first), replaced(getattr(value, str(first)), rest, new))
    return other


def leaves(value: Any, place: Place = ()) -> Iterator[tuple[Place, Any]]:
    """Everything in a value that is no record, dict or list, and where it stands."""
    if isinstance(value, dict):
        for name, one in value.items():
            yield from leaves(one, (*place, name))
    elif isinstance(value, list | tuple):
        for number, one in enumerate(value):
            yield from leaves(one, (*place, number))
    elif is_record(value):
        for name in value._fields:
            yield from leaves(getattr(value, name), (*place, name))
    else:
        yield place, value


def spans(value: Any, place: Place = ()) -> Iterator[tuple[Place, base.Limits]]:
    """Every Limits in a value, and where it stands."""
    if isinstance(value, base.Limits):
        yield place, value
    elif isinstance(value, dict):
        for name, one in value.items():
            yield from spans(one, (*place, name))
    elif isinstance(value, list | tuple):
        for number, one in enumerate(value):
            yield from spans(one, (*place, number))
    elif is_record(value):
        for name in value._fields:
            yield from spans(getattr(value, name), (*place, name))


def dotted(place: Place) -> str:
    """As errors write it: "rings[1].free.inner_mm"."""
    text = ""
    for one in place:
        text += f"[{one}]" if isinstance(one, int) else f".{one}" if text else one
    return text
