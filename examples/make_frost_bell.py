"""Write the design files of the frost bell: a small board with copper on both of its sides.

A gardener wants to be woken before the first frost. A thermistor and a resistor halve the battery's
voltage, a comparator holds that against a second divider, a transistor rings the bell. Tracks run
across on the bottom and up and down on the top, so most nets need both sides; leads are soldered on
both, and what is left are eleven holes for rivets or bits of wire.

    python examples/make_frost_bell.py [FOLDER]

writes Gerber X2 layers and XNC drill files. Standard library only. Parts and tracks below are the
design itself, drawn on a grid of 1.27 mm and seen from the component side.
"""

from __future__ import annotations

from collections.abc import Iterable

from design_files import drill_file, write

GRID = 1.27
WIDTH, HEIGHT = 36.0, 25.0
ORIGIN = (60.0, 30.0)
"""Where the lower left corner lies in the files, mm: deliberately not at zero."""
TRACK, VIA_PAD, VIA_DRILL = 0.6, 1.5, 0.8
MOUNTING, MOUNTING_DRILL = ((2, 3), (26, 4)), 2.5

PADS = {"terminal": (2.6, 1.3), "chip": (1.7, 0.8), "resistor": (1.8, 0.8), "transistor": (1.7, 0.8)}
"""Diameter of pad and drill, mm."""

PARTS = {  # kind, and the net and place of each lead
    "J1": ("terminal", "V+ 2 18, GND 2 14"),
    "J2": ("terminal", "V+ 26 18, BELL 26 14"),
    "U1": (
        "chip",
        "OUT 12 13, REF 12 11, SENSE 12 9, GND 12 7, GND 18 7, V+ 18 9, SPARE 18 11, V+ 18 13",
    ),
    "RT1": ("resistor", "V+ 6 18, SENSE 6 14"),
    "R1": ("resistor", "SENSE 6 4, GND 10 4"),
    "R2": ("resistor", "V+ 14 18, REF 14 14"),
    "R3": ("resistor", "REF 14 4, GND 18 4"),
    "R4": ("resistor", "OUT 20 2, GATE 24 2"),
    "Q1": ("transistor", "GND 22 7, GATE 22 9, BELL 22 11"),
}
BOTTOM = {  # from x to x at y
    "V+": ("2 26 18", "18 20 9"),
    "GND": ("2 22 7",),
    "SENSE": ("6 12 9",),
    "REF": ("12 14 11",),
    "OUT": ("8 12 13", "8 20 2"),
    "GATE": ("22 24 9",),
    "BELL": ("22 26 14",),
}
TOP = {  # from y to y at x
    "V+": ("13 18 18", "9 18 20"),
    "GND": ("7 14 2", "4 7 10", "4 7 18"),
    "SENSE": ("4 14 6",),
    "REF": ("4 14 14",),
    "OUT": ("2 13 8",),
    "GATE": ("2 9 24",),
    "BELL": ("11 14 22",),
}

LEGEND = (  # strokes as x y pairs in grid steps: bodies of the parts, plus and minus at the battery
    "4.6 16.9 7.4 16.9 7.4 15.1 4.6 15.1 4.6 16.9",
    "7.2 4.8 8.8 4.8 8.8 3.2 7.2 3.2 7.2 4.8",
    "12.6 16.9 15.4 16.9 15.4 15.1 12.6 15.1 12.6 16.9",
    "15.2 4.8 16.8 4.8 16.8 3.2 15.2 3.2 15.2 4.8",
    "21.2 2.8 22.8 2.8 22.8 1.2 21.2 1.2 21.2 2.8",
    "15.2 14.4 16.8 14.4 16.8 5.8 15.2 5.8 15.2 14.4",
    "3.8 18.9 4.6 18.9",
    "4.2 18.5 4.2 19.3",
    "3.8 14 4.6 14",
    "23 18.9 23.4 19.3 24.2 19.3 24.6 18.9 23 18.9",
)


def leads() -> list[tuple[str, int, str, str, int, int]]:
    """Part, number, kind, net and place of every lead."""
    found = []
    for part, (kind, text) in PARTS.items():
        for number, lead in enumerate(text.split(", "), 1):
            net, x, y = lead.split()
            found.append((part, number, kind, net, int(x), int(y)))
    return found


def tracks(top: bool) -> list[tuple[str, tuple[int, int], tuple[int, int]]]:
    """Net and ends of every track of one side."""
    found = []
    for net, runs in (TOP if top else BOTTOM).items():
        for run in runs:
            a, b, at = (int(word) for word in run.split())
            found.append((net, (at, a), (at, b)) if top else (net, (a, at), (b, at)))
    return found


def vias() -> list[tuple[str, int, int]]:
    """Ends of tracks that are no lead's place."""
    taken = {(x, y) for *_, x, y in leads()}
    ends = {(net, *end) for top in (True, False) for net, *two in tracks(top) for end in two}
    return sorted(end for end in ends if end[1:] not in taken)


def _in_file(x: float, y: float) -> tuple[float, float]:
    return x * GRID + ORIGIN[0], y * GRID + ORIGIN[1]


def _place(x: float, y: float) -> str:
    return f"X{round((x * GRID + ORIGIN[0]) * 1e6)}Y{round((y * GRID + ORIGIN[1]) * 1e6)}"


def _layer(function: str, body: Iterable[str]) -> str:
    head = [
        "G04 A two-sided example board of Drypoint*",
        f"%TF.FileFunction,{function}*%",
        "%TF.FilePolarity,Positive*%",
        "%TF.Part,Single*%",
        "%TF.ProjectId,frost-bell,46726F737442656C6C,1*%",
        "%FSLAX46Y46*%",
        "%MOMM*%",
        "G01*",
    ]
    return "\n".join([*head, *body, "M02*", ""])


def copper(top: bool) -> str:
    """A copper layer: pads and tracks."""
    body = ["%TA.AperFunction,ComponentPad*%"]
    codes = {kind: f"D{number}*" for number, kind in enumerate(PADS, 10)}
    body += [f"%AD{code[:-1]}C,{PADS[kind][0]:g}*%" for kind, code in codes.items()]
    body += ["%TD*%", "%TA.AperFunction,ViaPad*%", f"%ADD20C,{VIA_PAD:g}*%", "%TD*%"]
    body += ["%TA.AperFunction,Conductor*%", f"%ADD21C,{TRACK:g}*%", "%TD*%"]
    for part, number, kind, net, x, y in leads():
        body += [codes[kind], f"%TO.N,{net}*%", f"%TO.P,{part},{number}*%", f"{_place(x, y)}D03*", "%TD*%"]
    for net, x, y in vias():
        body += ["D20*", f"%TO.N,{net}*%", f"{_place(x, y)}D03*", "%TD*%"]
    for net, start, stop in tracks(top):
        body += ["D21*", f"%TO.N,{net}*%", f"{_place(*start)}D02*", f"{_place(*stop)}D01*", "%TD*%"]
    return _layer("Copper,L1,Top" if top else "Copper,L2,Bot", body)


def outline() -> str:
    """The edge: a rectangle."""
    w, h = WIDTH / GRID, HEIGHT / GRID
    corners = [(0.0, 0.0), (w, 0.0), (w, h), (0.0, h), (0.0, 0.0)]
    return _layer("Profile,NP", ["%ADD10C,0.1*%", "D10*", *_drawn(corners)])


def legend() -> str:
    """What is printed on the component side."""
    body = ["%ADD10C,0.15*%", "D10*"]
    for stroke in LEGEND:
        numbers = [float(word) for word in stroke.split()]
        body += _drawn(zip(numbers[::2], numbers[1::2], strict=True))
    return _layer("Legend,Top", body)


def _drawn(corners: Iterable[tuple[float, float]]) -> list[str]:
    return [f"{_place(x, y)}{'D02' if number == 0 else 'D01'}*" for number, (x, y) in enumerate(corners)]


def drills(plated: bool) -> str:
    """An XNC drill file: leads and vias, or the mounting holes."""
    holes: dict[tuple[float, str], list[tuple[float, float]]] = {}
    if plated:
        for _, _, kind, _, x, y in leads():
            holes.setdefault((PADS[kind][1], "Plated,PTH,ComponentDrill"), []).append(_in_file(x, y))
        for _, x, y in vias():
            holes.setdefault((VIA_DRILL, "Plated,PTH,ViaDrill"), []).append(_in_file(x, y))
    else:
        holes[(MOUNTING_DRILL, "NonPlated,NPTH,MechanicalDrill")] = [_in_file(*place) for place in MOUNTING]
    return drill_file(holes, plated=plated)


def files() -> dict[str, str]:
    """Every file of the design by its name."""
    return {
        "frost-bell-copper-bottom.gbr": copper(top=False),
        "frost-bell-copper-top.gbr": copper(top=True),
        "frost-bell-outline.gbr": outline(),
        "frost-bell-legend-top.gbr": legend(),
        "frost-bell-plated.drl": drills(plated=True),
        "frost-bell-unplated.drl": drills(plated=False),
    }


def main() -> None:
    """Write the files."""
    write(files(), "frost-bell")


if __name__ == "__main__":
    main()
