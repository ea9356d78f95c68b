"""Whatever can be computed from a job, computed once per state of its inputs.

Each value names the settings and records it depends on; a change of any of them, and only that,
makes it be computed anew.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from dataclasses import replace
from typing import TypeVar

import numpy as np
import shapely
from shapely import Geometry

from drypoint.cuts.legend import Legend
from drypoint.errors import PlanError
from drypoint.geometry.points import Points
from drypoint.geometry.rigid import Rigid
from drypoint.passes.model import Pass
from drypoint.progress import Progress
from drypoint.reference.registration import across
from drypoint.session.codec import from_json
from drypoint.session.imported import (
    ready_findings,
)
from drypoint.session.inputs import BOARD, CUTS, FIT, LAYOUT, PASSES, PLACED, READY, TOUCH_PLAN
from drypoint.session.islands import (
    Joined,
    answers_of,
    joined_places,
    standing,
    to_cut_again,
    touched_since_pass,
)
from drypoint.session.laid import Laid
from drypoint.session.layout import Layout
from drypoint.session.marks import plan_marks, planned_by
from drypoint.session.pass_plan import PassPlan, painted_in, plan_passes
from drypoint.session.peek import Peek
from drypoint.session.plans import (
    CarriedSurface,
    CutPlan,
    Placing,
    belief_from,
    plan_cuts,
    taught,
    touch_region,
)
from drypoint.session.program_cuts import given_cuts, require_chosen
from drypoint.session.snapshot import Snapshot
from drypoint.session.tooling import (
    tooling_findings,
)
from drypoint.session.two_sides import as_seen, fit_of_touched, seen_from
from drypoint.surface.model import Surface, fit_surface
from drypoint.surface.plan import plan_touches
from drypoint.surface.touch import Touches
from drypoint.wording import say

T = TypeVar("T")


class Derived(Laid):
    """Computes and keeps. Every method takes a `Snapshot` and may be called from any thread."""

    def run(self, work: Callable[..., T], snap: Snapshot, progress: Progress | None = None) -> T:
        """``work(derived, snap, progress)`` where plans are computed: here."""
        return work(self, snap, progress)

    def cuts(self, snap: Snapshot, progress: Progress | None = None) -> CutPlan:
        """Grooves, holes, outline, reference marks and the island check."""
        told = progress or Progress()

        def compute() -> CutPlan:
            board = self.board(snap, told.part(0.0, 0.2))
            ready = self.ready(snap)
            if snap.settings.board.side is snap.face(1):
                require_chosen(ready, snap.settings.imported)
            given = given_cuts(ready, board, self.placed(snap), cut_edge=snap.settings.edge.cut)
            settings = as_seen(snap, board.width)
            tooling = self.tooling(snap)
            rest = told.part(0.2, 1.0)
            plan = plan_cuts(board, self.layout(snap), settings, rest, given, tooling.cuts)
            said = tooling_findings(board, settings, tooling)
            asked = ready_findings(ready, settings.imported.zero, both=settings.board.both)
            return replace(plan, findings=(*plan.findings, *said, *asked))

        return self._memo.get("cuts", snap.key(*CUTS), compute)

    def legend(self, snap: Snapshot, progress: Progress | None = None) -> Legend:
        """Rows of marks of the legend, board frame.

        Raises
        ------
        PlanError
            There is no legend, or nothing of it is left beside pads and holes.
        """
        board, chosen = self.board(snap, progress), snap.settings.laser
        key = f"{snap.key(*BOARD)} {planned_by(chosen)}"
        return self._memo.get("legend", key, lambda: plan_marks(board, chosen, progress))

    def cuts_ready(self, snap: Snapshot) -> CutPlan | None:
        """The cuts if they are computed already."""
        found: CutPlan | None = self._memo.peek("cuts", snap.key(*CUTS))
        return found

    def grooves_key(self, snap: Snapshot) -> str:
        """Changes when the grooves do: passes that were run belong to one such state."""

        def compute() -> str:
            digest = hashlib.sha256()
            for line in self.cuts(snap).grooves.lines:
                digest.update(np.round(line, 6).tobytes())
            return digest.hexdigest()[:16]

        return self._memo.get("grooves key", snap.key(*CUTS), compute)

    def fit(self, snap: Snapshot) -> Placing:
        """Board frame to work coordinates, for the present clamping.

        Raises
        ------
        PlanError
            If the board was moved and fewer than two holes were touched since.
        """
        return self.fit_of(snap, snap.setup)

    def fit_of(self, snap: Snapshot, setup: int) -> Placing:
        """The same for an earlier clamping."""
        touched = [record.data for record in snap.records["reference"] if record.data["setup"] == setup]
        if len(touched) < 2 and setup == 1:
            return self._as_laid(snap)
        if len(touched) < 2:
            raise PlanError(
                "The board was moved; where it lies now is not known.",
                "Reference",
                "Touch two reference holes, better three.",
            )
        width = self.board(snap).width
        return self._memo.get(
            f"fit {setup}",
            snap.key(*FIT),
            lambda: fit_of_touched(snap, touched, setup, width),
        )

    def _as_laid(self, snap: Snapshot) -> Rigid:
        """As the blank was laid down at first, whichever side is being milled now."""
        first = snap.face(1)
        if snap.settings.board.side is first:
            return self.layout(snap).place
        before = seen_from(snap, first)
        return across(self.board(snap).width).then(self.layout(before).place)

    def touch_plan(self, snap: Snapshot, progress: Progress | None = None) -> Points:
        """(N, 2) places to touch, work coordinates, in order."""

        def compute() -> Points:
            fit = self.fit(snap)
            told = progress or Progress()
            lines = [fit.apply(line) for line in self.cuts(snap, told.part(0.0, 0.7)).grooves.lines]
            mapped = _mapped(self.touchable(snap), fit)
            return plan_touches(lines, mapped, snap.settings.surface.touches, progress=told.part(0.7, 1.0))

        return self._memo.get("touch plan", snap.key(*TOUCH_PLAN), compute)

    def touchable(self, snap: Snapshot) -> Geometry:
        """Where copper may be touched before cutting, board frame: off clamps, holes and the edge."""
        return touch_region(self.board(snap), self.layout(snap), self.cuts(snap).tooling)

    def touches(self, snap: Snapshot) -> tuple[Touches, int] | None:
        """The newest touches and the clamping they were made in."""
        record = snap.latest("touches")
        if record is None:
            return None
        return from_json(Touches, record.data["touches"], "touches"), int(record.data["setup"])

    def surface(self, snap: Snapshot, progress: Progress | None = None) -> Surface | CarriedSurface | None:
        """The model of the copper's height; carried along if the board was moved since; None if untouched."""
        found = self.touches(snap)
        if found is None:
            return None
        measured, setup = self.measured(snap, progress), found[1]
        if setup == snap.setup:
            return measured
        return CarriedSurface(measured, self.fit_of(snap, setup), self.fit(snap))

    def measured(self, snap: Snapshot, progress: Progress | None = None) -> Surface:
        """The model of the copper's height where the board lay when it was touched; it must have been."""
        found = self.touches(snap)
        assert found is not None
        touches = found[0]
        return self._memo.get(
            "surface",
            snap.key("touches"),
            lambda: fit_surface(touches.points, give=touches.give, progress=progress),
        )

    def passes(self, snap: Snapshot, progress: Progress | None = None) -> PassPlan:
        """Passes done, the next one, and the reach of both.

        Raises
        ------
        PlanError
            If the surface was not measured, or the board was moved since.
        """
        told = progress or Progress()
        surface = self.surface(snap, told.part(0.0, 0.3))
        if surface is None:
            raise PlanError("The copper's height is not known.", "Surface", "Touch the copper first.")
        if snap.face() is not snap.settings.board.side:
            raise PlanError(
                say(
                    "The {value} looks up; the {value2} is to be milled.",
                    value=snap.face().value,
                    value2=snap.settings.board.side.value,
                ),
                "Run",
                "Turn the board over first.",
            )
        if not isinstance(surface, Surface):
            raise PlanError(
                "The board was moved since its height was touched.",
                "Surface",
                "Touch it again before cutting.",
            )

        def compute() -> PassPlan:
            answers = [record.data for record in snap.records["observation"]]
            return plan_passes(
                self.cuts(snap).grooves,
                self.done_passes(snap),
                self.fit(snap),
                surface,
                snap.settings,
                belief_from(answers, surface, snap.settings, taught(snap)),
                self.joined(snap),
                painted_in(snap),
                answers_of(snap, self.grooves_key(snap), self.standing(snap), self.cuts(snap)),
                told.part(0.3, 1.0),
            )

        return self._memo.get("passes", snap.key(*PASSES), compute)

    def passes_ready(self, snap: Snapshot) -> PassPlan | None:
        """The passes if they are computed already."""
        found: PassPlan | None = self._memo.peek("passes", snap.key(*PASSES))
        return found

    def peek(self, snap: Snapshot) -> Peek:
        """Whatever is computed already; computes nothing and waits for nobody."""
        memo = self._memo
        layout: Layout | None = memo.peek("layout", snap.key(*LAYOUT))
        touched = [one for one in snap.records["reference"] if one.data["setup"] == snap.setup]
        laid = layout.place if layout is not None and snap.setup == 1 else None
        return Peek(
            board=memo.peek("board", snap.key(*BOARD)),
            layout=layout,
            cuts=self.cuts_ready(snap),
            grooves_key=memo.peek("grooves key", snap.key(*CUTS)),
            fit=laid if len(touched) < 2 else memo.peek(f"fit {snap.setup}", snap.key(*FIT)),
            surface=memo.peek("surface", snap.key("touches")),
            passes=self.passes_ready(snap),
            placed=memo.peek("placed", snap.key(*PLACED)),
            ready=memo.peek("ready", snap.key(*READY)),
        )

    def done_passes(self, snap: Snapshot) -> tuple[Pass, ...]:
        """Passes that were run over the present grooves."""
        key = self.grooves_key(snap)
        return tuple(
            from_json(Pass, record.data["pass"], "a pass that was run")
            for record in snap.records["pass"]
            if record.data["grooves"] == key
        )

    def standing(self, snap: Snapshot, _progress: Progress | None = None) -> dict[str, Geometry]:
        """All copper that must come apart, by name, board frame, with grooves as wide as planned."""
        return self._memo.get(
            "standing",
            snap.key(*CUTS),
            lambda: standing(self.board(snap), self.layout(snap), self.cuts(snap)),
        )

    def joined(self, snap: Snapshot) -> Joined:
        """Where touches since the last pass found copper joined, or a person asked for another cut."""
        record = touched_since_pass(snap)
        if record is None:
            return Joined(None, ())
        cuts = self.cuts(snap)
        pairs, again = to_cut_again(record, cuts)
        return joined_places(self.standing(snap), cuts, pairs, again)


def _mapped(shape: Geometry, fit: Placing) -> Geometry:
    return shapely.transform(shape, fit.apply)
