"""Circular arcs as points: for files that draw them and for paths that need vertices."""

from __future__ import annotations

import math

import numpy as np

from drypoint.geometry.points import Points, as_points

SAGITTA = 0.0005
"""mm; the farthest a chord may lie from its arc unless asked otherwise."""
MAX_SEGMENTS = 4096

Place = tuple[float, float]


def sweep(start: Place, stop: Place, centre: Place, clockwise: bool) -> float:
    """Signed angle of an arc, rad: positive anticlockwise; equal ends make a full circle."""
    first = math.atan2(start[1] - centre[1], start[0] - centre[0])
    last = math.atan2(stop[1] - centre[1], stop[0] - centre[0])
    turn = (first - last) if clockwise else (last - first)
    turn %= 2.0 * math.pi
    if turn < 1e-12 or math.dist(start, stop) < 1e-9:
        turn = 2.0 * math.pi
    return -turn if clockwise else turn


def arc_points(
    start: Place, stop: Place, centre: Place, clockwise: bool, *, sagitta: float = SAGITTA
) -> Points:
    """(N, 2) vertices of an arc, its ends exactly as given, no chord farther than ``sagitta`` from it.

    Where the ends lie at unequal distances from the centre, the radius changes evenly with the angle.
    """
    first, last = math.dist(start, centre), math.dist(stop, centre)
    radius = max(first, last)
    turn = sweep(start, stop, centre, clockwise)
    if radius <= sagitta:
        return as_points([start, stop])
    step = 2.0 * math.acos(1.0 - sagitta / radius)
    count = min(MAX_SEGMENTS, max(1, math.ceil(abs(turn) / step))) if step > 0.0 else MAX_SEGMENTS
    share = np.linspace(0.0, 1.0, count + 1)
    angle = math.atan2(start[1] - centre[1], start[0] - centre[0]) + turn * share
    length = first + (last - first) * share
    points = np.column_stack((centre[0] + length * np.cos(angle), centre[1] + length * np.sin(angle)))
    points[0], points[-1] = start, stop
    return as_points(points)


def centre_of_radius(
    start: Place, stop: Place, radius: float, clockwise: bool, *, slack: float = 1e-3
) -> Place | None:
    """Centre of the arc of a signed radius: positive turns at most half round, negative at least.

    None where the ends are the same, or farther apart than the diameter by more than ``slack`` mm.
    """
    dx, dy = stop[0] - start[0], stop[1] - start[1]
    chord = math.hypot(dx, dy)
    if chord < 1e-12 or radius == 0.0 or chord > 2.0 * abs(radius) + slack:
        return None
    height = math.sqrt(max(0.0, radius * radius - chord * chord / 4.0))
    if clockwise == (radius > 0.0):
        height = -height
    return (start[0] + dx / 2.0 - dy / chord * height, start[1] + dy / 2.0 + dx / chord * height)
