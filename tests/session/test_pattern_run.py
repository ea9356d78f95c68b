"""The test pattern on the bench: touched, cut, stopped, resumed, read, and the bit's truth found again."""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np
import pytest
import shapely

from drypoint.bench.bench import Bench
from drypoint.bench.imperfect import Faults
from drypoint.bench.pty import BenchPty
from drypoint.job.journal import runs
from drypoint.machine.operator import RequestKind
from drypoint.machine.serial_link import SerialLink
from drypoint.machine.state import Activity
from drypoint.progress import Progress
from drypoint.session.actions import pattern_run, run
from drypoint.session.actions.coupon import adopt, before_reading
from drypoint.session.actions.coupon_reading import evaluate_readings, lines_of
from drypoint.session.actions.pattern_look import have_read
from drypoint.session.actions.pattern_rehearsal import true_offset
from drypoint.session.ground import KIND
from drypoint.session.plans import taught
from drypoint.session.session import Session
from drypoint.session.station import Station, connect, make_bench
from drypoint.session.work import preset_of

WITHIN = 1.645
"""Standard deviations of a 90 % interval."""


@dataclass
class Place:
    """A job with a bench at it."""

    session: Session
    bench: Bench
    station: Station

    def prepare(self, *, put: bool = True) -> pattern_run.Placed:
        return pattern_run.prepare_pattern(self.session, self.station, Progress(), put=put)


@pytest.fixture
def roomy(small_job: Path) -> Path:
    """The small board on a blank with room for patterns."""
    session = Session.open(small_job)
    session.change("Room", blank=replace(session.settings.blank, margin=12.0))
    session.close()
    return small_job


@pytest.fixture
def at_bench(roomy: Path, tmp_path: Path) -> Iterator[Callable[[int], Place]]:
    """Makes a copy of the job and a bench whose V-bit is not what is said of it."""
    made: list[Place] = []

    def make(seed: int) -> Place:
        copy = tmp_path / f"{seed}.drypoint"
        shutil.copyfile(roomy, copy)
        session = Session.open(copy)
        bench = make_bench(session.derived.layout(session.snapshot), session.settings, seed)
        rng = np.random.default_rng((seed, 7))
        bench.body.faults = replace(
            Faults(), tip=float(rng.normal(0.0, 0.025)), runout=float(rng.uniform(0.0, 0.02))
        )
        station = connect(bench.link, bench.operator, session.settings, bench=bench)
        made.append(Place(session, bench, station))
        return made[-1]

    yield make
    for one in made:
        one.station.close()
        one.session.close()


@pytest.mark.parametrize("seed", [1, 2])
def test_readings_on_the_bench_tell_the_bit_as_it_is(at_bench: Callable[[int], Place], seed: int) -> None:
    """Tip, run-out, both together and depth lie within 2.6 standard deviations (99 %) of the bench's own."""
    place = at_bench(seed)
    session, bit, faults = place.session, place.session.settings.bits.vbit, place.bench.body.faults
    placed = place.prepare()
    assert pattern_run.run_pattern(session, place.station, placed).finished
    assert not place.bench.mishaps
    found = evaluate_readings(session, have_read(session, place.bench))
    tip, runout = bit.tip + faults.tip, bit.runout + faults.runout
    both, sigma = found.together
    for value, spread, truth in (
        (found.tip, found.sigma(0), tip),
        (found.runout, found.sigma(1), runout),
        (both, sigma, tip + runout),
        (found.offset, found.sigma(2), true_offset(session, place.bench)),
    ):
        assert abs(value - truth) < 2.6 * spread
    assert sigma < 0.008
    before = session.derived.cuts(session.snapshot).width
    adopt(session, found)
    belief = taught(session.snapshot)
    assert belief is not None
    assert belief.offset == found.offset
    assert session.derived.cuts(session.snapshot).width != before
    assert before_reading(session)[0] == bit, "readings added later are read with the bit that cut them"


def test_its_ground_is_touched_once_and_an_existing_surface_is_used(
    at_bench: Callable[[int], Place], monkeypatch: pytest.MonkeyPatch
) -> None:
    place = at_bench(4)
    session = place.session
    first = place.prepare()
    (record,) = session.snapshot.records[pattern_run.TOUCHES]
    touched = np.array([(t["x"], t["y"]) for t in record.data["touches"]["touches"]])
    assert len(touched) == pattern_run.COUNT
    ground = shapely.transform(first.pattern.ground, session.derived.fit(session.snapshot).apply)
    assert shapely.covers(shapely.buffer(ground, 0.01), shapely.points(touched)).all()
    assert not session.snapshot.records["touches"], "the board's own surface is not made of a corner"
    monkeypatch.setattr(pattern_run, "KNOWN", 0.05)
    place.bench.operator.requests.clear()
    again = place.prepare(put=False)
    assert not place.bench.operator.requests, "nothing to touch, to put in or to set"
    assert len(session.snapshot.records[pattern_run.TOUCHES]) == 1
    assert again.pattern.extents == first.pattern.extents


def test_stopped_and_resumed_it_is_the_same_run(at_bench: Callable[[int], Place]) -> None:
    place = at_bench(5)
    session, station = place.session, place.station
    placed = place.prepare()
    stopped: list[int] = []

    def stop(event) -> None:
        if event.executed > 25 and not stopped:
            stopped.append(event.executed)
            station.controller.stop()

    result = pattern_run.run_pattern(session, station, placed, on_event=stop)
    assert not result.finished
    assert len(session.snapshot.records[KIND]) == 1, "its ground is spent once it was begun"
    assert not session.snapshot.records["done"]
    record = run.to_resume(session)
    assert record is not None
    assert record.program == pattern_run.NAME
    assert run.resume(session, station).finished
    assert [one.finished for one in runs(session.job)] == [False, True]
    assert session.snapshot.records["done"][-1].data["program"] == pattern_run.NAME
    assert not place.bench.mishaps
    asked = [one for one in place.bench.operator.requests if one.kind is RequestKind.CONFIRM]
    assert len(asked) == 2, "cautions before the run and before it goes on"
    assert all(one.cautions for one in asked)
    read = have_read(session, place.bench)
    assert len(read.widths) == len(lines_of(session.settings.bits.vbit).widths)
    assert read.ridges[0.3]
    following = place.prepare(put=False)
    assert following.pattern.ground.distance(placed.pattern.ground) > 0.5, "the next one lies elsewhere"


def test_a_machine_without_contact_cuts_it_on_copper_taken_as_flat(
    at_bench: Callable[[int], Place],
) -> None:
    place = at_bench(6)
    session = place.session
    session.change("No contact", machine=replace(session.settings.machine, contact=False))
    place.station.close()
    place.station = connect(place.bench.connect(), place.bench.operator, session.settings, bench=place.bench)
    assert not preset_of(session.settings).contact_input
    placed = place.prepare()
    assert not session.snapshot.records[pattern_run.TOUCHES]
    assert placed.spread == pattern_run.UNKNOWN
    kinds = {one.kind for one in place.bench.operator.requests}
    assert RequestKind.PAPER in kinds
    assert RequestKind.CLIP_ON not in kinds


@pytest.mark.skipif(os.name == "nt", reason="no pty")
def test_over_a_serial_port_it_is_held_and_goes_on(at_bench: Callable[[int], Place]) -> None:
    """As on a real machine: pyserial on a port, hands apart from it, nothing known of any bench."""
    place = at_bench(7)
    session, bench = place.session, place.bench
    place.station.close()
    held: list[int] = []

    def hold(event) -> None:
        controller = place.station.controller
        if event.executed > 25 and not held:
            controller.hold()
            held.append(event.executed)
        elif event.state.activity is Activity.HELD and event.state.still:
            held.append(event.executed)
            controller.resume()

    with BenchPty(bench, pace=60.0) as served:
        place.station = connect(SerialLink(served.device), bench.operator, session.settings)
        assert place.station.bench is None
        placed = place.prepare()
        assert pattern_run.run_pattern(session, place.station, placed, on_event=hold).finished
        place.station.close()
    assert len(held) >= 2
    assert not bench.mishaps
    assert len(runs(session.job)) == 1
    assert runs(session.job)[0].finished
    assert have_read(session, bench).squares[0.08]
