"""A run killed at any moment and resumed ends with the copper of an uninterrupted run, never deeper."""

from __future__ import annotations

import contextlib
import os
import shutil
import subprocess
import sys
import threading
import time
from dataclasses import replace
from multiprocessing.connection import Client, Listener
from pathlib import Path

import numpy as np
import pytest
import shapely

from drypoint.bench.bench import Bench
from drypoint.job.journal import unfinished
from drypoint.session.session import Session
from drypoint.session.station import connect, make_bench

sys.path.insert(0, str(Path(__file__).parent))
import killed_child

PACE = 120.0
"""Simulated seconds per real second."""

EYE = 0.2
"""Farthest a path may lie from where it lay: the position is found again by eye, mm."""

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="needs pseudo-terminals")


def _settle(job: Path) -> None:
    session = Session.open(job)
    session.change("Fewer touches", surface=replace(session.settings.surface, touches=5))
    session.close()


def _new_bench(job: Path, seed: int) -> Bench:
    session = Session.open(job)
    bench = make_bench(session.derived.layout(session.snapshot), session.settings, seed, loose=())
    session.close()
    return bench


class _Hands(threading.Thread):
    """Serves the bench's hands to child processes."""

    def __init__(self, bench: Bench, address: str) -> None:
        super().__init__(daemon=True)
        self._bench = bench
        self._listener = Listener(address, "AF_UNIX")
        self._ended = False

    def run(self) -> None:
        while not self._ended:
            try:
                with self._listener.accept() as connection:
                    while True:
                        connection.send(self._bench.operator.ask(connection.recv()))
            except (EOFError, OSError):
                continue

    def end(self) -> None:
        """Stop serving."""
        self._ended = True
        with contextlib.suppress(OSError), Client(self._listener.address, "AF_UNIX"):
            pass
        self.join()
        self._listener.close()


def _child(verb: str, job: Path, device: str, address: str) -> subprocess.Popen[bytes]:
    command = [sys.executable, killed_child.__file__, verb, str(job), device, address]
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join(path for path in sys.path if path)}
    with Path(f"{address}.log").open("ab") as log:
        return subprocess.Popen(command, env=environment, stderr=log)


def _executed(job: Path) -> tuple[str, int]:
    session = Session.open(job)
    record = unfinished(session.job)
    session.close()
    return ("", 0) if record is None else (record.program, record.executed)


def _depths(bench: Bench) -> float:
    """Widest groove at the underside: the deepest the V-bit went."""
    return max(groove.width for groove in bench.copper.grooves())


@pytest.mark.parametrize(("seed", "after"), [(1, 30), (3, 240)])
def test_killed_and_resumed(job: Path, tmp_path: Path, seed: int, after: int) -> None:
    from drypoint.bench.pty import BenchPty

    _settle(job)
    calm_job = tmp_path / "calm.drypoint"
    shutil.copyfile(job, calm_job)
    calm = _new_bench(calm_job, seed)
    session = Session.open(calm_job)
    station = connect(calm.link, calm.operator, session.settings)
    killed_child.whole(session, station)
    expected = calm.copper
    session.close()

    bench = _new_bench(job, seed)
    address = str(tmp_path / "hands")
    hands = _Hands(bench, address)
    hands.start()
    with BenchPty(bench, PACE) as port:
        child = _child("run", job, port.device, address)
        while child.poll() is None:
            program, executed = _executed(job)
            if program.startswith("11-grooves") and executed >= after:
                break
            time.sleep(0.01)
        assert child.poll() is None, Path(f"{address}.log").read_text(encoding="utf-8")
        child.kill()
        child.wait()
        broken = _executed(job)
        again = _child("resume", job, port.device, address)
        assert again.wait(timeout=120) == 0, Path(f"{address}.log").read_text(encoding="utf-8")
    hands.end()

    assert broken[1] >= after
    assert not bench.mishaps
    session = Session.open(job)
    assert unfinished(session.job) is None
    done = [record.data["program"] for record in session.snapshot.records["done"]]
    assert done[-1].startswith("11-grooves")
    session.close()
    # nothing skipped: wherever the calm run cut, the resumed one did, as near as the eye finds the mark
    paths = [shapely.LineString(groove.path) for groove in bench.copper.grooves() if len(groove.path) > 1]
    cut = shapely.union_all(shapely.buffer(paths, EYE))
    for groove in expected.grooves():
        if len(groove.path) > 1:
            assert shapely.LineString(groove.path).difference(cut).length < 1e-6
    # never deeper: a V-bit's groove is as wide as it is deep; heights are found anew within the touch's noise
    assert _depths(bench) <= _depths(calm) + 2 * np.tan(np.radians(15)) * 0.012
