"""The other end of planning in a process of its own.

``python -m drypoint.session.planning_served`` is started by `session/planning.py`.
"""

from __future__ import annotations

import os
import queue
import sys
import threading
from functools import partial
from typing import Any

from drypoint.bench.frames import Frames
from drypoint.progress import Progress
from drypoint.session.answering import Teller, told
from drypoint.session.derive import Derived
from drypoint.session.jobs import attempt

IDLE = 300.0
"""Without a question for so long the process ends and gives its memory back; it is started again, s."""


class Desk:
    """Hears questions in one thread and answers them in another."""

    def __init__(self, frames: Frames) -> None:
        self._frames = frames
        self._waiting: queue.SimpleQueue[tuple[Any, ...]] = queue.SimpleQueue()
        self._lock = threading.Lock()
        self._doing: dict[int, Progress] = {}
        self._job, self._derived = 0, Derived()

    def hear(self) -> None:
        """Until the pipe ends; the process ends with it, whatever it does."""
        while (message := self._frames.receive()) is not None:
            kind, number, *rest = message
            with self._lock:
                if kind == "cancel":
                    if number in self._doing:
                        self._doing[number].cancel()
                else:
                    self._doing[number] = Progress(
                        Teller(partial(self._frames.send, number, "progress")).tell
                    )
                    self._waiting.put((number, *rest))
        os._exit(0)

    def answer(self) -> bool:
        """Answer one question; False if none has come for long."""
        try:
            number, job, work, snap = self._waiting.get(timeout=IDLE)
        except queue.Empty:
            return False
        if job != self._job:
            self._job, self._derived = job, Derived()
        progress = self._doing[number]
        outcome = attempt("planning", number, lambda progress: work(self._derived, snap, progress), progress)
        with self._lock:
            del self._doing[number]
        if not outcome.cancelled:
            self._frames.send(outcome.number, *told(outcome))
        return True


def main() -> int:
    """Answer until nobody asks any more."""
    frames = Frames(sys.stdin.buffer, os.fdopen(os.dup(sys.stdout.fileno()), "wb"))
    sys.stdout = sys.stderr  # nothing else may write into the pipe
    desk = Desk(frames)
    threading.Thread(target=desk.hear, daemon=True).start()
    try:
        while desk.answer():
            pass
    except OSError:  # the window is gone
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
