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

from drypoint.board.archive import gather
from drypoint.board.load import load_board_from_bytes, name_of
from drypoint.board.model import Board, Role
from drypoint.errors import StoreError
from drypoint.job.store import SUFFIX, Job
from drypoint.progress import Progress
from drypoint.session.codec import to_json
from drypoint.session.derive import Derived
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
        path = path if path.suffix == SUFFIX else path.with_name(path.name + SUFFIX)
        if path.exists():
            if not overwrite:
                raise StoreError("There is a file of this name already.", str(path), "Choose another name.")
            Job(path).close()  # refuses what is no job file
            for leftover in (path, Path(f"{path}-wal"), Path(f"{path}-shm")):
                leftover.unlink(missing_ok=True)
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
    ) -> Board:
        """Read design files into the job and understand them; on an error the job stays as it was.

        Raises
        ------
        InputError
            Naming file and line.
        """
        files = gather(paths)
        side = self.settings.board.side
        name = self.settings.board.name or name_of(paths)
        board = load_board_from_bytes(files, side=side, roles=roles, name=name, progress=progress)
        chosen = {name: role.value for name, role in (roles or {}).items()}
        self.job.replace_sources(files, chosen)
        if not self.settings.board.name:
            self.job.change(
                "Name the board", {"board": to_json(replace(self.settings.board, name=board.name))}
            )
        self.touched("source")
        return board

    def choose_role(self, name: str, role: Role) -> None:
        """Say what a design file is to the board, whatever it was taken for."""
        sources = self.snapshot.sources
        roles = {source.name: source.role for source in sources} | {name: role.value}
        self.job.replace_sources({source.name: source.content for source in sources}, roles)
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
