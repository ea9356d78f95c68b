"""What the program asks of the person at the machine, and what they answer.

The window answers with panels, a rehearsal with simulated hands.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable
from dataclasses import dataclass, field
from enum import StrEnum

from drypoint.bits.model import Bit
from drypoint.wording import as_text, reword


class RequestKind(StrEnum):
    """What is asked for."""

    CLIP_TO_BIT = "hold the clip against the bit"
    CLIP_ON = "put the clip on the copper"
    CLIP_OFF = "take the clip off"
    CHANGE_BIT = "change the bit"
    SPINDLE_ON = "switch the spindle on"
    SPINDLE_OFF = "switch the spindle off"
    CONFIRM = "read and confirm"
    JOG_TO = "bring the bit to a place"
    PAPER = "bring the bit down onto paper"
    TURN_OVER = "turn the board over"
    RECLAMP = "clamp the board again"
    SHIFT = "shift the board under the bit"
    READ = "read a gauge"
    REMOVE_DUST = "remove the dust"


def _nothing() -> None:
    """Nothing to keep alive."""


@dataclass(frozen=True, slots=True)
class Request:
    """One thing to do, in plain words.

    Attributes
    ----------
    title, text : str
        One line, and the sentence or two below it.
    cautions : tuple of str
        What can hurt here; shown with the request.
    bit : Bit or None
        The bit to put in (`CHANGE_BIT`).
    place : (x, y) or None
        Work coordinates, mm: where the clip goes or where the bit is to be brought.
    net : str
        Net whose copper is meant; empty for the copper outside the board's nets.
    axis : str
        Of the bed, about which the board is to be turned over (`TURN_OVER`): "x" or "y".
    idle : callable
        To be called a few times a second while waiting, on the thread that was asked: it keeps
        the machine's state live.
    """

    kind: RequestKind
    title: str
    text: str = ""
    cautions: tuple[str, ...] = ()
    bit: Bit | None = None
    place: tuple[float, float] | None = None
    net: str = ""
    axis: str = ""
    idle: Callable[[], None] = field(default=_nothing, compare=False, repr=False)

    def __post_init__(self) -> None:
        reword(self, "title", "text")
        object.__setattr__(self, "cautions", tuple(as_text(one) for one in self.cautions))


class AnswerKind(StrEnum):
    """How a request was answered."""

    DONE = "done"
    DECLINED = "declined"
    JOG = "jog"


@dataclass(frozen=True, slots=True)
class Answer:
    """The answer to one request.

    Attributes
    ----------
    jog : (dx, dy, dz) or None
        With `AnswerKind.JOG`: move the bit by so much (mm) and ask again.
    by_hand : bool
        Axes were turned by hand wheel meanwhile: the controller's idea of the position is void.
    value : float or None
        A number that was asked for, mm: the paper's thickness, or what the gauge reads.
    """

    kind: AnswerKind = AnswerKind.DONE
    jog: tuple[float, float, float] | None = None
    by_hand: bool = False
    value: float | None = None


class Operator(ABC):
    """The person at the machine."""

    @abstractmethod
    def ask(self, request: Request) -> Answer:
        """Put ``request`` to the person and wait for the answer.

        Called on the machine's thread; ``request.idle`` is called while waiting.
        """
