"""Everything a person sets about a job, in sections that are stored and undone one by one.

Values are what the planning layers take; every default is a sound start for a small engraver.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field, fields
from enum import StrEnum

from drypoint.bits.model import Drill, EndMill, Speeds, VBit
from drypoint.board.model import Side
from drypoint.cuts.ratings import Surroundings
from drypoint.reference.fit import HOLE_WANDER, MARK_WANDER, TOUCH_SIGMA
from drypoint.session.clear_settings import ClearSettings
from drypoint.session.corner import Corner
from drypoint.session.edge_settings import EdgeSettings
from drypoint.session.turn_settings import TurnSettings


@dataclass(frozen=True, slots=True)
class BoardSettings:
    """Which copper is milled, and the name the job goes by.

    ``both``: the other side is milled too, after the board was turned over; ``side`` is then the one
    that is milled now.
    """

    side: Side = Side.BOTTOM
    name: str = ""
    both: bool = False


@dataclass(frozen=True, slots=True)
class Clamp:
    """A keep-out on the bed: lower left corner and size, mm, in the frame of the blank."""

    x: float
    y: float
    width: float
    height: float


@dataclass(frozen=True, slots=True)
class BlankSettings:
    """The laminate, where the board lies on it, and what holds it.

    The frame of the blank has its origin at the blank's lower left corner; work zero is there
    until reference holes say more. ``board_x``, ``board_y`` place the lower left of the board.
    A size of 0 means: the board plus ``margin`` all round.
    """

    width: float = 0.0
    height: float = 0.0
    margin: float = 8.0
    thickness: float = 1.55
    copper: float = 0.035
    backing: float = 6.0
    board_x: float = 8.0
    board_y: float = 8.0
    centred: bool = True
    clamps: tuple[Clamp, ...] = ()
    clamp_margin: float = 2.0


@dataclass(frozen=True, slots=True)
class CopyPlace:
    """One board: where the lower left of its extent lies among the boards, mm.

    ``angle_deg`` turns it anticlockwise before that. ``board`` names the design where a job has
    several; empty: the first. Places are as seen from the side that was milled first.
    """

    x: float
    y: float
    angle_deg: float = 0.0
    board: str = ""


@dataclass(frozen=True, slots=True)
class CopySettings:
    """How often each board is made on one blank: in rows, or every one in its own place.

    ``places`` overrules columns, rows and gap where there are any; a design without a place then
    lies to the right of them all.
    """

    columns: int = 1
    rows: int = 1
    gap: float = 4.0
    places: tuple[CopyPlace, ...] = ()


@dataclass(frozen=True, slots=True)
class BitSettings:
    """The bits in the box. Speeds: common practice, no source; to be adapted to the material."""

    vbit: VBit = VBit("V-bit 0.1 mm 30°", 0.1, math.radians(30.0), Speeds(10000, 300, 100), 0.01)
    drills: tuple[Drill, ...] = tuple(
        Drill(f"Drill {d:.1f} mm", d, Speeds(10000, 150, 150), 0.8)
        for d in (0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 2.0, 2.5, 3.0)
    )
    mill: EndMill = EndMill("End mill 2.0 mm", 2.0, Speeds(10000, 180, 60), 0.4)


@dataclass(frozen=True, slots=True)
class CutSettings:
    """How copper is parted and the board cut free."""

    depth: float = 0.06
    """Nominal depth below the copper's top that the groove width is planned for, mm."""
    bite: float = 0.03
    """How far a cut may eat into copper of a net, mm."""
    least_trace: float = 0.1
    """Width that every trace keeps where a cut bites into it, mm."""
    climb: bool = True
    """Whether loops round copper are cut climbing, where a groove has a direction of its own."""
    tabs: int = 4
    tab_width: float = 3.0
    tab_height: float = 0.6
    through: float = 0.4
    """How far drills and the outline go into the backing, mm."""
    marks: int = 4
    """Reference holes made in the waste before anything else."""
    dust_pause: bool = True
    """Whether to stop for removing the dust between passes, before drilling and before touching for proof."""


@dataclass(frozen=True, slots=True)
class HoleSettings:
    """How holes are drilled: how near a drill must come, and where more care is taken."""

    tolerance: float = 0.1
    """How far a drill may differ from its hole before the hole is bored, mm."""
    spots: bool = True
    """Whether the V-bit marks the place of a thin drill first."""
    slender: float = 2.0
    """Depth over diameter from which a drill counts as thin."""
    small_pad: float = 2.6
    """A pad up to this size that no trace holds is drilled gently, mm; 0 is off."""
    gentle: float = 0.5
    """Share of the drill's feed and peck used there."""


@dataclass(frozen=True, slots=True)
class Voltage:
    """Highest voltage (V, direct or peak) between a net and another; ``other`` empty: every other."""

    net: str
    other: str = ""
    volts: float = 0.0


@dataclass(frozen=True, slots=True)
class ElectricalSettings:
    """What the nets carry."""

    voltages: tuple[Voltage, ...] = ()
    surroundings: Surroundings = Surroundings.BARE
    rise: float = 10.0
    """Warming for which the current of a thinned trace is stated, K."""
    drop: float = 0.25
    """Share of its width that a trace may lose to the cut before it is listed; 0 lists none."""


@dataclass(frozen=True, slots=True)
class ToolChoice:
    """The bit for one tool of a ready-made program, by the names of file and bit."""

    file: str
    tool: int
    bit: str


class ProgramUse(StrEnum):
    """What a ready-made program is taken for."""

    OWN = "as it is"
    GROOVES = "grooves in passes"
    OUTLINE = "outline"
    LEFT_OUT = "not used"


@dataclass(frozen=True, slots=True)
class FileUse:
    """What one program is taken for, by the name of its file."""

    file: str
    use: ProgramUse


class ZeroOfZ(StrEnum):
    """What z = 0 of ready-made programs is."""

    COPPER = "top of the copper"
    BACKING = "top of the backing"


@dataclass(frozen=True, slots=True)
class ImportedSettings:
    """What is done with ready-made programs among the files.

    ``uses``: where a program is to be taken for something else than it usually is. The engraved
    paths of one for grooves are cut in our passes, in place of our own grooves; one for the outline
    cuts the board out, so that none of ours is needed. Usual is: as it is, at the depths it states;
    where there is no copper data, what engraves is grooves. ``x``, ``y`` move all of them on the
    board, mm.
    """

    uses: tuple[FileUse, ...] = ()
    bits: tuple[ToolChoice, ...] = ()
    zero: ZeroOfZ = ZeroOfZ.COPPER
    x: float = 0.0
    y: float = 0.0


@dataclass(frozen=True, slots=True)
class SurfaceSettings:
    """How the copper's height is touched."""

    touches: int = 60
    highest: float = 1.5
    """Height above the expected copper that a touch starts from, mm."""
    lowest: float = 1.5
    """Depth below the expected copper where a touch is given up, mm."""
    fast: float = 90.0
    slow: float = 20.0


@dataclass(frozen=True, slots=True)
class PassSettings:
    """How sure a groove must be, and what is taken for the machine's play."""

    target: float = 0.999
    """Share of certainty asked for at every spot."""
    deepest: float = 0.14
    """Deepest planned cut below the copper's top, mm."""
    play: float = 0.015
    """Play of Z under cutting load, mm."""
    join: float = 1.5
    """Gaps between pieces of a re-cut up to this are cut too, mm."""
    ladder: bool = False
    """All grooves deeper and deeper, in place of one careful pass and selective re-cuts."""
    most: int = 4
    """Most passes a rehearsal or a run plans by itself."""


@dataclass(frozen=True, slots=True)
class ReferenceSettings:
    """How reference holes are found, and what is believed of them, mm (standard deviations).

    ``way`` is one of `drypoint.reference.fit.TOUCH_SIGMA`: by eye, by the light spot or by the rim.
    """

    way: str = "eye"
    touch_sigma: float = TOUCH_SIGMA["eye"]
    hole_sigma: float = HOLE_WANDER
    mark_sigma: float = MARK_WANDER


@dataclass(frozen=True, slots=True)
class MachineSettings:
    """Which machine, by size class, and where to find it. ``port`` empty: the bench.

    What is None is as the size class has it; ``play`` of x and y, mm.
    """

    preset: str = "small"
    port: str = ""
    clearance: float = 2.0
    hop: float = 0.5
    """Between places near each other the bit goes up only this far above the touched copper; 0 is off, mm."""
    spindle_delay: float = 3.0
    baud: int = 115200
    travel: tuple[float, float, float] | None = None
    play: tuple[float, float] = (0.02, 0.02)
    one_side: bool = True
    """Whether holes and marks are reached from one side, so that play is taken up the same way."""
    contact: bool | None = None
    spindle_switched: bool | None = None
    homing: bool | None = None
    line_by_line: bool = False
    """Each line is sent only once the one before was answered: slower, and safer on a bad cable."""


@dataclass(frozen=True, slots=True)
class MarkingMaterial:
    """Values that a burn grid has settled for a material."""

    name: str
    power: float
    dwell: float


@dataclass(frozen=True, slots=True)
class LaserSection:
    """The legend by laser: the head, the beam and what it marks. Powers are shares of full power.

    ``coating`` names the layer that is marked; it must be ``declared_safe`` for laser work by its
    maker. Bare laminate is marked only with ``bare_accepted``: its fumes are toxic and it can burn.
    """

    pulses: bool = True
    power: float = 0.3
    dwell: float = 0.02
    """Of a pulse, s."""
    settle: float = 0.03
    """Wait before a pulse, s."""
    feed: float = 300.0
    """Of continuous lines, mm/min."""
    pitch: float = 0.1
    spot: float = 0.12
    hatch: float = 0.9
    """Distance of the rows of a fill, in spots."""
    hatch_angle: float = math.radians(45.0)
    """Direction of those rows, rad."""
    widest: float = 0.6
    """A shape wider than this is filled, mm."""
    single: bool = False
    """One row along every stroke, however wide it is drawn."""
    clear: float = 0.1
    """From a mark's edge to a pad or hole, mm."""
    ring: float = 0.4
    """Round holes this much is taken for a pad, mm."""
    planes: bool = True
    """Whether planes of copper may be marked beside their holes; a pad in one, without hole, is not told."""
    head: tuple[float, float] = (0.0, 0.0)
    """Position with the spot over a mark less position with the bit over it, mm."""
    head_sigma: float = 0.1
    focus: float | None = None
    """Work height of the head in focus, mm; None: set by hand, and left."""
    focus_seconds: float = 20.0
    """Longest time the focus light stays on, s."""
    coating: str = ""
    declared_safe: bool = False
    bare: bool = False
    bare_accepted: bool = False
    materials: tuple[MarkingMaterial, ...] = ()


@dataclass(frozen=True, slots=True)
class CouponSettings:
    """Where trial cuts lie: in the free copper nearest to a corner of the blank."""

    pattern: Corner = Corner.LOWER_LEFT
    """Of the V-bit's test pattern."""
    grid: Corner = Corner.UPPER_RIGHT
    """Of the laser's burn grid."""
    grid_at_spot: bool = False
    """The burn grid begins where the light spot stands instead: on a piece of its own."""


@dataclass(frozen=True, slots=True)
class Settings:
    """All sections. The names of the fields are the names of the stored sections."""

    board: BoardSettings = field(default_factory=BoardSettings)
    turn: TurnSettings = field(default_factory=TurnSettings)
    blank: BlankSettings = field(default_factory=BlankSettings)
    copies: CopySettings = field(default_factory=CopySettings)
    bits: BitSettings = field(default_factory=BitSettings)
    cuts: CutSettings = field(default_factory=CutSettings)
    clearing: ClearSettings = field(default_factory=ClearSettings)
    holes: HoleSettings = field(default_factory=HoleSettings)
    electrical: ElectricalSettings = field(default_factory=ElectricalSettings)
    imported: ImportedSettings = field(default_factory=ImportedSettings)
    edge: EdgeSettings = field(default_factory=EdgeSettings)
    surface: SurfaceSettings = field(default_factory=SurfaceSettings)
    passes: PassSettings = field(default_factory=PassSettings)
    reference: ReferenceSettings = field(default_factory=ReferenceSettings)
    laser: LaserSection = field(default_factory=LaserSection)
    coupons: CouponSettings = field(default_factory=CouponSettings)
    machine: MachineSettings = field(default_factory=MachineSettings)


SECTIONS = tuple(one.name for one in fields(Settings))
