"""Grooves and island check on boards outside the project, with bits that fit and bits that do not.

Boards are read from the folder in DRYPOINT_CORPUS, or from a folder `shared/boards` beside the
checkout. The bits: ``fit`` cuts 0.98 of the smallest gap, ``bite`` 1.3 of it and may bite what it
must, ``wide`` 1.5 and may bite half of that. ``of_the_design`` counts shorts and opens of nets which
touch others in the design. ``listed``: every place called impossible lies in a short, and every short
between places called so.

All boards take a quarter of an hour or more: ``--into FILE`` adds every row to a file as soon as it is
known, and leaves out what stands there already; names of boards after it choose some. ``--tiles 20``
checks with one size of tiles only.
"""

import argparse
import os
import time
from pathlib import Path

import shapely

from drypoint.board.load import load_board
from drypoint.board.model import Side
from drypoint.cuts.grooves import plan_grooves
from drypoint.cuts.islands import check
from drypoint.cuts.parts import copper_parts, foreign_pairs
from drypoint.errors import DrypointError

TILES = (7.0, 10.0, 20.0)


def groups(pairs):
    """Names that hang together by pairs."""
    found = []
    for pair in pairs:
        met = [group for group in found if group & set(pair)]
        found = [group for group in found if group not in met]
        found.append(set(pair).union(*met))
    return {frozenset(group) for group in found}


class Rows:
    """Rows printed, and kept in a file if one is given."""

    def __init__(self, path: Path | None) -> None:
        self._path = path
        done = path.read_text().splitlines() if path is not None and path.exists() else []
        self._done = {tuple(row.split()[:3]) for row in done}

    def has(self, *start: str) -> bool:
        """Whether a row that starts like this is known."""
        return any(row[: len(start)] == start for row in self._done)

    def add(self, *words: object) -> None:
        """One row more."""
        row = " ".join(str(word) for word in words)
        print(row, flush=True)
        if self._path is not None:
            with self._path.open("a") as file:
                file.write(row + "\n")


def main() -> None:
    """One row per board, side and bit."""
    given = argparse.ArgumentParser(description=__doc__)
    given.add_argument("boards", nargs="*")
    given.add_argument("--into", type=Path)
    given.add_argument("--tiles", type=float, nargs="+", default=TILES)
    asked = given.parse_args()
    beside = Path(__file__).resolve().parents[3] / "shared" / "boards"
    folder = Path(os.environ.get("DRYPOINT_CORPUS", beside))
    chosen = asked.boards or sorted(path.name for path in folder.iterdir())
    table = Rows(asked.into)
    print(
        "board side bit nets gap_mm width_mm shorts of_the_design opens of_the_design lost impossible listed "
        "over_theory_um tiles_agree s"
    )
    for name in chosen:
        for side in Side:
            if table.has(name, side.value, "wide") or table.has(name, side.value, "-"):
                continue
            try:
                nets = dict(load_board([folder / name], side=side).nets)
            except DrypointError as error:
                table.add(name, side.value, "-", "not read:", error.what)
                continue
            if len(nets) < 2:
                table.add(name, side.value, "-", "no nets")
                continue
            rows(table, name, side.value, nets, asked.tiles)


def rows(table, name, side, nets, tiles) -> None:
    """The rows of one board."""
    parts = copper_parts(nets)
    pairs = foreign_pairs(parts, 1.0)
    apart = shapely.distance(parts.shapes[pairs[:, 0]], parts.shapes[pairs[:, 1]])
    gap = float(apart[apart > 1e-3].min(initial=1.0))
    touching = {frozenset(parts.names[k] for k in parts.owner[pair]) for pair in pairs[apart <= 1e-3]}
    for word, width, bite in (
        ("fit", 0.98 * gap, 0.0),
        ("bite", 1.3 * gap, gap / 5),
        ("wide", 1.5 * gap, gap / 8),
    ):
        if table.has(name, side, word):
            continue
        start = time.perf_counter()
        plan = plan_grooves(nets, width, bite=bite)
        checks = [check(nets, plan.lines, width, tile=tile) for tile in tiles]
        seconds = time.perf_counter() - start
        shorts = [frozenset(flaw.nets) for flaw in checks[0].shorts]
        named = [frozenset(place.nets) for place in plan.impossible]
        listed = all(any(one <= short for short in shorts) for one in named)
        listed &= all(any(short <= group for group in groups(named)) for short in shorts)
        agree = (
            len({(frozenset(f.nets for f in one.shorts), len(one.opens), one.pieces) for one in checks}) == 1
        )
        bites = [place.bite for place in plan.narrow if frozenset(place.nets) not in touching]
        over = 1e3 * (max(bites, default=0.0) - max(0.0, (width - gap) / 2))
        design = sum(bool(any(pair <= short for pair in touching)) for short in shorts)
        torn = sum(bool(set(flaw.nets) & set().union(*touching)) for flaw in checks[0].opens)
        table.add(
            *(name, side, word, len(nets), f"{gap:.3f}", f"{width:.3f}", len(shorts), design),
            *(len(checks[0].opens), torn, len(checks[0].lost), len(plan.impossible), listed),
            *(f"{over:.1f}", agree, f"{seconds:.1f}"),
        )


if __name__ == "__main__":
    main()
