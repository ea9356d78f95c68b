"""What the forms give back. No Qt here; mm, degrees for angles as people say them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path

from drypoint.board.model import Role, Side
from drypoint.ui.canvas.content import Clamp


@dataclass(frozen=True, slots=True)
class BlankValues:
    """The blank, the board on it, and the clamps.

    Attributes
    ----------
    width, height, thickness : mm
    copper : thickness of the copper, mm
    board_x, board_y : lower left of the board from the lower left of the blank, mm
    clamps : boxes measured from the lower left of the blank, mm
    keep_away : distance cuts keep from clamps, mm
    backing : thickness of the sacrificial board, mm
    """

    width: float = 100.0
    height: float = 80.0
    thickness: float = 1.55
    copper: float = 0.035
    board_x: float = 10.0
    board_y: float = 10.0
    centred: bool = True
    clamps: tuple[Clamp, ...] = ()
    keep_away: float = 2.0
    backing: float = 6.0


@dataclass(frozen=True, slots=True)
class BitValues:
    """The bits at hand: V-bit (mm, degrees), end mill, drills (mm), and how they are run.

    ``drill_plunge`` and ``drill_peck`` are those of the first drill; set, they hold for all.
    """

    tip: float = 0.1
    angle_deg: float = 30.0
    runout: float = 0.01
    feed: float = 240.0
    plunge: float = 60.0
    spindle: float = 10000.0
    mill: float = 1.0
    mill_feed: float = 120.0
    mill_plunge: float = 40.0
    mill_step: float = 0.4
    drill_plunge: float = 100.0
    drill_peck: float = 0.8
    drills: tuple[float, ...] = (0.8, 1.0, 1.2)


@dataclass(frozen=True, slots=True)
class MachineValues:
    """The machine: how it is reached and what it can do.

    ``size_class`` is the preset it started from; ``port`` is empty for the bench. ``travel`` mm;
    ``play`` of x and y, mm.
    """

    size_class: str = ""
    port: str = ""
    baud: int = 115200
    travel: tuple[float, float, float] = (160.0, 100.0, 40.0)
    play: tuple[float, float] = (0.02, 0.02)
    contact: bool = True
    spindle_switched: bool = False
    """Whether the controller switches the spindle; else the program asks."""
    homing: bool = False


@dataclass(frozen=True, slots=True)
class SetupValues:
    """Everything the wizard asks for."""

    name: str = ""
    files: tuple[Path, ...] = ()
    roles: Mapping[str, Role] = field(default_factory=dict)
    side: Side = Side.BOTTOM
    blank: BlankValues = field(default_factory=BlankValues)
    bits: BitValues = field(default_factory=BitValues)
    machine: MachineValues = field(default_factory=MachineValues)
