"""How long moves take on a machine that must slow down for corners.

Every move is a trapezoid of speed under the axes' limits; the speed at a corner follows the
junction-deviation rule the common hobby firmware uses; forward and backward passes make
neighbouring moves agree, and the look-ahead is as short as the controller's.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from drypoint.program.model import MoveKind, Moves
from drypoint.program.settings import Motion

STRAIGHT = 1e-6
"""A corner whose 1 - sin(θ/2) is smaller than this is no corner."""


def estimate(moves: Moves, motion: Motion | None = None) -> float:
    """Expected time of all moves, s."""
    return float(move_times(moves, motion).sum())


def move_times(moves: Moves, motion: Motion | None = None) -> NDArray[np.float64]:
    """(N,) expected time of each move, s; the first starts at rest where it ends (no length).

    Speeds at corners: v² = a δ sin(θ/2) / (1 - sin(θ/2)), θ the angle between the two legs (the
    junction-deviation rule). Within a move: v² = u² + 2 a s (kinematics).
    """
    chosen = motion or Motion()
    count = len(moves)
    if not count:
        return np.zeros(0)
    length, enter, leave, radius = _shapes(moves)
    speed, accel = _limits(moves, enter, leave, radius, chosen)
    moving = length > 0
    index = np.flatnonzero(moving)
    times = moves.dwell.copy()
    if not len(index):
        return times
    corner = _corners(enter[index], leave[index], accel[index], chosen.junction_deviation)
    # a dwell between two moves, and every end, is a stop
    stops = np.flatnonzero(moves.kind == MoveKind.DWELL)
    corner[np.unique(np.searchsorted(index, stops))] = 0.0
    entry = _agree(length[index], speed[index], accel[index], corner, chosen.blocks)
    times[index] += _durations(length[index], speed[index], accel[index], entry)
    return times


def _shapes(
    moves: Moves,
) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
    """Length, direction at the start and at the end, and radius (0 if straight) of each move."""
    start = np.vstack((moves.end[:1], moves.end[:-1]))
    way = moves.end - start
    length = np.sqrt((way**2).sum(axis=1))
    direction = way / np.where(length > 0, length, 1.0)[:, None]
    enter, leave, radius = direction, direction.copy(), np.zeros(len(moves))
    for i in np.flatnonzero((moves.kind == MoveKind.ARC_CW) | (moves.kind == MoveKind.ARC_CCW)).tolist():
        sign = 1.0 if moves.kind[i] == MoveKind.ARC_CCW else -1.0
        sx, sy = (-moves.centre[i]).tolist()
        ex, ey = (way[i, :2] - moves.centre[i]).tolist()
        angle = sign * math.atan2(sx * ey - sy * ex, sx * ex + sy * ey)
        angle = angle if angle > 1e-9 else angle + 2 * math.pi
        radius[i] = math.hypot(sx, sy)
        flat, rise = radius[i] * angle, float(way[i, 2])
        length[i] = math.hypot(flat, rise)
        for target, (x, y) in ((enter, (sx, sy)), (leave, (ex, ey))):
            r = math.hypot(x, y) or 1.0
            target[i] = np.array([-sign * y / r * flat, sign * x / r * flat, rise]) / (length[i] or 1.0)
    return length, enter, leave, radius


def _limits(
    moves: Moves,
    enter: NDArray[np.float64],
    leave: NDArray[np.float64],
    radius: NDArray[np.float64],
    motion: Motion,
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Highest speed, mm/s, and acceleration, mm/s², of each move: the axes' limits shared out."""
    rates = np.asarray(motion.max_rate) / 60.0
    accels = np.asarray(motion.accel, dtype=np.float64)
    part = np.maximum(np.abs(enter), np.abs(leave))
    with np.errstate(divide="ignore"):
        fastest = (rates / part).min(axis=1)
        accel = (accels / part).min(axis=1)
    arcs = radius > 0
    # on a curve every direction in the plane occurs
    fastest[arcs] = min(rates[0], rates[1])
    accel[arcs] = min(accels[0], accels[1])
    # arcs are run as chords with corners of their own; sagitta = tolerance gives sin(θ/2) = 1 - tol/r
    tolerance = motion.arc_tolerance
    ratio = np.clip(radius[arcs] / tolerance - 1.0, 0.1, None)
    fastest[arcs] = np.minimum(fastest[arcs], np.sqrt(accel[arcs] * motion.junction_deviation * ratio))
    cutting = moves.kind != MoveKind.RAPID
    fastest[cutting] = np.minimum(fastest[cutting], moves.feed[cutting] / 60.0)
    return np.maximum(fastest, 1e-6), np.where(np.isfinite(accel), accel, 1.0)


def _corners(
    enter: NDArray[np.float64], leave: NDArray[np.float64], accel: NDArray[np.float64], deviation: float
) -> NDArray[np.float64]:
    """(M + 1,) highest squared speed at the start of each move and at the end of the last."""
    limit = np.zeros(len(enter) + 1)
    cosine = -(leave[:-1] * enter[1:]).sum(axis=1)
    half = np.sqrt(np.clip((1.0 - cosine) / 2.0, 0.0, 1.0))
    a = np.minimum(accel[:-1], accel[1:])
    gap = 1.0 - half
    limit[1:-1] = np.where(gap > STRAIGHT, a * deviation * half / np.maximum(gap, STRAIGHT), np.inf)
    return limit


def _agree(
    length: NDArray[np.float64],
    speed: NDArray[np.float64],
    accel: NDArray[np.float64],
    corner: NDArray[np.float64],
    blocks: int,
) -> NDArray[np.float64]:
    """(M + 1,) speeds at the ends of moves that the accelerations and the look-ahead allow."""
    squared = speed**2
    limit = corner.copy()
    limit[1:-1] = np.minimum(limit[1:-1], np.minimum(squared[:-1], squared[1:]))
    # the controller must be able to stop within the moves it knows
    gain = 2.0 * accel * length
    total = np.concatenate(([0.0], np.cumsum(gain)))
    ahead = np.minimum(np.arange(len(gain)) + blocks, len(gain))
    limit[:-1] = np.minimum(limit[:-1], total[ahead] - total[:-1])
    v, g = limit.tolist(), gain.tolist()
    for i in range(len(g) - 1, -1, -1):
        reach = v[i + 1] + g[i]
        v[i] = min(v[i], reach)
    for i in range(len(g)):
        reach = v[i] + g[i]
        v[i + 1] = min(v[i + 1], reach)
    speeds: NDArray[np.float64] = np.sqrt(np.array(v))
    return speeds


def _durations(
    length: NDArray[np.float64],
    speed: NDArray[np.float64],
    accel: NDArray[np.float64],
    entry: NDArray[np.float64],
) -> NDArray[np.float64]:
    """(M,) time of each trapezoid between its end speeds, s."""
    v0, v1 = entry[:-1], entry[1:]
    peak = np.sqrt(accel * length + (v0**2 + v1**2) / 2.0)
    top = np.maximum(np.minimum(peak, speed), np.maximum(v0, v1))
    ramps = (2 * top**2 - v0**2 - v1**2) / (2 * accel)
    cruise = np.maximum(length - ramps, 0.0) / top
    total: NDArray[np.float64] = (top - v0) / accel + (top - v1) / accel + cruise
    return total
