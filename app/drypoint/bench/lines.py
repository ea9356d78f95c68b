"""What a G-code line does once it is read: motion, dwell, probing, offsets, spindle, end of program."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from drypoint.bench.dollar import Dollar
from drypoint.bench.memory import ORIGIN
from drypoint.bench.modal import Modal
from drypoint.bench.parser import PROBES, Arc, Parsed
from drypoint.bench.planner import Triple
from drypoint.bench.states import (
    ALARM_PROBE_END,
    ALARM_PROBE_START,
    ALARM_SOFT,
    State,
    Task,
    Wait,
)
from drypoint.bench.words import LOCKED, Refused, clean

if TYPE_CHECKING:
    from drypoint.bench.controller import BenchController


class Lines:
    """Executes accepted lines on a controller."""

    def __init__(self, controller: BenchController) -> None:
        self._of = controller
        self._dollar = Dollar(controller)
        self._touched: Triple | None = None

    def execute(self, line: str, text: str) -> Task:
        """One cleaned line.

        Raises
        ------
        Refused
            With the number to answer.
        """
        of = self._of
        if not line:
            return
        if line[0] == "$":
            yield from self._dollar.execute(line, text)
            return
        if of.state in (State.ALARM, State.JOG, State.SLEEP):
            raise Refused(LOCKED)
        yield from self._run(of.parser.read(line))

    def startup(self) -> Task:
        """The stored start-up lines."""
        for line in self._of.memory.startup:
            if line:
                try:
                    yield from self._run(self._of.parser.read(clean(line)))
                except Refused as refusal:
                    self._of.say(f">{line}:error:{refusal.code}")
                else:
                    self._of.say(f">{line}:ok")

    def spindle_off(self) -> None:
        """Output off, whatever the modal state says."""
        self._of.mechanics.spindle(0.0)
        self._of.parser.modal = replace(self._of.parser.modal, spindle=5, coolant=9)

    def laser_power(self, rapid: bool) -> float:
        """Power (0..1) a laser head has during the next move."""
        of, modal = self._of, self._of.parser.modal
        if not of.memory.settings[32] or rapid or modal.spindle == 5 or modal.motion not in (1, 2, 3):
            return 0.0
        return min(1.0, modal.speed / max(of.memory.settings[30], 1e-9))

    def resting_beam(self) -> float:
        """Power (0..1) of a laser while nothing moves: only constant power stays on at rest."""
        of, modal = self._of, self._of.parser.modal
        dark = modal.spindle != 3 or modal.motion not in (1, 2, 3) or of.realtime.spindle_stopped
        idle = of.state is State.CHECK or not of.powered or not of.memory.settings[32]
        if dark or idle or not of.standing():
            return 0.0
        share = of.realtime.spindle / 100.0
        return min(1.0, modal.speed * share / max(of.memory.settings[30], 1e-9))

    def touched(self) -> None:
        """The contact input has changed as the probing move expected."""
        of = self._of
        self._touched = of.place()
        of.stepper.brake(of.now)

    def _run(self, parsed: Parsed) -> Task:
        of, parser = self._of, self._of.parser
        before = parser.modal
        if of.state is State.CHECK:
            self._settle(parsed)
            return
        # the standard's order: feed, speed, spindle, dwell, offsets, motion, stop
        spindle = parsed.spindle_changed and not self._in_stride(before, parsed.modal)
        if spindle or parsed.coolant_changed or parsed.dwell is not None or parsed.offsets_changed:
            yield of.drained
        parser.modal = replace(parsed.modal, flow=None)
        if spindle:
            self._spindle(parsed.modal)
        if parsed.dwell is not None:
            yield of.now + parsed.dwell
        if parsed.action is not None:
            yield from self._offsets(parsed)
        elif parsed.offsets_changed:
            of.realtime.report_offsets()
        if parsed.motion is not None:
            yield from self._motion(parsed)
        if parsed.flow is not None:
            yield from self._flow(parsed.flow)

    def _settle(self, parsed: Parsed) -> None:
        """Check mode: take the state over, move nothing."""
        parser = self._of.parser
        parser.modal = replace(parsed.modal, flow=None)
        if parsed.action == 92:
            parser.g92 = parsed.value
        if parsed.motion is not None:
            parser.position = parsed.target

    def _in_stride(self, before: Modal, after: Modal) -> bool:
        """Whether a spindle word takes effect without stopping (laser mode)."""
        if not self._of.memory.settings[32] or before.spindle != after.spindle:
            return before.spindle == after.spindle and (after.spindle == 5 or before.speed == after.speed)
        return after.motion in (1, 2, 3) or after.spindle == 4

    def _spindle(self, modal: Modal) -> None:
        share = self._of.realtime.spindle / 100.0
        on = modal.spindle in (3, 4)
        self._of.mechanics.spindle(modal.speed * share if on else 0.0)

    def _offsets(self, parsed: Parsed) -> Task:
        of, parser, action = self._of, self._of.parser, parsed.action
        of.realtime.report_offsets()
        if action == 10:
            of.memory.places[parsed.place] = parsed.value
            yield of.store()
        elif action in (28.1, 30.1):
            of.memory.places[parsed.place] = of.place()
            yield of.store()
        elif action == 92:
            parser.g92 = parsed.value
        elif action == 92.1:
            parser.g92 = ORIGIN
        elif action in (43.1, 49):
            parser.tool_length = parsed.value[2]
        else:
            if parsed.go:
                yield from self._line(parsed.value, math.inf, rapid=True)
            yield from self._line(of.memory.places[parsed.place], math.inf, rapid=True)

    def _motion(self, parsed: Parsed) -> Task:
        of, motion = self._of, parsed.motion
        if motion in PROBES:
            yield from self._probe(parsed)
            return
        if motion == 0:
            yield from self._line(parsed.target, math.inf, rapid=True)
            return
        if parsed.arc is not None:
            points = arc_points(of.parser.position, parsed.target, parsed.arc, of.memory.settings[12])
        else:
            points = [parsed.target]
        speed = parsed.feed / 60.0
        if parsed.inverse_time:
            speed *= _length(of.parser.position, points)
        for point in points:
            yield from self._line(point, speed)

    def _line(self, end: Triple, speed: float, *, rapid: bool = False) -> Iterator[Wait]:
        of = self._of
        if of.memory.settings[20] and not self._dollar.inside(end):
            yield from self._soft_limit()
            return
        if of.planner.full:
            yield of.has_room
        of.push(end, speed, rapid=rapid)
        of.parser.position = end

    def _soft_limit(self) -> Task:
        """Feed hold, outputs off, alarm; the position is kept."""
        of = self._of
        of.stepper.brake(of.now)
        yield of.standing
        of.fail(ALARM_SOFT)
        yield of.released  # never answered: only a reset helps

    def _probe(self, parsed: Parsed) -> Task:
        of = self._of
        yield of.drained
        away = parsed.motion in (38.4, 38.5)
        must = parsed.motion in (38.2, 38.4)
        start = of.stepper.position
        self._touched = None
        if of.probe_input() is not away:
            of.parser.position = start
            of.alarm(ALARM_PROBE_START)
            return
        of.push(parsed.target, parsed.feed / 60.0)
        if of.planner.blocks:
            head = of.planner.blocks[0]
            head.free = True
            distance = of.mechanics.contact_along(head.start, head.end, head.nominal, away=away)
            of.start()
            of.stepper.watch(distance)
        yield of.standing
        of.forget_motion()
        found = self._touched is not None
        of.probe_result = (self._touched or of.place(), found)
        if not found and must:
            of.alarm(ALARM_PROBE_END)
        elif of.state is State.RUN:
            of.state = State.IDLE
        self._dollar.say_probe()

    def _flow(self, flow: float) -> Task:
        of = self._of
        yield of.drained
        if flow in (2, 30):
            modal = of.parser.modal
            of.parser.modal = replace(
                modal, motion=1, plane=17, distance=90, feed_mode=94, place=54, spindle=5, coolant=9
            )
            of.mechanics.spindle(0.0)
            of.realtime.report_offsets()
            of.say("[MSG:Pgm End]")
        elif flow == 0:
            of.realtime.pause()
            yield of.released


def arc_points(start: Triple, end: Triple, arc: Arc, tolerance: float) -> list[Triple]:
    """Ends of the chords that stand for an arc within about ``tolerance`` mm; the last is ``end``."""
    first, second, linear = arc.axes
    a0 = math.atan2(start[second] - arc.centre[1], start[first] - arc.centre[0])
    a1 = math.atan2(end[second] - arc.centre[1], end[first] - arc.centre[0])
    turn = a1 - a0
    if arc.clockwise and turn >= -1e-9:
        turn -= 2.0 * math.pi
    elif not arc.clockwise and turn <= 1e-9:
        turn += 2.0 * math.pi
    sagitta = min(tolerance, arc.radius)
    chord = 2.0 * math.sqrt(sagitta * (2.0 * arc.radius - sagitta)) if arc.radius else 1.0
    count = max(1, math.floor(abs(turn) * arc.radius / chord))
    points: list[Triple] = []
    for index in range(1, count):
        share = index / count
        angle = a0 + share * turn
        point = [0.0, 0.0, 0.0]
        point[first] = arc.centre[0] + arc.radius * math.cos(angle)
        point[second] = arc.centre[1] + arc.radius * math.sin(angle)
        point[linear] = start[linear] + share * (end[linear] - start[linear])
        points.append((point[0], point[1], point[2]))
    return [*points, end]


def _length(start: Triple, points: list[Triple]) -> float:
    total, last = 0.0, start
    for point in points:
        total += math.dist(last, point)
        last = point
    return total
