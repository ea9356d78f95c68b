"""Where the files lie that the program needs and that are no code: in a checkout, or as installed."""

from __future__ import annotations

from importlib import metadata
from pathlib import Path

_ROOT = Path(__file__).resolve().parents[2]
_SHARE = ("share", "drypoint")
"""Where pyproject.toml has them installed, below the place that the installer chose."""


def shipped(folder: str) -> Path:
    """The folder ``resources`` or ``examples``; one that is not there if it was not installed."""
    beside = _ROOT / folder
    if (_ROOT / "pyproject.toml").is_file():
        return beside
    wanted = (*_SHARE, folder)
    try:
        files = metadata.files("drypoint") or ()
    except metadata.PackageNotFoundError:
        return beside
    for file in files:
        for end in range(len(wanted), len(file.parts)):
            if file.parts[end - len(wanted) : end] == wanted:
                up = len(file.parts) - end - 1
                return Path(str(file.locate())).resolve().parents[up]
    return beside
