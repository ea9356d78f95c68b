"""Whether reach can be believed, and what selective passes save, on sheets with known heights.

    python tests/benchmarks/passes_economy.py [boards] [--seeds FIRST] [--draw]

The model was tuned on the seeds 0 to 47; figures that are quoted come from others.

Each board: 100 touches on its grooves, one pass planned per spot, then selective re-cuts until
every loop is whole. Play of Z 15 µm, changing along the path; bit of 30°, copper 35 µm. After a
pass each loop is asked once whether it is whole (an ideal answer per loop; a real touch proves
only separation from the copper that holds the clip), and what the answers teach of the depth is
used. References on the same board: a ladder over
the whole board (55 µm, then 30 µm deeper) on the bicubic surface of a 6 × 5 grid, and the least
uniform depth that isolates, found with hindsight, on our own surface.
No way of cutting can save more than one pass over everything would: that bound is printed beside.
With --draw resources/reliability.svg is written.
"""

from __future__ import annotations

import sys
from argparse import ArgumentParser
from dataclasses import dataclass, field
from itertools import pairwise
from pathlib import Path

import numpy as np
from scipy.interpolate import RectBivariateSpline
from shapely import box

sys.path.insert(0, str(Path(__file__).parent))
from surface_truth import HEIGHT, WIDTH, add_seeds, grooves, sheet

from drypoint.bits.model import Speeds, VBit
from drypoint.geometry.rigid import Rigid
from drypoint.passes.chance import through
from drypoint.passes.depth import plan_first_pass
from drypoint.passes.island_learning import update_from_islands
from drypoint.passes.isolation import IslandAnswer, after_answers
from drypoint.passes.learning import Belief
from drypoint.passes.model import Pass
from drypoint.passes.reach import reach_map
from drypoint.passes.recut import plan_recut
from drypoint.passes.spots import Spots, planned_depths
from drypoint.surface.model import Surface, fit_surface
from drypoint.surface.plan import plan_touches

COPPER, PLAY, DEEPEST, TARGET = 0.035, 0.015, 0.25, 0.999
BIT = VBit("V 30°", 0.1, np.radians(30.0), Speeds(10000, 300, 60))
SVG = Path(__file__).parents[2] / "resources" / "reliability.svg"
EDGES = np.array([0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98, 0.995, 1.0])


@dataclass
class Tally:
    rows: list[list[float]] = field(default_factory=list)
    said: list[np.ndarray] = field(default_factory=list)
    was: list[np.ndarray] = field(default_factory=list)


def lag(spots: Spots, seed: int) -> np.ndarray:
    """Play taken up at each spot: uniform 0..PLAY, changing over about 2 mm of path."""
    rng = np.random.default_rng([seed, 9])
    s = np.concatenate(([0.0], np.cumsum(np.hypot(*np.diff(spots.points, axis=0).T))))
    knots = np.arange(0.0, s[-1] + 4.0, 2.0)
    index = np.searchsorted(knots, s, side="right")
    return PLAY * rng.random(len(knots) + 2)[index]


def whole(lines: int, spots: Spots, cut: np.ndarray) -> np.ndarray:
    return np.array([part.all() for part in spots.split(cut)])


def isolate(
    seed: int, lines: list[np.ndarray], surface: Surface, spots: Spots, error: np.ndarray
) -> tuple[list[Pass], np.ndarray]:
    """Passes until every loop is whole (eight at most), and what is cut through."""
    fit, settings = Rigid(), {"copper": COPPER, "play": PLAY}
    passes = [plan_first_pass(lines, fit, surface, BIT, target=TARGET, deepest=DEEPEST, **settings)]
    cut = planned_depths(spots, passes)[0] + error - lag(spots, seed) > COPPER
    answers: list[IslandAnswer] = []
    while not whole(len(lines), spots, cut).all() and len(passes) < 8:
        ok = whole(len(lines), spots, cut)
        answers += [IslandAnswer((k,), bool(v), after=len(passes)) for k, v in enumerate(ok)]
        belief = update_from_islands(Belief(), answers, lines, passes, fit, surface, **settings)
        reach = reach_map(lines, passes, fit, surface, belief=belief, **settings)
        holding = [one for one in answers if one.isolated or one.after == len(passes)]
        reach = after_answers(reach, holding, surface.ripple_length)
        again = plan_recut(
            lines, reach, passes, fit, surface, BIT,
            target=0.9999, deepest=DEEPEST, below=0.97, belief=belief, **settings,
        )  # fmt: skip
        if again is None:  # nothing is doubted, yet some are joined: those are cut again whole
            joined = [k for k, v in enumerate(ok) if not v]
            again = plan_recut(
                lines, reach, passes, fit, surface, BIT,
                target=0.9999, deepest=DEEPEST, grooves=joined, below=0.0, belief=belief, **settings,
            )  # fmt: skip
        assert again is not None
        passes.append(again)
        cut |= planned_depths(spots, [again])[0] + error - lag(spots, seed + 50 * len(passes)) > COPPER
    return passes, cut


def board(seed: int, tally: Tally) -> None:
    truth, lines = sheet(seed), grooves(seed, 1.0 if seed % 4 < 2 else 1.0 / 3.0)
    places = plan_touches(lines, box(1, 1, WIDTH - 1, HEIGHT - 1), 100, seed=seed)
    surface = fit_surface(truth.touch(places, seed), seed=seed)
    spots = Spots.on(lines, 0.2)
    true = truth.height(spots.points)
    error = true - surface.mean(spots.points)  # where copper is higher the tip goes deeper
    sigma = surface.std(spots.points)
    total = float(spots.share().sum())

    rng = np.random.default_rng([seed, 5])
    for k in range(16):  # one depth all over each time, to see every probability
        margin = rng.uniform(-0.01, 0.06)
        tally.said.append(through(margin, sigma, PLAY)[::4])
        tally.was.append((margin + error - lag(spots, seed + 1000 + k) > 0.0)[::4])

    passes, cut = isolate(seed, lines, surface, spots, error)
    depths = planned_depths(spots, passes).max(axis=0)

    def width(depth: np.ndarray) -> float:
        return float(spots.share() @ (BIT.tip + BIT.slope * depth) / total)

    hindsight = float((COPPER - error + lag(spots, seed)).max())
    x, y = np.linspace(2, WIDTH - 2, 6), np.linspace(2, HEIGHT - 2, 5)
    grid = truth.touch(np.stack(np.meshgrid(x, y, indexing="ij"), -1).reshape(-1, 2), seed)[:, 2]
    coarse = true - RectBivariateSpline(x, y, grid.reshape(6, 5)).ev(*spots.points.T)
    ladder, rung, done = 0.055, 1, np.zeros(len(spots), dtype=bool)
    while True:
        done |= ladder + coarse - lag(spots, seed + 50 * rung) > COPPER
        if whole(len(lines), spots, done).all():
            break
        ladder, rung = ladder + 0.03, rung + 1
    length = sum(one.length for one in passes) / total
    tally.rows.append(
        [length, len(passes), float(whole(len(lines), spots, cut).all()), width(depths + error),
         width(np.full(len(spots), hindsight) + error), rung, width(np.full(len(spots), ladder) + coarse)]
    )  # fmt: skip


def reliability(tally: Tally) -> list[tuple[float, float, int]]:
    said, was = np.concatenate(tally.said), np.concatenate(tally.was)
    table = []
    edges = np.concatenate((np.linspace(0.0, 0.4, 5), EDGES))
    for low, high in pairwise(edges):
        inside = (said >= low) & (said < high if high < 1.0 else said <= 1.0)
        if inside.sum() > 200:
            table.append((float(said[inside].mean()), float(was[inside].mean()), int(inside.sum())))
    return table


def drawing(table: list[tuple[float, float, int]], boards: int) -> str:
    """The reliability diagram as SVG."""

    def at(p: float, q: float) -> str:
        return f"{60 + 300 * p:.1f},{330 - 300 * q:.1f}"

    ticks = "".join(
        f'<path d="M{60 + 300 * t:.0f} 330v5M60 {330 - 300 * t:.0f}h-5" stroke="#444"/>'
        f'<text x="{60 + 300 * t:.0f}" y="348" text-anchor="middle">{100 * t:.0f}</text>'
        f'<text x="50" y="{334 - 300 * t:.0f}" text-anchor="end">{100 * t:.0f}</text>'
        for t in (0.0, 0.25, 0.5, 0.75, 1.0)
    )
    line = " ".join(at(p, q) for p, q, _ in table)
    dots = "".join(
        f'<circle cx="{at(p, q).split(",")[0]}" cy="{at(p, q).split(",")[1]}" r="4" fill="#0072B2"/>'
        for p, q, _ in table
    )
    return (
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 390" width="400" height="390" '
        'font-family="sans-serif" font-size="12" fill="#222">'
        "<title>Reliability of the reach map</title>"
        '<rect width="400" height="390" fill="#fff"/>'
        '<rect x="60" y="30" width="300" height="300" fill="none" stroke="#444"/>'
        f'<path d="M60 330L360 30" stroke="#999" stroke-dasharray="4 4"/>{ticks}'
        f'<polyline points="{line}" fill="none" stroke="#0072B2" stroke-width="2"/>{dots}'
        '<text x="210" y="372" text-anchor="middle">predicted to be through, %</text>'
        '<text x="16" y="180" text-anchor="middle" transform="rotate(-90 16 180)">'
        "was through, %</text>"
        f'<text x="60" y="20">{boards} simulated boards, 100 touches each</text></svg>\n'
    )


def main() -> None:
    parser = add_seeds(ArgumentParser(description=__doc__))
    parser.add_argument("--draw", action="store_true", help="write the reliability diagram")
    asked = parser.parse_args()
    boards, tally = asked.boards, Tally()
    for seed in range(asked.seeds, asked.seeds + boards):
        board(seed, tally)
    table = reliability(tally)
    print(f"{'predicted %':>12s}{'actual %':>10s}{'gap':>7s}{'spots':>9s}")
    for said, was, count in table:
        print(f"{100 * said:12.2f}{100 * was:10.2f}{100 * (was - said):7.2f}{count:9d}")
    total = sum(n for *_, n in table)
    sure = [(p, q, n) for p, q, n in table if p > 0.995]
    print("uncut where reach is over 99.5 %: "
          f"{100 * (1 - sum(q * n for _, q, n in sure) / sum(n for *_, n in sure)):.2f} %; largest gap "
          f"{100 * max(abs(p - q) for p, q, _ in table):.2f} points")  # fmt: skip
    print(f"mean gap {100 * sum(abs(p - q) * n for p, q, n in table) / total:.2f} points")
    rows = np.array(tally.rows)
    mean = rows.mean(axis=0)
    print(f"whole at the end {100 * mean[2]:.0f} %; after one pass {100 * np.mean(rows[:, 1] == 1):.0f} %")
    print(f"cut length ÷ groove length {mean[0]:.3f} (largest {rows[:, 0].max():.2f}); ladder {mean[5]:.2f}; "
          f"saved {100 * (1 - mean[0] / mean[5]):.1f} %, "
          f"at most {100 * (1 - 1 / mean[5]):.1f} %")  # fmt: skip
    print(f"boards over 1.2 × the groove length {int((rows[:, 0] > 1.2).sum())} of {boards}")
    print(f"mean width mm: ours {mean[3]:.4f}, uniform with hindsight {mean[4]:.4f}, ladder {mean[6]:.4f}")
    print(f"boards no wider than hindsight {100 * np.mean(rows[:, 3] <= rows[:, 4]):.0f} %")
    if asked.draw:
        SVG.write_text(drawing(table, boards), encoding="utf-8")


if __name__ == "__main__":
    main()
