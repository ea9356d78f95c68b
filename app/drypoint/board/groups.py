"""Which of the chosen folders and zips are boards of their own.

Two or more folders or zips that hold the same copper (or only programs each) are different boards;
else everything that was chosen is one board, however it is spread.
"""

from __future__ import annotations

import zipfile
from collections import Counter
from collections.abc import Mapping, Sequence
from pathlib import Path

from drypoint.board.archive import gather
from drypoint.board.model import Role
from drypoint.board.roles import recognise_files
from drypoint.errors import InputError

Files = Mapping[str, bytes]
"""Contents by file name."""
_COPPER = {Role.COPPER_TOP, Role.COPPER_BOTTOM}


def boards_in(paths: Sequence[Path]) -> dict[str, Files]:
    """The files of each board by the board's name; the name is empty where all are one board.

    Raises
    ------
    InputError
        Nothing there, unreadable, or files of which it is not plain which board they belong to.
    """
    chosen = list(dict.fromkeys(Path(path) for path in paths))
    holders = [path for path in chosen if _holds(path)]
    if len(holders) < 2:
        return {"": gather(chosen)}
    contents = {path: gather([path]) for path in holders}
    kinds = {path: _kinds(files) for path, files in contents.items()}
    if max(Counter(kind for each in kinds.values() for kind in each).values(), default=0) < 2:
        return {"": gather(chosen)}
    stray = [path for path in chosen if not kinds.get(path)]
    if stray:
        raise InputError(
            "It is not plain which board this belongs to.",
            ", ".join(str(path) for path in stray)[:200],
            "Put all files of a board into one folder or zip.",
        )
    found: dict[str, Files] = {}
    for path in holders:
        found[free_name(board_name(path), found)] = contents[path]
    return found


def _holds(path: Path) -> bool:
    return path.is_dir() or (path.is_file() and zipfile.is_zipfile(path))


def _kinds(files: Files) -> set[Role]:
    """The copper sides there are; where there is none, programs."""
    roles = {item.role for item in recognise_files(files)}
    return roles & _COPPER or roles & {Role.GCODE}


def board_name(path: Path) -> str:
    """What a board of this folder or zip is called."""
    name = path.resolve().name if path.is_dir() else path.stem
    return name.replace("/", "-") or "board"


def free_name(name: str, taken: Mapping[str, object]) -> str:
    """The name, with a number where there is one like it."""
    number, free = 2, name
    while free in taken:
        free = f"{name} {number}"
        number += 1
    return free
