"""Reach of a million points over three passes, against one linear interpolation of them.

    python tests/benchmarks/reach_speed.py

Reference in the same run: scipy's RegularGridInterpolator (linear) on the same points and nodes.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from pathlib import Path

import numpy as np
from scipy.interpolate import RegularGridInterpolator
from shapely import box

sys.path.insert(0, str(Path(__file__).parent))
from surface_truth import HEIGHT, WIDTH, grooves, sheet

from drypoint.passes.bulk import reach_from_lattice
from drypoint.passes.chance import through
from drypoint.surface.model import fit_surface
from drypoint.surface.plan import plan_touches


def best_of(work: Callable[[], object], times: int = 7) -> float:
    """Least time of the processor, s: other work on the machine does not count."""
    seconds = []
    for _ in range(times):
        start = time.process_time()
        work()
        seconds.append(time.process_time() - start)
    return min(seconds)


def main() -> None:
    lines = grooves(0)
    places = plan_touches(lines, box(1, 1, WIDTH - 1, HEIGHT - 1), 100)
    for count in (100, 400):
        places = plan_touches(lines, box(1, 1, WIDTH - 1, HEIGHT - 1), count)
        touches = sheet(0).touch(places, 0)
        seconds = best_of(lambda t=touches: fit_surface(t), 3)  # type: ignore[misc]
        print(f"fit of {count} touches with its samples: {seconds:.2f} s")
    surface = fit_surface(sheet(0).touch(plan_touches(lines, box(1, 1, 99, 79), 100), 0))
    start = time.perf_counter()
    lattice = surface.field((0.0, 0.0, WIDTH, HEIGHT))
    print(f"lattice {lattice.values.shape[:2]}: {time.perf_counter() - start:.2f} s")
    rng = np.random.default_rng(0)
    points = rng.random((1_000_000, 2)) * (WIDTH, HEIGHT)
    sample = points[:4000]
    gap = np.abs(np.vstack([surface.exact(part) for part in np.split(sample, 4)]) - lattice.read(sample))
    print(f"lattice's error, mean/spread: {1e3 * gap.mean(0)} µm mean, {1e3 * gap.max(0)} µm largest")
    depths = [0.05 + 0.02 * rng.random(len(points)) for _ in range(3)]
    nodes = [lattice.origin[k] + lattice.pitch * np.arange(lattice.values.shape[k]) for k in (0, 1)]
    reference = RegularGridInterpolator(nodes, lattice.values[:, :, 1], bounds_error=False, fill_value=None)
    one = best_of(lambda: reference(points))
    read = best_of(lambda: lattice.read(points))
    ours = best_of(lambda: reach_from_lattice(points, depths, lattice, copper=0.035, play=0.015))
    plain = best_of(lambda: through(np.max(depths, axis=0) - 0.035, reference(points), 0.015), 3)
    p = reach_from_lattice(points, depths, lattice, copper=0.035, play=0.015)
    q = through(np.max(depths, axis=0) - 0.035, reference(points), 0.015)
    print(f"{'':34s}{'ms':>8s}{'÷ one':>8s}")
    for name, value in (
        ("one linear interpolation (scipy)", one),
        ("mean and spread from the lattice", read),
        ("reach over three passes", ours),
        ("the same in whole arrays", plain),
    ):
        print(f"{name:34s}{1e3 * value:8.1f}{value / one:8.2f}")
    print(f"largest difference from the formula: {np.abs(p - q).max():.1e}")


if __name__ == "__main__":
    main()
