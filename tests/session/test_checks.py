"""Silent faults are caught before more is cut, and the job says what is suspect."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from drypoint.errors import MachineError
from drypoint.job.journal import events, runs
from drypoint.machine.operator import RequestKind
from drypoint.machine.procedures.bit_change import change_bit
from drypoint.session.actions import run
from drypoint.session.actions.check import SUSPECT, check_before, unchecked
from drypoint.session.actions.measure import zero_spot
from drypoint.session.doubts import call_sound, have_cut_again
from drypoint.session.doubts import suspects as in_doubt
from drypoint.session.facts import shown_facts
from drypoint.session.session import Session
from drypoint.session.station import Station, connect, make_bench

sys.path.insert(0, str(Path(__file__).parent))
import killed_child


@pytest.fixture
def cut(session: Session) -> Iterator[Station]:
    """A station at which the marks and some grooves have just been cut."""
    session.change("Fewer touches", surface=replace(session.settings.surface, touches=6))
    bench = make_bench(session.derived.layout(session.snapshot), session.settings, 2, loose=())
    station = connect(bench.link, bench.operator, session.settings, bench=bench)
    killed_child.whole(session, station)
    yield station
    station.close()


def suspects(session: Session) -> list[str]:
    """Titles of the runs that are marked as suspect."""
    return [
        one.title
        for one in runs(session.job)
        if any(text.startswith(SUSPECT) for _, text in events(session.job, one.id))
    ]


def test_what_silence_hides_is_found_before_the_next_cut(session: Session, cut: Station) -> None:
    bench = cut.bench
    assert bench is not None
    grooves = runs(session.job)[-1]
    assert unchecked(session) == (grooves,), "the marks were checked before the grooves were cut"

    bench.body.break_bit(0.4)
    sweeps = len(bench.copper.sweeps)
    with pytest.raises(MachineError, match="zero spot") as caught:
        run.run_item(session, cut, killed_child.short_pass(session), check=False)
    assert caught.value.where == grooves.title
    assert len(bench.copper.sweeps) == sweeps
    assert runs(session.job)[-1].id == grooves.id, "no run has begun"
    assert suspects(session) == [grooves.title]
    assert [one["suspect"] for one in shown_facts(session)["runs"]] == [False, True]

    bit = session.settings.bits.vbit
    change_bit(cut.place, bit, spot=zero_spot(session))
    assert all(one.good for one in check_before(session, cut))
    assert check_before(session, cut) == (), "nothing was cut since"

    run.run_item(session, cut, killed_child.short_pass(session), check=False)
    again = runs(session.job)[-1]
    bench.body.lose_steps((0.5, -0.4, 0.0))
    with pytest.raises(MachineError, match="reference mark"):
        run.ready_bit(session, cut, killed_child.short_pass(session).program, zero_spot(session))
    assert bench.operator.requests[-1].kind is not RequestKind.CHANGE_BIT
    assert suspects(session) == [grooves.title, again.title]
    assert all(one.good for one in check_before(session, cut)), "the mark was set anew"

    first, second = in_doubt(session)
    assert (first.title, first.pass_number) == (grooves.title, 1)
    call_sound(session, first)
    assert in_doubt(session) == (second,)
    before = len(session.derived.done_passes(session.snapshot))
    have_cut_again(session, second)
    assert in_doubt(session) == ()
    assert len(session.derived.done_passes(session.snapshot)) < before, "its pass counts no longer"
