"""An open job as the window and the command line see it: actions in, facts out.

A session owns the job file and what is computed from it. Actions that change the job tell the
listeners; computations take a `Progress` and may run in any thread.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

from drypoint.board.groups import board_name, boards_in, free_name
from drypoint.board.load import name_of
from drypoint.board.model import Board, Role
from drypoint.errors import StoreError
from drypoint.job.store import Job, Source, job_file, require_replaceable
from drypoint.progress import Progress
from drypoint.session.boards import named_sources, own_name, read_designs, sources_of
from drypoint.session.codec import to_json
from drypoint.session.derive import Derived
from drypoint.session.program_cuts import kept_choices
from drypoint.session.settings import SECTIONS, Settings
from drypoint.session.snapshot import Snapshot, take_snapshot

Listener = Callable[[str], None]


class Session:
    """One open job.

    Parameters
    ----------
    job : Job
        Owned from now on; closed with the session.
    """

    def __init__(self, job: Job) -> None:
        self.job = job
        self.derived = Derived()
        self._snapshot: Snapshot | None = None
        self._listeners: list[Listener] = []
        self._lock = threading.RLock()

    @classmethod
    def open(cls, path: Path) -> Session:
        """Open a job file.

        Raises
        ------
        StoreError
            If it is missing, damaged, not a job or newer than this program.
        """
        return cls(Job(path))

    @classmethod
    def create(cls, path: Path, *, overwrite: bool = False) -> Session:
        """Make a new job file.

        Raises
        ------
        StoreError
            If a file of that name is there already and ``overwrite`` is not set.
        """
        path = job_file(path)
        if path.exists():
            if not overwrite:
                raise StoreError("There is a file of this name already.", str(path), "Choose another name.")
            require_replaceable(path)
            path.unlink()
        path.parent.mkdir(parents=True, exist_ok=True)
        return cls(Job(path, create=True))

    def close(self) -> None:
        """Close the job file."""
        self.job.close()

    # what there is

    @property
    def snapshot(self) -> Snapshot:
        """The job as it is now."""
        with self._lock:
            if self._snapshot is None:
                self._snapshot = take_snapshot(self.job)
            return self._snapshot

    @property
    def settings(self) -> Settings:
        """Everything set about the job."""
        return self.snapshot.settings

    def subscribe(self, listener: Listener) -> Callable[[], None]:
        """Call ``listener(what)`` after every change; the returned function ends that.

        It is called in the thread of the change.
        """
        self._listeners.append(listener)
        return lambda: self._listeners.remove(listener)

    def touched(self, what: str) -> None:
        """Forget the snapshot and tell the listeners that ``what`` changed."""
        with self._lock:
            self._snapshot = None
        for listener in tuple(self._listeners):
            listener(what)

    # files

    def import_files(
        self, paths: Sequence[Path], roles: Mapping[str, Role] | None = None, progress: Progress | None = None
    ) -> tuple[Board, ...]:
        """Read design files into the job and understand them; on an error the job stays as it was.

        Two or more folders or zips that hold the same copper are boards of their own; see
        `drypoint.board.groups`. ``roles`` by name of the file as the job calls it.

        Raises
        ------
        InputError
            Naming file and line.
        """
        return self._put_in(sources_of(boards_in(paths), roles or {}), name_of(paths), progress)

    def add_board(self, paths: Sequence[Path], progress: Progress | None = None) -> tuple[Board, ...]:
        """Put other boards beside those of the job; see `import_files`.

        Raises
        ------
        InputError
            Naming file and line.
        """
        present = named_sources(self.snapshot.sources, self.settings.board.name or "board")
        more = boards_in(paths)
        named = {name or board_name(paths[0]): files for name, files in more.items()}
        taken = {source.board: None for source in present}
        fresh: dict[str, Mapping[str, bytes]] = {}
        for name, files in named.items():
            fresh[free_name(name, taken | dict.fromkeys(fresh))] = files
        return self._put_in((*present, *sources_of(fresh, {})), name_of(paths), progress)

    def remove_board(self, name: str) -> None:
        """Take a board and its places away; the last one stays."""
        left = tuple(source for source in self.snapshot.sources if source.board != name)
        if not left:
            return
        copies, chosen = self.settings.copies, self.settings.imported
        first = self.snapshot.sources[0].board
        kept = tuple(one for one in copies.places if (one.board or first) != name)
        names = {source.name: source.name for source in left}
        self._replace(left)
        self.change(
            "Take a board away",
            copies=replace(copies, places=kept),
            imported=kept_choices(chosen, names),
        )
        self.touched("source")

    def _put_in(self, sources: tuple[Source, ...], name: str, progress: Progress | None) -> tuple[Board, ...]:
        name = self.settings.board.name or name
        boards = read_designs(sources, self.settings.board.side, name, progress)
        before = self.settings
        # a board that gets a name has it before the names of its files
        names = {own_name(one): one.name for one in sources} | {one.name: one.name for one in sources}
        present = {one.name: names[one.name] for one in self.snapshot.sources if one.name in names}
        self._replace(sources)
        if not before.board.name:
            named = name if len(boards) > 1 else next(iter(boards.values())).name
            self.job.change("Name the board", {"board": to_json(replace(before.board, name=named))})
        chosen = kept_choices(before.imported, present)
        if chosen != before.imported:
            self.job.change("Choices for programs that stay", {"imported": to_json(chosen)})
        self.touched("source")
        return tuple(boards.values())

    def _replace(self, sources: Sequence[Source]) -> None:
        self.job.replace_sources(
            {source.name: source.content for source in sources},
            {source.name: source.role for source in sources},
            {source.name: source.board for source in sources},
        )

    def choose_role(self, name: str, role: Role) -> None:
        """Say what a design file is to the board, whatever it was taken for."""
        self._replace(
            [replace(one, role=role.value) if one.name == name else one for one in self.snapshot.sources]
        )
        self.touched("source")

    # settings

    def change(self, title: str, **sections: Any) -> None:
        """Store whole sections of `Settings` as one action that can be undone."""
        unknown = set(sections) - set(SECTIONS)
        if unknown:
            raise ValueError(f"no such sections: {unknown}")
        changed = {name: value for name, value in sections.items() if value != getattr(self.settings, name)}
        if changed:
            self.job.change(title, {name: to_json(value) for name, value in changed.items()})
            self.touched("settings")

    def undo(self) -> str | None:
        """Take back the last change of settings; its title."""
        title = self.job.undo()
        if title is not None:
            self.touched("settings")
        return title

    def redo(self) -> str | None:
        """Make the last undone change again; its title."""
        title = self.job.redo()
        if title is not None:
            self.touched("settings")
        return title

    # measurements

    def keep(self, kind: str, data: Any) -> int:
        """Keep a measurement."""
        number = self.job.add_record(kind, to_json(data))
        self.touched(kind)
        return number
