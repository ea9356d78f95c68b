"""Second side of the demo board: hole-to-pad error over 100 set-ups, against its prediction.

Every set-up: the holes of the first side have wandered by 50 µm (standard deviation per axis), the
blank is turned over about either axis and laid down askew, three holes are touched with 20 µm noise.
The prediction is made from the fit alone. `two_sides_on_bench.py` runs set-ups on the bench instead.
"""

from __future__ import annotations

import math
import sys
from pathlib import Path

import numpy as np

from drypoint.board.load import load_board
from drypoint.board.model import Side
from drypoint.geometry.rigid import Rigid
from drypoint.reference.fit import fit_rigid
from drypoint.reference.registration import across, registration, turned
from drypoint.reference.worth import choose_holes

TOUCH, WANDER, SETUPS = 0.02, 0.05, 100
MARGIN = 8.0


def main() -> None:
    """Print the table."""
    folder = Path(__file__).parents[2] / "examples" / "hive-scale"
    first, second = (load_board([folder], side=side) for side in (Side.BOTTOM, Side.TOP))
    places = np.array([(hole.x, hole.y) for hole in second.holes])
    on_first = across(first.width).apply(places)
    out = sys.stdout.write
    out(
        f"demo board, {len(places)} holes, {SETUPS} set-ups, per axis: touch {TOUCH} mm, wander {WANDER} mm\n"
    )
    out("holes  predicted 95 %  measured 95 %  measured/predicted rms  under 0.15 mm  predicted\n")
    for count in (2, 3, 4, 6):
        used = list(choose_holes(places, places, count, sigma=TOUCH, hole_sigma=WANDER))
        sizes, told95, told_rms, told_in = [], [], [], []
        for seed in range(SETUPS):
            rng = np.random.default_rng(seed)
            axis = "xy"[seed % 2]
            before = Rigid(rng.normal(0, 0.01), (MARGIN, MARGIN))
            askew = Rigid(rng.normal(0, 0.02), tuple(rng.normal(0, 1.0, 2)))
            size = (first.width + 2 * MARGIN, first.height + 2 * MARGIN)
            motion = before.then(turned(*size, axis)).then(askew)
            real = motion.apply(on_first + rng.normal(0, WANDER, places.shape))
            touched = real[used] + rng.normal(0, TOUCH, (count, 2))
            fit = fit_rigid(places[used], touched, sigma=TOUCH, hole_sigma=WANDER)
            error = real - fit.apply(places)
            told = registration(fit, places, touch=TOUCH, wander=WANDER)
            sizes.append(np.hypot(error[:, 0], error[:, 1]))
            told95.append(told.overall(0.95))
            told_rms.append(math.sqrt(float((told.rms**2).mean())))
            told_in.append(float(told.within(0.15).mean()))
        size_all = np.concatenate(sizes)
        rms = math.sqrt(float((size_all**2).mean()))
        out(
            f"{count:5d}  {np.mean(told95):11.4f} mm  {np.quantile(size_all, 0.95):10.4f} mm  "
            f"{rms / np.mean(told_rms):22.3f}  {(size_all < 0.15).mean():13.3f}  {np.mean(told_in):9.3f}\n"
        )


if __name__ == "__main__":
    main()
