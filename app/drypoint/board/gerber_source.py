"""From a file, bytes or text to Gerber text: refuses what is no Gerber file, and says what it is."""

from __future__ import annotations

import re
from pathlib import Path

from drypoint.errors import InputError
from drypoint.wording import say

SIZE_LIMIT = 200_000_000
"""Bytes. The largest real layers are some tens of megabytes."""

_HINT = "Choose a Gerber layer file (often .gbr, .gtl, .gbl, .gko)."

_SIGNATURES: tuple[tuple[bytes, str], ...] = (
    (b"PK\x03\x04", "a zip archive"),
    (b"%PDF", "a PDF document"),
    (b"\x89PNG", "a picture (PNG)"),
    (b"\xff\xd8\xff", "a picture (JPEG)"),
    (b"GIF8", "a picture (GIF)"),
    (b"\x1f\x8b", "a gzip archive"),
    (b"Rar!", "a RAR archive"),
    (b"7z\xbc\xaf", "a 7z archive"),
    (b"{\\rtf", "a text document (RTF)"),
    (b"<?xml", "an XML document"),
    (b"<!DOCTYPE", "a web page"),
    (b"<html", "a web page"),
    (b"<svg", "a drawing (SVG)"),
    (b"SQLite format 3", "a database"),
)

_FORMAT = re.compile(r"%\s*(?:[A-Z]{2}[^%*]*\*\s*)*FS[LTDAI]*X\d")
_COMMAND = re.compile(
    r"%\s*(AD|AM|LP|LN|IN|IP|MO|TF|SR|AB|OF|SF|AS|MI|IR|IF)|[XYD][-+0-9]+[^*\n]*\*|G0*4[^*]*\*|M0*[0-2]\*"
)
_OTHERS: tuple[tuple[re.Pattern[str], str, str], ...] = (
    (re.compile(r"\A(?:\s|;[^\n]*\n)*%?\s*M48\b"), "a drill file", "Add it as a drill file."),
    (re.compile(r"^(3[1267]7.{30}|P  (JOB|UNITS|VER)\b)", re.MULTILINE), "a netlist", "Add it as a netlist."),
    (
        re.compile(r"^T0*\d+(C[.\d]+)?[ \t\r]*$", re.MULTILINE),
        "a drill or rout file",
        "Add it as a drill file.",
    ),
    (
        re.compile(r"^[ \t]*(N\d+[ \t]*)?G0*[0-3][ \t]*[XYZF][-+.0-9]", re.MULTILINE),
        "G-code for a machine",
        "Add it as G-code.",
    ),
)
"""How other kinds of files are known: only asked where there is no Gerber format statement."""


def gerber_text(source: Path | str | bytes, name: str | None = None) -> tuple[str, str]:
    """The text and the name to show for it.

    Parameters
    ----------
    source : path, str or bytes
        A path is a file; a str with a line break or a star is the text itself; bytes are a file's
        content.
    name : str, optional
        What to call it in messages; the file's name by default.

    Raises
    ------
    InputError
        If it cannot be read, is empty, is too large, or is something else than Gerber.
    """
    if isinstance(source, str) and (not source.strip() or "\n" in source or "*" in source):
        content: bytes | str = source
    elif isinstance(source, bytes):
        content = source
    else:
        path = Path(source)
        name = name or path.name
        content = _read(path, name)
    name = name or "the given text"
    text = content if isinstance(content, str) else _decode(content, name)
    _refuse_other_kinds(text, name)
    return text, name


def _read(path: Path, name: str) -> bytes:
    try:
        if path.stat().st_size > SIZE_LIMIT:
            raise InputError("The file is too large for a Gerber layer.", name, _HINT)
        return path.read_bytes()
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise InputError(
            say("The file cannot be read: {reason}.", reason=reason), name, "Check the path."
        ) from error


def _decode(content: bytes, name: str) -> str:
    if len(content) > SIZE_LIMIT:
        raise InputError("The file is too large for a Gerber layer.", name, _HINT)
    for signature, kind in _SIGNATURES:
        if content.lstrip()[: len(signature)] == signature:
            raise InputError(
                say("This is {kind}, not a Gerber file.", kind=kind), say("{name}, line 1", name=name), _HINT
            )
    if content[:2] in (b"\xff\xfe", b"\xfe\xff"):
        return content.decode("utf-16", "replace")
    try:
        return content.decode("utf-8-sig")
    except UnicodeDecodeError:
        return content.decode("latin-1")


def _refuse_other_kinds(text: str, name: str) -> None:
    if len(text) > SIZE_LIMIT:
        raise InputError("The text is too large for a Gerber layer.", name, _HINT)
    if not text.strip():
        raise InputError("The file is empty.", say("{name}, line 1", name=name), "Export the layer again.")
    if "\0" in text:
        line = text.count("\n", 0, text.index("\0")) + 1
        raise InputError(
            "This is a binary file, not Gerber text.", say("{name}, line {line}", name=name, line=line), _HINT
        )
    if _FORMAT.search(text):
        return
    for pattern, kind, hint in _OTHERS:
        if pattern.search(text):
            raise InputError(
                say("This is {kind}, not a Gerber layer.", kind=kind), say("{name}, line 1", name=name), hint
            )
    if not _COMMAND.search(text):
        raise InputError(
            "This is no Gerber file: no Gerber command is in it.", say("{name}, line 1", name=name), _HINT
        )
