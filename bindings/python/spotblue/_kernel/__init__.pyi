"""Types of the C++ kernel's module; import spotblue instead."""

from collections.abc import Sequence
from os import PathLike
from pathlib import Path
from typing import Any, ClassVar, Self

import numpy.typing as npt

_StrPath = str | PathLike[str]

class _Type(type): ...

class _Result(metaclass=_Type):
    _fields: ClassVar[tuple[str, ...]]
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class _Record(_Result):
    __match_args__: ClassVar[tuple[str, ...]]
    def __copy__(self) -> Self: ...
    def __deepcopy__(self, memo: dict[int, object]) -> Self: ...
    def __getstate__(self) -> dict[str, object]: ...
    def __setstate__(self, fields: dict[str, object]) -> None: ...

class AddedBlock(_Record):
    def __init__(self, *, corner: Point = ..., size: Point = ...) -> None: ...
    corner: Point
    size: Point

class AllowedOverlap(_Record):
    def __init__(
        self, *, a: str = ..., b: str = ..., reason: str = ..., depth_mm: float = ...,
        line: int = ...,
    ) -> None: ...
    a: str
    b: str
    reason: str
    depth_mm: float
    line: int

class AxialSeat(_Result):
    @property
    def a(self) -> FeatureRef: ...
    @property
    def b(self) -> FeatureRef: ...
    @property
    def gap_mm(self) -> float: ...
    @property
    def inner_mm(self) -> float: ...
    @property
    def outer_mm(self) -> float: ...
    @property
    def area_mm2(self) -> float: ...
    @property
    def axis(self) -> Line: ...
    @property
    def centre_line(self) -> int | None: ...

class AxialStop(_Result):
    @property
    def a(self) -> FeatureRef: ...
    @property
    def b(self) -> FeatureRef: ...
    @property
    def gap_mm(self) -> float: ...
    @property
    def area_mm2(self) -> float: ...
    @property
    def seat(self) -> int | None: ...

class AxialWant(_Record):
    def __init__(
        self, *, kind: str = ..., a: str = ..., b: str = ..., least_mm: float = ...,
        greatest_mm: float = ..., line: int = ...,
    ) -> None: ...
    kind: str
    a: str
    b: str
    least_mm: float
    greatest_mm: float
    line: int

class BlockPart(_Record):
    def __init__(
        self, *, size: Point = ..., added: Sequence[AddedBlock] = ..., bosses: Sequence[Boss] = ...,
        bores: Sequence[Bore] = ...,
    ) -> None: ...
    size: Point
    added: list[AddedBlock]
    bosses: list[Boss]
    bores: list[Bore]

class Blockage(_Result):
    @property
    def part(self) -> int: ...
    @property
    def by(self) -> int: ...
    @property
    def leaving(self) -> Point: ...
    @property
    def needs_mm(self) -> float: ...
    @property
    def has_mm(self) -> float: ...

class Bore(_Record):
    def __init__(
        self, *, name: str = ..., face: str = ..., u_mm: float = ..., v_mm: float = ...,
        diameter_mm: float = ..., depth_mm: float | None = ...,
        counterbore_diameter_mm: float = ..., counterbore_depth_mm: float = ..., count: int = ...,
        circle_mm: float = ..., angle_deg: float = ..., grooves: Sequence[BoreGroove] = ...,
    ) -> None: ...
    name: str
    face: str
    u_mm: float
    v_mm: float
    diameter_mm: float
    depth_mm: float | None
    counterbore_diameter_mm: float
    counterbore_depth_mm: float
    count: int
    circle_mm: float
    angle_deg: float
    grooves: list[BoreGroove]

class BoreGroove(_Record):
    def __init__(
        self, *, depth_mm: float = ..., width_mm: float = ..., diameter_mm: float = ...,
    ) -> None: ...
    depth_mm: float
    width_mm: float
    diameter_mm: float

class Boss(_Record):
    def __init__(
        self, *, name: str = ..., face: str = ..., u_mm: float = ..., v_mm: float = ...,
        diameter_mm: float = ..., height_mm: float = ...,
    ) -> None: ...
    name: str
    face: str
    u_mm: float
    v_mm: float
    diameter_mm: float
    height_mm: float

class Box(_Record):
    def __init__(self, *, low: Point = ..., high: Point = ...) -> None: ...
    low: Point
    high: Point

class CentreLine(_Result):
    @property
    def id(self) -> str: ...
    @property
    def line(self) -> Line: ...
    @property
    def occurrences(self) -> list[int]: ...

class CheckResult(_Result):
    @property
    def look(self) -> Look: ...
    @property
    def job(self) -> Job: ...
    @property
    def findings(self) -> list[Finding]: ...
    @property
    def outcomes(self) -> OutcomeCount: ...
    def _repr_html_(self) -> str: ...
    def findings_array(self) -> npt.NDArray[Any]: ...
    def to_json(self) -> str: ...
    def to_text(self, unit: str | None = ...) -> str: ...

class Clash(_Result):
    @property
    def a(self) -> int: ...
    @property
    def b(self) -> int: ...
    @property
    def volume_mm3(self) -> float: ...
    @property
    def depth_mm(self) -> float: ...
    @property
    def at(self) -> Point: ...
    @property
    def exact(self) -> bool: ...
    @property
    def cause(self) -> str: ...

class ClashEffort(_Result):
    @property
    def pairs(self) -> int: ...
    @property
    def distinct_pairs(self) -> int: ...
    @property
    def kernel_pairs(self) -> int: ...

class ClashReport(_Result):
    @property
    def clashes(self) -> list[Clash]: ...
    @property
    def notes(self) -> list[Note]: ...
    @property
    def effort(self) -> ClashEffort: ...

class ClassFit(_Record):
    def __init__(
        self, *, system: str = ..., text: str = ..., nominal_mm: float | None = ...,
    ) -> None: ...
    system: str
    text: str
    nominal_mm: float | None

class ClearanceLimits(_Record):
    def __init__(self, *, least_mm: float = ..., greatest_mm: float = ...) -> None: ...
    least_mm: float
    greatest_mm: float

class ComparedRow(_Result):
    @property
    def kind(self) -> str: ...
    @property
    def about(self) -> str: ...
    @property
    def findings(self) -> list[int | None]: ...

class Comparison(_Result):
    @property
    def rows(self) -> list[ComparedRow]: ...
    @property
    def costs(self) -> list[PlanCost]: ...
    @property
    def best(self) -> int | None: ...
    @property
    def plans(self) -> list[CheckResult]: ...
    def _repr_html_(self) -> str: ...
    def to_json(self) -> str: ...
    def to_text(self, unit: str | None = ...) -> str: ...

class Conditions(_Record):
    def __init__(
        self, *, bench_c: float = ..., running_c: float = ..., friction_least: float = ...,
        friction_greatest: float = ..., rz_um: float = ...,
        slip_clearance_mm: float | None = ..., untoleranced: str = ..., cleaning_mm: float = ...,
    ) -> None: ...
    bench_c: float
    running_c: float
    friction_least: float
    friction_greatest: float
    rz_um: float
    slip_clearance_mm: float | None
    untoleranced: str
    cleaning_mm: float

class Cone(_Result):
    @property
    def name(self) -> str: ...
    @property
    def side(self) -> str: ...
    @property
    def axis(self) -> Line: ...
    @property
    def radius_mm(self) -> float: ...
    @property
    def half_angle_deg(self) -> float: ...
    @property
    def intervals_mm(self) -> list[tuple[float, float]]: ...
    @property
    def coverage_deg(self) -> float: ...
    @property
    def recognised_from(self) -> str: ...

class CrossHole(_Record):
    def __init__(
        self, *, at_mm: float = ..., diameter_mm: float = ..., depth_mm: float | None = ...,
        angle_deg: float = ..., offset_mm: float = ...,
    ) -> None: ...
    at_mm: float
    diameter_mm: float
    depth_mm: float | None
    angle_deg: float
    offset_mm: float

class Cut(_Record):
    def __init__(
        self, *, feature: str = ..., before_mm: float = ..., depth_mm: float = ...,
        fillet_mm: float | None = ..., mate_corner_mm: float | None = ...,
        torque_nm: float | None = ..., bending_nm: float | None = ..., line: int = ...,
    ) -> None: ...
    feature: str
    before_mm: float
    depth_mm: float
    fillet_mm: float | None
    mate_corner_mm: float | None
    torque_nm: float | None
    bending_nm: float | None
    line: int

class Cylinder(_Result):
    @property
    def name(self) -> str: ...
    @property
    def side(self) -> str: ...
    @property
    def diameter_mm(self) -> float: ...
    @property
    def axis(self) -> Line: ...
    @property
    def intervals_mm(self) -> list[tuple[float, float]]: ...
    @property
    def coverage_deg(self) -> float: ...
    @property
    def recognised_from(self) -> str: ...

class DecidedSizes(_Result):
    @property
    def sizes(self) -> list[SizeToWrite]: ...
    @property
    def left_out(self) -> list[Note]: ...

class Edge2(_Record):
    def __init__(
        self, *, start: Point2 = ..., end: Point2 = ..., sweep_deg: float = ...,
        centre: Point2 = ..., radius_mm: float = ...,
    ) -> None: ...
    start: Point2
    end: Point2
    sweep_deg: float
    centre: Point2
    radius_mm: float

class EdgeBreak(_Record):
    def __init__(self, *, kind: str = ..., size_mm: float = ...) -> None: ...
    kind: str
    size_mm: float

class EndPlayWant(_Record):
    def __init__(
        self, *, of: str = ..., gap_mm: tuple[float, float] = ..., line: int = ...,
    ) -> None: ...
    of: str
    gap_mm: tuple[float, float]
    line: int

class Extent2(_Result):
    @property
    def low(self) -> Point2: ...
    @property
    def high(self) -> Point2: ...

class FeatureName(_Result):
    @property
    def part(self) -> str: ...
    @property
    def word(self) -> str: ...
    @property
    def sizes_mm(self) -> list[float]: ...
    @property
    def position_mm(self) -> float | None: ...
    @property
    def ordinal(self) -> int | None: ...

class FeatureRef(_Record):
    def __init__(self, *, occurrence: int = ..., kind: str = ..., index: int = ...) -> None: ...
    occurrence: int
    kind: str
    index: int

class FileInfo(_Result):
    @property
    def name(self) -> str: ...
    @property
    def sha256(self) -> str: ...
    @property
    def protocol(self) -> str: ...
    @property
    def unit(self) -> str: ...

class Finding(_Result):
    @property
    def id(self) -> str: ...
    @property
    def kind(self) -> str: ...
    @property
    def about(self) -> list[str]: ...
    @property
    def outcome(self) -> str: ...
    @property
    def wanted(self) -> dict[str, float | str]: ...
    @property
    def found(self) -> dict[str, float | str]: ...
    @property
    def margin(self) -> dict[str, float | str]: ...
    @property
    def basis(self) -> str: ...
    @property
    def advice(self) -> str: ...
    @property
    def caution(self) -> str: ...

class FitWant(_Record):
    def __init__(
        self, *, hole: str = ..., shaft: str = ...,
        rule: ClassFit | ClearanceLimits | PerDiameter | LimitsOfBoth = ..., line: int = ...,
    ) -> None: ...
    hole: str
    shaft: str
    rule: ClassFit | ClearanceLimits | PerDiameter | LimitsOfBoth
    line: int

class Flats(_Record):
    def __init__(
        self, *, at_mm: float = ..., length_mm: float = ..., across_mm: float = ...,
        count: int = ..., angle_deg: float = ...,
    ) -> None: ...
    at_mm: float
    length_mm: float
    across_mm: float
    count: int
    angle_deg: float

class Frame(_Record):
    def __init__(self, *, rows: list[list[float]] = ...) -> None: ...
    rows: list[list[float]]

class GivenOverlap(_Record):
    def __init__(self, *, a: int = ..., b: int = ..., depth_mm: float = ...) -> None: ...
    a: int
    b: int
    depth_mm: float

class Groove(_Record):
    def __init__(
        self, *, at_mm: float = ..., width_mm: float = ..., diameter_mm: float = ...,
    ) -> None: ...
    at_mm: float
    width_mm: float
    diameter_mm: float

class Job(_Record):
    def __init__(
        self, *, file: str = ..., model: _StrPath = ..., unit: str = ...,
        title: str = ..., parts: Sequence[JobPart] = ..., fits: Sequence[FitWant] = ...,
        sizes: Sequence[SizeWant] = ..., measured: Sequence[MeasuredSize] = ...,
        measured_gaps: Sequence[MeasuredGap] = ..., axial: Sequence[AxialWant] = ...,
        tapers: Sequence[TaperWant] = ..., allowed: Sequence[AllowedOverlap] = ...,
        materials: Sequence[OwnMaterial] = ..., conditions: Conditions = ...,
        turning: Sequence[Turning] = ..., joins: Sequence[Join] = ...,
        keep_off: Sequence[KeepOff] = ..., surfaces: Sequence[Surface] = ...,
        lengths: Sequence[PartLength] = ..., end_play: Sequence[EndPlayWant] = ...,
        meshes: Sequence[Mesh] = ..., cuts: Sequence[Cut] = ..., settings: JobSettings = ...,
    ) -> None: ...
    file: str
    model: Path
    unit: str
    title: str
    parts: list[JobPart]
    fits: list[FitWant]
    sizes: list[SizeWant]
    measured: list[MeasuredSize]
    measured_gaps: list[MeasuredGap]
    axial: list[AxialWant]
    tapers: list[TaperWant]
    allowed: list[AllowedOverlap]
    materials: list[OwnMaterial]
    conditions: Conditions
    turning: list[Turning]
    joins: list[Join]
    keep_off: list[KeepOff]
    surfaces: list[Surface]
    lengths: list[PartLength]
    end_play: list[EndPlayWant]
    meshes: list[Mesh]
    cuts: list[Cut]
    settings: JobSettings

class JobPart(_Record):
    def __init__(
        self, *, part: str = ..., material: str = ..., state: str = ..., sizes: str = ...,
        irreplaceable: bool = ..., stock: StockPiece | None = ...,
        running_c: float | None = ..., springs: bool = ..., line: int = ...,
    ) -> None: ...
    part: str
    material: str
    state: str
    sizes: str
    irreplaceable: bool
    stock: StockPiece | None
    running_c: float | None
    springs: bool
    line: int

class JobSettings(_Record):
    def __init__(
        self, *, seats: SeatSettings = ..., default_uncertainty_mm: float = ...,
        limits: ReadLimits = ..., completeness: str = ...,
    ) -> None: ...
    seats: SeatSettings
    default_uncertainty_mm: float
    limits: ReadLimits
    completeness: str

class Join(_Record):
    def __init__(self, *, a: str = ..., b: str = ..., by: str = ..., line: int = ...) -> None: ...
    a: str
    b: str
    by: str
    line: int

class KeepOff(_Record):
    def __init__(
        self, *, a: str = ..., b: str = ..., least_mm: float = ..., reason: str = ...,
        line: int = ...,
    ) -> None: ...
    a: str
    b: str
    least_mm: float
    reason: str
    line: int

class KeyPart(_Record):
    def __init__(
        self, *, width_mm: float = ..., height_mm: float = ..., length_mm: float = ...,
        ends: str = ...,
    ) -> None: ...
    width_mm: float
    height_mm: float
    length_mm: float
    ends: str

class Keyseat(_Record):
    def __init__(
        self, *, at_mm: float = ..., length_mm: float = ..., width_mm: float = ...,
        depth_mm: float = ..., angle_deg: float = ..., ends: str = ...,
    ) -> None: ...
    at_mm: float
    length_mm: float
    width_mm: float
    depth_mm: float
    angle_deg: float
    ends: str

class Keyway(_Record):
    def __init__(
        self, *, at_mm: float | None = ..., length_mm: float | None = ...,
        width_mm: float = ..., depth_mm: float = ..., bore_mm: float | None = ...,
        x_mm: float = ..., y_mm: float = ..., angle_deg: float = ...,
    ) -> None: ...
    at_mm: float | None
    length_mm: float | None
    width_mm: float
    depth_mm: float
    bore_mm: float | None
    x_mm: float
    y_mm: float
    angle_deg: float

class LimitsOfBoth(_Record):
    def __init__(
        self, *, hole_mm: tuple[float, float] = ..., shaft_mm: tuple[float, float] = ...,
        hole_nominal_mm: float | None = ..., shaft_nominal_mm: float | None = ...,
        text: str = ..., basis: str = ...,
    ) -> None: ...
    hole_mm: tuple[float, float]
    shaft_mm: tuple[float, float]
    hole_nominal_mm: float | None
    shaft_nominal_mm: float | None
    text: str
    basis: str

class Line(_Record):
    def __init__(self, *, at: Point = ..., along: Point = ...) -> None: ...
    at: Point
    along: Point

class Look(_Result):
    @property
    def model(self) -> Model: ...
    @property
    def seats(self) -> Seats: ...
    @property
    def clash(self) -> ClashReport: ...
    @property
    def seconds(self) -> LookSeconds: ...
    def _repr_html_(self) -> str: ...
    def axial_seats_array(self) -> npt.NDArray[Any]: ...
    def clashes_array(self) -> npt.NDArray[Any]: ...
    def feature_id(self, feature: FeatureRef) -> str: ...
    def features_array(self) -> npt.NDArray[Any]: ...
    def radial_seats_array(self) -> npt.NDArray[Any]: ...
    def to_json(self) -> str: ...
    def to_text(self, unit: str | None = ...) -> str: ...

class LookSeconds(_Result):
    @property
    def read(self) -> float: ...
    @property
    def features(self) -> float: ...
    @property
    def seats(self) -> float: ...
    @property
    def clash(self) -> float: ...
    @property
    def total(self) -> float: ...

class MarginShare(_Result):
    @property
    def finding(self) -> int: ...
    @property
    def share(self) -> float: ...

class MeasuredGap(_Record):
    def __init__(
        self, *, a: str = ..., b: str = ..., value_mm: float = ...,
        uncertainty_mm: float | None = ..., line: int = ...,
    ) -> None: ...
    a: str
    b: str
    value_mm: float
    uncertainty_mm: float | None
    line: int

class MeasuredSize(_Record):
    def __init__(
        self, *, feature: str = ..., value_mm: float = ..., uncertainty_mm: float | None = ...,
        line: int = ...,
    ) -> None: ...
    feature: str
    value_mm: float
    uncertainty_mm: float | None
    line: int

class Mesh(_Record):
    def __init__(
        self, *, a: MeshGear = ..., b: MeshGear = ..., module_mm: float = ...,
        pressure_angle_deg: float = ..., helix_angle_deg: float = ...,
        backlash_mm: tuple[float, float] | None = ..., line: int = ...,
    ) -> None: ...
    a: MeshGear
    b: MeshGear
    module_mm: float
    pressure_angle_deg: float
    helix_angle_deg: float
    backlash_mm: tuple[float, float] | None
    line: int

class MeshGear(_Record):
    def __init__(
        self, *, part: str = ..., teeth: int = ..., thickness_mm: float | None = ...,
        span: ToothSpan | None = ..., pins: OverPins | None = ...,
        tip_diameter_mm: float | None = ..., root_diameter_mm: float | None = ...,
    ) -> None: ...
    part: str
    teeth: int
    thickness_mm: float | None
    span: ToothSpan | None
    pins: OverPins | None
    tip_diameter_mm: float | None
    root_diameter_mm: float | None

class Mockup(_Record):
    def __init__(
        self, *, file: str = ..., title: str = ..., about: str = ..., unit: str = ...,
        protocol: str = ..., parts: Sequence[MockupPart] = ..., lines: Sequence[PlacingLine] = ...,
        placements: Sequence[Placement] = ...,
    ) -> None: ...
    file: str
    title: str
    about: str
    unit: str
    protocol: str
    parts: list[MockupPart]
    lines: list[PlacingLine]
    placements: list[Placement]

class MockupFace(_Result):
    @property
    def name(self) -> str: ...
    @property
    def axis(self) -> int: ...
    @property
    def station_mm(self) -> float: ...
    @property
    def sense(self) -> int: ...

class MockupPart(_Record):
    def __init__(
        self, *, name: str = ..., shape: TurnedPart | BlockPart | RingPart | KeyPart = ...,
    ) -> None: ...
    name: str
    shape: TurnedPart | BlockPart | RingPart | KeyPart

class Model(_Result):
    @property
    def file(self) -> FileInfo: ...
    @property
    def products(self) -> list[Product]: ...
    @property
    def occurrences(self) -> list[Occurrence]: ...
    @property
    def notes(self) -> list[Note]: ...
    @property
    def semantic_sizes(self) -> list[SemanticSize]: ...

class NotTold(_Result):
    @property
    def part(self) -> int: ...
    @property
    def by(self) -> int: ...
    @property
    def leaving(self) -> Point: ...

class Note(_Result):
    @property
    def about(self) -> str: ...
    @property
    def text(self) -> str: ...

class Occurrence(_Result):
    @property
    def id(self) -> str: ...
    @property
    def path(self) -> str: ...
    @property
    def product(self) -> int: ...
    @property
    def frame(self) -> Frame: ...
    @property
    def mirrored(self) -> bool: ...
    @property
    def box(self) -> Box: ...

class OutcomeCount(_Result):
    @property
    def conforming(self) -> int: ...
    @property
    def nonconforming(self) -> int: ...
    @property
    def undecided(self) -> int: ...

class OverPins(_Record):
    def __init__(self, *, pin_mm: float = ..., over_mm: float = ...) -> None: ...
    pin_mm: float
    over_mm: float

class OwnMaterial(_Record):
    def __init__(
        self, *, name: str = ..., youngs_modulus_gpa: float = ..., poisson_ratio: float = ...,
        expansion_um_per_m_k: float = ..., yield_mpa: float | None = ...,
        tensile_mpa: float | None = ..., line: int = ...,
    ) -> None: ...
    name: str
    youngs_modulus_gpa: float
    poisson_ratio: float
    expansion_um_per_m_k: float
    yield_mpa: float | None
    tensile_mpa: float | None
    line: int

class PartLength(_Record):
    def __init__(
        self, *, a: str = ..., b: str = ..., measured_mm: float | None = ...,
        uncertainty_mm: float | None = ..., limits_mm: tuple[float, float] | None = ...,
        line: int = ...,
    ) -> None: ...
    a: str
    b: str
    measured_mm: float | None
    uncertainty_mm: float | None
    limits_mm: tuple[float, float] | None
    line: int

class PerDiameter(_Record):
    def __init__(
        self, *, clearance: float = ..., tolerance_mm: float = ...,
        nominal_mm: float | None = ...,
    ) -> None: ...
    clearance: float
    tolerance_mm: float
    nominal_mm: float | None

class PlacedPart(_Result):
    @property
    def name(self) -> str: ...
    @property
    def part(self) -> int: ...
    @property
    def group(self) -> str: ...
    @property
    def frame(self) -> Frame: ...

class Placement(_Record):
    def __init__(
        self, *, name: str = ..., part: str = ..., group: str = ..., line: str = ..., on: str = ...,
        facing: str = ..., face: str = ..., at_mm: float | None = ..., against: str = ...,
        against_face: str = ..., gap_mm: float = ..., aside_x_mm: float = ...,
        aside_y_mm: float = ..., turn_deg: float = ..., circle: PlacingCircle = ...,
        keyseat_of: str = ..., keyseat: int = ...,
    ) -> None: ...
    name: str
    part: str
    group: str
    line: str
    on: str
    facing: str
    face: str
    at_mm: float | None
    against: str
    against_face: str
    gap_mm: float
    aside_x_mm: float
    aside_y_mm: float
    turn_deg: float
    circle: PlacingCircle
    keyseat_of: str
    keyseat: int

class PlacingCircle(_Record):
    def __init__(
        self, *, diameter_mm: float = ..., count: int = ..., angle_deg: float = ...,
    ) -> None: ...
    diameter_mm: float
    count: int
    angle_deg: float

class PlacingLine(_Record):
    def __init__(self, *, name: str = ..., at: Point = ..., along: Point = ...) -> None: ...
    name: str
    at: Point
    along: Point

class PlanCost(_Result):
    @property
    def new_parts(self) -> list[str]: ...
    @property
    def stock(self) -> list[str]: ...
    @property
    def cuts_in_irreplaceable(self) -> list[str]: ...
    @property
    def removed_mm3(self) -> float: ...
    @property
    def other_cuts(self) -> list[str]: ...
    @property
    def presses(self) -> int: ...
    @property
    def ways_in(self) -> str: ...
    @property
    def ways_in_judged(self) -> int: ...
    @property
    def outcomes(self) -> OutcomeCount: ...
    @property
    def least_margin(self) -> MarginShare | None: ...

class Plane(_Result):
    @property
    def name(self) -> str: ...
    @property
    def at(self) -> Point: ...
    @property
    def normal(self) -> Point: ...
    @property
    def u(self) -> Point: ...
    @property
    def area_mm2(self) -> float: ...
    @property
    def outline(self) -> Region: ...
    @property
    def recognised_from(self) -> str: ...

class PlaneMap(_Record):
    def __init__(
        self, *, origin: Point2 = ..., uu: float = ..., uv: float = ..., vu: float = ...,
        vv: float = ...,
    ) -> None: ...
    origin: Point2
    uu: float
    uv: float
    vu: float
    vv: float

class Point(_Record):
    def __init__(self, *, x: float = ..., y: float = ..., z: float = ...) -> None: ...
    x: float
    y: float
    z: float

class Point2(_Record):
    def __init__(self, *, u: float = ..., v: float = ...) -> None: ...
    u: float
    v: float

class Product(_Result):
    @property
    def id(self) -> str: ...
    @property
    def name(self) -> str: ...
    @property
    def solids(self) -> int: ...
    @property
    def faces(self) -> int: ...
    @property
    def volume_mm3(self) -> float: ...
    @property
    def closed(self) -> bool: ...
    @property
    def box(self) -> Box: ...
    @property
    def cylinders(self) -> list[Cylinder]: ...
    @property
    def cones(self) -> list[Cone]: ...
    @property
    def planes(self) -> list[Plane]: ...
    @property
    def widths(self) -> list[Width]: ...

class ProductFeatureRef(_Result):
    @property
    def kind(self) -> str: ...
    @property
    def index(self) -> int: ...

class RadialSeat(_Result):
    @property
    def hole(self) -> FeatureRef: ...
    @property
    def shaft(self) -> FeatureRef: ...
    @property
    def hole_mm(self) -> float: ...
    @property
    def shaft_mm(self) -> float: ...
    @property
    def clearance_mm(self) -> float: ...
    @property
    def offset_mm(self) -> float: ...
    @property
    def tilt_deg(self) -> float: ...
    @property
    def least_gap_mm(self) -> float: ...
    @property
    def engaged_mm(self) -> float: ...
    @property
    def coverage_deg(self) -> float: ...
    @property
    def axis(self) -> Line: ...
    @property
    def start_mm(self) -> float: ...
    @property
    def end_mm(self) -> float: ...
    @property
    def centre_line(self) -> int: ...

class Reach(_Result):
    @property
    def least_mm(self) -> float: ...
    @property
    def greatest_mm(self) -> float: ...

class ReadLimits(_Record):
    def __init__(
        self, *, seconds: float = ..., memory_mb: float = ..., file_mb: float = ...,
        nesting_depth: int = ..., occurrences: float = ..., token_kb: int = ...,
    ) -> None: ...
    seconds: float
    memory_mb: float
    file_mb: float
    nesting_depth: int
    occurrences: float
    token_kb: int

class Region(_Record):
    def __init__(self, *, edges: Sequence[Edge2] = ..., exact: bool = ...) -> None: ...
    edges: list[Edge2]
    exact: bool

class RingPart(_Record):
    def __init__(
        self, *, outside_mm: float = ..., inside_mm: float = ..., thickness_mm: float = ...,
        gap_mm: float = ...,
    ) -> None: ...
    outside_mm: float
    inside_mm: float
    thickness_mm: float
    gap_mm: float

class SeatSettings(_Record):
    def __init__(
        self, *, coaxial_offset_mm: float = ..., coaxial_offset_per_diameter: float = ...,
        coaxial_tilt_deg: float = ..., radial_gap_mm: float = ...,
        radial_gap_per_diameter: float = ..., radial_overlap_mm: float = ...,
        radial_overlap_per_diameter: float = ..., facing_tilt_deg: float = ...,
        axial_gap_least_mm: float = ..., axial_gap_most_mm: float = ...,
        same_length_mm: float = ...,
    ) -> None: ...
    coaxial_offset_mm: float
    coaxial_offset_per_diameter: float
    coaxial_tilt_deg: float
    radial_gap_mm: float
    radial_gap_per_diameter: float
    radial_overlap_mm: float
    radial_overlap_per_diameter: float
    facing_tilt_deg: float
    axial_gap_least_mm: float
    axial_gap_most_mm: float
    same_length_mm: float

class Seats(_Result):
    @property
    def centre_lines(self) -> list[CentreLine]: ...
    @property
    def radial(self) -> list[RadialSeat]: ...
    @property
    def axial(self) -> list[AxialSeat]: ...
    @property
    def taper(self) -> list[TaperSeat]: ...
    @property
    def width(self) -> list[WidthSeat]: ...
    @property
    def threads(self) -> list[Thread]: ...
    @property
    def near_pairs(self) -> list[tuple[int, int]]: ...

class SemanticSize(_Result):
    @property
    def entity(self) -> int: ...
    @property
    def name(self) -> str: ...
    @property
    def characteristic(self) -> str: ...
    @property
    def product(self) -> int | None: ...
    @property
    def features(self) -> list[ProductFeatureRef]: ...
    @property
    def nominal_mm(self) -> float | None: ...
    @property
    def deviations(self) -> SizeLimits | None: ...
    @property
    def limits(self) -> SizeLimits | None: ...
    @property
    def tolerance_class(self) -> str: ...
    @property
    def doubt(self) -> str: ...
    @property
    def usable(self) -> bool: ...
    @property
    def text(self) -> str: ...

class SizeLimits(_Result):
    @property
    def lower_mm(self) -> float: ...
    @property
    def upper_mm(self) -> float: ...

class SizeToWrite(_Record):
    def __init__(
        self, *, product: str = ..., feature: str = ..., nominal_mm: float = ...,
        tolerance_class: str = ..., deviations_mm: tuple[float, float] | None = ...,
    ) -> None: ...
    product: str
    feature: str
    nominal_mm: float
    tolerance_class: str
    deviations_mm: tuple[float, float] | None

class SizeWant(_Record):
    def __init__(
        self, *, feature: str = ..., rule: str | tuple[float, float] = ...,
        nominal_mm: float | None = ..., line: int = ...,
    ) -> None: ...
    feature: str
    rule: str | tuple[float, float]
    nominal_mm: float | None
    line: int

class Step(_Record):
    def __init__(
        self, *, name: str = ..., start_mm: float = ..., length_mm: float = ...,
        diameter_mm: float = ..., end_diameter_mm: float = ..., at_start: EdgeBreak = ...,
        at_end: EdgeBreak = ...,
    ) -> None: ...
    name: str
    start_mm: float
    length_mm: float
    diameter_mm: float
    end_diameter_mm: float
    at_start: EdgeBreak
    at_end: EdgeBreak

class StockPiece(_Record):
    def __init__(
        self, *, form: str = ..., diameter_mm: float | None = ...,
        inner_diameter_mm: float | None = ..., length_mm: float | None = ...,
        width_mm: float | None = ..., thickness_mm: float | None = ...,
    ) -> None: ...
    form: str
    diameter_mm: float | None
    inner_diameter_mm: float | None
    length_mm: float | None
    width_mm: float | None
    thickness_mm: float | None

class Surface(_Record):
    def __init__(self, *, feature: str = ..., rz_um: float = ..., line: int = ...) -> None: ...
    feature: str
    rz_um: float
    line: int

class TaperSeat(_Result):
    @property
    def hole(self) -> FeatureRef: ...
    @property
    def shaft(self) -> FeatureRef: ...
    @property
    def hole_half_angle_deg(self) -> float: ...
    @property
    def shaft_half_angle_deg(self) -> float: ...
    @property
    def gap_mm(self) -> float: ...
    @property
    def offset_mm(self) -> float: ...
    @property
    def tilt_deg(self) -> float: ...
    @property
    def engaged_mm(self) -> float: ...
    @property
    def diameter_mm(self) -> float: ...
    @property
    def axis(self) -> Line: ...
    @property
    def centre_line(self) -> int: ...

class TaperWant(_Record):
    def __init__(
        self, *, hole: str = ..., shaft: str = ..., angle_within_deg: float = ...,
        gap: ClearanceLimits | None = ..., line: int = ...,
    ) -> None: ...
    hole: str
    shaft: str
    angle_within_deg: float
    gap: ClearanceLimits | None
    line: int

class Thread(_Result):
    @property
    def hole(self) -> FeatureRef: ...
    @property
    def screw(self) -> FeatureRef: ...
    @property
    def size(self) -> str: ...
    @property
    def hole_mm(self) -> float: ...
    @property
    def screw_mm(self) -> float: ...
    @property
    def engaged_mm(self) -> float: ...
    @property
    def offset_mm(self) -> float: ...
    @property
    def tilt_deg(self) -> float: ...
    @property
    def axis(self) -> Line: ...
    @property
    def centre_line(self) -> int: ...

class ToothSpan(_Record):
    def __init__(self, *, teeth: int = ..., over_mm: float = ...) -> None: ...
    teeth: int
    over_mm: float

class TurnedPart(_Record):
    def __init__(
        self, *, outside: Sequence[Step] = ..., inside: Sequence[Step] = ...,
        outside_grooves: Sequence[Groove] = ..., inside_grooves: Sequence[Groove] = ...,
        keyseats: Sequence[Keyseat] = ..., keyways: Sequence[Keyway] = ...,
        flats: Sequence[Flats] = ..., cross_holes: Sequence[CrossHole] = ...,
        bores: Sequence[Bore] = ...,
    ) -> None: ...
    outside: list[Step]
    inside: list[Step]
    outside_grooves: list[Groove]
    inside_grooves: list[Groove]
    keyseats: list[Keyseat]
    keyways: list[Keyway]
    flats: list[Flats]
    cross_holes: list[CrossHole]
    bores: list[Bore]

class Turning(_Record):
    def __init__(
        self, *, part: str = ..., rpm: float = ..., duty: str = ..., load_n: float | None = ...,
        thrust_n: float | None = ..., line: int = ...,
    ) -> None: ...
    part: str
    rpm: float
    duty: str
    load_n: float | None
    thrust_n: float | None
    line: int

class Wall(_Result):
    @property
    def stretches(self) -> list[WallStretch]: ...
    @property
    def blind_spots(self) -> list[str]: ...

class WallStretch(_Result):
    @property
    def start_mm(self) -> float: ...
    @property
    def end_mm(self) -> float: ...
    @property
    def inner_mm(self) -> float: ...
    @property
    def outer_mm(self) -> float: ...

class WayIn(_Result):
    @property
    def centre_lines(self) -> list[int]: ...
    @property
    def parts(self) -> list[int]: ...
    @property
    def base(self) -> int: ...
    @property
    def steps(self) -> list[WayStep]: ...
    @property
    def blocked(self) -> list[Blockage]: ...
    @property
    def not_told(self) -> list[NotTold]: ...
    @property
    def too_many(self) -> bool: ...

class WayInOptions(_Record):
    def __init__(
        self, *, springs: Sequence[int] = ..., pressed: Sequence[tuple[int, int]] = ...,
        given: Sequence[GivenOverlap] = ..., squeezed: Sequence[GivenOverlap] = ...,
    ) -> None: ...
    springs: list[int]
    pressed: list[tuple[int, int]]
    given: list[GivenOverlap]
    squeezed: list[GivenOverlap]

class WayStep(_Result):
    @property
    def parts(self) -> list[int]: ...
    @property
    def along(self) -> Point: ...
    @property
    def how(self) -> str: ...
    @property
    def onto(self) -> int: ...
    @property
    def holds(self) -> list[int]: ...

class Width(_Result):
    @property
    def name(self) -> str: ...
    @property
    def side(self) -> str: ...
    @property
    def first(self) -> int: ...
    @property
    def second(self) -> int: ...
    @property
    def width_mm(self) -> float: ...

class WidthSeat(_Result):
    @property
    def slot(self) -> FeatureRef: ...
    @property
    def key(self) -> FeatureRef: ...
    @property
    def slot_mm(self) -> float: ...
    @property
    def key_mm(self) -> float: ...
    @property
    def clearance_mm(self) -> float: ...
    @property
    def offset_mm(self) -> float: ...
    @property
    def tilt_deg(self) -> float: ...
    @property
    def area_mm2(self) -> float: ...

def area_mm2(region: Region) -> float: ...
def bare_job(model: _StrPath, unit: str = ...) -> Job: ...
def check(job: Job | _StrPath) -> CheckResult: ...
def check_parts(mockup: Mockup) -> None: ...
def compare(plans: Sequence[CheckResult | _StrPath]) -> Comparison: ...
def contains(region: Region, point: Point2) -> bool: ...
def decided_sizes(job: Job, look: Look) -> DecidedSizes: ...
def disc(centre: Point2, radius_mm: float) -> Region: ...
def draft(look: Look, model_path: _StrPath, unit: str | None = ...) -> str: ...
def extent(region: Region) -> Extent2: ...
def faces_of(part: MockupPart) -> list[MockupFace]: ...
def feature_id(model: Model, feature: FeatureRef) -> str: ...
def find_axial_stops(
    model: Model, seats: Seats, group_of: Sequence[int], settings: SeatSettings = ...,
) -> list[list[AxialStop]]: ...
def find_clashes(
    model: Model, seats: Seats, settings: SeatSettings = ..., limits: ReadLimits = ...,
) -> ClashReport: ...
def find_seats(model: Model, settings: SeatSettings = ...) -> Seats: ...
def inner_points(region: Region, count: int) -> list[Point2]: ...
def intersect(a: Region, b: Region) -> Region: ...
def judge(job: Job, look: Look) -> CheckResult: ...
def kernel_version() -> str: ...
def look(
    file: _StrPath, *, accept_partial: bool = ..., seats: SeatSettings | None = ...,
    limits: ReadLimits | None = ...,
) -> Look: ...
def look_at(
    model: Model, *, seats: SeatSettings | None = ..., limits: ReadLimits | None = ...,
) -> Look: ...
def mapped(region: Region, map: PlaneMap) -> Region: ...
def model(mockup: Mockup | _StrPath, out: _StrPath) -> None: ...
def parse_feature_name(text: str, unit: str = ...) -> FeatureName | None: ...
def place_parts(mockup: Mockup) -> list[PlacedPart]: ...
def reach(region: Region, point: Point2) -> Reach: ...
def read(file: _StrPath, *, accept_partial: bool = ...) -> Model: ...
def read_job(file: _StrPath) -> Job: ...
def read_mockup(file: _StrPath) -> Mockup: ...
def subtract(a: Region, b: Region) -> Region: ...
def wall_of_hub(model: Model, seat: RadialSeat) -> Wall: ...
def wall_of_shaft(model: Model, seat: RadialSeat) -> Wall: ...
def ways_in(model: Model, seats: Seats, options: WayInOptions = ...) -> list[WayIn]: ...
def write_semantic_sizes(
    model: _StrPath, out: _StrPath, sizes: Sequence[SizeToWrite],
    unit: str = ...,
) -> list[Note]: ...
