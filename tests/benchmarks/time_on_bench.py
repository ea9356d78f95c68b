"""Expected time of each program against the time the bench takes for it.

Run by hand: python tests/benchmarks/time_on_bench.py [FOLDER_OF_A_BOARD ...]
The demo board, and any boards given. The bench simulates the controller's planner, its buffers and the
serial line; the estimate knows none of that but the moves and the bytes. The copper is touched first, so
that hops between places are made.
"""

import sys
import tempfile
from pathlib import Path

from drypoint.passes.depth import uniform_pass
from drypoint.program.place import place
from drypoint.progress import Progress
from drypoint.session.actions import measure, run
from drypoint.session.commands import EXAMPLE, prepare
from drypoint.session.session import Session
from drypoint.session.station import connect, make_bench
from drypoint.session.work import (
    WorkItem,
    WorkKind,
    later_work,
    marks_work,
    preset_of,
    program_settings,
    run_seconds,
)


def compare(folder, work):
    prepare([folder], work / f"{folder.name}.drypoint")
    session = Session.open(work / f"{folder.name}.drypoint")
    settings = session.settings
    snap = session.snapshot
    bench = make_bench(session.derived.layout(snap), settings, 0, loose=())
    station = connect(bench.link, bench.operator, settings, bench=bench)
    measure.put_in(station, settings.bits.vbit)
    measure.find_corner(session, station)
    measure.zero_height(session, station)
    measure.measure_surface(session, station, Progress())
    measure.end_contact(station)
    snap = session.snapshot
    shared = program_settings(settings, preset_of(settings))
    flat = uniform_pass(session.derived.cuts(snap).grooves.lines, settings.bits.vbit, settings.cuts.depth)
    (grooves,) = place(
        [flat], session.derived.fit(snap), session.derived.surface(snap), settings=shared, first=11
    )
    items = [
        *marks_work(session.derived, snap),
        WorkItem(WorkKind.GROOVES, grooves, False),
        *later_work(session.derived, snap),
    ]
    expected = taken = saved = 0.0
    for item in items:
        told, took = run_seconds(item.program), run.run_item(session, station, item, check=False).seconds
        expected, taken, saved = expected + told, taken + took, saved + item.program.saved
        print(
            f"  {item.program.title[:44]:44} {len(item.program.lines):6d} lines: expected {told:8.1f} s, "
            f"bench {took:8.1f} s ({100 * (told / took - 1):+5.1f} %)",
            flush=True,
        )
    print(
        f"{folder.name}: expected {expected:.0f} s, bench {taken:.0f} s ("
        f"{100 * (expected / taken - 1):+.2f} %); hops save {saved:.0f} s"
    )
    session.close()


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as made:
        for board in [EXAMPLE, *map(Path, sys.argv[1:])]:
            compare(board, Path(made))
