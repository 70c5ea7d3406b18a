"""Fit-aware checks of parts and assemblies modelled as STEP solids.

Lengths are mm, angles degrees, unless a name says otherwise; clearance is positive and interference
negative, on the diameter.

    look(file)       what is in a STEP file and what fits what, as modelled: a Look
    check(file)      a job file or a STEP file judged: a CheckResult with its findings
    compare(plans)   several jobs for one repair side by side
    model(m, out)    a STEP model of simple solids from caliper sizes
    library, which   a whole shelf of files; the part of it that fits
    to_json, from_json   any value as text and back

Modules: standards (limits, fits, keys, threads, materials), mechanics (press fits, bearings,
shafts, gears, stacks), base (lengths and outcomes), errors, shelf.

Records (Job, Mockup and what they are made of) are made by keyword, compared, copied and pickled;
results (Look, CheckResult and what is in them) are only read. Several values in one field are a
tuple. Words out of a fixed few are enum.StrEnum: a member equals its word, and either is taken.
Errors are spotblue.Error with file, place, rule and cure.
"""

from __future__ import annotations

from importlib import import_module
from typing import Any

from spotblue import base, errors, mechanics, standards
from spotblue._names import KERNEL
from spotblue.base import LengthUnit, Outcome
from spotblue.errors import (
    BadInputError,
    Error,
    FileAccessError,
    IncompleteError,
    MachineError,
    NotInStandardError,
    OpenCascadeError,
    StoppedError,
    UnreadableError,
)

# Imported when first asked for: what stands on _kernel loads the CAD libraries.
_MODULES = ("_kernel", "arrays", "shelf", "shown", "values")
_LATER = dict.fromkeys(KERNEL, "spotblue._kernel") | {
    "from_json": "spotblue.values",
    "library": "spotblue.shelf.runner",
    "to_json": "spotblue.values",
    "which": "spotblue.shelf.which",
}

__all__ = [
    "BadInputError",
    "Error",
    "FileAccessError",
    "IncompleteError",
    "LengthUnit",
    "MachineError",
    "NotInStandardError",
    "OpenCascadeError",
    "Outcome",
    "StoppedError",
    "UnreadableError",
    "base",
    "errors",
    "mechanics",
    "standards",
    *_LATER,
]


def __getattr__(name: str) -> Any:
    if name in _MODULES:
        return import_module(f"spotblue.{name}")
    if name not in _LATER:
        raise AttributeError(f"module 'spotblue' has no attribute {name!r}")
    value = getattr(import_module(_LATER[name]), name)
    globals()[name] = value
    return value


def __dir__() -> list[str]:
    return sorted({*globals(), *__all__, *_MODULES})
