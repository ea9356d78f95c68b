"""The main job end to end on the bench."""

from __future__ import annotations

from pathlib import Path

import pytest

from drypoint.session.rehearsal import rehearse
from drypoint.session.session import Session


def test_the_demo_ends_with_exactly_its_nets(session: Session, tmp_path: Path) -> None:
    """On another blank and machine than the demo itself, whose outcome is checked after the suite."""
    before = session.snapshot
    found = rehearse(session, tmp_path, seed=5, touches=50)
    check = found.check
    assert check.clean, (check.shorts, check.opens, check.lost)
    assert check.pieces - found.islands == 0
    assert found.passes[0].length_mm > found.passes[-1].length_mm or len(found.passes) == 1
    for one in found.passes:
        assert one.actual_through == pytest.approx(one.predicted_through, abs=0.03)
    assert found.holes == 4
    assert found.residual_mm is not None
    assert 0.005 < found.residual_mm < 0.15  # sighted by eye: never exact, never far
    assert not found.findings
    # the rehearsal is a job of its own
    assert session.snapshot.records == before.records
    assert found.give  # the long edge that no clamp holds was named before cutting
