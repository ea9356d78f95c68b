"""Files that are there whole or not at all: half a program must never be taken for one."""

from __future__ import annotations

from contextlib import suppress
from pathlib import Path


def write_whole(path: Path, text: str, encoding: str = "utf-8") -> None:
    """Put a file in place of what was there, which stays as it was until the new one is whole.

    Raises
    ------
    OSError
        If it cannot be written; nothing of it is left then.
    """
    fresh = path.with_name(f"{path.name}.part")
    try:
        fresh.write_text(text, encoding=encoding)
        fresh.replace(path)
    finally:
        with suppress(OSError):
            fresh.unlink(missing_ok=True)
