"""Times of two pieces of work, one after the other in the same run, and the memory one takes.

Two times are taken: by the clock, and of the processor, all threads together. On a machine that does
other work beside, only the second means something; on an idle one with two cores the first is less,
since parts of our work run side by side.
"""

from __future__ import annotations

import multiprocessing
import resource
import time
from collections.abc import Callable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Times:
    """The least of several runs, s: by the clock and of the processor."""

    clock: float
    cpu: float


def side_by_side(
    ours: Callable[[], object], reference: Callable[[], object], times: int = 3
) -> tuple[Times, Times]:
    """Times of ours and of the reference, by turns, the best of each."""
    found: tuple[list[Times], list[Times]] = ([], [])
    for _ in range(times):
        for work, into in zip((ours, reference), found, strict=True):
            clock, cpu = time.perf_counter(), time.process_time()
            work()
            into.append(Times(time.perf_counter() - clock, time.process_time() - cpu))
    mine, other = (Times(min(t.clock for t in one), min(t.cpu for t in one)) for one in found)
    return mine, other


def peak_memory(work: Callable[[], object]) -> float:
    """MB that a process of its own takes at most for ``work``, its inputs included."""
    fork = multiprocessing.get_context("fork")
    queue = fork.SimpleQueue()

    def run() -> None:
        work()
        queue.put(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024)

    child = fork.Process(target=run)
    child.start()
    child.join()
    return float(queue.get()) if child.exitcode == 0 else float("nan")
