"""Write the design files of the hive scale: the example board that comes with Drypoint.

A hobby bee-keeper weighs a hive with one load cell and watches the battery. The board holds the
load-cell amplifier, a two-step filter, an adjustable zero, a switch for the cell's supply, a
buffered battery reading and a lamp for a low battery. All parts have leads; the bottom is milled,
the few tracks on the top become link wires.

    python examples/make_hive_scale.py [FOLDER]

writes Gerber X2 layers, XNC drill files and an IPC-D-356A netlist. Standard library only. The
parts, tracks and links below are the design itself, drawn on a grid of 0.635 mm and seen from the
component side.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from design_files import drill_file, write

GRID = 0.635
WIDTH, HEIGHT, CORNER = 70.0, 50.0, 3.0
ORIGIN = (25.0, 40.0)
"""Where the lower left corner lies in the files, mm: deliberately not at zero."""
VIA_PAD, VIA_DRILL, LINK_WIDTH = 1.4, 0.8, 0.8
MOUNTING = ((4.0, 4.0), (66.0, 4.0), (4.0, 46.0), (66.0, 46.0))
MOUNTING_DRILL = 3.2

PADS = {  # width, height, drill
    "terminal": (2.6, 2.6, 1.3),
    "dual in line": (2.2, 1.4, 0.8),
    "transistor": (1.07, 1.9, 0.7),
    "diode": (2.2, 2.2, 1.0),
    "lamp": (1.7, 1.7, 0.9),
    "trimmer": (1.7, 1.7, 0.8),
    "electrolytic": (1.7, 1.7, 0.8),
    "capacitor": (1.7, 1.7, 0.8),
    "resistor": (1.8, 1.8, 0.8),
}

# reference, kind, value, and per pin "net x y" in grid steps
PARTS = (
    ("J1", "terminal", "LOAD CELL", "EXC+ 8 52, SIG- 8 44, SIG+ 8 36, GND 8 28"),
    ("J2", "terminal", "BATTERY", "BAT_IN 82 70, GND 90 70"),
    ("J3", "terminal", "LOGGER", "GND 103 56, SLEEP 103 48, BATTERY 103 40, WEIGHT 103 32, V5 103 24"),
    (
        "U1",
        "dual in line",
        "IN-AMP",
        "RG_A 36 48, IN- 36 44, IN+ 36 40, GND 36 36, REF 48 36, AMP_OUT 48 40, V5 48 44, RG_B 48 48",
    ),
    (
        "U2",
        "dual in line",
        "QUAD OP-AMP",
        "REF 68 50, REF 68 46, ZERO 68 42, V5 68 38, FILT_2 68 34, FILT_OUT 68 30, FILT_OUT 68 26, "
        "LOW_OUT 80 26, BAT_DIV 80 30, LOW_REF 80 34, GND 80 38, BAT_DIV 80 42, BAT_MON 80 46, BAT_MON 80 50",
    ),
    ("U3", "transistor", "5 V", "V5 38 70, GND 40 70, VBAT 42 70"),
    ("Q1", "transistor", "PNP", "V5 18 64, GATE 20 64, EXC+ 22 64"),
    ("D1", "diode", "1 A", "VBAT 58 70, BAT_IN 74 70"),
    ("D2", "lamp", "LOW", "GND 56 8, LED_LOW 60 8"),
    ("D3", "lamp", "ON", "GND 16 8, LED_ON 20 8"),
    ("RV1", "trimmer", "ZERO", "ZERO_HI 52 50, ZERO 56 50, ZERO_LO 60 50"),
    ("C1", "electrolytic", "47u", "VBAT 52 70, GND 48 70"),
    ("C2", "electrolytic", "10u", "V5 32 70, GND 28 70"),
    ("C3", "capacitor", "100n", "GND 38 30, V5 46 30"),
    ("C4", "capacitor", "100n", "EXC+ 18 52, GND 26 52"),
    ("C5", "capacitor", "100n", "IN- 32 44, IN+ 32 36"),
    ("C6", "capacitor", "10n", "IN- 28 48, GND 20 48"),
    ("C7", "capacitor", "1u", "FILT_1 56 26, FILT_OUT 64 26"),
    ("C8", "capacitor", "470n", "FILT_2 64 20, GND 56 20"),
    ("C9", "capacitor", "100n", "GND 90 20, WEIGHT 90 28"),
    ("C10", "capacitor", "100n", "BAT_DIV 94 50, GND 94 42"),
    ("C11", "capacitor", "100n", "V5 70 56, GND 78 56"),
    ("C12", "capacitor", "10n", "IN+ 28 30, GND 20 30"),
    ("R1", "resistor", "100R", "RG_A 36 52, RG_B 48 52"),
    ("R2", "resistor", "100k", "VBAT 90 62, BAT_DIV 90 50"),
    ("R3", "resistor", "33k", "BAT_DIV 90 45, GND 90 33"),
    ("R4", "resistor", "10k", "V5 40 58, ZERO_HI 52 58"),
    ("R5", "resistor", "10k", "ZERO_LO 64 50, GND 64 62"),
    ("R6", "resistor", "10k", "AMP_OUT 52 40, FILT_1 64 40"),
    ("R7", "resistor", "10k", "FILT_1 52 32, FILT_2 64 32"),
    ("R8", "resistor", "100R", "FILT_OUT 86 20, WEIGHT 86 32"),
    ("R9", "resistor", "100R", "BAT_MON 86 50, BATTERY 86 38"),
    ("R10", "resistor", "1k", "SIG+ 16 36, IN+ 28 36"),
    ("R11", "resistor", "1k", "SIG- 16 44, IN- 28 44"),
    ("R12", "resistor", "47k", "V5 26 64, GATE 38 64"),
    ("R13", "resistor", "4k7", "GATE 44 64, SLEEP 56 64"),
    ("R14", "resistor", "22k", "V5 66 14, LOW_REF 78 14"),
    ("R15", "resistor", "10k", "LOW_REF 82 14, GND 94 14"),
    ("R16", "resistor", "1k", "LOW_OUT 78 8, LED_LOW 66 8"),
    ("R17", "resistor", "1k", "V5 38 8, LED_ON 26 8"),
)

# net: width in mm and the corners of each track, grid steps
TRACKS = {
    "AMP_OUT": ((0.5, "48,40 52,40"),),
    "BATTERY": ((0.5, "103,40 100,37 92,37 91,38 86,38"),),
    "BAT_DIV": (
        (0.5, "80,30 77,33 77,39 80,42"),
        (0.5, "80,42 83,45 90,45"),
        (0.5, "90,45 90,50"),
        (0.5, "90,50 94,50"),
    ),
    "BAT_IN": ((1.5, "82,70 74,70"),),
    "BAT_MON": (
        (0.5, "80,46 80,50"),
        (0.5, "80,50 86,50"),
    ),
    "EXC+": (
        (1.5, "8,52 18,52"),
        (0.5, "18,52 21,52 24,55 27,55 28,56 28,59 26,61 25,61 22,64"),
    ),
    "FILT_1": (
        (0.5, "56,26 56,28 52,32"),
        (0.5, "53,31 62,40 64,40"),
    ),
    "FILT_2": (
        (0.5, "68,34 66,32 64,32"),
        (0.5, "64,32 61,29 61,23 64,20"),
    ),
    "FILT_OUT": (
        (0.5, "68,30 68,26"),
        (0.5, "68,26 64,26"),
        (0.5, "68,26 68,20"),
    ),
    "GATE": (
        (0.5, "20,64 20,62 19,61 19,60"),
        (0.5, "34,60 38,64"),
        (0.5, "38,64 44,64"),
    ),
    "GND": (
        (1.5, "8,28 10,30 20,30"),
        (1.5, "20,30 20,48"),
        (1.5, "20,48 22,48 26,52"),
        (1.2, "20,30 23,27 35,27 38,30"),
        (1.5, "38,30 36,32 36,36"),
        (1.5, "16,30 16,8"),
        (1.5, "38,30 39,30 49,20 56,20"),
        (1.5, "56,20 56,8"),
        (0.5, "26,52 29,52 38,61 45,61 48,64 48,70"),
        (0.5, "48,67 41,67 40,68 40,70"),
        (0.5, "40,70 40,72 39,73 31,73 28,70"),
        (0.8, "48,67 59,67 64,62"),
        (0.5, "64,62 72,62 78,56"),
        (1.5, "78,56 103,56"),
        (1.2, "93,56 93,67 90,70"),
        (0.5, "103,56 106,53 106,46 104,44 96,44 94,42"),
        (0.8, "94,42 84,42 80,38"),
        (0.8, "81,39 85,35 88,35 90,33"),
        (0.5, "104,44 106,42 106,30 103,27 101,27 96,22 92,22 90,20"),
        (1.5, "94,22 94,14"),
    ),
    "IN+": (
        (0.5, "36,40 32,36"),
        (0.5, "32,36 28,36"),
        (0.5, "29,36 29,31 28,30"),
    ),
    "IN-": (
        (0.5, "36,44 32,44"),
        (0.5, "32,44 28,44"),
        (0.5, "28,44 28,48"),
    ),
    "LED_LOW": ((0.5, "60,8 66,8"),),
    "LED_ON": ((0.5, "20,8 26,8"),),
    "LOW_OUT": ((0.5, "80,26 74,20 74,13 78,9 78,8"),),
    "LOW_REF": (
        (0.5, "80,34 84,30 84,29 85,28 85,26 78,19 78,14"),
        (0.5, "78,14 82,14"),
    ),
    "REF": (
        (0.5, "48,36 52,36 56,40 56,41 62,47 67,47 68,46"),
        (0.5, "67,47 67,49 68,50"),
    ),
    "RG_A": ((0.5, "36,48 36,52"),),
    "RG_B": ((0.5, "48,48 48,52"),),
    "SIG+": ((0.5, "8,36 16,36"),),
    "SIG-": ((0.5, "8,44 16,44"),),
    "SLEEP": ((0.5, "103,48 98,53 76,53 70,59 61,59 56,64"),),
    "V5": (
        (0.8, "103,24 103,19 89,5 75,5 66,14"),
        (1.0, "66,14 57,23 53,23 46,30"),
        (0.8, "46,30 45,31 45,41 48,44"),
        (0.8, "48,44 40,52 40,58"),
        (0.8, "57,23 59,25 59,31 66,38 68,38"),
        (0.8, "68,38 71,41 71,51 70,52 70,56"),
        (1.2, "31,58 30,59 30,60 26,64"),
        (0.5, "26,64 26,65 31,70 32,70"),
        (0.5, "32,70 38,70"),
        (0.5, "26,65 23,68 20,68 18,66 18,64"),
        (0.8, "71,9 67,5 41,5 38,8"),
    ),
    "VBAT": (
        (0.5, "42,70 43,70 46,73 49,73 52,70"),
        (1.5, "52,70 58,70"),
        (1.2, "58,70 61,70 67,64 86,64 88,62 90,62"),
    ),
    "WEIGHT": (
        (0.5, "103,32 96,25 93,25 90,28"),
        (0.5, "90,28 89,28 86,31 86,32"),
    ),
    "ZERO": (
        (0.5, "68,42 67,42 66,43 61,43"),
        (0.5, "54,43 54,48 56,50"),
    ),
    "ZERO_HI": ((0.5, "52,50 52,58"),),
    "ZERO_LO": ((0.5, "60,50 64,50"),),
}

# the top copper: straight runs that a wire can replace
LINKS = (
    ("FILT_OUT", (68, 20), (86, 20)),
    ("GATE", (19, 60), (34, 60)),
    ("V5", (40, 58), (31, 58)),
    ("ZERO", (61, 43), (54, 43)),
)

# strokes of letters on a field 4 wide and 6 high: corners as digit pairs, strokes parted by blanks
_ROUND = "100105163645413010"
GLYPHS = {
    "A": "0004264440 0242", "B": "00063645443303 3342413000", "C": "4536160501103041",
    "D": "00062644422000", "E": "46060040 0333", "F": "460600 0333", "G": "45361605011030414323",
    "H": "0006 4046 0343", "I": "2026", "J": "4641301001", "K": "0006 460340", "L": "060040",
    "M": "0006234640", "N": "00064046", "O": _ROUND, "P": "00063645443303", "Q": _ROUND + " 2240",
    "R": "00063645443303 2340", "S": "453616050413334241301001", "T": "0646 2026", "U": "060110304146",
    "V": "062046", "W": "0610233046", "X": "0046 0640", "Y": "062346 2023", "Z": "06460040",
    "0": _ROUND, "1": "152620", "2": "05163645440040", "3": "0516364544334241301001 1333",
    "4": "30360242", "5": "460603334241301001", "6": "4536160501103041423303", "7": "064610",
    "8": "13040516364544331302011030414233", "9": "4313040516364541301001", "+": "0343 2125", "-": "0343",
}  # fmt: skip
GLYPH_STEP = 5.5

TEXTS = (  # text, middle x and y, height (mm), turned a quarter
    ("HIVE SCALE", 22.0, 12.6, 2.4, False),
    ("LOAD CELL", 8.1, 25.4, 1.2, True),
    ("BATTERY", 54.6, 47.7, 1.2, False),
    ("LOGGER", 62.4, 25.4, 1.2, True),
    ("E+", 2.3, 33.02, 1.2, False), ("S-", 2.3, 27.94, 1.2, False),
    ("S+", 2.3, 22.86, 1.2, False), ("E-", 2.3, 17.78, 1.2, False),
    ("+", 52.07, 41.7, 1.4, False), ("-", 57.15, 41.7, 1.4, False),
    ("G", 68.0, 35.56, 1.2, False), ("S", 68.0, 30.48, 1.2, False), ("B", 68.0, 25.4, 1.2, False),
    ("W", 68.0, 20.32, 1.2, False), ("5V", 68.0, 15.24, 1.1, False),
    ("ON", 11.43, 8.7, 1.1, False), ("LOW", 36.83, 8.7, 1.1, False),
)  # fmt: skip
BODIES = {  # of the parts that are more than their pins show
    "J1": (0.8, 15.24, 9.2, 35.56),
    "J2": (49.53, 40.4, 59.69, 48.9),
    "J3": (61.2, 12.7, 69.3, 38.1),
}
LINE, TEXT_LINE = 0.15, 0.15


@dataclass(frozen=True)
class Pin:
    """One lead of a part and its hole."""

    part: str
    number: int
    net: str
    x: float
    y: float
    kind: str


def pins() -> Iterator[Pin]:
    """Every lead of every part."""
    for part, kind, _, leads in PARTS:
        for number, lead in enumerate(leads.split(", "), 1):
            net, x, y = lead.split()
            yield Pin(part, number, net, int(x) * GRID, int(y) * GRID, kind)


def tracks() -> Iterator[tuple[str, float, list[tuple[float, float]]]]:
    """Net, width and corners of every track of the bottom."""
    for net, runs in TRACKS.items():
        for width, corners in runs:
            steps = (corner.split(",") for corner in corners.split())
            yield net, width, [(int(x) * GRID, int(y) * GRID) for x, y in steps]


def links() -> Iterator[tuple[str, tuple[float, float], tuple[float, float]]]:
    """Net and ends of every run of the top."""
    for net, start, stop in LINKS:
        yield net, (start[0] * GRID, start[1] * GRID), (stop[0] * GRID, stop[1] * GRID)


def vias() -> list[tuple[str, float, float]]:
    """Ends of links that are no lead's hole."""
    taken = {(pin.x, pin.y) for pin in pins()}
    ends = {(net, *end) for net, start, stop in links() for end in (start, stop)}
    return sorted(end for end in ends if end[1:] not in taken)


class GerberFile:
    """Lines of one layer; apertures are numbered as they are first used."""

    def __init__(self, function: str, polarity: str = "Positive") -> None:
        self._head = [
            "G04 The example board of Drypoint*",
            f"%TF.FileFunction,{function}*%",
            f"%TF.FilePolarity,{polarity}*%",
            "%TF.Part,Single*%",
            "%TF.ProjectId,hive-scale,48697665205363616c65,1*%",
            "%FSLAX46Y46*%",
            "%MOMM*%",
        ]
        self._body = ["G75*", "G01*"]
        self._apertures: dict[tuple[str, str], int] = {}
        self._attributes: tuple[str, ...] = ()

    def aperture(self, shape: str, function: str) -> None:
        """Choose an aperture such as ``C,0.5`` with an aperture function."""
        key = (shape, function)
        if key not in self._apertures:
            self._apertures[key] = 10 + len(self._apertures)
            definition = f"%ADD{self._apertures[key]}{shape}*%"
            self._head += [f"%TA.AperFunction,{function}*%", definition, "%TD*%"]
        self._body.append(f"D{self._apertures[key]}*")

    def attributes(self, *values: str) -> None:
        """Set the object attributes, such as ``.N,GND``."""
        if values != self._attributes:
            self._body += ["%TD*%"] * bool(self._attributes) + [f"%TO{value}*%" for value in values]
            self._attributes = values

    def flash(self, x: float, y: float) -> None:
        """The aperture once."""
        self._body.append(f"{_place(x, y)}D03*")

    def draw(self, corners: Iterable[tuple[float, float]]) -> None:
        """The aperture along straight lines."""
        for number, (x, y) in enumerate(corners):
            self._body.append(f"{_place(x, y)}{'D02' if number == 0 else 'D01'}*")

    def arc(self, x: float, y: float, i: float, j: float) -> None:
        """The aperture along an anticlockwise arc from where it is."""
        self._body += ["G03*", f"{_place(x, y)}I{round(i * 1e6)}J{round(j * 1e6)}D01*", "G01*"]

    def text(self) -> str:
        """The file."""
        return "\n".join([*self._head, *self._body, "M02*", ""])


def _in_file(x: float, y: float) -> tuple[float, float]:
    return x + ORIGIN[0], y + ORIGIN[1]


def _place(x: float, y: float) -> str:
    return f"X{round((x + ORIGIN[0]) * 1e6)}Y{round((y + ORIGIN[1]) * 1e6)}"


def copper(bottom: bool) -> str:
    """A copper layer: pads on both sides, tracks below, links above."""
    gerber = GerberFile("Copper,L2,Bot" if bottom else "Copper,L1,Top")
    for pin in pins():
        width, height, _ = PADS[pin.kind]
        shape = f"C,{width:g}" if width == height else f"O,{width:g}X{height:g}"
        if pin.kind == "dual in line" and pin.number == 1:
            shape = f"R,{width - 0.5:g}X{height:g}"
        gerber.aperture(shape, "ComponentPad")
        gerber.attributes(f".N,{pin.net}", f".P,{pin.part},{pin.number}")
        gerber.flash(pin.x, pin.y)
    for net, x, y in vias():
        gerber.aperture(f"C,{VIA_PAD:g}", "ViaPad")
        gerber.attributes(f".N,{net}")
        gerber.flash(x, y)
    runs = tracks() if bottom else ((net, LINK_WIDTH, [start, stop]) for net, start, stop in links())
    for net, width, corners in runs:
        gerber.aperture(f"C,{width:g}", "Conductor")
        gerber.attributes(f".N,{net}")
        gerber.draw(corners)
    return gerber.text()


def outline() -> str:
    """The edge: four lines and four arcs."""
    gerber = GerberFile("Profile,NP")
    gerber.aperture("C,0.1", "Profile")
    r, w, h = CORNER, WIDTH, HEIGHT
    gerber.draw([(r, 0), (w - r, 0)])
    gerber.arc(w, r, 0, r)
    gerber.draw([(w, r), (w, h - r)])
    gerber.arc(w - r, h, -r, 0)
    gerber.draw([(w - r, h), (r, h)])
    gerber.arc(0, h - r, 0, -r)
    gerber.draw([(0, h - r), (0, r)])
    gerber.arc(r, 0, r, 0)
    return gerber.text()


def strokes(
    text: str, x: float, y: float, height: float, turned: bool
) -> Iterator[list[tuple[float, float]]]:
    """The strokes of a text round its middle, mm."""
    scale = height / 6.0
    left = -(len(text) * GLYPH_STEP - (GLYPH_STEP - 4.0)) / 2.0
    for number, letter in enumerate(text):
        for stroke in GLYPHS.get(letter, "").split():
            points = []
            for a, b in zip(stroke[::2], stroke[1::2], strict=True):
                u, v = (left + number * GLYPH_STEP + int(a)) * scale, (int(b) - 3.0) * scale
                points.append((x - v, y + u) if turned else (x + u, y + v))
            yield points


def box(x0: float, y0: float, x1: float, y1: float) -> list[tuple[float, float]]:
    """A closed rectangle."""
    return [(x0, y0), (x1, y0), (x1, y1), (x0, y1), (x0, y0)]


def body(part: str, kind: str, leads: list[Pin]) -> list[list[tuple[float, float]]]:
    """The drawn lines of a part."""
    x0, x1 = min(p.x for p in leads), max(p.x for p in leads)
    y0, y1 = min(p.y for p in leads), max(p.y for p in leads)
    if part in BODIES:
        return [box(*BODIES[part])]
    if kind == "dual in line":
        mid = (x0 + x1) / 2
        notch = [(mid - 1, y1 + 1.7), (mid - 0.6, y1 + 1.0), (mid + 0.6, y1 + 1.0), (mid + 1, y1 + 1.7)]
        return [box(x0 + 1.5, y0 - 1.7, x1 - 1.5, y1 + 1.7), notch]
    if kind in ("resistor", "capacitor", "diode"):
        half, inset = (1.2, 1.5) if kind == "diode" else (1.1, 1.15)
        if y0 == y1:
            lines = [box(x0 + inset, y0 - half, x1 - inset, y0 + half)]
        else:
            lines = [box(x0 - half, y0 + inset, x0 + half, y1 - inset)]
        if kind == "diode":
            lines.append([(x0 + inset + 0.8, y0 - half), (x0 + inset + 0.8, y0 + half)])
        return lines
    if kind in ("electrolytic", "lamp"):
        mid, r, c = (x0 + x1) / 2, 2.6, 1.08
        ring = [(r, c), (c, r), (-c, r), (-r, c), (-r, -c), (-c, -r), (c, -r), (r, -c), (r, c)]
        return [[(mid + u, y0 + v) for u, v in ring]]
    if kind == "trimmer":
        return [box(x0 - 2.2, y0 - 1.3, x1 + 2.2, y0 + 2.4)]
    return [box(x0 - 1.1, y0 - 1.4, x1 + 1.1, y1 + 1.4)]


def label(part: str, kind: str, leads: list[Pin]) -> tuple[str, float, float, float, bool] | None:
    """Where a part's reference is written."""
    x = (leads[0].x + leads[-1].x) / 2
    y = (leads[0].y + leads[-1].y) / 2
    if part in BODIES:
        return None
    if kind in ("resistor", "capacitor", "diode"):
        return part, x, y, 1.0, leads[0].x == leads[-1].x
    if kind == "dual in line":
        return part, sum(p.x for p in leads) / len(leads), sum(p.y for p in leads) / len(leads), 1.6, True
    above = {"transistor": 2.3, "trimmer": 1.85, "electrolytic": 3.35, "lamp": 0.0}[kind]
    return (part, x, y + above, 0.9, False) if kind != "lamp" else None


def legend() -> str:
    """Outlines, references and a patch of honeycomb."""
    gerber = GerberFile("Legend,Top")
    gerber.aperture(f"C,{LINE:g}", "NonConductor")
    texts = list(TEXTS)
    every = list(pins())
    for part, kind, _, _ in PARTS:
        leads = [pin for pin in every if pin.part == part]
        for line in body(part, kind, leads):
            gerber.draw(line)
        if (written := label(part, kind, leads)) is not None:
            texts.append(written)
    for column, row in ((0, 0), (0, 1), (1, 0), (2, 0), (2, 1)):
        gerber.draw(_cell(27.4 + column * 1.95, 6.3 + row * 2.25 + (column % 2) * 1.125, 1.3))
    for text in texts:
        for stroke in strokes(*text):
            gerber.draw(stroke)
    return gerber.text()


def _cell(x: float, y: float, r: float) -> list[tuple[float, float]]:
    half = r * 3**0.5 / 2
    ring = [(r, 0.0), (r / 2, half), (-r / 2, half), (-r, 0.0), (-r / 2, -half), (r / 2, -half), (r, 0.0)]
    return [(x + u, y + v) for u, v in ring]


def drills(plated: bool) -> str:
    """An XNC drill file: leads and link holes, or the mounting holes."""
    holes: dict[tuple[float, str], list[tuple[float, float]]] = {}
    if plated:
        for pin in pins():
            key = (PADS[pin.kind][2], "Plated,PTH,ComponentDrill")
            holes.setdefault(key, []).append(_in_file(pin.x, pin.y))
        for _, x, y in vias():
            holes.setdefault((VIA_DRILL, "Plated,PTH,ViaDrill"), []).append(_in_file(x, y))
    else:
        holes[(MOUNTING_DRILL, "NonPlated,NPTH,MechanicalDrill")] = [_in_file(*place) for place in MOUNTING]
    return drill_file(holes, plated=plated)


def netlist() -> str:
    """IPC-D-356A in steps of 0.001 mm: the net of every hole."""
    lines = ["C  The example board of Drypoint", "P  JOB   HIVE-SCALE"]
    lines += ["P  VER   IPC-D-356A", "P  UNITS CUST 1"]
    every = [(p.net, p.part, str(p.number), *PADS[p.kind], p.x, p.y) for p in pins()]
    every += [(net, "VIA", "", VIA_PAD, VIA_PAD, VIA_DRILL, x, y) for net, x, y in vias()]
    for net, part, number, width, height, drill, x, y in every:
        across, along = round(width * 1000), round(height * 1000) * (width != height)
        lines.append(
            f"317{net:<14}   {part:<6}-{number:<4} D{round(drill * 1000):04d}PA00"
            f"X{round((x + ORIGIN[0]) * 1000):+07d}Y{round((y + ORIGIN[1]) * 1000):+07d}"
            f"X{across:04d}Y{along:04d}R000 S0"
        )
    return "\n".join([*lines, "999", ""])


def files() -> dict[str, str]:
    """Every file of the design by its name."""
    return {
        "hive-scale-copper-bottom.gbr": copper(bottom=True),
        "hive-scale-copper-top.gbr": copper(bottom=False),
        "hive-scale-outline.gbr": outline(),
        "hive-scale-legend-top.gbr": legend(),
        "hive-scale-plated.drl": drills(plated=True),
        "hive-scale-unplated.drl": drills(plated=False),
        "hive-scale-netlist.ipc": netlist(),
    }


def main() -> None:
    """Write the files."""
    write(files(), "hive-scale")


if __name__ == "__main__":
    main()
