"""Grooves of a dense board against `buffer(union_all(parts), r, quad_segs=8)`, best of three.

Boards of 1, 4 and 9 times 3,000 pads; gaps of 0.2 mm, so that cuts up to that width fit. The larger
ones are done once only, and not exactly as wide as the gaps, where the reference takes minutes.
"""

import sys

import shapely
from dense_board import dense_board
from side_by_side import peak_memory, side_by_side

from drypoint.cuts.grooves import plan_grooves


def main() -> None:
    """Table of sizes and widths."""
    print(
        "size nets vertices width reference_cpu_s ours_cpu_s ratio_cpu ratio_clock max_bite_um "
        "over_theory_um impossible memory_MB"
    )
    for factor in [int(word) for word in sys.argv[1:]] or (1, 2, 3):
        nets = dense_board(60 * factor, 50 * factor)
        parts = shapely.get_parts(list(nets.values()))
        count = int(shapely.get_num_coordinates(parts).sum())
        for width in (0.18, 0.2, 0.22, 0.3) if factor == 1 else (0.18, 0.22, 0.3):

            def work(w=width, n=nets):
                return plan_grooves(n, w, bite=0.1)

            memory = peak_memory(work)
            ours, reference = side_by_side(
                work,
                lambda w=width, p=parts: shapely.buffer(shapely.union_all(p), w / 2, quad_segs=8),
                3 if factor == 1 else 1,
            )
            plan = work()
            over = plan.max_bite - max(0.0, (width - 0.2) / 2)
            print(
                f"{factor**2}x {len(nets)} {count} {width} {reference.cpu:.2f} {ours.cpu:.2f} "
                f"{ours.cpu / reference.cpu:.2f} {ours.clock / reference.clock:.2f} "
                f"{1e3 * plan.max_bite:.1f} {1e3 * over:.1f} {len(plan.impossible)} {memory:.0f}",
                flush=True,
            )


if __name__ == "__main__":
    main()
