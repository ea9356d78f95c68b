"""Attributes of a Gerber or XNC file: what the data means, kept apart from how it looks.

They come as extended commands (``%TO.N,GND*%``) or, for older readers, as standard comments
(``G04 #@! TO.N,GND*``). Both mean the same. Source of names and rules: The Gerber Layer Format
Specification, revision 2021.02, chapter 5.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from drypoint.errors import InputError
from drypoint.wording import say

_ESCAPE = re.compile(r"\\u([0-9a-fA-F]{4})")
_COMMAND = re.compile(r"T([FAOD])(.*)\Z", re.DOTALL)
_STANDARD_COMMENT = re.compile(r"\s*#@!\s*(T[FAOD].*)\Z", re.DOTALL)
_NAME_LIMIT = 256  # characters; a longer name is not an attribute but damage


class Attributes(Mapping[str, tuple[str, ...]]):
    """Values by name, read-only. A standard name may be asked for without its leading dot."""

    __slots__ = ("_values",)

    def __init__(self, values: Mapping[str, tuple[str, ...]] | None = None) -> None:
        self._values = dict(values or {})

    def __getitem__(self, name: str) -> tuple[str, ...]:
        if name in self._values:
            return self._values[name]
        return self._values["." + name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._values)

    def __len__(self) -> int:
        return len(self._values)

    def __hash__(self) -> int:
        return hash(frozenset(self._values.items()))

    def __repr__(self) -> str:
        return f"Attributes({self._values!r})"

    def over(self, other: Attributes) -> Attributes:
        """These, and of the other those that are not among these."""
        if not other:
            return self
        return Attributes({**other._values, **self._values})

    def first(self, name: str) -> str:
        """The first field of an attribute; empty if there is none."""
        fields = self._values.get(name, ())
        return fields[0] if fields else ""


NO_ATTRIBUTES = Attributes()


def standard_comment(comment: str) -> str | None:
    """The attribute command inside a comment's text, or None for an ordinary comment."""
    match = _STANDARD_COMMENT.match(comment)
    return match.group(1).strip() if match else None


def decode(field: str) -> str:
    """A field with its ``\\uXXXX`` escapes resolved (after splitting at commas, never before)."""
    if "\\u" not in field:
        return field
    text = _ESCAPE.sub(lambda found: chr(int(found.group(1), 16)), field)
    # two escapes may make one character beyond the basic plane; half of a pair makes none
    return text.encode("utf-16", "surrogatepass").decode("utf-16", "replace")


class AttributeDictionary:
    """The three dictionaries as they stand at one place of the file.

    ``apply`` takes TF, TA, TO and TD commands; ``aperture`` and ``objects`` are snapshots.
    """

    def __init__(self) -> None:
        self._file: dict[str, tuple[str, ...]] = {}
        self._aperture: dict[str, tuple[str, ...]] = {}
        self._object: dict[str, tuple[str, ...]] = {}
        self._aperture_seen: Attributes | None = NO_ATTRIBUTES
        self._object_seen: Attributes | None = NO_ATTRIBUTES

    @property
    def aperture(self) -> Attributes:
        """What is attached to the next aperture, and to a region."""
        if self._aperture_seen is None:
            self._aperture_seen = Attributes(self._aperture)
        return self._aperture_seen

    @property
    def objects(self) -> Attributes:
        """What is attached to the next object."""
        if self._object_seen is None:
            self._object_seen = Attributes(self._object)
        return self._object_seen

    @property
    def file(self) -> Attributes:
        """What was said about the whole file."""
        return Attributes(self._file)

    def apply(self, command: str) -> None:
        """Follow one attribute command, without percent signs and star.

        Raises
        ------
        InputError
            If it is not an attribute command or has no name.
        """
        match = _COMMAND.match(command)
        if match is None:
            raise InputError(say("“{command}” is not an attribute command.", command=command[:40]))
        kind, rest = match.groups()
        name, *fields = rest.split(",")
        name = name.strip()
        if kind == "D":
            self._delete(name)
        else:
            if not name or len(name) > _NAME_LIMIT:
                raise InputError("An attribute has no usable name.", hint="Export the file again.")
            values = tuple(decode(field.strip()) for field in fields)
            {"F": self._file, "A": self._aperture, "O": self._object}[kind][name] = values
        if kind in "AD":
            self._aperture_seen = None
        if kind in "OD":
            self._object_seen = None

    def _delete(self, name: str) -> None:
        if not name:
            self._aperture.clear()
            self._object.clear()
        self._aperture.pop(name, None)
        self._object.pop(name, None)
