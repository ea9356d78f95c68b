"""Settings and measurements to and from plain JSON values.

One generic pair for frozen dataclasses: unknown keys of a newer program are dropped, missing ones
get their default, so a job file survives added settings.
"""

from __future__ import annotations

import math
import types
import typing
from dataclasses import MISSING, Field, fields, is_dataclass
from enum import Enum
from typing import Any, TypeVar, get_args, get_origin, get_type_hints

import numpy as np

from drypoint.errors import StoreError

T = TypeVar("T")


def to_json(value: Any) -> Any:
    """Plain JSON of a dataclass, enum, array, tuple or number; a type name where a union needs it."""
    if is_dataclass(value) and not isinstance(value, type):
        plain = {one.name: to_json(getattr(value, one.name)) for one in fields(value)}
        plain["type"] = type(value).__name__
        return plain
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, np.ndarray):
        return value.tolist()
    if isinstance(value, np.generic):
        return value.item()
    if isinstance(value, (list, tuple)):
        return [to_json(one) for one in value]
    if isinstance(value, dict):
        return {str(key): to_json(one) for key, one in value.items()}
    if isinstance(value, float) and not math.isfinite(value):
        return None
    return value


def from_json(kind: type[T], value: Any, where: str) -> T:
    """A ``kind`` from plain JSON.

    Raises
    ------
    StoreError
        If a value has another type than the program knows; ``where`` names the section.
    """
    try:
        return typing.cast("T", _read(kind, value))
    except (TypeError, ValueError, KeyError, AttributeError, OverflowError) as error:
        raise StoreError(
            f"A stored setting cannot be read ({error}).",
            where,
            "Set it again; the rest of the job is intact.",
        ) from error


def _read(kind: Any, value: Any) -> Any:
    origin = get_origin(kind)
    if hasattr(origin, "__value__"):  # an alias made by a type statement, as newer numpy has
        origin = get_origin(origin.__value__)
    if origin in {typing.Union, types.UnionType}:
        return _read_union(get_args(kind), value)
    if origin is tuple:
        inner = get_args(kind)
        if len(inner) == 2 and inner[1] is Ellipsis:
            return tuple(_read(inner[0], one) for one in value)
        return tuple(_read(one, part) for one, part in zip(inner, value, strict=True))
    if origin is np.ndarray or kind is np.ndarray:
        array = np.asarray(value, dtype=np.float64)
        array.flags.writeable = False
        return array
    if is_dataclass(kind):
        return _read_dataclass(kind, value)
    if kind is Any:
        return value
    if isinstance(kind, type) and issubclass(kind, Enum):
        return kind(value)
    if kind is float and isinstance(value, (int, float)) and not isinstance(value, bool):
        if not math.isfinite(value):
            raise ValueError(f"{value} is no number")
        return float(value)
    if not isinstance(value, kind) or (kind is int and isinstance(value, bool)):
        raise TypeError(f"{value!r} is not a {kind.__name__}")
    return value


def _read_union(choices: tuple[Any, ...], value: Any) -> Any:
    if value is None and type(None) in choices:
        return None
    named = value.get("type") if isinstance(value, dict) else None
    for choice in choices:
        if choice is not type(None) and (named is None or getattr(choice, "__name__", "") == named):
            return _read(choice, value)
    raise ValueError(f"{named!r} is not known here")


def _read_dataclass(kind: Any, value: Any) -> Any:
    hints = get_type_hints(kind)
    found: dict[str, Any] = {}
    for one in fields(kind):
        if one.name in value:
            found[one.name] = _read(hints[one.name], value[one.name])
        elif not _has_default(one):
            raise KeyError(f"{kind.__name__}.{one.name} is missing")
    return kind(**found)


def _has_default(one: Field[Any]) -> bool:
    return one.default is not MISSING or one.default_factory is not MISSING
