"""The first words with a controller: wait for its greeting, ask what it is. Nothing is moved."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from drypoint.errors import MachineError
from drypoint.machine.channel import Channel
from drypoint.machine.protocol import (
    Message,
    Modal,
    Offset,
    Options,
    Phase,
    Realtime,
    Setting,
    StartupLine,
    Version,
)
from drypoint.machine.state import Facts

_GREETING = 3.0
"""Time a board takes to greet after the port was opened, s."""

_WAIT = 0.05


def greet(channel: Channel) -> None:
    """Wait for the greeting that opening the port brings; else make sure that somebody rests there.

    A board that does not restart on opening may hold half a line of an earlier program. That half
    must not be completed, so it is reset, which is no motion for a machine at rest.

    Raises
    ------
    MachineError
        If nothing answers, or the machine moves.
    """
    if _await_greeting(channel):
        return
    if channel.status is None:
        raise MachineError(
            "No controller answers.",
            channel.name,
            "Is the machine switched on, and is this its port? Other ports are in the list.",
        )
    if channel.status.phase not in (Phase.IDLE, Phase.ALARM, Phase.CHECK, Phase.SLEEP):
        raise MachineError(
            "The machine is in the middle of something that was not started here.",
            channel.name,
            "Wait until it rests, or switch it off and on; then connect again.",
        )
    channel.realtime(Realtime.RESET)
    if not _await_greeting(channel):
        raise MachineError("The controller does not come back after a reset.", channel.name, "")


def _await_greeting(channel: Channel) -> bool:
    """Whether a greeting came, and a first report after it."""
    deadline = channel.now() + _GREETING
    seen = channel.restarts
    while channel.now() < deadline and channel.restarts == seen:
        channel.exchange(_WAIT)
    if channel.restarts == seen:
        return False
    while channel.status is None:
        channel.exchange(_WAIT)
    return True


def read_facts(ask: Callable[[str], Sequence[Message]], facts: Facts) -> Facts:
    """Ask for build, settings, offsets, stored lines and modal state; unanswered ones stay as given."""
    for question in ("$I", "$$", "$#", "$N", "$G"):
        for message in ask(question):
            facts = with_answer(facts, message)
    return facts


def with_answer(facts: Facts, message: Message) -> Facts:
    """``facts`` with what one message adds."""
    match message:
        case Version():
            return replace(facts, version=message.version)
        case Options():
            return replace(
                facts,
                codes=message.codes,
                planner_blocks=message.planner_blocks or facts.planner_blocks,
                receive_bytes=message.receive_bytes or facts.receive_bytes,
            )
        case Setting():
            return replace(facts, settings={**facts.settings, message.number: message.value})
        case Offset():
            return replace(facts, offsets={**facts.offsets, message.name: message.values})
        case StartupLine() if message.line.strip():
            return replace(facts, startup=(*facts.startup, message.line))
        case Modal():
            return replace(facts, modal=message.words)
        case _:
            return facts
