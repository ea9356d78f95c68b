"""How soon a rehearsal that is cancelled stops: the longest stretches of work between two looks at it.

Run by hand: ``python tests/benchmarks/cancelling.py [EXAMPLE]``. Time is that of the working thread's own
processor, so a busy machine does not count; the reference is the same work's time in all. Each stretch is
named after what had been said before it. 0.2 s is what a person does not notice.
"""

from __future__ import annotations

import sys
import tempfile
import threading
import time
from pathlib import Path

from drypoint.progress import Progress
from drypoint.session.commands import prepare
from drypoint.session.rehearsal import rehearse
from drypoint.session.session import Session

ROOT = Path(__file__).resolve().parents[2]
SOON = 0.2
"""s; a stretch should not take longer."""
SHOWN = 12
"""Stretches that are printed."""


class Watched(threading.Event):
    """What is looked at to see whether the work was cancelled: takes the time of every look."""

    def __init__(self) -> None:
        super().__init__()
        self.stretches: list[tuple[float, float, str]] = []
        self.said = (0.0, "")
        self.last = time.thread_time()

    def is_set(self) -> bool:
        now = time.thread_time()
        self.stretches.append((now - self.last, *self.said))
        self.last = now
        return super().is_set()


def main(example: str = "hive-scale") -> None:
    """Rehearse an example and print its longest stretches."""
    watched = Watched()

    def note(done: float, text: str) -> None:
        watched.said = (done, str(text))

    progress = Progress(note)
    progress._cancel = watched
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        both = example == "frost-bell"
        prepare([ROOT / "examples" / example], folder / "job.drypoint", both_sides=both)
        session = Session.open(folder / "job.drypoint")
        try:
            watched.last = begun = time.thread_time()
            rehearse(session, folder, touches=24, progress=progress)
            whole = time.thread_time() - begun
        finally:
            session.close()
    stretches = sorted(watched.stretches, reverse=True)
    late = [one for one in stretches if one[0] > SOON]
    print(f"{example}: {len(stretches)} looks in {whole:.1f} s, {len(late)} stretches over {SOON} s")
    print(f"{'s':>7} {'of all':>7} {'done':>6}  after")
    for length, done, text in stretches[:SHOWN]:
        print(f"{length:7.3f} {length / whole:7.1%} {done:6.1%}  {text}")


if __name__ == "__main__":
    main(*sys.argv[1:2])
