"""Tables and rules of the standards."""

from collections.abc import Iterable

from spotblue._numbers import base
from spotblue.choice import Choice

class FitKind(Choice):
    """What two sets of limits promise, ISO 286-1:2010, 3.3."""

    CLEARANCE = "clearance"
    TRANSITION = "transition"
    INTERFERENCE = "interference"

class GeneralTolerance(Choice):
    """ISO 2768-1: f, m, c and v."""

    FINE = "fine"
    MEDIUM = "medium"
    COARSE = "coarse"
    VERY_COARSE = "very coarse"

class InchKeyFit(Choice):
    """The two classes of ASME B17.1."""

    CLASS_1 = "class 1"
    CLASS_2 = "class 2"

class KeyFit(Choice):
    """How a metric key sits in its keyseats, ISO 773."""

    FREE = "free"
    NORMAL = "normal"
    TIGHT = "tight"

class SizeKind(Choice):
    """Whether a class is for holes (capitals) or shafts."""

    HOLE = "hole"
    SHAFT = "shaft"

class BearingLimits(base._Record):
    """Greatest values a material bears when it runs; None where none is known."""

    pressure_mpa: float | None
    speed_m_s: float | None
    pressure_speed_mpa_m_s: float | None
    def __init__(
        self,
        *,
        pressure_mpa: float | None = ...,
        speed_m_s: float | None = ...,
        pressure_speed_mpa_m_s: float | None = ...,
    ) -> None: ...

class BearingMaterial(base._Record):
    """What a plain bearing material bears."""

    name: str
    limits: BearingLimits
    hottest_c: float | None
    source: str
    note: str
    def __init__(
        self,
        *,
        name: str = ...,
        limits: BearingLimits = ...,
        hottest_c: float | None = ...,
        source: str = ...,
        note: str = ...,
    ) -> None: ...

class BearingProportions(base._Record):
    """Proportions of a plain bearing."""

    length_least: float
    length_usual: float
    length_greatest: float
    length_relieved: float
    wall_least: float
    wall_floor_mm: float
    groove_length: float
    groove_depth: float
    groove_width_least: float
    groove_width_most: float
    length_source: str
    wall_source: str
    groove_source: str
    def __init__(
        self,
        *,
        length_least: float = ...,
        length_usual: float = ...,
        length_greatest: float = ...,
        length_relieved: float = ...,
        wall_least: float = ...,
        wall_floor_mm: float = ...,
        groove_length: float = ...,
        groove_depth: float = ...,
        groove_width_least: float = ...,
        groove_width_most: float = ...,
        length_source: str = ...,
        wall_source: str = ...,
        groove_source: str = ...,
    ) -> None: ...

class ClearanceGuide(base._Record):
    """Running clearance of shop practice, per unit of diameter."""

    service: str
    least: float
    greatest: float
    source: str
    def __init__(
        self, *, service: str = ..., least: float = ..., greatest: float = ..., source: str = ...
    ) -> None: ...

class ClearanceHole(base._Record):
    """Hole diameters for one thread size, ISO 273, mm."""

    thread_mm: float
    fine_mm: float
    medium_mm: float
    coarse_mm: float
    def __init__(
        self,
        *,
        thread_mm: float = ...,
        fine_mm: float = ...,
        medium_mm: float = ...,
        coarse_mm: float = ...,
    ) -> None: ...

class CommonFit(base._Record):
    """One common fit at a given size."""

    name: str
    duty: str
    fit: Fit
    def __init__(self, *, name: str = ..., duty: str = ..., fit: Fit = ...) -> None: ...

class Deviations(base._Record):
    """Deviations from the nominal size, signed, mm."""

    lower_mm: float
    upper_mm: float
    def __init__(self, *, lower_mm: float = ..., upper_mm: float = ...) -> None: ...

class Fit(base._Record):
    """Limits of a hole and its shaft and the clearances they allow, mm."""

    hole: base.Limits
    shaft: base.Limits
    least_clearance_mm: float
    greatest_clearance_mm: float
    kind: FitKind
    def __init__(
        self,
        *,
        hole: base.Limits = ...,
        shaft: base.Limits = ...,
        least_clearance_mm: float = ...,
        greatest_clearance_mm: float = ...,
        kind: FitKind | str = ...,
    ) -> None: ...

class GeneralToleranceStep(base._Record):
    """One size step: how far a length may be off either way, mm."""

    over_mm: float
    up_to_mm: float
    deviation_mm: tuple[float | None, ...]
    def __init__(
        self, *, over_mm: float = ..., up_to_mm: float = ...,
        deviation_mm: Iterable[float | None] = ...,
    ) -> None: ...

class InchKey(base._Record):
    """Section of an inch parallel key, in mm, ASME B17.1."""

    shaft_over_mm: float
    shaft_up_to_mm: float
    width_mm: float
    square_height_mm: float
    rectangular_height_mm: float | None
    def __init__(
        self,
        *,
        shaft_over_mm: float = ...,
        shaft_up_to_mm: float = ...,
        width_mm: float = ...,
        square_height_mm: float = ...,
        rectangular_height_mm: float | None = ...,
    ) -> None: ...

class KeyWidths(base._Record):
    """Limits of the widths of a key and its keyseats, mm."""

    key: base.Limits
    shaft_keyseat: base.Limits
    hub_keyseat: base.Limits
    def __init__(
        self,
        *,
        key: base.Limits = ...,
        shaft_keyseat: base.Limits = ...,
        hub_keyseat: base.Limits = ...,
    ) -> None: ...

class Material(base._Record):
    """One material in one condition, typical values."""

    name: str
    condition: str
    youngs_modulus_gpa: float
    poisson_ratio: float
    expansion_per_mk: float
    yield_mpa: float | None
    yield_basis: str
    tensile_strength_mpa: float | None
    density_kg_m3: float
    source: str
    def __init__(
        self,
        *,
        name: str = ...,
        condition: str = ...,
        youngs_modulus_gpa: float = ...,
        poisson_ratio: float = ...,
        expansion_per_mk: float = ...,
        yield_mpa: float | None = ...,
        yield_basis: str = ...,
        tensile_strength_mpa: float | None = ...,
        density_kg_m3: float = ...,
        source: str = ...,
    ) -> None: ...

class ParallelKey(base._Record):
    """Section of a metric parallel key and depths of its keyseats, mm."""

    shaft_over_mm: float
    shaft_up_to_mm: float
    width_mm: float
    height_mm: float
    shaft_depth_mm: float
    hub_depth_mm: float
    depth_tolerance_mm: float
    def __init__(
        self,
        *,
        shaft_over_mm: float = ...,
        shaft_up_to_mm: float = ...,
        width_mm: float = ...,
        height_mm: float = ...,
        shaft_depth_mm: float = ...,
        hub_depth_mm: float = ...,
        depth_tolerance_mm: float = ...,
    ) -> None: ...

class ThreadSize(base._Record):
    """Basic sizes of one thread, mm."""

    designation: str
    major_diameter_mm: float
    pitch_mm: float
    minor_diameter_mm: float
    tap_drill_mm: float
    def __init__(
        self,
        *,
        designation: str = ...,
        major_diameter_mm: float = ...,
        pitch_mm: float = ...,
        minor_diameter_mm: float = ...,
        tap_drill_mm: float = ...,
    ) -> None: ...

def b4_1_fit(nominal_mm: float, cls: str) -> Fit: ...
def bearing_materials() -> list[BearingMaterial]: ...
def bearing_proportions() -> BearingProportions: ...
def broken_edge_deviation(nominal_mm: float, tolerance: GeneralTolerance | str) -> float: ...
def broken_edge_steps() -> list[GeneralToleranceStep]: ...
def clearance_guides() -> list[ClearanceGuide]: ...
def clearance_hole(thread_mm: float) -> ClearanceHole | None: ...
def clearance_holes() -> list[ClearanceHole]: ...
def common_b4_1_fits_with_clearance(nominal_mm: float, clearance_mm: float) -> list[CommonFit]: ...
def common_fits_with_clearance(nominal_mm: float, clearance_mm: float) -> list[CommonFit]: ...
def deviations(nominal_mm: float, tolerance_class: str) -> Deviations: ...
def find_bearing_material(name: str) -> BearingMaterial | None: ...
def find_material(name: str) -> Material | None: ...
def find_thread(designation: str) -> ThreadSize | None: ...
def fit(nominal_mm: float, text: str) -> Fit: ...
def fit_kind(least_clearance_mm: float, greatest_clearance_mm: float) -> FitKind: ...
def fit_kind_name(kind: FitKind | str) -> str: ...
def general_deviation(nominal_mm: float, tolerance: GeneralTolerance | str) -> float: ...
def general_tolerance_letter(tolerance: GeneralTolerance | str) -> str: ...
def general_tolerance_steps() -> list[GeneralToleranceStep]: ...
def inch_key(shaft_diameter_mm: float) -> InchKey: ...
def inch_key_widths(width_mm: float, fit: InchKeyFit | str) -> KeyWidths: ...
def inch_keys() -> list[InchKey]: ...
def inch_keyseat_depth(key_height_mm: float) -> float: ...
def is_journal_material(name: str) -> bool: ...
def it_value(nominal_mm: float, grade: str) -> float: ...
def key_widths(key: ParallelKey, fit: KeyFit | str) -> KeyWidths: ...
def limits(nominal_mm: float, tolerance_class: str) -> base.Limits: ...
def material_names() -> list[str]: ...
def materials() -> list[Material]: ...
def parallel_key(shaft_diameter_mm: float) -> ParallelKey: ...
def parallel_keys() -> list[ParallelKey]: ...
def parse_general_tolerance(letter: str) -> GeneralTolerance: ...
def size_kind(tolerance_class: str) -> SizeKind: ...
def thread_of(hole_diameter_mm: float, screw_diameter_mm: float) -> str | None: ...
def threads() -> list[ThreadSize]: ...
def weaker(a: BearingLimits, b: BearingLimits) -> BearingLimits: ...
