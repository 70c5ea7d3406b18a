"""The verbs `library` and `which` as the program runs them."""

from __future__ import annotations

import argparse
import json
import os
import re
import signal
import sys
from collections.abc import Callable
from dataclasses import asdict
from pathlib import Path
from typing import NoReturn

import spotblue
from spotblue._kernel import shelf as kernel
from spotblue.base import shown_text
from spotblue.errors import MissingPackageError
from spotblue.shelf.reports import ShelfReport, write_whole
from spotblue.shelf.runner import library
from spotblue.shelf.which import Candidate, Seat, shortened, which

ALL_WELL, BAD_INPUT = 0, 2
reader_has_gone = False  # of standard output

LIBRARY_HELP = """spotblue library MANIFEST: a whole shelf of STEP files, and what each claims to be

The manifest is CSV with a line of columns, or TOML with [[claim]] tables of the same keys; file
names are relative to it. One row is one claim:

  file,feature,size,class,lower,upper,tolerance,material,notes
  pulley.step,bore 44,44,H7,,,,grey iron,from the left rack
  stud.step,outside 30,30,f7
  stud.step,length 120,120,,,,+0/-0.2
  press.step,,,,,,,,only the file: does it read, is it closed, does anything clash

  feature       a name as spotblue look shows it, or shorter: "bore 44", "Wheel: bore 44 @ 12",
                "outside", "slot 8", "length 120" (between two faces that look away from each other)
  fit           in place of feature: "Wheel: bore 38 with Bush: outside 38", class "H7/s6" or "FN2",
                or lower and upper of the clearance
  size, class, lower, upper, tolerance
                "1 5/16 in" or 44; H7 or RC4; two limits; or "0.05", "+0.025/0"
  solids        how many solids the file must hold
  coaxial_with, within
                the feature's axis must lie so near to that of another
  material      must be in the table, and must be what the file itself states, where it states one

A folder in place of a manifest is looked through, and a manifest drafted in it.

Results are kept beside the manifest; what has not changed is not looked at again, and a run that
was killed goes on where it was. A file that crashes, hangs or takes too much costs one row.

  --database PATH        keep the results there; several runs may share it
  --unit in              bare numbers of a CSV manifest are inches
  --uncertainty 0.002    of the sizes in the files, in mm (k = 2)
  --workers 2            processes that read files; as many as cores without it
  --scheduler ADDRESS    hand the files to a Dask cluster: tcp://127.0.0.1:8786
  --seconds 120          time one file may take
  --memory 6000          memory one file may take, in MB
  --every                list what conforms too
  --csv, --json, --junit, --html PATH
                         write the rows there as well; "-" in place of the text
  --progress             show progress even where it is no terminal

Ends with 0 when all is conforming, 1 when something is nonconforming or a file is bad, 3 when
nothing is nonconforming but something is undecided, 2 for bad input.

Examples:
  spotblue library shelf/
  spotblue library shelf/manifest.csv --html shelf.html
  spotblue library shelf/manifest.csv --junit shelf.xml --workers 4
"""

WHICH_HELP = """spotblue which DATABASE: which parts of a shelf fit, or would after a cut

DATABASE is what spotblue library has filled. Say what is there and the fit that is wanted; both a
hole and a shaft ask for a part that goes between them, as a bush between hub and journal.

  --hole 38.012          its size; "38 H7" or "38.00 to 38.02" when it is not measured yet
  --hole-fit H7/s6       the fit in it; "38 H7/s6", FN2, or limits of the clearance "0.02 to 0.05"
  --shaft 28.97          likewise
  --shaft-fit H8/f7
  --cut 0.5              metal that may be taken off each seat, on the diameter, in mm
  --uncertainty 0.002    of the sizes on the shelf, in mm (k = 2)
  --unit in              bare numbers are inches
  --json                 as JSON, always in mm

Best first: no cut before a cut, a wide margin before a narrow one, a small cut before a large one.
Ends with 0 when something fits, 1 when nothing does, 3 when nothing surely does, 2 for bad input.

Examples:
  spotblue which shelf/manifest.shelf.db --hole 38.012 --hole-fit H7/s6
  spotblue which shelf/manifest.shelf.db --hole 38.012 --hole-fit H7/s6 --cut 0.5
  spotblue which shelf/manifest.shelf.db --hole 38 --hole-fit H7/s6 --shaft 29 --shaft-fit H8/f7
"""


class Arguments(argparse.ArgumentParser):
    """argparse with the program's own help, and its way to say what is wrong."""

    def __init__(self, verb: str, text: str) -> None:
        super().__init__(prog=f"spotblue {verb}", add_help=False, allow_abbrev=False)
        self.text = text
        self.add_argument("--help", action="store_true")

    def format_help(self) -> str:
        return self.text

    def error(self, message: str) -> NoReturn:
        raise spotblue.BadInputError(f"{message}; {self.prog} --help shows how")


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


def run_library(words: list[str]) -> int:
    """The verb; gives the exit code."""
    parser = Arguments("library", LIBRARY_HELP)
    parser.add_argument("manifest", metavar="MANIFEST")
    parser.add_argument("--database")
    parser.add_argument("--unit", choices=("mm", "in", "inch"), default="mm")
    parser.add_argument("--uncertainty", type=float, default=0.0)
    parser.add_argument("--workers", type=int)
    parser.add_argument("--scheduler")
    parser.add_argument("--seconds", type=float, default=120.0)
    parser.add_argument("--memory", type=float, default=6000.0)
    for kind in ("csv", "json", "junit", "html"):
        parser.add_argument(f"--{kind}")
    parser.add_argument("--every", action="store_true")
    parser.add_argument("--progress", action="store_true")
    if "--help" in words:
        say(LIBRARY_HELP)
        return ALL_WELL
    options = parser.parse_args(words)
    report: ShelfReport = library(
        options.manifest,
        database=options.database,
        workers=options.workers,
        scheduler=options.scheduler,
        unit=options.unit,
        uncertainty_mm=options.uncertainty,
        seconds=options.seconds,
        memory_mb=options.memory,
        progress=True if options.progress else None,
    )
    said = [
        _write(options.csv, report.to_csv),
        _write(options.json, report.to_json),
        _write(options.junit, report.to_junit),
        _write_page(options.html, report),
    ]
    if not any(said):
        say(kernel.fitted_text(report.to_text(every=options.every), terminal_width()))
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


def run_which(words: list[str]) -> int:
    """The verb; gives the exit code."""
    parser = Arguments("which", WHICH_HELP)
    parser.add_argument("database", metavar="DATABASE")
    for name in ("--hole", "--hole-fit", "--shaft", "--shaft-fit"):
        parser.add_argument(name)
    parser.add_argument("--cut", type=float, default=0.0)
    parser.add_argument("--uncertainty", type=float, default=0.0)
    parser.add_argument("--unit", choices=("mm", "in", "inch"), default="mm")
    parser.add_argument("--json", action="store_true")
    if "--help" in words:
        say(WHICH_HELP)
        return ALL_WELL
    options = parser.parse_args(words)
    found = which(
        options.database,
        hole=options.hole,
        hole_fit=options.hole_fit,
        shaft=options.shaft,
        shaft_fit=options.shaft_fit,
        cut_mm=options.cut,
        uncertainty_mm=options.uncertainty,
        unit=options.unit,
    )
    found = shortened(found, Path(options.database).absolute().parent)
    if options.json:
        say(
            json.dumps({"spotblue": kernel.version, "found": [asdict(item) for item in found]})
            + "\n"
        )
    else:
        say(kernel.fitted_text(which_text(found), terminal_width()))
    outcomes = {item.outcome for item in found}
    return 0 if "conforming" in outcomes else 3 if outcomes else 1


def main(words: list[str]) -> int:
    """Runs a verb; what is wrong is one line on standard error and exit code 2."""
    verbs = {"library": run_library, "which": run_which}
    try:
        if not words or words[0] not in verbs:
            raise spotblue.BadInputError("spotblue.shelf: the first word is library or which")
        code = verbs[words[0]](words[1:])
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
