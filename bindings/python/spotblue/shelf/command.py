"""The verbs `library` and `which` as the program runs them."""

from __future__ import annotations

import json
import os
import re
import signal
import sys
from collections.abc import Callable
from dataclasses import asdict
from pathlib import Path

import spotblue
from spotblue._kernel import shelf as kernel
from spotblue.base import shown_text
from spotblue.errors import MissingPackageError
from spotblue.shelf.reports import ShelfReport, write_whole
from spotblue.shelf.runner import library
from spotblue.shelf.which import Candidate, Seat, shortened, which

BAD_INPUT = 2
reader_has_gone = False  # of standard output


class Given:
    """What the program read by its table of options: "=operand", "--unit=in", "--every="."""

    def __init__(self, words: list[str]) -> None:
        self._values = dict(word.split("=", 1) for word in words)

    def operand(self) -> str:
        return self._values[""]

    def has(self, option: str) -> bool:
        return option in self._values

    def text(self, option: str) -> str | None:
        return self._values.get(option)

    def number(self, option: str, default: float) -> float:
        return float(self._values.get(option, default))


def say(text: str) -> None:
    """Writes a result to standard output, UTF-8 whatever the locale.

    That its reader has gone away is no error, and ends nothing else that is to be written.
    """
    global reader_has_gone
    data = text.encode("utf-8", "backslashreplace")
    try:
        while data:
            data = data[os.write(1, data) :]
    except BrokenPipeError:
        reader_has_gone = True


def terminal_width() -> int:
    """Columns of the terminal that standard output is, else by COLUMNS, else 80; 0 for none."""
    if not os.isatty(1):
        return 0
    try:
        told = os.get_terminal_size(1).columns
    except OSError:
        told = 0
    columns = os.environ.get("COLUMNS", "")
    return told or (int(columns) if re.fullmatch("[0-9]{1,6}", columns) else 0) or 80


def complain(message: str) -> None:
    """One line on standard error."""
    sys.stderr.write(f"spotblue: {shown_text(message)}\n")


def _write(target: str | None, text: Callable[[], str]) -> bool:
    """Whether the text went to standard output."""
    if target == "-":
        say(text())
        return True
    if target is not None:
        write_whole(Path(target), text())
    return False


def _write_page(target: str | None, report: ShelfReport) -> bool:
    """As _write; where what makes the page is not installed, says so and goes on without it."""
    try:
        return _write(target, report.to_html)
    except MissingPackageError as missing:
        complain(f"--html {target}: {missing}")
        return False


def run_library(given: Given) -> int:
    """The verb; gives the exit code."""
    manifest = given.operand()
    workers = given.text("--workers")
    report: ShelfReport = library(
        manifest,
        database=given.text("--database"),
        workers=None if workers is None else int(workers),
        scheduler=given.text("--scheduler"),
        unit=given.text("--unit") or "mm",
        uncertainty_mm=given.number("--uncertainty", 0.0),
        seconds=given.number("--seconds", 120.0),
        memory_mb=given.number("--memory", 6000.0),
        progress=True if given.has("--progress") else None,
    )
    said = [
        _write(given.text("--csv"), report.to_csv),
        _write(given.text("--json"), report.to_json),
        _write(given.text("--junit"), report.to_junit),
        _write_page(given.text("--html"), report),
    ]
    if not any(said):
        say(kernel.fitted_text(report.to_text(every=given.has("--every")), terminal_width()))
    return report.exit_code()


def _seat_line(name: str, seat: Seat, uncut: str) -> str:
    cut = (
        f"cut {seat.cut_mm:.4f} to {uncut} {abs(_cut_size(seat, name)):.4f}"
        if seat.cut_mm
        else "no cut"
    )
    return (
        f"  {name:<9}{seat.feature}: {cut}, clearance {seat.least_clearance_mm:.4f} to "
        f"{seat.greatest_clearance_mm:.4f}, margin {seat.margin_mm:.4f} mm"
    )


def _cut_size(seat: Seat, name: str) -> float:
    return seat.size_mm - seat.cut_mm if name == "in hole" else seat.size_mm + seat.cut_mm


def which_text(candidates: list[Candidate]) -> str:
    """For a terminal, best first."""
    if not candidates:
        return "nothing on the shelf fits, nor would after that cut\n"
    lines = []
    for rank, item in enumerate(candidates, 1):
        lines.append(f"{rank}. {item.file}, {item.part}: {item.outcome}")
        if item.in_hole:
            lines.append(_seat_line("in hole", item.in_hole, "outside"))
        if item.on_shaft:
            lines.append(_seat_line("on shaft", item.on_shaft, "bore"))
    if any(item.cut_mm() for item in candidates):
        lines.append(
            "Before a cut: hold the part true by its other seat, and see that the wall will do."
        )
    return "\n".join(lines) + "\n"


def run_which(given: Given) -> int:
    """The verb; gives the exit code."""
    database = given.operand()
    found = which(
        database,
        hole=given.text("--hole"),
        hole_fit=given.text("--hole-fit"),
        shaft=given.text("--shaft"),
        shaft_fit=given.text("--shaft-fit"),
        cut_mm=given.number("--cut", 0.0),
        uncertainty_mm=given.number("--uncertainty", 0.0),
        unit=given.text("--unit") or "mm",
    )
    found = shortened(found, Path(database).absolute().parent)
    if given.has("--json"):
        say(
            json.dumps({"spotblue": kernel.version, "found": [asdict(item) for item in found]})
            + "\n"
        )
    else:
        say(kernel.fitted_text(which_text(found), terminal_width()))
    outcomes = {item.outcome for item in found}
    return 0 if "conforming" in outcomes else 3 if outcomes else 1


def main(words: list[str]) -> int:
    """Runs a verb on words that the program has read; what is wrong is one line and exit code 2."""
    verbs = {"library": run_library, "which": run_which}
    try:
        if not words or words[0] not in verbs:
            raise spotblue.BadInputError("spotblue.shelf: the first word is library or which")
        code = verbs[words[0]](Given(words[1:]))
        if reader_has_gone:  # ends as other programs end then
            signal.signal(signal.SIGPIPE, signal.SIG_DFL)
            signal.raise_signal(signal.SIGPIPE)
        return code
    except KeyboardInterrupt:
        message = "interrupted; what was done is kept, and the next run goes on there"
    except (spotblue.Error, OSError) as error:
        message = str(error)
    except MemoryError:
        message = "out of memory"
    complain(message)
    return BAD_INPUT
