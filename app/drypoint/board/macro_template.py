"""Aperture macros: a template parsed once, turned into a shape for each set of parameters.

Exposure off erases only what the macro itself has drawn so far (The Gerber Layer Format
Specification, revision 2021.02, chapter 4).
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

import shapely
from shapely.geometry.base import BaseGeometry

from drypoint.board.aperture_shapes import NOTHING
from drypoint.board.macro_expressions import Expression, compile_expression
from drypoint.board.macro_primitives import ALWAYS_EXPOSED, PRIMITIVES, Reader
from drypoint.errors import InputError
from drypoint.wording import say

_BLANKS = re.compile(r"\s+")
_COMMENT = re.compile(r"0(?![.0-9])|0\Z")
_VARIABLE = re.compile(r"\$(\d{1,6})=(.*)\Z", re.DOTALL)
_STATEMENT_LIMIT = 5000
_VERTEX_LIMIT = 100_000
_HINT = "Export the file again, or without aperture macros."


@dataclass(frozen=True, slots=True, eq=False)
class Macro:
    """Statements in order: a variable to set (its number, one expression) or a primitive (None)."""

    name: str
    statements: tuple[tuple[int | None, tuple[Expression, ...]], ...]

    @classmethod
    def parse(cls, text: str) -> Macro:
        """From ``AMname*…``, without percent signs and the last star.

        Raises
        ------
        InputError
            If a statement cannot be understood.
        """
        name, *blocks = text.split("*")
        name = _BLANKS.sub("", name)[2:]
        if not name:
            raise InputError("An aperture macro has no name.", hint="Export the file again.")
        if len(blocks) > _STATEMENT_LIMIT:
            raise InputError(say("The aperture macro {name} is too long.", name=name[:40]))
        statements = (_statement(_BLANKS.sub(" ", block).strip()) for block in blocks)
        return cls(name, tuple(item for item in statements if item is not None))

    def shape(self, parameters: tuple[float, ...], unit: float, tolerance: float) -> BaseGeometry:
        """The shape round the origin, mm.

        Parameters
        ----------
        parameters : tuple of float
            $1, $2, … in file units.
        unit : float
            mm per file unit.
        tolerance : float
            Chord tolerance, mm.

        Raises
        ------
        InputError
            If a primitive is unknown or its parameters impossible.
        """
        variables = dict(enumerate(parameters, start=1))
        layers: list[tuple[bool, list[BaseGeometry]]] = []  # runs of equal exposure
        exposed = True
        vertices = 0
        for target, expressions in self.statements:
            values = [_finite(expression(variables), self.name) for expression in expressions]
            if target is not None:
                variables[target] = values[0]
                continue
            exposed, part = self._primitive(exposed, values, unit, tolerance)
            vertices += int(shapely.get_num_coordinates(part))
            if vertices > _VERTEX_LIMIT:
                raise InputError(say("The aperture macro {name} is too large.", name=self.name))
            if not layers or layers[-1][0] != exposed:
                layers.append((exposed, []))
            layers[-1][1].append(part)
        return _composed(layers)

    def _primitive(
        self, exposed: bool, values: list[float], unit: float, tolerance: float
    ) -> tuple[bool, BaseGeometry]:
        code = round(values[0])
        if code not in PRIMITIVES:
            what = say(
                "The aperture macro {name} has an unknown primitive {values:g}.",
                name=self.name,
                values=values[0],
            )
            raise InputError(what, hint=_HINT)
        rest = values[1:]
        exposed, rest = (True, rest) if code in ALWAYS_EXPOSED else _exposure(exposed, rest)
        return exposed, PRIMITIVES[code](Reader(rest, unit, tolerance))


def _composed(layers: list[tuple[bool, list[BaseGeometry]]]) -> BaseGeometry:
    result: BaseGeometry = NOTHING
    for exposed, parts in layers:
        run = parts[0] if len(parts) == 1 else shapely.union_all(parts)
        result = result.union(run) if exposed else result.difference(run)
    return result


def _statement(block: str) -> tuple[int | None, tuple[Expression, ...]] | None:
    if not block or _COMMENT.match(block):
        return None
    block = block.replace(" ", "")
    match = _VARIABLE.match(block)
    if match is not None:
        return int(match.group(1)), (compile_expression(match.group(2)),)
    fields = block.rstrip(",").split(",")
    return None, tuple(compile_expression(field) for field in fields)


def _exposure(before: bool, values: list[float]) -> tuple[bool, list[float]]:
    """Whether the primitive draws; 2 means the opposite of the one before (deprecated)."""
    if not values:
        raise InputError("A macro primitive has too few parameters.", hint="Export the file again.")
    code = round(values[0])
    return (not before if code == 2 else code != 0), values[1:]


def _finite(value: float, name: str) -> float:
    if not math.isfinite(value) or abs(value) > 1e12:
        raise InputError(say("The aperture macro {name} computes an impossible number.", name=name))
    return value
