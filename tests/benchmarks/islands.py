"""Island check of a dense board against the buffer of its union; same verdict for all tiles.

``bridged`` plans have 3 µm more than the cut's width taken out of one groove in twenty: what holds a
bridge is carved, in tiles; the rest is told from the faces between the grooves.
"""

import sys

import numpy as np
import shapely
from dense_board import dense_board
from side_by_side import peak_memory, side_by_side

from drypoint.cuts.grooves import plan_grooves
from drypoint.cuts.islands import check

CASES = ((0.18, 20.0, False), (0.25, 20.0, False), (0.18, 7.0, True), (0.18, 20.0, True), (0.25, 20.0, True))


def bridged(lines, width):
    """The lines with a piece left out of every twentieth."""
    found = []
    for number, line in enumerate(lines):
        if number % 20 or shapely.LineString(line).length < 4 * width:
            found.append(line)
            continue
        along = np.concatenate(([0.0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))))
        kept = along > width + 0.003
        at = [np.interp(width + 0.003, along, line[:, axis]) for axis in (0, 1)]
        found.append(np.vstack((at, line[kept])))
    return found


def main() -> None:
    """Table of sizes, widths and tiles (best of three; the larger ones once)."""
    print(
        "size width tile bridged reference_cpu_s ours_cpu_s ratio_cpu ratio_clock nets pieces shorts opens "
        "lost memory_MB"
    )
    for factor in [int(word) for word in sys.argv[1:]] or (1, 2, 3):
        nets = dense_board(60 * factor, 50 * factor)
        parts = shapely.get_parts(list(nets.values()))
        for width, tile, broken in CASES:
            lines = plan_grooves(nets, width, bite=0.1).lines
            if broken:
                lines = bridged(lines, width)

            def work(n=nets, given=lines, w=width, t=tile):
                return check(n, given, w, tile=t)

            memory = peak_memory(work)
            ours, reference = side_by_side(
                work,
                lambda w=width, p=parts: shapely.buffer(shapely.union_all(p), w / 2, quad_segs=8),
                3 if factor == 1 else 1,
            )
            found = work()
            print(
                f"{factor**2}x {width} {tile} {broken} {reference.cpu:.2f} {ours.cpu:.2f} "
                f"{ours.cpu / reference.cpu:.2f} {ours.clock / reference.clock:.2f} "
                f"{found.nets} {found.pieces} {len(found.shorts)} {len(found.opens)} {len(found.lost)} "
                f"{memory:.0f}",
                flush=True,
            )


if __name__ == "__main__":
    main()
