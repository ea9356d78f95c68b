"""Plans anew, in the background, whatever a change of the job touches; the newest change wins."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, Signal

from drypoint.errors import DrypointError
from drypoint.progress import Progress
from drypoint.session.session import Session
from drypoint.session.snapshot import Snapshot
from drypoint.session.traveller import StepName
from drypoint.ui.bridge import CLOSED, OPENED, Bridge
from drypoint.ui.design_side.heights import TouchPicture
from drypoint.ui.design_side.order import Order
from drypoint.ui.design_side.pictures import (
    BoardPicture,
    CutPicture,
    FitPicture,
    PassPicture,
    Pictures,
)
from drypoint.ui.design_side.trial_picture import TrialPicture

BOARD, CUTS, TOUCHES, PASSES, FIT, ORDER, TRIALS = (
    "plan: board",
    "plan: cuts",
    "plan: touches",
    "plan: passes",
    "plan: fit",
    "plan: order",
    "plan: trials",
)
STEPS = {
    BOARD: StepName.BOARD,
    CUTS: StepName.CUTS,
    TOUCHES: StepName.SURFACE,
    PASSES: StepName.PASSES,
    FIT: StepName.REFERENCE,
}
"""The step of the traveller that a failed stage is told at."""

IRRELEVANT = frozenset({"zero", "run", "pauses", CLOSED})
"""Changes that no plan depends on."""

Stage = Callable[[Pictures, Snapshot, Progress], Any]


class Planner(QObject):
    """Asks the stages one after the other and keeps their newest answers.

    Signals
    -------
    changed() : an answer came, or one was forgotten
    settled() : nothing is being planned any more
    trouble(object) : `DrypointError` of a stage, once

    Attributes
    ----------
    errors : dict
        `StepName` to the error its stage ended in.
    """

    changed = Signal()
    settled = Signal()
    trouble = Signal(object)

    def __init__(self, bridge: Bridge, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._bridge = bridge
        self._pictures: Pictures | None = None
        self._answers: dict[str, Any] = {}
        self.errors: dict[StepName, DrypointError] = {}
        bridge.job_changed.connect(self._job_changed)
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)

    # what is known

    @property
    def board(self) -> BoardPicture | None:
        """Board and blank."""
        return self._answers.get(BOARD)

    @property
    def cuts(self) -> CutPicture | None:
        """Grooves, holes, outline."""
        return self._answers.get(CUTS)

    @property
    def touches(self) -> TouchPicture | None:
        """Touch plan and height."""
        return self._answers.get(TOUCHES)

    @property
    def passes(self) -> PassPicture | None:
        """Passes and reach."""
        return self._answers.get(PASSES)

    @property
    def fit(self) -> FitPicture | None:
        """Reference holes."""
        return self._answers.get(FIT)

    @property
    def order(self) -> Order | None:
        """Everything still to run."""
        return self._answers.get(ORDER)

    @property
    def trials(self) -> TrialPicture | None:
        """Trial cuts in the waste."""
        return self._answers.get(TRIALS)

    # planning

    def plan(self) -> None:
        """Plan everything that is not known for the job as it is now."""
        session, pictures = self._bridge.session, self._pictures
        if session is None or pictures is None:
            return
        if not session.snapshot.sources:
            self._forget(BOARD, CUTS, TOUCHES, PASSES, FIT, ORDER, TRIALS)
            self.changed.emit()
            self.settled.emit()
            return
        for later in (CUTS, TOUCHES, PASSES, FIT, ORDER, TRIALS):
            self._bridge.cancel(later)
        self._ask(session, pictures, BOARD)

    def _ask(self, session: Session, pictures: Pictures, name: str) -> None:
        snap = session.snapshot
        stages: dict[str, Stage] = {
            BOARD: Pictures.board,
            CUTS: Pictures.cuts,
            TOUCHES: Pictures.touches,
            PASSES: Pictures.passes,
            FIT: lambda pictures, snap, _progress: pictures.fit(snap),
            ORDER: Pictures.order,
            TRIALS: lambda pictures, snap, _progress: pictures.trials(snap),
        }
        stage = stages[name]
        self._bridge.ask(name, lambda progress: stage(pictures, snap, progress))

    def _job_changed(self, what: str) -> None:
        if what == OPENED and self._bridge.session is not None:
            self._pictures = Pictures(self._bridge.session.derived)
            self._answers.clear()
            self.errors.clear()
        elif what == CLOSED:
            self._pictures = None
            self._answers.clear()
            self.errors.clear()
            self.changed.emit()
        if what not in IRRELEVANT:
            self.plan()

    def _computed(self, name: str, value: Any) -> None:
        session, pictures = self._bridge.session, self._pictures
        if not name.startswith("plan: ") or session is None or pictures is None:
            return
        self._answers[name] = value
        self.errors.pop(STEPS.get(name, StepName.RUN), None)
        if isinstance(value, BoardPicture) and value.trouble is not None:
            self._forget(CUTS, TOUCHES, PASSES, FIT, ORDER, TRIALS)
            self._note(StepName.BLANK, value.trouble)
            self.changed.emit()
            self.settled.emit()
            return
        if name == BOARD:
            self.errors.pop(StepName.BLANK, None)
        for following in self._after(name, session):
            self._ask(session, pictures, following)
        self.changed.emit()
        self._tell_if_settled()

    def _after(self, name: str, session: Session) -> tuple[str, ...]:
        if name == BOARD:
            return (CUTS,)
        if name == CUTS:
            return (FIT, TRIALS, TOUCHES)
        if name == TOUCHES:
            record = session.snapshot.latest("touches")
            if record is not None and record.data["setup"] == session.snapshot.setup:
                return (PASSES,)
            self._forget(PASSES)
            return (ORDER,)
        return (ORDER,) if name == PASSES else ()

    def _failed(self, name: str, error: DrypointError) -> None:
        if not name.startswith("plan: "):
            return
        later = {
            BOARD: (BOARD, CUTS, TOUCHES, PASSES, FIT, ORDER, TRIALS),
            CUTS: (CUTS, TOUCHES, PASSES, FIT, ORDER, TRIALS),
            TOUCHES: (TOUCHES, PASSES, ORDER),
            PASSES: (PASSES, ORDER),
        }
        step = STEPS.get(name)
        known = None if step is None else self.errors.get(step)
        self._forget(*later.get(name, (name,)))
        if step is not None and known is not None:
            self.errors[step] = known
        if step is not None:
            self._note(step, error)
        self.changed.emit()
        self._tell_if_settled()

    def _note(self, step: StepName, error: DrypointError) -> None:
        if error.where in (StepName.SURFACE, StepName.REFERENCE):
            return  # something earlier must be measured first, and its own line says so
        known = self.errors.get(step)
        self.errors[step] = error
        if known is None or str(known) != str(error):
            self.trouble.emit(error)

    def _forget(self, *names: str) -> None:
        for name in names:
            self._answers.pop(name, None)
            if name in STEPS:
                self.errors.pop(STEPS[name], None)
        if BOARD in names:
            self.errors.pop(StepName.BLANK, None)

    def _tell_if_settled(self) -> None:
        if not any(self._bridge.is_waiting(name) for name in (*STEPS, ORDER, TRIALS)):
            self.settled.emit()
