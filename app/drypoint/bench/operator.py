"""Simulated hands and eyes: does what the program asks of a person, about as well as a person."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from drypoint.bench.copper import COPPER
from drypoint.bench.planner import Triple
from drypoint.geometry.rigid import Rigid
from drypoint.machine.operator import Answer, AnswerKind, Operator, Request, RequestKind

if TYPE_CHECKING:
    from drypoint.bench.bench import Bench

EYE = 0.03
"""Spread of bringing a bit over a mark by eye, mm."""
SPOT_EYE = 0.1
"""The same for the middle of a light spot over a hole, mm: it is several tenths wide, uneven, and glares
(common practice, no source)."""
GOOD_ENOUGH = 5.0 / 3.0
"""A person stops moving the bit when it looks this close, in spreads of the eye."""
SEARCH = 4.0
"""How far around the expected place a hole is looked for, mm."""
ABOVE = 1.0
"""Height above the copper to which a person brings a bit by eye, mm."""
FEELING = 0.008
"""Spread of feeling for paper under the bit, mm."""
PAPER = 0.1
"""Thickness of the paper, mm."""
GAUGE = 0.002
"""Spread of reading a dial gauge, mm."""
CORNER_INSET = 3.0
"""Without a place given, a person starts this far inside the blank's corner, mm."""
CLEAR = 8.0
"""Height to which a person raises a bit to have it clear, mm."""
JUMP = 40.0
"""Farthest move asked for at once, mm."""


class BenchOperator(Operator):
    """A person at the bench.

    Parameters
    ----------
    bench : Bench
    seed : int
    """

    def __init__(self, bench: Bench, seed: int = 0) -> None:
        self._bench = bench
        self._rng = np.random.default_rng((seed, 0x4A11D))
        self.requests: list[Request] = []
        """Everything that was asked, in order."""
        self.reclamped_by = Rigid()
        """How far the sheet has moved when it is clamped again, as a motion of space."""
        self.eye = EYE
        """Spread of bringing a bit over a mark by eye, mm."""
        self.spot_eye = SPOT_EYE
        """Spread of bringing the middle of a light spot over a hole, mm."""
        self.declines: set[RequestKind] = set()
        """Kinds that are refused."""
        self._aim: tuple[Request, Triple] | None = None
        self._pin: tuple[float, float] | None = None
        """Space place of the hole that was last set under the bit by shifting the sheet."""
        self._gauge: dict[int, float] = {}
        """Where the dial gauge of each axis reads zero, space."""
        self._remembered: tuple[float, float] | None = None

    def ask(self, request: Request) -> Answer:
        self.requests.append(request)
        if request.kind in self.declines:
            return Answer(AnswerKind.DECLINED)
        with self._bench.clock.lock:
            if request.kind is RequestKind.CONFIRM:  # asked only when the position is believed
                self._remembered = self._bench.work_to_space((0.0, 0.0))
            return self._do(request)

    def _do(self, request: Request) -> Answer:
        bench, body = self._bench, self._bench.body
        if request.kind is RequestKind.CLIP_TO_BIT:
            body.clip, body.clip_at_bit = None, True
        elif request.kind is RequestKind.CLIP_ON:
            body.clip, body.clip_at_bit = self._clip_place(request), False
        elif request.kind is RequestKind.CLIP_OFF:
            body.clip, body.clip_at_bit = None, False
        elif request.kind is RequestKind.CHANGE_BIT:
            body.change_bit(request.bit)
        elif request.kind in (RequestKind.SPINDLE_ON, RequestKind.SPINDLE_OFF):
            body.switch_by_hand(request.kind is RequestKind.SPINDLE_ON)
        elif request.kind is RequestKind.TURN_OVER:
            bench.turn_over(self.reclamped_by, axis=request.axis or "y")
        elif request.kind is RequestKind.RECLAMP:
            bench.reclamp(self.reclamped_by)
        elif request.kind is RequestKind.SHIFT:
            self._shift()
        elif request.kind is RequestKind.READ:
            return self._read(request)
        elif request.kind is RequestKind.JOG_TO:
            return self._jog_to(request)
        elif request.kind is RequestKind.PAPER:
            return self._paper(request)
        return Answer()

    def _shift(self) -> None:
        """Push the sheet until the hole seen nearest to the bit sits under it.

        A second hole is brought there by turning the sheet about the first, which a finger holds.
        """
        bench, tip = self._bench, self._bench.tip()
        seen = bench.sheet.to_space([hole[:2] for hole in bench.holes()])
        near = seen[int(np.hypot(seen[:, 0] - tip[0], seen[:, 1] - tip[1]).argmin())]
        aim = np.array(tip[:2]) + self._rng.normal(0.0, self.eye, 2)
        pin = self._pin
        if pin is None or float(np.hypot(*(near - pin))) < SEARCH:
            bench.reclamp(Rigid(0.0, (float(aim[0] - near[0]), float(aim[1] - near[1]))))
            self._pin = (float(aim[0]), float(aim[1]))
            return
        was, will = near - pin, aim - pin
        angle = float(np.arctan2(was[0] * will[1] - was[1] * will[0], was @ will))
        about = Rigid(0.0, (-pin[0], -pin[1])).then(Rigid(angle)).then(Rigid(0.0, pin))
        bench.reclamp(about)

    def _read(self, request: Request) -> Answer:
        """A dial gauge against the head, zero where it stood when it was first looked at."""
        axis = "xyz".index(request.net) if request.net in ("x", "y", "z") else 0
        tip = self._bench.tip()
        self._gauge.setdefault(axis, tip[axis])
        seen = tip[axis] - self._gauge[axis] + float(self._rng.normal(0.0, GAUGE))
        return Answer(value=round(seen, 3))

    def _clip_place(self, request: Request) -> tuple[float, float]:
        """Sheet place of the clip: where asked, else the waste at the blank's corner."""
        bench = self._bench
        if request.place is None:
            return (1.0, bench.sheet.height - 1.0)
        x, y = bench.sheet.to_sheet([self._where(request.place)])[0]
        return (float(x), float(y))

    def _where(self, place: tuple[float, float]) -> tuple[float, float]:
        """Space x and y of a place that is asked for.

        A person knows it from the board, not from the controller: where that has lost its position
        since the last cut, the place is where it was then.
        """
        now, then = self._bench.work_to_space((0.0, 0.0)), self._remembered
        if then is None or max(abs(now[0] - then[0]), abs(now[1] - then[1])) < SEARCH:
            return self._bench.work_to_space(place)
        return (place[0] + then[0], place[1] + then[1])

    def _jog_to(self, request: Request) -> Answer:
        """Look where the bit is, say how to move it, until it looks right."""
        bench = self._bench
        if request.place is None and "raise" in request.title.lower():
            return self._raise()
        if self._aim is None or self._aim[0] != request:
            self._aim = (request, self._target(request))
        tip, aim = bench.tip(), self._aim[1]
        dx, dy = aim[0] - tip[0], aim[1] - tip[1]
        if max(abs(dx), abs(dy)) < GOOD_ENOUGH * self.eye and -0.5 <= tip[2] - aim[2] <= 2.0:
            self._aim = None
            return Answer()
        limited = [float(np.clip(step, -JUMP, JUMP)) for step in (dx, dy)]
        if max(abs(dx), abs(dy)) >= GOOD_ENOUGH * self.eye and tip[2] < aim[2] + 0.5:
            return Answer(AnswerKind.JOG, (0.0, 0.0, aim[2] + 1.0 - tip[2]))  # lift before moving across
        if max(abs(dx), abs(dy)) >= GOOD_ENOUGH * self.eye:
            return Answer(AnswerKind.JOG, (limited[0], limited[1], 0.0))
        return Answer(AnswerKind.JOG, (0.0, 0.0, aim[2] - tip[2]))

    def _raise(self) -> Answer:
        """Straight up, until the bit is well clear."""
        tip = self._bench.tip()
        missing = self._bench.sheet.highest() + CLEAR - tip[2]
        return Answer(AnswerKind.JOG, (0.0, 0.0, missing)) if missing > 0.1 else Answer()

    def _target(self, request: Request) -> Triple:
        """Where the person thinks the bit should stand.

        Asked for a hole or a mark, over the one seen nearest to the place; else at the place.
        """
        bench, sheet = self._bench, self._bench.sheet
        by_spot = "light spot" in request.title
        if request.place is None:
            x, y = sheet.corner()
            x, y = x + CORNER_INSET, y + CORNER_INSET
        else:
            x, y = self._where(request.place)
            sought = any(word in request.title for word in ("hole", "mark"))
            spot = np.array(bench.body.spot if by_spot else (0.0, 0.0))
            x, y = x + float(spot[0]), y + float(spot[1])
            holes = [hole[:2] for hole in bench.holes()] if sought else []
            if holes:
                seen = sheet.to_space(holes)
                far = np.hypot(seen[:, 0] - x, seen[:, 1] - y)
                if far.min() < SEARCH:
                    x, y = (float(value) for value in seen[int(far.argmin())])
            x, y = x - float(spot[0]), y - float(spot[1])
        eye = self.spot_eye if by_spot else self.eye
        x, y = x + float(self._rng.normal(0.0, eye)), y + float(self._rng.normal(0.0, eye))
        return (x, y, float(sheet.top([(x, y)])[0]) + ABOVE)

    def _paper(self, request: Request) -> Answer:
        """Bring the bit down until the paper just drags."""
        bench = self._bench
        tip = bench.tip()
        top = float(bench.sheet.top([tip[:2]])[0])
        gap = tip[2] - top - PAPER
        if abs(gap) < 4.0 * FEELING:
            return Answer(value=PAPER)
        return Answer(AnswerKind.JOG, (0.0, 0.0, -gap + float(self._rng.normal(0.0, FEELING))))


MARK_DEPTH = 2.0 * COPPER
"""A spot bored deeper than this shows as a mark."""
