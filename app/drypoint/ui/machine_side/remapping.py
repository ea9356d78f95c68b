"""Re-map: every path placed anew by the fit of now, and how far that moves things."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
import shapely
from PySide6.QtCore import QObject

from drypoint.cuts.holes import circle_path
from drypoint.errors import PlanError
from drypoint.geometry.points import Points
from drypoint.geometry.rigid import Rigid
from drypoint.progress import Progress
from drypoint.session.plans import Placing
from drypoint.session.session import Session
from drypoint.session.work import require_reach
from drypoint.ui.canvas.legend import Sample
from drypoint.ui.language.words import fill
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.placing import rigid_of
from drypoint.ui.machine_side.running import Running
from drypoint.ui.machine_side.worklist import WorkList, list_work


@dataclass(frozen=True, slots=True, eq=False)
class Remapped:
    """What re-mapping changed.

    Attributes
    ----------
    work : WorkList
        All programs, placed by the fit of now.
    farthest : float
        Largest move of any corner of the board's outline, mm.
    turned_deg : float
    before : tuple of (N, 2)
        Outline and holes where they would have been cut before, seen from the board of now.
    refused : str
        Why a program that is still to run would not be run where it lies now; empty if none.
    """

    work: WorkList
    farthest: float
    turned_deg: float
    before: tuple[Points, ...]
    refused: str = ""


def remap(session: Session, progress: Progress) -> Remapped:
    """Place everything anew. Computes."""
    derived, snap = session.derived, session.snapshot
    now = derived.fit(snap)
    earlier: Placing = derived.fit_of(snap, snap.setup - 1) if snap.setup > 1 else derived.layout(snap).place
    old, new = rigid_of(earlier), rigid_of(now)
    seen = old.then(new.inverse())
    board = derived.board(snap)
    corners = shapely.get_coordinates(board.outline)
    moved = seen.apply(corners) - corners
    rings = [np.asarray(ring.coords) for one in board.outlines for ring in (one.exterior, *one.interiors)]
    rings += [circle_path(hole.x, hole.y, hole.diameter / 2) for hole in board.holes]
    work = list_work(session, progress)
    return Remapped(
        work,
        float(np.hypot(moved[:, 0], moved[:, 1]).max()),
        float(np.degrees(_turn(seen))),
        tuple(seen.apply(ring[:, :2]) for ring in rings),
        _refused(session, work),
    )


def _refused(session: Session, work: WorkList) -> str:
    """Limits of the machine and clamps, looked at for every program that is still to run."""
    for item in work.items:
        if not item.done:
            try:
                require_reach(session.settings, item.program)
            except PlanError as error:
                return error.text
    return ""


def _turn(motion: Rigid) -> float:
    return float(np.arctan2(np.sin(motion.angle), np.cos(motion.angle)))


class Remapping(QObject):
    """Wires Re-map and the view of before."""

    def __init__(self, desk: Desk, running: Running) -> None:
        super().__init__(desk)
        self._desk = desk
        self._running = running
        self.found: Remapped | None = None
        desk.window.jog.reference.remap.connect(self.remap)
        commands = desk.window.commands
        commands["remap"].triggered.connect(self.remap)
        commands["before"].toggled.connect(self._show_before)
        commands["before"].setEnabled(False)

    def remap(self) -> None:
        """Place every path anew by the fit of now."""
        session = self._desk.bridge.session
        if session is None:
            return
        self._desk.say(self.tr("Placing every path anew…"))
        self._desk.ask("remap", lambda progress: remap(session, progress), self._show, self._desk.show_error)

    def _show(self, found: object) -> None:
        assert isinstance(found, Remapped)
        self.found = found
        self._running.take(found.work)
        text = fill(
            self.tr(
                "{n} programs are placed anew: turned by {angle:+.2f}°, "
                "the outline moves by {mm:.2f} mm at most."
            ),
            n=len(found.work.items),
            angle=found.turned_deg,
            mm=found.farthest,
        )
        self._desk.say(found.refused or text.replace("-", "−"))
        before = self._desk.window.commands["before"]
        before.setEnabled(True)
        before.setChecked(False)
        before.setChecked(True)

    def _show_before(self, on: bool) -> None:
        panel = self._desk.window.canvas
        lines = self.found.before if on and self.found is not None else ()
        panel.set_content(replace(panel.canvas.content, before=lines))
        if lines:
            panel.set_legend(self.tr("Board"), ((Sample.BEFORE, self.tr("where it lay before re-mapping")),))
        else:
            self._desk.window.choose_step(self._desk.window.pages.currentIndex())  # its own legend again
