"""Numbers and findings of the kernel as one line of text."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import Any

from spotblue.base import LengthUnit, format_length

_NUMBER = r"[-+]?\d+(?:\.\d+)?"
# "0.02 mm", "44 to 44.025 mm", "12 mm3", and the nominal before a class: "44 H7".
_QUANTITY = re.compile(
    rf"(?<![\w.])(?:(?P<lower>{_NUMBER}) to )?(?P<value>{_NUMBER}) mm(?P<power>[23]?)(?!\w)"
    rf"|^(?P<nominal>{_NUMBER}) (?=[A-Za-z]{{1,2}}\d+\b)"
)
_INCH_MM = 25.4
# A spreadsheet takes a cell that begins so, apostrophes aside, for a formula; numbers are what they are.
_FORMULA = re.compile(r"'*[=+\-@](?!\d*\.?\d+([eE][+-]?\d+)?$)")


def no_formula(cell: str) -> str:
    """The cell with an apostrophe before what a spreadsheet would take for a formula."""
    return f"'{cell}" if _FORMULA.match(cell) else cell


def without_apostrophe(cell: str) -> str:
    """The cell that no_formula was given."""
    return cell[1:] if cell.startswith("'") and _FORMULA.match(cell) else cell


def number_text(value: float) -> str:
    """With at most four decimals, and none that say nothing."""
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def range_text(lower: float, upper: float) -> str:
    """ "44 to 44.025 mm"."""
    return f"{number_text(lower)} to {number_text(upper)} mm"


def same_features(about: Sequence[str], pair: tuple[str, str]) -> bool:
    """Whether a finding is about both features; occurrences may stand before the names."""
    return all(any(text == name or text.endswith("/" + name) for text in about) for name in pair)


def quantities(given: Mapping[str, Any], wanted: tuple[str, ...] = ()) -> str:
    """A finding's quantities on one line: "clearance 0.02 to 0.05 mm"; those asked for, or all."""
    parts = []
    for key, value in given.items():
        if wanted and not key.startswith(wanted):
            continue
        if key.endswith("_max_mm") and key[:-7] + "_min_mm" in given:
            continue
        if key.endswith("_min_mm") and key[:-7] + "_max_mm" in given:
            parts.append(
                f"{key[:-7].replace('_', ' ')} {range_text(value, given[key[:-7] + '_max_mm'])}"
            )
        elif isinstance(value, float):
            name, _, unit = key.rpartition("_")
            parts.append(f"{name.replace('_', ' ')} {number_text(value)} {unit}")
        else:
            parts.append(str(value))
    return ", ".join(parts)


def length_text(length_mm: float, unit: str, decimals: int = 4) -> str:
    """A length as tables show it, without its unit: mm with so many decimals, inches with one more."""
    inch = unit == LengthUnit.INCH
    return format_length(length_mm, unit, decimals=decimals + 1 if inch else decimals)


def _short(number: str, unit: str) -> str:
    shown = length_text(float(number), unit)
    return shown.rstrip("0").rstrip(".") if "." in shown else shown


def in_unit(text: str, unit: str) -> str:
    """A row's line with its quantities, which are kept in mm, in the unit that is asked for."""
    if unit != LengthUnit.INCH:
        return text

    def changed(found: re.Match[str]) -> str:
        if found["nominal"]:
            return _short(found["nominal"], unit) + " in "
        if found["power"]:
            power = int(found["power"])
            return f"{float(found['value']) / _INCH_MM**power:.5g} in{power}"
        lower = _short(found["lower"], unit) + " to " if found["lower"] else ""
        return f"{lower}{_short(found['value'], unit)} in"

    return _QUANTITY.sub(changed, text)
