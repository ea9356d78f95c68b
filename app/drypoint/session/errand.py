"""The other end of work done apart: opens the copy of the job, works, tells how far it is and the outcome.

``python -m drypoint.session.errand`` is started by `session/apart.py`.
"""

from __future__ import annotations

import os
import shutil
import sys
import threading
from functools import partial
from pathlib import Path
from typing import Any

from drypoint.bench.child import step_back
from drypoint.bench.frames import Frames
from drypoint.progress import Progress
from drypoint.session.answering import Teller, told
from drypoint.session.apart import COPY
from drypoint.session.jobs import attempt
from drypoint.session.session import Session

GRACE = 10.0
"""Time in which work that is given up must have ended, s."""


def main() -> int:
    """Do one piece of work."""
    frames = Frames(sys.stdin.buffer, os.fdopen(os.dup(sys.stdout.fileno()), "wb"))
    sys.stdout = sys.stderr  # nothing else may write into the pipe
    step_back()
    made = frames.receive()
    if made is None:
        return 1
    folder, work = Path(made[0]), made[1]
    progress = Progress(Teller(partial(frames.send, "progress")).tell)
    threading.Thread(target=_end_with_pipe, args=(frames, folder, progress), daemon=True).start()
    outcome = attempt("apart", 0, lambda progress: _work(folder, work, progress), progress)
    if progress.cancelled:
        _remove(folder)
        return 0
    try:
        frames.send(*told(outcome))
    except OSError:  # the window is gone
        _remove(folder)
        return 1
    return 0


def _work(folder: Path, work: Any, progress: Progress) -> Any:
    session = Session.open(folder / COPY)
    try:
        return work(session, folder=folder, progress=progress)
    finally:
        session.close()


def _end_with_pipe(frames: Frames, folder: Path, progress: Progress) -> None:
    """Have the work given up once nobody waits for it; work that does not heed that is broken off."""
    while frames.receive() is not None:
        pass
    progress.cancel()
    threading.Event().wait(GRACE)
    _remove(folder)
    os._exit(0)


def _remove(folder: Path) -> None:
    """Nobody else is left to do it."""
    shutil.rmtree(folder, ignore_errors=True)


if __name__ == "__main__":
    sys.exit(main())
