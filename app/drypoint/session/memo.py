"""Computed once per state of its inputs."""

from __future__ import annotations

import threading
from collections.abc import Callable
from typing import Any, TypeVar, cast

T = TypeVar("T")


class Memo:
    """Keeps the newest value of each named computation with the key of its inputs.

    Two threads that ask for the same value at once compute it once. A computation may ask for
    others.
    """

    def __init__(self) -> None:
        self._kept: dict[str, tuple[str, Any]] = {}
        self._lock = threading.RLock()

    def get(self, name: str, key: str, compute: Callable[[], T]) -> T:
        """The kept value if its inputs are unchanged, else a fresh one."""
        with self._lock:
            found = self._kept.get(name)
            if found is None or found[0] != key:
                found = (key, compute())
                self._kept[name] = found
            return cast("T", found[1])

    def peek(self, name: str, key: str) -> Any | None:
        """The kept value if it is there and fresh; computes nothing and waits for nobody."""
        found = self._kept.get(name)
        return found[1] if found is not None and found[0] == key else None
