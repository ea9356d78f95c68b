"""What stands on the setup sheet of a job with both sides: which they are, the turn between them."""

from __future__ import annotations

from collections.abc import Sequence

from drypoint.board.model import Board, Side
from drypoint.session.marks import side_words
from drypoint.session.sheet import WorkStep
from drypoint.session.sides import of_second_side
from drypoint.session.snapshot import Snapshot
from drypoint.session.work import waits_for_other_side
from drypoint.wording import say


def sides_milled(snap: Snapshot) -> str:
    """Which copper is milled, in words."""
    if not snap.settings.board.both:
        return side_words(snap.settings.board.side)
    first = snap.face(1)
    return say("{side} and then {other}", side=side_words(first), other=side_words(first.other))


def nets_and_holes(snap: Snapshot, board: Board) -> str:
    """How many there are, and what joins the sides: link wires, or holes where both are milled."""
    nets, holes = len(board.nets), len(board.holes)
    if snap.settings.board.both:
        return say(
            "{count} nets, {count2} holes, {count3} of them join both sides",
            count=nets,
            count2=holes,
            count3=len(board.rivets),
        )
    return say(
        "{count} nets, {count2} holes, {count3} link wires",
        count=nets,
        count2=holes,
        count3=len(board.links),
    )


def with_turn(snap: Snapshot, names: Sequence[str], steps: Sequence[WorkStep]) -> tuple[WorkStep, ...]:
    """The steps of programs of these names, the turn of the board before the first of the second side."""
    second = [number for number, name in enumerate(names) if of_second_side(name)]
    if not second or second[0] == 0:
        return tuple(steps)
    return (*steps[: second[0]], the_turn(snap.face(1).other), *steps[second[0] :])


def the_turn(side: Side) -> WorkStep:
    """The board is turned over; ``side`` looks up then."""
    title = say("Turn the board over, {side} up; find it by its holes", side=side_words(side))
    return WorkStep(title, "–", "–", "–", "–")


def expected_only(snap: Snapshot, names: Sequence[str]) -> tuple[str, ...]:
    """What to know of programs of these names while the board was not turned over."""
    if not waits_for_other_side(snap) or not any(map(of_second_side, names)):
        return ()
    return (
        say(
            "The programs of the second side are placed for the board turned left over right into the same "
            "corner; hands turn it to about a millimetre. Find it by its holes, touch its copper and export "
            "again before it is milled."
        ),
    )
