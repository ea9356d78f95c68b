"""What the controller keeps when it is switched off: settings, offsets, start-up lines, build text."""

from __future__ import annotations

from dataclasses import dataclass, field

from drypoint.bench.planner import Limits, Triple
from drypoint.bench.words import (
    BAD_STATEMENT,
    NEGATIVE,
    NO_HOMING,
    SOFT_NEEDS_HOMING,
    STEP_PULSE,
    Refused,
)

DEFAULTS: dict[int, float] = {
    0: 10, 1: 25, 2: 0, 3: 0, 4: 0, 5: 0, 6: 0, 10: 1, 11: 0.01, 12: 0.002, 13: 0,
    20: 0, 21: 0, 22: 0, 23: 0, 24: 25, 25: 500, 26: 250, 27: 1, 30: 1000, 31: 0, 32: 0,
    100: 250, 101: 250, 102: 250, 110: 500, 111: 500, 112: 500,
    120: 10, 121: 10, 122: 10, 130: 200, 131: 200, 132: 200,
}  # fmt: skip
"""The settings of the open protocol, version 1.1, with the defaults its documentation prints."""

WHOLE = frozenset((0, 1, 2, 3, 4, 5, 6, 10, 13, 20, 21, 22, 23, 26, 32))
PLACES = ("G54", "G55", "G56", "G57", "G58", "G59", "G28", "G30")
ORIGIN: Triple = (0.0, 0.0, 0.0)


def triple(values: list[float]) -> Triple:
    """Three floats as a tuple."""
    return (values[0], values[1], values[2])


@dataclass(slots=True)
class Memory:
    """Persistent memory of one controller."""

    settings: dict[int, float] = field(default_factory=lambda: dict(DEFAULTS))
    places: dict[str, Triple] = field(default_factory=lambda: dict.fromkeys(PLACES, ORIGIN))
    startup: list[str] = field(default_factory=lambda: ["", ""])
    build: str = ""

    def change(self, number: int, value: float) -> None:
        """Set ``$number``.

        Raises
        ------
        Refused
            Unknown number (3), negative (4), step pulse too short (6), soft limits without homing (10).
        """
        if value < 0.0:
            raise Refused(NEGATIVE)
        if number not in self.settings:
            raise Refused(BAD_STATEMENT)
        if number == 0 and value < 3:
            raise Refused(STEP_PULSE)
        if number == 20 and value and not self.settings[22]:
            raise Refused(SOFT_NEEDS_HOMING)
        if number == 22 and not value:
            self.settings[20] = 0.0
        self.settings[number] = float(int(value)) if number in WHOLE else value

    def restore(self, what: str) -> None:
        """``$RST=``: ``$`` settings, ``#`` offsets, ``*`` everything."""
        if what not in ("$", "#", "*"):
            raise Refused(BAD_STATEMENT)
        if what in ("$", "*"):
            self.settings = dict(DEFAULTS)
        if what in ("#", "*"):
            self.places = dict.fromkeys(PLACES, ORIGIN)
        if what == "*":
            self.startup, self.build = ["", ""], ""

    def need_homing(self) -> None:
        """Refuse (5) where homing is off."""
        if not self.settings[22]:
            raise Refused(NO_HOMING)

    def lines(self) -> list[str]:
        """``$$``."""
        return [f"${n}={_value(n, value)}" for n, value in sorted(self.settings.items())]

    @property
    def steps(self) -> Triple:
        """Steps per mm of each axis."""
        s = self.settings
        return (s[100], s[101], s[102])

    @property
    def travel(self) -> Triple:
        """Travel of each axis, mm."""
        s = self.settings
        return (s[130], s[131], s[132])

    def limits(self) -> Limits:
        """Axis limits in mm and s."""
        s = self.settings
        return Limits((s[110] / 60.0, s[111] / 60.0, s[112] / 60.0), (s[120], s[121], s[122]), s[11])


def _value(number: int, value: float) -> str:
    return str(int(value)) if number in WHOLE else f"{value:.3f}"
