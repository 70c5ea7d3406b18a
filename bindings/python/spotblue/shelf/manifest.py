"""Reading a manifest: what each file of a shelf claims to be, as CSV or TOML.

Every mistake is an error that names file, line, column and the cure.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import spotblue
from spotblue._kernel import shelf as kernel
from spotblue.base import nearest_word, parse_length, parse_unit, path_of_shown
from spotblue.shelf.claim import Claim
from spotblue.shelf.classes import fit_clearance, refuse_other_side, size_limits
from spotblue.shelf.features import HOLES, SHAFTS, WORDS, parse_name
from spotblue.shelf.outputs import SQLITE
from spotblue.shelf.toml_manifest import toml_entries
from spotblue.shelf.words import without_apostrophe

COLUMNS = (
    "file",
    "feature",
    "fit",
    "size",
    "class",
    "lower",
    "upper",
    "tolerance",
    "material",
    "solids",
    "coaxial_with",
    "within",
    "notes",
)
UNITS = ("mm", "inch", "in")
MOST_MB = 64.0  # of a manifest: a million rows
_NUMBER = r"[+-]?\s*(?:[0-9]{1,30}\.?[0-9]{0,30}|\.[0-9]{1,30})"


@dataclass(frozen=True)
class Entry:
    """One claim as written: cells by column, and where it and what stands apart from it are."""

    line: int
    cells: dict[str, Any]
    lines: dict[str, int] = field(default_factory=dict)


@dataclass(frozen=True)
class Manifest:
    """A manifest that has been read; file names are relative to its folder."""

    path: Path
    claims: tuple[Claim, ...]
    unit: str = "mm"  # of its bare numbers


def mistake(path: Path, line: int, column: str, rule: str, cure: str) -> spotblue.BadInputError:
    """The error for one cell."""
    place = f"line {line}" + (f", {column}" if column else "")
    text = f"{path}, {place}: {rule}; {cure}"
    return spotblue.BadInputError(text, str(path), place, rule, cure)


def check_columns(path: Path, line: int, names: Iterable[str], also: tuple[str, ...] = ()) -> None:
    """Refuses a column that is not known, naming the nearest that is."""
    seen: set[str] = set()
    for name in names:
        if name not in COLUMNS + also:
            nearest = nearest_word(name, list(COLUMNS + also))
            known = ", ".join(COLUMNS)
            raise mistake(
                path, line, name or "an empty column", "no such column",
                f"the nearest is {nearest}; known are {known}",
            )  # fmt: skip
        if name in seen:
            raise mistake(path, line, name, "the column is there twice", "leave one of them out")
        seen.add(name)


def refuse_model(path: Path) -> None:
    """A model in place of the manifest is told as what it is."""
    try:
        model = path.is_file() and spotblue.is_model_file(path)
    except (OSError, spotblue.Error):
        return  # reading it tells
    if model:
        rule, cure = "is a model, no manifest", f"spotblue look {path}, or name its folder"
        raise spotblue.BadInputError(f"{path}: {rule}; {cure}", str(path), "", rule, cure)


def read_text(path: Path) -> str:
    """The manifest's text; errors name it."""
    there = path.is_file()  # an empty one claims nothing, which is told with its line
    data = kernel.read_plain(path, MOST_MB, "a manifest") if not there or path.stat().st_size else b""
    if data.startswith(SQLITE):
        rule, cure = "is a database, no manifest", "name the manifest it was filled by"
        raise spotblue.BadInputError(f"{path}: {rule}; {cure}", str(path), "", rule, cure)
    try:
        return data.decode("utf-8").removeprefix("\ufeff")
    except UnicodeDecodeError as error:
        before = (data[: error.start] + b".").splitlines()
        rule = f"byte {len(before[-1])} of the line is no UTF-8"
        raise mistake(path, len(before), "", rule, "save it as UTF-8") from None


def quote_line(lines: list[str], first: int, delimiter: str) -> int:
    """Line of the quote that goes wrong in the record that begins on line `first`."""
    opened, inside, before = first, False, delimiter
    for number, line in enumerate(lines[first - 1 :], first):
        for letter in line:
            if letter == '"' and (inside or before in '"\r\n' + delimiter):
                if not inside and before != '"':
                    opened = number
                inside = not inside
            elif before == '"' and not inside and letter not in "\r\n" + delimiter:
                return opened
            before = letter
    return opened


def csv_rows(path: Path, text: str, delimiter: str) -> Iterator[tuple[int, list[str]]]:
    """Records, each with the line on which it begins; BadInputError for a quote that goes wrong."""
    lines = list(io.StringIO(text, newline=""))
    reader = csv.reader(lines, delimiter=delimiter, strict=True)
    while True:
        first = reader.line_num + 1
        try:
            yield first, [without_apostrophe(cell.strip()) for cell in next(reader)]
        except StopIteration:
            return
        except csv.Error as error:
            rule, cure = str(error), "take the letter out"
            if '"' in "".join(lines[first - 1 : reader.line_num]):
                first = quote_line(lines, first, delimiter)
                rule = "the quote that opens here is not closed at the end of its cell"
                cure = 'close it; a quote in a cell is written ""'
            raise mistake(path, first, "", rule, cure) from None


def csv_entries(path: Path, text: str) -> list[Entry]:
    """Rows of a CSV manifest; a semicolon may stand for the comma."""
    head = text.split("\n", 1)[0]
    entries: list[Entry] = []
    header: list[str] = []
    for line, cells in csv_rows(path, text, ";" if head.count(";") > head.count(",") else ","):
        if not any(cells) or cells[0].startswith("#"):
            continue
        if not header:
            header = [cell.lower() for cell in cells]
            check_columns(path, line, header)
            continue
        if len(cells) > len(header):
            rule = f"{len(cells)} cells under {len(header)} columns"
            raise mistake(path, line, "", rule, 'put "..." round a cell with a comma')
        filled = {column: cell for column, cell in zip(header, cells) if cell}
        for column, cell in filled.items():
            if column != "notes" and len(cell.splitlines()) > 1:
                rule = "the cell goes on over the end of its line"
                raise mistake(path, line, column, rule, "close its quote where the cell ends")
        entries.append(Entry(line, filled))
    if not header:
        raise mistake(
            path, 1, "", "the manifest is empty", "begin with a line of columns: file,..."
        )
    return entries


def name_of_shown(text: str) -> str:
    """The feature that a drafted manifest writes so; what stands for no text stays as it is."""
    name = str(path_of_shown(text))
    return name if name.encode("utf-8", "ignore").decode() == name else text


class ClaimReader:
    """Turns entries into claims; holds the manifest's place and unit for the errors."""

    def __init__(self, path: Path, unit: str) -> None:
        self.path = path
        self.unit = unit

    def claim(self, entry: Entry) -> Claim:
        """One claim, or the error that says what is wrong with it."""
        text = {key: self._text(value) for key, value in entry.cells.items()}
        file = text.get("file", "")
        if not file:
            raise self._mistake(entry, "file", "no file is named", "every row names a file")
        feature, mate = text.get("feature", ""), ""
        if text.get("fit"):
            if feature:
                rule = "a feature and a fit in one row"
                raise self._mistake(entry, "fit", rule, "one row is one claim: make two rows")
            feature, mate = self._pair(entry, text["fit"])
        feature, mate = name_of_shown(feature), name_of_shown(mate)
        for column, name in (("fit" if mate else "feature", feature), ("fit", mate)):
            if name:
                self._check_feature(entry, column, name)
        size = self._length(entry, "size")
        if size is None and feature and not mate:
            named = parse_name(feature, self.unit)
            size = named.size_mm if named else None
        lower, upper = self._limits(entry, size, bool(mate))
        claim = Claim(
            line=entry.line,
            file=file,
            feature=feature,
            mate=mate,
            size_mm=size,
            tolerance_class=text.get("class", ""),
            lower_mm=lower,
            upper_mm=upper,
            material=text.get("material", ""),
            solids=self._solids(entry),
            coaxial_with=name_of_shown(text.get("coaxial_with", "")),
            within_mm=self._length(entry, "within"),
            notes=text.get("notes", ""),
            unit=str(parse_unit(self.unit)),
        )
        self._check_together(entry, claim)
        return claim

    @staticmethod
    def _text(value: Any) -> str:
        return "" if value is None else str(value).strip()

    def _mistake(self, entry: Entry, column: str, rule: str, cure: str) -> spotblue.BadInputError:
        return mistake(self.path, entry.lines.get(column, entry.line), column, rule, cure)

    def _length(self, entry: Entry, column: str) -> float | None:
        text = self._text(entry.cells.get(column))
        if not text:
            return None
        try:
            value = parse_length(text, self.unit)
        except spotblue.Error as error:
            raise self._mistake(entry, column, error.rule or str(error), error.cure) from None
        if column in ("size", "within") and value <= 0.0:
            raise self._mistake(entry, column, f"{text} is not more than 0", "write it positive")
        return value

    def _pair(self, entry: Entry, text: str) -> tuple[str, str]:
        parts = re.split(r"\s+with\s+", text)
        if len(parts) != 2:
            cure = 'write the hole, "with" and the shaft: Wheel: bore with Stud: journal'
            raise self._mistake(entry, "fit", f"{text} is no pair", cure)
        return parts[0].strip(), parts[1].strip()

    def _check_feature(self, entry: Entry, column: str, text: str) -> None:
        try:
            named = parse_name(text, self.unit)
        except spotblue.Error as error:
            raise self._mistake(entry, column, error.rule or str(error), error.cure) from None
        if named is None:
            word = text.rpartition(": ")[2].split(" ")[0]
            nearest = nearest_word(word, list(WORDS))
            cure = (
                f"the nearest is {nearest}; a name begins with one of {', '.join(WORDS)}, "
                'or has its part before it: "Stud: journal"'
            )
            raise self._mistake(entry, column, f"{text} is no feature's name", cure)

    def _limits(
        self, entry: Entry, size: float | None, fit: bool
    ) -> tuple[float | None, float | None]:
        text = self._text(entry.cells.get("tolerance"))
        lower, upper = self._length(entry, "lower"), self._length(entry, "upper")
        given = [name for name in ("class", "tolerance") if self._text(entry.cells.get(name))]
        given += ["lower and upper"] if lower is not None or upper is not None else []
        if len(given) > 1:
            rule = f"{' and '.join(given)} are both given"
            raise self._mistake(entry, given[1], rule, "say it one way")
        if (lower is None) != (upper is None):
            column = "lower" if lower is None else "upper"
            raise self._mistake(entry, column, "only one limit is given", "give lower and upper")
        if lower is not None and upper is not None and lower > upper:
            raise self._mistake(entry, "lower", "the limits are reversed", "the lesser is lower")
        if not text:
            return lower, upper
        if size is None or fit:
            cure = "give the size it is of" if not fit else "give lower and upper of the clearance"
            raise self._mistake(entry, "tolerance", "nothing to add it to", cure)
        low, high = self._deviations(entry, text)
        return size + low, size + high

    def _deviations(self, entry: Entry, text: str) -> tuple[float, float]:
        scale = parse_length("1", self.unit)
        both = re.fullmatch(rf"(?:±|\+/-|\+-)?\s*({_NUMBER})", text)
        if both and not text.startswith("-"):
            value = float(both[1].replace(" ", "")) * scale
            return -value, value
        two = re.fullmatch(rf"({_NUMBER})(?:\s*/\s*|\s+)({_NUMBER})", text)
        if not two:
            cure = 'write "0.05", "+0.025/0" or "-0.007/-0.020"'
            raise self._mistake(entry, "tolerance", f"{text} is no tolerance", cure)
        ends = sorted(float(end.replace(" ", "")) * scale for end in two.groups())
        return ends[0], ends[1]

    def _solids(self, entry: Entry) -> int | None:
        text = self._text(entry.cells.get("solids"))
        if not text:
            return None
        if not re.fullmatch("[0-9]{1,9}", text) or int(text) < 1:
            raise self._mistake(entry, "solids", f"{text} is no number of solids", "1, 2, ...")
        return int(text)

    def _check_together(self, entry: Entry, claim: Claim) -> None:
        if claim.coaxial_with:
            self._check_feature(entry, "coaxial_with", claim.coaxial_with)
            if claim.within_mm is None:
                raise self._mistake(entry, "within", "no distance is given", "say how near: 0.05")
        elif claim.within_mm is not None:
            cure = "name the feature it shares its axis with, or leave within empty"
            raise self._mistake(entry, "coaxial_with", "no feature is named", cure)
        if claim.tolerance_class:
            self._check_class(entry, claim)
        elif claim.lower_mm is not None and not claim.feature:
            raise self._mistake(
                entry, "feature", "limits of nothing", "name the feature or the fit"
            )

    def _check_class(self, entry: Entry, claim: Claim) -> None:
        text = claim.tolerance_class
        if not claim.feature:
            raise self._mistake(
                entry, "feature", f"{text} of nothing", "name the feature or the fit"
            )
        if claim.size_mm is None and not claim.mate:
            raise self._mistake(entry, "size", f"{text} of no size", "give the nominal size")
        try:
            if claim.mate:
                fit_clearance(claim.size_mm or 10.0, text)
                return
            named = parse_name(claim.feature, self.unit)
            assert named is not None  # it has been checked
            assert claim.size_mm is not None  # there is no mate
            if not named.word:  # the file tells which side a name of its own is
                size_limits(claim.size_mm, text, hole=text[:1].isupper())
                return
            size_limits(claim.size_mm, text, hole=named.word in HOLES)
            if named.word in HOLES + SHAFTS:
                article = "an" if named.word == "outside" else "a"
                what = f"{article} {named.word}"
                refuse_other_side(text, hole=named.word in HOLES, what=what)
        except spotblue.Error as error:
            if (
                claim.mate
                and claim.size_mm is None
                and isinstance(error, spotblue.NotInStandardError)
            ):
                return
            raise self._mistake(entry, "class", error.rule or str(error), error.cure) from None


def read_manifest(path: Path, unit: str = "mm") -> Manifest:
    """Reads a manifest; bare numbers are in `unit` unless a TOML manifest says its own.

    Raises FileAccessError when it cannot be read, BadInputError for what is wrong in it.
    """
    refuse_model(path)
    text = read_text(path)
    if path.suffix.lower() == ".toml":
        unit, raw = toml_entries(path, text, unit)
        entries = [Entry(*claim) for claim in raw]
    else:
        entries = csv_entries(path, text)
    if not entries:
        raise mistake(path, 1, "", "the manifest claims nothing", "give each file a row")
    reader = ClaimReader(path, unit)
    return Manifest(path, tuple(reader.claim(entry) for entry in entries), parse_unit(unit))
