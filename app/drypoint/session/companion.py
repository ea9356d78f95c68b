"""A process of this program that works for the window, as seen from here."""

from __future__ import annotations

import queue
import threading
from typing import Any

import drypoint.errors as kinds
from drypoint.bench.child import start_child
from drypoint.bench.frames import Frames
from drypoint.errors import MachineError

LOOK = 0.05
"""How often is looked whether work is cancelled, s."""

Message = tuple[Any, ...]


class GoneError(MachineError):
    """The process has ended from outside."""

    def __init__(self) -> None:
        super().__init__(
            "The process that worked on it has ended before it was done.",
            "",
            "Start it again; free some memory first if this computer is short of it.",
        )


class Companion:
    """Starts ``python -m module`` and listens to it. It ends with its pipe, so it never outlives the window.

    Attributes
    ----------
    frames : Frames
        The pipes.
    heard : queue of tuple
        What it said; None once it is gone.
    """

    def __init__(self, module: str, name: str) -> None:
        self.heard: queue.SimpleQueue[Message | None] = queue.SimpleQueue()
        self.process = start_child(module)
        assert self.process.stdin is not None
        assert self.process.stdout is not None
        self.frames = Frames(self.process.stdout, self.process.stdin)  # type: ignore[arg-type]
        self._listener = threading.Thread(target=self._listen, name=name, daemon=True)
        self._listener.start()

    def send(self, *message: Any) -> None:
        """Send a message.

        Raises
        ------
        GoneError
            If it is.
        """
        try:
            self.frames.send(*message)
        except OSError as error:
            raise GoneError() from error

    def hear(self) -> Message | None:
        """The next message; None if there is none for a while.

        Raises
        ------
        GoneError
            If it is.
        """
        try:
            message = self.heard.get(timeout=LOOK)
        except queue.Empty:
            return None
        if message is None:
            self.heard.put(None)
            raise GoneError()
        return message

    def close(self) -> None:
        """End the process, whatever it does."""
        self.process.kill()
        self.process.wait()
        self._listener.join()
        self.frames.close_writing()
        if self.process.stdout is not None:
            self.process.stdout.close()

    def _listen(self) -> None:
        while (message := self.frames.receive()) is not None:
            self.heard.put(message)
        self.heard.put(None)


def value_of(kind: str, *rest: Any) -> Any:
    """What was sent with `told`.

    Raises
    ------
    DrypointError
        As the work raised it.
    RuntimeError
        If the work has a fault.
    """
    if kind == "value":
        return rest[0]
    if kind == "error":
        raise getattr(kinds, rest[0])(*rest[1:])
    raise RuntimeError(f"a fault in work done apart:\n{rest[0]}")
