"""The exact lines that are run next, on the bench: how long they take, and what would go wrong."""

from __future__ import annotations

import logging
from dataclasses import dataclass
from pathlib import Path

from drypoint.machine.controller import StreamEvent
from drypoint.program.model import Program
from drypoint.progress import Progress
from drypoint.session.actions import measure
from drypoint.session.actions.run import run_item
from drypoint.session.rehearsal import shadow_of
from drypoint.session.session import Session
from drypoint.session.station import connect, make_bench
from drypoint.session.work import WorkItem, WorkKind

_log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class RunRehearsal:
    """What came of it.

    Attributes
    ----------
    lines : int
        Lines of the program, all of them taken by the controller in its check mode first.
    seconds, expected : float
        Time on the bench and as estimated, s.
    mishaps : tuple of str
        What would have been damaged: a rapid move in copper, an axis at its end.
    """

    lines: int
    seconds: float
    expected: float
    mishaps: tuple[str, ...]


def rehearse_run(
    session: Session, program: Program, folder: Path, *, seed: int = 0, progress: Progress | None = None
) -> RunRehearsal:
    """Run ``program``, line for line, on a bench with a blank of the job's size; the job stays as it is.

    The bench's copper is its own, not the one that was touched: depths are not what this asks about.

    Raises
    ------
    PlanError, MachineError
        As at the machine.
    """
    told = progress or Progress()
    with shadow_of(session, folder) as shadow:
        bench = make_bench(shadow.derived.layout(shadow.snapshot), shadow.settings, seed, loose=())
        station = connect(bench.link, bench.operator, shadow.settings, note=_log.info, bench=bench)
        try:
            measure.put_in(station, program.bit)
            measure.find_corner(shadow, station)
            measure.zero_height(shadow, station)
            measure.end_contact(station)

            def note(event: StreamEvent) -> None:
                told.step(0.1 + 0.9 * event.executed / max(event.total, 1), program.title)

            item = WorkItem(WorkKind.READY, program, done=False)
            result = run_item(shadow, station, item, on_event=note)
            mishaps = tuple(dict.fromkeys(one.what for one in bench.mishaps))
        finally:
            station.close()
    return RunRehearsal(len(program.lines), result.seconds, program.seconds, mishaps)
