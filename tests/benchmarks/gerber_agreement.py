"""How far our picture of every layer is from an independent library's, as a share of its area.

    python tests/benchmarks/gerber_agreement.py [FOLDER OF BOARDS] [--board NAME]

Every layer of open-hardware boards (a folder ``shared/boards`` beside the checkout, or where
DRYPOINT_CORPUS says) that both we and gerbonara can read: its primitives become polygons at the same
chord tolerance, runs of equal polarity are united in file order, and the symmetric difference is
measured. Layers above the limit are listed again with what they hold that explains it.
"""

from __future__ import annotations

import math
import os
import re
import sys
from pathlib import Path

os.environ.setdefault("OMP_NUM_THREADS", "1")

import gerbonara

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / "corpus"))

import gerber_reference as reference  # noqa: E402

from drypoint.board.gerber import GerberLayer, read_gerber  # noqa: E402
from drypoint.board.roles import kind_of  # noqa: E402
from drypoint.errors import InputError  # noqa: E402

LIMIT = 0.001
FINE = 0.0002
"""mm; thin lines of two coarser polygonal outlines would differ by more than the limit."""


def known(layer: GerberLayer, text: str) -> str:
    """What a layer holds that the library is known to draw otherwise than the specification says."""
    told = []
    if any(item.kind in ("draw", "arc") and item.diameter is None for item in layer.objects):
        told.append(
            "draws with apertures that are not round: the library draws lines as wide as the diagonal"
        )
    if re.search(r"%ADD\d+P,[\d.]+X\d+X(?!0?\.?0*[*X])", text):
        told.append("turned regular polygons: the library turns them by another angle")
    if re.search(r"\*\s*5,", text):
        told.append("turned polygon primitives in a macro: the library leaves them at the origin")
    without_centre, arcs = _arcs_without_centre(text)
    if without_centre > arcs / 10:
        told.append(f"{without_centre} of {arcs} arcs, rounded to the file's digits, have no exact centre")
    return "; ".join(told) or "not explained"


def _arcs_without_centre(text: str) -> tuple[int, int]:
    """Single-quadrant arcs whose ends are equally far from none of the four centres, and all of them."""
    x = y = without = arcs = 0
    mode = 1
    if "G74*" not in text:
        return 0, 0
    word = r"(G0?[123])?(?:X(-?\d+))?(?:Y(-?\d+))?(?:I(-?\d+))?(?:J(-?\d+))?(D0?[123])?\*"
    for found in filter(None, (re.match(word, line) for line in text.splitlines())):
        mode = int(found[1][-1]) if found[1] else mode
        new_x, new_y = int(found[2] or x), int(found[3] or y)
        if mode != 1 and (found[4] or found[5]):
            i, j = abs(int(found[4] or 0)), abs(int(found[5] or 0))
            ends = ((new_x - x - a * i, new_y - y - b * j) for a in (1, -1) for b in (1, -1))
            arcs += 1
            without += min(abs(math.hypot(*end) - math.hypot(i, j)) for end in ends) > 0.3
        x, y = new_x, new_y
    return without, arcs


def compare(path: Path) -> tuple[int, float, str]:
    """Objects, share that differs (NaN where there is none), and what went wrong."""
    try:
        layer = read_gerber(path, tolerance=FINE)
        ours = layer.shape
    except InputError as error:
        return 0, float("nan"), f"refused: {error.what}"
    try:
        theirs = reference.image(*reference.primitives(reference.parse(path), FINE))
    except Exception as error:  # noqa: BLE001 - whatever the library fails with is a result
        return len(layer), float("nan"), f"the library fails: {type(error).__name__}"
    if not theirs.area and not ours.area:
        return len(layer), 0.0, "empty"
    return len(layer), ours.symmetric_difference(theirs).area / max(theirs.area, ours.area), ""


def main(arguments: list[str]) -> None:
    """Print the table."""
    named = [word for word in arguments if not word.startswith("-")]
    only = named.pop() if "--board" in arguments else "*"
    boards = Path(
        named[0] if named else os.environ.get("DRYPOINT_CORPUS") or HERE.parents[2] / "shared/boards"
    )
    print(f"gerbonara {gerbonara.__version__}, chords within {FINE * 1e3:g} µm")
    print(f"{'layer':62s} {'objects':>8s} {'differs %':>10s}")
    compared = within = 0
    for path in sorted(boards.glob(f"{only}/*")):
        if kind_of(path.read_bytes()) != "gerber":
            continue
        objects, share, note = compare(path)
        compared += share == share
        within += share <= LIMIT
        if share > LIMIT:
            note = known(read_gerber(path), path.read_text("latin-1"))
        print(f"{path.parent.name + '/' + path.name:62s} {objects:8d} {share * 100:10.5f} {note}", flush=True)
    print(f"{within} of {compared} layers that both read agree to {LIMIT * 100:g} %")


if __name__ == "__main__":
    main(sys.argv[1:])
