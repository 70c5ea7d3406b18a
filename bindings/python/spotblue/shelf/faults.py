"""Rows for what is wrong with a file itself, whatever a manifest claims of it."""

from __future__ import annotations

from collections.abc import Iterable

import spotblue
from spotblue.shelf.claim import CONFORMING, NONCONFORMING, Row
from spotblue.shelf.words import quantities


def unsound_rows(products: Iterable[spotblue.Product]) -> list[Row]:
    """One for each part whose solids can not be relied on."""
    return [
        Row(
            "unsound" if part.closed else "open shell",
            NONCONFORMING,
            "sound solids" if part.closed else "closed solids",
            f"{part.id}: {part.unsound}",
            advice="put it right where it was drawn and export it again",
            feature=part.id,
        )
        for part in products
        if part.unsound
    ]


def foul_rows(findings: Iterable[spotblue.Finding]) -> list[Row]:
    """One for each foul among the findings that does not conform."""
    return [
        Row(
            "foul",
            str(item.outcome),
            "no overlap",
            quantities(item.found),
            basis=item.basis,
            advice=item.advice,
            feature=" and ".join(item.about),
        )
        for item in findings
        if item.kind == "foul" and item.outcome != CONFORMING
    ]
