"""Puts Drypoint into the menus of a Linux desktop, for this user: ``python3 scripts/install_desktop.py``.

Writes the desktop entry, the kind of ``.drypoint`` files, the icon and the description below
``$XDG_DATA_HOME`` (XDG Base Directory Specification; ``~/.local/share`` where it is not set). ``--remove``
takes all of it away again; ``--to FOLDER`` uses another place.
"""

from __future__ import annotations

import argparse
import os
import shutil
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
NAME = "org.drypoint.Drypoint"
PLACES = {
    f"resources/desktop/{NAME}.desktop": f"applications/{NAME}.desktop",
    f"resources/desktop/{NAME}.metainfo.xml": f"metainfo/{NAME}.metainfo.xml",
    f"resources/mime/{NAME}.xml": f"mime/packages/{NAME}.xml",
    "resources/icons/drypoint.svg": f"icons/hicolor/scalable/apps/{NAME}.svg",
}
REFRESH = (
    ("update-mime-database", "mime"),
    ("update-desktop-database", "applications"),
    ("gtk-update-icon-cache", "icons/hicolor"),
)
"""Programs that read a folder anew, where they are installed; desktops notice by themselves otherwise."""


def data_home(environment: Mapping[str, str]) -> Path:
    """Where data of the user go; the specification says to ignore a relative path."""
    named = environment.get("XDG_DATA_HOME", "")
    return Path(named) if os.path.isabs(named) else Path.home() / ".local" / "share"  # noqa: PTH117


def quoted(word: str) -> str:
    """A word of an Exec line (Desktop Entry Specification, "The Exec key").

    Quoted, with ``" ` $ \\`` escaped inside; backslashes are doubled once more because the value is a
    string of the file; a percent sign is doubled because it begins a field code.
    """
    inside = "".join("\\" + sign if sign in '"`$\\' else sign for sign in word)
    return f'"{inside}"'.replace("\\", "\\\\").replace("%", "%%")


def entry(text: str, python: Path) -> str:
    """The desktop entry with the command of this checkout in place of the bare name."""
    command = f"Exec={quoted(str(python))} -m drypoint %f"
    return "\n".join(command if line.startswith("Exec=") else line for line in text.split("\n"))


def install(home: Path, python: Path) -> list[Path]:
    """Write all files; gives their paths."""
    written = []
    for source, target in PLACES.items():
        text = (ROOT / source).read_text(encoding="utf-8")
        path = home / target
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(entry(text, python) if target.endswith(".desktop") else text, encoding="utf-8")
        written.append(path)
    return written


def remove(home: Path) -> list[Path]:
    """Take all files away; gives the paths of those that were there."""
    there = [home / target for target in PLACES.values() if (home / target).exists()]
    for path in there:
        path.unlink()
    return there


def refresh(home: Path) -> None:
    """Let the desktop read anew what has changed."""
    for program, folder in REFRESH:
        if shutil.which(program) and (home / folder).is_dir():
            subprocess.run([program, str(home / folder)], check=False, capture_output=True)


def main(arguments: list[str]) -> int:
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("--remove", action="store_true", help="take it away again")
    parser.add_argument("--to", type=Path, metavar="FOLDER", help="another place than the user's data folder")
    words = parser.parse_args(arguments)
    home = words.to or data_home(os.environ)
    python = ROOT / ".venv" / "bin" / "python"
    if sys.platform in {"win32", "darwin"} and not words.to:
        sys.stderr.write("This is for Linux desktops.\n")
        return 1
    if not words.remove and not python.exists():
        sys.stderr.write("Drypoint is not set up yet: run  python3 app/start.py --version  first.\n")
        return 1
    changed = remove(home) if words.remove else install(home, python)
    refresh(home)
    for path in changed:
        sys.stdout.write(f"{'removed' if words.remove else 'written'}: {path}\n")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
