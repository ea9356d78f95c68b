"""What a fit is worth: ring left at every hole, the worst one named, which hole to touch next."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations

import numpy as np
import shapely
from numpy.typing import ArrayLike, NDArray
from scipy.stats import chi2
from shapely import Geometry

from drypoint.board.model import Hole
from drypoint.geometry.points import Points, as_points
from drypoint.reference.fit import Fit, ellipses

MOST_PAIRS = 200
"""Up to this many candidate holes every pair is tried; of more, those nearest to the hull's edge."""
MOST_ROUNDS = 6
"""Rounds of exchanging chosen holes; two or three are usual."""
LEAST_GAIN = 1e-9
"""An exchange must lower the worst error by more than this, mm."""


@dataclass(frozen=True, slots=True)
class Ring:
    """The copper round one hole.

    Attributes
    ----------
    at : (x, y) board frame
    designed : float
        Annular ring of the design, mm.
    expected : float
        Root mean square position error, mm.
    semi_axes : (major, minor) of the 95 % ellipse, mm
    direction : float
        Of the major axis, machine frame, rad.
    left : float
        Ring left in the worst direction at the ellipse's share, mm; negative where the hole
        breaks out of the pad.
    """

    hole: int
    at: tuple[float, float]
    designed: float
    expected: float
    semi_axes: tuple[float, float]
    direction: float
    left: float


@dataclass(frozen=True, slots=True)
class Worth:
    """All rings; ``worst`` is the one with least left, None if no hole has a pad."""

    rings: tuple[Ring, ...]
    worst: Ring | None
    share: float


def pad_radii(holes: Sequence[Hole], nets: Mapping[str, Geometry]) -> NDArray[np.float64]:
    """(N,) distance from each hole's centre to the nearest edge of the copper it lies in, mm.

    Holes in no copper get NaN. Hole-shaped gaps in the copper round the centre are filled first.
    """
    parts = [part for shape in nets.values() for part in shapely.get_parts(shape)]
    tree = shapely.STRtree(parts)
    found = np.full(len(holes), np.nan)
    for index, hole in enumerate(holes):
        centre = shapely.Point(hole.x, hole.y)
        for k in tree.query(centre).tolist():
            outer = shapely.Polygon(parts[k].exterior)
            if not outer.contains(centre):
                continue
            edges = [parts[k].exterior]
            edges += [ring for ring in parts[k].interiors if not shapely.Polygon(ring).contains(centre)]
            radius = min(float(edge.distance(centre)) for edge in edges)
            found[index] = np.nanmin([found[index], radius]) if not math.isnan(found[index]) else radius
    return found


def worth(
    fit: Fit, holes: Sequence[Hole], radii: ArrayLike, *, share: float = 0.95, wander: float = 0.0
) -> Worth:
    """Ring left at every hole under the fit's uncertainty.

    Ring left = pad radius - hole radius - the major semi-axis of the error ellipse: safe in every
    direction at once. The error of holes and copper made in one set-up is the drill's ``wander``
    alone, so this is for copper and holes made in different ones.

    Parameters
    ----------
    radii : (N,) distance from hole to copper edge, mm, NaN for holes without a pad (`pad_radii`)
    wander : how far a drilled hole lies from where it was sent, mm, standard deviation per axis
    """
    if not holes:
        return Worth((), None, share)
    centres = as_points([(hole.x, hole.y) for hole in holes])
    covariance = fit.covariance_at(centres) + np.eye(2) * wander**2
    shape = ellipses(covariance, share)
    rms = np.sqrt(np.trace(covariance, axis1=1, axis2=2))
    rings = tuple(
        Ring(
            hole=index,
            at=(hole.x, hole.y),
            designed=float(radius) - hole.diameter / 2,
            expected=float(rms[index]),
            semi_axes=(float(shape[index, 0]), float(shape[index, 1])),
            direction=float(shape[index, 2]),
            left=float(radius) - hole.diameter / 2 - float(shape[index, 0]),
        )
        for index, (hole, radius) in enumerate(zip(holes, np.asarray(radii, dtype=np.float64), strict=True))
        if not math.isnan(radius)
    )
    return Worth(rings, min(rings, key=lambda ring: ring.left, default=None), share)


def _information(points: Points, sigma: NDArray[np.float64]) -> NDArray[np.float64]:
    """(K, 3, 3) what a touch at each point tells about shift and turn (about the origin)."""
    count = len(points)
    one, none = np.ones(count), np.zeros(count)
    rows = np.stack(
        (np.stack((one, none, -points[:, 1]), axis=1), np.stack((none, one, points[:, 0]), axis=1)), axis=1
    )
    told: NDArray[np.float64] = np.einsum("kij,kil->kjl", rows, rows) / (sigma**2)[:, None, None]
    return told


def _worst_error(
    information: NDArray[np.float64], targets: Points, slack: NDArray[np.float64]
) -> NDArray[np.float64]:
    """(K,) for each (3, 3) information: largest of 95 % semi-axis minus slack over the targets.

    The variance across the arm, the larger one, is that of the turn about the fit's own middle.
    """
    inverse = np.linalg.inv(information)
    count = len(targets)
    one, none = np.ones(count), np.zeros(count)
    rows = np.stack(
        (np.stack((one, none, -targets[:, 1]), axis=1), np.stack((none, one, targets[:, 0]), axis=1)), axis=1
    )
    worst = np.empty(len(inverse))
    factor = math.sqrt(float(chi2.ppf(0.95, 2)))
    for k, covariance in enumerate(inverse):
        spread = rows @ covariance @ rows.transpose(0, 2, 1)
        largest = np.linalg.eigvalsh(spread)[:, -1]
        worst[k] = float((factor * np.sqrt(np.clip(largest, 0, None)) - slack).max())
    return worst


@dataclass(frozen=True, slots=True)
class Advice:
    """Touching ``hole`` (index of the candidate) brings the largest 95 % error at any target,
    or the smallest ring, from ``now`` to ``then``: mm of error minus ring, so less is better."""

    hole: int
    now: float
    then: float

    @property
    def gain(self) -> float:
        """How much is gained, mm."""
        return self.now - self.then


def next_hole(
    fit: Fit,
    candidates: ArrayLike,
    targets: ArrayLike,
    *,
    sigma: float = 0.02,
    hole_sigma: ArrayLike = 0.0,
    rings: ArrayLike = 0.0,
) -> tuple[Advice, ...]:
    """Candidates ranked by how much a touch there would help the worst target.

    Parameters
    ----------
    candidates : (K, 2) holes not touched yet, board frame
    targets : (M, 2) holes and pads that must be hit, board frame
    hole_sigma : float or (K,) how far each candidate may lie from its design, mm
    rings : (M,) ring of the design at each target, mm; 0 ranks by position error alone
    """
    places, aims = as_points(candidates), as_points(targets)
    if not len(places) or not len(aims):
        return ()
    slack = np.broadcast_to(np.asarray(rings, dtype=np.float64), (len(aims),))
    middle = fit.design.mean(axis=0)
    known = _information(as_points(fit.design - middle), fit.sigma).sum(axis=0)
    total = _totals(sigma, hole_sigma, len(places))
    more = known + _information(as_points(places - middle), total)
    aims = as_points(aims - middle)
    now = float(_worst_error(known[None], aims, slack)[0])
    then = _worst_error(more, aims, slack)
    return tuple(Advice(int(k), now, float(then[k])) for k in np.argsort(then, kind="stable"))


def choose_holes(
    candidates: ArrayLike,
    targets: ArrayLike,
    count: int = 3,
    *,
    sigma: float = 0.02,
    hole_sigma: ArrayLike = 0.0,
) -> tuple[int, ...]:
    """Which holes to use: the best pair, then the ones that help the worst target most.

    From three on, holes are exchanged one by one as long as that lowers the worst target's error:
    the best three are seldom the best pair and one more. Give only holes drilled in the set-up that
    is to be found again: others have moved already.

    Parameters
    ----------
    hole_sigma : float or (K,) how far each candidate may lie from its design, mm
    """
    places, aims = as_points(candidates), as_points(targets)
    if len(places) < 2 or not len(aims):
        return tuple(range(min(len(places), count)))
    middle = places.mean(axis=0)
    places, aims = as_points(places - middle), _hull(as_points(aims - middle))
    told = _information(places, _totals(sigma, hole_sigma, len(places)))
    pool = _outermost(places)
    pairs = [(i, j) for i, j in combinations(pool, 2) if np.hypot(*(places[i] - places[j])) > 1e-6]
    if not pairs:
        return (0,)
    left, right = np.array(pairs).T
    slack = np.zeros(len(aims))
    chosen = list(pairs[int(np.argmin(_worst_error(told[left] + told[right], aims, slack)))])
    while len(chosen) < min(count, len(places)):
        rest = [k for k in range(len(places)) if k not in chosen]
        errors = _worst_error(told[chosen].sum(axis=0) + told[rest], aims, slack)
        chosen.append(rest[int(np.argmin(errors))])
    return tuple(_exchanged(chosen, told, pool, aims))


def foreseen_error(
    holes: ArrayLike,
    targets: ArrayLike,
    *,
    sigma: float = 0.02,
    hole_sigma: ArrayLike = 0.0,
) -> float | None:
    """Largest semi-axis of the 95 % error ellipses at the targets once these holes are touched, mm.

    Beforehand: that of a fit with these holes, which does not depend on where they are found. None
    where fewer than two places are given: then nothing is found.

    Parameters
    ----------
    holes : (N, 2) holes to touch, board frame
    targets : (M, 2) where the error is asked for
    hole_sigma : float or (N,) how far each hole may lie from its design, mm
    """
    places, aims = as_points(holes), as_points(targets)
    if len(places) < 2 or float(np.ptp(places, axis=0).max()) < 1e-6 or not len(aims):
        return None
    middle = places.mean(axis=0)
    told = _information(as_points(places - middle), _totals(sigma, hole_sigma, len(places))).sum(axis=0)
    return float(_worst_error(told[None], as_points(aims - middle), np.zeros(len(aims)))[0])


def _exchanged(chosen: list[int], told: NDArray[np.float64], pool: list[int], aims: Points) -> list[int]:
    """Another hole for one of those chosen, as long as that lowers the worst error."""
    slack = np.zeros(len(aims))
    best = float(_worst_error(told[chosen].sum(axis=0)[None], aims, slack)[0])
    for _ in range(MOST_ROUNDS if len(chosen) > 2 else 0):
        before = best
        for place in range(len(chosen)):
            others = [k for at, k in enumerate(chosen) if at != place]
            rest = [k for k in pool if k not in chosen]
            if not rest:
                return chosen
            errors = _worst_error(told[others].sum(axis=0) + told[rest], aims, slack)
            if errors.min() < best - LEAST_GAIN:
                best = float(errors.min())
                chosen[place] = rest[int(np.argmin(errors))]
        if best == before:
            break
    return chosen


def _totals(sigma: float, hole_sigma: ArrayLike, count: int) -> NDArray[np.float64]:
    """(K,) standard deviation of each candidate, touched."""
    return np.hypot(sigma, np.broadcast_to(np.asarray(hole_sigma, dtype=np.float64), (count,)))


def _hull(points: Points) -> Points:
    """The corners of the convex hull: error grows with distance, so the worst target is one."""
    corners = shapely.get_coordinates(shapely.MultiPoint(points).convex_hull)
    return as_points(np.unique(corners, axis=0))


def _outermost(places: Points) -> list[int]:
    """Candidates worth pairing: all, or those furthest out."""
    limit = round(math.sqrt(2 * MOST_PAIRS)) + 10
    far = np.argsort(-np.hypot(*places.T), kind="stable")
    return sorted(far[:limit].tolist())
