"""How long the first window takes to appear, beside merely importing what it is built on.

Run by hand: ``python tests/benchmarks/startup.py``. Each figure is the median of fresh processes.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
from time import perf_counter

BARE = "import PySide6.QtWidgets, PySide6.QtSvg, pyqtgraph, numpy"
WINDOW = """
from PySide6.QtWidgets import QApplication
from drypoint.ui.theme.theme import Theme
from drypoint.ui.window import MainWindow
app = QApplication([])
window = MainWindow(Theme(app))
window.show()
while not window.windowHandle().isExposed():
    app.processEvents()
window.grab()
"""


def seconds(code: str, times: int = 7) -> float:
    """Median time of a fresh process that runs ``code``."""
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    taken = []
    for _ in range(times):
        begin = perf_counter()
        command = [sys.executable, "-c", code]
        subprocess.run(command, check=True, env=environment, stderr=subprocess.DEVNULL)
        taken.append(perf_counter() - begin)
    return statistics.median(taken)


def main() -> None:
    seconds(BARE, 1)  # warms the disk cache
    bare, window = seconds(BARE), seconds(WINDOW)
    print(f"bare imports {bare:.3f} s, first window {window:.3f} s, ratio {window / bare:.2f}")


if __name__ == "__main__":
    main()
