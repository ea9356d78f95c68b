"""How long the window's event loop is busy at a time, while a person walks through it.

Run by hand: ``python tests/benchmarks/turns.py [--here] [BOARD…]``; each BOARD is a folder of design files,
the demo without one; with ``--here`` plans are computed in the window's own process. For every step: the
longest turn by the clock; the longest the window was held up, which leaves out the time in which other
programs had the processors; and the most processor time of the window's own thread. The target is 100 ms.
"""

from __future__ import annotations

import importlib
import itertools
import os
import sys
import tempfile
from pathlib import Path
from time import perf_counter
from typing import Any

from PySide6.QtCore import QEventLoop, QTimer
from PySide6.QtWidgets import QApplication

from drypoint.progress import Progress
from drypoint.session.planning import Planning
from drypoint.ui.app import Application, undisturbed
from drypoint.ui.design_side.new_job import make_plain
from drypoint.ui.design_side.remember import Remembered
from drypoint.ui.theme.theme import Theme

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "tests" / "ui")]
turns, walks = (importlib.import_module(name) for name in ("turns", "walk"))


def measure(theme: Theme, files: Path, folder: Path) -> None:
    job = folder / f"{files.name}.drypoint"
    session = make_plain(job, files, Progress())
    session.close()
    planning = None if "--here" in sys.argv else Planning()
    application = Application(theme, Remembered(folder / "window.json"), planning=planning)
    application.window.show()
    if planning is not None:
        planning.start()
    watch = turns.TurnWatch()
    heads = (
        f"{'step':18}",
        *(f"{head:>10}" for head in ("clock, ms", "held, ms", "own, ms", "turns", "took, s")),
    )
    print(f"\n{files.name}\n{' '.join(heads)}")
    helds: list[float] = []
    with undisturbed():
        for step in itertools.chain(walks.walk(application, job, files), walks.bench_walk(application)):
            watch.forget()
            begun = perf_counter()
            _live(application, step)
            took = perf_counter() - begun
            wall, own, held = watch.longest()
            helds += watch.held
            times = " ".join(f"{1e3 * each:10.1f}" for each in (wall, held, own))
            print(f"{step.name:18} {times} {len(watch.wall):10} {took:10.1f}", flush=True)
    helds.sort()
    print(f"p99 held up {1e3 * helds[int(0.99 * len(helds))]:.1f} ms of {len(helds)} turns")
    application.window.close()
    application.close()
    if planning is not None:
        planning.close()


def _live(application: Application, step: Any) -> None:
    """The event loop as it is in real life, until nothing is computed any more."""
    loop, look = QEventLoop(), QTimer(interval=100)

    def settled() -> None:
        if step.until() and not application.bridge.busy and application.design.planner.order is not None:
            loop.quit()

    QTimer.singleShot(0, step.act)
    look.timeout.connect(settled)
    look.start()
    QTimer.singleShot(900_000, loop.quit)
    loop.exec()
    look.stop()


def main() -> None:
    app = QApplication([])
    theme = Theme(app, False)
    boards = [Path(name) for name in sys.argv[1:] if name != "--here"] or [ROOT / "examples" / "hive-scale"]
    with tempfile.TemporaryDirectory() as folder:
        for files in boards:
            measure(theme, files, Path(folder))


if __name__ == "__main__":
    main()
