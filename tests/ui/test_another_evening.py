"""A job is opened again and the machine was off meanwhile: Start finds the board again by itself."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest

from drypoint.bench.bench import Bench
from drypoint.job.journal import runs

sys.path.insert(0, str(Path(__file__).parent))
from bystander import Bystander, measure_flat


@pytest.fixture
def job(job: Path) -> Path:
    """The small board with its copper measured."""
    measure_flat(job)
    return job


def test_start_after_the_machine_was_off(opened: Callable[[], Bystander], bench: Bench) -> None:
    who = opened()
    who.connect()
    who.place()
    who.run()
    zero = np.array(bench.work_to_space((0.0, 0.0)))
    who.window.close()
    assert not who.window.isVisible()
    who.app.close()
    bench.controller.power_off()

    who = opened()
    assert len(runs(who.session.job)) == 1
    who.connect()
    assert not who.desk.thread_.known
    who.desk.operator.shown = 0.0
    who.desk.bar.automatic.setChecked(True)
    following = who.side.running.following
    assert following is not None
    who.run()
    assert [one.title for one in runs(who.session.job)][1:] == [following.program.title]
    assert who.desk.thread_.known == {"x", "y", "z"}
    assert np.hypot(*(np.array(bench.work_to_space((0.0, 0.0))) - zero)) < 1.0, "as good as a corner by eye"
