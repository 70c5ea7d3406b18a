"""What a manifest says of a file, and what came of judging it: plain values.

Lengths are mm; clearance is positive and interference negative, on the diameter.
"""

from __future__ import annotations

import json
import math
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

from spotblue.base import Limits as SizeLimits
from spotblue.base import judge

CONFORMING = "conforming"
NONCONFORMING = "nonconforming"
UNDECIDED = "undecided"
PLACE = ("line", "file", "notes")  # of a claim: what it says is the same wherever it stands
UNREAD = ("bad file", "missing file", "not read")  # kinds of row: nothing was seen of the file
WORST_FIRST = (NONCONFORMING, UNDECIDED, CONFORMING)


@dataclass(frozen=True)
class Claim:
    """One row of a manifest: what one file is said to be.

    `feature` and `mate` are names as look gives them, with or without part, size and position;
    `mate` is the shaft when the claim is a fit. `lower_mm` and `upper_mm` are limits of the size,
    of the clearance when the claim is a fit. `unit` is that of bare sizes within names.
    """

    line: int
    file: str
    feature: str = ""
    mate: str = ""
    size_mm: float | None = None
    tolerance_class: str = ""
    lower_mm: float | None = None
    upper_mm: float | None = None
    material: str = ""
    solids: int | None = None
    coaxial_with: str = ""
    within_mm: float | None = None
    notes: str = ""
    unit: str = "mm"

    @cached_property
    def rule(self) -> str:
        """What is claimed, without where it stands, which file it is of, or what is noted."""
        said = {key: value for key, value in vars(self).items() if key not in PLACE}
        return json.dumps(said, sort_keys=True)

    def title(self) -> str:
        """The claim's feature or fit as a person reads it."""
        if self.mate:
            return f"{self.feature} with {self.mate}"
        return self.feature


@dataclass(frozen=True)
class Row:
    """One judged statement about one file; `claim` is its place among the file's claims, or None.

    `kind` is what was judged: "size", "fit", "coaxial", "foul", "missing feature", ...
    """

    kind: str
    outcome: str
    wanted: str = ""
    found: str = ""
    margin_mm: float | None = None
    basis: str = ""
    advice: str = ""
    feature: str = ""
    claim: int | None = None
    file: str = ""
    line: int = 0
    notes: str = ""

    def to_dict(self) -> dict[str, Any]:
        """The fields that say something, for JSON."""
        return {key: value for key, value in vars(self).items() if value not in ("", None)}


@dataclass(frozen=True)
class Limits:
    """How much one file may take: wall time, and memory beyond what the worker starts with."""

    seconds: float = 120.0
    memory_mb: float = 6000.0


@dataclass(frozen=True)
class Task:
    """One file with all that is claimed of it; sent to a worker. `path` is in its shown form.

    `beside`: digest of the files that it leaves shapes to, empty where it refers to none.
    `apart`: read in a child of the worker, as a file that ended a worker is; slower.
    `share_mb`: what the machine has for each of its workers, where that is known.
    """

    path: str
    sha256: str
    claims: tuple[Claim, ...]
    limits: Limits
    uncertainty_mm: float
    rules: str
    beside: str = ""
    apart: bool = False
    share_mb: float = math.inf

    def memory_mb(self) -> float:
        """What its worker may take."""
        return min(self.limits.memory_mb, self.share_mb)

    def is_cramped(self) -> bool:
        """Whether that is for want of the machine's memory less than the file may take."""
        return self.share_mb < self.limits.memory_mb

    def key(self) -> tuple[str, str]:
        """Content and rules: what a result is kept by."""
        return self.sha256, self.rules


@dataclass
class Examined:
    """What a worker found on one file.

    `passing`: it could not be read just now, or the machine had no room for the work; that says
    nothing of the file.
    """

    sha256: str
    rows: list[Row] = field(default_factory=list)
    features: list[dict[str, Any]] = field(default_factory=list)
    seconds: float = 0.0
    passing: bool = False


def worst(outcomes: list[str]) -> str:
    """The worst of some outcomes; conforming when there are none."""
    return min(outcomes, key=WORST_FIRST.index, default=CONFORMING)


def outcome_of(value_mm: float, uncertainty_mm: float, lower_mm: float, upper_mm: float) -> str:
    """Outcome of a value against limits, by ISO 14253-1."""
    limits = SizeLimits(lower_mm=lower_mm, upper_mm=upper_mm)
    return str(judge(value_mm, uncertainty_mm, limits=limits))


def bad_file(reason: str, cure: str = "", place: str = "") -> Row:
    """The one row of a file that nothing could be seen of."""
    return Row(
        "bad file",
        NONCONFORMING,
        "a readable file",
        f"{place}: {reason}" if place else reason,
        advice=cure,
    )


def not_read(reason: str, cure: str = "", place: str = "") -> Row:
    """The one row of a file that may be as it should: it, or the machine, was not to be had."""
    return Row(
        "not read",
        UNDECIDED,
        "a file that can be read now",
        f"{place}: {reason}" if place else reason,
        advice=f"{cure}; run again" if cure else "run again",
    )


def passing(sha256: str, reason: str, cure: str = "", place: str = "") -> Examined:
    """What is shown in this run and kept for no other."""
    return Examined(sha256, [not_read(reason, cure, place)], passing=True)
