"""What the canvas and the heat view show of the job, step by step."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from PySide6.QtCore import QObject

from drypoint.session.doubts import suspects
from drypoint.session.pass_plan import PAINTED, painted_in
from drypoint.session.pauses import KIND as PAUSES
from drypoint.session.pauses import pauses_in
from drypoint.session.work import is_done
from drypoint.ui.bridge import Bridge
from drypoint.ui.canvas.content import Box, Clamp, Content, PauseMark, Shape, View, draw_shape
from drypoint.ui.canvas.legend import Sample
from drypoint.ui.canvas.panel import Timing
from drypoint.ui.design_side.order import Order
from drypoint.ui.design_side.pages import DesignPages
from drypoint.ui.design_side.planner import Planner
from drypoint.ui.window import MainWindow

BOARD, BLANK, BITS, CUTS, SURFACE, PASSES, REFERENCE, RUN, PROOF = range(9)
"""Numbers of the steps."""

ENLARGED = 40.0
"""How many times residuals and expected errors are drawn larger."""

VIEWS = {BOARD: View.NETS, BLANK: View.NETS, CUTS: View.NETS, SURFACE: View.NETS, REFERENCE: View.NETS}
"""The view a step begins with; the others keep what was chosen."""


class DesignView(QObject):
    """Shows what is planned on the canvas and in the heat view."""

    def __init__(self, window: MainWindow, bridge: Bridge, planner: Planner, pages: DesignPages) -> None:
        super().__init__(window)
        self._window, self._bridge, self._planner, self._pages = window, bridge, planner, pages
        self._step = BOARD
        self._held: dict[str, object] = {}
        planner.changed.connect(self.show_plan)
        bridge.job_changed.connect(self._job_changed)
        window.step_chosen.connect(self._step_chosen)
        canvas = window.canvas.canvas
        canvas.clamp_dragged.connect(self._clamp_dragged)
        canvas.board_dragged.connect(self._board_dragged)
        canvas.picked.connect(self._picked)
        pages.blank.form.edited.connect(lambda _: self.show_content())
        pages.blank.form.clamp_chosen.connect(canvas.set_chosen_clamp)
        self.show_plan()

    def show_plan(self) -> None:
        """Everything anew from what is planned."""
        self._show_heat()
        self._show_times()
        self.show_content()

    def _job_changed(self, what: str) -> None:
        if what in (PAUSES, PAINTED, "run"):
            self.show_content()

    def show_content(self) -> None:
        """The canvas anew."""
        content = self._content()
        if not _same(content, self._window.canvas.canvas.content):
            self._window.canvas.set_content(content)

    # content

    def _content(self) -> Content:
        planner, step = self._planner, self._step
        board = planner.board
        if board is None:
            return Content()
        blank, clamps = self._blank()
        whole = Content(board=board.drawing, blank=blank, clamps=clamps, zero=(blank[0], blank[1]))
        if step == BLANK:
            return whole
        cuts, passes, fit, touches = planner.cuts, planner.passes, planner.fit, planner.touches
        if cuts is not None:
            whole = replace(whole, tabs=cuts.tabs)
            if step != BOARD:
                whole = replace(whole, grooves=cuts.grooves, wide=cuts.wide)
        if passes is not None:
            whole = replace(whole, earlier=passes.earlier, current=passes.current, reach=passes.reach)
        if planner.order is not None:
            whole = replace(whole, order=planner.order.paths)
        if fit is not None and step >= BITS:
            whole = replace(whole, references=fit.holes)
            if step == REFERENCE:
                whole = replace(whole, errors=fit.errors, enlarged=ENLARGED)
        if planner.trials is not None:
            whole = replace(whole, trials=planner.trials.shown)
        if touches is not None:
            whole = replace(whole, stale=touches.stale)
            if step == SURFACE:
                whole = replace(whole, touches=touches.planned)
        return self._with_marks(whole)

    def _with_marks(self, whole: Content) -> Content:
        """With what a person put on the board, and what was cut since a check failed."""
        session = self._bridge.session
        if session is None or self._step < PASSES:
            return whole
        snap, passes = session.snapshot, self._planner.passes
        wanted = [one for one in pauses_in(snap) if not is_done(snap, one.program)]
        whole = replace(whole, pauses=tuple(PauseMark(one.at, one.piece) for one in wanted))
        painted = painted_in(snap)
        if painted is not None:
            whole = replace(whole, painted=draw_shape("painted", painted.area))
        doubtful = {one.pass_number for one in suspects(session)}
        if passes is None or not doubtful:
            return whole
        made = zip(passes.plan.done, passes.earlier, strict=True)
        return replace(whole, suspect=tuple(paths for one, paths in made if one.number in doubtful))

    def _blank(self) -> tuple[Box, tuple[Clamp, ...]]:
        """Blank and clamps as the form has them, board frame: what is dragged is seen at once."""
        values = self._pages.blank.form.values
        dx, dy = -values.board_x, -values.board_y
        clamps = tuple(
            replace(
                clamp,
                box=(clamp.box[0] + dx, clamp.box[1] + dy, clamp.box[2] + dx, clamp.box[3] + dy),
                keep_away=values.keep_away,
            )
            for clamp in values.clamps
        )
        return (dx, dy, dx + values.width, dy + values.height), clamps

    def _show_heat(self) -> None:
        touches = self._planner.touches
        heat = None if touches is None else touches.heat
        if self._held.get("heat") is not heat or heat is None:
            self._held["heat"] = heat
            self._window.heat.set_picture(heat)
        stale = ""
        session = self._bridge.session
        if touches is not None and touches.stale and session is not None:
            record = session.snapshot.latest("setup")
            stale = self.tr("clamped anew {time}").format(time="" if record is None else record.at[11:16])
        self._window.heat.set_stale(stale)

    def _show_times(self) -> None:
        passes = self._planner.passes
        for view, order in (
            (View.ORDER, self._planner.order),
            (View.PASSES, None if passes is None else passes.order),
        ):
            if self._held.get(view.value) is not order:
                self._held[view.value] = order
                self._window.canvas.set_timing(view, _timing(order))

    # steps

    def _step_chosen(self, step: int) -> None:
        self._step = step
        panel = self._window.canvas
        panel.canvas.set_editing(step == BLANK)
        if step in VIEWS:
            panel.set_view(VIEWS[step])
        elif step == PASSES and self._planner.passes is not None:
            panel.set_view(View.REACH)
        fitted = step == REFERENCE and self._planner.fit is not None and bool(self._planner.fit.errors)
        legend = self.tr("Fit, enlarged {times:.0f} times").format(times=ENLARGED)
        samples = ((Sample.RESIDUAL, self.tr("residual")), (Sample.ERROR, self.tr("95 % of expected error")))
        panel.set_legend(legend if fitted else "", samples if fitted else ())
        panel.canvas.set_chosen(())
        self.show_content()

    # hands

    def _clamp_dragged(self, number: int, dx: float, dy: float) -> None:
        self._pages.drag_clamp(number, dx, dy)
        self.show_content()

    def _board_dragged(self, dx: float, dy: float) -> None:
        self._pages.drag_board(dx, dy)
        self._window.canvas.canvas.keep_blank_still(dx, dy)
        self.show_content()

    def _picked(self, found: object) -> None:
        if self._step == BLANK and getattr(found, "kind", "") == "clamp":
            self._pages.blank.form.choose_clamp(getattr(found, "index", None))


def _timing(order: Order | None) -> Timing | None:
    if order is None or not len(order.times):
        return None
    return Timing(order.paths.levels[0].along, order.times, order.seconds)


def _same(a: Content, b: Content) -> bool:
    """Whether two contents hold the very same parts: then nothing needs drawing anew."""
    kept = ("board", "grooves", "current", "reach", "order")
    equal = (
        "blank",
        "clamps",
        "references",
        "zero",
        "stale",
        "enlarged",
        "tabs",
        "earlier",
        "errors",
        "pauses",
        "suspect",
        "before",
        "trials",
    )
    return (
        all(getattr(a, name) is getattr(b, name) for name in kept)
        and all(getattr(a, name) == getattr(b, name) for name in equal)
        and np.array_equal(a.touches, b.touches)
        and _same_shape(a.painted, b.painted)
    )


def _same_shape(a: Shape | None, b: Shape | None) -> bool:
    if a is None or b is None:
        return a is b
    return len(a.rings) == len(b.rings) and all(map(np.array_equal, a.rings, b.rings))
