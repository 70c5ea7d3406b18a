"""Features of a looked-at file as plain values, and which of them a claim means."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

from spotblue._kernel import shelf as kernel
from spotblue.errors import BadInputError

WORDS = ("taper bore", "taper", "bore", "outside", "face", "slot", "width", "length")
HOLES = ("bore", "taper bore", "slot")
SHAFTS = ("outside", "taper", "width")  # of a face or a length either may be said
B4_1 = ("RC", "LC", "LT", "LN", "FN")  # fits of both sides
INCH_MM = 25.4
Triple = tuple[float, float, float]

_NAME = re.compile(
    r"^(?:(?P<part>.*\S)\s*:\s+)?(?P<word>taper bore|taper|bore|outside|face|slot|width|length)"
    r"(?:\s+(?P<size>[^@#]*[^@#\s]))?(?:\s*@\s*(?P<at>-?[\d.]+))?(?:\s*#\s*(?P<ordinal>\d+))?$"
)


@dataclass(frozen=True)
class Named:
    """A feature's name taken apart; sizes and positions are mm."""

    text: str
    part: str
    word: str
    size_mm: float | None
    at_mm: float | None
    ordinal: int | None


@dataclass(frozen=True)
class Feature:
    """A feature of size or a face of one part, in the part's own frame; mm."""

    id: str
    part: str
    word: str
    size_mm: float
    at: Triple
    along: Triple
    ends: tuple[float, float] = (0.0, 0.0)
    coverage_deg: float = 360.0
    aliases: tuple[str, ...] = ()
    """Of a body: its part, and what the file calls the solid."""

    def to_dict(self) -> dict[str, Any]:
        return dict(vars(self))


@dataclass
class Found:
    """What a claim's words lead to: features, or the reason why there is none."""

    features: list[Feature] = field(default_factory=list)
    kind: str = ""
    reason: str = ""
    cure: str = ""


def parse_name(text: str, unit: str) -> Named | None:
    """Takes a feature's name apart; None when it is no feature's name.

    Raises BadInputError when its size is no length.
    """
    match = _NAME.match(text.strip())
    if not match:
        return None
    size = match["size"]
    size_mm = kernel.length_mm(size, unit) if size and "/" not in size.split(" ")[0] else None
    if size and size_mm is None and match["word"] not in ("taper", "taper bore"):
        size_mm = kernel.length_mm(size, unit) if "x" not in size else None
    return Named(
        text.strip(),
        match["part"] or "",
        match["word"],
        size_mm,
        float(match["at"]) if match["at"] else None,
        int(match["ordinal"]) if match["ordinal"] else None,
    )


def refuse_other_side(tolerance_class: str, *, hole: bool, what: str) -> None:
    """BadInputError for a shaft's class of ISO 286 on a hole, or a hole's on a shaft."""
    letters = tolerance_class.strip().rstrip("0123456789")
    if letters.upper() in B4_1 or letters == (letters.upper() if hole else letters.lower()):
        return
    side, other = ("hole", "shaft") if hole else ("shaft", "hole")
    own = tolerance_class.upper() if hole else tolerance_class.lower()
    rule = f"{tolerance_class} is a {other}'s class, and {what} is a {side}"
    cure = f"write a {side}'s, like {own}, or name the {other}"
    if what == f"a {side}":
        rule = f"{tolerance_class} is a {other}'s class and says nothing of a {side}"
    raise BadInputError(f"{rule}; {cure}", rule=rule, cure=cure)


def triple(values: Sequence[float]) -> Triple:
    """Three coordinates."""
    x, y, z = values
    return x, y, z


def features_of(look: dict[str, Any]) -> list[Feature]:
    """Every cylinder, cone, plane and width of a look's JSON."""
    found: list[Feature] = []
    for product in look["products"]:
        part = product["id"]
        for item in product["features"]:
            size = item.get("diameter_mm", item.get("width_mm", item.get("large_mm", 0.0)))
            name = item["id"][len(part) + 2 :]
            word = next((word for word in WORDS if name.startswith(word + " ")), "")
            spans = item.get("intervals_mm") or [[0.0, 0.0]]
            found.append(
                Feature(
                    item["id"],
                    part,
                    word,
                    size,
                    triple(item["axis"]["at"]),
                    triple(item["axis"]["along"]),
                    (spans[0][0], spans[-1][1]),
                    item.get("coverage_deg", 360.0),
                    tuple(product[key] for key in ("part", "body_name") if key in product),
                )
            )
    return found


def _dot(a: Triple, b: Triple) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def lengths_of(features: list[Feature]) -> list[Feature]:
    """The distances between two parallel faces of one part that look away from each other."""
    found: list[Feature] = []
    planes = [item for item in features if item.word == "face"]
    for index, one in enumerate(planes):
        for other in planes[index + 1 :]:
            if one.part != other.part or _dot(one.along, other.along) > -1.0 + 1e-9:
                continue
            distance = _dot(one.at, one.along) - _dot(other.at, one.along)
            if distance > 0.0:
                name = f"{one.id} to {other.id[len(other.part) + 2 :]}"
                found.append(
                    Feature(
                        name, one.part, "length", distance, one.at, one.along, aliases=one.aliases
                    )
                )
    return found


def near_mm(size_mm: float) -> float:
    """How far a feature's size may be from a claimed one and still be what the claim means."""
    return max(0.5, 0.01 * size_mm)


def _missing(
    named: Named, size_mm: float | None, alike: list[Feature], every: list[Feature]
) -> Found:
    if size_mm is not None and alike:
        for factor, times in ((INCH_MM, "times 25.4"), (1.0 / INCH_MM, "over 25.4")):
            for feature in alike:
                if abs(feature.size_mm - size_mm * factor) <= 0.01 * size_mm * factor:
                    return Found(
                        kind="unit",
                        reason=f"{feature.id} is {feature.size_mm:.4f} mm, the size claimed {times}",
                        cure="one of the two was drawn in mm and taken for inches: look which",
                    )
        wanted_mm = size_mm
        nearest = min(alike, key=lambda item: abs(item.size_mm - wanted_mm))
        return Found(
            kind="missing feature",
            reason=f"no {named.word} near {size_mm:g} mm; the nearest is {nearest.id}",
            cure="see what the file is with: spotblue look FILE",
        )
    words = [item.id for item in every if item.word != "face"] or [item.id for item in every]
    nearest_name = kernel.nearest_word(named.text, words)
    return Found(
        kind="missing feature",
        reason=f"the file has no {named.word}"
        + (f" in a part {named.part}" if named.part else "")
        + (f"; the nearest name is {nearest_name}" if nearest_name else ""),
        cure="see what the file is with: spotblue look FILE",
    )


def find_features(
    named: Named, size_mm: float | None, features: list[Feature], rivals: list[float]
) -> Found:
    """The features that a claim's words mean.

    A name as look writes it means that one. Otherwise all of its kind whose size is near the
    claimed one, but for those that another claim (its size in `rivals`) is nearer to: where a part
    has two journals of 30, a claim about "outside 30" is about both.
    """
    size_mm = size_mm if size_mm is not None else named.size_mm
    wanted_mm = size_mm or 0.0

    def off(feature: Feature) -> float:
        return abs(feature.size_mm - wanted_mm)

    pool = lengths_of(features) if named.word == "length" else features
    exact = [
        item for item in pool if item.id == named.text or item.id == f"{item.part}: {named.text}"
    ]
    if exact and (size_mm is None or abs(exact[0].size_mm - size_mm) <= near_mm(size_mm)):
        return Found(exact)
    alike = [
        item
        for item in pool
        if item.word == named.word
        and (not named.part or named.part in (item.part, *item.aliases))
        and (named.at_mm is None or re.search(rf"@ {named.at_mm:g}(?: #\d+)?$", item.id))
        and (named.ordinal is None or item.id.endswith(f"#{named.ordinal}"))
    ]
    if size_mm is None:
        if len(alike) == 1:
            return Found(alike)
        if alike:
            names = ", ".join(item.id for item in alike[:6])
            return Found(
                kind="unclear feature",
                reason=f"the file has {len(alike)} of that name: {names}",
                cure="give the size, or the whole name",
            )
        return _missing(named, None, alike, features)
    near = [item for item in alike if abs(item.size_mm - size_mm) <= near_mm(size_mm)]
    if not near:
        return _missing(named, size_mm, alike, features)
    if named.word == "length":
        return Found([min(near, key=off)])
    near.sort(key=off)
    mine = [
        item
        for item in near
        if all(abs(item.size_mm - size_mm) <= abs(item.size_mm - rival) for rival in rivals)
    ]
    return Found(mine or near[:1])


def axis_offset(feature: Feature, datum: Feature) -> float:
    """Greatest distance of a feature's axis from a datum's, over the feature's own length; mm."""
    if feature.part != datum.part and not set(feature.aliases[:1]) & set(datum.aliases[:1]):
        raise BadInputError(
            f"{feature.id} and {datum.id} are of two parts", rule="coaxial is said within one part"
        )
    worst_off = 0.0
    for station in feature.ends:
        point = [p + station * d for p, d in zip(feature.at, feature.along)]
        away = [p - q for p, q in zip(point, datum.at)]
        along = sum(a * d for a, d in zip(away, datum.along))
        square = [a - along * d for a, d in zip(away, datum.along)]
        worst_off = max(worst_off, math.sqrt(sum(s * s for s in square)))
    return worst_off
