"""The window answers: no turn of its event loop computes for long.

What is asserted is the processor time of the window's own thread, not the time that passes, which also
depends on what else the machine does; ``tests/benchmarks/turns.py`` prints both.
"""

from __future__ import annotations

import gc
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QTimer
from turns import TurnWatch
from walk import walk

import drypoint.ui.app as app_module
from drypoint.progress import Progress
from drypoint.session.planning import Planning
from drypoint.ui.app import Application, undisturbed
from drypoint.ui.design_side.new_job import make_plain
from drypoint.ui.design_side.remember import Remembered
from drypoint.ui.theme.theme import Theme

EXAMPLE = Path(__file__).parents[2] / "examples" / "hive-scale"
BUSY = 0.15
"""Most processor time between two beats in the window's thread, s. The aim is a tenth of a second, and the
benchmark finds two thirds of that beside a dozen other programs on two processors; they make it vary."""
PATIENCE = 240_000
DENSE = "gyw-electro"
"""The board of the corpus to walk through: dense, yet planned in seconds; the benchmark takes larger ones."""


def watched(application: Application, job: Path, files: Path, qtbot) -> dict[str, float]:
    """Longest processor time of a turn, by the step it came after."""
    watch = TurnWatch()

    def settled() -> bool:
        return not application.bridge.busy and application.design.planner.order is not None

    longest: dict[str, float] = {}
    for step in walk(application, job, files):
        watch.forget()
        QTimer.singleShot(0, step.act)
        qtbot.wait(50)
        qtbot.waitUntil(lambda step=step: step.until() and settled(), timeout=PATIENCE)
        longest[step.name] = max(longest.get(step.name, 0.0), watch.longest()[1])
    return longest


@pytest.fixture
def walked(light: Theme, qtbot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[[Path], None]:
    """Walks through the window with a board of these files, and judges the turns."""
    monkeypatch.setattr(app_module, "MACHINE_SIDE", "drypoint.ui.no_machine")

    planning = Planning()

    def walk_through(files: Path) -> None:
        job = tmp_path / f"{files.name}.drypoint"
        make_plain(job, files, Progress()).close()
        application = Application(light, Remembered(tmp_path / "window.json"), planning=planning)
        application.bridge.recovery = tmp_path / "recovery"
        qtbot.addWidget(application.window)
        application.window.show()
        try:
            with undisturbed():
                longest = watched(application, job, files, qtbot)
        finally:
            application.window.close()
            application.close()
            planning.close()
        assert len(longest) > 15
        assert any(own > 0.0 for own in longest.values()), "nothing was watched"
        assert max(longest.values()) < BUSY, longest

    return walk_through


def test_no_turn_of_the_demo_computes_for_long(walked: Callable[[Path], None]) -> None:
    walked(EXAMPLE)


@pytest.mark.corpus
def test_no_turn_with_a_dense_board_computes_for_long(walked: Callable[[Path], None], corpus: Path) -> None:
    files = corpus / DENSE
    if not files.is_dir():
        pytest.skip(f"{DENSE} is not among the boards")
    walked(files)


def test_what_is_loaded_is_not_searched_for_garbage_while_the_window_runs() -> None:
    class Loop:
        pass

    def kept(kind: type) -> int:
        return sum(type(each) is kind for each in gc.get_objects())

    before = Loop()
    before.itself = before
    assert kept(Loop) == 1
    with undisturbed():
        assert kept(Loop) == 0
        fresh = Loop()
        fresh.itself = fresh
        assert kept(Loop) == 1  # what is made later is
    assert kept(Loop) == 2
    del before, fresh
    gc.collect()
    assert kept(Loop) == 0
