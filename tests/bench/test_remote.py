"""The bench in a process of its own: it is the same bench, and it never outlives who started it."""

from __future__ import annotations

import os
import signal
import subprocess
import sys

import pytest

from drypoint.bench.bench import Bench, BenchSetup
from drypoint.bench.eyes import Seen, Sight
from drypoint.bench.remote import RemoteBench
from drypoint.errors import MachineError
from drypoint.geometry.points import as_points
from drypoint.machine.controller import Controller
from drypoint.machine.operator import Answer, Request, RequestKind

SETUP = BenchSetup(width=40.0, height=30.0)


@pytest.fixture
def remote():
    bench = RemoteBench(5, SETUP)
    yield bench
    bench.close()


def test_it_is_the_same_bench(remote) -> None:
    """The same seed, the same bytes: the same answers and places in both processes."""
    here, there = Bench(5, SETUP), remote
    settings, place = _talk(here)
    assert _talk(there) == (settings, place)


def _talk(bench) -> tuple:
    controller = Controller(bench.connect())
    facts = controller.connect()
    answer = bench.operator.ask(Request(RequestKind.CLIP_OFF, "Take the clip off"))
    assert answer == Answer()
    controller.jog(1.5, 0.25, 0.0, 300.0)
    controller.settle()
    return facts.settings, controller.look().machine


def test_its_eyes_see_through_the_pipe(remote) -> None:
    _talk(remote)
    line = as_points([(25, 20), (29, 20)])
    square = as_points([(25, 24), (27, 24), (27, 26), (25, 26), (25, 24)])
    sight = Sight((line,), (square,), ((line, line + 0.1),))
    assert remote.look_at(sight) == Seen((None,), (False,), (True,)), "nothing is cut there"


def test_a_bench_that_died_is_told_and_does_not_hang(remote) -> None:
    controller = Controller(remote.connect())
    controller.connect()
    os.kill(remote.process_id, signal.SIGTERM)
    remote._process.wait()
    with pytest.raises(MachineError) as caught:
        controller.look()
    assert caught.value.hint
    remote.close()
    assert not remote.alive
    with pytest.raises(MachineError):
        remote.connect()


def test_closing_ends_the_process(remote) -> None:
    remote.connect()
    remote.close()
    remote.close()
    assert not remote.alive
    assert remote._process.poll() is not None


@pytest.mark.skipif(os.name == "nt", reason="no kill -9")
def test_it_ends_when_the_window_is_killed() -> None:
    """Nothing is left running, however the window ended."""
    script = (
        "import os, sys\n"
        "from drypoint.bench.bench import BenchSetup\n"
        "from drypoint.bench.remote import RemoteBench\n"
        "bench = RemoteBench(1, BenchSetup())\n"
        "bench.connect()\n"
        "print(bench.process_id, flush=True)\n"
        "os.kill(os.getpid(), 9)\n"
    )
    # the bench holds standard error open too, and run() waits for its end: were the bench left behind,
    # this would time out
    done = subprocess.run(
        [sys.executable, "-c", script],
        capture_output=True,
        env={**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)},
        timeout=60,
        check=False,
    )
    assert done.returncode == -signal.SIGKILL
    assert int(done.stdout) > 0
