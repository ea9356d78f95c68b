"""What the machine is doing, in our words, and what the controller said of itself on connecting."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum, StrEnum

from drypoint.machine.protocol import Phase, Vec
from drypoint.wording import reword


class Activity(StrEnum):
    """What the machine is doing, as people are told."""

    AT_REST = "at rest"
    MOVING = "moving"
    TOUCHING = "touching"
    CUTTING = "cutting"
    HELD = "held"
    NEEDS_YOU = "needs you"
    NOT_CONNECTED = "not connected"


class Clip(Enum):
    """Where the clip of the contact circuit is, as far as is known."""

    UNKNOWN = "unknown"
    ON = "on"
    OFF = "off"


@dataclass(frozen=True, slots=True)
class MachineState:
    """One look at the machine. Positions in mm.

    Attributes
    ----------
    machine, work : Vec or None
        Position in the controller's own and in work coordinates; None until first told.
    still : bool
        Whether the axes stand still (a hold may still be slowing down).
    contact : bool
        Whether the contact input reads closed.
    limits : frozenset of str
        Axes whose limit switch reads pressed.
    feed, spindle : float
        Actual feed, mm/min, and spindle as commanded, 1/min.
    overrides : (feed, rapid, spindle) percent
    reason : str
        Why the machine needs somebody; empty else.
    """

    activity: Activity
    machine: Vec | None = None
    work: Vec | None = None
    still: bool = True
    contact: bool = False
    limits: frozenset[str] = frozenset()
    feed: float = 0.0
    spindle: float = 0.0
    overrides: tuple[int, int, int] = (100, 100, 100)
    reason: str = ""

    def __post_init__(self) -> None:
        reword(self, "reason")


@dataclass(frozen=True, slots=True)
class Facts:
    """What the controller said of itself. Settings are mm, mm/min, mm/s² as numbered in the protocol."""

    version: str = ""
    codes: str = ""
    planner_blocks: int = 15
    receive_bytes: int = 128
    settings: Mapping[int, float] = field(default_factory=dict)
    offsets: Mapping[str, tuple[float, ...]] = field(default_factory=dict)
    startup: tuple[str, ...] = ()
    modal: tuple[str, ...] = ()
    locked: bool = False

    @property
    def homing(self) -> bool:
        """Whether the machine can find its own zero."""
        return self.settings.get(22, 0.0) != 0.0

    @property
    def laser_mode(self) -> bool:
        """Whether the spindle output drives a laser."""
        return self.settings.get(32, 0.0) != 0.0

    @property
    def step(self) -> float:
        """Length of the coarsest axis's step, mm; a usual one where the controller did not tell."""
        return 1.0 / max(1.0, min(self.settings.get(100 + axis) or 250.0 for axis in range(3)))

    @property
    def unit(self) -> float:
        """mm per unit of the positions the controller reports."""
        return 25.4 if self.settings.get(13, 0.0) != 0.0 else 1.0


def activity_of(phase: Phase, purpose: Activity) -> Activity:
    """Our word for what the controller reports while it does ``purpose``."""
    match phase:
        case Phase.IDLE | Phase.CHECK:
            return Activity.AT_REST
        case Phase.RUN:
            return purpose
        case Phase.JOG | Phase.HOME:
            return Activity.MOVING
        case Phase.HOLD:
            return Activity.HELD
        case Phase.ALARM | Phase.DOOR | Phase.SLEEP:
            return Activity.NEEDS_YOU
