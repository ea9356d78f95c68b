"""Island check of a dense board against the buffer of its union; same verdict for all tiles."""

import resource
import time

import shapely
from dense_board import dense_board

from drypoint.cuts.grooves import plan_grooves
from drypoint.cuts.islands import check


def main() -> None:
    """Table of sizes, widths and tiles (best of three)."""
    print("size width tile reference_s ours_s ratio nets pieces shorts opens lost memory_MB")
    for factor in (1, 2, 3):
        nets = dense_board(60 * factor, 50 * factor)
        parts = shapely.get_parts(list(nets.values()))
        for width, tile in ((0.18, 7.0), (0.18, 10.0), (0.18, 20.0), (0.25, 10.0)):
            lines = plan_grooves(nets, width, bite=0.1).lines
            reference, ours = [], []
            for _ in range(3):
                start = time.perf_counter()
                shapely.buffer(shapely.union_all(parts), width / 2, quad_segs=8)
                reference.append(time.perf_counter() - start)
                start = time.perf_counter()
                found = check(nets, lines, width, tile=tile)
                ours.append(time.perf_counter() - start)
            print(
                f"{factor**2}x {width} {tile} {min(reference):.2f} {min(ours):.2f} "
                f"{min(ours) / min(reference):.2f} {found.nets} {found.pieces} "
                f"{len(found.shorts)} {len(found.opens)} {len(found.lost)} "
                f"{resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024:.0f}",
                flush=True,
            )


if __name__ == "__main__":
    main()
