"""Text of a design file: from a path, from bytes or from text, with its name for messages."""

from __future__ import annotations

from pathlib import Path

from drypoint.errors import InputError
from drypoint.wording import say

MAX_BYTES = 200_000_000
"""Larger files are no board data a workshop meets; refused before they fill the memory."""


def text_of(source: Path | str | bytes, name: str = "") -> tuple[str, str]:
    """The text and the name of a source.

    Parameters
    ----------
    source : Path, str or bytes
        A path, the text itself (a string with a line end in it), or the bytes of a file.
    name : str
        What to call it in messages; the file's name when empty.

    Raises
    ------
    InputError
        The file cannot be read, is empty, too large or not text.
    """
    if isinstance(source, bytes):
        return _decode(source, name or "file"), name or "file"
    if isinstance(source, str) and ("\n" in source or "\r" in source or not source.strip()):
        return _decode(source.encode("utf-8", "replace"), name or "text"), name or "text"
    path = Path(source)
    name = name or path.name
    try:
        size = path.stat().st_size
        if size > MAX_BYTES:
            raise InputError(
                say("The file is larger than {max_bytes} MB.", max_bytes=MAX_BYTES // 1000000), name
            )
        return _decode(path.read_bytes(), name), name
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) and error.strerror else "not a usable path"
        raise InputError(say("The file cannot be read: {reason}.", reason=reason), name) from None


def _decode(data: bytes, name: str) -> str:
    if not data.strip(b"\x00\r\n\t \x1a"):
        raise InputError("The file is empty.", name, "Export it again.")
    if len(data) > MAX_BYTES:
        raise InputError(say("The file is larger than {max_bytes} MB.", max_bytes=MAX_BYTES // 1000000), name)
    if b"\x00" in data[:4096]:
        raise InputError("The file is binary, not text.", name, "Choose a text export of the design.")
    data = data.removeprefix(b"\xef\xbb\xbf")
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError:
        return data.decode("latin-1")
