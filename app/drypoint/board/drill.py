"""Drill files: XNC and the older dialects of drilling machines.

Old files leave much unsaid. What is said is taken; what is not is decided by evidence (do the
holes hit pads?) where there is any, else by custom, and every such decision is a warning.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from types import MappingProxyType

from drypoint.board.drill_body import Drilling, Hit, Line, words_of
from drypoint.board.drill_numbers import MM_PER_INCH, NumberFormat, candidates, usual
from drypoint.board.drill_statements import (
    Statements,
    Tool,
    plating_of_name,
    read_comment,
    read_tool,
    read_units_line,
)
from drypoint.board.model import Hole, Slot
from drypoint.board.text_source import text_of
from drypoint.errors import InputError
from drypoint.geometry.points import Points, as_points
from drypoint.wording import say

Hits = Callable[[Points], float]
"""Evidence: the share (0..1) of the given places (mm, file frame) that lie on pads."""

SURE = 0.8
"""Share of hits from which a number format counts as proved by the pads."""
SMALLEST, LARGEST = 0.05, 30.0
"""mm; diameters beyond these are a misread unit."""
_QUIET = ("VER", "FMAT", "DETECT", "ATC", "ICI", "OM48", "TCST", "AFS", "CP,", "BLKD", "PCKPARAM")


@dataclass(frozen=True, slots=True, eq=False)
class DrillFile:
    """What a drill file holds, mm, in the file's own coordinates.

    ``units_from`` and ``format_from`` say in words where units and number format were taken from.
    """

    holes: tuple[Hole, ...]
    slots: tuple[Slot, ...]
    attributes: Mapping[str, tuple[str, ...]]
    warnings: tuple[str, ...]
    units_from: str
    format_from: str
    plated: bool | None = None
    plated_from: str = ""


@dataclass(slots=True)
class _Parsed:
    said: Statements
    lines: list[Line] = field(default_factory=list)
    digits: list[str] = field(default_factory=list)
    ended: bool = False
    incremental: bool = False
    header: bool = False


def read_drill(
    source: Path | str | bytes,
    *,
    layer_hits: Hits | None = None,
    name: str = "",
    tools: Mapping[int, float] | None = None,
    number_format: tuple[bool, int, int] | None = None,
) -> DrillFile:
    """Read a drill file.

    Parameters
    ----------
    source : Path, str or bytes
        A path, the text (with line ends) or the bytes of a file.
    layer_hits : callable, optional
        Evidence for the number format: the share of places that lie on pads.
    name : str
        What to call the file in messages.
    tools : mapping of int to float, optional
        Diameters, mm, of tools the file does not declare (from a list beside it).
    number_format : (metric, whole, decimals), optional
        As stated beside the file, for one that states none.

    Raises
    ------
    InputError
        With file and line: no drill file, units or tools missing, a line not understood.
    """
    text, name = text_of(source, name)
    parsed = _parse(text, name)
    for number, diameter in (tools or {}).items():
        parsed.said.tools.setdefault(number, Tool(diameter, True))
    if number_format is not None:
        metric, whole, decimals = number_format
        if parsed.said.metric is None:
            parsed.said.set_units(metric, "the list beside it")
        parsed.said.set_shape(whole, decimals, "the list beside it")
    metric, shape, notes = _decide(parsed, name, layer_hits)
    drilling = _drill(parsed, metric, shape, name)
    if not parsed.ended:
        notes.append("the end mark M30 is missing: the file may be cut short")
    said = parsed.said
    if said.plated is None and (by_name := plating_of_name(name)) is not None:
        said.set_plated(by_name, "the file name")
    holes, slots, sized = _results(said, drilling.hits, metric, name)
    warnings = (*said.warnings, *notes, *drilling.warnings, *sized)
    return DrillFile(
        holes,
        slots,
        MappingProxyType(said.attributes),
        tuple(dict.fromkeys(warnings)),
        said.units_from,
        said.format_from,
        said.plated,
        said.plated_from,
    )


def _parse(text: str, name: str) -> _Parsed:
    parsed = _Parsed(Statements())
    known = False
    for number, raw in enumerate(text.splitlines(), 1):
        line = raw.strip()
        if not line:
            continue
        if line.startswith((";", "(")):
            read_comment(line.lstrip(";(").rstrip(")"), parsed.said)
            continue
        line = line.split(";")[0].upper().replace(" ", "").replace("\t", "")
        if line.startswith("/"):
            continue
        known = _take(line, number, parsed, name) or known
    if not known:
        raise InputError("This is no drill file.", name, "Choose an Excellon or XNC file.")
    return parsed


def _take(line: str, number: int, parsed: _Parsed, name: str) -> bool:
    """Take one line; whether it looks like one of a drill file."""
    said = parsed.said
    if line in ("%", "M95"):
        parsed.header = False
        return False
    if line == "M48":
        parsed.header = True
        return True
    if read_units_line(line, said):
        return True
    if line.startswith("ICI"):
        parsed.incremental = line.endswith("ON")
        return True
    if line.startswith(_QUIET):
        return False
    if line.startswith("T") and (tool := read_tool(line, said)) is not None and "C" in line:
        if not parsed.header:  # a declaration in the header chooses nothing
            parsed.lines.append((number, (("T", str(tool)),)))
        return True
    words = words_of(line)
    if words is None:
        if not line.isascii() or not line.isprintable():
            raise InputError(
                "The line is no text of a drill file.", say("{name}, line {number}", name=name, number=number)
            )
        said.warnings.append(
            say("line {number}: “{line}” is not understood and left out", number=number, line=line[:20])
        )
        return False
    _note(words, parsed)
    parsed.lines.append((number, words))
    return words[0][0] in "XYTGMR"


def _note(words: tuple[tuple[str, str], ...], parsed: _Parsed) -> None:
    for letter, text in words:
        if letter in "XYIJA" and text:
            if "." in text:
                parsed.said.decimal_points = True
            else:
                parsed.digits.append(text)
        elif letter == "M" and text in ("71", "72") and parsed.said.metric is None:
            parsed.said.set_units(text == "71", say("the M{text} command", text=text))
        elif letter == "M" and text in ("30", "00", "0", "02", "2"):
            parsed.ended = parsed.ended or text in ("30", "00", "0") or len(words) == 1


def _drill(parsed: _Parsed, metric: bool, shape: NumberFormat, name: str) -> Drilling:
    drilling = Drilling(parsed.said, metric, shape, name, incremental=parsed.incremental)
    drilling.run(parsed.lines)
    return drilling


def _decide(parsed: _Parsed, name: str, hits: Hits | None) -> tuple[bool, NumberFormat, list[str]]:
    """Units, number format, and what had to be decided."""
    said = parsed.said
    notes: list[str] = []
    if said.metric is None:
        return _decide_units(parsed, name, hits)
    if said.whole is not None and said.decimals is not None and (said.keep or said.decimals):
        shape = NumberFormat(said.whole, said.decimals, said.keep or "trailing")
        if said.keep is None and parsed.digits and not _same_length(parsed.digits, shape):
            notes.append(say("which zeros are left out is not stated: read as {shape}", shape=shape))
        return said.metric, shape, notes
    if not parsed.digits:
        said.format_from = "decimal points"
        return said.metric, usual(said.metric, said.keep), notes
    if said.decimal_points:
        notes.append("some coordinates have a decimal point, some have none")
    shape, share = _best(parsed, said.metric, name, hits)
    said.format_from = _reason(share)
    notes.append(
        say(
            "number format not stated: read as {shape} ({format_from})",
            shape=shape,
            format_from=said.format_from,
        )
    )
    return said.metric, shape, notes


def _same_length(digits: Iterable[str], shape: NumberFormat) -> bool:
    return all(len(text.lstrip("+-")) == shape.whole + shape.decimals for text in digits)


def _reason(share: float | None) -> str:
    if not share:
        return "custom; no pads to check it against"
    judged = "proved by" if share >= SURE else "not confirmed by"
    return say("{judged} the pads, {share:.0%} of the holes hit one", judged=judged, share=share)


def _best(parsed: _Parsed, metric: bool, name: str, hits: Hits | None) -> tuple[NumberFormat, float | None]:
    """The format whose holes hit most pads; the customary one without evidence or on a tie."""
    shapes = list(candidates(metric, parsed.said.keep, parsed.digits)) or [usual(metric, parsed.said.keep)]
    if hits is None:
        return shapes[0], None
    best, most = shapes[0], -1.0
    for shape in shapes:
        share = _share(parsed, metric, shape, name, hits)
        if share > most + 1e-9:
            best, most = shape, share
    return best, max(most, 0.0)


def _share(parsed: _Parsed, metric: bool, shape: NumberFormat, name: str, hits: Hits) -> float:
    try:
        found = _drill(parsed, metric, shape, name).hits
    except InputError:
        return 0.0
    places = as_points([hit.path[0] for hit in found])
    return hits(places) if len(places) else 0.0


def _decide_units(parsed: _Parsed, name: str, hits: Hits | None) -> tuple[bool, NumberFormat, list[str]]:
    """Units are not stated: only the pads can tell."""
    said = parsed.said
    if hits is not None:
        tried = [(_best(parsed, metric, name, hits), metric) for metric in (True, False)]
        (shape, share), metric = max(tried, key=lambda entry: entry[0][1] or 0.0)
        others = min(entry[0][1] or 0.0 for entry in tried)
        if share is not None and share >= SURE and share - others > 0.2:
            said.units_from = said.format_from = _reason(share)
            words = "millimetres" if metric else "inches"
            return (
                metric,
                shape,
                [
                    say(
                        "units not stated: read as {words}, {shape} ({units_from})",
                        words=words,
                        shape=shape,
                        units_from=said.units_from,
                    )
                ],
            )
    raise InputError(
        "The drill file does not state its units.",
        name,
        "Export it again with METRIC or INCH in its header.",
    )


def _results(
    said: Statements, hits: list[Hit], metric: bool, name: str
) -> tuple[tuple[Hole, ...], tuple[Slot, ...], list[str]]:
    sizes, notes = _sizes(said, metric, {hit.tool for hit in hits}, name)
    holes: list[Hole] = []
    slots: list[Slot] = []
    for hit in hits:
        tool, diameter = said.tools[hit.tool], sizes[hit.tool]
        plated = said.plated if tool.plated is None else tool.plated
        if len(hit.path) == 1:
            x, y = hit.path[0]
            holes.append(Hole(x, y, diameter, plated, None, tool.function))
        else:
            slots.append(Slot(as_points(hit.path), diameter, plated))
    return tuple(holes), tuple(slots), notes


def _sizes(said: Statements, metric: bool, used: set[int], name: str) -> tuple[dict[int, float], list[str]]:
    """Diameters in mm; their unit is the file's, unless that makes them absurd and the other does not."""
    raw = {number: said.tools[number] for number in used}
    sizes = {}
    for number, tool in raw.items():
        own = metric if tool.metric is None else tool.metric
        sizes[number] = tool.diameter * (1.0 if own else MM_PER_INCH)
    odd = [size for size in sizes.values() if not SMALLEST <= size <= LARGEST]
    factor = 1.0 / MM_PER_INCH if not metric else MM_PER_INCH
    free = {number for number, tool in raw.items() if tool.metric is None}
    if odd and free and all(SMALLEST <= sizes[number] * factor <= LARGEST for number in free):
        sizes = {n: size * factor if n in free else size for n, size in sizes.items()}
        other = "inches" if metric else "millimetres"
        return sizes, [say("tool diameters only make sense in {other}: read so", other=other)]
    if any(size <= 0.0 for size in sizes.values()):
        raise InputError("A tool has no diameter.", name)
    return sizes, [say("a tool of {size:.3f} mm is out of the usual range", size=size) for size in odd]
