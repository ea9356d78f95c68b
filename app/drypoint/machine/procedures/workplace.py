"""Who and what a procedure works with: the controller, the operator, the machine's preset."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace

from drypoint.machine.controller import Controller
from drypoint.machine.faults import Declined
from drypoint.machine.operator import Answer, AnswerKind, Operator, Request
from drypoint.machine.preset import MachinePreset


@dataclass(frozen=True, slots=True)
class TouchSettings:
    """How touches are made.

    Attributes
    ----------
    fast, slow : float
        Feeds of the first and the second touch, mm/min.
    back_off : float
        Lift between the two, mm.
    hop : float
        Height above the highest touch so far for moving across, mm.
    low : float
        The same where the height of the copper was touched before, mm.
    deepest : float
        How far below the expected height a touch may go without contact, mm.
    search : float
        The same where the height is not known at all: below where the bit stands, mm.
    proof_depth : float
        How far below the measured surface the touch that proves a net may go, mm.
    """

    fast: float = 60.0
    slow: float = 15.0
    back_off: float = 0.3
    hop: float = 1.0
    low: float = 1.0
    deepest: float = 0.8
    search: float = 6.0
    proof_depth: float = 0.08


@dataclass(frozen=True, slots=True)
class Workplace:
    """One machine with somebody at it."""

    controller: Controller
    operator: Operator
    preset: MachinePreset
    touch: TouchSettings = field(default_factory=TouchSettings)
    note: Callable[[str], None] = field(default=lambda text: None)

    @property
    def clearance(self) -> float:
        """Height above zero for moves across, mm."""
        return self.preset.clearance

    @property
    def across(self) -> float:
        """Feed for moving across at a height, mm/min."""
        return min(self.preset.max_rate[:2])

    def ask(self, request: Request) -> Answer:
        """Ask the operator while the machine's state is kept live; jogs asked for are made.

        Raises
        ------
        Declined
            If the operator does.
        """
        while True:
            answer = self.operator.ask(replace(request, idle=self._idle))
            if answer.by_hand:
                self.controller.doubt()
            if answer.kind is AnswerKind.DONE:
                return answer
            if answer.kind is AnswerKind.DECLINED:
                raise Declined(request.kind, request.title)
            if answer.jog is not None:
                self.controller.jog(*answer.jog, self.preset.max_rate[2])
                self.controller.settle()

    def raise_to(self, height: float) -> None:
        """Lift the bit to ``height`` (work z, mm) if it is lower; never lower it."""
        if self.controller.place()[2] < height:
            self.controller.move((None, None, height))

    def _idle(self) -> None:
        self.controller.poll(0.0)
