"""Sheets of copper whose height is known everywhere, for measuring the surface and the passes.

Written apart from the product: half of the sheets are Gaussian processes like the model's, half
are not (sinusoids, dents, a real landscape). Seeded. Lengths in mm.

    tilt up to 2 mm/m, bow up to 0.3 mm over the board, one springing edge,
    ripples: standard deviation 5 to 20 µm (10 to 40 µm from mean to crest), 4 to 12 mm long
"""

from __future__ import annotations

from argparse import ArgumentParser
from collections.abc import Callable
from dataclasses import dataclass
from importlib.util import find_spec
from pathlib import Path

import numpy as np
from scipy.ndimage import gaussian_filter, map_coordinates

WIDTH, HEIGHT = 100.0, 80.0
TUNED = 0
"""Boards with the seeds 0 to 47 were looked at while the product was tuned."""
KINDS = ("process", "sinusoids", "process", "dents", "process", "landscape")


@dataclass(frozen=True, eq=False)
class Sheet:
    """One sheet: its kind, its height (a function of (N, 2) places) and its touch noise.

    ``base`` is the height without ripple; ``covariance`` that of the ripple where it is a process.
    """

    kind: str
    height: Callable[[np.ndarray], np.ndarray]
    noise: float
    base: Callable[[np.ndarray], np.ndarray]
    covariance: Callable[[np.ndarray, np.ndarray], np.ndarray] | None = None

    def touch(self, places: np.ndarray, seed: int, bad: float = 0.0) -> np.ndarray:
        """(N, 3) touches; a share ``bad`` of them is wrong by 40 to 200 µm, mostly too high."""
        rng = np.random.default_rng([seed, 77])
        z = self.height(places) + self.noise * rng.standard_normal(len(places))
        count = round(bad * len(places))
        wrong = rng.choice(len(places), count, replace=False)
        sign = np.where(rng.random(count) < 0.75, 1.0, -1.0)
        z[wrong] += sign * rng.uniform(0.04, 0.2, count)
        return np.column_stack((places, z))


def sheet(seed: int) -> Sheet:
    """The sheet of a seed; its kind goes round, every second one lies outside the model's family."""
    rng = np.random.default_rng([seed, 1])
    kind = KINDS[seed % len(KINDS)]
    base = _base(rng)
    size = rng.uniform(0.005, 0.020)
    wave = rng.uniform(4.0, 12.0)
    make = {"process": _process, "sinusoids": _sinusoids, "dents": _dents, "landscape": _landscape}
    stretch = np.array([1.0, rng.uniform(0.7, 1.4)]) if kind == "process" else np.ones(2)
    ripple = make[kind](rng, size, wave * stretch if kind == "process" else wave)
    noise = float(rng.uniform(0.002, 0.005))
    known = _covariance(size, 0.29 * wave * stretch) if kind == "process" else None
    return Sheet(kind, lambda p: base(p) + ripple(p), noise, base, known)


def add_seeds(parser: ArgumentParser) -> ArgumentParser:
    """Adds ``boards`` and ``--seeds`` to a benchmark's arguments."""
    parser.add_argument("boards", nargs="?", type=int, default=24)
    parser.add_argument(
        "--seeds", type=int, default=TUNED, help="first seed; 0 to 47 served for tuning, quote others"
    )
    return parser


def grooves(seed: int, share: float = 1.0) -> list[np.ndarray]:
    """Closed groove lines round pads and short traces, on ``share`` of the board's area."""
    rng = np.random.default_rng([seed, 2])
    if share >= 1.0:
        boxes = [(0.0, 0.0, WIDTH, HEIGHT)]
    else:  # parts of the board that together cover the share
        side = np.sqrt(share / 3.0)
        w, h = WIDTH * side, HEIGHT * side
        columns = rng.permutation(3)
        boxes = []
        for k in range(3):
            x = (columns[k] + rng.random() * (1.0 - 3.0 * side) / 3.0) * WIDTH / 3.0
            x = min(x, WIDTH - w)
            y = rng.uniform(0.0, HEIGHT - h)
            boxes.append((x, y, x + w, y + h))
    lines = []
    for x0, y0, x1, y1 in boxes:
        for cx in np.arange(x0 + 3.0, x1 - 2.0, 6.5):
            for cy in np.arange(y0 + 2.5, y1 - 1.5, 4.2):
                if rng.random() < 0.75:
                    lines.append(_loop(rng, cx, cy))
    return lines


def _loop(rng: np.random.Generator, cx: float, cy: float) -> np.ndarray:
    a, b = rng.uniform(1.2, 2.9), rng.uniform(0.7, 1.7)
    angle = np.linspace(0.0, 2.0 * np.pi, 25)
    turned = np.column_stack((a * np.cos(angle), b * np.sin(angle)))
    line = turned + np.array((cx + rng.uniform(-0.2, 0.2), cy + rng.uniform(-0.2, 0.2)))
    line[-1] = line[0]
    return line


def along(lines: list[np.ndarray], pitch: float = 0.3) -> np.ndarray:
    """(N, 2) evenly laid points of the grooves."""
    parts = []
    for line in lines:
        s = np.concatenate(([0.0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))))
        at = np.arange(0.0, s[-1], pitch)
        parts.append(np.column_stack([np.interp(at, s, line[:, k]) for k in (0, 1)]))
    return np.vstack(parts)


def _base(rng: np.random.Generator) -> Callable[[np.ndarray], np.ndarray]:
    tilt = rng.uniform(-0.002, 0.002, 2)
    bow = rng.uniform(-0.3, 0.3, 3) * (1.0, 0.5, 1.0)
    edge, lift, length = rng.integers(4), rng.uniform(0.0, 0.15), rng.uniform(6.0, 20.0)

    def height(p: np.ndarray) -> np.ndarray:
        u, v = p[:, 0] / WIDTH - 0.5, p[:, 1] / HEIGHT - 0.5
        gap = (p[:, 0], WIDTH - p[:, 0], p[:, 1], HEIGHT - p[:, 1])[edge]
        along_edge = (v, v, u, u)[edge]
        spring = lift * np.exp(-((gap / length) ** 2)) * np.cos(np.pi * along_edge)
        return p @ tilt + bow[0] * u * u + bow[1] * u * v + bow[2] * v * v + spring

    return height


def _covariance(size: float, scale: np.ndarray) -> Callable[[np.ndarray, np.ndarray], np.ndarray]:
    def between(a: np.ndarray, b: np.ndarray) -> np.ndarray:
        far = np.sqrt(5.0 * (((a[:, None] - b[None]) / scale) ** 2).sum(axis=-1))
        return size**2 * (1.0 + far + far * far / 3.0) * np.exp(-far)

    return between


def _process(rng: np.random.Generator, size: float, wave: np.ndarray) -> Callable[[np.ndarray], np.ndarray]:
    """A Matérn-5/2 process by 1500 random waves, as steep on average as a wave of that length.

    Mean square slope along an axis: 5/(3 l²) for the process, (2π/λ)²/2 for a wave of wavelength
    λ in a random direction, both per variance; so l = 0.29 λ.
    """
    count = 1500
    scale = 0.29 * wave
    k = rng.standard_normal((count, 2)) * np.sqrt(5.0 / rng.chisquare(5.0, count))[:, None] / scale
    phase = rng.uniform(0.0, 2.0 * np.pi, count)
    gain = size * np.sqrt(2.0 / count)
    return lambda p: (
        gain * np.cos(p @ k.T + phase).sum(axis=1)
        if len(p) < 4000
        else np.concatenate(
            [gain * np.cos(q @ k.T + phase).sum(axis=1) for q in np.array_split(p, len(p) // 2000 + 1)]
        )
    )


def _sinusoids(rng: np.random.Generator, size: float, wave: float) -> Callable[[np.ndarray], np.ndarray]:
    count = int(rng.integers(2, 6))
    angle = rng.uniform(0.0, np.pi, count)
    length = np.clip(wave * rng.uniform(0.6, 1.6, count), 4.0, 12.0)
    k = 2.0 * np.pi / length[:, None] * np.column_stack((np.cos(angle), np.sin(angle)))
    phase = rng.uniform(0.0, 2.0 * np.pi, count)
    gain = size * np.sqrt(2.0 / count)
    return lambda p: gain * np.cos(p @ k.T + phase).sum(axis=1)


def _dents(rng: np.random.Generator, size: float, wave: float) -> Callable[[np.ndarray], np.ndarray]:
    fine = _sinusoids(rng, 0.5 * size, wave)
    count = 30
    centre = rng.random((count, 2)) * (WIDTH, HEIGHT)
    depth = rng.uniform(0.5, 2.5, count) * size * np.where(rng.random(count) < 0.7, -1.0, 1.0)
    radius = rng.uniform(1.5, 5.0, count)

    def height(p: np.ndarray) -> np.ndarray:
        total = fine(p)
        for c, d, r in zip(centre, depth, radius, strict=True):
            total = total + d * np.exp(-(((p - c) ** 2).sum(axis=1)) / (r * r))
        return total

    return height


def _landscape(rng: np.random.Generator, size: float, wave: float) -> Callable[[np.ndarray], np.ndarray]:
    """A real landscape without its long waves; the one of matplotlib's sample data if installed."""
    spec = find_spec("matplotlib")
    place = Path(str(spec.origin)).parent / "mpl-data/sample_data" if spec else None
    file = place / "jacksboro_fault_dem.npz" if place else None
    if file is None or not file.exists():
        return _sinusoids(rng, size, wave)
    land = np.load(file)["elevation"].astype(float)
    pixels = wave / 12.0  # pixels per mm, so that ridges lie about a ripple apart
    ripple = gaussian_filter(land, 0.7) - gaussian_filter(land, 8.0)
    ripple *= size / ripple.std()
    step = 1.0 / max(pixels, 1e-6) * 2.2
    step = min(step, (min(land.shape) - 4) / WIDTH)
    shift = rng.random(2) * (np.array(land.shape) - 3 - np.array([HEIGHT, WIDTH]) * step).clip(0)
    return lambda p: map_coordinates(ripple, (p[:, ::-1] * step + shift).T, order=3, mode="reflect")
