"""A dense board by rule, for benchmarks: pads on a grid, random traces, a fixed smallest gap.

Rows of pads; under each row a lane with two tracks for the traces of its nets and one long trace.
Pads, tracks and the long trace are exactly the asked gap apart, so nothing is nearer.
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
import shapely
from shapely import Geometry

PITCH = 2.0
ROW = 2.2
PAD = 0.8
TRACE = 0.2


def dense_board(
    columns: int = 60, rows: int = 50, *, seed: int = 7, gap: float = 0.2, per_net: float = 2.5
) -> Mapping[str, Geometry]:
    """Copper per net: ``columns * rows`` pads, about ``columns * rows / per_net`` nets.

    Pads of 0.8 mm (round, square, long) stand 2 mm apart; traces of 0.2 mm leave a pad sideways
    into the lane below it, run in one of three tracks of that lane and climb to the next pad. Tracks are
    ``gap`` apart from each other and from the pads.
    """
    rng = np.random.default_rng(seed)
    shapes: dict[str, list[Geometry]] = {}
    number = 0
    step = TRACE + gap
    for row in range(rows):
        column = 0
        while column < columns:
            count = min(int(rng.choice((1, 2, 3, 4), p=(0.2, 0.3, 0.3, 0.2))), columns - column)
            name = f"N{number:05d}"
            number += 1
            y = row * ROW
            items = [_pad(rng, (column + i) * PITCH, y) for i in range(count)]
            if count > 1:
                track = y - PAD / 2 - gap - TRACE / 2 - step * int(rng.integers(0, 2))
                path = [(column * PITCH, y), (column * PITCH, track)]
                path += [((column + count - 1) * PITCH, track), ((column + count - 1) * PITCH, y)]
                items.append(shapely.buffer(shapely.linestrings(path), TRACE / 2, quad_segs=8))
                inner = [
                    shapely.buffer(shapely.linestrings([(x, y), (x, track)]), TRACE / 2)
                    for x in (PITCH * (column + i) for i in range(1, count - 1))
                ]
                items += inner
            shapes[name] = items
            column += count
    _bus(shapes, columns, rows, gap)
    return {name: shapely.union_all(items) for name, items in shapes.items()}


def _pad(rng: np.random.Generator, x: float, y: float) -> Geometry:
    kind = int(rng.integers(0, 3))
    if kind == 0:
        return shapely.Point(x, y).buffer(PAD / 2, quad_segs=8)
    if kind == 1:
        return shapely.box(x - PAD / 2, y - PAD / 2, x + PAD / 2, y + PAD / 2)
    half = PAD / 2 - 0.25
    return shapely.linestrings([(x - half, y), (x + half, y)]).buffer(0.25, quad_segs=8)


def _bus(shapes: dict[str, list[Geometry]], columns: int, rows: int, gap: float) -> None:
    """One long trace per row, in the lane above the pads, at the gap from them."""
    for row in range(rows):
        y = row * ROW + PAD / 2 + gap + TRACE / 2
        line = shapely.linestrings([(-PAD / 2, y), ((columns - 1) * PITCH + PAD / 2, y)])
        shapes[f"BUS{row:03d}"] = [shapely.buffer(line, TRACE / 2, quad_segs=8)]
