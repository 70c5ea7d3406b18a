"""What came of a shelf, as text, CSV, JSON, JUnit XML and an HTML overview."""

from __future__ import annotations

import csv
import html
import io
import json
import re
import textwrap
import xml.etree.ElementTree as ElementTree
from collections import Counter
from dataclasses import dataclass
from pathlib import Path

from spotblue._kernel import shelf as kernel
from spotblue.base import parse_unit, shown_name, shown_text, unit_name
from spotblue.errors import missing_package
from spotblue.shelf.claim import CONFORMING, NONCONFORMING, UNDECIDED, WORST_FIRST, Row
from spotblue.shelf.progress import time_text
from spotblue.shelf.words import in_unit, length_text, no_formula

SIGNS = {CONFORMING: "=", NONCONFORMING: "!", UNDECIDED: "?"}
EXIT_CODES = {CONFORMING: 0, NONCONFORMING: 1, UNDECIDED: 3}
CSV_COLUMNS = (
    "file", "line", "outcome", "kind", "feature", "wanted", "found", "margin_mm", "basis",
    "advice", "notes",
)  # fmt: skip
SCHEMA = 1
# Characters that XML 1.0 has no way to write; a file's own names may hold them.
_NO_XML = {code: "?" for code in [*range(0x20), 0xFFFE, 0xFFFF, *range(0xD800, 0xE000)]}
for _allowed in (0x09, 0x0A, 0x0D):
    del _NO_XML[_allowed]
# Letters that steer a terminal or turn the direction of what follows.
_STEERING = re.compile("[\x7f-\x9f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]")


@dataclass
class ShelfReport:
    """The rows of a shelf in the manifest's order, and how much of it was worked at this time."""

    manifest: str
    rows: list[Row]
    files: int
    worked: int
    seconds: float
    database: Path
    drafted: Path | None = None
    unit: str = "mm"  # of to_text(); all else is mm

    def counts(self) -> dict[str, int]:
        """Rows by outcome, worst first."""
        found = Counter(row.outcome for row in self.rows)
        return {outcome: found[outcome] for outcome in WORST_FIRST}

    def exit_code(self) -> int:
        """0 all conforming, 1 something nonconforming, 3 undecided only."""
        present = (outcome for outcome in WORST_FIRST if self.counts()[outcome])
        return EXIT_CODES[next(present, CONFORMING)]

    def __repr__(self) -> str:
        counts = ", ".join(f"{count} {outcome}" for outcome, count in self.counts().items())
        return f"ShelfReport({self.manifest!r}: {self.files} files, {counts})"

    def _repr_html_(self) -> str:
        head = "".join(f"<th>{name}</th>" for name in CSV_COLUMNS[:8])
        body = "".join(
            "<tr>" + "".join(f"<td>{html.escape(shown_text(cell))}</td>" for cell in _cells(row)[:8]) + "</tr>"
            for row in self.rows
        )
        return f"<table><tr>{head}</tr>{body}</table>"

    def to_text(self, *, every: bool = False, unit: str | None = None) -> str:
        """For a terminal: what does not conform, worst first (or every row), and a tally.

        Lengths in `unit`, "mm" or "inch"; in that of the manifest when not given.
        """
        shown_in = parse_unit(unit or self.unit)
        shown = [row for row in self.rows if every or row.outcome != CONFORMING]
        shown.sort(key=lambda row: WORST_FIRST.index(row.outcome))
        lines = [line for row in shown for line in _text_lines(row, shown_in)]
        if shown:
            lines.append("")
        counts = ", ".join(f"{count} {outcome}" for outcome, count in self.counts().items())
        lines.append(f"{len(self.rows)} rows on {self.files} files: {counts}")
        lines.append(
            f"looked at {self.worked} files in {time_text(self.seconds)}; the others are as they were; "
            f"results in {shown_name(self.database)}"
        )
        if self.drafted:
            lines.append(
                f"drafted {shown_name(self.drafted)}: fill in what each part claims to be, then run it"
            )
        return "\n".join(lines) + "\n"

    def to_csv(self) -> str:
        """One line a row, with a line of columns; an apostrophe before what looks like a formula."""
        text = io.StringIO()
        writer = csv.writer(text, lineterminator="\n")
        writer.writerow(CSV_COLUMNS)
        writer.writerows([no_formula(shown_text(cell)) for cell in _cells(row)] for row in self.rows)
        return text.getvalue()

    def to_json(self) -> str:
        """Rows and tally; keys that say nothing are left out."""
        text = (
            json.dumps(
                {
                    "schema": SCHEMA,
                    "spotblue": kernel.version,
                    "manifest": self.manifest,
                    "files": self.files,
                    "outcomes": self.counts(),
                    "rows": [row.to_dict() for row in self.rows],
                },
                indent=1,
                ensure_ascii=False,
            )
            + "\n"
        )
        return _STEERING.sub(lambda letter: f"\\u{ord(letter[0]):04x}", text)

    def to_junit(self) -> str:
        """JUnit XML: nonconforming rows fail, bad files are errors, undecided rows are skipped."""
        bad = ("bad file", "missing file")
        counts = self.counts()
        errors = sum(row.kind in bad for row in self.rows)
        suite = ElementTree.Element(
            "testsuite",
            name=_xml(self.manifest),
            tests=str(len(self.rows)),
            failures=str(counts[NONCONFORMING] - errors),
            errors=str(errors),
            skipped=str(counts[UNDECIDED]),
        )
        tags = {NONCONFORMING: "failure", UNDECIDED: "skipped"}
        for row in self.rows:
            title = f"{row.kind} {row.feature}".strip() + f" (line {row.line})"
            case = ElementTree.SubElement(
                suite, "testcase", classname=_xml(row.file), name=_xml(title)
            )
            if row.outcome in tags:
                tag = "error" if row.kind in bad else tags[row.outcome]
                said = f"wanted {row.wanted}; found {row.found}"
                ElementTree.SubElement(case, tag, message=_xml(said)).text = _xml(row.advice)
        ElementTree.indent(suite)
        return (
            '<?xml version="1.0" encoding="UTF-8"?>\n'
            + ElementTree.tostring(suite, encoding="unicode")
            + "\n"
        )

    def to_html(self) -> str:
        """One page that needs nothing else: outcome by word, sign and colour, with a filter."""
        try:
            import jinja2
        except Exception as error:  # noqa: BLE001: a torn package fails in many ways
            raise missing_package("jinja2", "the page", error) from None
        source = Path(__file__).with_name("overview.html").read_text(encoding="utf-8")
        page = jinja2.Environment(
            autoescape=True, trim_blocks=True, lstrip_blocks=True, finalize=_shown
        )
        rows = sorted(self.rows, key=lambda row: WORST_FIRST.index(row.outcome))
        return page.from_string(source).render(
            report=self, rows=rows, counts=self.counts(), signs=SIGNS, version=kernel.version
        )


def _shown(value: object) -> object:
    return shown_text(value) if isinstance(value, str) else value


def _cells(row: Row) -> list[str]:
    margin = "" if row.margin_mm is None else f"{row.margin_mm:.4f}"
    return [
        row.file, str(row.line), row.outcome, row.kind, row.feature, row.wanted, row.found, margin,
        row.basis, row.advice, row.notes,
    ]  # fmt: skip


def _text_lines(row: Row, unit: str) -> list[str]:
    lines = [f"{row.outcome:<13}  {shown_text(row.file)}, line {row.line}: {row.kind}"]
    margin = ""
    if row.margin_mm is not None:
        margin = f"{length_text(row.margin_mm, unit)} {unit_name(unit)}"
    wanted, found, basis, advice = (
        in_unit(text, unit) for text in (row.wanted, row.found, row.basis, row.advice)
    )
    said = (
        ("of", row.feature), ("wanted", wanted), ("found", found), ("margin", margin),
        ("basis", basis), ("advice", advice), ("notes", row.notes),
    )  # fmt: skip
    for name, text in said:
        if text:
            first, *rest = textwrap.wrap(shown_text(" ".join(text.split())), 84) or [""]
            lines.append(f"  {name:<8}{first}")
            lines += [" " * 10 + line for line in rest]
    return lines


def _xml(text: str) -> str:
    return text.translate(_NO_XML)
