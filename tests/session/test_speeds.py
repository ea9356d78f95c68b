"""How the bits are run on the machine chosen: what the spindle cannot do is told, with what would do."""

from __future__ import annotations

from dataclasses import replace

import pytest

from drypoint.bits.model import Speeds
from drypoint.session.facts import prepared_facts
from drypoint.session.session import Session
from drypoint.session.settings import BitSettings, MachineSettings, Settings
from drypoint.session.speeds import speed_findings


def test_the_usual_bits_suit_the_usual_machine() -> None:
    assert speed_findings(Settings()) == ()


def test_a_spindle_that_is_too_slow_is_told_once_with_the_feed_that_keeps_the_chips() -> None:
    """Chip load is feed over turns (handbook formula f = n z fz): 300 mm/min at 20,000 turns is 150 at
    10,000."""
    usual = BitSettings()
    fast = replace(usual.vbit, speeds=Speeds(20_000.0, 300.0, 100.0))
    (found,) = speed_findings(Settings(bits=replace(usual, vbit=fast)))
    assert found.kind == "spindle"
    assert "20000" in str(found.what)
    assert "10000" in str(found.what)
    assert "150 mm/min" in str(found.hint)
    every = replace(usual, drills=tuple(replace(one, speeds=fast.speeds) for one in usual.drills))
    (found,) = (one for one in speed_findings(Settings(bits=every)) if one.kind == "spindle")
    assert f"{len(usual.drills) - 1} more" in str(found.what)


def test_a_spindle_that_cannot_turn_so_slowly_is_told() -> None:
    found = speed_findings(Settings(machine=MachineSettings(preset="medium, spindle on and off")))
    assert found
    assert all(one.kind == "spindle" for one in found)
    assert "20000 to 24000" in str(found[0].what)


def test_feeds_past_the_axes_and_chips_too_thick_are_told() -> None:
    usual = BitSettings()
    mill = replace(usual.mill, speeds=Speeds(10_000.0, 1_800.0, 900.0))
    kinds = [one.kind for one in speed_findings(Settings(bits=replace(usual, mill=mill)))]
    assert kinds == ["feed", "feed", "chips"]


@pytest.mark.parametrize("slow", [False, True])
def test_prepare_warns_of_bits_that_are_used(session: Session, slow: bool) -> None:
    bits = session.settings.bits
    turns = 30_000.0 if slow else 10_000.0
    drills = tuple(
        replace(one, speeds=replace(one.speeds, spindle=turns)) if one.diameter == 0.8 else one
        for one in bits.drills
    )
    session.change("faster", bits=replace(bits, drills=drills))
    told = [text for text in prepared_facts(session)["warnings"] if "turns a minute" in text]
    assert len(told) == slow
    if slow:
        assert "Drill 0.8 mm" in told[0]


def test_climbing_and_conventional_loops_run_opposite_ways(session: Session) -> None:
    climbing = session.derived.cuts(session.snapshot).grooves
    session.change("the other way", cuts=replace(session.settings.cuts, climb=False))
    other = session.derived.cuts(session.snapshot).grooves
    turns = [sum(_turn(line) for line in plan.lines) for plan in (climbing, other)]
    assert turns[0] == -turns[1] != 0


def _turn(line) -> int:
    """1 where a closed line runs anticlockwise, -1 where clockwise."""
    x, y = line[:, 0], line[:, 1]
    area = float(x[:-1] @ y[1:] - x[1:] @ y[:-1])
    return 1 if area > 0 else -1
