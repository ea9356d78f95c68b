"""Names shared by the parts of the simulated controller: states, times, and what it drives."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from enum import StrEnum
from typing import Protocol, TypeAlias

from drypoint.bench.planner import Triple

BUFFER = 128
"""Receive buffer, bytes."""
BLOCKS = 15
"""Planner blocks that can be used."""
LONGEST = 79
"""Characters of a line, the terminator not counted."""
BOOT_TIME = 1.2
"""From power or port opening to the greeting, s."""
REPORT_DELAY = 0.005
"""From `?` to the report, s."""
OVERRIDE_TURN = 0.002
"""Equal override bytes that arrive within this time count once, s: a turn of a busy main loop."""
LINE_TIME = 0.0004
"""Reading and planning one line, s."""
EEPROM_TIME = 0.04
"""Interrupts are off this long while persistent memory is written, s."""
RESTORE_TIME = 4.0
"""Spindle run-up after a door or a spindle stop, s."""

ALARM_HARD, ALARM_SOFT, ALARM_RESET, ALARM_PROBE_START, ALARM_PROBE_END, ALARM_HOMING = 1, 2, 3, 4, 5, 9

Wait: TypeAlias = "float | Callable[[], bool]"
Task: TypeAlias = "Iterator[Wait]"


class State(StrEnum):
    """The protocol's own state words; they never leave the protocol."""

    IDLE = "Idle"
    RUN = "Run"
    HOLD = "Hold"
    JOG = "Jog"
    ALARM = "Alarm"
    DOOR = "Door"
    CHECK = "Check"
    HOME = "Home"
    SLEEP = "Sleep"


class Mechanics(Protocol):
    """What the controller drives and senses. Machine coordinates as the controller counts them."""

    def moved(self, end: Triple, *, rapid: bool, power: float, speed: float) -> None:
        """A straight piece of path has been run; ``power`` 0..1 of a laser, ``speed`` mm/s."""

    def spindle(self, speed: float) -> None:
        """Spindle output, 1/min; 0 is off."""

    def contact(self, place: Triple) -> bool:
        """Whether the contact input is closed."""

    def contact_along(self, start: Triple, end: Triple, speed: float, *, away: bool) -> float | None:
        """Distance (mm) along a probing move at which the input changes; None: it does not."""

    def power_up(self) -> None:
        """The controller now calls the present place (0, 0, 0)."""

    def switches(self, place: Triple) -> Triple | None:
        """Way from ``place`` to the homing switches, mm per axis; None without switches."""

    def home(self, place: Triple) -> None:
        """The switches were found: the controller now calls the present place ``place``."""
