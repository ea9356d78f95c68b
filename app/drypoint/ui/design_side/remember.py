"""What the window remembers from one day to the next: recent jobs, arrangement, colours."""

from __future__ import annotations

import json
import logging
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from platformdirs import user_config_path

from drypoint.session.whole_file import write_whole
from drypoint.ui.language.speech import Language

_log = logging.getLogger(__name__)

MOST = 10
"""Recent jobs that are remembered."""


def usual_place() -> Path:
    """The file in the user's own folder of settings."""
    return user_config_path("drypoint", appauthor=False) / "window.json"


class Remembered:
    """A small file of plain values; a missing or damaged one counts as empty, and nothing depends on it."""

    def __init__(self, path: Path) -> None:
        self._path = path
        self._values: dict[str, Any] = self._read()

    def _read(self) -> dict[str, Any]:
        try:
            found = json.loads(self._path.read_text(encoding="utf-8"))
        except (OSError, ValueError):
            return {}
        return found if isinstance(found, dict) else {}

    def _write(self) -> None:
        try:
            self._path.parent.mkdir(parents=True, exist_ok=True)
            write_whole(self._path, json.dumps(self._values, indent=1))
        except OSError as error:
            _log.warning("the window's arrangement could not be kept: %s", error)

    @property
    def recent(self) -> tuple[str, ...]:
        """Job files opened lately that are still there, newest first."""
        listed = self._values.get("recent")
        names = [str(name) for name in listed] if isinstance(listed, list) else []
        return tuple(name for name in names if Path(name).is_file())

    def opened(self, path: Path) -> None:
        """A job was opened."""
        name = str(path.resolve())
        self._values["recent"] = [name, *(one for one in self.recent if one != name)][:MOST]
        self._write()

    @property
    def arrangement(self) -> Mapping[str, object]:
        """How the window was arranged."""
        found = self._values.get("arrangement")
        return found if isinstance(found, dict) else {}

    @property
    def dark(self) -> bool | None:
        """The colours chosen; None as the system's."""
        found = self._values.get("dark")
        return found if isinstance(found, bool) else None

    @property
    def language(self) -> Language:
        """The language chosen."""
        found = self._values.get("language")
        return Language(found) if found in tuple(Language) else Language.SYSTEM

    def choose_language(self, language: Language) -> None:
        """Another language from the next window on."""
        self._values["language"] = str(language)
        self._write()

    def keep(self, arrangement: Mapping[str, object], dark: bool | None) -> None:
        """Keep how the window is arranged."""
        self._values["arrangement"] = dict(arrangement)
        self._values["dark"] = dark
        self._write()
