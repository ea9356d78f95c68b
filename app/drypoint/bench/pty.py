"""The bench behind a pseudo-terminal, so that any serial program can talk to it (not on Windows)."""

from __future__ import annotations

import os
import select
import threading

from drypoint.bench.bench import Bench
from drypoint.errors import MachineError

_TURN = 0.001
"""How long the far end listens before it looks at the clock again, s."""


class BenchPty:
    """Serves a bench on a pseudo-terminal until closed; use it as a context.

    Parameters
    ----------
    bench : Bench
        Its clock is made to run at ``pace``.
    pace : float
        Simulated seconds per real second.

    Raises
    ------
    MachineError
        On systems without pseudo-terminals.
    """

    def __init__(self, bench: Bench, pace: float = 1.0) -> None:
        try:
            import pty  # noqa: PLC0415 - not on Windows
            import tty  # noqa: PLC0415
        except ImportError as error:
            raise MachineError("This system has no pseudo-terminals.", "bench") from error
        self._bench = bench
        self._master, self._slave = pty.openpty()
        tty.setraw(self._slave)
        self.device = os.ttyname(self._slave)
        """What a serial program opens."""
        self._stop_read, self._stop_write = os.pipe()
        bench.clock.pace = pace
        self._link = bench.connect()
        self._open = True
        self._thread = threading.Thread(target=self._serve, name="bench-pty", daemon=True)
        self._thread.start()

    def __enter__(self) -> BenchPty:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def close(self) -> None:
        """Stop serving; the port is gone for whoever has it open."""
        if self._open:
            self._open = False
            os.write(self._stop_write, b"x")
            self._thread.join()
            self._link.close()
            for descriptor in (self._master, self._slave, self._stop_read, self._stop_write):
                os.close(descriptor)

    def _serve(self) -> None:
        while True:
            ready, _, _ = select.select([self._master, self._stop_read], [], [], _TURN)
            if self._stop_read in ready:
                return
            try:
                if self._master in ready:
                    self._link.write(os.read(self._master, 4096))
                self._bench.clock.catch_up()
                data = self._link.read(0.0)
            except MachineError:  # the bench was ended: as if the machine were switched off
                return
            if data:
                os.write(self._master, data)
