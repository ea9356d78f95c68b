"""Sketches of settings where a picture says more than words; each is ours and drawn, not stored."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from PySide6.QtCore import QCoreApplication

from drypoint.ui.parts.pencil import HIGH, TOP, WIDE, Pencil

Draw = Callable[[Pencil], None]


def _say(text: str) -> str:
    return QCoreApplication.translate("Sketches", text)


def groove_width(p: Pencil) -> None:
    """Width of a groove at the copper's top, made by its depth."""
    p.ground()
    p.vbit(100, TOP + 24)
    p.measure(88, TOP - 8, 112, TOP - 8)
    p.measure(190, TOP, 190, TOP + 24)
    p.line((104, TOP + 24), (196, TOP + 24), width=1, dashed=True)
    p.word(120, TOP - 8, _say("groove width"), strong=True)
    p.word(198, TOP + 22, _say("depth"))


def bite(p: Pencil) -> None:
    """A gap narrower than the bit: the groove eats into both sides."""
    t = p.tokens
    p.box(0, 0, WIDE, HIGH, t.blank)
    p.box(0, 8, WIDE, 44, t.net)
    p.box(0, 62, WIDE, 96, t.net)
    p.box(0, 38, WIDE, 68, t.panel)
    for y in (44.0, 62.0):
        p.line((0, y), (WIDE, y), width=1, dashed=True)
    p.measure(60, 38, 60, 44)
    p.measure(60, 62, 60, 68)
    p.word(70, 34, _say("bite"), strong=True)
    p.word(112, 57, _say("gap as designed"))


def least_trace(p: Pencil) -> None:
    """What grooves at both sides leave of a trace."""
    p.ground()
    for x in (84.0, 150.0):
        p.notch(x, TOP + 22, 8, 60)
    p.measure(101, TOP - 8, 133, TOP - 8)
    p.word(44, TOP - 16, _say("copper left of the trace"), strong=True)


def tabs(p: Pencil) -> None:
    """Bridges between board and waste."""
    t = p.tokens
    p.box(0, 0, WIDE, HIGH, t.blank)
    p.box(44, 14, 228, 90, t.panel)
    p.box(52, 22, 220, 82, t.blank)
    for x0, y0, x1, y1 in ((120, 14, 142, 22), (120, 82, 142, 90), (44, 44, 52, 60), (220, 44, 228, 60)):
        p.box(x0, y0, x1, y1, t.net)
    p.word(88, 56, _say("board"), strong=True)
    p.word(150, 20, _say("tab"), strong=True)


def _tab(p: Pencil) -> None:
    """The floor of the outline, seen along it: a tab stands in it."""
    t = p.tokens
    p.box(0, 16, WIDE, 84, t.blank)
    p.box(0, 16, 100, 84, t.panel)
    p.box(172, 16, WIDE, 84, t.panel)
    p.box(100, 16, 172, 50, t.panel)
    p.line((0, 84), (100, 84), (100, 50), (172, 50), (172, 84), (WIDE, 84))
    p.line((0, 16), (WIDE, 16), width=1, dashed=True)


def tab_width(p: Pencil) -> None:
    """Length of a tab along the outline."""
    _tab(p)
    p.measure(100, 40, 172, 40)
    p.word(112, 32, _say("length"), strong=True)


def tab_height(p: Pencil) -> None:
    """Thickness of a tab."""
    _tab(p)
    p.measure(184, 50, 184, 84)
    p.word(192, 72, _say("thickness"), strong=True)


def through(p: Pencil) -> None:
    """A drill that goes through the laminate into the backing."""
    t = p.tokens
    p.ground(78)
    p.box(0, 78, WIDE, HIGH, t.sunken)
    p.drill(50, 94, 13)
    p.line((64, 94), (110, 94), width=1, dashed=True)
    p.measure(102, 78, 102, 94)
    p.word(112, 91, _say("into the backing"), strong=True)
    p.word(112, 72, _say("laminate"))


def backing(p: Pencil) -> None:
    """Laminate, backing and bed."""
    t = p.tokens
    p.ground(66)
    p.box(0, 66, WIDE, 92, t.sunken)
    p.box(0, 92, WIDE, HIGH, t.edge)
    p.drill(70, 76, 10)
    p.measure(142, 66, 142, 92)
    p.word(152, 83, _say("backing"), strong=True)


def marks(p: Pencil) -> None:
    """Reference holes in the waste round the board."""
    t = p.tokens
    p.box(12, 4, 260, 100, t.blank)
    p.line((72, 22), (200, 22), (200, 82), (72, 82), (72, 22), colour=t.ink)
    for x, y in ((38, 22), (234, 22), (38, 82)):
        p.ring(x, y, 7, colour=t.reference)
        p.line((x - 11, y), (x + 11, y), colour=t.reference, width=1)
        p.line((x, y - 11), (x, y + 11), colour=t.reference, width=1)
    p.word(112, 56, _say("board"))
    p.word(112, 97, _say("reference holes"), strong=True)


def margin(p: Pencil) -> None:
    """Waste between board and edge of the blank."""
    t = p.tokens
    p.box(12, 4, 260, 100, t.blank)
    p.line((72, 24), (200, 24), (200, 80), (72, 80), (72, 24), colour=t.ink)
    p.measure(12, 52, 72, 52)
    p.word(22, 46, _say("waste"), strong=True)
    p.word(116, 56, _say("board"))


def clamp_margin(p: Pencil) -> None:
    """A clamp with the ground around it that the bit must not enter."""
    t = p.tokens
    p.box(60, 4, 260, 100, t.blank)
    p.box(26, 34, 92, 70, t.edge)
    p.line((8, 16), (110, 16), (110, 88), (8, 88), (8, 16), dashed=True)
    p.line((210, 4), (210, 100), colour=t.ink)
    p.measure(92, 52, 110, 52)
    p.word(118, 44, _say("keep away"), strong=True)
    p.word(204, 94, _say("outline"), right=True)


def place(p: Pencil) -> None:
    """Where the board lies on the blank."""
    t = p.tokens
    p.box(40, 4, 250, 92, t.blank)
    p.line((104, 14), (232, 14), (232, 62), (104, 62), (104, 14), colour=t.ink)
    p.measure(40, 78, 104, 78)
    p.measure(118, 62, 118, 92)
    p.word(66, 74, "x", strong=True)
    p.word(126, 82, "y", strong=True)
    p.word(148, 42, _say("board"))


def tip(p: Pencil) -> None:
    """The flat end of a V-bit."""
    p.vbit(100, 82, 22, 34, 6)
    p.measure(89, 92, 111, 92)
    p.word(122, 96, _say("width of the tip"), strong=True)


def angle(p: Pencil) -> None:
    """The angle between both flanks."""
    p.line((100, 96), (66, 8))
    p.line((100, 96), (134, 8))
    arc = ((80.5, 45.4), (90, 42.3), (100, 41), (110, 42.3), (119.5, 45.4))
    p.line(*arc, colour=p.tokens.copper)
    p.word(132, 48, _say("included angle"), strong=True)


def runout(p: Pencil) -> None:
    """A point that circles cuts wider than it is."""
    p.ground()
    p.notch(100, TOP + 22, 22, 40)
    for x in (92.0, 108.0):
        p.area([(x - 3, TOP + 22), (x + 3, TOP + 22), (x + 26, 2), (x - 26, 2)], edge=p.tokens.ink2)
    p.measure(92, TOP + 32, 108, TOP + 32)
    p.word(120, TOP + 36, _say("circle of the tip"), strong=True)


def clearance(p: Pencil) -> None:
    """Height of moves across."""
    t = p.tokens
    p.ground(92)
    p.notch(40, TOP + 20)
    p.notch(220, TOP + 20)
    p.line((40, TOP), (40, 18), (220, 18), (220, TOP), dashed=True)
    p.box(128, TOP - 12, 172, TOP, t.edge)
    p.measure(72, 18, 72, TOP)
    p.word(80, 36, _say("height"), strong=True)
    p.word(176, 42, _say("clamp"))


def deepest(p: Pencil) -> None:
    """The depth below which no pass goes."""
    p.ground()
    for x, deep in ((60.0, 18.0), (120.0, 26.0)):
        p.notch(x, TOP + deep)
    p.line((0, TOP + 38), (WIDE, TOP + 38), colour=p.tokens.copper, dashed=True)
    p.measure(186, TOP, 186, TOP + 38)
    p.word(194, TOP + 30, _say("deepest"), strong=True)


def play_z(p: Pencil) -> None:
    """Under load the bit stands higher than it was told."""
    p.ground()
    p.vbit(90, TOP + 14, 8)
    p.line((40, TOP + 30), (200, TOP + 30), dashed=True, width=1)
    p.measure(122, TOP + 14, 122, TOP + 30)
    p.word(130, TOP + 26, _say("lifted by"), strong=True)
    p.word(130, TOP + 44, _say("depth asked for"))


def join(p: Pencil) -> None:
    """Two doubtful places along a groove, cut in one go."""
    t = p.tokens
    p.line((12, 52), (260, 52), colour=t.off, width=2)
    for x0, x1 in ((40.0, 100.0), (160.0, 226.0)):
        p.line((x0, 52), (x1, 52), colour=t.ink, width=6)
    p.measure(100, 36, 160, 36)
    p.word(96, 26, _say("nearer: one cut"), strong=True)
    p.word(42, 78, _say("to be cut again"))


def touch(p: Pencil) -> None:
    """Where a touch begins and where it is given up."""
    p.ground()
    p.area([(56, 14), (62, 14), (74, 2), (44, 2)], edge=p.tokens.ink2)
    p.measure(59, 18, 59, TOP)
    p.measure(92, TOP, 92, TOP + 42)
    p.word(76, 30, _say("starts above"), strong=True)
    p.word(102, TOP + 36, _say("given up below"), strong=True)


def gap(p: Pencil) -> None:
    """Waste between copies of the board."""
    t = p.tokens
    p.box(8, 6, 264, 98, t.blank)
    for x in (24.0, 154.0):
        p.line((x, 20), (x + 94, 20), (x + 94, 84), (x, 84), (x, 20), colour=t.ink)
    p.measure(118, 52, 154, 52)
    p.word(124, 44, _say("gap"), strong=True)


def play_xy(p: Pencil) -> None:
    """The screw turns, the bed stays, until the play is used up."""
    t = p.tokens
    p.box(20, 40, 252, 52, t.edge)
    p.box(100, 26, 172, 66, t.net)
    p.box(108, 38, 164, 54, t.panel)
    p.box(108, 38, 152, 54, t.ink2)
    p.measure(152, 76, 164, 76)
    p.word(172, 80, _say("play"), strong=True)


def slender(p: Pencil) -> None:
    """Depth over diameter of a drill."""
    p.ground(92)
    p.drill(90, 98, 8)
    p.measure(82, 36, 98, 36)
    p.measure(116, TOP, 116, 92)
    p.word(106, 36, _say("diameter"))
    p.word(124, 76, _say("depth"), strong=True)


SKETCHES: Mapping[str, Draw] = MappingProxyType(
    {
        "cuts.depth": groove_width,
        "cuts.bite": bite,
        "cuts.least_trace": least_trace,
        "cuts.tabs": tabs,
        "cuts.tab_width": tab_width,
        "cuts.tab_height": tab_height,
        "cuts.through": through,
        "cuts.marks": marks,
        "blank.margin": margin,
        "blank.clamp_margin": clamp_margin,
        "blank.backing": backing,
        "blank.board_x": place,
        "blank.board_y": place,
        "bits.vbit.tip": tip,
        "bits.vbit.angle": angle,
        "bits.vbit.runout": runout,
        "machine.clearance": clearance,
        "machine.play": play_xy,
        "passes.deepest": deepest,
        "passes.play": play_z,
        "passes.join": join,
        "surface.highest": touch,
        "surface.lowest": touch,
        "copies.gap": gap,
        "holes.slender": slender,
    }
)
"""Sketches by "section.field"."""
