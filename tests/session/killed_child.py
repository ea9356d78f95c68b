"""The child process of the kill test: runs or resumes a job on the bench of its parent, over a serial port.

Hands are the parent's: requests to the operator travel through a connection.
"""

from __future__ import annotations

import sys
from dataclasses import fields, replace
from multiprocessing.connection import Client, Connection
from pathlib import Path

import numpy as np

from drypoint.machine.operator import Answer, Operator, Request
from drypoint.machine.serial_link import SerialLink
from drypoint.passes.depth import uniform_pass
from drypoint.program.place import place
from drypoint.progress import Progress
from drypoint.session.actions import measure, run
from drypoint.session.session import Session
from drypoint.session.station import Station, connect
from drypoint.session.work import WorkItem, WorkKind, marks_work, preset_of, program_settings

LENGTH = 60.0
"""Grooves cut in the test, mm."""


NOTHING = next(one.default for one in fields(Request) if one.name == "idle")
"""The idle call that does nothing, which can be sent."""


class FarHands(Operator):
    """Hands at the other end of a connection."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection

    def ask(self, request: Request) -> Answer:
        self._connection.send(replace(request, idle=NOTHING))
        while not self._connection.poll(0.002):
            request.idle()
        answer: Answer = self._connection.recv()
        return answer


def short_pass(session: Session) -> WorkItem:
    """A pass over the first grooves, deep enough to be through everywhere."""
    snap = session.snapshot
    lines = session.derived.cuts(snap).grooves.lines
    lengths = np.cumsum([np.sqrt((np.diff(line, axis=0) ** 2).sum(axis=1)).sum() for line in lines])
    some = lines[: int(np.searchsorted(lengths, LENGTH)) + 1]
    work = uniform_pass(some, snap.settings.bits.vbit, 0.12)
    shared = program_settings(snap.settings, preset_of(snap.settings))
    (program,) = place(
        [work], session.derived.fit(snap), session.derived.surface(snap), settings=shared, first=11
    )
    return WorkItem(WorkKind.GROOVES, program, done=False, work=work)


def whole(session: Session, station: Station) -> None:
    """Zero, touches, reference holes, then the short pass."""
    measure.put_in(station, session.settings.bits.vbit)
    measure.find_corner(session, station)
    measure.zero_height(session, station)
    measure.measure_surface(session, station, Progress())
    measure.end_contact(station)
    for item in marks_work(session.derived, session.snapshot):
        run.run_item(session, station, item, check=False)
    run.run_item(session, station, short_pass(session), check=False)


def main(verb: str, job: str, device: str, address: str) -> None:
    """Run or resume."""
    with Client(address, "AF_UNIX") as connection:
        session = Session.open(Path(job))
        station = connect(SerialLink(device), FarHands(connection), session.settings)
        if verb == "run":
            whole(session, station)
        else:
            run.resume(session, station)
        station.close()
        session.close()


if __name__ == "__main__":
    main(*sys.argv[1:])
