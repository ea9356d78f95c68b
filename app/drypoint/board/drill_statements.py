"""What a drill file says about itself: units, number format, plating, tools, attributes.

Said in the header, in comments of many habits, or not at all. Only what is said is kept here;
deciding what is not said is done with evidence elsewhere.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from drypoint.wording import say

MIL = 0.001


@dataclass(slots=True)
class Tool:
    """A drill as declared: diameter in file units (or mm / inch where the place of it says so)."""

    diameter: float
    metric: bool | None = None
    plated: bool | None = None
    function: str = ""


@dataclass(slots=True)
class Statements:
    """Everything said so far; ``None`` where nothing was."""

    metric: bool | None = None
    units_from: str = ""
    whole: int | None = None
    decimals: int | None = None
    keep: str | None = None
    format_from: str = ""
    decimal_points: bool = False
    plated: bool | None = None
    plated_from: str = ""
    attributes: dict[str, tuple[str, ...]] = field(default_factory=dict)
    tools: dict[int, Tool] = field(default_factory=dict)
    aperture_function: tuple[str, ...] = ()
    warnings: list[str] = field(default_factory=list)

    def set_units(self, metric: bool, source: str, strong: bool = True) -> None:
        """Note the units; a comment never overrules a command."""
        if self.metric is not None and self.metric != metric:
            self.warnings.append(
                say(
                    "Units are stated twice and differ ({units_from}; {source}).",
                    units_from=self.units_from,
                    source=source,
                )
            )
            if not strong:
                return
        if self.metric is None or strong:
            self.metric, self.units_from = metric, source

    def set_shape(self, whole: int, decimals: int, source: str) -> None:
        """Note the digits before and after the point."""
        if 0 < whole <= 6 and 0 < decimals <= 6 and self.whole is None:
            self.whole, self.decimals, self.format_from = whole, decimals, source

    def set_plated(self, plated: bool, source: str) -> None:
        """Note the plating of the whole file."""
        self.plated, self.plated_from = plated, source


_ATTRIBUTE = re.compile(r"#@!\s*%?\s*(T[FAD])\s*(\.?[A-Za-z0-9_.$]*)\s*,?\s*(.*)$")
_BRACED = re.compile(r"FORMAT\s*=\s*\{([^}]*)\}", re.IGNORECASE)
_FILE_FORMAT = re.compile(r"FILE_FORMAT\s*=\s*(\d)\s*[:.]\s*(\d)", re.IGNORECASE)
_FORMAT_LINE = re.compile(r"^\s*Format\s*:\s*(\d)\s*[.:]\s*(\d)\s*(/.*)?$", re.IGNORECASE)
_HOLESIZE = re.compile(
    r"T(\d+)\s+Holesize\s+\S+\s*=\s*([0-9.]+).*?\b(NON_PLATED|PLATED|OPTIONAL)?\s*(MILS|MM|INCH|INCHES)\b",
    re.IGNORECASE,
)


def read_comment(text: str, said: Statements) -> None:
    """Take what a comment states."""
    if "#@!" in text:
        _attribute(text, said)
        return
    upper = text.upper()
    if match := _BRACED.search(text):
        _braced(match.group(1), said)
    elif match := _FILE_FORMAT.search(text):
        said.set_shape(int(match[1]), int(match[2]), "a FILE_FORMAT comment")
    elif match := _FORMAT_LINE.match(text):
        said.set_shape(int(match[1]), int(match[2]), "a Format comment")
        _words((match[3] or "").upper(), said, "a Format comment")
    elif match := _HOLESIZE.search(text):
        _holesize(match, said)
    elif re.match(r"\s*TYPE\s*=\s*(NON_?PLATED|PLATED)", upper):
        said.set_plated("NON" not in upper, "a TYPE comment")
    elif re.match(r"\s*CONTENTS\s*:", upper) and "PLATED" in upper:
        said.set_plated("NON" not in upper, "a Contents comment")


def _attribute(text: str, said: Statements) -> None:
    match = _ATTRIBUTE.search(text)
    if match is None:
        return
    kind, name, rest = match.groups()
    rest = rest.rstrip("*% \t")
    values = tuple(part.strip() for part in rest.split(",")) if rest else ()
    if kind == "TF":
        said.attributes[name] = values
        if name == ".FileFunction" and values and values[0] in ("Plated", "NonPlated"):
            said.set_plated(values[0] == "Plated", "the .FileFunction attribute")
    elif kind == "TA" and name == ".AperFunction":
        said.aperture_function = values
    elif kind == "TD":
        said.aperture_function = ()


def _braced(text: str, said: Statements) -> None:
    source = "a FORMAT comment"
    if match := re.match(r"\s*(\d)\s*:\s*(\d)", text):
        said.set_shape(int(match[1]), int(match[2]), source)
    _words(text.upper(), said, source)


def _words(upper: str, said: Statements, source: str) -> None:
    if re.search(r"\b(METRIC|MM)\b", upper):
        said.set_units(True, source, strong=False)
    elif re.search(r"\bINCH(ES)?\b", upper):
        said.set_units(False, source, strong=False)
    if re.search(r"SUPPRESS TRAILING|/\s*TRAILING\b", upper):
        said.keep = said.keep or "leading"
    elif re.search(r"SUPPRESS LEADING|/\s*LEADING\b|KEEP ZEROS", upper):
        said.keep = said.keep or "trailing"


def _holesize(match: re.Match[str], said: Statements) -> None:
    number, size, plating, unit = int(match[1]), _number(match[2]), match[3], match[4].upper()
    if size is None:
        return
    metric = unit == "MM"
    if unit == "MILS":
        size *= MIL
    plated = None if not plating or plating.upper() == "OPTIONAL" else plating.upper() == "PLATED"
    said.tools.setdefault(number, Tool(size, metric, plated))


def read_units_line(line: str, said: Statements) -> bool:
    """Take ``METRIC``/``INCH`` with its options; whether the line was one."""
    parts = [part.strip() for part in line.upper().split(",")]
    if parts[0] not in ("METRIC", "INCH"):
        return False
    said.set_units(parts[0] == "METRIC", say("the {parts} line", parts=parts[0]))
    for part in parts[1:]:
        if part in ("TZ", "LZ"):
            said.keep = "trailing" if part == "TZ" else "leading"
        elif match := re.fullmatch(r"(0+)\.(0+)", part):
            said.whole = None
            said.set_shape(len(match[1]), len(match[2]), say("the {parts} line", parts=parts[0]))
    return True


_TOOL = re.compile(r"T(\d+)((?:[A-Z][+-]?[0-9.,]*)*)", re.IGNORECASE)


def read_tool(line: str, said: Statements) -> int | None:
    """Take a tool line: the number chosen, its diameter noted if it is given; None if it is none."""
    match = _TOOL.fullmatch(line)
    if match is None or len(match[1]) > 6:
        return None
    number = int(match[1])
    size = re.search(r"C([0-9.]+)", match[2], re.IGNORECASE)
    diameter = _number(size[1]) if size else None
    if diameter is not None:
        tool = Tool(diameter)
        words = said.aperture_function
        if words and words[0] in ("Plated", "NonPlated"):
            tool.plated = words[0] == "Plated"
            words = words[2:]
        tool.function = ",".join(words)
        said.tools[number] = tool
    return number


def _number(text: str) -> float | None:
    try:
        return float(text)
    except ValueError:
        return None


_FALSE = re.compile(r"npth|non[-_ ]?plated|un[-_ ]?plated|nplated", re.IGNORECASE)
_TRUE = re.compile(r"(?<![a-z])pth|plated", re.IGNORECASE)


def plating_of_name(name: str) -> bool | None:
    """Whether a file name says plated or not."""
    if _FALSE.search(name):
        return False
    return True if _TRUE.search(name) else None
