"""Circular arcs to polylines, within a chord tolerance.

Angles in radians, lengths in mm. All vertices lie on the arc, so a polyline never leaves it by
more than the tolerance, always on the inside.
"""

from __future__ import annotations

import math

import numpy as np

from drypoint.geometry.points import Points

CHORD_TOLERANCE = 0.0005
"""mm. Half a micrometre: the perturbation the Gerber specification permits a reader (revision
2021.02, section 4.14). A circle of 1 mm gets 72 sides, a 0.2 mm track end 16 of 32."""

_FEWEST_SIDES = 16


def circle_sides(radius: float, tolerance: float = CHORD_TOLERANCE) -> int:
    """Sides of the polygon that stands for a circle: a multiple of eight.

    Eight, so that it touches the circle's extent in x and y and the edges of tracks that run at
    45 degrees. The sagitta r (1 - cos(pi/n)) is at most ``tolerance``.
    """
    if radius <= tolerance:
        return _FEWEST_SIDES
    return max(_FEWEST_SIDES, 8 * math.ceil(math.pi / math.acos(1.0 - tolerance / radius) / 8.0 - 1e-9))


def circle_points(radius: float, tolerance: float = CHORD_TOLERANCE) -> Points:
    """(N, 2) vertices on the circle round the origin, counter-clockwise from +x, not closed."""
    sides = circle_sides(radius, tolerance)
    angles = np.arange(sides) * (2.0 * math.pi / sides)
    points = radius * np.column_stack((np.cos(angles), np.sin(angles)))
    points[np.abs(points) < 1e-12 * radius] = 0.0
    return points


def arc_sides(radius: float, sweep: float, tolerance: float) -> int:
    """Chords needed for ``sweep`` radians of a circle."""
    step = 2.0 * math.acos(max(1.0 - tolerance / radius, 0.5)) if radius > 0.0 else math.pi
    return max(1, math.ceil(abs(sweep) / step - 1e-9))


def sweep_angle(
    start: tuple[float, float], end: tuple[float, float], centre: tuple[float, float], clockwise: bool
) -> float:
    """Signed angle from start to end round the centre; a full turn where they coincide."""
    turn = -2.0 * math.pi if clockwise else 2.0 * math.pi
    if start == end:
        return turn
    first = math.atan2(start[1] - centre[1], start[0] - centre[0])
    last = math.atan2(end[1] - centre[1], end[0] - centre[0])
    sweep = last - first
    if clockwise:
        return sweep if sweep < 0.0 else sweep + turn
    return sweep if sweep > 0.0 else sweep + turn


def arc_points(
    start: tuple[float, float],
    end: tuple[float, float],
    centre: tuple[float, float],
    sweep: float,
    tolerance: float = CHORD_TOLERANCE,
) -> Points:
    """(N, 2) polyline along an arc, both ends included and exact.

    Where the radii at the two ends differ the radius changes evenly: the specification allows any
    monotonic curve inside the ring (revision 2021.02, chapter 4).
    """
    first = math.atan2(start[1] - centre[1], start[0] - centre[0])
    r0 = math.hypot(start[0] - centre[0], start[1] - centre[1])
    r1 = math.hypot(end[0] - centre[0], end[1] - centre[1])
    share = np.linspace(0.0, 1.0, arc_sides(max(r0, r1), sweep, tolerance) + 1)
    radius = r0 + (r1 - r0) * share
    angle = first + sweep * share
    points = np.column_stack((centre[0] + radius * np.cos(angle), centre[1] + radius * np.sin(angle)))
    points[0] = start
    points[-1] = end
    return points


def quarter_centre(
    start: tuple[float, float], end: tuple[float, float], offset: tuple[float, float], clockwise: bool
) -> tuple[float, float]:
    """The centre meant in single-quadrant mode, where the offsets carry no sign.

    Of the four candidates the one whose radii agree best among those with a sweep of at most a
    quarter turn (The Gerber Layer Format Specification, revision 2021.02, chapter 8).
    """
    ranked = []
    for sx in (1.0, -1.0):
        for sy in (1.0, -1.0):
            centre = (start[0] + sx * abs(offset[0]), start[1] + sy * abs(offset[1]))
            sweep = abs(sweep_angle(start, end, centre, clockwise))
            r0 = math.hypot(start[0] - centre[0], start[1] - centre[1])
            r1 = math.hypot(end[0] - centre[0], end[1] - centre[1])
            ranked.append((sweep > math.pi / 2.0 + 1e-3, abs(r0 - r1), sweep, centre))
    return min(ranked)[3]
