"""The materials that a STEP file itself states, and what the table of materials calls one."""

from __future__ import annotations

import re
from pathlib import Path

from spotblue import standards

_MATERIAL = re.compile(
    rb"MATERIAL_DESIGNATION\s*\(\s*'([^']+)'|"
    rb"REPRESENTATION\s*\(\s*'material name'\s*,\s*\(\s*(#\d+)"
)


def stated_materials(path: Path) -> list[str]:
    """Materials that the file itself states, by the entities AP203, AP214 and AP242 have for it."""
    text = path.read_bytes()
    names = []
    for match in _MATERIAL.finditer(text):
        if match[1]:
            names.append(match[1])
        elif match[2]:
            item = re.search(
                rb"(?:^|[;\s])"
                + match[2]
                + rb"\s*=\s*DESCRIPTIVE_REPRESENTATION_ITEM\s*\(\s*'([^']*)'",
                text,
            )
            names += [item[1]] if item else []
    return sorted({name.decode("utf-8", "replace") for name in names})


def material_name(name: str) -> str:
    """Name and condition in the table of materials; empty when it is not there."""
    found = standards.find_material(name)
    return f"{found.name} {found.condition}" if found else ""
