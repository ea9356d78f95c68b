"""How many points bending costs, how long it takes, and whether the bound holds.

Run by hand: python tests/benchmarks/warp_points.py
Compared in the same run with fixed steps (the usual way: a point every so many mm) that reach the
same error, on rippled laminate as simulated sine waves and on white noise read bilinearly.
"""

import time

import numpy as np

from drypoint.geometry.points import as_points, resample
from drypoint.program.heights import HeightGrid, sample
from drypoint.program.warp import warp

CHORD = 0.002


class Ripples:
    def mean(self, points):
        p = np.asarray(points)
        long = 0.08 * np.sin(p[:, 0] / 30) * np.cos(p[:, 1] / 25)
        return long + 0.012 * np.sin(p[:, 0] / 2.0 + 0.3) * np.sin(p[:, 1] / 2.6)


def grooves(count, seed=0):
    """Closed octagons of 0.5 to 4 mm all over a board of 160 x 100 mm."""
    rng = np.random.default_rng(seed)
    turn = np.linspace(0, 2 * np.pi, 9)
    shape = np.column_stack((np.cos(turn), np.sin(turn)))
    paths = [
        c + r * shape
        for c, r in zip(rng.uniform((4, 4), (156, 96), (count, 2)), rng.uniform(0.5, 4, count), strict=True)
    ]
    first = np.zeros(9 * count, dtype=bool)
    first[::9] = True
    return paths, as_points(np.vstack(paths)), first


def worst(points, source_first, height):
    a, b = points[:-1], points[1:]
    inside = ~source_first[1:]
    worst = 0.0
    for share in np.linspace(0, 1, 21)[1:-1]:
        at = a[inside] + share * (b[inside] - a[inside])
        worst = max(worst, float(np.abs(at[:, 2] - height(at[:, :2])).max()))
    return worst


def fixed(paths, height, step):
    parts = [resample(as_points(p), step) for p in paths]
    xy = np.vstack(parts)
    first = np.zeros(len(xy), dtype=bool)
    first[np.cumsum([0] + [len(p) for p in parts[:-1]])] = True
    points = np.column_stack((xy, height(xy)))
    return len(xy) - sum(len(p) for p in paths), worst(points, first, height)


def report(name, surface, height, count):
    paths, path, first = grooves(count)
    begin = time.perf_counter()
    grid = surface if isinstance(surface, HeightGrid) else sample(surface, path, 0.2 * CHORD)
    sampled = time.perf_counter()
    found = warp(path, np.zeros(len(path)), first, grid, CHORD)
    done = time.perf_counter()
    starts = np.zeros(len(found.points), dtype=bool)
    starts[np.searchsorted(found.source, np.flatnonzero(first))] = True
    error = worst(found.points, starts, height)
    extra = len(found.points) - len(path)
    step = 10.0
    while True:
        points, other = fixed(paths, height, step)
        if other <= error:
            break
        step /= 1.25
    print(
        f"{name:22s} {len(path):7d} vertices, pitch {grid.pitch:.3f}, grid {sampled - begin:5.2f} s, "
        f"warp {done - sampled:5.2f} s, error {1000 * error:.2f} µm, extra {extra}, "
        f"fixed step {step:.3f} mm needs {points} ({points / max(extra, 1):.1f} x)"
    )


if __name__ == "__main__":
    for count in (500, 5000, 20000):
        report("ripples", Ripples(), Ripples().mean, count)
    rough = HeightGrid((-5.0, -5.0), 0.5, np.random.default_rng(1).normal(0, 0.004, (240, 360)), 0.0)
    report("bilinear white noise", rough, lambda p: rough.mean(as_points(p)), 5000)
