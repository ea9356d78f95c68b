"""Touches as a plain table for other programs: comma separated, units and frame in the header."""

from __future__ import annotations

import csv
import io

from drypoint.errors import InputError
from drypoint.surface.touch import Touch, Touches
from drypoint.wording import say

_UNITS = {"mm": 1.0, "um": 1e-3, "µm": 1e-3, "inch": 25.4, "in": 25.4}
_COLUMNS = ("x", "y", "z", "first")


def write_csv(touches: Touches) -> str:
    """The touches as text.

    Comment lines name the frame and the columns; ``z`` is the slow touch, ``first`` the fast one
    (empty where there was none).
    """
    out = io.StringIO()
    out.write("# Heights of the copper by electrical touch\n")
    out.write("# frame: machine (work coordinates, z = 0 touched off at the zero spot)\n")
    out.write("# z: slow touch; first: fast touch before it, empty if there was none\n")
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow([f"{name} [mm]" for name in _COLUMNS])
    for t in touches.touches:
        first = "" if t.first is None else f"{t.first:.5f}"
        writer.writerow([f"{t.x:.5f}", f"{t.y:.5f}", f"{t.second:.5f}", first])
    return out.getvalue()


def read_csv(text: str) -> Touches:
    """Read a table of touches.

    The header names x, y, z and optionally first, each with its unit in square brackets ([mm],
    [µm], [inch]); columns may be in any order and others are ignored. Lines that start with ``#``
    are comments; one that says ``frame:`` must say machine.

    Raises
    ------
    InputError
        If the header, the frame or a value cannot be understood.
    """
    rows: list[tuple[int, str]] = []
    for number, line in enumerate(text.removeprefix("\ufeff").splitlines(), start=1):
        bare = line.strip()
        if bare.startswith("#"):
            _check_frame(bare, number)
        elif bare:
            rows.append((number, line))
    if not rows:
        raise InputError("The table of touches is empty.", hint="Its first line names x, y and z.")
    delimiter = max(",;\t", key=rows[0][1].count)
    columns = _columns(next(csv.reader([rows[0][1]], delimiter=delimiter)), rows[0][0])
    found = [
        _touch(next(csv.reader([line], delimiter=delimiter)), columns, number) for number, line in rows[1:]
    ]
    return Touches(tuple(found))


def _check_frame(line: str, number: int) -> None:
    _, mark, frame = line.lower().partition("frame:")
    if mark and "machine" not in frame:
        raise InputError(
            say("The heights are in the frame '{frame}', not in the machine's.", frame=frame.strip()),
            say("line {number}", number=number),
            "Only heights in work coordinates can be used.",
        )


def _columns(header: list[str], number: int) -> dict[str, tuple[int, float]]:
    """Index and millimetres per unit of every known column."""
    found: dict[str, tuple[int, float]] = {}
    for index, cell in enumerate(header):
        name, _, unit = cell.strip().lower().partition("[")
        name = name.strip()
        if name not in _COLUMNS:
            continue
        scale = _UNITS.get(unit.strip(" ]"))
        if scale is None:
            raise InputError(
                say("The unit of column '{cell}' is not known.", cell=cell.strip()),
                say("line {number}", number=number),
                "Write it as in 'x [mm]'.",
            )
        found[name] = (index, scale)
    missing = [name for name in ("x", "y", "z") if name not in found]
    if missing:
        raise InputError(
            say("The header names no column {missing}.", missing=", ".join(missing)),
            say("line {number}", number=number),
            "Write it as in 'x [mm],y [mm],z [mm]'.",
        )
    return found


def _touch(cells: list[str], columns: dict[str, tuple[int, float]], number: int) -> Touch:
    values: dict[str, float | None] = {"first": None}
    for name, (index, scale) in columns.items():
        cell = cells[index].strip() if index < len(cells) else ""
        if not cell and name == "first":
            continue
        values[name] = _number(cell, number) * scale
    x, y, z = values["x"], values["y"], values["z"]
    assert x is not None
    assert y is not None
    assert z is not None
    return Touch(x, y, z, values["first"])


def _number(cell: str, number: int) -> float:
    try:
        value = float(cell)
    except ValueError:
        value = float("nan")
    if not abs(value) < 1e6:
        raise InputError(
            say("'{cell}' is not a height or place in the table.", cell=cell),
            say("line {number}", number=number),
        )
    return value
