"""What traces carry and gaps withstand: estimates from IPC-2221, shown as such.

Values as quoted by secondary sources (the standard itself is sold): the current formula by board
makers' calculators, the clearance table by open CAD programs that carry it. For mains and
isolation the product's safety standard rules, not this table.
"""

from __future__ import annotations

import math
from enum import StrEnum

from drypoint.errors import InputError

MIL = 0.0254
"""mm."""
EXTERNAL = 0.048
"""k of I = k ΔT^0.44 A^0.725, A in square mils, external layers (IPC-2221)."""
LIMITS_V = (15.0, 30.0, 50.0, 100.0, 150.0, 170.0, 250.0, 300.0, 500.0)
"""Upper ends of the table's rows, V (DC or AC peak)."""


class Surroundings(StrEnum):
    """Columns of IPC-2221 table 6-1 that a milled board can need."""

    BARE = "bare, up to 3050 m"
    BARE_HIGH = "bare, above 3050 m"
    COATED = "permanent polymer coating"
    CONFORMAL = "conformal coating"


CLEARANCE_MM = {
    Surroundings.BARE: (0.1, 0.1, 0.6, 0.6, 0.6, 1.25, 1.25, 1.25, 2.5),
    Surroundings.BARE_HIGH: (0.1, 0.1, 0.6, 1.5, 3.2, 3.2, 6.4, 12.5, 12.5),
    Surroundings.COATED: (0.05, 0.05, 0.13, 0.13, 0.4, 0.4, 0.4, 0.4, 0.8),
    Surroundings.CONFORMAL: (0.13, 0.13, 0.13, 0.13, 0.4, 0.4, 0.4, 0.4, 0.8),
}
PER_VOLT_MM = {
    Surroundings.BARE: 0.005,
    Surroundings.BARE_HIGH: 0.025,
    Surroundings.COATED: 0.00305,
    Surroundings.CONFORMAL: 0.00305,
}
"""mm for every volt above 500."""


def current(width: float, *, thickness: float = 0.035, rise: float = 10.0) -> float:
    """Current (A) that warms an external trace by ``rise`` K: I = k ΔT^0.44 A^0.725 (IPC-2221).

    ``width`` and copper ``thickness`` in mm. An estimate: thin boards without planes run hotter.
    """
    if width <= 0.0:
        return 0.0
    return EXTERNAL * math.pow(rise, 0.44) * math.pow((width / MIL) * (thickness / MIL), 0.725)


def width_for(amperes: float, *, thickness: float = 0.035, rise: float = 10.0) -> float:
    """Width (mm) of an external trace for a current: the formula of `current` solved for it."""
    area = math.pow(amperes / (EXTERNAL * math.pow(rise, 0.44)), 1.0 / 0.725)
    return area * MIL / (thickness / MIL)


def clearance(volts: float, where: Surroundings = Surroundings.BARE) -> float:
    """Least clearance (mm) between conductors at a DC or peak voltage (IPC-2221 table 6-1).

    Raises
    ------
    InputError
        If the voltage is below 0.
    """
    if not (math.isfinite(volts) and volts >= 0.0):
        raise InputError("A voltage must be 0 or more.", "clearance")
    for limit, value in zip(LIMITS_V, CLEARANCE_MM[where], strict=True):
        if volts <= limit:
            return value
    return CLEARANCE_MM[where][-1] + (volts - LIMITS_V[-1]) * PER_VOLT_MM[where]


def voltage(gap: float, where: Surroundings = Surroundings.BARE) -> float:
    """Highest voltage (V) for which the table asks no more than ``gap`` mm; 0 if none."""
    best = 0.0
    for limit, value in zip(LIMITS_V, CLEARANCE_MM[where], strict=True):
        if value <= gap + 1e-9:
            best = limit
    last = CLEARANCE_MM[where][-1]
    return LIMITS_V[-1] + (gap - last) / PER_VOLT_MM[where] if gap > last else best
