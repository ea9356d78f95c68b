"""Messages between the window's process and its children: a length, then a pickled tuple.

Both ends are this program and the pipe between them is private, so pickles are safe here.
"""

from __future__ import annotations

import copyreg
import io
import pickle
import struct
import threading
from collections import ChainMap
from typing import Any, BinaryIO

from drypoint.wording import Text

_HEAD = struct.Struct("<I")


class Frames:
    """One end of a pair of pipes.

    ``send`` may be called from any thread, ``receive`` from one at a time.
    """

    def __init__(self, reading: BinaryIO, writing: BinaryIO) -> None:
        self._reading, self._writing = reading, writing
        self._lock = threading.Lock()

    def send(self, *message: Any) -> None:
        """Send a tuple.

        Raises
        ------
        OSError
            If the other end is gone.
        """
        body = _pickled(message)
        with self._lock:
            try:
                self._writing.write(_HEAD.pack(len(body)) + body)
                self._writing.flush()
            except ValueError as error:  # closed by another thread
                raise BrokenPipeError(str(error)) from error

    def receive(self) -> tuple[Any, ...] | None:
        """The next tuple, waiting for it; None if the other end is gone."""
        head = self._exactly(_HEAD.size)
        body = None if head is None else self._exactly(_HEAD.unpack(head)[0])
        if body is None:
            return None
        message: tuple[Any, ...] = pickle.loads(body)
        return message

    def close_writing(self) -> None:
        """Nothing more will be sent: the other end sees the end of the pipe."""
        with self._lock:
            try:
                self._writing.close()
            except OSError:  # the other end is gone already
                return

    def _exactly(self, size: int) -> bytes | None:
        try:
            data = self._reading.read(size)
        except (OSError, ValueError):
            return None
        return data if len(data) == size else None


def _pickled(message: tuple[Any, ...]) -> bytes:
    """A message; unlike in a job file its texts can still be said in another language."""
    body = io.BytesIO()
    pickler = pickle.Pickler(body, protocol=pickle.HIGHEST_PROTOCOL)
    pickler.dispatch_table = _WAYS
    pickler.dump(message)
    return body.getvalue()


def _parts(text: Text) -> tuple[type[Text], tuple[str, dict[str, object]]]:
    return Text, (text.template, dict(text.values))


_WAYS = ChainMap[type, Any]({Text: _parts}, copyreg.dispatch_table)
