"""Arithmetic inside aperture macros: compiled once, evaluated for every aperture.

Operators + - x / and parentheses; x and / bind tighter than + and -, equals from left to right;
signs may stand before any factor; a variable never set is zero (The Gerber Layer Format
Specification, revision 2021.02, chapter 4).
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Mapping
from typing import TypeAlias

from drypoint.errors import InputError
from drypoint.wording import say

Variables: TypeAlias = Mapping[int, float]
Expression: TypeAlias = Callable[[Variables], float]

_TOKEN = re.compile(r"\$(\d{1,6})|((?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)|([-+xX/()])")
_NESTING_LIMIT = 50
_HINT = "Export the file again, or without aperture macros."


def compile_expression(text: str) -> Expression:
    """The function that evaluates ``text`` (no blanks in it) with given variables.

    Raises
    ------
    InputError
        If it is no expression. The function raises it where a division by zero happens.
    """
    tokens = _tokens(text)
    parser = _Parser(tokens, text)
    expression = parser.total(0)
    if parser.position != len(tokens):
        raise parser.error()
    return expression


def _tokens(text: str) -> list[re.Match[str]]:
    tokens = []
    position = 0
    while position < len(text):
        match = _TOKEN.match(text, position)
        if match is None:
            raise InputError(say("“{text}” is not an expression.", text=text[:40]), hint=_HINT)
        tokens.append(match)
        position = match.end()
    return tokens


class _Parser:
    """Recursive only in parentheses, so that long sums need no deep stack."""

    def __init__(self, tokens: list[re.Match[str]], text: str) -> None:
        self._tokens = tokens
        self._text = text
        self.position = 0

    def error(self) -> InputError:
        return InputError(say("“{text}” is not an expression.", text=self._text[:40]), hint=_HINT)

    def _sign(self) -> str:
        """The operator or parenthesis that comes next; empty for a number or the end."""
        if self.position < len(self._tokens):
            return (self._tokens[self.position].group(3) or "").lower()
        return ""

    def total(self, depth: int) -> Expression:
        terms = [(1.0, self._product(depth))]
        while (sign := self._sign()) and sign in "+-":
            self.position += 1
            terms.append((1.0 if sign == "+" else -1.0, self._product(depth)))
        if len(terms) == 1:
            return terms[0][1]
        return lambda variables: sum(sign * term(variables) for sign, term in terms)

    def _product(self, depth: int) -> Expression:
        first = self._factor(depth)
        rest: list[tuple[str, Expression]] = []
        while (sign := self._sign()) and sign in "x/":
            self.position += 1
            rest.append((sign, self._factor(depth)))
        if not rest:
            return first

        def value(variables: Variables) -> float:
            result = first(variables)
            for sign, factor in rest:
                result = result * factor(variables) if sign == "x" else _divide(result, factor(variables))
            return result

        return value

    def _factor(self, depth: int) -> Expression:
        negative = False
        while (sign := self._sign()) and sign in "+-":
            negative ^= sign == "-"
            self.position += 1
        inner = self._atom(depth)
        return (lambda variables: -inner(variables)) if negative else inner

    def _atom(self, depth: int) -> Expression:
        if self.position >= len(self._tokens) or depth > _NESTING_LIMIT:
            raise self.error()
        token = self._tokens[self.position]
        self.position += 1
        variable, number, sign = token.groups()
        if variable is not None:
            index = int(variable)
            return lambda variables: variables.get(index, 0.0)
        if number is not None:
            value = float(number)
            if not math.isfinite(value):
                raise self.error()
            return lambda _variables: value
        if sign != "(":
            raise self.error()
        inner = self.total(depth + 1)
        if self._sign() != ")":
            raise self.error()
        self.position += 1
        return inner


def _divide(value: float, by: float) -> float:
    if by == 0.0:
        raise InputError("An aperture macro divides by zero.", hint=_HINT)
    return value / by
