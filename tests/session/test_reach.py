"""Programs that leave the machine or meet a clamp are refused before anything moves."""

from __future__ import annotations

from dataclasses import replace

import pytest

from drypoint.errors import PlanError
from drypoint.session.session import Session
from drypoint.session.settings import Clamp
from drypoint.session.work import fitting_preset, later_work, marks_work, require_reach, require_room


def test_the_demo_fits_its_machine(session: Session) -> None:
    snap = session.snapshot
    for item in (*marks_work(session.derived, snap), *later_work(session.derived, snap)):
        require_reach(snap.settings, item.program)


def test_a_clamp_in_the_way_is_named(session: Session) -> None:
    snap = session.snapshot
    (item,) = marks_work(session.derived, snap)
    x, y = item.program.moves.end[item.program.moves.tag >= 0][0, :2]
    blank = replace(snap.settings.blank, clamps=(Clamp(x - 2.0, y - 2.0, 4.0, 4.0),))
    with pytest.raises(PlanError, match="clamp 1"):
        require_reach(replace(snap.settings, blank=blank), item.program)


def test_a_machine_too_small_is_refused(session: Session) -> None:
    snap = session.snapshot
    outline = later_work(session.derived, snap)[-1]
    machine = replace(snap.settings.machine, travel=(60.0, 60.0, 40.0))
    with pytest.raises(PlanError, match="of X"):
        require_reach(replace(snap.settings, machine=machine), outline.program)
    with pytest.raises(PlanError, match="the machine moves 60 × 60 mm"):
        require_room(replace(snap.settings, machine=machine), 86.0, 66.0)


def test_the_smallest_machine_that_holds_the_blank() -> None:
    assert fitting_preset(80.0, 60.0) == "small"
    assert fitting_preset(110.0, 140.0) == "medium"
    with pytest.raises(PlanError, match="No machine"):
        fitting_preset(900.0, 900.0)
