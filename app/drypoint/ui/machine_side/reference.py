"""Reference holes: touched through the panel, what the fit says, and everything placed anew by it."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from PySide6.QtCore import QObject

from drypoint.cuts.model import Cut
from drypoint.geometry.rigid import Rigid
from drypoint.machine.operator import Request, RequestKind
from drypoint.progress import Progress
from drypoint.reference import gross
from drypoint.reference.explain import explain
from drypoint.reference.fit import Fit
from drypoint.reference.worth import Advice, Ring, next_hole
from drypoint.session.actions import find
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.ui.jog.reference import FitFacts, HoleLine
from drypoint.ui.language.words import fill, local
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.pages.measure import ReferencePage, ReferencePageValues
from drypoint.ui.parts.blocks import button
from drypoint.ui.parts.glyph import Mark
from drypoint.wording import say

BENCH_TURN, BENCH_SHIFT = math.radians(0.8), (0.9, -0.6)
"""How the bench's hands clamp the board again: turned and shifted by so much, mm."""


@dataclass(frozen=True, slots=True, eq=False)
class Found:
    """What is known of the board's place."""

    marks: tuple[Cut, ...]
    touched: dict[str, tuple[float, float]]
    residuals: dict[str, float]
    fit: Fit | None
    setup: int
    ring: Ring | None
    check: gross.Check | None
    coming: int | None
    advice: Advice | None
    diagnosis: tuple[str, ...]
    stale: bool


def look_at(session: Session) -> Found:
    """Everything the page and the panel say. Computes."""
    snap = session.snapshot
    marks = session.derived.cuts(snap).marks
    records = [one.data for one in snap.records["reference"] if one.data["setup"] == snap.setup]
    touched = {one["label"]: (one["touched"][0], one["touched"][1]) for one in records}
    facts = find.fit_facts(session, snap)
    fit = facts.fit
    residuals: dict[str, float] = {}
    check = None
    diagnosis: tuple[str, ...] = ()
    if fit is not None:
        labels = [one["label"] for one in records]
        residuals = dict(zip(labels, (float(v) for v in fit.distances), strict=True))
        check = gross.check(fit, names=[say("hole {number}", number=number_of(label)) for label in labels])
        if len(labels) >= 3:
            diagnosis = tuple(one.what for one in explain(fit) if one.significant)
    rest = [mark for mark in marks if mark.label not in touched]
    advice = _advice(session, fit, rest)
    following = rest[advice.hole] if advice is not None else _farthest(rest, marks, touched)
    last = snap.latest("touches")
    return Found(
        marks=marks,
        touched=touched,
        residuals=residuals,
        fit=fit,
        setup=snap.setup,
        ring=None if facts.worth is None else facts.worth.worst,
        check=check,
        coming=None if following is None else number_of(following.label),
        advice=advice,
        diagnosis=diagnosis,
        stale=last is not None and last.data["setup"] != snap.setup,
    )


def _advice(session: Session, fit: Fit | None, rest: list[Cut]) -> Advice | None:
    if fit is None or not rest:
        return None
    board = session.derived.board(session.snapshot)
    settings = session.settings.reference
    targets = [(hole.x, hole.y) for hole in board.holes]
    ranked = next_hole(
        fit,
        [mark.path[0] for mark in rest],
        targets,
        sigma=settings.touch_sigma,
        hole_sigma=settings.hole_sigma,
    )
    return ranked[0] if ranked else None


def _farthest(rest: list[Cut], marks: tuple[Cut, ...], touched: dict[str, tuple[float, float]]) -> Cut | None:
    """The first hole, then the one farthest from those touched."""
    if not rest:
        return None
    done = [mark.path[0] for mark in marks if mark.label in touched]
    if not done:
        return rest[0]
    return max(rest, key=lambda mark: min(float(np.hypot(*(mark.path[0] - at))) for at in done))


def number_of(label: str) -> int:
    """ "R3" → 3."""
    return int("".join(c for c in label if c.isdigit()) or 0)


class Referencing(QObject):
    """Wires the reference page and the panel."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self.found: Found | None = None
        self.page = ReferencePage(desk.window.theme)
        self.moved_button = button(self.tr("The board was moved…"))
        self.moved_button.setToolTip(
            self.tr("Say that it was taken off, turned or clamped anew: place and heights are stale then.")
        )
        self.page.add_actions(self.moved_button)
        desk.window.set_page(6, self.page)
        self.panel = desk.window.jog.reference
        self.panel.over_hole.connect(self.over_hole)
        self.panel.another.connect(self.touch_another)
        self.moved_button.clicked.connect(self.board_moved)
        desk.changed.connect(self._judge)
        desk.looked.connect(lambda _: self._judge())
        self._usable: bool | None = None

    def update_from_job(self) -> None:
        """Compute what is known anew and show it."""
        session = self._desk.bridge.session
        if session is None:
            self.found = None
            self._show_nothing("")
            return
        self._desk.ask(
            "reference", lambda _: look_at(session), self._show, lambda e: self._show_nothing(str(e))
        )

    # doing

    def mark(self, number: int) -> Cut | None:
        """The reference hole of that number."""
        marks = () if self.found is None else self.found.marks
        return next((mark for mark in marks if number_of(mark.label) == number), None)

    def over_hole(self, number: int) -> None:
        """The bit stands over this hole: keep where that is."""
        session, mark = self._desk.bridge.session, self.mark(number)
        if session is None or mark is None:
            return

        def work(station: Station, _progress: Progress) -> tuple[float, float]:
            return find.touch_hole_here(session, station, mark)

        self._desk.with_station(
            self.tr("Hole {n}").format(n=number), work, lambda at: self._say_touched(number, at)
        )

    def touch_another(self) -> None:
        """Go near the hole that comes next and have the bit brought over it."""
        found, session = self.found, self._desk.bridge.session
        mark = None if found is None or found.coming is None else self.mark(found.coming)
        if session is None or mark is None:
            self._desk.say(self.tr("Every reference hole is touched."))
            return
        number = number_of(mark.label)

        def work(station: Station, _progress: Progress) -> tuple[float, float]:
            return find.touch_hole(session, station, mark, find.expected_place(session, mark))

        self._desk.with_station(
            self.tr("Hole {n}").format(n=number), work, lambda at: self._say_touched(number, at)
        )

    def board_moved(self) -> None:
        """The board was taken off, turned or clamped anew."""
        session = self._desk.bridge.session
        if session is None:
            return
        if self._desk.station is None:
            find.moved(session, self.tr("said without a machine"))
            return

        def work(station: Station, _progress: Progress) -> None:
            place = station.place
            if "z" in station.controller.known:
                place.raise_to(place.clearance * 4)
            if station.bench is not None:
                station.bench.operator.reclamped_by = Rigid(BENCH_TURN, BENCH_SHIFT)
            place.ask(
                Request(
                    RequestKind.RECLAMP,
                    self.tr("Move the board"),
                    self.tr("Take it off, turn or clean it, clamp it again. Then its holes are touched."),
                )
            )
            find.moved(session, self.tr("taken off and clamped again"))

        self._desk.with_station(
            self.tr("Clamp again"),
            work,
            lambda _: self._desk.say(
                self.tr("The board was moved: touch two reference holes, better three.")
            ),
        )

    def _say_touched(self, number: int, at: object) -> None:
        if isinstance(at, tuple):
            text = fill(self.tr("Hole {n} touched at x {x:.2f}, y {y:.2f} mm."), n=number, x=at[0], y=at[1])
            self._desk.say(text.replace("-", "−"))

    # showing

    def _show(self, found: object) -> None:
        assert isinstance(found, Found)
        self.found = found
        lines = tuple(self._line(found, mark) for mark in found.marks)
        touched = len(found.touched)
        wrong = self._wrong(found)
        self.page.show_fit(
            ReferencePageValues(
                residual=None if found.fit is None else found.fit.rms,
                spare=self._spare(touched),
                holes=lines,
                next_what=self._next_what(found),
                next_text=self._next_text(found),
                facts=self._facts(found),
                worst=self._worst(found),
                stale_what=wrong[0],
                stale_text=wrong[1],
            )
        )
        residual = None if found.fit is None else found.fit.rms
        ring = None if found.ring is None else found.ring.left
        self.panel.show_holes(lines, FitFacts(residual, ring), found.coming)
        self._usable = None
        self._judge()

    def _show_nothing(self, why: str) -> None:
        self.found = None
        self.page.show_fit(ReferencePageValues(stale_what=why))
        self.panel.show_holes((), FitFacts(), None)

    def _line(self, found: Found, mark: Cut) -> HoleLine:
        number = number_of(mark.label)
        at = (float(mark.path[0][0]), float(mark.path[0][1]))
        state = Mark.DONE if mark.label in found.touched else Mark.TO_DO
        named = found.check is not None and self._is_named(found, mark.label)
        state = Mark.ERROR if named else state
        return HoleLine(
            number, at, found.residuals.get(mark.label), Mark.READY if number == found.coming else state
        )

    def _is_named(self, found: Found, label: str) -> bool:
        check = found.check
        labels = list(found.residuals)
        return check is not None and any(labels[k] == label for k in check.holes if k < len(labels))

    def _spare(self, touched: int) -> str:
        match touched:
            case 0 | 1 | 2:
                return self.tr("{n} holes, only their distance tells errors").format(n=touched)
            case 3:
                return self.tr("3 holes, one to spare")
            case _:
                return self.tr("{n} holes, {s} to spare").format(n=touched, s=touched - 2)

    def _next_what(self, found: Found) -> str:
        if found.coming is None:
            return ""
        return self.tr("Touch hole {n} next").format(n=found.coming)

    def _next_text(self, found: Found) -> str:
        if found.advice is not None:
            return fill(
                self.tr("It lowers the worst expected error from {now:.2f} to {then:.2f} mm."),
                now=found.advice.now,
                then=found.advice.then,
            )
        if not found.touched and found.setup == 1:
            return self.tr("Not needed while the board lies as it was laid and zero was set at its corner.")
        return self.tr("Far apart is best: the turn is found more sharply.")

    def _facts(self, found: Found) -> tuple[tuple[str, str], ...]:
        if found.fit is None:
            return ()
        fit = found.fit
        spread = math.degrees(fit.angle_sigma())
        rows = [
            (self.tr("Turned"), local(f"{math.degrees(fit.angle):+.2f}° ± {spread:.2f}°")),
            (self.tr("Origin at"), local(f"{fit.offset[0]:.3f}, {fit.offset[1]:.3f} mm")),
            (self.tr("Scale, not used"), local(f"{fit.scale:.4f} ± {fit.scale_sigma:.4f}")),
        ]
        if found.check is not None and found.check.distance_error is not None:
            rows.append((self.tr("Distance is off by"), local(f"{found.check.distance_error:+.3f} mm")))
        rows += [(self.tr("Explained by"), text) for text in found.diagnosis[:1]]
        return tuple((name, value.replace("-", "−")) for name, value in rows)

    def _worst(self, found: Found) -> tuple[tuple[str, str], ...]:
        ring = found.ring
        if ring is None:
            return ()
        at = fill(self.tr("at {x:.2f}, {y:.2f}"), x=ring.at[0], y=ring.at[1])
        left = (self.tr("Ring left, 95 %"), local(f"{ring.left:.2f} mm"))
        return ((at, fill(self.tr("ring {r:.2f} mm"), r=ring.designed)), left)

    def _wrong(self, found: Found) -> tuple[str, str]:
        check = found.check
        if check is not None and check.verdict is not gross.Verdict.FITS:
            return self.tr("A hole may be wrong"), check.what
        if found.fit is None and found.setup > 1:
            return self.tr("Where the board lies is not known"), self.tr(
                "It was moved. Touch two reference holes, better three; nothing is run before."
            )
        if found.stale:
            return self.tr("Surface and passes are stale"), self.tr(
                "Heights were touched before the board was moved. Drilling and the outline carry them along; "
                "touch the copper again before the next pass."
            )
        return "", ""

    def _judge(self) -> None:
        usable = self._desk.station is not None and not self._desk.busy
        if usable != self._usable:
            self._usable = usable
            self.panel.set_usable(usable)
            self.moved_button.setEnabled(not self._desk.busy)
            self._desk.window.commands["over_hole"].setEnabled(usable)
