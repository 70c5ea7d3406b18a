"""Results as numpy structured arrays, units in the field names. Every call makes a new array.

A seat or a foul has a column for each number, truth and text it is described by, and names for the
features and occurrences it speaks of; `_columns` of its class says which of its members are what.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any, NamedTuple, get_type_hints

from spotblue import _kernel
from spotblue.errors import missing_package

try:
    import numpy as np
    import numpy.typing as npt
except Exception as error:  # noqa: BLE001: a torn package fails in many ways
    raise missing_package("numpy", "an array", error) from None

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from spotblue._kernel import CheckResult, Look

Rows = list[tuple[Any, ...]]
Fields = list[tuple[str, str]]
# What takes other columns than one of its own name, which "{}" is.
_SEVERAL = {
    "feature": [("{}_occurrence", "U"), ("{}", "U")],
    "occurrence": [("{}", "U")],
    "point": [("x_mm", "f8"), ("y_mm", "f8"), ("z_mm", "f8")],
}
_WITHOUT = {"f8": (math.nan,), "U": ("",), "point": (math.nan,) * 3}


def _made(rows: Rows, fields: Fields) -> npt.NDArray[Any]:
    """An array of these rows; text fields ("U") are as wide as their longest text."""
    wide = [
        (name, f"U{max([1, *(len(str(row[i])) for row in rows)])}" if kind == "U" else kind)
        for i, (name, kind) in enumerate(fields)
    ]
    return np.array(rows, dtype=np.dtype(wide))


def _cells(look: Look, paths: Sequence[str], kind: str, value: Any) -> tuple[object, ...]:
    if value is None:
        return _WITHOUT[kind]
    if kind == "feature":
        return paths[value.occurrence], look.feature_id(value)
    if kind == "occurrence":
        return (paths[value],)
    if kind == "point":
        return value.x, value.y, value.z
    return (value,)


def _table(look: Look, results: Iterable[object], of: Any) -> npt.NDArray[Any]:
    """A row for each of these results of one class."""
    paths = [occurrence.id for occurrence in look.model.occurrences]
    members: dict[str, str] = of._columns
    rows: Rows = []
    for result in results:
        cells = (_cells(look, paths, kind, getattr(result, name)) for name, kind in members.items())
        rows.append(tuple(cell for several in cells for cell in several))
    fields = [
        (column.format(name), dtype)
        for name, kind in members.items()
        for column, dtype in _SEVERAL.get(kind, [("{}", kind)])
    ]
    return _made(rows, fields)


def radial_seats(look: Look) -> npt.NDArray[Any]:
    """A row a radial seat, in the order of look.seats.radial."""
    return _table(look, look.seats.radial, _kernel.RadialSeat)


def axial_seats(look: Look) -> npt.NDArray[Any]:
    """A row an axial seat; inner_mm and outer_mm are nan where no centre line runs through."""
    rows = _table(look, look.seats.axial, _kernel.AxialSeat)
    on_no_line = np.array([seat.centre_line is None for seat in look.seats.axial], dtype=bool)
    for diameter in ("inner_mm", "outer_mm"):
        rows[diameter][on_no_line] = math.nan
    return rows


def fouls(look: Look) -> npt.NDArray[Any]:
    """A row a foul, in the order of look.fouls.found; its place is nan where none is known."""
    return _table(look, look.fouls.found, _kernel.Foul)


class _Feature(NamedTuple):
    product: str
    name: str
    kind: str
    side: str = ""
    size_mm: float = math.nan
    coverage_deg: float = math.nan
    area_mm2: float = math.nan


class _Finding(NamedTuple):
    id: str
    kind: str
    outcome: str
    margin_mm: float
    about: str
    advice: str


def _listed(rows: Sequence[tuple[Any, ...]], of: type[Any]) -> npt.NDArray[Any]:
    dtypes = {str: "U", float: "f8"}
    return _made(list(rows), [(name, dtypes[kind]) for name, kind in get_type_hints(of).items()])


def features(look: Look) -> npt.NDArray[Any]:
    """A row a feature of a product; size_mm is a diameter or a width, nan for faces and tapers."""
    rows: list[_Feature] = []
    for product in look.model.products:
        of = product.id
        rows += [
            _Feature(of, one.name, "cylinder", one.side, one.diameter_mm, one.coverage_deg)
            for one in product.cylinders
        ]
        rows += [
            _Feature(of, one.name, "cone", one.side, coverage_deg=one.coverage_deg)
            for one in product.cones
        ]
        rows += [
            _Feature(of, one.name, "plane", area_mm2=one.area_mm2) for one in product.planes
        ]
        rows += [
            _Feature(of, one.name, "width", one.side, one.width_mm) for one in product.widths
        ]
    return _listed(rows, _Feature)


def findings(result: CheckResult) -> npt.NDArray[Any]:
    """A row a finding; margin_mm is its least margin given in mm, nan when it has none."""
    rows: list[_Finding] = []
    for finding in result.findings:
        margins = [
            value
            for key, value in finding.margin.items()
            if key.endswith("_mm") and isinstance(value, float)
        ]
        least = min(margins, default=math.nan)
        about = " | ".join(finding.about)
        rows.append(_Finding(finding.id, finding.kind, finding.outcome, least, about, finding.advice))
    return _listed(rows, _Finding)
