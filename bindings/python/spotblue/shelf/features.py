"""Features of a looked-at file as plain values, and which of them a claim means."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import Any

import spotblue
from spotblue import FeatureWord, Side
from spotblue.base import nearest_word
from spotblue.errors import BadInputError

LENGTH = "length"  # what a claim says of two faces; no feature's name begins so
WORDS = (*map(str, FeatureWord), LENGTH)
HOLES = (FeatureWord.BORE, FeatureWord.TAPER_BORE, FeatureWord.SLOT)
# Of a face or a length either may be said.
SHAFTS = (FeatureWord.OUTSIDE, FeatureWord.TAPER, FeatureWord.WIDTH)
INCH_MM = 25.4
Triple = tuple[float, float, float]


@dataclass(frozen=True)
class Named:
    """A feature's name taken apart; sizes and positions are mm.

    `size_mm` is what a feature is measured by; `sizes_mm` are all that stand in the name.
    """

    text: str
    part: str
    word: str
    sizes_mm: tuple[float, ...]
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
    names: tuple[str, ...] = ()
    """By its size and place first, then what the file calls its faces."""

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

    A name of its maker's own needs its part, "Stud: journal", and has no word.

    Raises BadInputError when its size is no length, and it has no part.
    """
    text = text.strip()
    part, colon, name = text.rpartition(": ")
    try:
        said = spotblue.parse_partial_feature_name(text, unit)
    except BadInputError:
        if not part or not name:
            raise
        said = None  # a maker's own may begin so: "Stud: bore end"
    if said is None:
        return Named(text, part, "", (), None, None, None) if part and colon and name else None
    one = len(said.sizes_mm) == 1 and said.word != FeatureWord.FACE
    return Named(
        text,
        said.part,
        said.word or LENGTH,
        said.sizes_mm,
        said.sizes_mm[0] if one else None,
        said.position_mm,
        said.ordinal,
    )


def triple(values: Sequence[float]) -> Triple:
    """Three coordinates."""
    x, y, z = values
    return x, y, z


def _triple(point: spotblue.Point) -> Triple:
    return point.x, point.y, point.z


def _ends(intervals_mm: tuple[tuple[float, float], ...]) -> tuple[float, float]:
    return (intervals_mm[0][0], intervals_mm[-1][1]) if intervals_mm else (0.0, 0.0)


def _large_mm(cone: spotblue.Cone) -> float:
    if not cone.intervals_mm:
        return 0.0
    grown = _ends(cone.intervals_mm)[1] * math.tan(math.radians(cone.half_angle_deg))
    return 2.0 * (cone.radius_mm + grown)


def _features_of(product: spotblue.Product) -> Iterator[Feature]:
    aliases = tuple(name for name in (product.part, product.body_name) if name)

    def feature(
        item: Any, word: str, size_mm: float, at: spotblue.Point, along: spotblue.Point,
        ends: tuple[float, float] = (0.0, 0.0), coverage_deg: float = 360.0,
    ) -> Feature:  # fmt: skip
        return Feature(
            f"{product.id}: {item.name}", product.id, str(word), size_mm, _triple(at),
            _triple(along), ends, coverage_deg, aliases, (item.sized_name, *item.given),
        )  # fmt: skip

    def by_side(side: Side, hole: FeatureWord, shaft: FeatureWord) -> FeatureWord:
        return hole if side == Side.INTERNAL else shaft

    for item in product.cylinders:
        yield feature(
            item, by_side(item.side, FeatureWord.BORE, FeatureWord.OUTSIDE), item.diameter_mm,
            item.axis.at, item.axis.along, _ends(item.intervals_mm), item.coverage_deg,
        )  # fmt: skip
    for cone in product.cones:
        yield feature(
            cone, by_side(cone.side, FeatureWord.TAPER_BORE, FeatureWord.TAPER), _large_mm(cone),
            cone.axis.at, cone.axis.along, _ends(cone.intervals_mm), cone.coverage_deg,
        )  # fmt: skip
    planes = product.planes
    for plane in planes:
        yield feature(plane, FeatureWord.FACE, 0.0, plane.at, plane.normal)
    for width in product.widths:
        first = planes[width.first]
        yield feature(
            width, by_side(width.side, FeatureWord.SLOT, FeatureWord.WIDTH), width.width_mm,
            first.at, first.normal,
        )  # fmt: skip


def features_of(look: spotblue.Look) -> list[Feature]:
    """Every cylinder, cone, plane and width of a look."""
    return [feature for product in look.model.products for feature in _features_of(product)]


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


def _named_sizes(named: Named, size_mm: float | None) -> tuple[float, ...]:
    """The sizes that only a feature's name has: all of a face, two of a taper."""
    if named.word == FeatureWord.FACE:
        return named.sizes_mm or (() if size_mm is None else (size_mm,))
    return named.sizes_mm if len(named.sizes_mm) > 1 else ()


def _has_sizes(feature: Feature, sizes_mm: tuple[float, ...]) -> bool:
    said = spotblue.parse_partial_feature_name(feature.names[0]) if feature.names else None
    if said is None or len(said.sizes_mm) != len(sizes_mm):
        return False
    pairs = zip(sorted(said.sizes_mm), sorted(sizes_mm))
    return all(abs(own - wanted) <= near_mm(wanted) for own, wanted in pairs)


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
            reason=f"no {named.word or named.text} near {size_mm:g} mm; the nearest is "
            f"{nearest.id}, {nearest.size_mm:g} mm",
            cure="see what the file is with: spotblue look FILE",
        )
    words = [item.id for item in every if item.word == named.word]
    words = words or [item.id for item in every if not named.word or item.word != "face"]
    nearest_name = nearest_word(named.text, words or [item.id for item in every])
    sizes = " by ".join(f"{size:g}" for size in _named_sizes(named, size_mm))
    return Found(
        kind="missing feature",
        reason=f"the file has no {named.word or named.text}"
        + (f" of {sizes} mm" if sizes else "")
        + (f" in a part {named.part}" if named.part and named.word else "")
        + (f"; the nearest name is {nearest_name}" if nearest_name else ""),
        cure="see what the file is with: spotblue look FILE",
    )


def _sized(feature: Feature) -> str:
    return feature.names[0] if feature.names else ""


def _is_one_of(text: str, feature: Feature, names: Sequence[str]) -> bool:
    parts = (feature.part, *feature.aliases)
    return any(text in (name, *(f"{part}: {name}" for part in parts)) for name in names)


def _is_called(feature: Feature, text: str) -> bool:
    return _is_one_of(text, feature, (feature.id[len(feature.part) + 2 :], *feature.names[1:]))


def _unclear(alike: list[Feature], cure: str) -> Found:
    names = ", ".join(item.id for item in alike[:6])
    reason = f"the file has {len(alike)} of that name: {names}"
    return Found(kind="unclear feature", reason=reason, cure=cure)


def _by_size(
    named: Named,
    size_mm: float | None,
    pool: list[Feature],
    every: list[Feature],
    rivals: list[float],
) -> Found:
    """By kind and size, whatever the name."""
    sizes_mm = _named_sizes(named, size_mm)
    if named.word == FeatureWord.FACE:
        size_mm = None  # it is found by its name's sizes, and measured by none
    exact = [item for item in pool if _is_one_of(named.text, item, item.names[:1])]
    if exact and (size_mm is None or abs(exact[0].size_mm - size_mm) <= near_mm(size_mm)):
        return Found(exact)
    size_mm = size_mm if size_mm is not None else named.size_mm
    wanted_mm = size_mm or 0.0

    def off(feature: Feature) -> float:
        return abs(feature.size_mm - wanted_mm)

    alike = [
        item
        for item in pool
        if item.word == named.word
        and (not named.part or named.part in (item.part, *item.aliases))
        and (named.at_mm is None or re.search(rf"@ {named.at_mm:g}(?: #\d+)?$", _sized(item)))
        and (named.ordinal is None or _sized(item).endswith(f"#{named.ordinal}"))
        and (not sizes_mm or _has_sizes(item, sizes_mm))
    ]
    if size_mm is None:
        if len(alike) == 1:
            return Found(alike)
        if alike:
            return _unclear(alike, "give the size, or the whole name")
        return _missing(named, None, alike, every)
    near = [item for item in alike if off(item) <= near_mm(size_mm)]
    if not near:
        return _missing(named, size_mm, alike, every)
    if named.word == LENGTH:
        return Found([min(near, key=off)])
    near.sort(key=off)
    mine = [
        item for item in near if all(off(item) <= abs(item.size_mm - rival) for rival in rivals)
    ]
    return Found(mine or near[:1])


def _by_own_name(
    named: Named, size_mm: float | None, called: list[Feature], every: list[Feature]
) -> Found:
    """Of those that are called so: "Stud: journal", "Wheel: bore"."""
    if size_mm is None:
        return Found(called) if len(called) == 1 else _unclear(called, "give the size")
    near = [item for item in called if abs(item.size_mm - size_mm) <= near_mm(size_mm)]
    return Found(near) if near else _missing(named, size_mm, called, every)


def _third_or_of_3(called: Feature, text: str, sized: list[Feature]) -> Found:
    """A name with a number may be one of several in their order, or the name by the size."""
    others = ", ".join(item.id for item in sized if item.id != called.id)
    return Found(
        kind="unclear feature",
        reason=f"{text} is what {called.id} is called, of {called.size_mm:g} mm, and "
        + (f"by its size {others}" if others else "nothing like it has that size"),
        cure="for that one give its own size in the column size; "
        "for the one by its size write its name",
    )


def find_features(
    named: Named, size_mm: float | None, features: list[Feature], rivals: list[float]
) -> Found:
    """The features that a claim's words mean.

    A name as look writes it means that one. Otherwise all of its kind whose size is near the
    claimed one, but for those that another claim (its size in `rivals`) is nearer to: where a part
    has two journals of 30, a claim about "outside 30" is about both. Where a name with a number
    means one feature as a name and others as a size, none is judged.
    """
    pool = lengths_of(features) if named.word == LENGTH else features
    called = [item for item in pool if _is_called(item, named.text)]
    if not named.word or (named.part and called and not named.sizes_mm):
        of_own = None if named.word == FeatureWord.FACE else size_mm
        if called:
            return _by_own_name(named, of_own, called, features)
        return _missing(named, None, [], features)
    sized = _by_size(named, size_mm, pool, features, rivals)
    if not called or not named.sizes_mm or called == sized.features:
        return sized
    by_name = None if size_mm is None or size_mm == named.size_mm else size_mm
    if named.word == FeatureWord.FACE:
        by_name = None
    if by_name is not None:
        near = [item for item in called if abs(item.size_mm - by_name) <= near_mm(by_name)]
        return Found(near) if near else sized
    if size_mm is None and not sized.features:
        return Found(called) if len(called) == 1 else _unclear(called, "name the part")
    return _third_or_of_3(called[0], named.text, sized.features)


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
