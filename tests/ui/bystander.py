"""A small board, and somebody who clicks through the window with patience."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from drypoint.machine.operator import RequestKind
from drypoint.session.actions.measure import find_corner
from drypoint.session.session import Session
from drypoint.session.work import marks_work
from drypoint.surface.touch import Touch, Touches
from drypoint.ui.app import Application
from drypoint.ui.machine_side.wire import MachineSide

COPPER = """%TF.FileFunction,Copper,L1,Top*%
%FSLAX46Y46*%
%MOMM*%
%ADD10C,1.6*%
%ADD11C,0.8*%
%TO.N,A*%
D10*
X3000000Y3000000D03*
D11*
X3000000Y3000000D02*
X3000000Y9000000D01*
D10*
X3000000Y9000000D03*
%TO.N,B*%
D10*
X8000000Y3000000D03*
D11*
X8000000Y3000000D02*
X12000000Y9000000D01*
D10*
X12000000Y9000000D03*
M02*
"""
OUTLINE = """%TF.FileFunction,Profile,NP*%
%FSLAX46Y46*%
%MOMM*%
%ADD10C,0.1*%
D10*
X0Y0D02*
X16000000Y0D01*
X16000000Y12000000D01*
X0Y12000000D01*
X0Y0D01*
M02*
"""
LONG = 60_000
"""Longest any step may take here, ms; far above what it does take."""


def measure_flat(path: Path) -> None:
    """Heights as of a flat sheet and reference marks as made, without the time that takes."""
    session = Session.open(path)
    snap = session.snapshot
    layout = session.derived.layout(snap)
    places = [
        (x, y) for x in (3.0, layout.width / 2, layout.width - 3.0) for y in (3.0, 8.0, layout.height - 3)
    ]
    touches = Touches(tuple(Touch(x, y, 0.003 * (k % 3 - 1)) for k, (x, y) in enumerate(places)))
    session.keep("touches", {"setup": 1, "touches": touches})
    for item in marks_work(session.derived, session.snapshot):
        session.keep("done", {"program": item.program.name, "setup": 1})
    session.close()


class Bystander:
    """The window with its machine side, and patience."""

    def __init__(self, application: Application, qtbot) -> None:
        self.app = application
        self.window = application.window
        self.qtbot = qtbot
        side = self.window.findChild(MachineSide)
        assert side is not None
        self.side = side
        self.desk = side.desk
        self.bugs: list[str] = []
        application.bridge.bug.connect(lambda _name, text: self.bugs.append(text))

    @property
    def session(self) -> Session:
        session = self.app.bridge.session
        assert session is not None
        return session

    def wait(self, until: Callable[[], bool]) -> None:
        self.qtbot.waitUntil(lambda: until() or bool(self.bugs), timeout=LONG)
        assert not self.bugs, self.bugs[0]

    def click(self, what: QWidget) -> None:
        self.wait(what.isEnabled)
        self.qtbot.mouseClick(what, Qt.MouseButton.LeftButton)

    def rest(self) -> None:
        """Until nothing moves, is asked or is computed."""
        bridge, running = self.app.bridge, self.side.running
        desk = self.desk
        self.wait(lambda: not (desk.busy or desk._handlers or bridge.busy or running._later.isActive()))

    def connect(self) -> None:
        self.window.commands["connect"].trigger()
        dialog = self.side.connecting._dialog
        assert dialog is not None
        dialog.pace.setCurrentIndex(3)
        self.click(dialog.connect_button)
        self.wait(lambda: self.desk.station is not None and not self.desk.busy)
        dialog.reject()

    def asked(self, kind: RequestKind) -> None:
        """Until this is asked and may be answered."""
        bar = self.desk.bar
        self.wait(lambda: bar.asked is not None and bar.asked.request.kind is kind)
        self.wait(bar.done_button.isEnabled)

    def touch(self) -> None:
        """The copper, with the bench's hands doing all of it."""
        self.window.choose_step(4)
        self.desk.operator.shown = 0.0
        self.desk.bar.automatic.setChecked(True)
        self.side.touching.survey.setChecked(False)
        self.click(self.side.touching.page.touch_button)
        self.rest()

    def place(self) -> None:
        """Find the corner of the blank, with the bench's hands."""
        self.desk.operator.shown = 0.0
        self.desk.bar.automatic.setChecked(True)
        session = self.session
        self.desk.with_station("place", lambda station, _: find_corner(session, station))
        self.rest()

    def run(self) -> None:
        """The next piece of work to its end."""
        self.window.choose_step(7)
        self.click(self.side.running.page.start_button)
        self.rest()
