"""Full figures of the fit: agreement with a reference library, coverage, gross errors, advice.

Run by hand: python tests/benchmarks/reference_fit.py
"""

import time

import numpy as np
from scipy.stats import beta
from skimage.transform import EuclideanTransform

from drypoint.geometry.rigid import Rigid
from drypoint.reference.fit import fit_rigid
from drypoint.reference.gross import Verdict, check
from drypoint.reference.worth import choose_holes, next_hole

HOLES = np.array([(4.0, 4.0), (96.0, 5.0), (50.0, 75.0), (5.0, 70.0)])
CORNERS = np.array([(0.0, 0.0), (100.0, 0.0), (100.0, 80.0), (0.0, 80.0)])
CHI2_95 = 5.991464547107979


def interval(hits, trials):
    """95 % Clopper-Pearson interval in percent."""
    low, high = beta.ppf(0.025, hits, trials - hits + 1), beta.ppf(0.975, hits + 1, trials - hits)
    return f"{100 * hits / trials:5.2f} % ({100 * low:.2f} to {100 * high:.2f})"


def agreement():
    rng = np.random.default_rng(0)
    worst, ours, theirs = 0.0, 0.0, 0.0
    for _ in range(2000):
        count = rng.integers(2, 12)
        design = rng.uniform(-100, 100, (count, 2))
        touched = Rigid(rng.uniform(-3, 3), tuple(rng.uniform(-80, 80, 2))).apply(design)
        touched = touched + rng.normal(0, rng.choice([0.02, 1, 20]), design.shape)
        begin = time.perf_counter()
        fit = fit_rigid(design, touched)
        middle = time.perf_counter()
        reference = EuclideanTransform.from_estimate(design, touched)
        theirs += time.perf_counter() - middle
        ours += middle - begin
        worst = max(worst, np.abs(fit.apply(design) - reference(design)).max())
    print(f"2000 random cases against scikit-image: {worst:.1e} mm; time {ours / theirs:.2f} x its")


def simulate(rng, count, sigma, wander, turn):
    truth = Rigid(turn, tuple(rng.uniform(-10, 10, 2)))
    places = HOLES[:count] + rng.normal(0, wander, (count, 2))
    touched = truth.apply(places) + rng.normal(0, sigma, (count, 2))
    return truth, fit_rigid(HOLES[:count], touched, sigma=sigma, hole_sigma=wander)


def coverage(trials=20_000):
    print("\n95 % ellipses, 20 µm touch noise and 50 µm wander, one random spot each")
    rng = np.random.default_rng(1)
    for count in (2, 3, 4):
        hits, errors = 0, []
        for _ in range(trials):
            truth, fit = simulate(rng, count, 0.02, 0.05, rng.uniform(-0.17, 0.17) + np.pi * rng.integers(2))
            spot = rng.uniform((0, 0), (100, 80), (1, 2))
            error = (fit.apply(spot) - truth.apply(spot))[0]
            hits += error @ np.linalg.solve(fit.covariance_at(spot)[0], error) <= CHI2_95
            errors.append(np.hypot(*(fit.apply(HOLES) - truth.apply(HOLES)).T))
        p95 = np.percentile(np.array(errors), 95, axis=0)
        shown = ", ".join(f"{1000 * v:.0f}" for v in p95)
        print(f"  {count} holes: inside {interval(hits, trials)}; error at the four holes, 95 %: {shown} µm")


def gross(trials=5000):
    print("\none hole 0.2 mm off, 20 µm noise")
    rng = np.random.default_rng(2)
    for count in (2, 3, 4):
        seen = named = sure = accused = alarms = 0
        for _ in range(trials):
            touched = HOLES[:count] + rng.normal(0, 0.02, (count, 2))
            alarms += check(fit_rigid(HOLES[:count], touched, sigma=0.02)).verdict is not Verdict.FITS
            bad, angle = int(rng.integers(count)), rng.uniform(0, 2 * np.pi)
            touched[bad] += 0.2 * np.array([np.cos(angle), np.sin(angle)])
            found = check(fit_rigid(HOLES[:count], touched, sigma=0.02))
            seen += found.verdict is not Verdict.FITS
            named += found.holes[:1] == (bad,)
            sure += found.verdict is Verdict.WRONG and found.holes == (bad,)
            accused += found.verdict is Verdict.WRONG and found.holes != (bad,)
        print(
            f"  {count} holes: seen {interval(seen, trials)}, named first {interval(named, trials)}, "
            f"for certain {100 * sure / trials:.1f} %, "
            f"a right one accused {interval(accused, trials)}, "
            f"false alarms {interval(alarms, trials)}"
        )


def advice():
    rng = np.random.default_rng(3)
    places = rng.uniform((0, 0), (100, 80), (300, 2))
    begin = time.perf_counter()
    chosen = choose_holes(places, places, 3)
    middle = time.perf_counter()
    fit = fit_rigid(places[list(chosen[:2])], places[list(chosen[:2])])
    best = next_hole(fit, places, places)[0]
    done = time.perf_counter()
    print(
        f"\n300 holes: choosing three {middle - begin:.2f} s; the next one {done - middle:.2f} s, "
        f"worst error {1000 * best.now:.0f} -> {1000 * best.then:.0f} µm"
    )


if __name__ == "__main__":
    agreement()
    coverage()
    gross()
    advice()
