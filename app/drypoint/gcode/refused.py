"""Commands of ready-made programs that are refused, each with its reason."""

from __future__ import annotations

REFUSED: dict[float, str] = {
    10: "G10 changes the controller's coordinates.",
    28: "G28 goes to a place this file does not know.",
    28.1: "G28.1 changes the controller's settings.",
    30: "G30 goes to a place this file does not know.",
    30.1: "G30.1 changes the controller's settings.",
    53: "G53 moves in machine coordinates, which this file cannot know.",
    38.2: "G38.2 touches; a program to be cut must not.",
    41: "G41 (cutter radius compensation) is not supported.",
    42: "G42 (cutter radius compensation) is not supported.",
    43: "G43 (tool length) is not supported; the bit is touched off instead.",
    43.1: "G43.1 (tool length) is not supported; the bit is touched off instead.",
    18: "G18 turns arcs into another plane; only the XY plane is supported.",
    19: "G19 turns arcs into another plane; only the XY plane is supported.",
    90.1: "G90.1 (absolute arc centres) is not supported.",
    **{float(code): f"G{code} (a canned cycle) is not supported." for code in range(84, 90)},
    **{
        code: f"G{code:g} chooses other work coordinates."
        for code in (55.0, 56.0, 57.0, 58.0, 59.0, 59.1, 59.2, 59.3)
    },
}
PLAIN = "Only G0–G4, G17, G20, G21, G54, G80–G83, G90–G94, G98 and G99 are understood."
