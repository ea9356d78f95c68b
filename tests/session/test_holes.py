"""Holes of a job: how deep they go, what is marked first, and what is drilled with care."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from drypoint.cuts.model import CutKind
from drypoint.session.session import Session
from drypoint.session.work import later_work


@pytest.mark.parametrize(("backing", "below"), [(6.0, 0.4), (0.4, 0.32)])
def test_nothing_goes_deeper_into_the_backing_than_asked(
    session: Session, backing: float, below: float
) -> None:
    blank = replace(session.settings.blank, backing=backing)
    session.change("Backing", blank=blank)
    cuts = session.derived.cuts(session.snapshot)
    deep = {round(cut.depth - blank.thickness, 6) for cut in (*cuts.holes, *cuts.outline)}
    deep = {value for value in deep if value > 0}
    assert deep == {below}


def test_thin_drills_are_marked_before_and_lone_pads_drilled_gently(session: Session) -> None:
    cuts = session.derived.cuts(session.snapshot)
    kinds = [cut.kind for cut in cuts.holes]
    spots = kinds.count(CutKind.SPOT)
    thin = [cut for cut in cuts.holes if cut.kind is CutKind.HOLE and cut.diameter < 0.9]
    assert spots > 0
    assert spots >= len(thin)
    assert kinds[:spots] == [CutKind.SPOT] * spots
    assert any(cut.ease < 1.0 for cut in cuts.holes)
    first = later_work(session.derived, session.snapshot)[0].program
    assert first.bit == session.settings.bits.vbit
    assert -0.16 < first.moves.end[:, 2].min() < 0
    session.change("No marks", holes=replace(session.settings.holes, spots=False, gentle=1.0))
    plain = session.derived.cuts(session.snapshot)
    assert not any(cut.kind is CutKind.SPOT or cut.ease < 1.0 for cut in plain.holes)
    places = [
        np.array([cut.path[0] for cut in plan.holes if cut.kind is CutKind.HOLE]) for plan in (cuts, plain)
    ]
    assert np.array_equal(*places)
