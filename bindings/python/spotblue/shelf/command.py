"""The verbs `library` and `which` as the program runs them."""

from __future__ import annotations

import json
import logging
import os
import re
import signal
from dataclasses import asdict
from math import isfinite
from pathlib import Path

import spotblue
from spotblue._kernel import shelf as kernel
from spotblue.base import parse_unit, shown_text, unit_name
from spotblue.base import shortened as shortened_text
from spotblue.errors import MissingPackageError
from spotblue.shelf import interrupt, outputs
from spotblue.shelf.claim import Limits
from spotblue.shelf.reports import ShelfReport
from spotblue.shelf.runner import Settings, judge_shelf, open_shelf
from spotblue.shelf.which import Candidate, Seat, shortened, which
from spotblue.shelf.words import length_text

BAD_INPUT = 2
MOST_DIGITS = 30
MOST_MESSAGE_BYTES = 2000
_NUMBER = re.compile(r"[+-]?([0-9]+\.?[0-9]*|\.[0-9]+)([eE][+-]?[0-9]+)?")
REPORTS = ("--csv", "--json", "--junit", "--html")


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
        """BadInputError for what is no finite number, and for more digits than anyone writes."""
        text = self._values.get(option)
        if text is None:
            return default
        if not _NUMBER.fullmatch(text) or len(text) > MOST_DIGITS or not isfinite(float(text)):
            raise self._wrong(option, text, "no number", "write it like 0.5")
        return float(text)

    def whole(self, option: str) -> int | None:
        """The same for a whole number; None when it is not given."""
        text = self._values.get(option)
        if text is not None and not re.fullmatch("[0-9]{1,9}", text):
            raise self._wrong(option, text, "no whole number", "write it like 4")
        return None if text is None else int(text)

    @staticmethod
    def _wrong(option: str, text: str, what: str, cure: str) -> spotblue.BadInputError:
        rule = f"{text} is {what}" if text else "nothing is given"
        return spotblue.BadInputError(f"{option}: {rule}; {cure}", "", option, rule, cure)


def complain(message: str) -> None:
    """One line on standard error."""
    try:
        line = shortened_text(shown_text(message), MOST_MESSAGE_BYTES)
    except UnicodeEncodeError:  # of halves of letters, which no file or terminal has given
        line = shortened_text(ascii(message), MOST_MESSAGE_BYTES)
    try:
        os.write(2, f"spotblue: {line}\n".encode())
    except OSError:
        pass  # nothing is left to say it with


def _write_reports(given: Given, report: ShelfReport) -> bool:
    """Whether one of them went to standard output."""
    made = (report.to_csv, report.to_json, report.to_junit, report.to_html)
    said = False
    for option, text in zip(REPORTS, made, strict=True):
        target = given.text(option)
        if target is None:
            continue
        try:
            written = text()
        except MissingPackageError as missing:
            complain(f"{option} {target}: {missing}")
            continue  # the others can be had without what makes this one
        if target == outputs.STANDARD_OUTPUT:
            outputs.say(written, option)
            said = True
        else:
            outputs.write_result(target, written, option)
    return said


def run_library(given: Given) -> int:
    """The verb; gives the exit code."""
    interrupt.clean_up_on_interrupt()
    workers = given.whole("--workers")
    limits = Limits(given.number("--seconds", 120.0), given.number("--memory", 6000.0))
    uncertainty_mm = given.number("--uncertainty", 0.0)
    shelf = open_shelf(
        given.operand(), database=given.text("--database"), unit=given.text("--unit") or "mm"
    )
    targets = {name: path for name in REPORTS if (path := given.text(name)) is not None}
    outputs.refuse_overwriting(targets, shelf.kept())
    for option, target in targets.items():
        outputs.refuse_precious(option, target)
    report = judge_shelf(
        shelf,
        Settings(limits, uncertainty_mm),
        workers=workers,
        scheduler=given.text("--scheduler"),
        progress=True if given.has("--progress") else None,
    )
    if not _write_reports(given, report):
        text = report.to_text(every=given.has("--every"), unit=given.text("--unit"))
        outputs.say(kernel.fitted_text(text, outputs.terminal_width(1)))
    return report.exit_code()


def _seat_line(name: str, seat: Seat, uncut: str, unit: str) -> str:
    def shown(length_mm: float) -> str:
        return length_text(length_mm, unit)

    cut = (
        f"cut {shown(seat.cut_mm)} to {uncut} {shown(abs(_cut_size(seat, name)))}"
        if seat.cut_mm
        else "no cut"
    )
    return (
        f"  {name:<9}{seat.feature} ({shown(seat.size_mm)}): {cut}, clearance {shown(seat.least_clearance_mm)} to "
        f"{shown(seat.greatest_clearance_mm)}, margin {shown(seat.margin_mm)} {unit_name(unit)}"
    )


def _cut_size(seat: Seat, name: str) -> float:
    return seat.size_mm - seat.cut_mm if name == "in hole" else seat.size_mm + seat.cut_mm


def which_text(candidates: list[Candidate], unit: str, *, cut_mm: float) -> str:
    """For a terminal, best first; lengths in `unit`."""
    if not candidates:
        return f"nothing on the shelf fits{', nor would after that cut' if cut_mm else ''}\n"
    lines = []
    for rank, item in enumerate(candidates, 1):
        lines.append(f"{rank}. {item.file}, {item.part}: {item.outcome}")
        if item.in_hole:
            lines.append(_seat_line("in hole", item.in_hole, "outside", unit))
        if item.on_shaft:
            lines.append(_seat_line("on shaft", item.on_shaft, "bore", unit))
    if any(item.cut_mm() for item in candidates):
        lines.append(
            "Before a cut: hold the part true by its other seat, and see that the wall will do."
        )
    return "\n".join(lines) + "\n"


def run_which(given: Given) -> int:
    """The verb; gives the exit code."""
    database = given.operand()
    unit = parse_unit(given.text("--unit") or "mm")
    cut_mm = given.number("--cut", 0.0)
    found = which(
        database,
        hole=given.text("--hole"),
        hole_fit=given.text("--hole-fit"),
        shaft=given.text("--shaft"),
        shaft_fit=given.text("--shaft-fit"),
        cut_mm=cut_mm,
        uncertainty_mm=given.number("--uncertainty", 0.0),
        unit=unit,
    )
    found = shortened(found, Path(database).absolute().parent)
    if given.has("--json"):
        outputs.say(
            json.dumps({"spotblue": kernel.version, "found": [asdict(item) for item in found]})
            + "\n"
        )
    else:
        outputs.say(kernel.fitted_text(which_text(found, unit, cut_mm=cut_mm), outputs.terminal_width(1)))
    outcomes = {item.outcome for item in found}
    return 0 if "conforming" in outcomes else 3 if outcomes else 1


class Complaints(logging.Handler):
    """What the shelf's log tells, as lines of the program's own."""

    def emit(self, record: logging.LogRecord) -> None:
        """One line."""
        complain(record.getMessage())


def main(words: list[str]) -> int:
    """Runs a verb on words that the program has read; what is wrong is one line and exit code 2."""
    verbs = {"library": run_library, "which": run_which}
    log = logging.getLogger("spotblue.shelf")
    log.handlers, log.propagate = [Complaints()], False
    try:
        if not words or words[0] not in verbs:
            raise spotblue.BadInputError("spotblue.shelf: the first word is library or which")
        code = verbs[words[0]](Given(words[1:]))
        if outputs.reader_has_gone:  # ends as other programs end then
            interrupt.end_by_signal(signal.SIGPIPE)
        return code
    except (spotblue.Error, OSError) as error:
        message = str(error)
    except MemoryError:
        message = "out of memory"
    except Exception as error:  # noqa: BLE001: whatever it is, it is no finding about a part
        message = f"{type(error).__name__}: {error}; this is a fault of spotblue, please report it"
    complain(message)
    return BAD_INPUT
