"""Results as plain HTML tables for notebooks: no colour, no style, every text escaped."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from spotblue.base import shown_text

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence

    from spotblue._kernel import CheckResult, Comparison, Look

_MOST_ROWS = 200


def _cell(value: object) -> str:
    return escape(shown_text(str(value)))


def _table(caption: str, heads: Sequence[str], rows: Sequence[Iterable[object]]) -> str:
    head = "".join(f"<th>{escape(text)}</th>" for text in heads)
    body = "".join(
        "<tr>" + "".join(f"<td>{_cell(cell)}</td>" for cell in row) + "</tr>"
        for row in rows[:_MOST_ROWS]
    )
    left = len(rows) - _MOST_ROWS
    more = f"<tr><td>and {left} more</td></tr>" if left > 0 else ""
    return (
        f"<table><caption>{_cell(caption)}</caption><thead><tr>{head}</tr></thead>"
        f"<tbody>{body}{more}</tbody></table>"
    )


def look_html(look: Look) -> str:
    """The radial seats and the fouls of a look; lengths in mm."""
    paths = [occurrence.id for occurrence in look.model.occurrences]
    seats = [
        (
            look.feature_id(seat.hole),
            look.feature_id(seat.shaft),
            f"{seat.clearance_mm:.4f}",
            "clearance" if seat.clearance_mm >= 0 else "interference",
        )
        for seat in look.seats.radial
    ]
    fouls = [
        (paths[foul.a], paths[foul.b], f"{foul.depth_mm:.4f}", foul.cause)
        for foul in look.fouls.found
    ]
    return _table(
        f"{look.model.file.name}: radial seats, mm",
        ("hole", "shaft", "clearance", "fit"),
        seats,
    ) + _table("fouls, mm", ("one", "other", "depth", "cause"), fouls)


def _quantities(values: Mapping[str, float | str]) -> str:
    return ", ".join(
        f"{key} {value:.4f}" if isinstance(value, float) else f"{key} {value}"
        for key, value in values.items()
    )


def check_html(result: CheckResult) -> str:
    """Every finding, in the order of judging; the outcome as a word."""
    rows = [
        (
            finding.outcome,
            finding.id,
            finding.kind,
            " with ".join(finding.about),
            _quantities(finding.wanted),
            _quantities(finding.found),
            _quantities(finding.margin),
            finding.advice,
            finding.caution,
        )
        for finding in result.findings
    ]
    heads = ("outcome", "id", "kind", "about", "wanted", "found", "margin", "advice", "caution")
    count = result.outcomes
    name = result.job.title or result.job.file or result.look.model.file.name
    caption = (
        f"{name}: {count.conforming} conforming, {count.nonconforming} nonconforming, "
        f"{count.undecided} undecided"
    )
    return _table(caption, heads, rows)


def compare_html(comparison: Comparison) -> str:
    """A row a statement, a column a plan, each cell an outcome."""
    names = [plan.job.title or plan.job.file for plan in comparison.plans]
    findings = [plan.findings for plan in comparison.plans]
    rows = [
        [row.kind, row.about]
        + [
            "" if number is None else findings[plan][number].outcome
            for plan, number in enumerate(row.findings)
        ]
        for row in comparison.rows
    ]
    best = "none stands" if comparison.best is None else f"{names[comparison.best]} stands"
    return _table(best, ["kind", "about", *names], rows)
