"""The serial line: bytes take time, arrive in order, and get lost where the far end cannot take them."""

from __future__ import annotations

from collections import deque

BITS_PER_BYTE = 10.0
"""8-N-1: a start bit, eight data bits, a stop bit."""

REALTIME = frozenset(b"\x18?~!") | frozenset(range(0x80, 0x100))
"""Bytes acted on at once; they never enter the receive buffer."""


class Wire:
    """Both directions of one serial line.

    Parameters
    ----------
    baud : float
        Bits a second; infinite where bytes take no time.
    latency : float
        Delay of the adapter each way, s.
    """

    def __init__(self, baud: float = 115200.0, latency: float = 0.001) -> None:
        self.byte_time = BITS_PER_BYTE / baud
        self._latency = latency
        self._in_free = 0.0
        self._out_free = 0.0
        self.arriving: deque[tuple[float, bytes]] = deque()
        """Time at which the last byte of a piece arrives, and the piece: one real-time byte, or
        text up to and including a line end."""
        self.leaving: deque[tuple[float, bytes]] = deque()

    def send(self, data: bytes, now: float) -> None:
        """The computer writes."""
        at = max(now + self._latency, self._in_free)
        start = 0
        for index, byte in enumerate(data):
            if byte in REALTIME or byte in b"\r\n":
                if byte in REALTIME and index > start:
                    self.arriving.append((at + (index - start) * self.byte_time, data[start:index]))
                    at, start = at + (index - start) * self.byte_time, index
                at += (index + 1 - start) * self.byte_time
                self.arriving.append((at, data[start : index + 1]))
                start = index + 1
        if start < len(data):
            at += (len(data) - start) * self.byte_time
            self.arriving.append((at, data[start:]))
        self._in_free = at

    def reply(self, data: bytes, now: float) -> None:
        """The controller writes."""
        at = max(now, self._out_free) + len(data) * self.byte_time
        self._out_free = at
        self.leaving.append((at + self._latency, data))

    def drop_arrivals(self, until: float) -> int:
        """Lose every ordinary byte that arrives up to ``until``; how many were lost."""
        lost = 0
        kept: deque[tuple[float, bytes]] = deque()
        for at, piece in self.arriving:
            if piece[0] in REALTIME:
                kept.append((at, piece))
                continue
            gone = len(piece) - (int((at - until) / self.byte_time) if self.byte_time else 0)
            gone = max(0, min(len(piece), gone)) if at - len(piece) * self.byte_time < until else 0
            lost += gone
            if gone < len(piece):
                kept.append((at, piece[gone:]))
        self.arriving = kept
        return lost

    def received(self, now: float) -> bytes:
        """What the computer has got by ``now``."""
        out = b""
        while self.leaving and self.leaving[0][0] <= now:
            out += self.leaving.popleft()[1]
        return out

    def cut(self) -> None:
        """Everything on its way is lost."""
        self.arriving.clear()
        self.leaving.clear()
