"""Changes of settings from the window: one undoable action each, with its title."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QObject, QTimer

from drypoint.errors import DrypointError
from drypoint.ui.bridge import CLOSED, OPENED, Bridge
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.menus import Commands

REST = 350
"""A drag is one action: it ends when nothing moved for so long, ms."""


class Editing(QObject):
    """Stores settings, takes them back, makes them again."""

    def __init__(
        self, bridge: Bridge, commands: Commands, messages: Messages, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._bridge = bridge
        self._commands = commands
        self._messages = messages
        self._later: tuple[str, dict[str, Any]] | None = None
        self._rest = QTimer(self, singleShot=True, interval=REST)
        self._rest.timeout.connect(self.settle)
        commands["undo"].triggered.connect(self.undo)
        commands["redo"].triggered.connect(self.redo)
        bridge.job_changed.connect(self._job_changed)
        bridge.before_closing(self.settle)
        self._show_titles()

    @property
    def pending(self) -> bool:
        """Whether a drag is not stored yet."""
        return self._later is not None

    def change(self, title: str, **sections: Any) -> None:
        """Store whole sections of the settings as one action."""
        self.settle()
        self._store(title, sections)

    def change_soon(self, title: str, **sections: Any) -> None:
        """The same once it has come to rest; what comes before that belongs to the same action."""
        self._later = (title, sections)
        self._rest.start()

    def settle(self) -> None:
        """Store what waits."""
        self._rest.stop()
        waiting, self._later = self._later, None
        if waiting is not None:
            self._store(*waiting)

    def _store(self, title: str, sections: dict[str, Any]) -> None:
        session = self._bridge.session
        if session is None:
            return
        try:
            session.change(title, **sections)
        except DrypointError as error:
            self._messages.error(error)

    def undo(self) -> None:
        """Take the last change back."""
        self.settle()
        self._walk(back=True)

    def redo(self) -> None:
        """Make the last undone change again."""
        self.settle()
        self._walk(back=False)

    def _walk(self, *, back: bool) -> None:
        session = self._bridge.session
        if session is None:
            return
        try:
            title = session.undo() if back else session.redo()
        except DrypointError as error:
            self._messages.error(error)
            return
        if title is not None:
            said = self.tr("Taken back: {title}") if back else self.tr("Done again: {title}")
            self._messages.say(said.format(title=title))

    def _job_changed(self, what: str) -> None:
        if what in (OPENED, CLOSED):
            self._rest.stop()
            self._later = None
        if what in (OPENED, CLOSED, "settings", "source"):
            self._show_titles()

    def _show_titles(self) -> None:
        session = self._bridge.session
        for name, word, title in (
            ("undo", self.tr("&Undo"), session.job.undo_title() if session else None),
            ("redo", self.tr("&Redo"), session.job.redo_title() if session else None),
        ):
            action = self._commands[name]
            action.setEnabled(title is not None)
            action.setText(word if title is None else f"{word}: {title}")
