"""The TOML form of a manifest: `unit`, then [[claim]] tables with the keys of the CSV's columns."""

from __future__ import annotations

import re
import sys
import tomllib
from pathlib import Path
from typing import Any

import spotblue
from spotblue._kernel import shelf as kernel
from spotblue.base import parse_length

Place = tuple[int, dict[str, int]]  # line of a claim, and those of its keys

_HEAD = re.compile(r"\s*\[\[\s*claim\s*\]\]")
_KEY = re.compile(r"""\s*["']?([\w-]+)["']?\s*=""")
_COMMA = re.compile(r"=\s*([+-]?\d+,\d+)\s*(?:#.*)?$")
_NUMBERS = ("size", "lower", "upper", "tolerance", "within", "solids")


def _places(text: str, claims: int) -> list[Place]:
    """Of each claim and its keys, as far as plain lines tell: tomllib keeps no places."""
    places: list[Place] = []
    for number, line in enumerate(text.splitlines(), 1):
        if _HEAD.match(line):
            places.append((number, {}))
        elif places and (key := _KEY.match(line)):
            places[-1][1].setdefault(key[1], number)
    return places if len(places) == claims else [(1, {})] * claims


def _key_line(text: str, key: str) -> int:
    rows = enumerate(text.splitlines(), 1)
    return next((n for n, row in rows if re.match(rf"\s*\[*\s*[\"']?{re.escape(key)}\b", row)), 1)


def _broken(path: Path, text: str, error: ValueError) -> spotblue.BadInputError:
    from spotblue.shelf.manifest import mistake

    if digits := re.search(rf"[0-9_]{{{sys.get_int_max_str_digits()},}}", text):
        line = text.count("\n", 0, digits.start()) + 1
        return mistake(path, line, "", f"a number of {len(digits[0])} digits", "write a shorter one")
    place = re.search(r"at line (\d+)", str(error))
    line = int(place[1]) if place else text.count("\n") + 1
    rule, cure = re.sub(r" \(at .*\)", "", str(error)), "mend the TOML there"
    if place and (comma := _COMMA.search(text.split("\n")[line - 1].rstrip())):
        try:
            parse_length(comma[1], "mm")
        except spotblue.Error as told:
            rule, cure = told.rule, told.cure
    return mistake(path, line, "", rule, cure)


def _refuse_key(path: Path, text: str, table: dict[str, Any], key: str) -> None:
    from spotblue.shelf.manifest import mistake

    rule, cure, line = "no such key", "a manifest has unit and [[claim]]", _key_line(text, key)
    if "claim" not in table and "model" in table:
        rule, cure = "this is a job file, no manifest", f"spotblue check {path} judges it"
    elif "claim" not in table and ("part" in table or "place" in table):
        rule, cure = "this is a mock-up, no manifest", f"spotblue model {path} OUT.step makes it"
    raise mistake(path, line, key, rule, cure)


def toml_entries(
    path: Path, text: str, unit: str
) -> tuple[str, list[tuple[int, dict[str, Any], dict[str, int]]]]:
    """Unit, and claims with their lines and those of their keys; BadInputError for no manifest."""
    from spotblue.shelf.manifest import UNITS, check_columns, mistake

    kernel.screen_toml(text, path)
    try:
        table = tomllib.loads(text)
    except ValueError as error:  # a number of thousands of digits is no TOMLDecodeError
        raise _broken(path, text, error) from None
    for key in table:
        if key not in ("unit", "claim"):
            _refuse_key(path, text, table, key)
    unit = table.get("unit", unit)
    if unit not in UNITS:
        line = _key_line(text, "unit")
        raise mistake(path, line, "unit", f"{unit} is no unit", 'write "mm" or "inch"')
    claims = table.get("claim", [])
    if not isinstance(claims, list) or not all(isinstance(claim, dict) for claim in claims):
        line = _key_line(text, "claim")
        raise mistake(path, line, "claim", "is no list of tables", "begin each with [[claim]]")
    entries = []
    for (line, lines), claim in zip(_places(text, len(claims)), claims, strict=True):
        for key in claim:
            check_columns(path, lines.get(key, line), [key])
        for key, value in claim.items():
            number = isinstance(value, int | float) and not isinstance(value, bool)
            if isinstance(value, str) or (number and key in _NUMBERS):
                continue
            rule, cure = "is no text or number", 'write it like "44 H7" or 44'
            if key not in _NUMBERS:
                rule, cure = f"{value} is no text", f'write it in quotes: {key} = "..."'
            raise mistake(path, lines.get(key, line), key, rule, cure)
        entries.append((line, claim, lines))
    return unit, entries
