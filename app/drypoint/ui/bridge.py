"""Between the window and the core: the open job, work in the background, answers in the window's thread.

Everything asked is answered by a signal in the window's thread; an answer to an older request of the
same name, or to one made for a job that was closed since, is dropped.
"""

from __future__ import annotations

import logging
from collections import deque
from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from platformdirs import user_state_path
from PySide6.QtCore import QObject, Qt, QTimer, Signal, Slot

from drypoint.errors import DrypointError, StoreError
from drypoint.session.distant import DistantDerived
from drypoint.session.jobs import Outcome, Work, WorkExecutor
from drypoint.session.planning import Planning
from drypoint.session.session import Session
from drypoint.session.wear_book import WearBook

_log = logging.getLogger(__name__)

OPENED, CLOSED = "opened", "closed"
"""What `job_changed` says besides "source", "settings" and the kinds of measurement."""

_GIVE_BACK = "give back a job"


class Bridge(QObject):
    """Owns the open job and the thread that computes.

    Signals
    -------
    computed(str, object) : name of the request and its value
    failed(str, object) : name and `DrypointError`
    bug(str, str) : name and the whole report; the machine is held, a recovery copy is kept
    ended(str) : a request is over, whatever became of it, and no newer one of its name was made
    progress(str, float, object) : name, share done (0..1), words
    job_changed(str) : "opened", "closed", "source", "settings" or a kind of measurement

    Attributes
    ----------
    recovery : Path
        Folder where copies of the job are kept after a fault of the program.
    """

    computed = Signal(str, object)
    failed = Signal(str, object)
    bug = Signal(str, str)
    ended = Signal(str)
    progress = Signal(str, float, object)
    job_changed = Signal(str)
    _delivered = Signal(object)
    _reported = Signal(str, float, object)
    _changed = Signal(object, str)

    def __init__(
        self, parent: QObject | None = None, book: WearBook | None = None, planning: Planning | None = None
    ) -> None:
        super().__init__(parent)
        self._planning = planning
        self.book = book
        """Where the wear of bits is counted; None counts nothing."""
        self.recovery = user_state_path("drypoint", appauthor=False) / "recovery"
        self._work = WorkExecutor(self._delivered.emit, self._reported.emit)
        self._session: Session | None = None
        self._waiting: dict[str, int] = {}
        self._given_back: list[Session] = []
        self._unsubscribe: Callable[[], None] = lambda: None
        self._holds: list[Callable[[], object]] = []
        self._closes: list[Callable[[], object]] = []
        self._closed = False
        later = Qt.ConnectionType.QueuedConnection
        self._arrived: deque[Outcome] = deque()
        self._turns = QTimer(self, interval=0)
        self._turns.timeout.connect(self._settle_next)
        self._delivered.connect(self._take_in, later)
        self._reported.connect(self._tell, later)
        self._changed.connect(self._announce, later)

    # the job

    @property
    def session(self) -> Session | None:
        """The open job; None without one."""
        return self._session

    def open_job(self, path: Path) -> Session:
        """Open a job in place of the present one, which stays open if this one cannot be.

        Raises
        ------
        StoreError
            If it is missing, damaged, not a job or newer than this program.
        """
        opened = Session.open(path)
        try:
            _ = opened.snapshot  # a setting that cannot be read is found before the other job is let go
        except StoreError:
            opened.close()
            raise
        self.take(opened)
        return opened

    def take(self, session: Session) -> None:
        """Make a session the open job; the bridge closes it from now on."""
        self.close_job()
        if self._planning is not None:
            session.derived = DistantDerived(self._planning.for_job())
        self._session = session
        self._unsubscribe = session.subscribe(lambda what: self._changed.emit(session, what))
        self.job_changed.emit(OPENED)

    def close_job(self) -> None:
        """Let go of the job; its file is closed as soon as nothing computes on it any more."""
        session, self._session = self._session, None
        if session is None:
            return
        self._unsubscribe()
        for name in tuple(self._waiting):
            self._work.cancel(name)
        self._waiting.clear()
        self._given_back.append(session)
        self._work.ask(f"{_GIVE_BACK} {id(session)}", lambda _progress: session.close())
        self.job_changed.emit(CLOSED)

    # work

    def ask(self, name: str, work: Work) -> int:
        """Compute in the background; an older request of this name is cancelled. Its number."""
        number = self._work.ask(name, work)
        self._waiting[name] = number
        return number

    def cancel(self, name: str) -> None:
        """Cancel what was asked under this name; no answer comes, only ``ended``."""
        self._work.cancel(name)
        if self._waiting.pop(name, None) is not None:
            self.ended.emit(name)

    def is_waiting(self, name: str) -> bool:
        """Whether a request of this name is not answered yet."""
        return name in self._waiting

    @property
    def busy(self) -> bool:
        """Whether anything is being computed."""
        return bool(self._waiting)

    # what belongs to the machine

    def hold_on_bug(self, hold: Callable[[], object]) -> None:
        """Call this when the program finds a fault in itself: it must hold the machine at once."""
        self._holds.append(hold)

    def before_closing(self, close: Callable[[], object]) -> None:
        """Call this when the window closes, before the job is closed: end threads, let go of links."""
        self._closes.append(close)

    def report_bug(self, name: str, text: str) -> None:
        """A fault of the program, found anywhere: hold, keep a copy of the job, tell the window."""
        _log.error("a fault in %s: %s", name, text)
        for hold in self._holds:
            hold()
        try:
            kept = self._keep_copy()
        except DrypointError as error:
            kept = f"no copy could be kept: {error}"
        self.bug.emit(name, f"{name}\n{kept}\n\n{text}")

    def close(self) -> None:
        """Close job and threads; nothing is left alive."""
        if self._closed:
            return
        self._closed = True
        for close in self._closes:
            close()
        self.close_job()
        self._work.close()
        for session in self._given_back:
            session.close()
        self._given_back.clear()

    # inside

    def _keep_copy(self) -> str:
        if self._session is None:
            return "no job was open"
        path = self._session.job.path
        at = datetime.now().strftime("%Y%m%d-%H%M%S")
        target = self.recovery / f"{path.stem}-{at}{path.suffix}"
        self._session.job.copy_to(target)
        return f"a copy of the job was kept: {target}"

    @Slot(object)
    def _take_in(self, outcome: Outcome) -> None:
        """Answers that come together are told one in a turn, lest the window be held up by all of them."""
        self._arrived.append(outcome)
        self._turns.start()

    def _settle_next(self) -> None:
        outcome = self._arrived.popleft()
        if not self._arrived:
            self._turns.stop()
        self._settle(outcome)

    def _settle(self, outcome: Outcome) -> None:
        if self._waiting.get(outcome.name) != outcome.number:
            if outcome.bug:  # stale, but a fault all the same
                self.report_bug(outcome.name, outcome.bug)
            return
        del self._waiting[outcome.name]
        if outcome.bug:
            self.report_bug(outcome.name, outcome.bug)
        elif outcome.error is not None:
            self.failed.emit(outcome.name, outcome.error)
        elif not outcome.cancelled:
            self.computed.emit(outcome.name, outcome.value)
        self.ended.emit(outcome.name)

    @Slot(str, float, object)
    def _tell(self, name: str, done: float, text: str) -> None:
        if name in self._waiting:
            self.progress.emit(name, done, text)

    @Slot(object, str)
    def _announce(self, session: object, what: str) -> None:
        if session is self._session:
            self.job_changed.emit(what)
