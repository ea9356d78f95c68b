"""How well the surface is known along the grooves, against usual interpolation on a grid.

    python tests/benchmarks/surface_accuracy.py [boards] [--seeds FIRST] [--touches 48 100 192]

The model was tuned on the seeds 0 to 47; figures that are quoted come from others.

References in the same run: least-squares quadratic, bilinear (scipy RegularGridInterpolator),
bicubic (RectBivariateSpline) and thin plate (RBFInterpolator) on a regular grid of equally many
touches of the same sheet with the same noise. The floor, on the boards that are Gaussian processes,
is the best linear prediction from our touches by one who knows the true covariance, tilt, bow and
edge: what is left is what so many touches cannot tell.
"""

from __future__ import annotations

import sys
import time
from argparse import ArgumentParser
from pathlib import Path

import numpy as np
from scipy.interpolate import RBFInterpolator, RectBivariateSpline, RegularGridInterpolator
from shapely import box

sys.path.insert(0, str(Path(__file__).parent))
from surface_truth import HEIGHT, WIDTH, Sheet, add_seeds, along, grooves, sheet

from drypoint.surface.model import fit_surface
from drypoint.surface.plan import plan_touches

REGION = box(1.0, 1.0, WIDTH - 1.0, HEIGHT - 1.0)
RIVALS = ("quadratic", "bilinear", "bicubic", "thin plate")
GRIDS = {48: (8, 6), 100: (10, 10), 192: (16, 12)}


def references(truth: Sheet, count: int, at: np.ndarray, seed: int) -> dict[str, np.ndarray]:
    columns, rows = GRIDS[count]
    x = np.linspace(2.0, WIDTH - 2.0, columns)
    y = np.linspace(2.0, HEIGHT - 2.0, rows)
    places = np.stack(np.meshgrid(x, y, indexing="ij"), -1).reshape(-1, 2)
    z = truth.touch(places, seed)[:, 2]
    grid = z.reshape(columns, rows)
    inside = np.clip(at, (2.0, 2.0), (WIDTH - 2.0, HEIGHT - 2.0))

    def terms(p: np.ndarray) -> np.ndarray:
        u, v = p.T / 50.0
        return np.column_stack((np.ones_like(u), u, v, u * u, u * v, v * v))

    fit = np.linalg.lstsq(terms(places), z, rcond=None)[0]
    return {
        "quadratic": terms(at) @ fit,
        "bilinear": RegularGridInterpolator((x, y), grid)(inside),
        "bicubic": RectBivariateSpline(x, y, grid).ev(*at.T),
        "thin plate": RBFInterpolator(places, z)(at),
    }


def floor(truth: Sheet, touches: np.ndarray, at: np.ndarray) -> np.ndarray:
    """The best prediction at ``at`` for a board whose covariance and base are known."""
    assert truth.covariance is not None
    places = touches[:, :2]
    own = truth.covariance(places, places) + truth.noise**2 * np.eye(len(places))
    weights = np.linalg.solve(own, touches[:, 2] - truth.base(places))
    return truth.base(at) + truth.covariance(at, places) @ weights


def measure(seeds: range, count: int, share: float) -> dict[str, float]:
    squares: dict[str, list[float]] = {}
    kinds: list[str] = []
    floors: list[float] = []
    inside, inside_bad, spread, seconds = [], [], [], []
    for seed in seeds:
        truth, lines = sheet(seed), grooves(seed, share)
        at = along(lines, 0.8)
        true = truth.height(at)
        rows = {k: v - true for k, v in references(truth, count, at, seed).items()}
        places = plan_touches(lines, REGION, count, seed=seed)
        for name, bad in (("ours", 0.0), ("ours, 5 % bad", 0.05)):
            start = time.process_time()
            surface = fit_surface(truth.touch(places, seed, bad), seed=seed)
            seconds.append(time.process_time() - start)
            mean, std = surface.predict(at).T
            rows[name] = mean - true
            hit = float(np.mean(np.abs(rows[name]) <= 1.6449 * std))
            (inside_bad if bad else inside).append(hit)
            if not bad:
                spread.append(float(np.mean(std**2)))
        kinds.append(truth.kind)
        if truth.covariance is not None:
            floors.append(float(np.mean((floor(truth, truth.touch(places, seed), at) - true) ** 2)))
        for k, v in rows.items():
            squares.setdefault(k, []).append(float(np.mean(v**2)))
    rms = {k: 1e3 * float(np.sqrt(np.mean(v))) for k, v in squares.items()}
    best = min(RIVALS, key=lambda k: rms[k])
    odd = [h for k, h in zip(kinds, inside, strict=True) if k != "process"]
    even = [h for k, h in zip(kinds, inside, strict=True) if k == "process"]

    def ratio(*wanted: str) -> float:
        ours, theirs = (
            [v for v, k in zip(squares[name], kinds, strict=True) if k in wanted] for name in ("ours", best)
        )
        return float(np.sqrt(np.mean(ours) / np.mean(theirs)))

    theirs = [v for v, k in zip(squares[best], kinds, strict=True) if k == "process"]
    return rms | {
        "ours ÷ best": rms["ours"] / rms[best],
        "· process": ratio("process"),
        "·   its floor": float(np.sqrt(np.mean(floors) / np.mean(theirs))),
        "· sinusoids": ratio("sinusoids"),
        "· dents": ratio("dents"),
        "· landscape": ratio("landscape"),
        "· no sinusoids": ratio("process", "dents", "landscape"),
        "bad ÷ clean": rms["ours, 5 % bad"] / rms["ours"],
        "stated rms": 1e3 * float(np.sqrt(np.mean(spread))),
        "90 % holds": 100.0 * float(np.mean(inside)),
        "· in family": 100.0 * float(np.mean(even)),
        "· outside": 100.0 * float(np.mean(odd)),
        "· 5 % bad": 100.0 * float(np.mean(inside_bad)),
        "fit s": float(np.median(seconds)),
    }


def main() -> None:
    parser = add_seeds(ArgumentParser(description=__doc__))
    parser.add_argument("--touches", type=int, nargs="+", choices=GRIDS, default=list(GRIDS))
    asked = parser.parse_args()
    boards, seeds = asked.boards, range(asked.seeds, asked.seeds + asked.boards)
    columns = [(c, s) for s in (1.0, 1.0 / 3.0) for c in asked.touches]
    results = [measure(seeds, c, s) for c, s in columns]
    print(f"{boards} boards from seed {seeds[0]}, {WIDTH:.0f} × {HEIGHT:.0f} mm; RMS along the grooves in µm")
    heads = [f"{c}, {'all' if s == 1 else 'third'}" for c, s in columns]
    print(" " * 15 + "".join(f"{head:>12s}" for head in heads))
    for name in results[0]:
        print(f"{name:15s}" + "".join(f"{r[name]:12.3f}" for r in results))


if __name__ == "__main__":
    main()
