"""Grooves of a dense board against `buffer(union_all(parts), r, quad_segs=8)`, best of three."""

import resource
import time

import shapely
from dense_board import dense_board

from drypoint.cuts.grooves import plan_grooves


def best(work) -> float:
    """Seconds of the fastest of three."""
    seconds = []
    for _ in range(3):
        start = time.perf_counter()
        work()
        seconds.append(time.perf_counter() - start)
    return min(seconds)


def main() -> None:
    """Table of sizes and widths."""
    print("size nets vertices width reference_s ours_s ratio max_bite_um over_theory_um impossible memory_MB")
    for factor in (1, 2, 3):
        nets = dense_board(60 * factor, 50 * factor)
        parts = shapely.get_parts(list(nets.values()))
        count = int(shapely.get_num_coordinates(parts).sum())
        for width in (0.18, 0.2, 0.22, 0.3):
            reference = best(
                lambda w=width, p=parts: shapely.buffer(shapely.union_all(p), w / 2, quad_segs=8)
            )
            ours = best(lambda w=width, n=nets: plan_grooves(n, w, bite=0.1))
            plan = plan_grooves(nets, width, bite=0.1)
            over = plan.max_bite - max(0.0, (width - 0.2) / 2)
            print(
                f"{factor**2}x {len(nets)} {count} {width} {reference:.2f} {ours:.2f} {ours / reference:.2f} "
                f"{1e3 * plan.max_bite:.1f} {1e3 * over:.1f} {len(plan.impossible)} "
                f"{resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024:.0f}",
                flush=True,
            )


if __name__ == "__main__":
    main()
