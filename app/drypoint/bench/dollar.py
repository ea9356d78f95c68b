"""The `$` commands: settings, offsets, modal state, jog, check mode, unlock, homing, sleep."""

from __future__ import annotations

import math
import re
from typing import TYPE_CHECKING

from drypoint.bench import words as w
from drypoint.bench.memory import PLACES
from drypoint.bench.planner import Triple
from drypoint.bench.states import ALARM_HOMING, BLOCKS, BUFFER, State, Task
from drypoint.bench.words import Refused, clean

if TYPE_CHECKING:
    from drypoint.bench.controller import BenchController

VERSION = "1.1f.20170131"
HELP = "[HLP:$$ $# $G $I $N $x=val $Nx=line $J=line $SLP $C $X $H ~ ! ? ctrl-x]"
_SETTING = re.compile(r"\$(\d+)=([+-]?[\d.]+)$")
_STARTUP = re.compile(r"\$N([01])=(.*)$")


class Dollar:
    """Executes `$` lines on a controller."""

    def __init__(self, controller: BenchController) -> None:
        self._of = controller

    def execute(self, line: str, text: str) -> Task:
        """One cleaned line that starts with `$`; ``text`` is the line as sent.

        Raises
        ------
        Refused
            With the number to answer.
        """
        if line.startswith("$J="):
            yield from self._jog(line[3:])
            return
        if line in ("$", "$G", "$C", "$X"):
            self._any_time(line)
            return
        if self._of.state not in (State.IDLE, State.ALARM):
            raise Refused(w.NOT_IDLE)
        if line == "$H":
            yield from self._home()
        elif line == "$SLP":
            self._of.realtime.sleep()
        elif line in ("$$", "$#", "$N", "$I"):
            self._list(line)
        else:
            self._store(line, text)
            yield self._of.store()
            if line.startswith("$RST="):
                self._of.reset_wanted = True

    def inside(self, end: Triple) -> bool:
        """Whether a place lies within the travel (machine zero at the switches: negative space)."""
        travel = self._of.memory.travel
        return all(-most - 1e-6 <= value <= 1e-6 for value, most in zip(end, travel, strict=True))

    def say_probe(self) -> None:
        """The result of the last probe."""
        place, found = self._of.probe_result
        self._of.say(f"[PRB:{self._shown(place)}:{int(found)}]")

    def _shown(self, place: Triple) -> str:
        return self._of.realtime.coordinates(place)

    def _any_time(self, line: str) -> None:
        of = self._of
        if line == "$":
            of.say(HELP)
        elif line == "$G":
            of.say(f"[GC:{of.parser.modal.text()}]")
        elif line == "$X":
            if of.state is State.ALARM:
                of.say("[MSG:Caution: Unlocked]")
                of.state = State.IDLE
        elif of.state is State.CHECK:
            of.say("[MSG:Disabled]")
            of.reset_wanted = True
        elif of.state is State.IDLE:
            of.state = State.CHECK
            of.say("[MSG:Enabled]")
        else:
            raise Refused(w.NOT_IDLE)

    def _list(self, line: str) -> None:
        of = self._of
        if line == "$$":
            for text in of.memory.lines():
                of.say(text)
        elif line == "$N":
            for number, text in enumerate(of.memory.startup):
                of.say(f"$N{number}={text}")
        elif line == "$I":
            of.say(f"[VER:{VERSION}:{of.memory.build}]")
            of.say(f"[OPT:V,{BLOCKS},{BUFFER}]")
        else:
            for name in PLACES:
                of.say(f"[{name}:{self._shown(of.memory.places[name])}]")
            of.say(f"[G92:{self._shown(of.parser.g92)}]")
            unit = self._shown((0.0, 0.0, of.parser.tool_length)).rsplit(",", 1)[1]
            of.say(f"[TLO:{unit}]")
            self.say_probe()

    def _store(self, line: str, text: str) -> None:
        memory = self._of.memory
        if setting := _SETTING.match(line):
            memory.change(int(setting.group(1)), _number(setting.group(2)))
            self._of.planner.limits = memory.limits()
        elif startup := _STARTUP.match(line):
            if self._of.state is not State.IDLE:
                raise Refused(w.NOT_IDLE)
            if startup.group(2):
                self._of.parser.read(startup.group(2))
            memory.startup[int(startup.group(1))] = startup.group(2)
        elif line.startswith("$RST="):
            memory.restore(line[5:])
            self._of.say("[MSG:Restoring defaults]")
        elif line.startswith("$I="):
            memory.build = text.split("=", 1)[1]
        else:
            raise Refused(w.BAD_STATEMENT)

    def _jog(self, words: str) -> Task:
        of = self._of
        if of.state not in (State.IDLE, State.JOG):
            raise Refused(w.NOT_IDLE if of.state is not State.ALARM else w.LOCKED)
        parsed = of.parser.read(clean(words), jog=True)
        if of.memory.settings[20] and not self.inside(parsed.target):
            raise Refused(w.JOG_TRAVEL)
        if of.planner.full:
            yield of.has_room
        if of.state in (State.IDLE, State.JOG) and not of.realtime.jog_cancel:
            of.push(parsed.target, parsed.feed / 60.0, jog=True)
            of.parser.position = parsed.target

    def _home(self) -> Task:
        """Z up, then X and Y, to the switches; needs switches to be fitted."""
        of = self._of
        of.memory.need_homing()
        of.state = State.HOME
        distance = of.mechanics.switches(of.stepper.position)
        settings = of.memory.settings
        if distance is None:
            yield of.now + 1.5 * max(of.memory.travel) / (settings[25] / 60.0)
            of.forget_motion()
            of.alarm(ALARM_HOMING)
            return
        start = of.stepper.position
        steps = [(0.0, 0.0, distance[2]), distance]
        for step in steps:
            of.push((start[0] + step[0], start[1] + step[1], start[2] + step[2]), settings[25] / 60.0)
            of.start()
            yield of.drained
        yield of.now + 3.0 * settings[27] / (settings[24] / 60.0)
        pull = -settings[27]
        of.homed_at((pull, pull, pull))
        of.state = State.IDLE


def _number(text: str) -> float:
    try:
        value = float(text)
    except ValueError:
        raise Refused(w.BAD_NUMBER) from None
    if not math.isfinite(value):
        raise Refused(w.BAD_NUMBER)
    return value
