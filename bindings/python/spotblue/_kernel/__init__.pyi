"""Types of the C++ kernel's module; import spotblue instead."""

from collections.abc import Iterable, Sequence
from os import PathLike
from pathlib import Path
from typing import Any, ClassVar, Self

import numpy.typing as npt

from spotblue._numbers import base
from spotblue.choice import Choice

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

class Arc(_Result):
    @property
    def start_deg(self) -> float: ...
    @property
    def sweep_deg(self) -> float: ...

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
        self, *, kind: AxialWantKind | str = ..., a: str = ..., b: str = ..., least_mm: float = ...,
        greatest_mm: float = ..., line: int = ...,
    ) -> None: ...
    kind: AxialWantKind
    a: str
    b: str
    least_mm: float
    greatest_mm: float
    line: int

class AxialWantKind(Choice):
    """What is wanted between two faces."""

    GAP = "gap"
    END_PLAY = "end play"
    TOUCH = "touch"

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

class BlockPart(_Record):
    def __init__(
        self, *, size: Point = ..., added: Iterable[AddedBlock] = ..., bosses: Iterable[Boss] = ...,
        bores: Iterable[Bore] = ...,
    ) -> None: ...
    size: Point
    added: tuple[AddedBlock, ...]
    bosses: tuple[Boss, ...]
    bores: tuple[Bore, ...]

class Bore(_Record):
    def __init__(
        self, *, name: str = ..., face: PartFace | str = ..., u_mm: float = ..., v_mm: float = ...,
        diameter_mm: float = ..., depth_mm: float | None = ...,
        counterbore_diameter_mm: float = ..., counterbore_depth_mm: float = ..., count: int = ...,
        circle_mm: float = ..., angle_deg: float = ..., grooves: Iterable[BoreGroove] = ...,
    ) -> None: ...
    name: str
    face: PartFace
    u_mm: float
    v_mm: float
    diameter_mm: float
    depth_mm: float | None
    counterbore_diameter_mm: float
    counterbore_depth_mm: float
    count: int
    circle_mm: float
    angle_deg: float
    grooves: tuple[BoreGroove, ...]

class BoreGroove(_Record):
    def __init__(
        self, *, depth_mm: float = ..., width_mm: float = ..., diameter_mm: float = ...,
    ) -> None: ...
    depth_mm: float
    width_mm: float
    diameter_mm: float

class Boss(_Record):
    def __init__(
        self, *, name: str = ..., face: PartFace | str = ..., u_mm: float = ..., v_mm: float = ...,
        diameter_mm: float = ..., height_mm: float = ...,
    ) -> None: ...
    name: str
    face: PartFace
    u_mm: float
    v_mm: float
    diameter_mm: float
    height_mm: float

class Box(_Record):
    def __init__(self, *, low: Point = ..., high: Point = ...) -> None: ...
    low: Point
    high: Point
    def diagonal_mm(self) -> float: ...
    def extended(self, other: Point | Box) -> Box: ...
    def grown(self, by_mm: float) -> Box: ...
    def is_empty(self) -> bool: ...
    def overlaps(self, other: Box) -> bool: ...

class BreakKind(Choice):
    """What was done to an edge."""

    SHARP = "sharp"
    CHAMFER = "chamfer"
    FILLET = "fillet"

class CentreLine(_Result):
    @property
    def id(self) -> str: ...
    @property
    def line(self) -> Line: ...
    @property
    def occurrences(self) -> tuple[int, ...]: ...

class CheckResult(_Result):
    @property
    def look(self) -> Look: ...
    @property
    def job(self) -> Job: ...
    @property
    def findings(self) -> tuple[Finding, ...]: ...
    @property
    def whole(self) -> bool: ...
    @property
    def outcomes(self) -> OutcomeCount: ...
    def _repr_html_(self) -> str: ...
    def findings_array(self) -> npt.NDArray[Any]: ...
    def to_json(self) -> str: ...
    def to_text(self, unit: str | None = ..., *, width: int = ...) -> str: ...

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
    def length_mm(self) -> float: ...
    @property
    def at(self) -> Point | None: ...
    @property
    def exact(self) -> bool: ...
    @property
    def cause(self) -> str: ...
    @property
    def undecided(self) -> bool: ...

class Contact(_Result):
    @property
    def a(self) -> int: ...
    @property
    def b(self) -> int: ...
    @property
    def gap_mm(self) -> float | None: ...
    @property
    def at(self) -> Point | None: ...
    @property
    def a_face(self) -> str: ...
    @property
    def b_face(self) -> str: ...
    @property
    def why(self) -> str: ...

class ClashEffort(_Result):
    @property
    def pairs(self) -> int: ...
    @property
    def distinct_pairs(self) -> int: ...
    @property
    def kernel_pairs(self) -> int: ...

class ClashReport(_Result):
    @property
    def clashes(self) -> tuple[Clash, ...]: ...
    @property
    def contacts(self) -> tuple[Contact, ...]: ...
    @property
    def not_looked_at(self) -> tuple[tuple[int, int], ...]: ...
    @property
    def unnamed_screws(self) -> tuple[UnnamedScrew, ...]: ...
    @property
    def notes(self) -> tuple[Note, ...]: ...
    @property
    def effort(self) -> ClashEffort: ...

class ClassFit(_Record):
    def __init__(
        self, *, system: FitSystem | str = ..., text: str = ..., nominal_mm: float | None = ...,
    ) -> None: ...
    system: FitSystem
    text: str
    nominal_mm: float | None

class ClearanceLimits(_Record):
    def __init__(self, *, least_mm: float = ..., greatest_mm: float = ...) -> None: ...
    least_mm: float
    greatest_mm: float

class ClearanceRange(_Result):
    @property
    def least_mm(self) -> float: ...
    @property
    def most_mm(self) -> float: ...

class ComparedRow(_Result):
    @property
    def kind(self) -> str: ...
    @property
    def about(self) -> str: ...
    @property
    def findings(self) -> tuple[int | None, ...]: ...

class Comparison(_Result):
    @property
    def rows(self) -> tuple[ComparedRow, ...]: ...
    @property
    def costs(self) -> tuple[PlanCost, ...]: ...
    @property
    def best(self) -> int | None: ...
    @property
    def plans(self) -> tuple[CheckResult, ...]: ...
    def _repr_html_(self) -> str: ...
    def to_json(self) -> str: ...
    def to_text(self, unit: str | None = ..., *, width: int = ...) -> str: ...

class Completeness(Choice):
    """What becomes of a file that reads only in part."""

    ALL_OR_ERROR = "all or error"
    ACCEPT_PARTIAL = "accept partial"

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
    def side(self) -> Side: ...
    @property
    def axis(self) -> Line: ...
    @property
    def zero(self) -> Point: ...
    @property
    def patches(self) -> tuple[Patch, ...]: ...
    @property
    def radius_mm(self) -> float: ...
    @property
    def half_angle_deg(self) -> float: ...
    @property
    def intervals_mm(self) -> tuple[tuple[float, float], ...]: ...
    @property
    def coverage_deg(self) -> float: ...
    @property
    def recognised_from(self) -> SurfaceSource: ...
    @property
    def deviation_mm(self) -> float: ...

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
    def side(self) -> Side: ...
    @property
    def diameter_mm(self) -> float: ...
    @property
    def sizes(self) -> tuple[DiameterAt, ...]: ...
    @property
    def axis(self) -> Line: ...
    @property
    def zero(self) -> Point: ...
    @property
    def patches(self) -> tuple[Patch, ...]: ...
    @property
    def intervals_mm(self) -> tuple[tuple[float, float], ...]: ...
    @property
    def coverage_deg(self) -> float: ...
    @property
    def recognised_from(self) -> SurfaceSource: ...
    @property
    def deviation_mm(self) -> float: ...

class DecidedSizes(_Result):
    @property
    def sizes(self) -> tuple[SizeToWrite, ...]: ...
    @property
    def left_out(self) -> tuple[Note, ...]: ...

class DiameterAt(_Result):
    @property
    def at_mm(self) -> float: ...
    @property
    def least_mm(self) -> float: ...
    @property
    def greatest_mm(self) -> float: ...

class Duty(Choice):
    """How hard a part is run."""

    NO_LOAD_SLOW = "no load, slow"
    INTERMITTENT = "intermittent"
    CONTINUOUS = "continuous"

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
    def __init__(self, *, kind: BreakKind | str = ..., size_mm: float = ...) -> None: ...
    kind: BreakKind
    size_mm: float

class EndPlayWant(_Record):
    def __init__(
        self, *, of: str = ..., gap_mm: tuple[float, float] = ..., line: int = ...,
    ) -> None: ...
    of: str
    gap_mm: tuple[float, float]
    line: int

class EndShape(Choice):
    """How a keyseat or key ends."""

    ROUND = "round"
    SQUARE = "square"

class Extent2(_Result):
    @property
    def low(self) -> Point2: ...
    @property
    def high(self) -> Point2: ...

class Facing(Choice):
    """Which way round a part is placed."""

    AS_DRAWN = "as drawn"
    TURNED_ROUND = "turned round"

class FeatureKind(Choice):
    """Which list of a product a feature is in."""

    CYLINDER = "cylinder"
    CONE = "cone"
    PLANE = "plane"
    WIDTH = "width"

class FeatureName(_Result):
    @property
    def part(self) -> str: ...
    @property
    def word(self) -> FeatureWord: ...
    @property
    def sizes_mm(self) -> tuple[float, ...]: ...
    @property
    def position_mm(self) -> float | None: ...
    @property
    def ordinal(self) -> int | None: ...

class FeatureRef(_Record):
    def __init__(
        self, *, occurrence: int = ..., kind: FeatureKind | str = ..., index: int = ...,
    ) -> None: ...
    occurrence: int
    kind: FeatureKind
    index: int

class FeatureWord(Choice):
    """What a feature's name begins with."""

    BORE = "bore"
    OUTSIDE = "outside"
    TAPER_BORE = "taper bore"
    TAPER = "taper"
    FACE = "face"
    SLOT = "slot"
    WIDTH = "width"

class FileInfo(_Result):
    @property
    def name(self) -> str: ...
    @property
    def sha256(self) -> str: ...
    @property
    def protocol(self) -> str: ...
    @property
    def unit(self) -> str: ...
    @property
    def files(self) -> tuple[str, ...]: ...

class Finding(_Result):
    @property
    def id(self) -> str: ...
    @property
    def kind(self) -> str: ...
    @property
    def about(self) -> tuple[str, ...]: ...
    @property
    def outcome(self) -> base.Outcome: ...
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

class FitSystem(Choice):
    """Whose classes of fit."""

    ISO_286 = "ISO 286"
    ANSI_B4_1 = "ANSI B4.1"

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
    def __init__(self, *, rows: Iterable[Sequence[float]] = ...) -> None: ...
    rows: tuple[tuple[float, ...], ...]
    def compose(self, inner: Frame) -> Frame: ...
    def inverse(self) -> Frame: ...
    def is_mirror(self) -> bool: ...
    def place_box(self, box: Box) -> Box: ...
    def place_direction(self, direction: Point) -> Point: ...
    def place_line(self, line: Line) -> Line: ...
    def place_point(self, point: Point) -> Point: ...

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
        self, *, file: str = ..., model: _StrPath = ..., unit: base.LengthUnit | str = ...,
        title: str = ..., parts: Iterable[JobPart] = ..., fits: Iterable[FitWant] = ...,
        sizes: Iterable[SizeWant] = ..., measured: Iterable[MeasuredSize] = ...,
        measured_gaps: Iterable[MeasuredGap] = ..., axial: Iterable[AxialWant] = ...,
        tapers: Iterable[TaperWant] = ..., allowed: Iterable[AllowedOverlap] = ...,
        materials: Iterable[OwnMaterial] = ..., conditions: Conditions = ...,
        turning: Iterable[Turning] = ..., joins: Iterable[Join] = ...,
        keep_off: Iterable[KeepOff] = ..., surfaces: Iterable[Surface] = ...,
        lengths: Iterable[PartLength] = ..., end_play: Iterable[EndPlayWant] = ...,
        meshes: Iterable[Mesh] = ..., cuts: Iterable[Cut] = ..., settings: JobSettings = ...,
    ) -> None: ...
    file: str
    model: Path
    unit: base.LengthUnit
    title: str
    parts: tuple[JobPart, ...]
    fits: tuple[FitWant, ...]
    sizes: tuple[SizeWant, ...]
    measured: tuple[MeasuredSize, ...]
    measured_gaps: tuple[MeasuredGap, ...]
    axial: tuple[AxialWant, ...]
    tapers: tuple[TaperWant, ...]
    allowed: tuple[AllowedOverlap, ...]
    materials: tuple[OwnMaterial, ...]
    conditions: Conditions
    turning: tuple[Turning, ...]
    joins: tuple[Join, ...]
    keep_off: tuple[KeepOff, ...]
    surfaces: tuple[Surface, ...]
    lengths: tuple[PartLength, ...]
    end_play: tuple[EndPlayWant, ...]
    meshes: tuple[Mesh, ...]
    cuts: tuple[Cut, ...]
    settings: JobSettings

class JobPart(_Record):
    def __init__(
        self, *, part: str = ..., material: str = ..., state: PartState | str = ...,
        sizes: SizesMeant | str = ..., irreplaceable: bool = ..., stock: StockPiece | None = ...,
        running_c: float | None = ..., springs: bool = ..., line: int = ...,
    ) -> None: ...
    part: str
    material: str
    state: PartState
    sizes: SizesMeant
    irreplaceable: bool
    stock: StockPiece | None
    running_c: float | None
    springs: bool
    line: int

class JobSettings(_Record):
    def __init__(
        self, *, seats: SeatSettings = ..., default_uncertainty_mm: float = ...,
        limits: ReadLimits = ..., completeness: Completeness | str = ...,
    ) -> None: ...
    seats: SeatSettings
    default_uncertainty_mm: float
    limits: ReadLimits
    completeness: Completeness

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
        ends: EndShape | str = ...,
    ) -> None: ...
    width_mm: float
    height_mm: float
    length_mm: float
    ends: EndShape

class Keyseat(_Record):
    def __init__(
        self, *, at_mm: float = ..., length_mm: float = ..., width_mm: float = ...,
        depth_mm: float = ..., angle_deg: float = ..., ends: EndShape | str = ...,
    ) -> None: ...
    at_mm: float
    length_mm: float
    width_mm: float
    depth_mm: float
    angle_deg: float
    ends: EndShape

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
    def at_station(self, station_mm: float) -> Point: ...
    def distance_mm(self, point: Point) -> float: ...
    def station_mm(self, point: Point) -> float: ...

class Look(_Result):
    @property
    def model(self) -> Model: ...
    @property
    def seats(self) -> Seats: ...
    @property
    def clash(self) -> ClashReport: ...
    @property
    def seconds(self) -> LookSeconds: ...
    @property
    def not_looked_at(self) -> tuple[Note, ...]: ...
    @property
    def machine_lacked(self) -> bool: ...
    @property
    def memory_mb(self) -> float: ...
    def _repr_html_(self) -> str: ...
    def axial_seats_array(self) -> npt.NDArray[Any]: ...
    def clashes_array(self) -> npt.NDArray[Any]: ...
    def feature_id(self, feature: FeatureRef) -> str: ...
    def features_array(self) -> npt.NDArray[Any]: ...
    def radial_seats_array(self) -> npt.NDArray[Any]: ...
    def to_json(self) -> str: ...
    def to_text(self, unit: str | None = ..., *, width: int = ...) -> str: ...

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
        self, *, file: str = ..., read_from: Iterable[_StrPath] = ..., title: str = ...,
        about: str = ..., unit: base.LengthUnit | str = ..., protocol: StepProtocol | str = ...,
        parts: Iterable[MockupPart] = ..., lines: Iterable[PlacingLine] = ...,
        placements: Iterable[Placement] = ...,
    ) -> None: ...
    file: str
    read_from: tuple[Path, ...]
    title: str
    about: str
    unit: base.LengthUnit
    protocol: StepProtocol
    parts: tuple[MockupPart, ...]
    lines: tuple[PlacingLine, ...]
    placements: tuple[Placement, ...]

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
    def products(self) -> tuple[Product, ...]: ...
    @property
    def occurrences(self) -> tuple[Occurrence, ...]: ...
    @property
    def notes(self) -> tuple[Note, ...]: ...
    @property
    def not_compared(self) -> tuple[Note, ...]: ...
    @property
    def semantic_sizes(self) -> tuple[SemanticSize, ...]: ...

class Note(_Result):
    @property
    def about(self) -> str: ...
    @property
    def text(self) -> str: ...

class NotTold(_Result):
    @property
    def part(self) -> int: ...
    @property
    def by(self) -> int: ...
    @property
    def leaving(self) -> Point: ...

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

class OtherFace(_Result):
    @property
    def box(self) -> Box: ...
    @property
    def sized(self) -> bool: ...
    @property
    def revolved(self) -> bool: ...
    @property
    def axis(self) -> Line: ...
    @property
    def inner_radius_mm(self) -> float: ...
    @property
    def outer_radius_mm(self) -> float: ...
    @property
    def start_mm(self) -> float: ...
    @property
    def end_mm(self) -> float: ...
    @property
    def pieces(self) -> tuple[RingPiece, ...]: ...

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

class PartFace(Choice):
    """A face of a block."""

    FIRST = "first"
    LAST = "last"
    LEFT = "left"
    RIGHT = "right"
    FRONT = "front"
    BACK = "back"

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

class PartState(Choice):
    """Whether a part exists."""

    AS_FOUND = "as found"
    TO_MAKE = "to make"

class Patch(_Result):
    @property
    def start_mm(self) -> float: ...
    @property
    def end_mm(self) -> float: ...
    @property
    def arcs(self) -> tuple[Arc, ...]: ...

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
        facing: Facing | str = ..., face: str = ..., at_mm: float | None = ..., against: str = ...,
        against_face: str = ..., gap_mm: float = ..., aside_x_mm: float = ...,
        aside_y_mm: float = ..., turn_deg: float = ..., circle: PlacingCircle = ...,
        keyseat_of: str = ..., keyseat: int = ...,
    ) -> None: ...
    name: str
    part: str
    group: str
    line: str
    on: str
    facing: Facing
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
    def new_parts(self) -> tuple[str, ...]: ...
    @property
    def stock(self) -> tuple[str, ...]: ...
    @property
    def cuts_in_irreplaceable(self) -> tuple[str, ...]: ...
    @property
    def removed_mm3(self) -> float: ...
    @property
    def other_cuts(self) -> tuple[str, ...]: ...
    @property
    def presses(self) -> int: ...
    @property
    def ways_in(self) -> base.Outcome: ...
    @property
    def ways_in_judged(self) -> int: ...
    @property
    def whole(self) -> bool: ...
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
    def recognised_from(self) -> SurfaceSource: ...
    @property
    def deviation_mm(self) -> float: ...

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
    def __add__(self, other: Point) -> Point: ...
    def __sub__(self, other: Point) -> Point: ...
    def __neg__(self) -> Point: ...
    def __mul__(self, factor: float) -> Point: ...
    def __rmul__(self, factor: float) -> Point: ...
    def angle_deg(self, other: Point) -> float: ...
    def any_square(self) -> Point: ...
    def cross(self, other: Point) -> Point: ...
    def dot(self, other: Point) -> float: ...
    def norm(self) -> float: ...
    def unit(self) -> Point: ...

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
    def part(self) -> str: ...
    @property
    def body(self) -> int: ...
    @property
    def body_name(self) -> str: ...
    @property
    def solids(self) -> int: ...
    @property
    def faces(self) -> int: ...
    @property
    def volume_mm3(self) -> float: ...
    @property
    def volume_error_mm3(self) -> float: ...
    @property
    def uncertainty_mm(self) -> float: ...
    @property
    def closed(self) -> bool: ...
    @property
    def unsound(self) -> str: ...
    @property
    def drawn_at(self) -> Point: ...
    @property
    def box(self) -> Box: ...
    @property
    def cylinders(self) -> tuple[Cylinder, ...]: ...
    @property
    def cones(self) -> tuple[Cone, ...]: ...
    @property
    def planes(self) -> tuple[Plane, ...]: ...
    @property
    def widths(self) -> tuple[Width, ...]: ...
    @property
    def others(self) -> tuple[OtherFace, ...]: ...

class ProductFeatureRef(_Result):
    @property
    def kind(self) -> FeatureKind: ...
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
    def worn(self) -> ClearanceRange | None: ...
    @property
    def least_gap_mm(self) -> float: ...
    @property
    def fouls_by_mm(self) -> float: ...
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

class ReadIn(Choice):
    """Where a file is read: in this process only when it can be lost, and from one thread."""

    CHILD_PROCESS = "child process"
    THIS_PROCESS = "this process"

class ReadLimits(_Record):
    def __init__(
        self, *, seconds: float = ..., memory_mb: float = ..., file_mb: float = ...,
        nesting_depth: int = ..., occurrences: float = ..., token_kb: int = ...,
        read_in: ReadIn | str = ...,
    ) -> None: ...
    seconds: float
    memory_mb: float
    file_mb: float
    nesting_depth: int
    occurrences: float
    token_kb: int
    read_in: ReadIn

class Region(_Record):
    def __init__(self, *, edges: Iterable[Edge2] = ..., exact: bool = ...) -> None: ...
    edges: tuple[Edge2, ...]
    exact: bool
    def is_empty(self) -> bool: ...

class RingPart(_Record):
    def __init__(
        self, *, outside_mm: float = ..., inside_mm: float = ..., thickness_mm: float = ...,
        gap_mm: float = ...,
    ) -> None: ...
    outside_mm: float
    inside_mm: float
    thickness_mm: float
    gap_mm: float

class RingPiece(_Result):
    @property
    def inner_radius_mm(self) -> float: ...
    @property
    def outer_radius_mm(self) -> float: ...
    @property
    def start_mm(self) -> float: ...
    @property
    def end_mm(self) -> float: ...

class Seats(_Result):
    @property
    def centre_lines(self) -> tuple[CentreLine, ...]: ...
    @property
    def radial(self) -> tuple[RadialSeat, ...]: ...
    @property
    def axial(self) -> tuple[AxialSeat, ...]: ...
    @property
    def taper(self) -> tuple[TaperSeat, ...]: ...
    @property
    def width(self) -> tuple[WidthSeat, ...]: ...
    @property
    def threads(self) -> tuple[Thread, ...]: ...
    @property
    def near_pairs(self) -> tuple[tuple[int, int], ...]: ...
    @property
    def not_looked_at(self) -> tuple[tuple[int, int], ...]: ...
    @property
    def crowded(self) -> tuple[int, ...]: ...

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

class SemanticSize(_Result):
    @property
    def entity(self) -> int: ...
    @property
    def name(self) -> str: ...
    @property
    def characteristic(self) -> SizeCharacteristic: ...
    @property
    def product(self) -> int | None: ...
    @property
    def features(self) -> tuple[ProductFeatureRef, ...]: ...
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

class Side(Choice):
    """Whether a feature is a hole or slot, or a shaft or key."""

    INTERNAL = "internal"
    EXTERNAL = "external"

class SizeCharacteristic(Choice):
    """What of a feature a stated size is."""

    DIAMETER = "diameter"
    RADIUS = "radius"
    WIDTH = "width"
    OTHER = "other"

class SizeLimits(_Result):
    @property
    def lower_mm(self) -> float: ...
    @property
    def upper_mm(self) -> float: ...

class SizesMeant(Choice):
    """Whether modelled sizes are nominal or as measured."""

    BASIC = "basic"
    ACTUAL = "actual"

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

class StepProtocol(Choice):
    """The application protocol of a STEP file."""

    AP203 = "AP203"
    AP214 = "AP214"
    AP242 = "AP242"

class StockForm(Choice):
    """The form of a piece of stock."""

    BAR = "bar"
    TUBE = "tube"
    SLUG = "slug"
    PLATE = "plate"

class StockPiece(_Record):
    def __init__(
        self, *, form: StockForm | str = ..., diameter_mm: float | None = ...,
        inner_diameter_mm: float | None = ..., length_mm: float | None = ...,
        width_mm: float | None = ..., thickness_mm: float | None = ...,
    ) -> None: ...
    form: StockForm
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

class SurfaceSource(Choice):
    """The surface in the file that a feature was recognised from."""

    CYLINDER = "cylinder"
    CONE = "cone"
    PLANE = "plane"
    BSPLINE = "bspline"
    REVOLUTION = "revolution"
    EXTRUSION = "extrusion"

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
    def least_gap_mm(self) -> float: ...
    @property
    def fouls_by_mm(self) -> float: ...
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
        self, *, outside: Iterable[Step] = ..., inside: Iterable[Step] = ...,
        outside_grooves: Iterable[Groove] = ..., inside_grooves: Iterable[Groove] = ...,
        keyseats: Iterable[Keyseat] = ..., keyways: Iterable[Keyway] = ...,
        flats: Iterable[Flats] = ..., cross_holes: Iterable[CrossHole] = ...,
        bores: Iterable[Bore] = ...,
    ) -> None: ...
    outside: tuple[Step, ...]
    inside: tuple[Step, ...]
    outside_grooves: tuple[Groove, ...]
    inside_grooves: tuple[Groove, ...]
    keyseats: tuple[Keyseat, ...]
    keyways: tuple[Keyway, ...]
    flats: tuple[Flats, ...]
    cross_holes: tuple[CrossHole, ...]
    bores: tuple[Bore, ...]

class Turning(_Record):
    def __init__(
        self, *, part: str = ..., rpm: float = ..., duty: Duty | str = ...,
        load_n: float | None = ..., thrust_n: float | None = ..., line: int = ...,
    ) -> None: ...
    part: str
    rpm: float
    duty: Duty
    load_n: float | None
    thrust_n: float | None
    line: int

class UnnamedScrew(_Result):
    @property
    def hole(self) -> FeatureRef: ...
    @property
    def screw(self) -> FeatureRef: ...
    @property
    def thread(self) -> str: ...

class Wall(_Result):
    @property
    def stretches(self) -> tuple[WallStretch, ...]: ...
    @property
    def blind_spots(self) -> tuple[str, ...]: ...

class WallStretch(_Result):
    @property
    def start_mm(self) -> float: ...
    @property
    def end_mm(self) -> float: ...
    @property
    def inner_mm(self) -> float: ...
    @property
    def outer_mm(self) -> float: ...

class WayHow(Choice):
    """How a part goes to its place."""

    SLIDE = "slide"
    PRESS = "press"
    SCREW = "screw"
    SPRING_IN = "spring in"
    DROP_IN = "drop in"

class WayIn(_Result):
    @property
    def centre_lines(self) -> tuple[int, ...]: ...
    @property
    def parts(self) -> tuple[int, ...]: ...
    @property
    def base(self) -> int: ...
    @property
    def steps(self) -> tuple[WayStep, ...]: ...
    @property
    def blocked(self) -> tuple[Blockage, ...]: ...
    @property
    def not_told(self) -> tuple[NotTold, ...]: ...
    @property
    def too_many(self) -> bool: ...

class WayInOptions(_Record):
    def __init__(
        self, *, springs: Iterable[int] = ..., pressed: Iterable[tuple[int, int]] = ...,
        given: Iterable[GivenOverlap] = ..., squeezed: Iterable[GivenOverlap] = ...,
    ) -> None: ...
    springs: tuple[int, ...]
    pressed: tuple[tuple[int, int], ...]
    given: tuple[GivenOverlap, ...]
    squeezed: tuple[GivenOverlap, ...]

class WayStep(_Result):
    @property
    def parts(self) -> tuple[int, ...]: ...
    @property
    def along(self) -> Point: ...
    @property
    def how(self) -> WayHow: ...
    @property
    def onto(self) -> int: ...
    @property
    def holds(self) -> tuple[int, ...]: ...

class Width(_Result):
    @property
    def name(self) -> str: ...
    @property
    def side(self) -> Side: ...
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
    def least_gap_mm(self) -> float: ...
    @property
    def ends_apart_mm(self) -> float | None: ...
    @property
    def area_mm2(self) -> float: ...

def area_mm2(region: Region) -> float: ...
def bare_job(model: _StrPath, unit: str = ...) -> Job: ...
def check(
    job: Job | _StrPath, *, accept_partial: bool = ..., seconds: float | None = ...,
    memory_mb: float | None = ..., allow_outside: bool = ...,
) -> CheckResult: ...
def check_parts(mockup: Mockup) -> None: ...
def compare(
    plans: Sequence[CheckResult | _StrPath], *, seconds: float | None = ...,
    memory_mb: float | None = ..., allow_outside: bool = ...,
) -> Comparison: ...
def contains(region: Region, point: Point2) -> bool: ...
def decided_sizes(job: Job, look: Look) -> DecidedSizes: ...
def disc(centre: Point2, radius_mm: float) -> Region: ...
def draft(look: Look, model_path: _StrPath, unit: str | None = ...) -> str: ...
def extent(region: Region) -> Extent2: ...
def faces_of(part: MockupPart) -> list[MockupFace]: ...
def faces_square_to(
    model: Model, occurrence: int, line: Line, settings: SeatSettings = ...,
) -> list[FeatureRef]: ...
def feature_id(model: Model, feature: FeatureRef) -> str: ...
def feature_word_name(word: FeatureWord | str) -> str: ...
def find_axial_stops(
    model: Model, seats: Seats, group_of: Sequence[int], settings: SeatSettings = ...,
) -> list[list[AxialStop]]: ...
def find_clashes(
    model: Model, seats: Seats, settings: SeatSettings = ..., limits: ReadLimits = ...,
) -> ClashReport: ...
def find_seats(model: Model, settings: SeatSettings = ...) -> Seats: ...
def inner_points(region: Region, count: int) -> list[Point2]: ...
def intersect(a: Region, b: Region) -> Region: ...
def is_model_file(file: _StrPath) -> bool: ...
def judge(job: Job, look: Look) -> CheckResult: ...
def kernel_version() -> str: ...
def look(
    file: _StrPath, *, accept_partial: bool = ..., seats: SeatSettings | None = ...,
    limits: ReadLimits | None = ..., seconds: float | None = ..., memory_mb: float | None = ...,
    allow_outside: bool = ...,
) -> Look: ...
def look_at(
    model: Model, *, seats: SeatSettings | None = ..., limits: ReadLimits | None = ...,
    seconds: float | None = ..., memory_mb: float | None = ...,
) -> Look: ...
def mapped(region: Region, map: PlaneMap) -> Region: ...
def margin_share(finding: Finding) -> float | None: ...
def model(mockup: Mockup | _StrPath, out: _StrPath, *, allow_outside: bool = ...) -> None: ...
def parse_feature_name(text: str, unit: str = ...) -> FeatureName | None: ...
def place_parts(mockup: Mockup) -> list[PlacedPart]: ...
def reach(region: Region, point: Point2) -> Reach: ...
def read(
    file: _StrPath, *, accept_partial: bool = ..., limits: ReadLimits | None = ...,
) -> Model: ...
def read_job(file: _StrPath, *, allow_outside: bool = ...) -> Job: ...
def read_mockup(file: _StrPath, *, allow_outside: bool = ...) -> Mockup: ...
def size_characteristic_name(characteristic: SizeCharacteristic | str) -> str: ...
def station_of_face(model: Model, face: FeatureRef, line: Line) -> float: ...
def subtract(a: Region, b: Region) -> Region: ...
def unit_of(file: FileInfo) -> base.LengthUnit: ...
def wall_of_hub(model: Model, seat: RadialSeat) -> Wall: ...
def wall_of_shaft(model: Model, seat: RadialSeat) -> Wall: ...
def ways_in(model: Model, seats: Seats, options: WayInOptions = ...) -> list[WayIn]: ...
def write_semantic_sizes(
    model: _StrPath, out: _StrPath, sizes: Sequence[SizeToWrite],
    unit: str = ...,
) -> list[Note]: ...
