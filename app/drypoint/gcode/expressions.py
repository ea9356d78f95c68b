"""Values in RS-274 lines: numbers, parameters and expressions (NISTIR 6556, 3.3.2 and Appendix E)."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping

from drypoint.errors import InputError
from drypoint.wording import say

MAX_DEPTH = 40
_NUMBER = re.compile(r"[+-]?(?:\d+\.?\d*|\.\d+)")
_UNARY = re.compile(r"(ABS|ACOS|ASIN|ATAN|COS|EXP|FIX|FUP|LN|ROUND|SIN|SQRT|TAN)")
_BINARY = re.compile(r"(\*\*|\*|/|MOD|\+|-|AND|XOR|OR)")
_STRENGTH = {"**": 3, "*": 2, "/": 2, "MOD": 2, "+": 1, "-": 1, "AND": 1, "XOR": 1, "OR": 1}


class Values:
    """Reads values one after another from a line without blanks, in capitals."""

    def __init__(self, text: str, parameters: Mapping[int, float]) -> None:
        self.text = text
        self.at = 0
        self._parameters = parameters

    @property
    def done(self) -> bool:
        """Whether the line is used up."""
        return self.at >= len(self.text)

    def take(self) -> str:
        """The next character."""
        self.at += 1
        return self.text[self.at - 1]

    def peek(self) -> str:
        """The next character without taking it; empty at the end."""
        return self.text[self.at] if self.at < len(self.text) else ""

    def value(self, depth: int = 0) -> float:
        """The next value.

        Raises
        ------
        InputError
            There is none, or it cannot be computed.
        """
        if depth > MAX_DEPTH:
            raise InputError("An expression is nested too deep.")
        number = _NUMBER.match(self.text, self.at)
        if number is not None:
            self.at = number.end()
            return _finite(float(number[0]))
        if self.peek() == "[":
            return self._expression(depth + 1)
        if self.peek() == "#":
            self.at += 1
            return self._parameters.get(self.index(depth + 1), 0.0)
        function = _UNARY.match(self.text, self.at)
        if function is not None:
            self.at = function.end()
            return self._function(function[0], depth + 1)
        found = self.text[self.at : self.at + 12] or "the end of the line"
        raise InputError(say("A number is expected, not “{found}”.", found=found))

    def index(self, depth: int = 0) -> int:
        """The number of a parameter: 1 to 5399 as in NISTIR 6556, 3.2.1."""
        index = self.value(depth)
        if abs(index - round(index)) > 1e-4 or not 1 <= round(index) <= 5399:
            raise InputError("A parameter's number must be 1 to 5399.")
        return round(index)

    def _expression(self, depth: int) -> float:
        self.at += 1
        values = [self.value(depth)]
        operations: list[str] = []
        while self.peek() != "]":
            operation = _BINARY.match(self.text, self.at)
            if operation is None:
                raise InputError("An expression lacks its “]” or an operation.")
            self.at = operation.end()
            while operations and _STRENGTH[operations[-1]] >= _STRENGTH[operation[0]]:
                _reduce(values, operations)
            operations.append(operation[0])
            values.append(self.value(depth))
        self.at += 1
        while operations:
            _reduce(values, operations)
        return values[0]

    def _function(self, name: str, depth: int) -> float:
        if self.peek() != "[":
            raise InputError(say("{name} needs a value in brackets.", name=name))
        x = self._expression(depth)
        if name == "ATAN":
            if self.peek() != "/":
                raise InputError("ATAN needs two values: ATAN[…]/[…].")
            self.at += 1
            return math.degrees(math.atan2(x, self._expression(depth)))
        return _compute(name, x)


def _reduce(values: list[float], operations: list[str]) -> None:
    right, left = values.pop(), values.pop()
    values.append(_binary(operations.pop(), left, right))


def _binary(operation: str, a: float, b: float) -> float:
    try:
        if operation in ("AND", "XOR", "OR"):
            first, second = a != 0.0, b != 0.0
            logic = {"AND": first and second, "XOR": first != second, "OR": first or second}
            return float(logic[operation])
        if operation == "MOD":
            return math.fmod(a, b) + (abs(b) if math.fmod(a, b) < 0.0 else 0.0)
        if operation == "**":
            power = a**b
            return _finite(power if isinstance(power, float) else math.nan)
        result = {"*": a * b, "+": a + b, "-": a - b}.get(operation)
        return _finite(a / b if result is None else result)
    except (ZeroDivisionError, OverflowError, ValueError):
        raise InputError(
            say("{a:g} {operation} {b:g} cannot be computed.", a=a, operation=operation, b=b)
        ) from None


def _compute(name: str, x: float) -> float:
    try:
        angle = math.radians(x)
        if name in ("SIN", "COS", "TAN"):
            return {"SIN": math.sin, "COS": math.cos, "TAN": math.tan}[name](angle)
        if name in ("ASIN", "ACOS"):
            return math.degrees(math.asin(x) if name == "ASIN" else math.acos(x))
        if name == "ROUND":
            return float(math.floor(x + 0.5) if x >= 0 else math.ceil(x - 0.5))
        if name in ("FIX", "FUP"):
            return float(math.floor(x) if name == "FIX" else math.ceil(x))
        if name == "ABS":
            return abs(x)
        return _finite({"EXP": math.exp, "LN": math.log, "SQRT": math.sqrt}[name](x))
    except (OverflowError, ValueError):
        raise InputError(say("{name}[{x:g}] cannot be computed.", name=name, x=x)) from None


def _finite(value: float) -> float:
    if not math.isfinite(value) or abs(value) > 1e12:
        raise InputError("A number is too large.")
    return value
