"""Jobs as files: new, open, recent, dropped on the window, a copy saved."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from platformdirs import user_documents_path
from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from drypoint.errors import DrypointError
from drypoint.job.store import SUFFIX, job_file
from drypoint.session.session import Session
from drypoint.ui.bridge import CLOSED, OPENED, Bridge
from drypoint.ui.design_side.editing import Editing
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.design_side.new_job import MAKE, NewJob, make_plain
from drypoint.ui.design_side.remember import Remembered
from drypoint.ui.forms.values import SetupValues
from drypoint.ui.window import MainWindow

COPY = "save a copy"


class Documents(QObject):
    """The commands of the File menu that concern job files."""

    def __init__(
        self,
        window: MainWindow,
        bridge: Bridge,
        editing: Editing,
        messages: Messages,
        remembered: Remembered,
    ) -> None:
        super().__init__(window)
        self._window, self._bridge, self._editing = window, bridge, editing
        self._messages, self._remembered = messages, remembered
        self.new_job = NewJob(window, bridge)
        commands = window.commands
        commands["new"].triggered.connect(lambda _=False: self.new_job.start())
        commands["open"].triggered.connect(self._ask_open)
        commands["save_copy"].triggered.connect(self._ask_copy)
        commands.recent.triggered.connect(lambda action: self.open(Path(str(action.data()))))
        self.new_job.finished.connect(self._ask_where)
        self.new_job.made.connect(self._take)
        self.new_job.failed.connect(messages.error)
        window.files_dropped.connect(lambda names: self.dropped([Path(name) for name in names]))
        bridge.job_changed.connect(self._job_changed)
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)
        window.show_recent(remembered.recent)
        self._job_changed(CLOSED)

    def open(self, path: Path) -> bool:
        """Open a job; the present one stays open if it cannot be."""
        self._editing.settle()
        try:
            self._bridge.open_job(path)
        except DrypointError as error:
            self._messages.error(error)
            self._window.show_recent(self._remembered.recent)
            return False
        return True

    def dropped(self, paths: Sequence[Path]) -> None:
        """A job is opened; anything else is taken for design files of a new one."""
        jobs = [path for path in paths if path.suffix.lower() == SUFFIX]
        if jobs:
            self.open(jobs[0])
        else:
            self.new_job.start(paths)

    def save_copy(self, path: Path) -> None:
        """Write the job as it is now to another file, in the background."""
        session = self._bridge.session
        if session is None:
            return
        self._editing.settle()
        self._bridge.ask(COPY, lambda _progress: _copied(session, job_file(path)))

    def make(self, path: Path, values: SetupValues) -> None:
        """Make a new job of what the wizard was told."""
        self._messages.say(self.tr("Making the job"))
        self.new_job.make(path, values)

    def make_demo(self, path: Path, files: Path) -> None:
        """Make a job of the example's files with everything as it usually is."""
        self._bridge.ask(MAKE, lambda progress: make_plain(path, files, progress))

    def _ask_open(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self._window, self.tr("Open a job"), str(self._folder()), self._filter()
        )
        if name:
            self.open(Path(name))

    def _ask_where(self, values: SetupValues) -> None:
        name = "".join(letter for letter in values.name if letter.isalnum() or letter in "-_ .") or "board"
        usual = self._folder() / f"{name}{SUFFIX}"
        chosen, _ = QFileDialog.getSaveFileName(
            self._window, self.tr("Where the job is kept"), str(usual), self._filter()
        )
        if chosen:
            self.make(Path(chosen), values)

    def _ask_copy(self) -> None:
        session = self._bridge.session
        if session is None:
            return
        usual = session.job.path.with_name(f"{session.job.path.stem} copy{SUFFIX}")
        chosen, _ = QFileDialog.getSaveFileName(
            self._window, self.tr("Save a copy"), str(usual), self._filter()
        )
        if chosen:
            self.save_copy(Path(chosen))

    def _filter(self) -> str:
        return self.tr("Jobs (*{suffix})").format(suffix=SUFFIX)

    def _folder(self) -> Path:
        """Where the last job is, else the user's documents."""
        session = self._bridge.session
        if session is not None:
            return session.job.path.parent
        recent = self._remembered.recent
        return Path(recent[0]).parent if recent else user_documents_path()

    def _take(self, session: Session) -> None:
        self._editing.settle()
        self._bridge.take(session)

    def _job_changed(self, what: str) -> None:
        session = self._bridge.session
        self._window.commands["save_copy"].setEnabled(session is not None)
        if what == OPENED and session is not None:
            self._remembered.opened(session.job.path)
            self._window.show_recent(self._remembered.recent)
            self._window.show_name(session.job.path.name)
            self._messages.say(self.tr("{name} is open").format(name=session.job.path.name))
        elif what == CLOSED:
            self._window.show_name("")

    def _computed(self, name: str, value: object) -> None:
        if name == COPY:
            self._messages.say(self.tr("A copy was saved: {path}").format(path=value))

    def _failed(self, name: str, error: DrypointError) -> None:
        if name == COPY:
            self._messages.error(error)


def _copied(session: Session, target: Path) -> Path:
    session.job.copy_to(target)
    return target
