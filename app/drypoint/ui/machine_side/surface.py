"""Touching the copper from the surface page: contact, zero, hold, touches that show as they are made."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QCheckBox

from drypoint.board.model import Finding
from drypoint.errors import DrypointError
from drypoint.geometry.points import Points
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.procedures.contact import CIRCUIT, check_contact
from drypoint.machine.state import MachineState
from drypoint.progress import Progress
from drypoint.session.actions import measure
from drypoint.session.actions.measure import zero_spot
from drypoint.session.session import Session
from drypoint.session.sheet import clock
from drypoint.session.station import Station
from drypoint.surface.model import fit_surface
from drypoint.surface.plan import Worth
from drypoint.surface.touch import Touch, Touches
from drypoint.ui.heat.picture import HeatPicture, draw_heat
from drypoint.ui.language.words import fill
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.placing import rigid_of
from drypoint.ui.pages.measure import SurfacePage, TouchAdvice
from drypoint.wording import strung

LEAST = 4
"""Touches from which on a surface is drawn."""

MORE = 12
"""Touches that are made when more are asked for."""


STEPS = {RequestKind.CLIP_TO_BIT: 1, RequestKind.CLIP_ON: 2}
"""How many steps of the check of the circuit are passed when this is asked."""


class Touching(QObject):
    """Wires what touches on the surface page."""

    _touched = Signal(object)

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._live: list[Touch] = []
        self._closed: bool | None = None
        self._coming: Points = np.zeros((0, 2))
        self.survey = QCheckBox(self.tr("Touch the edges first: does it give?"))
        self.survey.setToolTip(
            self.tr("Touches along the edges of the blank tell where no clamp holds it, and ask for one.")
        )
        self.survey.setChecked(True)
        page = desk.window.pages.widget(4)
        if isinstance(page, SurfacePage):
            self.page = page
            page.add_actions(self.survey)
            page.touch.connect(self.touch)
            page.touch_more.connect(self.touch_more)
            desk.changed.connect(self._judge)
            desk.asked.connect(self._follow_circuit)
            desk.window.step_chosen.connect(lambda _: self._show_coming())
            desk.looked.connect(self._show_input)
        self._touched.connect(self._show_touch)

    def touch(self) -> None:
        """The whole measurement."""
        session = self._desk.bridge.session
        if session is None:
            return
        self._live = []
        bit = session.settings.bits.vbit.name
        put, survey = self._desk.bit_in != bit, self.survey.isChecked()
        before = () if put else tuple(self._kept(session))
        self._live.extend(before)

        def work(station: Station, progress: Progress) -> Sequence[Finding]:
            loose = measure.touch_copper(
                session, station, progress, put=put, survey=survey, on_touch=self._touched.emit
            )
            self._desk.bit_in = bit
            return loose

        self._desk.with_station(self.tr("Touch the copper"), work, self._done, self._failed)

    def touch_more(self) -> None:
        """Some more touches, where they help most."""
        session = self._desk.bridge.session
        if session is None:
            return
        self._live = list(self._kept(session))

        def work(station: Station, progress: Progress) -> Sequence[Finding]:
            spot = zero_spot(session)
            measure.to_zero_spot(station, spot)
            check_contact(station.place, at=spot)
            measure.touch_more(session, station, MORE, progress, on_touch=self._touched.emit)
            measure.end_contact(station)
            return ()

        self._desk.with_station(self.tr("Touch more"), work, self._done, self._failed)

    # the contact circuit

    def _follow_circuit(self, request: object) -> None:
        """Which step of the check is asked for now."""
        if not isinstance(request, Request):
            return
        if request.kind in STEPS:
            self.page.show_circuit(STEPS[request.kind], going=True)
        elif request.kind is RequestKind.CLIP_OFF:
            first = request.title == CIRCUIT
            self.page.show_circuit(0 if first else len(STEPS) + 1, going=first)

    def _show_input(self, state: MachineState) -> None:
        connected = self._desk.station is not None
        closed = state.contact if connected else None
        if closed != self._closed:
            self._closed = closed
            self.page.show_input(closed)

    # where to touch next

    def weigh(self) -> None:
        """Whether more touches pay, in the background."""
        session = self._desk.bridge.session
        if session is None or not self._kept(session):
            self._coming = np.zeros((0, 2))
            self._show_coming()
            self.page.show_advice(None)
            return

        def work(progress: Progress) -> tuple[Worth, Points]:
            worth = measure.weigh_touches(session, progress)
            back = rigid_of(session.derived.fit(session.snapshot)).inverse()
            return worth, back.apply(worth.places) if len(worth.places) else worth.places

        self._desk.ask("touches that pay", work, self._advise, lambda _: self.page.show_advice(None))

    def _advise(self, found: tuple[Worth, Points]) -> None:
        worth, self._coming = found
        self._show_coming()
        figures = fill(
            self.tr(
                "{n} more would lower the doubtful groove from {before:.0f} to {after:.0f} mm: "
                "{saved} of cutting saved for {cost} of touching."
            ),
            n=worth.count,
            before=worth.before,
            after=worth.after,
            saved=clock(worth.saved),
            cost=clock(worth.cost),
        )
        what = self.tr("More touches pay") if worth.pays else self.tr("Enough: more touches do not pay")
        self.page.show_advice(TouchAdvice(what, figures, len(worth.places)))

    def _show_coming(self) -> None:
        """Where to touch next, on the canvas, while this page is shown."""
        shown = self._desk.window.pages.currentWidget() is self.page
        self._desk.window.canvas.canvas.set_coming(self._coming if shown else None)

    def _kept(self, session: Session) -> Sequence[Touch]:
        found = session.derived.touches(session.snapshot)
        if found is None or found[1] != session.snapshot.setup:
            return ()
        return found[0].touches

    def _done(self, loose: Sequence[Finding]) -> None:
        self._live = []
        if loose:
            said = strung([one.what for one in loose])
            self._desk.say(
                fill(self.tr("Touched. {said} It was clamped before the touches were made."), said=said)
            )
        else:
            self._desk.say(self.tr("Touched; the laminate is held everywhere."))

    def _failed(self, error: DrypointError) -> None:
        if self._live:
            self._desk.say(self.tr("What was touched is kept; Touch the copper goes on from there."))

    def _show_touch(self, touch: Touch) -> None:
        if not self._live:
            self.page.show_circuit(len(STEPS) + 1)
        self._live.append(touch)
        if len(self._live) < LEAST:
            return
        session, touches = self._desk.bridge.session, Touches(tuple(self._live))
        if session is not None:
            self._desk.ask("live surface", lambda _: _draw(session, touches), self._show_heat)

    def _show_heat(self, picture: object) -> None:
        if isinstance(picture, HeatPicture) and self._live:
            self._desk.window.heat.set_picture(picture)

    def _judge(self) -> None:
        usable = self._desk.station is not None and not self._desk.busy
        if self._desk.station is None:
            self.page.show_circuit(0)
        why = "" if usable else self.tr("Connect a machine first; one thing at a time.")
        for each in (self.page.touch_button, self.page.more_button):
            each.setToolTip(why)
        if self._desk.busy:
            self.page.touch_button.setEnabled(False)
            self.page.more_button.setEnabled(False)
        else:
            self.page.touch_button.setEnabled(True)
            session = self._desk.bridge.session
            self.page.more_button.setEnabled(session is not None and bool(self._kept(session)))


def _draw(session: Session, touches: Touches) -> HeatPicture:
    """The surface as far as it is known, board frame."""
    snap = session.snapshot
    fit = session.derived.fit(snap)
    surface = fit_surface(touches.points, give=touches.give)
    layout = session.derived.layout(snap)
    places = rigid_of(fit).inverse().apply(touches.points[:, :2])
    x0, y0, x1, y1 = layout.blank.bounds
    return draw_heat(
        lambda at: surface.mean(fit.apply(at)),
        lambda at: surface.std(fit.apply(at)),
        (x0, y0, x1, y1),
        places,
        touches.give,
    )
