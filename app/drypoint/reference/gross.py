"""Is one of the touched holes wrong? Which one, or were two swapped, or is it another hole?

With right holes the weighted misfit V follows a chi-squared distribution with 2N - 3 degrees of
freedom. Where it is too large, leaving out the wrong hole brings it down more than leaving out
any other. A hole is called wrong only where the evidence is clear, for touching a right one again
costs time and moving it costs a board; else the suspects are given, the most likely first. With
three holes that is often all there is: an error square to one side of the triangle leaves that
side's length as it was, so two holes explain it equally well.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import combinations, permutations

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.stats import chi2

from drypoint.geometry.points import Points, as_points
from drypoint.reference.fit import Fit, fit_rigid
from drypoint.wording import reword, say

LEVEL = 0.01
"""Right holes raise the alarm this often."""
CLEAR = 6.6
"""A hole is named if leaving out the next best one leaves this much more misfit (the 1 % point of
chi-squared with one degree of freedom)."""
REST_LEVEL = 0.001
"""The other holes count as agreeing unless right ones would fit this badly less often than this."""
NEAR = 3.0
"""A hole is a candidate if it lies within this many standard deviations."""
MOST_ORDERS = 5
"""Up to this many holes every order is tried, beyond it only exchanges of two."""


class Verdict(StrEnum):
    """What the check of the touched holes found."""

    FITS = "fits"
    WRONG = "wrong hole"
    SUSPECT = "suspects"
    SWAPPED = "swapped"
    UNCLEAR = "does not fit"


@dataclass(frozen=True, slots=True)
class Check:
    """The verdict on a fit.

    Attributes
    ----------
    holes : indices of the holes named: the one for `WRONG`, the most likely first for `SUSPECT`,
        all that changed places for `SWAPPED`
    chance : how often right holes would fit this badly or worse
    distance_error : float or None
        Two holes only: touched minus designed distance, mm, the one check two holes give.
    maybe : tuple of (touched index, index into all holes)
        Which hole may have been touched instead.
    what : str
        One sentence for people.
    """

    verdict: Verdict
    holes: tuple[int, ...]
    chance: float
    what: str
    distance_error: float | None = None
    maybe: tuple[tuple[int, int], ...] = ()

    def __post_init__(self) -> None:
        reword(self, "what")


def without(fit: Fit, index: int) -> Fit:
    """The fit with one hole left out."""
    keep = np.arange(len(fit.design)) != index
    return fit_rigid(fit.design[keep], fit.touched[keep], mirror=fit.mirror, sigma=fit.sigma[keep])


def check(fit: Fit, *, names: Sequence[str] | None = None, holes: ArrayLike | None = None) -> Check:
    """Examine a fit.

    Parameters
    ----------
    names : what to call the touched holes; "hole 1", "hole 2"… if not given
    holes : (K, 2) all holes of the design, to suspect that another one was touched
    """
    called = list(names) if names is not None else [say("hole {i}", i=i + 1) for i in range(len(fit.design))]
    everything = as_points([] if holes is None else holes)
    if len(fit.design) == 2:
        return _two(fit, everything)
    if fit.chance >= LEVEL:
        return Check(Verdict.FITS, (), fit.chance, say("The {count} holes agree.", count=len(called)))
    swapped = _swapped(fit)
    if swapped:
        named = _join([called[i] for i in swapped])
        return Check(
            Verdict.SWAPPED, swapped, fit.chance, say("It looks as if {named} were exchanged.", named=named)
        )
    suspects = _suspects(fit)
    if not suspects:
        return Check(
            Verdict.UNCLEAR,
            (),
            fit.chance,
            "The holes do not agree, and no single one explains it. Touch them again.",
        )
    return _accuse(fit, suspects, called, everything)


def _accuse(fit: Fit, suspects: tuple[int, ...], called: Sequence[str], everything: Points) -> Check:
    first = suspects[0]
    others = without(fit, first)
    off = float(np.hypot(*(fit.touched[first] - others.apply(fit.design[[first]])[0])))
    maybe = tuple((i, k) for i in suspects for k in _instead(fit, without(fit, i), i, everything))
    text = say("{called} lies {off:.2f} mm from where the others say.", called=called[first], off=off)
    if len(suspects) > 1:
        rest = " or ".join(called[i] for i in suspects[1:])
        text = say(
            "Most likely {text} It may also be {rest}; a further hole would tell.", text=text, rest=rest
        )
    if maybe:
        text += " Another hole may have been touched."
    verdict = Verdict.WRONG if len(suspects) == 1 else Verdict.SUSPECT
    return Check(verdict, suspects, fit.chance, say("{text} Touch it again.", text=text), maybe=maybe)


def _join(words: Sequence[str]) -> str:
    return " and ".join((", ".join(words[:-1]), words[-1])) if len(words) > 1 else words[0]


def _two(fit: Fit, everything: Points) -> Check:
    designed = float(np.hypot(*(fit.design[1] - fit.design[0])))
    error = float(np.hypot(*(fit.touched[1] - fit.touched[0]))) - designed
    text = say(
        "The two holes are {error:.3f} mm too {which}",
        error=abs(error),
        which=say("far apart") if error > 0 else say("close"),
    )
    if fit.chance >= LEVEL:
        return Check(
            Verdict.FITS, (), fit.chance, say("{text}, which their uncertainty explains.", text=text), error
        )
    sigma = float(np.hypot(*fit.sigma))
    maybe = tuple(
        (1 - kept, k)
        for kept in (0, 1)
        for k in _at_distance(fit.design[kept], designed + error, sigma, everything)
    )
    return Check(
        Verdict.UNCLEAR,
        (),
        fit.chance,
        say("{text}: one of them is wrong. Touch a third.", text=text),
        error,
        maybe,
    )


def _at_distance(place: NDArray[np.float64], distance: float, sigma: float, everything: Points) -> list[int]:
    if not len(everything):
        return []
    off = np.abs(np.hypot(*(everything - place).T) - distance)
    return [int(k) for k in np.flatnonzero(off <= NEAR * sigma)]


def _suspects(fit: Fit) -> tuple[int, ...]:
    """Holes whose removal makes the rest agree, none clearly better than the first; best first."""
    left = np.array([without(fit, i).misfit for i in range(len(fit.design))])
    order = np.argsort(left, kind="stable")
    if left[order[0]] > chi2.ppf(1 - REST_LEVEL, fit.freedom - 2):
        return ()
    return tuple(int(i) for i in order if left[i] - left[order[0]] <= CLEAR)


def _orders(count: int) -> list[tuple[int, ...]]:
    """Orders other than the given one: all of them for few holes, else exchanges of two."""
    same = tuple(range(count))
    if count <= MOST_ORDERS:
        return [order for order in permutations(same) if order != same]
    found = []
    for i, j in combinations(same, 2):
        order = list(same)
        order[i], order[j] = j, i
        found.append(tuple(order))
    return found


def _swapped(fit: Fit) -> tuple[int, ...]:
    """Holes that must have changed places for all to agree; the fewest that do."""
    limit = float(chi2.ppf(1 - LEVEL, fit.freedom))
    best: tuple[int, float, tuple[int, ...]] | None = None
    for order in _orders(len(fit.design)):
        moved = tuple(i for i, k in enumerate(order) if i != k)
        other = fit_rigid(fit.design, fit.touched[list(order)], mirror=fit.mirror, sigma=fit.sigma)
        if other.misfit <= limit and (best is None or (len(moved), other.misfit) < best[:2]):
            best = (len(moved), other.misfit, moved)
    return best[2] if best is not None else ()


def _instead(fit: Fit, others: Fit, wrong: int, everything: Points) -> list[int]:
    """Holes of the design that lie where the wrong one was touched."""
    if not len(everything):
        return []
    offs = others.apply(everything) - fit.touched[wrong]
    spread = others.covariance_at(everything) + np.eye(2) * float(fit.sigma[wrong]) ** 2
    square = np.einsum("ni,nij,nj->n", offs, np.linalg.inv(spread), offs)
    return [int(k) for k in np.argsort(square) if square[k] <= NEAR**2]


def symmetries(design: ArrayLike, sigma: float = 0.02) -> tuple[tuple[int, ...], ...]:
    """Orders in which the holes fit themselves: the touches cannot tell these apart.

    Four corners of a rectangle fit half a turn round as well; the person must say which is which.
    """
    points = as_points(design)
    if len(points) < 2:
        return ()
    found = []
    for order in _orders(len(points)):
        fit = fit_rigid(points, points[list(order)], sigma=sigma)
        if fit.misfit <= chi2.ppf(1 - LEVEL, max(1, fit.freedom)):
            found.append(order)
    return tuple(found)
