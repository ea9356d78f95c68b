"""Design files gathered from folders, single files and zips, with bounds on number and size."""

from __future__ import annotations

import io
import lzma
import stat
import zipfile
import zlib
from collections.abc import Iterator, Sequence
from pathlib import Path, PurePosixPath

from drypoint.errors import InputError
from drypoint.wording import say

MAX_FILES = 500
MAX_FILE = 200_000_000
MAX_TOTAL = 500_000_000
MAX_DEPTH = 3
"""Folders below the chosen one that are looked into."""
_ZIP = b"PK\x03\x04"
"""First bytes of a zip that is not empty (APPNOTE 4.3.7)."""
_LEFT_OUT = {"__macosx", ".git", ".svn", "node_modules"}
_PICTURES = (".png", ".jpg", ".jpeg", ".pdf", ".svg", ".step", ".stp", ".wrl", ".html", ".md", ".drypoint")


def gather(paths: Sequence[Path]) -> dict[str, bytes]:
    """Every file of the paths by its name; folders below and zips opened.

    Names are relative to the path chosen, with ``/``; equal names get a number.

    Raises
    ------
    InputError
        Nothing there, unreadable, or more than the bounds allow.
    """
    found: dict[str, bytes] = {}
    total = 0
    for path in paths:
        for name, data in _files(Path(path)):
            total += len(data)
            if len(found) >= MAX_FILES:
                raise InputError(
                    say("There are more than {max_files} files.", max_files=MAX_FILES),
                    str(path),
                    "Choose the board's folder.",
                )
            if total > MAX_TOTAL:
                raise InputError(
                    say("The files hold more than {max_total} MB.", max_total=MAX_TOTAL // 1000000), str(path)
                )
            found[_free(name, found)] = data
    if not found:
        where = ", ".join(str(path) for path in paths)
        raise InputError("There is no design file.", where, "Choose Gerber and drill files.")
    return found


def _free(name: str, taken: dict[str, bytes]) -> str:
    number, free = 2, name
    while free in taken:
        stem, dot, suffix = name.rpartition(".")
        free = f"{stem} ({number}).{suffix}" if dot else f"{name} ({number})"
        number += 1
    return free


def _files(path: Path) -> Iterator[tuple[str, bytes]]:
    try:
        if path.is_dir():
            yield from _folder(path, path, 0)
        else:
            data = _read(path)
            yield from _zip(data, path.name) if _is_zip(data) else [(_printable(path.name), data)]
    except OSError as error:
        raise InputError(
            say("It cannot be read: {strerror}.", strerror=error.strerror or error), str(path)
        ) from None


def _read(path: Path) -> bytes:
    info = path.stat()
    if not stat.S_ISREG(info.st_mode):
        raise InputError("This is no regular file.", str(path))
    if info.st_size > MAX_FILE:
        raise InputError(
            say("The file is larger than {max_file} MB.", max_file=MAX_FILE // 1000000), str(path)
        )
    return path.read_bytes()


def _folder(top: Path, folder: Path, depth: int) -> Iterator[tuple[str, bytes]]:
    for entry in sorted(folder.iterdir()):
        if entry.name.startswith(".") or entry.name.lower() in _LEFT_OUT or entry.is_symlink():
            continue
        if entry.is_dir():
            if depth < MAX_DEPTH:
                yield from _folder(top, entry, depth + 1)
        elif entry.is_file() and not entry.name.lower().endswith(_PICTURES):
            data = _read(entry)
            if _is_zip(data):
                yield from _zip(data, entry.name)
            else:
                yield _printable(entry.relative_to(top).as_posix()), data


def _is_zip(data: bytes) -> bool:
    """Whether it is a zip, or was one before it was cut off."""
    return data.startswith(_ZIP) or zipfile.is_zipfile(io.BytesIO(data))


def _zip(data: bytes, name: str) -> Iterator[tuple[str, bytes]]:
    """Members read into memory one by one: nothing is ever written, so none can leave its folder."""
    total = 0
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            members = [entry for entry in archive.infolist() if _wanted(entry)]
            if len(members) > MAX_FILES:
                raise InputError(say("The zip holds more than {max_files} files.", max_files=MAX_FILES), name)
            for entry in members:
                with archive.open(entry) as stream:
                    content = stream.read(MAX_FILE + 1)  # the size stated inside is not believed
                total += len(content)
                if len(content) > MAX_FILE or total > MAX_TOTAL:
                    raise InputError("The zip unpacks to too much data.", name)
                yield _safe(entry.filename), content
    except (
        zipfile.BadZipFile,
        zlib.error,
        lzma.LZMAError,
        EOFError,
        NotImplementedError,
        RuntimeError,
        ValueError,
    ) as error:
        reason = say("it is locked") if "encrypted" in str(error) else say("it is damaged")
        raise InputError(say("The zip cannot be read: {reason}.", reason=reason), name) from None


def _wanted(entry: zipfile.ZipInfo) -> bool:
    parts = PurePosixPath(entry.filename.replace("\\", "/")).parts
    hidden = any((part.startswith(".") and part != "..") or part.lower() in _LEFT_OUT for part in parts)
    return not (entry.is_dir() or hidden or entry.filename.lower().endswith((*_PICTURES, ".zip")))


def _safe(name: str) -> str:
    parts = [p for p in PurePosixPath(name.replace("\\", "/")).parts if p not in ("/", "..", ".")]
    return _printable("/".join(part.replace(":", "_") for part in parts) or "file")


def _printable(name: str) -> str:
    """The name without what no terminal and no text file can show."""
    return "".join(sign if sign.isprintable() else "_" for sign in name)
