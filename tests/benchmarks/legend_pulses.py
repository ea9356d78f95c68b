"""The demo board's whole legend on the bench, pulse by pulse: place, pads, time with the beam on.

The bench's axes have play of 0.02 mm; the board lies askew and face down, and its place comes from a
fit to three holes that were found with 20 µm noise. Errors are against the fit (what the program can
answer for) and against the truth (fit included).
"""

from __future__ import annotations

import sys
import time
from pathlib import Path

import numpy as np
import shapely
from scipy.spatial import cKDTree

from drypoint.bench.bench import SMALL_ENGRAVER, Bench, BenchSetup
from drypoint.board.load import load_board
from drypoint.board.model import Side
from drypoint.cuts.legend import LegendStyle, keep_free, plan_legend
from drypoint.geometry.rigid import Rigid
from drypoint.machine.controller import Controller
from drypoint.machine.state import Clip
from drypoint.program.laser import LaserSettings, pulse_program
from drypoint.program.settings import Motion
from drypoint.reference.fit import fit_rigid

TRUTH = Rigid(0.013, (112.0, 21.0), True)
SET = LaserSettings(power=0.4, dwell=0.012, settle=0.02)


def main() -> None:
    """Print the figures."""
    out = sys.stdout.write
    board = load_board([Path(__file__).parents[2] / "examples" / "hive-scale"], side=Side.BOTTOM)
    style = LegendStyle()
    began = time.perf_counter()
    free = keep_free(board, style)
    legend = plan_legend(board.legend, style, free=free, inside=board.outline)
    out(f"planned {legend.count} pulses in {time.perf_counter() - began:.1f} s, cover {legend.covered:.3f}, ")
    out(f"spilled {legend.spilled:.4f}, kept free {legend.kept_free:.4f}\n")
    rng = np.random.default_rng(1)
    holes = np.array([(hole.x, hole.y) for hole in board.holes])
    used = holes[[0, len(holes) // 2, len(holes) - 1]]
    fit = fit_rigid(used, TRUTH.apply(used) + rng.normal(0, 0.02, used.shape), mirror=True, sigma=0.02)
    motion = Motion((1000.0, 1000.0, 600.0), (60.0, 60.0, 40.0))
    program = pulse_program(legend.rows, fit, SET, motion=motion)
    bench = Bench(1, BenchSetup(width=120.0, height=80.0, settings=SMALL_ENGRAVER | {30: 1000, 32: 1}))
    controller = Controller(bench.link)
    controller.connect()
    controller.clip = Clip.OFF
    began, start = time.perf_counter(), controller.now()
    controller.stream(program.lines)
    took = controller.now() - start
    out(f"ran {took / 60:.1f} simulated minutes (expected {program.seconds / 60:.1f}) in ")
    out(f"{time.perf_counter() - began:.0f} s\n")
    spots = bench.burn.spots
    marks = np.vstack(legend.rows)
    to_sheet = bench.sheet.to_sheet
    shift = np.array(bench.body.offset()[:2])
    for name, placing in (("the fit", fit), ("the truth", TRUTH)):
        away = np.hypot(*(spots[:, :2] - to_sheet(placing.apply(marks) + shift)).T)
        out(f"against {name}: worst {away.max():.4f} mm, 95 % {np.quantile(away, 0.95):.4f} mm\n")
    on_sheet = shapely.transform(free, lambda p: to_sheet(TRUTH.apply(p) + shift))
    distance = shapely.distance(shapely.points(spots[:, :2]), on_sheet)
    out(f"pulses {len(spots)}, on pads {(distance <= 0).sum()}, nearest {distance.min():.3f} mm from one\n")
    out(f"beam on {spots[:, 2].sum():.3f} s, planned {program.beam_seconds:.3f} s, ")
    out(f"ratio {spots[:, 2].sum() / program.beam_seconds:.5f}; ")
    burnt = spots[:, :2]
    drawn = shapely.difference(board.legend, shapely.buffer(free, style.clear))
    wanted = shapely.transform(drawn, lambda p: to_sheet(fit.apply(p) + shift))
    x0, y0, x1, y1 = wanted.bounds
    shapely.prepare(wanted)
    probes = rng.uniform((x0, y0), (x1, y1), (400_000, 2))
    probes = probes[shapely.contains_xy(wanted, probes)]
    away, _ = cKDTree(burnt).query(probes)
    out(f"ink covered by what was burnt {(away <= style.spot / 2).mean():.3f} ({len(probes)} probes)\n")
    out(f"lit while moving {len(bench.burn.strokes)} pieces\n")


if __name__ == "__main__":
    main()
