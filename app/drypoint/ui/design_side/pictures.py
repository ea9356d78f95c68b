"""What the window draws of a job, made in the working thread and kept while its inputs stay the same."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass

import numpy as np

from drypoint.board.model import Board, Finding
from drypoint.errors import PlanError
from drypoint.geometry.points import Points, resample
from drypoint.geometry.rigid import Rigid
from drypoint.progress import Progress
from drypoint.reference.fit import Fit
from drypoint.reference.worth import Ring, Worth, pad_radii, worth
from drypoint.session.derive import BOARD, CUTS, FIT, PASSES, SURFACE, TOOLING, Derived
from drypoint.session.holes import candidates, following
from drypoint.session.layout import Layout
from drypoint.session.memo import Memo
from drypoint.session.net_reach import NetReach, net_reaches
from drypoint.session.pass_plan import PassPlan
from drypoint.session.plans import CutPlan, Placing
from drypoint.session.snapshot import Snapshot
from drypoint.session.tooling import Foreseen
from drypoint.session.work import preset_of
from drypoint.surface.give import give_report
from drypoint.surface.model import Surface
from drypoint.ui.canvas.content import (
    BoardDrawing,
    ExpectedError,
    ReachDrawing,
    ReferenceHole,
    Tab,
    draw_board,
    draw_pass,
    draw_reach,
    find_tabs,
)
from drypoint.ui.canvas.paths import PathSet
from drypoint.ui.design_side.order import Order, draw_grooves, order_of, order_of_next
from drypoint.ui.design_side.trial_picture import TrialPicture, draw_trials
from drypoint.ui.heat.picture import HeatPicture, draw_heat

PITCH = 1.0
"""Between places on the grooves at which the spread is looked at, mm."""
BACK = 0.4
"""How far the slow touch is taken to start above the copper when its time is estimated, mm."""
MOST_ERRORS = 16
"""Places at which the expected error is drawn."""
LITTLE = 0.01
"""A further hole that gains less is not asked for, mm."""
APART = 4.0
"""Nearer together than this they would hide each other, mm."""


@dataclass(frozen=True, slots=True, eq=False)
class BoardPicture:
    """The board as read and as it lies; ``trouble`` says why it cannot lie so."""

    board: Board
    drawing: BoardDrawing
    layout: Layout | None
    trouble: PlanError | None = None


@dataclass(frozen=True, slots=True, eq=False)
class CutPicture:
    """The cuts; ``seconds`` is the time of one pass over the grooves at their nominal depth.

    ``wide`` are those of the grooves that the wide bit cuts; None without one. ``foreseen`` is how well
    the second side will be found; None where one side is milled.
    """

    cuts: CutPlan
    grooves: PathSet
    tabs: tuple[Tab, ...]
    seconds: float
    wide: PathSet | None = None
    foreseen: Foreseen | None = None


@dataclass(frozen=True, slots=True, eq=False)
class TouchPicture:
    """The copper's height, board frame.

    ``planned`` are the places to touch, ``median`` and ``worst`` the spread on the grooves, mm;
    ``seconds`` what touching the planned places takes. Without touches only the plan is known.
    """

    planned: Points
    seconds: float
    heat: HeatPicture | None = None
    surface: Surface | None = None
    median: float = 0.0
    worst: float = 0.0
    give: tuple[Finding, ...] = ()
    stale: bool = False


@dataclass(frozen=True, slots=True, eq=False)
class PassPicture:
    """Passes done, the next one, and what they reach."""

    plan: PassPlan
    earlier: tuple[PathSet, ...]
    current: PathSet | None
    reach: ReachDrawing
    order: Order | None
    nets: tuple[NetReach, ...] = ()


@dataclass(frozen=True, slots=True, eq=False)
class FitPicture:
    """Reference holes with where they were found, and the error expected elsewhere."""

    holes: tuple[ReferenceHole, ...]
    errors: tuple[ExpectedError, ...] = ()
    worth: Worth | None = None


class Pictures:
    """Draws and keeps. To be called in the working thread."""

    def __init__(self, derived: Derived) -> None:
        self._derived = derived
        self._memo = Memo()

    def board(self, snap: Snapshot, progress: Progress) -> BoardPicture:
        """Board and blank.

        Raises
        ------
        PlanError, InputError
            As `Derived.board`.
        """
        board = self._derived.board(snap, progress)
        drawing = self._memo.get("drawing", snap.key(*BOARD), lambda: draw_board(board))
        try:
            return BoardPicture(board, drawing, self._derived.layout(snap))
        except PlanError as trouble:
            return BoardPicture(board, drawing, None, trouble)

    def cuts(self, snap: Snapshot, progress: Progress) -> CutPicture:
        """Grooves, holes and outline.

        Raises
        ------
        PlanError
            If they cannot be laid.
        """
        cuts = self._derived.cuts(snap, progress)
        self._derived.grooves_key(snap)
        found = self._foreseen(snap)

        def draw() -> CutPicture:
            paths = self._derived.run(draw_grooves, snap, progress)
            return CutPicture(cuts, paths.all, find_tabs(cuts.outline), paths.seconds, paths.wide, found)

        return self._memo.get("cuts", f"{snap.key(*CUTS, 'machine')} {found}", draw)

    def _foreseen(self, snap: Snapshot) -> Foreseen | None:
        if not snap.settings.board.both:
            return None
        key = snap.key(*TOOLING, "reference")
        return self._memo.get("foreseen", key, lambda: self._derived.foreseen(snap))

    def touches(self, snap: Snapshot, progress: Progress) -> TouchPicture:
        """Touch plan, height and give.

        Raises
        ------
        PlanError
            If no places can be planned.
        """
        found = self._derived.touches(snap)
        if found is None:
            places, seconds = self._planned(snap, progress)
            return TouchPicture(places, seconds)
        with suppress(PlanError):  # where the board lies now may not be known; the heights are
            self._derived.surface(snap, progress.part(0.0, 0.6))
        surface = self._derived.peek(snap).surface
        assert surface is not None
        touches, setup = found

        def draw() -> TouchPicture:
            fit = self._derived.fit_of(snap, setup)
            layout = self._derived.layout(snap)
            back = _rigid(fit).inverse()
            spots = back.apply(touches.points[:, :2])
            give = touches.give if any(one.first is not None for one in touches.touches) else None
            heat = draw_heat(
                lambda at: surface.mean(fit.apply(at)),
                lambda at: surface.std(fit.apply(at)),
                _board_and_touches(_box(self._derived.board(snap).outline.bounds), spots),
                spots,
                give,
            )
            lines = [resample(line, PITCH) for line in self._derived.cuts(snap).grooves.lines]
            std = surface.std(fit.apply(np.vstack(lines))) if lines else np.zeros(1)
            loose = give_report(touches, (0.0, 0.0, layout.width, layout.height))
            return TouchPicture(
                planned=spots,
                seconds=self._seconds(snap, touches.points),
                heat=heat,
                surface=surface,
                median=float(np.median(std)),
                worst=float(std.max()),
                give=tuple(_back_to_board(one, back) for one in loose),
                stale=setup != snap.setup,
            )

        return self._memo.get("touches", snap.key(*SURFACE, "cuts", "bits", "clearing", "surface"), draw)

    def _planned(self, snap: Snapshot, progress: Progress) -> tuple[Points, float]:
        plan = self._derived.touch_plan(snap, progress)
        return _rigid(self._derived.fit(snap)).inverse().apply(plan), self._seconds(snap, plan)

    def _seconds(self, snap: Snapshot, places: Points) -> float:
        """Time of touching: the way down fast, a little slowly, and the ways between."""
        asked = snap.settings.surface
        rates = preset_of(snap.settings).max_rate
        down = asked.highest / asked.fast + BACK / asked.slow + 2 * asked.highest / rates[2]
        ways = np.sqrt((np.diff(places[:, :2], axis=0) ** 2).sum(axis=1)).sum() if len(places) > 1 else 0.0
        return float(60.0 * (len(places) * down + ways / min(rates[:2])))

    def passes(self, snap: Snapshot, progress: Progress) -> PassPicture:
        """Depths and reach.

        Raises
        ------
        PlanError
            If the surface is not known, or the board was moved since.
        """
        plan = self._derived.passes(snap, progress.part(0.0, 0.8))

        def draw() -> PassPicture:
            names = self._derived.cuts(snap).grooves.line_nets
            progress.step(0.85)
            current = order = None
            if plan.next is not None:
                current = draw_pass(plan.next, names)
                order = self._derived.run(order_of_next, snap, progress.part(0.85, 0.95))
            progress.step(0.95)
            reach = plan.reach if plan.done else plan.expected
            earlier = tuple(draw_pass(one, names) for one in plan.done)
            by_net = net_reaches(reach, names, plan.by_net)
            return PassPicture(plan, earlier, current, draw_reach(reach, names), order, by_net)

        return self._memo.get("passes", snap.key(*PASSES, "machine"), draw)

    def order(self, snap: Snapshot, progress: Progress) -> Order:
        """Everything still to run, in order, with its times.

        Raises
        ------
        PlanError
            If it cannot be placed.
        """
        key = snap.key(*PASSES, "machine", "done")
        return self._memo.get("order", key, lambda: self._derived.run(order_of, snap, progress))

    def trials(self, snap: Snapshot) -> TrialPicture:
        """Trial cuts in the waste."""
        return draw_trials(self._derived, self._memo, snap)

    def fit(self, snap: Snapshot) -> FitPicture:
        """Reference holes and the fit."""
        known = candidates(self._derived, snap)
        touched = {
            one.data["label"]: one.data["touched"]
            for one in snap.records["reference"]
            if one.data["setup"] == snap.setup
        }
        try:
            fit: Placing | None = self._derived.fit(snap)
        except PlanError:
            fit = None
        found = fit if isinstance(fit, Fit) else None
        coming, advice = following(self._derived, snap, known, touched, found)
        if advice is not None and advice.gain < LITTLE:
            coming = None
        holes = tuple(
            ReferenceHole(
                one.label,
                one.at,
                None if found is None else _seen(found, touched.get(one.label)),
                coming is not None and one.label == coming.label and bool(touched),
            )
            for one in known
            if one.mark
            or one.tooling
            or one.label in touched
            or (coming is not None and one.label == coming.label)
        )
        if found is None:
            return FitPicture(holes)
        key = snap.key(*FIT, "cuts", "bits", "clearing", "done")
        return self._memo.get("fit", key, lambda: self._fitted(snap, found, holes))

    def _fitted(self, snap: Snapshot, fit: Fit, holes: tuple[ReferenceHole, ...]) -> FitPicture:
        board = self._derived.board(snap)
        found = worth(fit, board.holes, pad_radii(board.holes, board.nets))
        chosen = _spread(sorted(found.rings, key=lambda ring: ring.left))
        turn = np.array([[np.cos(fit.angle), -np.sin(fit.angle)], [np.sin(fit.angle), np.cos(fit.angle)]])
        errors = tuple(
            ExpectedError(ring.at, turn.T @ fit.covariance_at([ring.at])[0] @ turn) for ring in chosen
        )
        return FitPicture(holes, errors, found)


def _seen(fit: Fit, at: tuple[float, float] | None) -> tuple[float, float] | None:
    """Where in the board frame the fit puts a touched place."""
    if at is None:
        return None
    x, y = fit.rigid.inverse().apply([at])[0]
    return float(x), float(y)


def _spread(rings: Sequence[Ring]) -> list[Ring]:
    """The tightest holes, then those farthest from what is shown already: no ellipses on each other."""
    if len(rings) <= MOST_ERRORS:
        return list(rings)
    at = np.array([ring.at for ring in rings])
    shown = [0]
    away = np.hypot(*(at - at[0]).T)
    while len(shown) < MOST_ERRORS and away.max() > APART:
        # the tightest ones win among those that lie about as far off
        shown.append(int(np.argmax(away - np.arange(len(rings)) * 1e-3)))
        away = np.minimum(away, np.hypot(*(at - at[shown[-1]]).T))
    return [rings[k] for k in shown]


def _rigid(fit: Placing) -> Rigid:
    return fit if isinstance(fit, Rigid) else fit.rigid


def _board_and_touches(
    board: tuple[float, float, float, float], spots: Points
) -> tuple[float, float, float, float]:
    """The board and the places touched: beyond them heights are only guessed."""
    x0, y0, x1, y1 = board
    if len(spots):
        (a, b), (c, d) = spots.min(axis=0), spots.max(axis=0)
        x0, y0, x1, y1 = min(x0, a), min(y0, b), max(x1, c), max(y1, d)
    return float(x0), float(y0), float(x1), float(y1)


def _box(bounds: tuple[float, ...]) -> tuple[float, float, float, float]:
    x0, y0, x1, y1 = (float(value) for value in bounds)
    return x0, y0, x1, y1


def _back_to_board(finding: Finding, back: Rigid) -> Finding:
    if finding.at is None:
        return finding
    x, y = back.apply([finding.at])[0]
    return Finding(
        finding.kind, finding.what, finding.where, finding.hint, (float(x), float(y)), finding.nets
    )
