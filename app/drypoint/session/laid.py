"""What is milled and how it lies on the bed, from the files and the settings."""

from __future__ import annotations

from drypoint.board.model import Board
from drypoint.board.panel import panel_of
from drypoint.board.programs import edge_is_rectangle, with_margin
from drypoint.cuts.tooling import Tooling
from drypoint.errors import PlanError
from drypoint.geometry.rigid import Rigid
from drypoint.progress import Progress
from drypoint.session.boards import Placed, moves_by_design, placed_designs, read_designs, seen_over
from drypoint.session.imported import ReadyProgram, read_ready
from drypoint.session.inputs import BOARD, DESIGN, LAYOUT, PLACED, READ, READY, TOOLING
from drypoint.session.layout import Layout, lay_out
from drypoint.session.memo import Memo
from drypoint.session.plans import hole_depth
from drypoint.session.snapshot import Snapshot
from drypoint.session.tooling import (
    Foreseen,
    as_drilled,
    drilled_tooling,
    foreseen,
    plan_tooling,
    seen_from_over,
    turned_tooling,
    wants_tooling,
)
from drypoint.session.two_sides import turned_blank


class Laid:
    """Designs, boards, blank and tooling holes; computed once per state of their inputs."""

    def __init__(self) -> None:
        self._memo = Memo()

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
