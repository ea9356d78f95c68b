"""The copper's heights as a plain table: read from a file, written to one, in the background."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from drypoint.errors import DrypointError, InputError, StoreError
from drypoint.session.session import Session
from drypoint.session.whole_file import write_whole
from drypoint.surface.table import read_csv, write_csv
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.design_side.words import place_and_hint
from drypoint.ui.pages.measure import SurfacePage
from drypoint.ui.window import MainWindow

READ = "read a table of heights"
WRITE = "write a table of heights"


class HeightTables(QObject):
    """Wires the tables of the surface page."""

    def __init__(self, window: MainWindow, bridge: Bridge, page: SurfacePage, messages: Messages) -> None:
        super().__init__(window)
        self._window, self._bridge, self._page, self._messages = window, bridge, page, messages
        page.read_table.connect(self._choose)
        page.write_table.connect(self._ask)
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)

    def read(self, path: Path) -> None:
        """Take the heights of a table as touched in this clamping."""
        session = self._bridge.session
        if session is not None:
            self._bridge.ask(READ, lambda _progress: _keep(session, path))

    def write(self, path: Path) -> None:
        """The touched heights, with units and frame in the header."""
        session = self._bridge.session
        if session is not None:
            self._bridge.ask(WRITE, lambda _progress: _write(session, path))

    def _choose(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self._window, self.tr("Table of heights"), "", self.tr("Tables (*.csv);;All files (*)")
        )
        if name:
            self.read(Path(name))

    def _ask(self) -> None:
        session = self._bridge.session
        if session is None:
            return
        usual = session.job.path.with_name(f"{session.job.path.stem}-heights.csv")
        name, _ = QFileDialog.getSaveFileName(
            self._window, self.tr("Write the heights to"), str(usual), self.tr("Tables (*.csv)")
        )
        if name:
            self.write(Path(name))

    def _computed(self, name: str, value: object) -> None:
        if name == WRITE:
            self._messages.say(self.tr("Written: {path}").format(path=value))
        elif name == READ:
            self._messages.say(self.tr("{count} heights read.").format(count=value))

    def _failed(self, name: str, error: DrypointError) -> None:
        if name in (READ, WRITE):
            self._page.show_trouble(error.what, place_and_hint(error))
            self._messages.error(error)


def _keep(session: Session, path: Path) -> int:
    try:
        text = path.read_text(encoding="utf-8")
    except (OSError, ValueError) as error:
        raise InputError("The table cannot be read.", str(path), str(error)) from error
    touches = read_csv(text)
    session.keep("touches", {"setup": session.snapshot.setup, "touches": touches})
    return len(touches.touches)


def _write(session: Session, path: Path) -> Path:
    found = session.derived.touches(session.snapshot)
    if found is None:
        raise InputError("Nothing was touched yet.", "Surface", "Touch the copper first.")
    try:
        write_whole(path, write_csv(found[0]))
    except OSError as error:
        raise StoreError("The table could not be written.", str(path), str(error)) from error
    return path
