"""What island touches teach, where they look first, and what is painted."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
import shapely

from drypoint.errors import PlanError
from drypoint.machine.islands_plan import Neighbours, Sighting, conclude
from drypoint.passes.model import THROUGH, ReachMap
from drypoint.session.actions.prove import cut_again, keep_proof, plan_proof
from drypoint.session.codec import to_json
from drypoint.session.islands import as_cut
from drypoint.session.pass_plan import PassPlan
from drypoint.session.session import Session
from drypoint.surface.touch import Touch, Touches


@pytest.fixture
def job(small_job: Path) -> Iterator[Session]:
    """Three pads of which two are joined by design, the copper touched: a flat sheet, nearly."""
    session = Session.open(small_job)
    layout = session.derived.layout(session.snapshot)
    noise = np.random.default_rng(4)
    places = [
        (x, y)
        for x in np.linspace(3.0, layout.width - 3.0, 5)
        for y in np.linspace(3.0, layout.height - 3.0, 4)
    ]
    touches = Touches(tuple(Touch(x, y, float(noise.normal(0.0, 0.004))) for x, y in places))
    session.keep("touches", {"setup": 1, "touches": touches})
    yield session
    session.close()


def planned(session: Session) -> PassPlan:
    return session.derived.passes(session.snapshot)


def cut(session: Session) -> PassPlan:
    """The next pass, taken as run."""
    snap = session.snapshot
    work = to_json(planned(session).next)
    session.keep("pass", {"pass": work, "grooves": session.derived.grooves_key(snap), "setup": snap.setup})
    return planned(session)


def touch(session: Session, joined: bool) -> None:
    """Every pair is touched; all are found joined, or none."""
    pairs = plan_proof(session).pairs
    sightings = [Sighting(pair.nets[0], pair.nets[1], joined) for pair in pairs]
    keep_proof(session, conclude(pairs, sightings), sightings)


def test_proof_by_touch_makes_the_ground_sure_and_joined_ground_is_cut_again(job: Session) -> None:
    before = cut(job)
    touch(job, joined=False)
    proved = planned(job)
    assert proved.belief is not None
    assert proved.belief.offset > 0.0, "all apart: it cut rather deeper than was expected"
    assert proved.reach_totals.expected > before.reach_totals.expected
    assert proved.next is None

    touch(job, joined=True)
    found = planned(job)
    assert found.belief is not None
    assert found.belief.offset < proved.belief.offset
    assert found.reach_totals.expected < proved.reach_totals.expected
    assert found.next is not None
    assert found.next.deepest > before.done[0].deepest


def test_what_a_person_asks_to_be_cut_again_teaches_nothing(job: Session) -> None:
    before = cut(job)
    pair = plan_proof(job).pairs[0]
    cut_again(job, pair.nets, pair.at)
    after = planned(job)
    assert after.belief is None
    assert after.next is not None
    assert after.next.length > (0.0 if before.next is None else before.next.length)
    touch(job, joined=False)
    assert planned(job).next is not None, "asked is asked, also where a touch finds it apart"


def test_the_doubtful_narrow_ground_is_touched_first(job: Session) -> None:
    snap = job.snapshot
    cuts, copper = job.derived.cuts(snap), job.derived.standing(snap)
    reach = planned(job).expected
    middle = np.array([line.mean(axis=0) for line in reach.points])
    left, right = int(np.argmin(middle[:, 0])), int(np.argmax(middle[:, 0]))
    assert left != right
    nets = [cuts.grooves.line_nets[k] for k in (left, right)]
    pairs = [Neighbours(("", next(name for name in names if name)), 0.15, (0.0, 0.0)) for names in nets]
    for doubtful, wanted in ((left, pairs[0]), (right, pairs[1])):
        chance = [np.full(len(line), 0.9999) for line in reach.points]
        chance[doubtful] = np.where(np.arange(len(chance[doubtful])) == 7, 0.3, chance[doubtful])
        width = [np.full(len(line), cuts.width) for line in reach.points]
        found = as_cut(pairs, copper, cuts, ReachMap(reach.points, tuple(chance), tuple(width)), 0.01, 6.0)
        assert found[0].nets == wanted.nets
        assert found[0].doubt > 10 * found[1].doubt
        assert found[0].at == pytest.approx(tuple(reach.points[doubtful][7]))
    narrow = [np.full(len(line), cuts.width - 0.05) for line in reach.points]
    sure = tuple(np.full(len(line), 0.9999) for line in reach.points)
    gaps = as_cut(pairs, copper, cuts, ReachMap(reach.points, sure, tuple(narrow)), 0.01, 6.0)
    assert [pair.gap for pair in gaps] == [pytest.approx(0.09)] * 2, "narrower by 0.05 and by the bit's slope"


def test_what_is_painted_is_cut_alone_or_too_until_a_pass_was_run(job: Session) -> None:
    cut(job)
    line = job.derived.cuts(job.snapshot).grooves.lines[0]
    x, y = line[0]
    area = shapely.box(x - 1.0, y - 1.0, x + 1.0, y + 1.0)
    for only in (True, False):
        job.keep("painted", {"setup": 1, "areas": [area.wkt], "only": only})
        plan = planned(job)
        assert plan.next is not None
        inside = [shapely.LineString(run.path).within(area.buffer(0.6)) for run in plan.next.runs]
        assert any(inside)
        assert all(inside) or not only
    after = cut(job)
    assert after.next is None or after.reach_totals.expected > THROUGH
    job.keep("painted", {"setup": 1, "areas": [shapely.box(-9, -9, -8, -8).wkt], "only": True})
    with pytest.raises(PlanError, match="No groove"):
        planned(job)


def test_the_ladder_goes_over_everything_step_by_step(job: Session) -> None:
    choices = planned(job).choices
    assert [one.ladder for one in choices] == [False, False, False, True]
    rungs = choices[-1].passes
    job.change("Ladder", passes=replace(job.settings.passes, ladder=True))
    depths, lengths = [], []
    for _ in range(rungs):
        following = planned(job).next
        assert following is not None
        depths.append(following.deepest)
        lengths.append(following.length)
        cut(job)
    assert np.all(np.diff(depths) > 0.0)
    assert np.ptp(lengths) == pytest.approx(0.0, abs=1e-6)
    last = planned(job)
    assert last.next is None or last.next.length < 0.2 * lengths[0]
    beside = job.derived.cuts(job.snapshot).grooves.line_nets
    assert set(last.by_net) == {net for nets in beside for net in nets}
