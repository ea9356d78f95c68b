"""A board known only from ready-made programs: where its edge is, and that there is no copper data.

Programs are written as the machine runs them, so nothing is mirrored: the programs' coordinates are
the board's, moved to the lower left of its edge. The edge is the outline layer's where there is one,
else the loop that a program mills round everything, else the rectangle round all that is cut.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

import numpy as np
import shapely
from shapely import Polygon

from drypoint.board.frame import Frame
from drypoint.board.layers import Layers, drawn_outline
from drypoint.board.model import Board, Finding, LayerFile, Role, Side
from drypoint.board.outline import Outline
from drypoint.errors import InputError
from drypoint.gcode.moves import GProgram
from drypoint.gcode.reader import read_program
from drypoint.gcode.reader_paths import CutPath, ToolUse, cut_paths, use_of
from drypoint.gcode.zero import guess_zero, lowered
from drypoint.geometry.points import Points, as_points
from drypoint.wording import say

SOURCE = "programs"
"""Where the nets of such a board are known from: nowhere; `Board.net_source`."""
RECTANGLE = "rectangle"
"""Kind of the finding that a board's edge is no more than the extent of what is cut."""
ROUND_ALL = 0.99
"""Share of everything that is cut which a milled loop must hold to be the board's edge."""
ROOM = 0.01
"""mm by which what is cut may lie outside that loop: the loop itself."""
SMALLEST = 1.0
"""mm; a board is not smaller than this in either direction."""


def board_of_programs(
    name: str, files: Mapping[str, bytes], roles: tuple[LayerFile, ...], layers: Layers, side: Side
) -> Board:
    """The board; it has no nets.

    Raises
    ------
    InputError
        If no program is understood, or none cuts anything.
    """
    drawn = drawn_outline(layers)
    outline = drawn or _outline_of_cuts(files, roles)
    # an outline layer is drawn from above; programs alone are as the machine sees them
    frame = Frame(outline.polygon, mirror=drawn is not None and side is Side.BOTTOM)
    what = "There is no copper data: nets are not known, so no check tells whether they are parted."
    hint = "Add the copper's Gerber file to have the cuts checked."
    found = [Finding("no copper", what, hint=hint), *layers.findings, *outline.findings]
    holes = tuple(frame.holes(layers.holes))
    if holes and drawn is None:
        what = "The drill file is taken to be in the coordinates of the programs."
        found.append(Finding("note", what, hint="Look whether its holes lie where they should."))
    edge = frame.shape(outline.polygon)
    return Board(
        name=name,
        side=side,
        outline=edge if isinstance(edge, Polygon) else outline.polygon,
        nets={},
        net_source=SOURCE,
        holes=holes,
        slots=tuple(frame.slots(layers.slots)),
        legend=frame.shape(layers.legend.shape) if layers.legend is not None else None,
        files=roles,
        findings=tuple(replace(one, at=frame.place(one.at)) if one.at else one for one in found),
        to_design=frame.to_design,
    )


def _outline_of_cuts(files: Mapping[str, bytes], roles: Sequence[LayerFile]) -> Outline:
    named = [file.name for file in roles if file.role is Role.GCODE]
    paths: dict[str, list[tuple[CutPath, ...]]] = {}
    read: dict[str, GProgram] = {}
    trouble: InputError | None = None
    for name in named:
        try:
            read[name] = read_program(files[name].decode("latin-1"), name=name)
        except InputError as error:
            trouble = trouble or error
    # the frame must not depend on what is chosen for z = 0 later: it is guessed here
    copper = guess_zero([program.moves for program in read.values()]).copper
    for name, program in read.items():
        found = cut_paths(lowered(program, copper).moves)
        tools = dict.fromkeys(path.tool for path in found)
        paths[name] = [tuple(path for path in found if path.tool == tool) for tool in tools]
    every = [path.path for tools in paths.values() for tool in tools for path in tool]
    if not every:
        if trouble is not None:
            raise trouble
        raise InputError("No program cuts anything.", ", ".join(named)[:200], "Choose other files.")
    spots = as_points(np.vstack(every))
    for name, split in paths.items():
        for own in split:
            loop = _loop_round(own, spots) if use_of(own) is ToolUse.MILLING else None
            if loop is not None:
                what = "There is no outline layer: the loop milled round everything is taken for the edge."
                return Outline(loop, (Finding("no outline", what, name),))
    box = shapely.box(*spots.min(axis=0), *spots.max(axis=0))
    x0, y0, x1, y1 = box.bounds
    if x1 - x0 < SMALLEST or y1 - y0 < SMALLEST:
        box = shapely.box(x0 - SMALLEST, y0 - SMALLEST, x1 + SMALLEST, y1 + SMALLEST)
    what = "There is no outline: the rectangle round everything that is cut is used."
    hint = "Add the outline's file, have the rectangle cut out (page Cuts, or --cut-out), or keep this."
    return Outline(box, (Finding(RECTANGLE, what, hint=hint),))


def edge_is_rectangle(board: Board) -> bool:
    """Whether nothing but the extent of what is cut is known of a board's edge."""
    return any(finding.kind == RECTANGLE for finding in board.findings)


def with_margin(board: Board, margin: float) -> Board:
    """The same board with its rectangle grown by ``margin`` mm on every side; the frame's origin moves along.

    A board with an edge of its own is left as it is.
    """
    if not edge_is_rectangle(board):
        return board
    x0, y0, x1, y1 = board.outline.bounds
    edge = shapely.box(x0 - margin, y0 - margin, x1 + margin, y1 + margin)
    frame = Frame(edge, mirror=False)
    moved = frame.shape(edge)
    what = say(
        "There is no outline: the rectangle {margin:g} mm round all that programs cut is cut out.",
        margin=margin,
    )
    findings = [replace(one, what=what, hint="") if one.kind == RECTANGLE else one for one in board.findings]
    return replace(
        board,
        outline=moved if isinstance(moved, Polygon) else edge,
        holes=tuple(frame.holes(board.holes)),
        slots=tuple(frame.slots(board.slots)),
        legend=None if board.legend is None else frame.shape(board.legend),
        findings=tuple(replace(one, at=frame.place(one.at)) if one.at else one for one in findings),
        to_design=frame.to_design.then(board.to_design),
    )


def _loop_round(paths: Sequence[CutPath], spots: Points) -> Polygon | None:
    """The largest closed loop of these paths, if it holds nearly everything that is cut."""
    lines = [shapely.LineString(path.path) for path in paths if len(path.path) > 1]
    loops = shapely.get_parts(shapely.polygonize([shapely.union_all(lines)]))
    if not len(loops):
        return None
    whole = shapely.union_all(loops)
    largest = max(shapely.get_parts(whole), key=lambda part: float(shapely.area(part)))
    loop = Polygon(largest.exterior)
    inside = shapely.covers(shapely.buffer(loop, ROOM), shapely.points(spots))
    return loop if float(np.mean(inside)) >= ROUND_ALL else None
