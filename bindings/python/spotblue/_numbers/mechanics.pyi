"""Mechanics of machine parts."""

from collections.abc import Iterable, Sequence
from typing import Final, overload

from spotblue._numbers import base, standards
from spotblue.choice import Choice

DRY_ICE_C: Final[float]
DRY_ICE_SHARE: Final[float]
GREAT_ROUGHNESS_LOSS: Final[float]
LIQUID_NITROGEN_C: Final[float]
LIQUID_NITROGEN_SHARE: Final[float]
SMALL_ROUGHNESS_LOSS: Final[float]
TEMPER_LIMIT_C: Final[float]

class GivesWay(Choice):
    """How a material gives way."""

    DUCTILE = "ductile"
    BRITTLE = "brittle"

class LimitCounts(Choice):
    """What a limit does when it is passed."""

    NO = "no"
    YES = "yes"
    AS_AVERAGE = "as average"

class Pins(Choice):
    """How many pins lie in the spaces of a gear."""

    TWO = "two"
    THREE = "three"

class PressSurface(Choice):
    """The four surfaces that can give way."""

    HUB_BORE = "hub bore"
    HUB_OUTSIDE = "hub outside"
    INNER_OUTSIDE = "inner outside"
    INNER_BORE = "inner bore"

class RunningDuty(Choice):
    """How hard a bearing is run."""

    NO_LOAD_SLOW = "no load, slow"
    INTERMITTENT = "intermittent"
    CONTINUOUS = "continuous"

class ShaftLoad(Choice):
    """How a shaft is loaded."""

    BENDING = "bending"
    TORSION = "torsion"
    TENSION = "tension"

class ShaftNotch(Choice):
    """What cuts a keyseat or groove."""

    END_MILLED_KEYSEAT = "end-milled keyseat"
    SLED_RUNNER_KEYSEAT = "sled-runner keyseat"
    RING_GROOVE = "ring groove"

class StackSense(Choice):
    """What a longer dimension does to the gap."""

    OPENS = "opens"
    CLOSES = "closes"

class StackSpread(Choice):
    """How a dimension is spread over its limits."""

    UNIFORM = "uniform"
    NORMAL = "normal"

class SuitOf(Choice):
    """Whether a term speaks of a size to make or a known one."""

    TO_MAKE = "to make"
    KNOWN = "known"

class BearingRatios(base._Record):
    """Sizes per unit of diameter."""

    clearance_least: float
    clearance_greatest: float
    length: float
    wall: float | None
    def __init__(
        self,
        *,
        clearance_least: float = ...,
        clearance_greatest: float = ...,
        length: float = ...,
        wall: float | None = ...,
    ) -> None: ...

class BearingSizes(base._Record):
    """The sizes of a plain bearing, mm."""

    diameter_mm: float
    length_mm: float
    clearance: base.Limits
    wall_mm: float | None
    def __init__(
        self,
        *,
        diameter_mm: float = ...,
        length_mm: float = ...,
        clearance: base.Limits = ...,
        wall_mm: float | None = ...,
    ) -> None: ...

class FlatSidedPart(base._Record):
    """A part with flat sides: the box round it, mm."""

    length_mm: float
    width_mm: float
    thickness_mm: float
    def __init__(
        self, *, length_mm: float = ..., width_mm: float = ..., thickness_mm: float = ...
    ) -> None: ...

class BlockStock(base._Record):
    """Plate or block, mm; None: as large as needed."""

    length_mm: float | None
    width_mm: float | None
    thickness_mm: float | None
    def __init__(
        self,
        *,
        length_mm: float | None = ...,
        width_mm: float | None = ...,
        thickness_mm: float | None = ...,
    ) -> None: ...

class BushInHub(base._Record):
    """A bush held in a stiffer hub."""

    bore_mm: float
    joint_mm: float
    hub_outside_mm: float
    interference_mm: float
    bush: Elastic
    hub: Elastic
    bench_c: float
    def __init__(
        self,
        *,
        bore_mm: float = ...,
        joint_mm: float = ...,
        hub_outside_mm: float = ...,
        interference_mm: float = ...,
        bush: Elastic = ...,
        hub: Elastic = ...,
        bench_c: float = ...,
    ) -> None: ...

class ChainRing(base._Record):
    """A ring with its free sizes at 20 C and its temperature."""

    free: Ring
    temperature_c: float
    def __init__(self, *, free: Ring = ..., temperature_c: float = ...) -> None: ...

class ChainRingState(base._Record):
    """A ring of the chain, unloaded and loaded."""

    free_bore_mm: float
    free_outside_mm: float
    bore_mm: float
    outside_mm: float
    loaded: RingState
    def __init__(
        self,
        *,
        free_bore_mm: float = ...,
        free_outside_mm: float = ...,
        bore_mm: float = ...,
        outside_mm: float = ...,
        loaded: RingState = ...,
    ) -> None: ...

class ChainState(base._Record):
    """Rings one in another, solved together."""

    rings: tuple[ChainRingState, ...]
    interfaces: tuple[InterfaceState, ...]
    def __init__(
        self, *, rings: Iterable[ChainRingState] = ..., interfaces: Iterable[InterfaceState] = ...
    ) -> None: ...

class CountingLimits(base._Record):
    """Which limits count for a duty."""

    pressure: LimitCounts
    speed: LimitCounts
    pressure_speed: LimitCounts
    def __init__(
        self,
        *,
        pressure: LimitCounts | str = ...,
        speed: LimitCounts | str = ...,
        pressure_speed: LimitCounts | str = ...,
    ) -> None: ...

class Elastic(base._Record):
    """Elastic, thermal and strength values of one part."""

    name: str
    youngs_modulus_mpa: float
    poisson_ratio: float
    expansion_per_k: float
    yield_mpa: float | None
    tensile_mpa: float | None
    gives_way: GivesWay
    def __init__(
        self,
        *,
        name: str = ...,
        youngs_modulus_mpa: float = ...,
        poisson_ratio: float = ...,
        expansion_per_k: float = ...,
        yield_mpa: float | None = ...,
        tensile_mpa: float | None = ...,
        gives_way: GivesWay | str = ...,
    ) -> None: ...

class GearCircles(base._Record):
    """Diameters of one gear, mm."""

    reference_mm: float
    base_mm: float
    tip_mm: float
    root_mm: float
    def __init__(
        self,
        *,
        reference_mm: float = ...,
        base_mm: float = ...,
        tip_mm: float = ...,
        root_mm: float = ...,
    ) -> None: ...

class GearMesh(base._Record):
    """What is true of a pair of gears at one centre distance."""

    reference_centre_mm: float
    working_angle_rad: float
    working_a_mm: float
    working_b_mm: float
    path_mm: float
    contact_ratio: float
    overlap_ratio: float
    backlash_mm: float
    normal_backlash_mm: float
    backlash_per_centre: float
    tight_centre_mm: float | None
    tip_clearance_a_mm: float
    tip_clearance_b_mm: float
    past_base_of_b_mm: float
    past_base_of_a_mm: float
    def __init__(
        self,
        *,
        reference_centre_mm: float = ...,
        working_angle_rad: float = ...,
        working_a_mm: float = ...,
        working_b_mm: float = ...,
        path_mm: float = ...,
        contact_ratio: float = ...,
        overlap_ratio: float = ...,
        backlash_mm: float = ...,
        normal_backlash_mm: float = ...,
        backlash_per_centre: float = ...,
        tight_centre_mm: float | None = ...,
        tip_clearance_a_mm: float = ...,
        tip_clearance_b_mm: float = ...,
        past_base_of_b_mm: float = ...,
        past_base_of_a_mm: float = ...,
    ) -> None: ...

class Governing(base._Record):
    """The surface of a part that is nearest to giving way."""

    surface: PressSurface
    stress: SurfaceStress
    utilisation: float | None
    def __init__(
        self,
        *,
        surface: PressSurface | str = ...,
        stress: SurfaceStress = ...,
        utilisation: float | None = ...,
    ) -> None: ...

class InterfaceState(base._Record):
    """Between one ring and the next outward."""

    interference_mm: float
    pressure_mpa: float
    gap_mm: float
    def __init__(
        self, *, interference_mm: float = ..., pressure_mpa: float = ..., gap_mm: float = ...
    ) -> None: ...

class LeastBacklash(base._Record):
    """Least backlash, square to the flanks, mm."""

    iso_mm: float
    agma_mm: float
    def __init__(self, *, iso_mm: float = ..., agma_mm: float = ...) -> None: ...

class LimitShares(base._Record):
    """Found over greatest allowed, 1 at the limit."""

    pressure: float | None
    speed: float | None
    pressure_speed: float | None
    running_time: float | None
    def __init__(
        self,
        *,
        pressure: float | None = ...,
        speed: float | None = ...,
        pressure_speed: float | None = ...,
        running_time: float | None = ...,
    ) -> None: ...

class Loosening(base._Record):
    """Temperatures at which a bush works loose, degrees C."""

    first_yield_c: float | None
    whole_wall_c: float | None
    loose_c: float | None
    lets_go_c: float | None
    def __init__(
        self,
        *,
        first_yield_c: float | None = ...,
        whole_wall_c: float | None = ...,
        loose_c: float | None = ...,
        lets_go_c: float | None = ...,
    ) -> None: ...

class MeshedGear(base._Record):
    """One gear of a mesh."""

    teeth: int
    thickness_mm: float
    tip_mm: float
    root_mm: float
    def __init__(
        self,
        *,
        teeth: int = ...,
        thickness_mm: float = ...,
        tip_mm: float = ...,
        root_mm: float = ...,
    ) -> None: ...

class NominalStress(base._Record):
    """Greatest nominal stresses in a section, MPa."""

    torsion_mpa: float
    bending_mpa: float
    def __init__(self, *, torsion_mpa: float = ..., bending_mpa: float = ...) -> None: ...

class PressFit(base._Record):
    """A press or shrink fit at one interference."""

    joint_mm: float
    interference_mm: float
    hub: Elastic
    inner: Elastic
    friction_least: float
    friction_greatest: float
    stretches: tuple[PressStretch, ...]
    def __init__(
        self,
        *,
        joint_mm: float = ...,
        interference_mm: float = ...,
        hub: Elastic = ...,
        inner: Elastic = ...,
        friction_least: float = ...,
        friction_greatest: float = ...,
        stretches: Iterable[PressStretch] = ...,
    ) -> None: ...

class PressState(base._Record):
    """What a press fit does to its parts."""

    stretches: tuple[StretchState, ...]
    least_pressure_mpa: float
    greatest_pressure_mpa: float
    hub: Governing
    inner: Governing
    force_to_press_n: float
    axial_hold_n: float
    holding_torque_nm: float
    bore_close_in_mm: float
    hub_growth_mm: float
    def __init__(
        self,
        *,
        stretches: Iterable[StretchState] = ...,
        least_pressure_mpa: float = ...,
        greatest_pressure_mpa: float = ...,
        hub: Governing = ...,
        inner: Governing = ...,
        force_to_press_n: float = ...,
        axial_hold_n: float = ...,
        holding_torque_nm: float = ...,
        bore_close_in_mm: float = ...,
        hub_growth_mm: float = ...,
    ) -> None: ...

class PressStretch(base._Record):
    """A length of the joint with plain walls, mm."""

    length_mm: float
    hub_outside_mm: float
    inner_bore_mm: float
    def __init__(
        self, *, length_mm: float = ..., hub_outside_mm: float = ..., inner_bore_mm: float = ...
    ) -> None: ...

class Ring(base._Record):
    """A thick ring, or a solid disc where inner is 0, mm."""

    inner_mm: float
    outer_mm: float
    material: Elastic
    def __init__(
        self, *, inner_mm: float = ..., outer_mm: float = ..., material: Elastic = ...
    ) -> None: ...

class RingLoad(base._Record):
    """Pressures on a ring's surfaces, MPa, 0 or more."""

    inside_mpa: float
    outside_mpa: float
    def __init__(self, *, inside_mpa: float = ..., outside_mpa: float = ...) -> None: ...

class RingState(base._Record):
    """Stresses and growth of a loaded ring."""

    bore: SurfaceStress
    outside: SurfaceStress
    bore_change_mm: float
    outside_change_mm: float
    def __init__(
        self,
        *,
        bore: SurfaceStress = ...,
        outside: SurfaceStress = ...,
        bore_change_mm: float = ...,
        outside_change_mm: float = ...,
    ) -> None: ...

class RoundPart(base._Record):
    """A turned part, mm."""

    outside_mm: float
    bore_mm: float
    length_mm: float
    def __init__(
        self, *, outside_mm: float = ..., bore_mm: float = ..., length_mm: float = ...
    ) -> None: ...

class RoundSection(base._Record):
    """A round section, solid or hollow, mm."""

    outer_mm: float
    inner_mm: float
    def __init__(self, *, outer_mm: float = ..., inner_mm: float = ...) -> None: ...

class RoundStock(base._Record):
    """Bar, slug or tube, turned about its own axis, mm."""

    diameter_mm: float
    inner_mm: float
    length_mm: float | None
    def __init__(
        self, *, diameter_mm: float = ..., inner_mm: float = ..., length_mm: float | None = ...
    ) -> None: ...

class RunningLoad(base._Record):
    """How a pair works; None where not known."""

    speed_m_s: float
    pressure_mpa: float | None
    pressure_speed_mpa_m_s: float | None
    def __init__(
        self,
        *,
        speed_m_s: float = ...,
        pressure_mpa: float | None = ...,
        pressure_speed_mpa_m_s: float | None = ...,
    ) -> None: ...

class SlipIn(base._Record):
    """Heating the hub or chilling the inner part to slip together."""

    heat_hub_to_c: float
    chill_inner_to_c: float
    dry_ice_will_do: bool
    liquid_nitrogen_will_do: bool
    may_soften_hub: bool
    def __init__(
        self,
        *,
        heat_hub_to_c: float = ...,
        chill_inner_to_c: float = ...,
        dry_ice_will_do: bool = ...,
        liquid_nitrogen_will_do: bool = ...,
        may_soften_hub: bool = ...,
    ) -> None: ...

class StackDimension(base._Record):
    """One length of the loop, mm."""

    name: str
    nominal_mm: float
    limits: base.Limits
    sense: StackSense
    spread: StackSpread
    expansion_per_k: float
    warmer_by_k: float
    def __init__(
        self,
        *,
        name: str = ...,
        nominal_mm: float = ...,
        limits: base.Limits = ...,
        sense: StackSense | str = ...,
        spread: StackSpread | str = ...,
        expansion_per_k: float = ...,
        warmer_by_k: float = ...,
    ) -> None: ...

class StackDraw(base._Record):
    """How many loops are drawn, and by which lot."""

    samples: int
    seed: int
    threads: int
    def __init__(self, *, samples: int = ..., seed: int = ..., threads: int = ...) -> None: ...

class StackOutcome(base._Record):
    """The gaps of many loops drawn by lot, mm."""

    mean_mm: float
    deviation_mm: float
    least_mm: float
    greatest_mm: float
    low_mm: float
    middle_mm: float
    high_mm: float
    share_below: float
    share_above: float
    def __init__(
        self,
        *,
        mean_mm: float = ...,
        deviation_mm: float = ...,
        least_mm: float = ...,
        greatest_mm: float = ...,
        low_mm: float = ...,
        middle_mm: float = ...,
        high_mm: float = ...,
        share_below: float = ...,
        share_above: float = ...,
    ) -> None: ...

class SteppedShaft(base._Record):
    """A round shaft with a step and a fillet, mm."""

    larger_mm: float
    smaller_mm: float
    fillet_mm: float
    def __init__(
        self, *, larger_mm: float = ..., smaller_mm: float = ..., fillet_mm: float = ...
    ) -> None: ...

class StockCheck(base._Record):
    """Whether a part comes out of a piece of stock."""

    margins: tuple[StockMargin, ...]
    volume_mm3: float | None
    @property
    def fits(self) -> bool: ...
    @property
    def least_margin_mm(self) -> float: ...
    def __init__(
        self, *, margins: Iterable[StockMargin] = ..., volume_mm3: float | None = ...
    ) -> None: ...

class StockMargin(base._Record):
    """Room left at one size once both sides are cleaned."""

    size: str
    margin_mm: float
    def __init__(self, *, size: str = ..., margin_mm: float = ...) -> None: ...

class StressFactor(base._Record):
    """A factor, or why the curves do not give one."""

    factor: float | None
    reason: str
    def __init__(self, *, factor: float | None = ..., reason: str = ...) -> None: ...

class StretchState(base._Record):
    """One stretch of a pressed joint."""

    pressure_mpa: float
    hub: RingState
    inner: RingState
    def __init__(
        self, *, pressure_mpa: float = ..., hub: RingState = ..., inner: RingState = ...
    ) -> None: ...

class SuitConflict(base._Record):
    """Demands that cannot hold together."""

    size: int
    first: str
    second: str
    through: tuple[str, ...]
    short_by_mm: float
    def __init__(
        self,
        *,
        size: int = ...,
        first: str = ...,
        second: str = ...,
        through: Iterable[str] = ...,
        short_by_mm: float = ...,
    ) -> None: ...

class SuitDemand(base._Record):
    """A sum of sizes that must lie between two limits."""

    name: str
    terms: tuple[SuitTerm, ...]
    constant_mm: float
    wanted: base.Limits
    def __init__(
        self,
        *,
        name: str = ...,
        terms: Iterable[SuitTerm] = ...,
        constant_mm: float = ...,
        wanted: base.Limits = ...,
    ) -> None: ...

class SuitKnown(base._Record):
    """A size that exists: all values it may have, mm."""

    name: str
    limits: base.Limits
    def __init__(self, *, name: str = ..., limits: base.Limits = ...) -> None: ...

class SuitPlan(base._Record):
    """Windows of all sizes to make, and conflicts."""

    windows: tuple[SuitWindow | None, ...]
    conflicts: tuple[SuitConflict, ...]
    def __init__(
        self, *, windows: Iterable[SuitWindow | None] = ..., conflicts: Iterable[SuitConflict] = ...
    ) -> None: ...

class SuitProblem(base._Record):
    """Sizes to make, sizes that exist, and demands."""

    sizes: tuple[SuitSize, ...]
    known: tuple[SuitKnown, ...]
    demands: tuple[SuitDemand, ...]
    def __init__(
        self,
        *,
        sizes: Iterable[SuitSize] = ...,
        known: Iterable[SuitKnown] = ...,
        demands: Iterable[SuitDemand] = ...,
    ) -> None: ...

class SuitSize(base._Record):
    """A size still to be made, mm."""

    name: str
    drawn_mm: float
    own: base.Limits | None
    own_by: str
    uncertainty_mm: float
    def __init__(
        self,
        *,
        name: str = ...,
        drawn_mm: float = ...,
        own: base.Limits | None = ...,
        own_by: str = ...,
        uncertainty_mm: float = ...,
    ) -> None: ...

class SuitTerm(base._Record):
    """One size of a demand, times a factor."""

    of: SuitOf
    index: int
    factor: float
    def __init__(
        self, *, of: SuitOf | str = ..., index: int = ..., factor: float = ...,
    ) -> None: ...

class SuitWindow(base._Record):
    """What one size must hold, mm."""

    size: int
    turn: int
    of: int
    hold: base.Limits
    target_mm: float
    accept: base.Limits | None
    share_left: float
    first: base.Limits | None
    last: base.Limits
    def __init__(
        self,
        *,
        size: int = ...,
        turn: int = ...,
        of: int = ...,
        hold: base.Limits = ...,
        target_mm: float = ...,
        accept: base.Limits | None = ...,
        share_left: float = ...,
        first: base.Limits | None = ...,
        last: base.Limits = ...,
    ) -> None: ...

class SurfaceStress(base._Record):
    """Stresses at a surface, MPa, tension positive."""

    hoop_mpa: float
    radial_mpa: float
    equivalent_mpa: float
    def __init__(
        self, *, hoop_mpa: float = ..., radial_mpa: float = ..., equivalent_mpa: float = ...
    ) -> None: ...

class ThrustRing(base._Record):
    """The ring two faces share, by diameters, mm."""

    inner_mm: float
    outer_mm: float
    def __init__(self, *, inner_mm: float = ..., outer_mm: float = ...) -> None: ...

class ToothForm(base._Record):
    """The basic rack of both gears, in the normal plane."""

    module_mm: float
    pressure_angle_deg: float
    helix_angle_deg: float
    def __init__(
        self,
        *,
        module_mm: float = ...,
        pressure_angle_deg: float = ...,
        helix_angle_deg: float = ...,
    ) -> None: ...

class TransverseForm(base._Record):
    """The same teeth seen square to the axis."""

    module_mm: float
    pressure_angle_rad: float
    base_helix_rad: float
    def __init__(
        self,
        *,
        module_mm: float = ...,
        pressure_angle_rad: float = ...,
        base_helix_rad: float = ...,
    ) -> None: ...

class WarmedBush(base._Record):
    """Warm at one temperature, and cold again after it."""

    interference_mm: float
    pressure_mpa: float
    yielded_to_mm: float
    set_outside_mm: float
    set_bore_mm: float
    left_mm: float
    bore_after_mm: float
    def __init__(
        self,
        *,
        interference_mm: float = ...,
        pressure_mpa: float = ...,
        yielded_to_mm: float = ...,
        set_outside_mm: float = ...,
        set_bore_mm: float = ...,
        left_mm: float = ...,
        bore_after_mm: float = ...,
    ) -> None: ...

def bearing_load(
    diameter_mm: float, length_mm: float, *, rpm: float, load_n: float | None = ...
) -> RunningLoad: ...
def bearing_ratios(sizes: BearingSizes) -> BearingRatios: ...
def bending_modulus_mm3(section: RoundSection) -> float: ...
@overload
def check_stock(part: RoundPart, stock: RoundStock, *, cleaning_mm: float) -> StockCheck: ...
@overload
def check_stock(part: RoundPart, stock: BlockStock, *, cleaning_mm: float) -> StockCheck: ...
@overload
def check_stock(part: FlatSidedPart, stock: RoundStock, *, cleaning_mm: float) -> StockCheck: ...
@overload
def check_stock(part: FlatSidedPart, stock: BlockStock, *, cleaning_mm: float) -> StockCheck: ...
def corner_over_fillet_mm(corner_mm: float, fillet_mm: float) -> float: ...
def counting_limits(duty: RunningDuty | str) -> CountingLimits: ...
def draw_gaps(
    loop: Sequence[StackDimension], wanted: base.Limits, *, draw: StackDraw
) -> StackOutcome: ...
def effective_interference_mm(
    interference_mm: float, rz_hub_um: float, *, rz_inner_um: float, loss: float
) -> float: ...
def elastic_of(material: standards.Material) -> Elastic: ...
def equivalent_mpa(stress: NominalStress) -> float: ...
def first_pass_factor(notch: ShaftNotch | str, load: ShaftLoad | str) -> StressFactor: ...
def form_of_diametral_pitch(
    per_inch: float, pressure_angle_deg: float = ..., *, helix_angle_deg: float = ...
) -> ToothForm: ...
def full_area_mm2(ring: ThrustRing) -> float: ...
def gear_circles(form: ToothForm, teeth: int, *, shift: float = ...) -> GearCircles: ...
def gear_mesh(
    form: ToothForm, a: MeshedGear, *, b: MeshedGear, centre_mm: float, face_mm: float
) -> GearMesh: ...
def involute(angle_rad: float) -> float: ...
def involute_inverse(value: float) -> float: ...
def keyseat_factor(
    diameter_mm: float, bottom_radius_mm: float, *, load: ShaftLoad | str
) -> StressFactor: ...
def least_backlash(module_mm: float, centre_mm: float) -> LeastBacklash: ...
def least_band(ring: ThrustRing) -> float: ...
def least_centre_mm(form: ToothForm, teeth_a: int, *, teeth_b: int) -> float: ...
def limit_shares(
    load: RunningLoad, limits: standards.BearingLimits, *, duty: RunningDuty | str
) -> LimitShares: ...
def loaded_ring(ring: Ring, load: RingLoad) -> RingState: ...
def loosening(pair: BushInHub, highest_c: float) -> Loosening: ...
def make_to_suit(problem: SuitProblem) -> SuitPlan: ...
def mean_radius(ring: ThrustRing) -> float: ...
def nominal_gap(loop: Sequence[StackDimension]) -> float: ...
def nominal_stress(
    section: RoundSection, torque_nm: float, *, bending_nm: float
) -> NominalStress: ...
def over_pins_mm(
    form: ToothForm, teeth: int, *, pin_mm: float, thickness_mm: float, pins: Pins | str
) -> float: ...
def polar_modulus_mm3(section: RoundSection) -> float: ...
def polar_moment_mm4(section: RoundSection) -> float: ...
def press_fit(fit: PressFit) -> PressState: ...
def press_surface_text(surface: PressSurface | str) -> str: ...
def projected_pressure_mpa(load_n: float, diameter_mm: float, *, length_mm: float) -> float: ...
def radial_width(ring: ThrustRing) -> float: ...
def require_elastic(elastic: Elastic, argument: str) -> None: ...
def require_stack(loop: Sequence[StackDimension]) -> None: ...
def require_teeth(teeth: int, argument: str) -> None: ...
def root_sum_square_gap(loop: Sequence[StackDimension]) -> base.Limits: ...
def shift_of_thickness(form: ToothForm, thickness_mm: float) -> float: ...
def shoulder_bending_factor_roark(step: SteppedShaft) -> StressFactor: ...
def shoulder_factor(step: SteppedShaft, load: ShaftLoad | str) -> StressFactor: ...
def sleeve_chain(rings: Sequence[ChainRing]) -> ChainState: ...
def slip_in(
    hub: Elastic,
    inner: Elastic,
    *,
    joint_mm: float,
    interference_mm: float,
    clearance_mm: float,
    bench_c: float,
) -> SlipIn: ...
def span_mm(form: ToothForm, teeth: int, *, spanned: int, thickness_mm: float) -> float: ...
def standard_gear(form: ToothForm, teeth: int, *, thickness_mm: float) -> MeshedGear: ...
def standard_thickness_mm(form: ToothForm) -> float: ...
def strength_left(before: RoundSection, after: RoundSection) -> float: ...
def surface_speed_m_s(diameter_mm: float, rpm: float) -> float: ...
def teeth_to_span(form: ToothForm, teeth: int) -> int: ...
def thickness_from_pins_mm(
    form: ToothForm, teeth: int, *, pin_mm: float, over_mm: float, pins: Pins | str
) -> float: ...
def thickness_from_span_mm(
    form: ToothForm, teeth: int, *, spanned: int, span_mm: float
) -> float: ...
def thrust_load(
    ring: ThrustRing, net_area_mm2: float, *, rpm: float, thrust_n: float | None = ...
) -> RunningLoad: ...
def transverse_form(form: ToothForm) -> TransverseForm: ...
def undercut_below_teeth(form: ToothForm) -> float: ...
def utilisation(stress: SurfaceStress, material: Elastic) -> float | None: ...
def warmed(loop: Sequence[StackDimension]) -> list[StackDimension]: ...
def warmed_bush(pair: BushInHub, temperature_c: float) -> WarmedBush: ...
def widest_dimension(loop: Sequence[StackDimension]) -> int: ...
def worn_mean_radius(ring: ThrustRing) -> float: ...
def worst_case_gap(loop: Sequence[StackDimension]) -> base.Limits: ...
