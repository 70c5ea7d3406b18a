"""The TOML form of a manifest: `unit`, then [[claim]] tables with the keys of the CSV's columns."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path
from typing import Any


def _line_of(text: str, number: int) -> int:
    """Line of the claim's [[claim]], 1-based; tomllib keeps no places."""
    heads = [match.start() for match in re.finditer(r"^\s*\[\[\s*claim\s*\]\]", text, re.MULTILINE)]
    if number >= len(heads):
        return 1
    head = heads[number]
    head += len(text[head:]) - len(text[head:].lstrip())
    return text.count("\n", 0, head) + 1


def toml_entries(path: Path, text: str, unit: str) -> tuple[str, list[tuple[int, dict[str, Any]]]]:
    """Unit and claims with their lines; BadInputError for what is no such manifest."""
    from spotblue.shelf.manifest import UNITS, check_columns, mistake

    try:
        table = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        place = re.search(r"at line (\d+)", str(error))
        rule = re.sub(r" \(at .*\)", "", str(error))
        line = int(place[1]) if place else text.count("\n") + 1
        raise mistake(path, line, "", rule, "mend the TOML there") from None
    for key in table:
        if key not in ("unit", "claim"):
            rule, cure = "no such key", "a manifest has unit and [[claim]]"
            line = next(
                (n for n, row in enumerate(text.splitlines(), 1) if key in row.split("=")[0]), 1
            )
            raise mistake(path, line, key, rule, cure)
    unit = table.get("unit", unit)
    if unit not in UNITS:
        raise mistake(path, 1, "unit", f"{unit} is no unit", 'write "mm" or "inch"')
    claims = table.get("claim", [])
    if not isinstance(claims, list) or not all(isinstance(claim, dict) for claim in claims):
        raise mistake(path, 1, "claim", "is no list of tables", "begin each with [[claim]]")
    entries = []
    for number, claim in enumerate(claims):
        line = _line_of(text, number)
        check_columns(path, line, claim)
        for key, value in claim.items():
            if isinstance(value, bool) or not isinstance(value, str | int | float):
                raise mistake(
                    path, line, key, "is no text or number", 'write it like "44 H7" or 44'
                )
        entries.append((line, claim))
    return unit, entries
