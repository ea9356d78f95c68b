"""Tours against known optima, and travel over grooves and holes against nearest neighbour.

TSPLIB files are read from the folder in DRYPOINT_TSPLIB; optima are those of TSPLIB's own list
(Reinelt, Heidelberg).
"""

import os
import time
from pathlib import Path

import numpy as np
from dense_board import dense_board

from drypoint.cuts.grooves import in_travel_order, plan_grooves
from drypoint.cuts.order import steady_order, tour

OPTIMUM = {"pcb442": 50778, "d493": 35002}


def coordinates(path):
    """(N, 2) places of a TSPLIB file."""
    lines = path.read_text().split("NODE_COORD_SECTION")[1].splitlines()
    rows = [line.split()[1:3] for line in lines if len(line.split()) >= 3]
    return np.array(rows, dtype=np.float64)


def rounded(points, order):
    """Length of a closed tour by TSPLIB's EUC_2D."""
    step = points[order] - np.roll(points[order], -1, axis=0)
    return int(np.floor(np.hypot(*step.T) + 0.5).sum())


def travel(paths):
    """Way from the origin and between paths."""
    at, total = np.zeros(2), 0.0
    for path in paths:
        total += float(np.hypot(*(path[0] - at)))
        at = path[-1]
    return total


def nearest(paths):
    """The paths by nearest start, each time from where the last one ended."""
    starts = np.array([path[0] for path in paths])
    left, at, found = np.ones(len(paths), dtype=bool), np.zeros(2), []
    while left.any():
        away = np.where(left, np.hypot(*(starts - at).T), np.inf)
        index = int(np.argmin(away))
        left[index] = False
        found.append(paths[index])
        at = paths[index][-1]
    return found


def main() -> None:
    """Two tables."""
    print("set places seconds_tour over_optimum_% seconds_steady over_optimum_%")
    folder = Path(os.environ.get("DRYPOINT_TSPLIB", "."))
    for name, best in OPTIMUM.items():
        if not (folder / f"{name}.tsp").exists():
            print(name, "absent")
            continue
        points = coordinates(folder / f"{name}.tsp")
        start = time.perf_counter()
        quick = rounded(points, tour(points, seconds=1.0))
        middle = time.perf_counter()
        steady = rounded(points, steady_order(points))
        stop = time.perf_counter()
        print(
            f"{name} {len(points)} {middle - start:.2f} {100 * (quick / best - 1):.2f} "
            f"{stop - middle:.2f} {100 * (steady / best - 1):.2f}"
        )
    print("columns rows width lines seconds travel_mm nearest_mm ratio")
    for columns, rows in ((12, 10), (30, 25)):
        for width in (0.18, 0.22):
            plan = plan_grooves(dense_board(columns, rows), width, bite=0.1)
            start = time.perf_counter()
            ordered = travel(in_travel_order(plan, start=(0.0, 0.0)).lines)
            seconds = time.perf_counter() - start
            plain = travel(nearest(plan.lines))
            print(
                f"{columns} {rows} {width} {len(plan.lines)} {seconds:.2f} {ordered:.0f} {plain:.0f} "
                f"{ordered / plain:.3f}",
                flush=True,
            )


if __name__ == "__main__":
    main()
