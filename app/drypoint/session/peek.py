"""What is known of a job already, without computing anything."""

from __future__ import annotations

from dataclasses import dataclass

from drypoint.board.model import Board
from drypoint.session.boards import Placed
from drypoint.session.imported import ReadyProgram
from drypoint.session.layout import Layout
from drypoint.session.pass_plan import PassPlan
from drypoint.session.plans import CutPlan, Placing
from drypoint.surface.model import Surface


@dataclass(frozen=True, slots=True, eq=False)
class Peek:
    """What is computed of a job at this moment; None for what is not.

    ``surface`` is the newest that was touched, also where the board was moved since; ``placed`` is as
    the places are set.
    """

    board: Board | None = None
    layout: Layout | None = None
    cuts: CutPlan | None = None
    grooves_key: str | None = None
    fit: Placing | None = None
    surface: Surface | None = None
    passes: PassPlan | None = None
    placed: tuple[Placed, ...] | None = None
    ready: tuple[ReadyProgram, ...] | None = None
