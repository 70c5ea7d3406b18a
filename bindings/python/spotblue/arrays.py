"""Results as numpy structured arrays, units in the field names. Every call makes a new array."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

from spotblue.errors import missing_package

try:
    import numpy as np
    import numpy.typing as npt
except Exception as error:  # noqa: BLE001: a torn package fails in many ways
    raise missing_package("numpy", "an array", error) from None

if TYPE_CHECKING:
    from spotblue._kernel import CheckResult, FeatureRef, Look

Rows = list[tuple[object, ...]]
Fields = list[tuple[str, str]]


def _made(rows: Rows, fields: Fields) -> npt.NDArray[Any]:
    """An array of these rows; text fields ("U") are as wide as their longest text."""
    wide = [
        (name, f"U{max([1, *(len(str(row[i])) for row in rows)])}" if kind == "U" else kind)
        for i, (name, kind) in enumerate(fields)
    ]
    return np.array(rows, dtype=np.dtype(wide))


def features(look: Look) -> npt.NDArray[Any]:
    """A row a feature of a product; size_mm is a diameter or a width, nan for faces and tapers."""
    rows: Rows = []
    for product in look.model.products:
        nan = math.nan
        for cylinder in product.cylinders:
            rows.append((product.id, cylinder.name, "cylinder", cylinder.side,
                         cylinder.diameter_mm, cylinder.coverage_deg, nan))  # fmt: skip
        for cone in product.cones:
            rows.append((product.id, cone.name, "cone", cone.side, nan, cone.coverage_deg, nan))
        for plane in product.planes:
            rows.append((product.id, plane.name, "plane", "", nan, nan, plane.area_mm2))
        for width in product.widths:
            rows.append((product.id, width.name, "width", width.side, width.width_mm, nan, nan))
    return _made(rows, [("product", "U"), ("name", "U"), ("kind", "U"), ("side", "U"),
                        ("size_mm", "f8"), ("coverage_deg", "f8"), ("area_mm2", "f8")])  # fmt: skip


def _place(look: Look, ref: FeatureRef, paths: list[str]) -> tuple[str, str]:
    return paths[ref.occurrence], look.feature_id(ref)


def _paths(look: Look) -> list[str]:
    return [occurrence.id for occurrence in look.model.occurrences]


def radial_seats(look: Look) -> npt.NDArray[Any]:
    """A row a radial seat, in the order of look.seats.radial."""
    paths = _paths(look)
    rows: Rows = [
        (*_place(look, seat.hole, paths), *_place(look, seat.shaft, paths), seat.hole_mm,
         seat.shaft_mm, seat.clearance_mm, seat.offset_mm, seat.tilt_deg, seat.least_gap_mm,
         seat.engaged_mm, seat.coverage_deg)
        for seat in look.seats.radial
    ]  # fmt: skip
    return _made(rows, [("hole_occurrence", "U"), ("hole", "U"), ("shaft_occurrence", "U"),
                        ("shaft", "U"), ("hole_mm", "f8"), ("shaft_mm", "f8"),
                        ("clearance_mm", "f8"), ("offset_mm", "f8"), ("tilt_deg", "f8"),
                        ("least_gap_mm", "f8"), ("engaged_mm", "f8"),
                        ("coverage_deg", "f8")])  # fmt: skip


def axial_seats(look: Look) -> npt.NDArray[Any]:
    """A row an axial seat; inner_mm and outer_mm are nan where no centre line runs through."""
    paths = _paths(look)
    rows: Rows = []
    for seat in look.seats.axial:
        on_line = seat.centre_line is not None
        rows.append((*_place(look, seat.a, paths), *_place(look, seat.b, paths), seat.gap_mm,
                     seat.inner_mm if on_line else math.nan,
                     seat.outer_mm if on_line else math.nan, seat.area_mm2))  # fmt: skip
    return _made(rows, [("a_occurrence", "U"), ("a", "U"), ("b_occurrence", "U"), ("b", "U"),
                        ("gap_mm", "f8"), ("inner_mm", "f8"), ("outer_mm", "f8"),
                        ("area_mm2", "f8")])  # fmt: skip


def clashes(look: Look) -> npt.NDArray[Any]:
    """A row a clash, in the order of look.clash.clashes; its place is nan where none is known."""
    paths = _paths(look)
    rows: Rows = [
        (paths[clash.a], paths[clash.b], clash.volume_mm3, clash.depth_mm, clash.length_mm,
         *((clash.at.x, clash.at.y, clash.at.z) if clash.at else (math.nan,) * 3), clash.exact,
         clash.cause)
        for clash in look.clash.clashes
    ]  # fmt: skip
    return _made(rows, [("a", "U"), ("b", "U"), ("volume_mm3", "f8"), ("depth_mm", "f8"),
                        ("length_mm", "f8"), ("x_mm", "f8"), ("y_mm", "f8"), ("z_mm", "f8"),
                        ("exact", "?"), ("cause", "U")])  # fmt: skip


def findings(result: CheckResult) -> npt.NDArray[Any]:
    """A row a finding; margin_mm is its least margin given in mm, nan when it has none."""
    rows: Rows = []
    for finding in result.findings:
        margins = [
            value
            for key, value in finding.margin.items()
            if key.endswith("_mm") and isinstance(value, float)
        ]
        rows.append((finding.id, finding.kind, finding.outcome, min(margins, default=math.nan),
                     " | ".join(finding.about), finding.advice))  # fmt: skip
    return _made(rows, [("id", "U"), ("kind", "U"), ("outcome", "U"), ("margin_mm", "f8"),
                        ("about", "U"), ("advice", "U")])  # fmt: skip
