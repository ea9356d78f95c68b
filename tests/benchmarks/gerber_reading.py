"""How long a copper layer takes from file to polygons: ours against gerbonara, same run, one core.

    python tests/benchmarks/gerber_reading.py [--all] [FILE…]

Theirs is gerbonara's parse, its primitives and shapely's union of them, twice: with the library's
own outlines (``to_arc_poly``) flattened at our tolerance, and with the quickest way we know to make
polygons of its primitives (shapely's buffer for every track and disc). It has no nets, so its union
is the whole layer; ours is the copper of each net where the file names nets, else the whole layer.
Processor time, the best of three. The boards are open hardware and lie outside the project, in a
folder ``shared/boards`` beside the checkout or where DRYPOINT_CORPUS says.
"""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("OMP_NUM_THREADS", "1")

import gerbonara

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / "corpus"))

import gerber_reference as reference  # noqa: E402

from drypoint.board.gerber import read_gerber  # noqa: E402
from drypoint.board.gerber_arcs import CHORD_TOLERANCE  # noqa: E402
from drypoint.errors import InputError  # noqa: E402

DENSE = ("*/A64*_Cu.gbr", "*/MinnowMax_lyr*.art", "*/*Etch*Top.gdo", "*/combined.gbl", "*/herovco_front-Cu*")


def ours(path: Path) -> object:
    """Read and compose."""
    layer = read_gerber(path)
    return layer.nets() or layer.shape


def theirs(path: Path, convert: Callable[..., tuple[list, list]]) -> object:
    """Parse, make primitives, unite."""
    return reference.image(*convert(reference.parse(path), CHORD_TOLERANCE))


def seconds(work: Callable[[], object]) -> float:
    """Processor time of the best of three."""
    best = float("inf")
    for _ in range(3):
        start = time.process_time()
        work()
        best = min(best, time.process_time() - start)
    return best


def measure(path: Path) -> None:
    """One line of the table."""
    objects = len(read_gerber(path))
    mine = seconds(lambda: ours(path))
    figures = []
    for convert in (reference.outlines, reference.primitives):
        try:
            figures.append(seconds(lambda convert=convert: theirs(path, convert)))
        except Exception as error:  # noqa: BLE001 - whatever the reference fails with is a result
            print(f"  {path.name}: the reference fails with {type(error).__name__}: {error}")
            return
    print(
        f"{path.name:38s} {objects:8d} {mine:8.2f} {mine / max(objects, 1) * 2e4:10.2f}"
        f" {figures[0]:10.2f} {figures[0] / mine:6.1f} {figures[1]:10.2f} {figures[1] / mine:6.1f}"
    )


def main(arguments: list[str]) -> None:
    """Print the table."""
    boards = Path(os.environ.get("DRYPOINT_CORPUS") or HERE.parents[2] / "shared" / "boards")
    patterns = ["*/*"] if "--all" in arguments else DENSE
    given = [Path(word) for word in arguments if not word.startswith("-")]
    print(
        f"gerbonara {gerbonara.__version__}, chord tolerance {CHORD_TOLERANCE * 1e3:g} µm, processor seconds"
    )
    heads = ("objects", "ours", "per 20000", "outlines", "ratio", "buffers", "ratio")
    widths = (8, 8, 10, 10, 6, 10, 6)
    titles = " ".join(f"{head:>{width}s}" for head, width in zip(heads, widths, strict=True))
    print(f"{'layer':38s} {titles}")
    for path in given or sorted({path for pattern in patterns for path in boards.glob(pattern)}):
        try:
            if len(read_gerber(path)):
                measure(path)
        except InputError:
            continue


if __name__ == "__main__":
    main(sys.argv[1:])
