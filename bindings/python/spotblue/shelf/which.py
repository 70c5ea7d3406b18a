"""Which parts of a shelf go into a hole, onto a shaft, or between a hub and a journal.

Lengths are mm; clearance is positive and interference negative, on the diameter.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import spotblue
from spotblue._kernel import shelf as kernel
from spotblue.base import parse_length, path_of_shown, shown_name
from spotblue.shelf.claim import CONFORMING, NONCONFORMING, WORST_FIRST, outcome_of, worst
from spotblue.shelf.classes import fit_clearance, refuse_other_side, size_limits
from spotblue.shelf.features import Feature, axis_offset, triple
from spotblue.shelf.store import Store

_LIMITS = re.compile(r"^\s*(\S.*?)\s+to\s+(\S.*?)\s*$")
_CLASSED = re.compile(r"^\s*(.+?)\s+([A-Za-z]+\d+(?:\s*/\s*[A-Za-z]+\d+)?)\s*$")
COAXIAL_MM = 1e-3  # a turned part's own bore and outside; a plate's bore is elsewhere


@dataclass(frozen=True)
class Mate:
    """What the part must go with: its own limits, and the clearance wanted."""

    lower_mm: float
    upper_mm: float
    least_mm: float
    greatest_mm: float


@dataclass(frozen=True)
class Seat:
    """One feature of the shelf against one mate, after the cut."""

    feature: str
    size_mm: float
    cut_mm: float
    least_clearance_mm: float
    greatest_clearance_mm: float
    margin_mm: float
    outcome: str


@dataclass(frozen=True)
class Candidate:
    """A part of the shelf that fits, or would after its cuts; `in_hole` and `on_shaft` as asked."""

    file: str
    part: str
    outcome: str
    in_hole: Seat | None = None
    on_shaft: Seat | None = None

    def seats(self) -> list[Seat]:
        """The one or two seats that were asked for."""
        return [seat for seat in (self.in_hole, self.on_shaft) if seat is not None]

    def cut_mm(self) -> float:
        """Metal to take off in all, on the diameter."""
        return sum(seat.cut_mm for seat in self.seats())

    def margin_mm(self) -> float:
        """The least distance of a clearance from its limits."""
        return min(seat.margin_mm for seat in self.seats())


def read_size(text: str, unit: str, *, hole: bool) -> tuple[float, float, float]:
    """Lower, upper and nominal of "44", "44 H7" or "43.98 to 44.01"; mm."""
    limits = _LIMITS.match(text)
    if limits:
        lower, upper = (parse_length(part, unit) for part in limits.groups())
        if lower > upper:
            raise spotblue.BadInputError(f"{text}: the limits are reversed; the lesser comes first")
        return lower, upper, 0.5 * (lower + upper)
    classed = _CLASSED.match(text)
    if classed and classed[2].lower() not in ("mm", "in", "inch"):
        nominal = parse_length(classed[1], unit)
        lower, upper = size_limits(nominal, classed[2], hole=hole)
        refuse_other_side(classed[2], hole=hole, what="a hole" if hole else "a shaft")
        return lower, upper, nominal
    value = parse_length(text, unit)
    return value, value, value


def read_fit(text: str, unit: str, size_mm: float) -> tuple[float, float]:
    """Least and greatest clearance of "H7/g6", "44 H7/g6", "RC4" or "0.02 to 0.05"; mm."""
    limits = _LIMITS.match(text)
    if limits:
        least, greatest = (parse_length(part, unit) for part in limits.groups())
        if least > greatest:
            raise spotblue.BadInputError(f"{text}: the limits are reversed; the lesser comes first")
        return least, greatest
    classed = _CLASSED.match(text)
    nominal = parse_length(classed[1], unit) if classed else usual_nominal(size_mm)
    return fit_clearance(nominal, classed[2] if classed else text.strip())


def usual_nominal(size_mm: float) -> float:
    """The whole or half millimetre a size was most likely made to; itself where none is near."""
    for step in (1.0, 0.5):
        near = round(size_mm / step) * step
        if near > 0.0 and abs(near - size_mm) <= 0.002 * size_mm + 0.02:
            return near
    return size_mm


def seat_after_cut(
    feature: dict[str, Any], mate: Mate, *, cut_mm: float, uncertainty_mm: float, in_hole: bool
) -> Seat:
    """The feature against its mate as it is, or with the least cut that brings it into the limits.

    A shaft is turned down and a bore opened out, both of which add clearance: what has too much
    already can not be mended by a cut.
    """
    size = feature["size_mm"]
    sign = 1.0 if in_hole else -1.0

    def clearance(of_size: float) -> tuple[float, float]:
        ends = [sign * (mate.lower_mm - of_size), sign * (mate.upper_mm - of_size)]
        return min(ends) - uncertainty_mm, max(ends) + uncertainty_mm

    least, greatest = clearance(size)
    cut = 0.0
    if least < mate.least_mm:
        # To the middle of what is allowed, for there is most room for a slip of the hand there.
        middle = 0.5 * (mate.least_mm + mate.greatest_mm) - 0.5 * (least + greatest)
        cut = min(cut_mm, max(0.0, middle))
        least, greatest = least + cut, greatest + cut
    middle_now, half = 0.5 * (least + greatest), 0.5 * (greatest - least)
    outcome = outcome_of(middle_now, max(0.0, half), mate.least_mm, mate.greatest_mm)
    margin = min(least - mate.least_mm, mate.greatest_mm - greatest)
    return Seat(feature["id"], size, cut, least, greatest, margin, outcome)


def _mate(size: str, fit: str | None, unit: str, name: str, *, hole: bool) -> Mate:
    if not fit:
        raise spotblue.BadInputError(
            f'{name}: no fit is given; say which, like "H7/g6", "RC4" or "0.02 to 0.05"'
        )
    asked = name
    try:
        lower, upper, nominal = read_size(size, unit, hole=hole)
        asked = f"{name} fit"
        return Mate(lower, upper, *read_fit(fit, unit, nominal))
    except spotblue.BadInputError as error:
        text = f"{asked}: {error}"
        raise type(error)(text, "", asked, error.rule, error.cure) from None


def _seats(
    store: Store, word: str, mate: Mate, cut_mm: float, uncertainty_mm: float
) -> dict[tuple[str, str], list[tuple[dict[str, Any], Seat]]]:
    in_hole = word == "outside"
    reach = cut_mm + max(abs(mate.least_mm), abs(mate.greatest_mm)) + uncertainty_mm
    found: dict[tuple[str, str], list[tuple[dict[str, Any], Seat]]] = {}
    for feature in store.features(word, mate.lower_mm - reach, mate.upper_mm + reach):
        if not Path(path_of_shown(feature["file"])).is_file():
            continue  # what was taken off the shelf is still in the database
        seat = seat_after_cut(
            feature, mate, cut_mm=cut_mm, uncertainty_mm=uncertainty_mm, in_hole=in_hole
        )
        if seat.outcome != NONCONFORMING:
            found.setdefault((feature["file"], feature["part"]), []).append((feature, seat))
    return found


def _as_feature(fields: dict[str, Any]) -> Feature:
    return Feature(
        fields["id"], fields["part"], "", fields["size_mm"], triple(fields["at"]),
        triple(fields["along"]), (fields["ends"][0], fields["ends"][1]),
    )  # fmt: skip


def which(
    database: Path | str,
    *,
    hole: str | None = None,
    hole_fit: str | None = None,
    shaft: str | None = None,
    shaft_fit: str | None = None,
    cut_mm: float = 0.0,
    uncertainty_mm: float = 0.0,
    unit: str = "mm",
) -> list[Candidate]:
    """Parts of a shelf that go into a hole, onto a shaft, or with both between the two; best first.

    Args:
        database: the results of library(); only what is in it is searched.
        hole, shaft: sizes of what is there: "44.012", "44 H7" or "43.98 to 44.01".
        hole_fit, shaft_fit: what is wanted with it: "H7/s6", "38 H7/s6", "RC4" or "0.02 to 0.05",
            limits of the clearance. Without a nominal the nearest half millimetre is taken.
        cut_mm: metal that may be taken off each seat, on the diameter.
        uncertainty_mm: expanded uncertainty of the sizes on the shelf.
        unit: "mm" or "inch": of bare numbers in the texts.

    First those that need no cut, the widest margin first; then those with the least cut.
    Raises BadInputError for what cannot be asked, FileAccessError for the database.
    """
    if hole is None and shaft is None:
        raise spotblue.BadInputError("which: neither hole nor shaft is given; give one or both")
    for name, value in (("cut", cut_mm), ("uncertainty", uncertainty_mm)):
        if not 0.0 <= value < 1e6:
            raise spotblue.BadInputError(f"which: {name}: {value:g} mm makes no sense; 0 or more")
    path = Path(database)
    if not path.is_file():
        what = "no regular file, so no database" if path.exists() else "no such database"
        rule, cure = what, "fill one first: spotblue library MANIFEST"
        raise spotblue.FileAccessError(f"{path}: {rule}; {cure}", str(path), "", rule, cure)
    inside = _mate(hole, hole_fit, unit, "hole", hole=True) if hole is not None else None
    around = _mate(shaft, shaft_fit, unit, "shaft", hole=False) if shaft is not None else None
    store = Store(path, kernel.version, filled=True)
    try:
        store.refuse_unfilled()
        outer = _seats(store, "outside", inside, cut_mm, uncertainty_mm) if inside else {}
        inner = _seats(store, "bore", around, cut_mm, uncertainty_mm) if around else {}
    finally:
        store.close()
    found: list[Candidate] = []
    if inside and around:
        for key in outer.keys() & inner.keys():
            found += [
                Candidate(*key, worst([out.outcome, bore.outcome]), out, bore)
                for outside, out in outer[key]
                for hollow, bore in inner[key]
                if axis_offset(_as_feature(hollow), _as_feature(outside)) <= COAXIAL_MM
            ]
    else:
        found += [
            Candidate(*key, s.outcome, in_hole=s) for key, all_ in outer.items() for _, s in all_
        ]
        found += [
            Candidate(*key, s.outcome, on_shaft=s) for key, all_ in inner.items() for _, s in all_
        ]
    found.sort(key=_rank)
    return found


def _rank(candidate: Candidate) -> tuple[Any, ...]:
    uncut = candidate.cut_mm() == 0.0
    return (
        WORST_FIRST.index(CONFORMING) - WORST_FIRST.index(candidate.outcome),
        not uncut,
        -candidate.margin_mm() if uncut else candidate.cut_mm(),
        candidate.file,
        candidate.part,
        [seat.feature for seat in candidate.seats()],
    )


def shortened(candidates: list[Candidate], folder: Path) -> list[Candidate]:
    """The same with file names relative to a folder, where they lie in it."""
    shown = shown_name(folder)
    return [
        replace(item, file=str(Path(item.file).relative_to(shown)))
        if Path(item.file).is_relative_to(shown)
        else item
        for item in candidates
    ]
