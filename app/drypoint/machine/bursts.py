"""Pulses of a laser sent in one piece each.

A pulse under constant power is lit by one line and put out by the next. If the second were still on
its way when the cable comes out, or waited for an answer, the beam would stay on. So all lines of a
pulse, and the rapid before it, are written at once with nothing else in flight: they are in the
controller's buffer before the head has reached the place.
"""

from __future__ import annotations

import itertools
import re
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from drypoint.errors import MachineError
from drypoint.machine.guard import bare
from drypoint.machine.sender import DEFAULT_BUFFER, Sender
from drypoint.wording import say

_LIT = re.compile(r"G0*4P[\d.]+S0*[1-9.]")
_WAY = re.compile(r"G0*0[XYZ]")


def bursts_of(lines: Sequence[str]) -> NDArray[np.int64] | None:
    """(L,) number of the burst of each line, from the text; None where no line lights a beam at rest.

    A burst runs from the rapid that leads to a pulse to the bare G0 after it.
    """
    read = [bare(line) for line in lines]
    ways = [index for index, line in enumerate(read) if _WAY.match(line)]
    if not any(_LIT.search(line) for line in read):
        return None
    begins = np.ones(len(lines), dtype=bool)
    for start, stop in itertools.pairwise([*ways, len(lines)]):
        mine = read[start:stop]
        lit = [k for k, line in enumerate(mine) if _LIT.search(line)]
        if lit:  # up to the mode of rapids after the last pulse, else all of it
            end = next((k for k in range(lit[-1], len(mine)) if mine[k] == "G0"), len(mine) - 1)
            begins[start + 1 : start + end + 1] = False
    return np.cumsum(begins) - 1


class BurstSender(Sender):
    """Sends burst by burst; nothing of the next before every line of this one is answered.

    Parameters
    ----------
    bursts : (L,) number of the burst of each line, growing

    Raises
    ------
    MachineError
        If a burst does not fit the receive buffer: it would not arrive in one piece.
    """

    def __init__(self, lines: Sequence[str], bursts: NDArray[np.int64], buffer: int = DEFAULT_BUFFER) -> None:
        super().__init__(lines, buffer)
        self._burst = bursts.tolist()
        sizes = np.bincount(bursts, weights=[len(line) + 1 for line in lines])
        if len(sizes) and sizes.max() > self.limit:
            raise MachineError(
                say(
                    "The lines of a pulse take {max:.0f} bytes, more than the buffer holds.", max=sizes.max()
                ),
                "laser",
                say("It holds {limit}.", limit=self.limit),
            )

    def _fits(self) -> bool:
        return not self._flight or self._burst[self._next] == self._burst[self._flight[-1]]
