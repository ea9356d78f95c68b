"""Texts and numbers as the window shows them, in the language it speaks."""

from __future__ import annotations

import re

from PySide6.QtCore import QCoreApplication, QLocale

from drypoint import wording

CORE = "core"
"""Under which the core's texts are looked up."""

BREAK = "\u200b"
"""A space without width: a line may end there."""
_CLOSE = re.compile(r",(?=[^\s\d])")
_POINT = re.compile(r"(?<=\d)\.(?=\d)")


def point() -> str:
    """The decimal sign."""
    return QLocale().decimalPoint()


def told(text: str) -> str:
    """A text of the core in the language of the window; any other string as it is."""
    return wording.told(text, _look, point())


def fill(template: str, **values: object) -> str:
    """A translated template with its values; numbers get the decimal sign of the language."""
    known = {name: told(value) if isinstance(value, str) else value for name, value in values.items()}
    return wording.filled(template, known, point())


def local(text: str) -> str:
    """A text of nothing but numbers and units, with the decimal sign of the language."""
    sign = point()
    return text if sign == "." else _POINT.sub(sign, text)


def breakable(text: str) -> str:
    """The text with chances to begin a new line after commas that no space follows, as in a list of words."""
    return _CLOSE.sub("," + BREAK, text)


def _look(template: str) -> str:
    return QCoreApplication.translate(CORE, template)
