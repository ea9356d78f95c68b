"""The time model against a fine simulation of the same rules, and its speed.

Run by hand: python tests/benchmarks/time_model.py
The other figure people use, length divided by feed, is printed beside it.
"""

import time

import numpy as np

from drypoint.program.builder import make_moves
from drypoint.program.settings import Motion
from drypoint.program.time import move_times

MOTION = Motion(max_rate=(1500.0, 1500.0, 500.0), accel=(50.0, 50.0, 50.0))


def grooves(count, feed, seed=0):
    """Octagons joined by rapids."""
    rng = np.random.default_rng(seed)
    turn = np.linspace(0, 2 * np.pi, 9)
    kinds, ends, feeds = [], [], []
    for _ in range(count):
        c, r = rng.uniform((4, 4), (96, 76)), rng.uniform(0.5, 4)
        ring = np.column_stack((c + r * np.column_stack((np.cos(turn), np.sin(turn))), np.full(9, -0.06)))
        ends += [(*ring[0, :2], 2.0), *map(tuple, ring), (*ring[-1, :2], 2.0)]
        kinds += [0] + [1] * 10
        feeds += [0, 60] + [feed] * 8 + [600]
    return make_moves(kinds, ends, feeds, np.zeros((len(kinds), 2)), np.zeros(len(kinds)))


def stepped(moves, step=2e-3):
    """Independent: speed profile on a fine grid along the path, corner limits at the vertices."""
    way = np.diff(moves.end, axis=0)
    length = np.sqrt((way**2).sum(axis=1))
    keep = length > 0
    unit, length = way[keep] / length[keep, None], length[keep]
    cap = np.where(moves.kind[1:][keep] == 0, 1e9, moves.feed[1:][keep] / 60)
    with np.errstate(divide="ignore"):
        cap = np.minimum(cap, (np.array(MOTION.max_rate) / 60 / np.abs(unit)).min(axis=1))
        accel = (np.array(MOTION.accel) / np.abs(unit)).min(axis=1)
    half = np.sqrt(np.clip((1 + (unit[:-1] * unit[1:]).sum(axis=1)) / 2, 0, 1))
    with np.errstate(divide="ignore"):
        corner = np.sqrt(np.minimum(accel[:-1], accel[1:]) * 0.01 * half / (1 - half))
    counts = np.maximum(2, np.ceil(length / step).astype(int))
    ds, a, v = (
        np.repeat(length / counts, counts),
        np.repeat(accel, counts),
        np.append(np.repeat(cap, counts), 0.0),
    )
    nodes = np.cumsum(counts)[:-1]
    v[0] = 0.0
    v[nodes] = np.minimum.reduce((v[nodes], v[nodes - 1], corner))
    speeds = v.tolist()
    for i in range(len(ds) - 1, -1, -1):
        speeds[i] = min(speeds[i], (speeds[i + 1] ** 2 + 2 * a[i] * ds[i]) ** 0.5)
    for i in range(len(ds)):
        speeds[i + 1] = min(speeds[i + 1], (speeds[i] ** 2 + 2 * a[i] * ds[i]) ** 0.5)
    s = np.array(speeds)
    return float((2 * ds / (s[:-1] + s[1:])).sum()), float((length / cap).sum())


if __name__ == "__main__":
    for feed in (300, 600, 1200):
        moves = grooves(60, feed)
        ours = float(move_times(moves, MOTION).sum())
        fine, simple = stepped(moves)
        print(
            f"feed {feed:5d}: model {ours:8.2f} s, fine simulation {fine:8.2f} s "
            f"({100 * (ours / fine - 1):+.2f} %), "
            f"length over feed {simple:8.2f} s ({100 * (simple / fine - 1):+.1f} %)"
        )
    many = grooves(20_000, 600)
    begin = time.perf_counter()
    move_times(many, MOTION)
    print(f"{len(many)} moves in {time.perf_counter() - begin:.2f} s")
