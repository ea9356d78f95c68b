"""What the makers of the examples share: XNC drill files, and how a design is written to its folder."""

from __future__ import annotations

import sys
from collections.abc import Mapping, Sequence
from pathlib import Path

Holes = Mapping[tuple[float, str], Sequence[tuple[float, float]]]
"""Places, mm, of the holes of each diameter, mm, and use (an aperture function of Gerber X2)."""


def drill_file(holes: Holes, *, plated: bool) -> str:
    """An XNC drill file."""
    function = "Plated,1,2,PTH" if plated else "NonPlated,1,2,NPTH"
    head = ["M48", f"; #@! TF.FileFunction,{function}", "; #@! TF.Part,Single", "METRIC"]
    return "\n".join([*head, *_tools(holes), *_places(holes), "M30", ""])


def _tools(holes: Holes) -> list[str]:
    lines = []
    for number, (diameter, use) in enumerate(sorted(holes), 1):
        lines += [f"; #@! TA.AperFunction,{use}", f"T{number:02d}C{diameter:.3f}"]
    return lines


def _places(holes: Holes) -> list[str]:
    lines = ["%", "G90", "G05"]
    for number, key in enumerate(sorted(holes), 1):
        lines.append(f"T{number:02d}")
        lines += [f"X{x:.4f}Y{y:.4f}" for x, y in holes[key]]
    return lines


def write(files: Mapping[str, str], usual: str) -> None:
    """Write the files into the folder that the command line names, or into ``usual`` beside this file."""
    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).parent / usual
    folder.mkdir(parents=True, exist_ok=True)
    for name, text in files.items():
        (folder / name).write_bytes(text.encode("ascii"))
