"""What the window draws of a job, made in the working thread and kept while its inputs stay the same."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass

import numpy as np

from drypoint.board.model import Board
from drypoint.errors import PlanError
from drypoint.geometry.points import Points
from drypoint.geometry.rigid import Rigid
from drypoint.progress import Progress
from drypoint.reference.fit import Fit
from drypoint.reference.worth import Ring, Worth, pad_radii, worth
from drypoint.session.derive import Derived
from drypoint.session.holes import candidates, following
from drypoint.session.inputs import BOARD, CUTS, FIT, PASSES, SURFACE, TOOLING
from drypoint.session.layout import Layout
from drypoint.session.memo import Memo
from drypoint.session.net_reach import NetReach
from drypoint.session.pass_plan import PassPlan
from drypoint.session.plans import CutPlan, Placing
from drypoint.session.snapshot import Snapshot
from drypoint.session.tooling import Foreseen
from drypoint.ui.canvas.content import (
    BoardDrawing,
    ExpectedError,
    ReferenceHole,
    Tab,
    draw_board,
    find_tabs,
)
from drypoint.ui.canvas.pass_drawing import ReachDrawing
from drypoint.ui.canvas.paths import PathSet
from drypoint.ui.design_side.drawn import draw_grooves, draw_passes
from drypoint.ui.design_side.heights import TouchPicture, draw_touched, touching_seconds
from drypoint.ui.design_side.order import Order, order_of
from drypoint.ui.design_side.trial_picture import TrialPicture, draw_trials

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

        def draw() -> TouchPicture:
            return self._derived.run(draw_touched, snap, progress.part(0.6, 1.0))

        return self._memo.get("touches", snap.key(*SURFACE, "cuts", "bits", "clearing", "surface"), draw)

    def _planned(self, snap: Snapshot, progress: Progress) -> tuple[Points, float]:
        plan = self._derived.touch_plan(snap, progress)
        return _rigid(self._derived.fit(snap)).inverse().apply(plan), touching_seconds(snap, plan)

    def passes(self, snap: Snapshot, progress: Progress) -> PassPicture:
        """Depths and reach.

        Raises
        ------
        PlanError
            If the surface is not known, or the board was moved since.
        """
        plan = self._derived.passes(snap, progress.part(0.0, 0.8))

        def draw() -> PassPicture:
            drawn = self._derived.run(draw_passes, snap, progress.part(0.8, 1.0))
            return PassPicture(plan, drawn.earlier, drawn.current, drawn.reach, drawn.order, drawn.nets)

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
