"""Sentences that can be said in another language: a text keeps its template and the values put in.

Below the window everything is worded in English, without Qt. `say` makes an ordinary string (the command
line prints it, the job file keeps it) that also remembers how it was made, so that the window can look
its template up in a catalogue and fill in the same values again.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from string import Formatter
from types import MappingProxyType

THIN_SPACE = "\u202f"
"""Between groups of three digits, in every language."""

_PLAIN: Mapping[str, object] = MappingProxyType({})


class Text(str):
    """An English text that knows its template.

    Attributes
    ----------
    template : str
        With fields as of `str.format`, by name only.
    values : mapping
        What the fields stand for; a value may be a `Text` of its own.
    """

    __slots__ = ("template", "values")

    template: str
    values: Mapping[str, object]

    def __new__(cls, template: str, values: Mapping[str, object] = _PLAIN) -> Text:
        grouped = ":," in template
        made = super().__new__(cls, filled(template, values) if grouped else template.format(**values))
        made.template = template
        made.values = values
        return made

    def __reduce__(self) -> tuple[type[str], tuple[str]]:
        """Stored and sent as a plain string."""
        return str, (str(self),)


class _Filler(Formatter):
    """`str.format` with a decimal sign of choice, and thin spaces between thousands."""

    def __init__(self, point: str) -> None:
        self._point = point

    def format_field(self, value: object, format_spec: str) -> str:
        text = str(super().format_field(value, format_spec))
        if not isinstance(value, (int, float)) or isinstance(value, bool):
            return text
        grouped = text.replace(",", THIN_SPACE) if "," in format_spec else text
        return grouped.replace(".", self._point) if isinstance(value, float) else grouped


def filled(template: str, values: Mapping[str, object], point: str = ".") -> str:
    """The template with its values; numbers of type float get ``point`` as their decimal sign."""
    return _Filler(point).vformat(template, (), values)


def say(template: str, /, **values: object) -> str:
    """A text of a template that the catalogue has, and of its values."""
    return Text(template, values)


def many(count: int, one: str, more: str, /, **values: object) -> str:
    """One template for exactly one thing, another for any other number; both may use ``{count}``."""
    return Text(one if count == 1 else more, {"count": count, **values})


def strung(parts: Iterable[str], between: str = " ") -> str:
    """Texts in a row; empty ones are left out. Each is looked up by itself."""
    kept = [part for part in parts if part]
    names = [f"part{number}" for number in range(len(kept))]
    gap = between.replace("{", "{{").replace("}", "}}")
    return Text(gap.join(f"{{{name}}}" for name in names), dict(zip(names, kept, strict=True)))


def as_text(text: str) -> str:
    """A plain string as a text without values: the catalogue may have it as it stands."""
    return text if isinstance(text, Text) else Text(text.replace("{", "{{").replace("}", "}}"))


def reword(frozen: object, *names: str) -> None:
    """Make fields of a frozen dataclass texts; for its ``__post_init__``."""
    for name in names:
        object.__setattr__(frozen, name, as_text(getattr(frozen, name)))


def told(text: str, look: Callable[[str], str], point: str = ".") -> str:
    """The text in another language.

    Parameters
    ----------
    text : str
        A `Text`; a plain string comes back as it is.
    look : callable
        Gives the other language's template for an English one; the same if it has none.
    point : str
        Decimal sign of that language.
    """
    if not isinstance(text, Text):
        return text
    values = {
        name: told(value, look, point) if isinstance(value, Text) else value
        for name, value in text.values.items()
    }
    return filled(look(text.template), values, point)
