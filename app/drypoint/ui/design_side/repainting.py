"""What is painted on the board to be cut again: the brush, the page's buttons, and what is shown of it."""

from __future__ import annotations

import shapely
from PySide6.QtCore import QObject

from drypoint.errors import DrypointError
from drypoint.geometry.points import Points
from drypoint.session.net_reach import NetReach
from drypoint.session.painting import is_only, paint, paint_net, paint_only, stroke, unpaint
from drypoint.session.pass_plan import PAINTED, painted_in
from drypoint.ui.bridge import CLOSED, OPENED, Bridge
from drypoint.ui.canvas.content import View
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.pages.passes import PassesPage
from drypoint.ui.window import MainWindow

PAINT_NET = "paint a net"


class Repainting(QObject):
    """Wires the brush. It is laid aside as soon as another page is shown."""

    def __init__(self, window: MainWindow, bridge: Bridge, page: PassesPage, messages: Messages) -> None:
        super().__init__(window)
        self._window, self._bridge, self._page, self._messages = window, bridge, page, messages
        self._radius = 0.0
        canvas = window.canvas.canvas
        canvas.painted.connect(self._stroke)
        page.painting_changed.connect(self._take_brush)
        page.only_changed.connect(self._set_only)
        page.unpainted.connect(self._unpaint)
        page.net_painted.connect(self._paint_net)
        window.step_chosen.connect(lambda _: page.paint_button.setChecked(False))
        bridge.job_changed.connect(self._job_changed)
        bridge.failed.connect(self._failed)

    def _take_brush(self, radius: float) -> None:
        self._radius = radius
        canvas = self._window.canvas
        canvas.canvas.set_painting(radius)
        if radius and canvas.canvas.view in (View.NETS, View.ORDER):
            canvas.set_view(View.REACH)
        if radius:
            said = self.tr("Drag over the grooves to be cut again; the middle button still pans.")
            self._messages.say(said)

    def _stroke(self, way: Points) -> None:
        session = self._bridge.session
        if session is not None and self._radius:
            paint(session, stroke(way, self._radius), only=self._page.only.isChecked())

    def _set_only(self, only: bool) -> None:
        session = self._bridge.session
        if session is not None:
            paint_only(session, only)

    def _unpaint(self, everything: bool) -> None:
        session = self._bridge.session
        if session is not None:
            unpaint(session, everything=everything)

    def _paint_net(self, line: NetReach | None) -> None:
        session, only = self._bridge.session, self._page.only.isChecked()
        if session is not None and line is not None:
            self._bridge.ask(PAINT_NET, lambda _progress: paint_net(session, line.net, only=only))

    def _failed(self, name: str, error: DrypointError) -> None:
        if name == PAINT_NET:
            self._messages.error(error)

    def _job_changed(self, what: str) -> None:
        if what in (OPENED, CLOSED):
            self._page.paint_button.setChecked(False)
        if what in (OPENED, CLOSED, PAINTED, "pass", "setup"):
            session = self._bridge.session
            painted = None if session is None else painted_in(session.snapshot)
            only = session is not None and painted is not None and is_only(session)
            self._page.show_painted(0.0 if painted is None else float(shapely.area(painted.area)), only=only)
