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

from drypoint.board.model import Board
from drypoint.board.panel import panel_of
from drypoint.board.programs import edge_is_rectangle, with_margin
from drypoint.cuts.legend import Legend
from drypoint.cuts.tooling import Tooling
from drypoint.errors import PlanError
from drypoint.geometry.points import Points
from drypoint.geometry.rigid import Rigid
from drypoint.passes.model import Pass
from drypoint.progress import Progress
from drypoint.reference.registration import across
from drypoint.session.boards import Placed, moves_by_design, placed_designs, read_designs, seen_over
from drypoint.session.codec import from_json
from drypoint.session.imported import (
    ReadyProgram,
    read_ready,
    ready_findings,
)
from drypoint.session.islands import (
    Joined,
    answers_of,
    joined_places,
    standing,
    to_cut_again,
    touched_since_pass,
)
from drypoint.session.layout import Layout, lay_out
from drypoint.session.marks import plan_marks, planned_by
from drypoint.session.memo import Memo
from drypoint.session.pass_plan import PAINTED, PassPlan, painted_in, plan_passes
from drypoint.session.peek import Peek
from drypoint.session.plans import (
    CarriedSurface,
    CutPlan,
    Placing,
    belief_from,
    hole_depth,
    plan_cuts,
    taught,
    touch_region,
)
from drypoint.session.program_cuts import given_cuts, require_chosen
from drypoint.session.snapshot import Snapshot
from drypoint.session.tooling import (
    Foreseen,
    as_drilled,
    drilled_tooling,
    foreseen,
    plan_tooling,
    seen_from_over,
    tooling_findings,
    turned_tooling,
    wants_tooling,
)
from drypoint.session.two_sides import as_seen, fit_of_touched, seen_from, turned_blank
from drypoint.surface.model import Surface, fit_surface
from drypoint.surface.plan import plan_touches
from drypoint.surface.touch import Touches
from drypoint.wording import say

T = TypeVar("T")

READ = ("source", "board")
DESIGN = (*READ, "edge")
PLACED = (*DESIGN, "copies")
BOARD = (*PLACED, "bits")
READY = (*DESIGN, "bits", "imported", "blank")
LAYOUT = (*BOARD, "blank")
TOOLING = (*LAYOUT, "turn", "tooling", "cuts")
CUTS = (*TOOLING, "clearing", "holes", "electrical", "imported")
FIT = (*LAYOUT, "setup", "reference", "stretch")
SURFACE = (*FIT, "touches")
ASKED = ("pass", "observation", "island touch", "coupon", PAINTED)
TOUCH_PLAN = (*FIT, *TOOLING, "clearing", "imported", "surface")
PASSES = (*SURFACE, "bits", "cuts", "clearing", "imported", "passes", *ASKED)


class Derived:
    """Computes and keeps. Every method takes a `Snapshot` and may be called from any thread."""

    def __init__(self) -> None:
        self._memo = Memo()

    def run(self, work: Callable[..., T], snap: Snapshot, progress: Progress | None = None) -> T:
        """``work(derived, snap, progress)`` where plans are computed: here."""
        return work(self, snap, progress)

    def board(self, snap: Snapshot, progress: Progress | None = None) -> Board:
        """What is milled: the design, as often as it is to be made.

        Raises
        ------
        PlanError
            If no files were given yet, or copies lie too close.
        InputError
            If the files cannot be understood.
        """
        placed = self.placed(snap, progress)
        mill = snap.settings.bits.mill.diameter

        def compute() -> Board:
            name = snap.settings.board.name if len({one.design for one in placed}) > 1 else ""
            return panel_of([one.place for one in placed], gap=mill, name=name or None)

        return self._memo.get("board", snap.key(*BOARD), compute)

    def placed(self, snap: Snapshot, progress: Progress | None = None) -> tuple[Placed, ...]:
        """Every board on the blank and its place, as seen from the side being milled."""
        designs = self.designs(snap, progress)
        mirrored = snap.settings.board.side is not snap.face(1)

        def compute() -> tuple[Placed, ...]:
            return placed_designs(designs, snap.settings.copies)

        placed = self._memo.get("placed", snap.key(*PLACED), compute)
        return seen_over(placed) if mirrored else placed

    def designs(self, snap: Snapshot, progress: Progress | None = None) -> dict[str, Board]:
        """Every design by its name, understood; the name is empty where the job has but one.

        Raises
        ------
        PlanError
            If no files were given yet.
        InputError
            If they cannot be understood.
        """
        designs = self.read(snap, progress)
        edge = snap.settings.edge
        if not edge.cut or not any(map(edge_is_rectangle, designs.values())):
            return designs
        return self._memo.get(
            "framed",
            snap.key(*DESIGN),
            lambda: {name: with_margin(one, edge.margin) for name, one in designs.items()},
        )

    def read(self, snap: Snapshot, progress: Progress | None = None) -> dict[str, Board]:
        """The same as the files have them, without a margin of our own."""
        if not snap.sources:
            raise PlanError("There are no design files yet.", "Board", "Choose the folder or files.")

        def compute() -> dict[str, Board]:
            chosen = snap.settings.board
            return read_designs(snap.sources, chosen.side, chosen.name or None, progress, both=chosen.both)

        return self._memo.get("designs", snap.key(*READ), compute)

    def ready(self, snap: Snapshot) -> tuple[ReadyProgram, ...]:
        """Ready-made programs among the files, those that were not understood too.

        They are for the side that is milled first: from the other one nothing is run again.
        """
        if snap.settings.board.side is not snap.face(1):
            return ()
        designs = self.designs(snap)
        settings = snap.settings

        def compute() -> tuple[ReadyProgram, ...]:
            files = {source.name: source.content for source in snap.sources}
            thickness = settings.blank.thickness
            return read_ready(files, designs, settings.bits, settings.imported, thickness)

        return self._memo.get("ready", snap.key(*READY), compute)

    def copy_moves(self, snap: Snapshot) -> dict[str, tuple[Rigid, ...]]:
        """For each design the frame of each of its boards to the board frame of the whole."""
        return moves_by_design(self.placed(snap))

    def layout(self, snap: Snapshot) -> Layout:
        """Board, blank and clamps on the bed."""
        board = self.board(snap)

        def compute() -> Layout:
            return lay_out(board, turned_blank(snap, board.width, board.height))

        return self._memo.get("layout", snap.key(*LAYOUT), compute)

    def tooling(self, snap: Snapshot, *, wanted_only: bool = True) -> Tooling:
        """Holes in the margin to find the board by once it was turned, frame of the side being milled.

        None where they are not wanted; with ``wanted_only`` off, where they would lie all the same.
        """
        board, drilled = self.board(snap), drilled_tooling(snap)
        if wanted_only and drilled is None and not wants_tooling(board, snap.settings):
            return Tooling()

        def compute() -> Tooling:
            depth = hole_depth(snap.settings)
            if drilled is not None:
                return as_drilled(drilled, snap.settings, depth)
            first = board if up else seen_from_over(board)
            return plan_tooling(first, lay_out(first, snap.settings.blank), snap.settings, depth)

        up = snap.settings.board.side is snap.face(1)
        found = self._memo.get("tooling", snap.key(*TOOLING), compute)
        return found if up else turned_tooling(found, board.width)

    def foreseen(self, snap: Snapshot) -> Foreseen:
        """How well the second side will be found, with tooling holes and without."""
        planned = self.tooling(snap, wanted_only=False)
        return foreseen(self.board(snap), planned, snap.settings)

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
