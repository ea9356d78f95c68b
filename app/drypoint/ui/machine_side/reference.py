"""Reference holes: found through the panel in one of four ways, what the fit says, how sure it is."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from PySide6.QtCore import QObject

from drypoint.bits.model import Bit
from drypoint.cuts.model import Cut
from drypoint.errors import MachineError
from drypoint.progress import Progress
from drypoint.reference.fit import TOUCH_SIGMA
from drypoint.session.actions import find
from drypoint.session.actions.touch_off import touch_rim
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.session.work import take_up
from drypoint.ui.canvas.content import Spot
from drypoint.ui.jog.reference import FitFacts
from drypoint.ui.language.words import fill
from drypoint.ui.machine_side import found as told
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.found import Found, look_at
from drypoint.ui.machine_side.jogging import PlaceDialog
from drypoint.ui.machine_side.moving import Moving
from drypoint.ui.pages.reference import ReferencePage, ReferencePageValues
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import Choice, NumberField, Setting

STEP = 6
"""Number of this step."""
SURE = ("touch_sigma", "hole_sigma", "mark_sigma")
"""Settings that say how sure a touch and a hole are."""

Touch = Callable[[Session, Station, Cut], Any]


class Referencing(QObject):
    """Wires the reference page and the panel."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self.found: Found | None = None
        self._chosen: str | None = None
        self._usable: bool | None = None
        self.dialog: PlaceDialog | None = None
        self.moving = Moving(desk)
        self.page = ReferencePage(desk.window.theme)
        self.sighted = Choice(self.tr("Holes are found"), 130)
        self.fields: dict[str, NumberField] = {}
        self._add_fields()
        desk.window.set_page(STEP, self.page)
        self.panel = desk.window.jog.reference
        self._connect()

    @property
    def moved_button(self) -> Any:
        """The button that says that the board was moved."""
        return self.page.moved_button

    def _add_fields(self) -> None:
        page = self.page
        page.section(self.tr("How sure"), self.tr("standard deviation"))
        for way, name in (
            ("eye", self.tr("by eye")),
            ("light spot", self.tr("by light spot")),
            ("rim", self.tr("by the rim")),
        ):
            self.sighted.addItem(name, way)
        explain(page.add(Setting(self.tr("Holes are found"), self.sighted)), "reference.way")
        names = (self.tr("Touch"), self.tr("Drilled holes"), self.tr("Pricked marks"))
        for key, name in zip(SURE, names, strict=True):
            self.fields[key] = NumberField(name, "mm", decimals=3, least=0.001, most=1.0, step=0.005)
            self.fields[key].edited.connect(lambda value, k=key: self._change(**{k: value}))
            explain(page.add(Setting(name, self.fields[key])), f"reference.{key}")

    def _connect(self) -> None:
        desk, panel, page = self._desk, self.panel, self.page
        panel.over_hole.connect(lambda name: self._touch(name, find.touch_hole_here))
        panel.another.connect(self.touch_another)
        panel.set_over.connect(lambda name: self._touch(name, _set_over))
        panel.typed.connect(self._type)
        panel.shift.connect(lambda name: self._touch(name, _shift))
        panel.rim.connect(lambda name: self._touch(name, self._feel_rim))
        panel.chosen.connect(self.choose)
        page.moved.connect(self.moving.clamped_anew)
        page.turn_over.connect(self.moving.turn_over)
        page.stretch_chosen.connect(self._stretch)
        page.leave_out.connect(self._leave_out)
        self.sighted.activated.connect(lambda _: self._choose_way(str(self.sighted.currentData())))
        desk.changed.connect(self._judge)
        desk.looked.connect(lambda _: self._judge())
        desk.window.step_chosen.connect(self._step_chosen)
        desk.window.canvas.canvas.picked.connect(self._picked)
        desk.window.canvas.canvas.set_description(lambda thing: told.card(self.found, thing))
        desk.looked.connect(lambda _: self._look_at_approach())

    def _step_chosen(self, step: int) -> None:
        self.panel.emphasise(step == STEP)
        if step == STEP:
            self._desk.window.show_position()  # holes are found there
            self._circle()

    def update_from_job(self) -> None:
        """Compute what is known anew and show it."""
        session = self._desk.bridge.session
        if session is None:
            self._show_nothing("")
            return
        self._desk.ask(
            "reference", lambda _: look_at(session), self._show, lambda e: self._show_nothing(str(e))
        )

    # which

    @property
    def coming(self) -> str | None:
        """The hole to find now: the one chosen, else the one that helps most."""
        if self.found is None:
            return None
        return self._chosen if self._chosen is not None else self.found.coming

    def choose(self, name: str) -> None:
        """Find this hole next."""
        self._chosen = name
        if self.found is not None:
            self._show(self.found)

    def _picked(self, thing: object) -> None:
        """A hole was clicked on the canvas while this page is open."""
        if self._desk.window.pages.currentIndex() != STEP or self.found is None:
            return
        kind, at = getattr(thing, "kind", ""), getattr(thing, "at", None)
        if kind not in ("hole", "reference") or at is None:
            return
        near = [one for one in self.found.all_holes if abs(one.at[0] - at[0]) + abs(one.at[1] - at[1]) < 1e-6]
        if near:
            self.choose(near[0].label)

    # doing

    def touch_another(self) -> None:
        """Go near the hole that comes next and have the bit brought over it."""
        if self.coming is None:
            self._desk.say(self.tr("Every reference hole is touched."))
        else:
            self._touch(self.coming, _bring_over)

    def _touch(self, name: str, how: Touch) -> None:
        session = self._desk.bridge.session
        cut = None if self.found is None else self.found.cut(name)
        if session is None or cut is None:
            return

        def work(station: Station, _progress: Progress) -> Any:
            return how(session, station, cut)

        self._desk.with_station(
            self.tr("Hole {name}").format(name=name), work, lambda at: self._say_touched(name, at)
        )

    def _say_touched(self, name: str, at: object) -> None:
        self._chosen = None
        if isinstance(at, tuple):
            text = fill(self.tr("Hole {name} is at x {x:.2f}, y {y:.2f} mm."), name=name, x=at[0], y=at[1])
            self._desk.say(text.replace("-", "−"))
        self.update_from_job()

    def _type(self, name: str) -> None:
        session = self._desk.bridge.session
        cut = None if self.found is None else self.found.cut(name)
        if session is None or cut is None:
            return
        window = self._desk.window
        x, y = find.expected_place(session, cut)
        self.dialog = PlaceDialog(window.commands, (round(x, 3), round(y, 3), 0.0), window, hole=name)
        self.dialog.given.connect(lambda place: self._touch(name, _typed(place["x"], place["y"])))
        self.dialog.open()

    def _feel_rim(self, session: Session, station: Station, cut: Cut) -> tuple[float, float]:
        bit = bit_named(session, self._desk.bit_in)
        diameter = 0.0 if bit is None else float(getattr(bit, "diameter", 0.0))
        if not diameter:
            raise MachineError(
                self.tr("A rim is felt with a drill or an end mill, and it is not known that one is in."),
                self.tr("Hole {name}").format(name=cut.label),
                self.tr("Put it in by way of the Run page or touch Z with it, then try again."),
            )
        expected = find.expected_place(session, cut)
        return touch_rim(session, station, cut, expected, diameter).centre

    def _stretch(self, on: bool) -> None:
        session = self._desk.bridge.session
        if session is not None:
            find.choose_stretch(session, on)

    def _leave_out(self) -> None:
        session, name = self._desk.bridge.session, self._left_out()
        if session is not None and name:
            find.forget_hole(session, name)
            self._chosen = None

    def _left_out(self) -> str:
        """The touched hole that can be left out: the one chosen, or the one that is named as wrong."""
        found = self.found
        if found is None:
            return ""
        if self._chosen in found.touched:
            return self._chosen or ""
        suspects = told.named(found)
        return suspects[0] if suspects else ""

    # how sure

    def _choose_way(self, way: str) -> None:
        self._change(way=way, touch_sigma=TOUCH_SIGMA[way])

    def _change(self, **values: Any) -> None:
        session = self._desk.bridge.session
        if session is not None:
            changed = replace(session.settings.reference, **values)
            session.change(self.tr("How sure holes are"), reference=changed)

    # showing

    def _show(self, found: object) -> None:
        assert isinstance(found, Found)
        self.found = found
        session = self._desk.bridge.session
        if session is None:
            return
        coming = self.coming
        wrong, what = told.trouble(found), told.advice_words(found, coming)
        listed = coming if self._chosen is not None or told.needed(found) else None
        stretch = None
        if told.may_stretch(found) and found.fit is not None:
            stretch = found.fit.stretch is not None
        self.page.show_fit(
            ReferencePageValues(
                residual=None if found.fit is None else found.fit.rms,
                spare=told.spare(len(found.touched)),
                holes=told.lines(found, all_of_them=False, coming=listed),
                next_what=what[0],
                next_text=what[1],
                facts=told.fit_rows(found),
                diagnosis=found.diagnosis,
                worst=told.worst_rows(found),
                stale_what=wrong[0],
                stale_text=wrong[1],
                stretch=stretch,
                leave_out=self._left_out(),
            )
        )
        residual = None if found.fit is None else found.fit.rms
        ring = None if found.ring is None else found.ring.left
        every = told.lines(found, all_of_them=True, coming=coming)
        self.panel.show_holes(every, FitFacts(residual, ring), coming)
        believed = session.settings.reference
        self.sighted.setCurrentIndex(self.sighted.findData(believed.way))
        for key, field in self.fields.items():
            field.set_value(getattr(believed, key))
        self._circle()
        self._usable = None
        self._judge()

    def _circle(self) -> None:
        """The hole to find now, circled on the canvas."""
        found, window = self.found, self._desk.window
        if found is None or self.coming is None or window.pages.currentIndex() != STEP:
            return
        if self._chosen is None and not told.needed(found):
            window.canvas.canvas.set_chosen(())
            return
        cut = found.cut(self.coming)
        if cut is not None:
            at = (float(cut.path[0][0]), float(cut.path[0][1]))
            window.canvas.canvas.set_chosen((), Spot(at, max(cut.diameter, 1.5)))

    def _look_at_approach(self) -> None:
        """Whether the bit came the other way than programs do, so that play is taken up wrongly."""
        session, station = self._desk.bridge.session, self._desk.station
        other = False
        if session is not None and station is not None and not self._desk.busy:
            other = take_up(session.settings) > 0.0 and min(station.controller.heading[:2]) < 0
        self.panel.show_approach(other)

    def _show_nothing(self, why: str) -> None:
        self.found, self._chosen = None, None
        self.page.show_fit(ReferencePageValues(stale_what=why))
        self.panel.show_holes((), FitFacts(), None)

    def _judge(self) -> None:
        usable = self._desk.station is not None and not self._desk.busy
        if usable != self._usable:
            self._usable = usable
            self.panel.set_usable(usable)
            for each in (self.page.moved_button, self.page.turn_button):
                each.setEnabled(not self._desk.busy)
            self.page.play_button.setEnabled(usable)
            self._desk.window.commands["over_hole"].setEnabled(usable)


def bit_named(session: Session, name: str) -> Bit | None:
    """The bit of the box with that name."""
    bits = session.settings.bits
    every: tuple[Bit, ...] = (bits.vbit, *bits.drills, bits.mill)
    return next((bit for bit in every if bit.name == name), None)


def _bring_over(session: Session, station: Station, cut: Cut) -> tuple[float, float]:
    return find.touch_hole(session, station, cut, find.expected_place(session, cut))


def _shift(session: Session, station: Station, cut: Cut) -> tuple[float, float]:
    return find.shift_to_hole(session, station, cut, find.expected_place(session, cut))


def _set_over(session: Session, station: Station, cut: Cut) -> tuple[float, float]:
    at = find.expected_place(session, cut)
    find.set_over_hole(session, station, cut, at)
    return at


def _typed(x: float, y: float) -> Touch:
    def touch(session: Session, station: Station, cut: Cut) -> tuple[float, float]:
        find.set_over_hole(session, station, cut, (x, y))
        return x, y

    return touch
