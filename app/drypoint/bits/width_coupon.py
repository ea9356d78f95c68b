"""What a coupon says about a bit: tip, run-out, angle and how much deeper than set it cuts.

Measured widths follow w = t + r + 2 (d + e) tan(α/2) (handbook geometry of a V): alone they cannot
tell a wide tip from a deep cut. Whether a line at a small depth parts the copper tells the depth
error e by itself; whether a narrow ridge between two lines still stands tells the width again. What is
believed beforehand of tip, run-out and angle fills in the rest, and the answer says how far each is
known: the posterior's mode, with the covariance from its curvature there (Laplace's approximation).

Under the cutting load Z rises by something between 0 and its play B, changing along the path, and the
copper is rough: its height is known with a spread only. A width is a mean over its line and lacks B/2; a
square parts only once its shallowest spot does, which lacks more.
The depth error e is that before play, as the reach of a pass takes it.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import minimize
from scipy.special import ndtr

from drypoint.bits.model import VBit
from drypoint.errors import InputError
from drypoint.wording import say

TIP_SPREAD = 0.03
"""mm, how far a tip's real width may lie from what is printed on it (common practice, no source)."""
RUNOUT_SPREAD = 0.015
"""mm (common practice, no source)."""
ANGLE_SPREAD = math.radians(1.0)
"""rad, of the included angle (common practice, no source)."""
OFFSET_SPREAD = 0.02
"""mm, of the depth before anything is known: touching off, and the nut's slack (common practice)."""
WIDTH_SIGMA = 0.015
"""mm, of a width read with a loupe with a scale (common practice, no source)."""
EDGE = 0.003
"""mm over which a line turns from not through to through: the copper's thickness and roughness."""
WRONG = 0.01
"""Chance that an answer is wrong."""
SHALLOWEST = 2.0 / 3.0
"""Share of the play that the shallowest spot on the way round a square lacks: the mean of the larger of
two independent values spread evenly from 0 to 1 (order statistics)."""
SHALLOWEST_SPREAD = math.sqrt(1.0 / 18.0)
"""Standard deviation of the same."""
LOWEST = 1.0 / math.sqrt(math.pi)
"""The same for the spread of the copper's height: mean of the larger of two normal values (order
statistics)."""
LOWEST_SPREAD = math.sqrt(1.0 - 1.0 / math.pi)
"""Standard deviation of the same."""
STEP = 0.02
"""Step of the numerical curvature, in spreads of what was assumed beforehand."""


@dataclass(frozen=True, slots=True)
class Width:
    """A width read, mm, of a line at a set depth, mm below the copper's top."""

    depth: float
    width: float
    sigma: float = WIDTH_SIGMA


@dataclass(frozen=True, slots=True)
class Parted:
    """Whether a line at a set depth parts the copper, by the meter."""

    depth: float
    through: bool


@dataclass(frozen=True, slots=True)
class Ridge:
    """Whether the copper between two lines at a set depth, planned ``gap`` mm wide, still stands."""

    depth: float
    gap: float
    stands: bool


@dataclass(frozen=True, slots=True, eq=False)
class Evaluation:
    """What is known of the bit now.

    Attributes
    ----------
    tip, runout, offset : float
        mm; ``offset`` is how much deeper than set it cuts.
    angle : float
        Included, rad.
    covariance : (4, 4)
        Of tip, run-out, offset (mm) and tan(α/2).
    before : VBit
        The bit as it was believed to be.
    misfit : float
        Largest distance of a width from the answer, in standard deviations of its reading.
    """

    tip: float
    runout: float
    offset: float
    angle: float
    covariance: NDArray[np.float64]
    before: VBit
    misfit: float
    play: float = 0.0
    rough: float = 0.0
    """Play of Z under load, and spread of the copper's height, that were reckoned with, mm."""

    @property
    def bit(self) -> VBit:
        """The bit with its real values."""
        return replace(self.before, tip=self.tip, runout=self.runout, angle=self.angle)

    def sigma(self, index: int) -> float:
        """Standard deviation of tip, run-out or offset (0 to 2), mm."""
        return float(np.sqrt(self.covariance[index, index]))

    @property
    def together(self) -> tuple[float, float]:
        """Tip and run-out as one width, mm, and its standard deviation: often known better than either."""
        pair = self.covariance[:2, :2]
        return self.tip + self.runout, float(np.sqrt(pair.sum()))

    @property
    def least(self) -> float:
        """How much deeper than set the shallowest spot on the way round a square is, mm."""
        return self.offset - SHALLOWEST * self.play - LOWEST * self.rough

    def width(self, depth: float) -> tuple[float, float]:
        """Width cut at a set depth, mm, and its standard deviation."""
        slope = math.tan(self.angle / 2.0)
        at = depth + self.offset - self.play / 2.0
        slope_of = np.array([1.0, 1.0, 2.0 * slope, 2.0 * at])
        spread = float(np.sqrt(slope_of @ self.covariance @ slope_of))
        return self.tip + self.runout + 2.0 * max(at, 0.0) * slope, spread

    def facts(self) -> tuple[str, ...]:
        """The answer in words."""
        both, both_sigma = self.together
        lines = [
            say("Tip {tip:.3f} ± {sigma:.3f} mm.", tip=self.tip, sigma=self.sigma(0)),
            say("Run-out {runout:.3f} ± {sigma:.3f} mm.", runout=self.runout, sigma=self.sigma(1)),
            say(
                "Tip and run-out together {both:.3f} ± {both_sigma:.3f} mm.", both=both, both_sigma=both_sigma
            ),
            say(
                "It cuts {offset:.3f} ± {sigma:.3f} mm {which} than set.",
                offset=abs(self.offset),
                sigma=self.sigma(2),
                which=say("deeper") if self.offset >= 0 else say("shallower"),
            ),
        ]
        if self.sigma(2) > 0.7 * OFFSET_SPREAD:
            lines.append(
                "Widths alone do not tell a wide tip from a deep cut: test with a meter which lines part "
                "the copper."
            )
        if self.misfit > 3.0:
            lines.append(
                say(
                    "One width lies {misfit:.1f} standard deviations off: read it again, or the "
                    "tip is broken.",
                    misfit=self.misfit,
                )
            )
        return tuple(lines)


def evaluate(
    bit: VBit,
    widths: Sequence[Width] = (),
    parted: Sequence[Parted] = (),
    ridges: Sequence[Ridge] = (),
    *,
    copper: float = 0.035,
    play: float = 0.0,
    rough: float = 0.0,
) -> Evaluation:
    """Tip, run-out, angle and depth offset of a bit from what was seen on a coupon.

    Parameters
    ----------
    bit : as it is believed to be: the middle of what is assumed beforehand
    copper : thickness, mm
    play : of Z under the cutting load, mm
    rough : spread of the copper's height where the lines are, mm

    Raises
    ------
    InputError
        Nothing was entered, or a value makes no sense.
    """
    _check(widths, parted, ridges, copper, min(play, rough))
    middle = np.array([bit.tip, bit.runout, 0.0, math.tan(bit.angle / 2.0)])
    spread = np.array(
        [TIP_SPREAD, RUNOUT_SPREAD, OFFSET_SPREAD, ANGLE_SPREAD / 2.0 / math.cos(bit.angle / 2.0) ** 2]
    )

    seen = _Seen(
        np.array([(w.depth, w.width, w.sigma) for w in widths]).reshape(-1, 3),
        np.array([(p.depth, p.through) for p in parted], dtype=np.float64).reshape(-1, 2),
        np.array([(r.depth, r.gap, r.stands) for r in ridges], dtype=np.float64).reshape(-1, 3),
        np.array([bit.width(r.depth) for r in ridges]),
        copper,
        play,
        rough,
    )

    def unlikely(scaled: NDArray[np.float64]) -> float:
        tip, runout, offset, slope = middle + spread * scaled
        return 0.5 * float(scaled @ scaled) + seen.unlikely(tip + runout, offset, slope)

    floor = [(-middle[0] / spread[0], None), (-middle[1] / spread[1], None), (None, None), (None, None)]
    found = minimize(unlikely, np.zeros(4), method="L-BFGS-B", bounds=floor)
    inverse = np.linalg.inv(_curvature(unlikely, found.x))
    covariance = np.asarray(inverse * np.outer(spread, spread), dtype=np.float64)
    tip, runout, offset, slope = (middle + spread * found.x).tolist()
    mean = offset - play / 2.0
    away = [abs(w.width - tip - runout - 2 * slope * max(0.0, w.depth + mean)) / w.sigma for w in widths]
    angle = 2.0 * math.atan(slope)
    return Evaluation(tip, runout, offset, angle, covariance, bit, max(away, default=0.0), play, rough)


@dataclass(frozen=True, slots=True, eq=False)
class _Seen:
    """All readings as arrays: widths (depth, width, sigma); tests (depth, yes); ridges (depth, gap, yes)."""

    widths: NDArray[np.float64]
    parted: NDArray[np.float64]
    ridges: NDArray[np.float64]
    planned: NDArray[np.float64]
    """(R,) width the bit was planned to cut beside each ridge, mm."""
    copper: float
    play: float
    rough: float

    def unlikely(self, flat: float, offset: float, slope: float) -> float:
        """Negative logarithm of the likelihood; ``flat`` is tip with run-out, ``slope`` tan(α/2)."""
        depth, width, sigma = self.widths.T
        mean = offset - self.play / 2.0
        away = (width - flat - 2.0 * slope * np.maximum(depth + mean, 0.0)) / sigma
        least = offset - SHALLOWEST * self.play - LOWEST * self.rough
        edge = math.hypot(EDGE, SHALLOWEST_SPREAD * self.play, LOWEST_SPREAD * self.rough)
        through = (self.parted[:, 0] + least - self.copper) / edge
        # a ridge stands as long as its foot does: at the copper's underside
        wider = flat + 2.0 * slope * (self.ridges[:, 0] + mean - self.copper) - self.planned
        stands = (self.ridges[:, 1] - wider) / (2.0 * EDGE)
        score = np.concatenate((through, stands))
        yes = np.concatenate((self.parted[:, 1], self.ridges[:, 2]))
        share = ndtr(np.where(yes > 0.5, score, -score))
        return float(0.5 * (away**2).sum() - np.log(WRONG + (1.0 - 2.0 * WRONG) * share).sum())


def _curvature(
    function: Callable[[NDArray[np.float64]], float], at: NDArray[np.float64]
) -> NDArray[np.float64]:
    """(4, 4) second derivatives by central differences, never flatter than what was assumed beforehand."""
    count = len(at)
    steps = STEP * np.eye(count)
    bend = np.empty((count, count))
    for i in range(count):
        for j in range(i, count):
            a, b = steps[i], steps[j]
            four = function(at + a + b) - function(at + a - b) - function(at - a + b) + function(at - a - b)
            bend[i, j] = bend[j, i] = four / (4.0 * STEP**2)
    values, vectors = np.linalg.eigh(bend)
    return np.asarray(vectors @ np.diag(np.maximum(values, 1.0)) @ vectors.T)


def _check(
    widths: Sequence[Width],
    parted: Sequence[Parted],
    ridges: Sequence[Ridge],
    copper: float,
    least: float,
) -> None:
    if not (widths or parted or ridges):
        raise InputError("Nothing was read from the coupon yet.", "coupon", "Enter a width or a test.")
    above = [copper, *(value for w in widths for value in (w.depth, w.width, w.sigma))]
    above += [*(square.depth for square in parted), *(ridge.depth for ridge in ridges)]
    from_nothing = [least, *(ridge.gap for ridge in ridges)]
    good = all(0.0 < value < math.inf for value in above)
    if not good or not all(0.0 <= value < math.inf for value in from_nothing):
        raise InputError("Depths, widths and the copper's thickness must be above 0.", "coupon")
