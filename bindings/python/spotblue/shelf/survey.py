"""A folder without a manifest: everything in it is looked at, and a manifest is drafted."""

from __future__ import annotations

import csv
import io
import os
from pathlib import Path
from typing import TYPE_CHECKING

import spotblue
from spotblue.base import parse_unit, shown_name, shown_text
from spotblue.shelf.claim import UNREAD, Claim, Row
from spotblue.shelf.manifest import Manifest
from spotblue.shelf.outputs import write_new
from spotblue.shelf.words import in_unit, no_formula, number_text

if TYPE_CHECKING:
    from spotblue.shelf.runner import ShelfFile
    from spotblue.shelf.store import Store

SUFFIXES = (".step", ".stp", ".p21", ".brep", ".brp", ".xbf")
DRAFT_NAME = "manifest.csv"
HEADER = ("file", "feature", "size", "class", "material", "notes")


def refuse_overwriting(folder: Path) -> None:
    """A manifest that is there is kept; BadInputError says what to do."""
    there = folder / DRAFT_NAME
    if there.exists():
        raise spotblue.BadInputError(
            f"{there}: is there already and is kept; run spotblue library {there}, or move it away",
            str(there),
        )


def survey_manifest(folder: Path, unit: str) -> Manifest:
    """One claim a model of the folder and those below it: that it can be read."""
    files = sorted(
        shown_name(Path(place, name).relative_to(folder))
        for place, _, names in os.walk(folder)
        for name in names
        if name.lower().endswith(SUFFIXES)
    )
    if not files:
        raise spotblue.BadInputError(
            f"{folder}: holds no model ({', '.join(SUFFIXES)}); name another folder or a manifest",
            str(folder),
        )
    claims = tuple(Claim(line, file) for line, file in enumerate(files, 1))
    return Manifest(folder / DRAFT_NAME, claims, parse_unit(unit))


def draft(
    folder: Path, files: list[ShelfFile], store: Store, rows: list[Row], unit: str
) -> Path:
    """Writes a manifest with each feature of size, its class left open; never over another."""
    text = io.StringIO()
    writer = csv.writer(text, lineterminator="\n")
    writer.writerow(HEADER)
    bad = {row.file: row for row in rows if row.kind in UNREAD}
    for file in files:
        # A row that begins with # is a remark.
        cell = r"\x23" + file.name[1:] if file.name.startswith("#") else no_formula(file.name)
        if file.name in bad:
            writer.writerow([cell, "", "", "", "", shown_text(f"not read: {bad[file.name].found}")])
            continue
        found = store.features_of(file.task.sha256) if file.task else []
        for name, _, _, size_mm in found:
            # A manifest's bare numbers are mm unless the next run is told otherwise: inches say so.
            size = in_unit(f"{number_text(size_mm)} mm", unit).removesuffix(" mm")
            writer.writerow([cell, no_formula(shown_name(name)), size, "", "", ""])
        if not found:
            writer.writerow([cell, "", "", "", "", "no feature of size"])
    path = folder / DRAFT_NAME
    write_new(path, text.getvalue())
    return path
