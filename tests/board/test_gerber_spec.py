"""Worked examples of The Gerber Layer Format Specification, revision 2021.02 (Ucamco).

The coordinates and parameters are the specification's, its section beside each; the files are typed
anew. Areas are computed from those dimensions, most in closed form. Section numbers of apertures and
macros are from memory.
"""
# ruff: noqa: E501 - tables of one case a line

from __future__ import annotations

import math

import pytest
from shapely.geometry.base import BaseGeometry

from drypoint.board.gerber import read_gerber
from drypoint.board.gerber_arcs import CHORD_TOLERANCE

PI = math.pi


def shape_of(text: str) -> BaseGeometry:
    shape = read_gerber(text).shape
    assert shape.is_valid
    return shape


def holes(shape: BaseGeometry) -> int:
    return sum(len(part.interiors) for part in getattr(shape, "geoms", [shape]))


def parts(shape: BaseGeometry) -> int:
    return len(getattr(shape, "geoms", [shape]))


def region(*contours: list[tuple[float, float]]) -> str:
    lines = ["%FSLAX46Y46*%", "%MOMM*%", "%LPD*%", "G36*", "G01*"]
    for contour in contours:
        for index, (x, y) in enumerate([*contour, contour[0]]):
            lines.append(f"X{round(x * 1e6)}Y{round(y * 1e6)}D0{1 if index else 2}*")
    return "\n".join([*lines, "G37*", "M02*"])


def box(x0: float, y0: float, x1: float, y1: float) -> list[tuple[float, float]]:
    return [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]


def test_two_square_boxes() -> None:
    """2.13.1: two squares of side 5 drawn with a round aperture of 0.01."""
    lines = [
        "%FSLAX25Y25*%",
        "%MOMM*%",
        "%TF.Part,Other,example*%",
        "%LPD*%",
        "%ADD10C,0.010*%",
        "D10*",
        "G01*",
    ]
    for x in (0, 600000):
        lines += [
            f"X{x}Y0D02*", f"X{x + 500000}Y0D01*", f"X{x + 500000}Y500000D01*", f"X{x}Y500000D01*", f"X{x}Y0D01*",
        ]  # fmt: skip
    shape = shape_of("\n".join([*lines, "M02*"]))
    width = 0.01
    exact = 2 * (5.01**2 - 4.99**2 - 4 * (width / 2) ** 2 * (1 - PI / 4))
    assert exact == pytest.approx(0.399957080, abs=1e-8)
    assert shape.area == pytest.approx(exact, abs=CHORD_TOLERANCE * 4 * PI * width)
    assert shape.bounds == pytest.approx((-0.005, -0.005, 11.005, 5.005), abs=1e-9)
    assert (parts(shape), holes(shape)) == (2, 2)


SQUARE = box(0, 0, 10, 10)
# 4.10.4: contours of region examples, their area and number of parts
REGIONS = {
    "4.10.4.1 simple": ([[(2, 3), (7, 3), (7, 1), (11, 5), (7, 9), (7, 7), (2, 7)]], 36, 1),
    "4.10.4.2 apart": ([SQUARE, [(-5, 1), (-9, 5), (-5, 9), (-1, 5)]], 132, 2),
    "4.10.4.3 one in the other is a union": ([SQUARE, [(5, 1), (1, 5), (5, 9), (9, 5)]], 100, 1),
}


@pytest.mark.parametrize("case", REGIONS)
def test_regions(case: str) -> None:
    contours, area, count = REGIONS[case]
    shape = shape_of(region(*contours))
    assert shape.area == pytest.approx(area, abs=1e-9)
    assert parts(shape) == count


def test_holes_by_polarity_in_file_order() -> None:
    """4.10.4.6: a square of 150, a clear disc of 50, a dark disc, a clear one: what each step leaves."""

    def disc(y_diameter: float, dark: bool) -> list[str]:
        x = round((100 - y_diameter) * 1e5)
        return [f"%LP{'D' if dark else 'C'}*%", "G36*", f"X{x}Y10000000D02*", "G75*", "G03*",
                f"X{x}Y10000000I{round(y_diameter * 1e5)}J0D01*", "G37*"]  # fmt: skip

    square = ["%FSLAX25Y25*%", "%MOMM*%", "%LPD*%", "G36*", "X2500000Y2500000D02*", "G01*", "X17500000D01*",
              "Y17500000D01*", "X2500000D01*", "Y2500000D01*", "G37*"]  # fmt: skip
    steps = [square, disc(50, False), disc(math.sqrt(2500 / PI), True)]
    exact = [22500.0, 22500 - 2500 * PI, 22500 - 2500 * PI + 2500]
    lines: list[str] = []
    for added, area in zip(steps, exact, strict=True):
        lines += added
        shape = shape_of("\n".join([*lines, "M02*"]))
        assert shape.area == pytest.approx(area, abs=CHORD_TOLERANCE * shape.length + 0.02)
        assert shape.bounds == pytest.approx((25, 25, 175, 175))


def test_cut_in() -> None:
    """4.10.4.7: a hole joined to the contour by coincident segments: 80 - 9 pi."""
    text = """%FSLAX26Y26*%
    %MOMM*% %LPD*% G75* G36*
    X2000000Y10000000D02* G01* X12000000D01* Y2000000D01* X2000000D01* Y6000000D01*
    X5000000D01* G03* X5000000Y6000000I3000000J0D01* G01* X2000000D01* Y10000000D01*
    G37* M02*"""
    shape = shape_of(text)
    assert shape.area == pytest.approx(80 - 9 * PI, abs=CHORD_TOLERANCE * 6 * PI)
    assert shape.bounds == pytest.approx((2, 2, 12, 10))
    assert holes(shape) == 1


def test_coincident_cut_in_by_lines_only() -> None:
    """4.10.4.8, second example: fully coincident horizontal segments leave a hole, area 68."""
    outer = [(0, 5), (0, 10), (10, 10), (10, 0), (0, 0), (0, 5)]
    diamond = [(1, 5), (5, 1), (9, 5), (5, 9), (1, 5)]
    shape = shape_of(region([*outer, *diamond]))
    assert shape.area == pytest.approx(68)
    assert holes(shape) == 1


# 4.4 standard apertures and 4.5 macros: definition, area in file units squared, box or None
APERTURES = {
    "4.4.2 C": ("%ADD10C,0.5*%", PI / 16, None),
    "4.4.2 C with hole": ("%ADD10C,0.5X0.25*%", PI / 16 * 0.75, None),
    "4.4.3 R with hole": ("%ADD10R,0.044X0.025X0.019*%", 0.044 * 0.025 - PI * 0.0095**2, None),
    "4.4.4 O": ("%ADD10O,0.046X0.026*%", 0.020 * 0.026 + PI * 0.013**2, None),
    "4.4.4 O with hole": ("%ADD10O,0.046X0.026X0.019*%", 0.020 * 0.026 + PI * (0.013**2 - 0.0095**2), None),
    "4.4.5 P": ("%ADD10P,.040X6*%", 6 * 0.02**2 * math.sin(PI / 3) / 2, (-0.02, -0.0173205, 0.02, 0.0173205)),
    "4.4.5 P with hole": ("%ADD10P,.040X6X0.0X0.019*%", 6 * 0.02**2 * math.sin(PI / 3) / 2 - PI * 0.0095**2, None),
    "4.5.1.6 outline turned": (
        "%AMTRIANGLE_30*4,1,3,1,-1,1,1,2,1,1,-1,30*%%ADD10TRIANGLE_30*%", 1.0, (0.366025, -0.366025, 1.366025, 1.866025),
    ),
    "4.5.1.5 centre line turned": (
        "%AMRECTANGLE*21,1,6.8,1.2,3.4,0.6,30*%%ADD10RECTANGLE*%", 8.16, (-0.6, 0, 5.888973, 4.439230),
    ),
    "4.5.1.4 vector line": ("%AMLINE*20,1,0.9,0,0.45,12,0.45,0*%%ADD10LINE*%", 10.8, (0, 0, 12, 0.9)),
    "4.5.1.7 polygon": ("%AMPOLYGON*5,1,8,0,0,8,0*%%ADD10POLYGON*%", 8 * 16 * math.sin(PI / 4) / 2, (-4, -4, 4, 4)),
    "4.5.4.2 donut by two circles": (
        "%AMDONUTFIX*1,1,0.100,0,0*1,0,0.080,0,0*%%ADD10DONUTFIX*%", PI * (0.05**2 - 0.04**2), None,
    ),
    "4.5.4.3 donut with a computed hole": (
        "%AMDONUTCAL*1,1,$1,$2,$3*$4=$1x0.75*1,0,$4,$2,$3*%%ADD10DONUTCAL,0.020X0X0*%", PI * (0.01**2 - 0.0075**2), None,
    ),
    "4.5.3 square with hole": ("%AMSQUAREWITHHOLE*21,1,10,10,0,0,0*1,0,5,0,0*%%ADD10SQUAREWITHHOLE*%", 100 - PI * 6.25, (-5, -5, 5, 5)),
    "4.5.5 rounded box": (
        "%AMBOX*0 Rounded, w $1, h $2, corner $3*21,1,$1,$2-$3-$3,0,0,0*21,1,$1-$3-$3,$2,0,0,0*$4=$1/2*$5=$2/2*$6=2x$3*"
        "1,1,$6,$4-$3,$5-$3*1,1,$6,-$4+$3,$5-$3*1,1,$6,-$4+$3,-$5+$3*1,1,$6,$4-$3,-$5+$3*%%ADD10BOX,2X1X0.25*%",
        2 - (4 - PI) * 0.0625, (-1, -0.5, 1, 0.5),
    ),
}  # fmt: skip


@pytest.mark.parametrize("case", APERTURES)
def test_apertures(case: str) -> None:
    definition, area, bounds = APERTURES[case]
    shape = shape_of(f"%FSLAX26Y26*%\n%MOMM*%\n{definition}\nD10*\nX0Y0D03*\nM02*\n")
    assert shape.area == pytest.approx(area, abs=CHORD_TOLERANCE * shape.length)
    assert shape.area == pytest.approx(area, rel=0.03)
    if bounds is not None:
        assert shape.bounds == pytest.approx(bounds, abs=1e-6)


def test_thermal() -> None:
    """4.5.1.8: ring 0.8 to 0.55 with gaps of 0.125, turned by 45 degrees: four parts."""
    shape = shape_of(
        "%FSLAX26Y26*%%MOMM*%%AMTHERMAL80*7,0,0,0.800,0.550,0.125,45*%%ADD10THERMAL80*%D10*X0Y0D03*M02*"
    )

    def bars(radius: float, half: float = 0.0625) -> float:
        """Area of a cross of two bars inside a disc."""
        bar = 2 * (half * math.sqrt(radius**2 - half**2) + radius**2 * math.asin(half / radius))
        return 2 * bar - (2 * half) ** 2

    exact = PI * (0.4**2 - 0.275**2) - (bars(0.4) - bars(0.275))
    assert exact == pytest.approx(0.202195609, abs=1e-7)
    assert shape.area == pytest.approx(exact, abs=CHORD_TOLERANCE * shape.length)
    assert parts(shape) == 4


def test_objects_of_a_drill_layer() -> None:
    """6.6.1.2: flashes of 0.14, 0.24, 0.43 and 0.22 make 8, 8, 2 and 11 holes; here in rows of our own."""
    lines = ["%FSLAX26Y26*%", "%MOIN*%", "%TF.FileFunction,Plated,1,8,PTH*%"]
    wanted = {0.14: 8, 0.24: 8, 0.43: 2, 0.22: 11}
    for number, (diameter, count) in enumerate(wanted.items(), start=10):
        lines += [f"%TA.AperFunction,ComponentDrill*%%ADD{number}C,{diameter}*%%TD*%", f"D{number}*"]
        lines += [f"X{index}000000Y{number}000000D03*" for index in range(count)]
    layer = read_gerber("\n".join([*lines, "M02*"]))
    found = [round((item.diameter or 0) / 25.4, 6) for item in layer.objects]
    assert {diameter: found.count(diameter) for diameter in wanted} == wanted
    assert layer.attributes[".FileFunction"] == ("Plated", "1", "8", "PTH")
    assert {item.function for item in layer.objects} == {"ComponentDrill"}
