"""One digit of one line changed on the way: the fault that the protocol cannot see, for it has no checksum.

    python tests/benchmarks/changed_digits.py [RUNS]

The bench, program and comparison of fault_runs.py. A line with a wrong number is answered like any other
and carried out; only the reported place tells. So the question is how far the bit gets before it is
stopped, and whether the rest is right after the resume. Changes of a few hundredths of a millimetre are
not told from the path and need not be.
"""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path

import fault_runs
import numpy as np

from drypoint.errors import MachineError


def one(seed: int) -> tuple[fault_runs.Outcome, str]:
    """One run, and what was changed."""
    rng = np.random.default_rng((seed, 0xD161))
    scene = fault_runs.Scene(seed % fault_runs.BENCHES)
    scene.hands(seed)
    found = fault_runs.Outcome(1, "changed digit")
    left = int(rng.integers(1, len(fault_runs.program(scene.by_hand).lines)))
    changed: list[str] = []

    def arrives(piece: bytes) -> bytes:
        nonlocal left
        left -= 1
        digits = [index for index, value in enumerate(piece) if 48 <= value < 58]
        if left > 0 or changed or not digits or piece[:1] == b"$":
            return piece
        at = digits[int(rng.integers(len(digits)))]
        new = 48 + (piece[at] - 48 + int(rng.integers(1, 10))) % 10
        spoilt = piece[:at] + bytes([new]) + piece[at + 1 :]
        changed.append(f"{piece.decode().strip()} -> {spoilt.decode().strip()}")
        return spoilt

    with tempfile.TemporaryDirectory() as folder, fault_runs.Kept(Path(folder), scene) as kept:
        scene.bench.controller.on_text = arrives
        try:
            fault_runs.run_program(scene.place, kept.program, kept.journal(), check_first=False)
        except MachineError as error:
            found.noticed, found.by = True, type(error).__name__
        scene.bench.controller.on_text = None
        if found.noticed:
            fault_runs.take_up(scene, kept, found)
    fault_runs.compare(scene, found)
    return found, changed[0] if changed else ""


def main() -> None:
    """Print a table."""
    runs = int(sys.argv[1]) if len(sys.argv) > 1 else 100
    outcomes = [one(seed) for seed in range(runs)]
    noticed = [found for found, _ in outcomes if found.noticed]
    quiet = [found for found, _ in outcomes if not found.noticed]
    head = f"{'':<14}{'runs':>6}{'resumed':>9}{'copper':>8}{'most astray mm':>16}"
    print(f"{head}{'most deeper mm':>16}{'mishaps':>9}")
    for name, some in (("noticed", noticed), ("not noticed", quiet)):
        if some:
            print(
                f"{name:<14}{len(some):>6}{sum(o.resumed for o in some):>9}{sum(o.copper for o in some):>8}"
                f"{max(o.astray for o in some):>16.2f}{max(o.deeper for o in some):>16.3f}"
                f"{sum(bool(o.mishaps) for o in some):>9}"
            )
    for found, what in outcomes:
        if found.mishaps or found.skipped or (not found.noticed and not found.copper):
            print(what, found)


if __name__ == "__main__":
    main()
