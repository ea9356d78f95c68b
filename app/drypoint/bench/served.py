"""The bench as a process of its own: simulates, and answers what comes through its pipe.

``python -m drypoint.bench.served`` is started by `bench/remote.py`. It ends when its pipe ends, so it never
outlives the window, however that went.
"""

from __future__ import annotations

import os
import queue
import sys
import threading
import traceback
from typing import Any

from drypoint.bench.bench import Bench
from drypoint.bench.child import step_back
from drypoint.bench.frames import Frames
from drypoint.bench.link import BenchLink
from drypoint.errors import DrypointError, MachineError


class Server:
    """Carries out messages on one bench.

    What is asked and answered goes through one thread in the order it came; what must not wait (bytes
    written, the pace, a pulled cable) is done by the thread that reads the pipe.
    """

    def __init__(self, bench: Bench, frames: Frames) -> None:
        self._bench, self._frames = bench, frames
        self._link: BenchLink | None = None
        self._asked: queue.SimpleQueue[tuple[Any, ...] | None] = queue.SimpleQueue()
        self._worker = threading.Thread(target=self._work, name="drypoint-bench", daemon=True)

    def serve(self) -> None:
        """Until the pipe ends."""
        self._worker.start()
        while (message := self._frames.receive()) is not None:
            kind, *rest = message
            if kind == "write":
                self._write(*rest)
            elif kind == "pace":
                self._bench.set_pace(*rest)
            elif kind == "unplug":
                self._bench.unplug()
            else:
                self._asked.put(message)
        self._asked.put(None)

    def _write(self, data: bytes) -> None:
        if self._link is None:
            return
        try:
            self._link.write(data)
        except MachineError:  # whoever reads next is told
            return

    def _work(self) -> None:
        while (message := self._asked.get()) is not None:
            number, name, *arguments = message
            try:
                answer: tuple[Any, ...] = ("value", getattr(self, f"do_{name}")(*arguments))
            except DrypointError as error:
                answer = ("error", error.what, error.where, error.hint)
            except BaseException:
                answer = ("bug", traceback.format_exc())
                self._answer(number, *answer)
                raise
            self._answer(number, *answer)

    def _answer(self, number: int, *answer: Any) -> None:
        try:
            self._frames.send(number, self._bench.clock.now(), *answer)
        except OSError:
            os._exit(0)  # the window is gone

    # what can be asked

    def do_connect(self) -> None:
        """Open the port anew."""
        self._link = self._bench.connect()

    def do_read(self, timeout: float) -> bytes:
        """As `Link.read`."""
        if self._link is None:
            raise MachineError("The link is closed.", "bench", "Connect again.")
        return self._link.read(timeout)

    def do_sleep(self, seconds: float) -> None:
        """Let simulated time pass."""
        self._bench.clock.sleep(seconds)

    def do_ask(self, request: Any) -> Any:
        """Have the simulated hands do something."""
        return self._bench.operator.ask(request)

    def do_clamp_edges(self) -> None:
        """Hold loose edges down."""
        self._bench.clamp_edges()

    def do_look_at(self, sight: Any) -> Any:
        """What a person reads from lines that were cut."""
        return self._bench.look_at(sight)

    def do_clamp_next_at(self, motion: Any) -> None:
        """How far the sheet moves when it is clamped again."""
        self._bench.clamp_next_at(motion)


def main() -> int:
    """Serve one bench on standard input and output."""
    frames = Frames(sys.stdin.buffer, os.fdopen(os.dup(sys.stdout.fileno()), "wb"))
    sys.stdout = sys.stderr  # nothing else may write into the pipe
    step_back()
    made = frames.receive()
    if made is None:
        return 1
    seed, setup = made
    Server(Bench(seed, setup), frames).serve()
    return 0


if __name__ == "__main__":
    sys.exit(main())
