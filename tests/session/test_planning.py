"""Planning in a process of its own: the same plans, errors and progress as here, and nothing left behind."""

from __future__ import annotations

import os
import signal
import threading
from collections.abc import Iterator
from dataclasses import fields, replace
from functools import partial
from pathlib import Path

import numpy as np
import pytest

from drypoint.bits.library import default_library
from drypoint.errors import InputError, MachineError, PlanError
from drypoint.progress import Cancelled, Progress
from drypoint.session.derive import Derived
from drypoint.session.distant import DistantDerived
from drypoint.session.peek import Peek
from drypoint.session.planning import Planning
from drypoint.session.session import Session
from drypoint.session.settings import FileUse, ProgramUse
from drypoint.session.snapshot import Snapshot
from drypoint.session.two_bit_times import two_bit_times
from drypoint.session.work import passes_work
from drypoint.surface.model import Surface
from drypoint.surface.touch import Touch, Touches
from drypoint.wording import Text


@pytest.fixture(scope="module")
def planning() -> Iterator[Planning]:
    made = Planning()
    made.start()
    yield made
    number = made.process_id
    made.close()
    assert number is not None
    with pytest.raises(ProcessLookupError):
        os.kill(number, 0)
    assert not any(thread.name == "drypoint-planning" for thread in threading.enumerate())


@pytest.fixture
def distant(planning: Planning) -> DistantDerived:
    return DistantDerived(planning.for_job())


@pytest.fixture
def small(small_job: Path) -> Iterator[Session]:
    session = Session.open(small_job)
    yield session
    session.close()


@pytest.fixture
def bare(tmp_path: Path) -> Iterator[Session]:
    session = Session.create(tmp_path / "bare.drypoint")
    yield session
    session.close()


def touched(session: Session, height: float) -> Snapshot:
    """The job as it is after touching a flat sheet at this height."""
    places = [(x, y) for x in (3.0, 12.0, 22.0) for y in (3.0, 7.0, 12.0)]
    touches = Touches(tuple(Touch(x, y, height + 0.003 * (k % 3 - 1)) for k, (x, y) in enumerate(places)))
    session.keep("touches", {"setup": 1, "touches": touches})
    return session.snapshot


def same_lines(one: tuple[np.ndarray, ...], other: tuple[np.ndarray, ...]) -> bool:
    return len(one) == len(other) and all(map(np.array_equal, one, other))


def test_plans_are_the_same_as_here(small: Session, distant: DistantDerived) -> None:
    snap, here = touched(small, 0.0), Derived()
    assert distant.board(snap).nets.keys() == here.board(snap).nets.keys()
    there, same = distant.cuts(snap), here.cuts(snap)
    assert same.grooves.lines
    assert same_lines(there.grooves.lines, same.grooves.lines)
    assert there.check.pieces == same.check.pieces
    assert np.array_equal(distant.touch_plan(snap), here.touch_plan(snap))
    spots = [(5.0, 5.0), (10.0, 7.0)]
    height, own = distant.surface(snap), here.surface(snap)
    assert isinstance(height, Surface)
    assert isinstance(own, Surface)
    assert np.array_equal(height.mean(spots), own.mean(spots))
    assert np.array_equal(height.std(spots), own.std(spots))
    coming, mine = distant.passes(snap).next, here.passes(snap).next
    assert coming is not None
    assert mine is not None
    assert all(np.array_equal(a.depth, b.depth) for a, b in zip(coming.runs, mine.runs, strict=True))
    assert {name: shape.wkb for name, shape in distant.standing(snap).items()} == {
        name: shape.wkb for name, shape in here.standing(snap).items()
    }


def test_answers_are_kept_here(small: Session, distant: DistantDerived) -> None:
    """Asked for once, they are at hand for whoever only looks."""
    snap = small.snapshot
    cuts = distant.cuts(snap)
    assert distant.cuts(snap) is cuts
    assert distant.cuts_ready(snap) is cuts
    assert distant.peek(snap).cuts is cuts


def test_what_pages_show_of_a_plan_is_known_here_too(small: Session, distant: DistantDerived) -> None:
    here, snap = Derived(), touched(small, 0.0)

    def known(derived: Derived) -> set[str]:
        peek = derived.peek(snap)
        return {each.name for each in fields(peek) if getattr(peek, each.name) is not None}

    assert known(distant) == known(here) == set()
    for ask in (Derived.read, Derived.cuts, Derived.touch_plan, Derived.measured, Derived.passes):
        for derived in (here, distant):
            getattr(derived, ask.__name__)(snap)
        assert known(distant) >= known(here)
    assert known(here) == {each.name for each in fields(Peek)}


def test_programs_are_known_where_no_cuts_can_be_laid(
    bare: Session, distant: DistantDerived, tmp_path: Path
) -> None:
    program = tmp_path / "holes.nc"
    program.write_text("G21G90\nT1M6\nG0X2Y2Z1\nG1Z-2F60\nG0Z1\nM2\n")
    bare.import_files([program])
    grooves = FileUse("holes.nc", ProgramUse.GROOVES)
    bare.change("Taken for grooves", imported=replace(bare.settings.imported, uses=(grooves,)))
    with pytest.raises(PlanError, match="engraves nothing"):
        distant.cuts(bare.snapshot)
    (one,) = distant.peek(bare.snapshot).ready or ()
    assert one.name == "holes.nc"


def test_any_work_can_be_run_there(small: Session, distant: DistantDerived) -> None:
    mill = default_library().mills[0]
    work = partial(two_bit_times, bits=[mill])
    snap = small.snapshot
    assert distant.run(work, snap) == Derived().run(work, snap)


def test_programs_made_there_are_the_same_lines(small: Session, distant: DistantDerived) -> None:
    snap = touched(small, 0.0)
    there, here = distant.run(passes_work, snap), passes_work(Derived(), snap)
    assert [item.program.lines for item in there] == [item.program.lines for item in here]
    assert there[0].work is not None


def test_progress_is_told_and_stays_in_order(small: Session, distant: DistantDerived) -> None:
    shares: list[float] = []
    distant.cuts(small.snapshot, Progress(lambda done, _: shares.append(done)))
    assert shares == sorted(shares)
    assert all(0.0 <= share <= 1.0 for share in shares)


def test_errors_keep_their_kind_and_words(small: Session, distant: DistantDerived) -> None:
    small.change("Tiny blank", blank=replace(small.settings.blank, width=5.0, height=5.0))
    snap = small.snapshot
    with pytest.raises(PlanError) as there:
        distant.cuts(snap)
    with pytest.raises(PlanError) as here:
        Derived().cuts(snap)
    assert there.value.as_dict() == here.value.as_dict()
    assert isinstance(there.value.what, Text)


def test_files_that_make_no_sense_are_refused_as_here(small: Session, distant: DistantDerived) -> None:
    snap = small.snapshot
    broken = replace(snap.sources[0], content=b"%FSLAX43Y43*%\nX1D01*\n")
    with pytest.raises(InputError):
        distant.board(replace(snap, sources=(broken,)))


def test_a_fault_comes_back_with_its_trace(small: Session, distant: DistantDerived) -> None:
    with pytest.raises(RuntimeError, match="TypeError"):
        distant.run(int, small.snapshot)


def test_jobs_are_kept_apart(small: Session, planning: Planning, tmp_path: Path) -> None:
    """Records of two jobs have the same numbers; what was found of one must not be taken for the other."""
    copy = tmp_path / "other.drypoint"
    small.job.copy_to(copy)
    other = Session.open(copy)
    one, two = DistantDerived(planning.for_job()), DistantDerived(planning.for_job())
    low, high = one.surface(touched(small, 0.0)), two.surface(touched(other, 0.5))
    other.close()
    assert isinstance(low, Surface)
    assert isinstance(high, Surface)
    assert float(low.mean([(10.0, 7.0)])[0]) == pytest.approx(0.0, abs=0.01)
    assert float(high.mean([(10.0, 7.0)])[0]) == pytest.approx(0.5, abs=0.01)


def test_a_killed_process_is_started_again(small: Session, planning: Planning) -> None:
    distant = DistantDerived(planning.for_job())
    distant.board(small.snapshot)
    first = planning.process_id
    assert first is not None
    os.kill(first, signal.SIGKILL)
    assert same_lines(
        distant.cuts(small.snapshot).grooves.lines, Derived().cuts(small.snapshot).grooves.lines
    )
    assert planning.process_id != first


def test_work_that_kills_it_is_not_tried_for_ever(small: Session, distant: DistantDerived) -> None:
    with pytest.raises(MachineError, match="has ended"):
        distant.run(end_it, small.snapshot)
    assert distant.board(small.snapshot).nets  # the next question is answered


def test_cancelling_gives_it_up(small: Session, distant: DistantDerived) -> None:
    progress = Progress()
    progress.cancel()
    with pytest.raises(Cancelled):
        distant.cuts(small.snapshot, progress)
    assert distant.cuts_ready(small.snapshot) is None
    assert distant.cuts(small.snapshot).grooves.lines


def test_process_ends_with_its_pipe() -> None:
    planning = Planning()
    planning.start()
    there = planning._companion
    assert there is not None
    there.frames.close_writing()
    assert there.process.wait(60) == 0
    planning.close()


class _Ender:
    """Ends the process that is told to run it: it cannot even be read."""

    def __reduce__(self) -> tuple[object, ...]:
        return os._exit, (1,)

    def __call__(self, *_: object) -> None:
        raise AssertionError


end_it = _Ender()
