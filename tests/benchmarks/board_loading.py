"""Time to load whole boards, beside an independent library reading the same copper layers.

    python tests/benchmarks/board_loading.py [FOLDER OF BOARDS]

Ours is everything: roles, copper of both sides to polygons per net, outline, holes, links, findings.
The library (gerbonara) parses the two copper layers and makes their primitives; no nets, no union.
"""

from __future__ import annotations

import os
import sys
import time
import warnings
from importlib.metadata import version
from pathlib import Path

from drypoint.board.load import load_board, recognise
from drypoint.board.model import Role


def ours(folder: Path) -> float:
    start = time.perf_counter()
    load_board([folder])
    return time.perf_counter() - start


def theirs(folder: Path) -> float:
    from gerbonara import GerberFile

    start = time.perf_counter()
    for item in recognise([folder]):
        if item.role in (Role.COPPER_TOP, Role.COPPER_BOTTOM):
            layer = GerberFile.from_string((folder / item.name).read_text("latin-1"))
            for entry in layer.objects:
                list(entry.to_primitives("mm"))
    return time.perf_counter() - start


def main() -> None:
    root = Path(__file__).resolve().parents[2]
    named = sys.argv[1] if len(sys.argv) > 1 else os.environ.get("DRYPOINT_CORPUS")
    corpus = Path(named) if named else root.parent / "shared" / "boards"
    folders = [root / "examples" / "hive-scale", *(sorted(corpus.iterdir()) if corpus.is_dir() else [])]
    warnings.simplefilter("ignore")
    print(f"{'board':26}{'ours s':>8}{'gerbonara ' + version('gerbonara'):>18}")
    for folder in folders:
        mine = min(ours(folder) for _ in range(2))
        try:
            other = f"{theirs(folder):.2f}"
        except Exception as error:  # noqa: BLE001 - whatever the library cannot read is said in the table
            other = type(error).__name__
        print(f"{folder.name:26}{mine:8.2f}{other:>18}")


if __name__ == "__main__":
    main()
