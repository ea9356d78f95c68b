"""Small Gerber files whose area follows by hand, each for one rule of the format.

The areas and boxes are computed from the dimensions in the file (circles by pi), and hold within
what the chord tolerance allows: an inscribed outline is smaller by at most tolerance x perimeter.
"""
# ruff: noqa: E501 - tables of one case a line

from __future__ import annotations

import math

import pytest

from drypoint.board.gerber import read_gerber
from drypoint.board.gerber_arcs import CHORD_TOLERANCE

HEAD = "%FSLAX46Y46*%\n%MOMM*%\n"
PI = math.pi


def gerber(*lines: str, head: str = HEAD) -> str:
    return head + "\n".join(lines) + "\nM02*\n"


def check(text: str, area: float, bounds: tuple[float, ...] | None = None) -> None:
    shape = read_gerber(text).shape
    assert shape.is_valid
    assert shape.area == pytest.approx(area, abs=CHORD_TOLERANCE * shape.length + 1e-9)
    if bounds is not None:
        assert shape.bounds == pytest.approx(bounds, abs=2 * CHORD_TOLERANCE)


ROUND = "%ADD10C,1*%"

CASES = {
    "round flash": (["%ADD10C,2*%", "D10*", "X0Y0D03*"], PI, (-1, -1, 1, 1)),
    "hole is transparent, it does not clear": (
        ["%ADD10R,6X6*%", "%ADD11C,4X2*%", "D10*", "X0Y0D03*", "D11*", "X0Y0D03*"], 36, (-3, -3, 3, 3),
    ),
    "rectangular hole (deprecated)": (["%ADD10C,4X1X2*%", "D10*", "X0Y0D03*"], 4 * PI - 2, None),
    "hole in a polygon": (["%ADD10P,4X4X45X1*%", "D10*", "X0Y0D03*"], 8 - PI / 4, None),
    "draw": ([ROUND, "D10*", "X0Y0D02*", "X5000000D01*"], 5 + PI / 4, (-0.5, -0.5, 5.5, 0.5)),
    "draw with an obround": (
        ["%ADD10O,3X1*%", "D10*", "X0Y0D02*", "X5000000D01*"], 7 + PI / 4, (-1.5, -0.5, 6.5, 0.5),
    ),
    "draw with a rectangle at an angle": (
        ["%ADD10R,2X1*%", "D10*", "X0Y0D02*", "X4000000Y3000000D01*"], 2 + 4 * 1 + 3 * 2, (-1, -0.5, 5, 3.5),
    ),
    "draws in one-digit codes": ([ROUND, "D10*", "X0Y0D2*", "G1X5000000D1*"], 5 + PI / 4, None),
    "a bare G01 keeps the operation": (
        [ROUND, "D10*", "X0Y0D02*", "X1000000D01*", "G01*", "X5000000*"], 5 + PI / 4, None,
    ),
    "a word broken over two lines": ([ROUND, "D10*", "X0Y0D02*", "X500\n0000D01*"], 5 + PI / 4, None),
    "incremental by G91": ([ROUND, "D10*", "G91*", "X1000000Y0D02*", "X5000000D01*"], 5 + PI / 4, (0.5, -0.5, 6.5, 0.5)),
    "comment with a percent sign": (["G04 50% done, %LPC%*", ROUND, "D10*", "X0Y0D03*"], PI / 4, None),
    "multi-quadrant arc": (
        [ROUND, "D10*", "G75*", "X5000000Y0D02*", "G03*", "X-5000000Y0I-5000000J0D01*"], PI * 5 + PI / 4, (-5.5, -0.5, 5.5, 5.5),
    ),
    "full circle": (
        [ROUND, "D10*", "G75*", "X5000000Y0D02*", "G02*", "X5000000Y0I-5000000J0D01*"], 10 * PI, (-5.5, -5.5, 5.5, 5.5),
    ),
    "an arc tighter than its tool": (
        ["%ADD10C,4*%", "D10*", "G75*", "X1000000Y0D02*", "G03*", "X1000000Y0I-1000000J0D01*"], 9 * PI, (-3, -3, 3, 3),
    ),
    "single-quadrant arc of no length": (
        [ROUND, "D10*", "G74*", "X5000000Y0D02*", "G02*", "X5000000Y0I5000000J0D01*"], PI / 4, None,
    ),
    "region with an arc, two contours that overlap": (
        ["G75*", "G36*", "X0Y0D02*", "G01*", "X4000000D01*", "Y4000000D01*", "X0D01*", "Y0D01*",
         "X2000000Y0D02*", "G03*", "X2000000Y0I-2000000J0D01*", "G37*"], 16 + PI * 4 * 3 / 4, (-2, -2, 4, 4),
    ),
    "clear, then dark again": (
        ["%ADD10R,4X4*%", "%ADD11R,2X2*%", "%ADD12R,1X1*%", "D10*", "X0Y0D03*", "%LPC*%", "D11*", "X0Y0D03*",
         "%LPD*%", "D12*", "X0Y0D03*"], 16 - 4 + 1, (-2, -2, 2, 2),
    ),
    "clear first clears nothing": (["%ADD10R,4X4*%", "%LPC*%", "D10*", "X0Y0D03*", "%LPD*%", "X2000000Y0D03*"], 16, None),
    "step and repeat": (
        ["%ADD10R,1X1*%", "%SRX3Y2I5.0J4.0*%", "D10*", "X0Y0D03*", "%SR*%"], 6, (-0.5, -0.5, 10.5, 4.5),
    ),
    "step and repeat with a clear part, copy by copy": (
        ["%ADD10R,3X3*%", "%ADD11R,1X1*%", "%SRX2Y1I1J0*%", "D10*", "X0Y0D03*", "%LPC*%", "D11*", "X0Y0D03*",
         "%LPD*%", "%SR*%"], 12 - 1, (-1.5, -1.5, 2.5, 1.5),
    ),
    "a block flashed clear turns its polarity over": (
        ["%ADD10R,9X9*%", "%ADD11R,4X4*%", "%ADD12R,2X2*%", "%ABD20*%", "D11*", "X0Y0D03*", "%LPC*%", "D12*",
         "X0Y0D03*", "%LPD*%", "%AB*%", "D10*", "X0Y0D03*", "%LPC*%", "D20*", "X0Y0D03*"], 81 - 16 + 4, None,
    ),
    "block mirrored, turned and scaled": (
        ["%ADD11R,2X1*%", "%ABD20*%", "D11*", "X3000000Y1000000D03*", "%AB*%", "%LMX*%", "%LR90*%", "%LS2*%",
         "D20*", "X0Y0D03*"], 8, (-3, -8, -1, -4),
    ),
    "block with an arc, doubled": (
        [ROUND, "%ABD20*%", "D10*", "G75*", "X5000000Y0D02*", "G03*", "X-5000000Y0I-5000000J0D01*", "%AB*%",
         "%LS2*%", "D20*", "X0Y0D03*"], 4 * (PI * 5 + PI / 4), (-11, -1, 11, 11),
    ),
    "scaled tool": ([ROUND, "%LS3*%", "D10*", "X0Y0D03*"], PI * 2.25, (-1.5, -1.5, 1.5, 1.5)),
    "image offset and rotation": (
        ["%IR90*%", "%OFA10B0*%", "%ADD10R,2X1*%", "D10*", "X3000000Y0D03*"], 2, (9.5, 2, 10.5, 4),
    ),
    "image mirror and scale act on coordinates": (
        ["%MIA1B0*%", "%SFA2B2*%", "%ADD10R,2X1*%", "D10*", "X3000000Y0D03*"], 2, (-7, -0.5, -5, 0.5),
    ),
    "negative image": (
        ["%IPNEG*%", "%ADD10R,2X2*%", "D10*", "X0Y0D03*", "X4000000Y0D03*"], 12 - 8, (1, -1, 3, 1),
    ),
    "several commands in one pair of percents": (["%ADD10C,2*ADD11R,2X2*%", "D11*", "X0Y0D03*"], 4, None),
    "nothing drawn": (["%ADD10C,2*%", "D10*"], 0, None),
}  # fmt: skip


@pytest.mark.parametrize("case", CASES)
def test_area_and_extent(case: str) -> None:
    lines, area, bounds = CASES[case]
    check(gerber(*lines), area, bounds)


MACROS = {
    "circle with its place turned": ("1,1,2,3,0,90", PI, (-1, 2, 1, 4)),
    "vector line, old code": ("2,1,1,0,0,4,0,0", 4, (0, -0.5, 4, 0.5)),
    "line from its lower left": ("22,1,4,2,1,1,0", 8, (1, 1, 5, 3)),
    "target with crosshair (deprecated)": (
        # one ring 4 to 3 across, one disc ring 2 to 1, and a cross 0.1 wide and 5 long
        "6,0,0,4,0.5,0.5,2,0.1,5,0", None, (-2.5, -2.5, 2.5, 2.5),
    ),
    "exposure off erases only before it": ("21,1,4,4,0,0,0*21,0,2,2,0,0,0*21,1,1,1,0,0,0", 16 - 4 + 1, None),
    "equal operators from left to right": ("21,1,8/4/2,9-4-3,0,0,0", 2, (-0.5, -1, 0.5, 1)),
    "parentheses and signs": ("21,1,-(1-3),+2x(1+1),0,0,0", 8, (-1, -2, 1, 2)),
    "variable set from itself": ("$1=2*$1=$1x2*21,1,$1,1,0,0,0", 4, (-2, -0.5, 2, 0.5)),
    "capital multiplication sign": ("21,1,2X2,1,0,0,0", 4, None),
}  # fmt: skip


@pytest.mark.parametrize("case", MACROS)
def test_macro(case: str) -> None:
    body, area, bounds = MACROS[case]
    if area is None:  # by inclusion and exclusion: rings, four arms outside each, the square in the middle
        reach, half = 2.5, 0.05

        def under_arm(radius: float) -> float:
            """Area of one whole bar inside a disc."""
            return 2 * (half * math.sqrt(radius**2 - half**2) + radius**2 * math.asin(half / radius))

        rings = PI * (4 - 2.25) + PI * (1 - 0.25)
        cross = 2 * (2 * reach * 2 * half) - (2 * half) ** 2
        covered = 2 * (under_arm(2) - under_arm(1.5) + under_arm(1) - under_arm(0.5))
        area = rings + cross - covered
    check(gerber(f"%AMA*{body}*%", "%ADD10A*%", "D10*", "X0Y0D03*"), area, bounds)


def test_old_units_and_zeros() -> None:
    check(
        "%FSTAX23Y23*%\nG70*\n%ADD10R,0.1X0.1*%\nG54D10*\nX01Y02D03*\nM02*",
        2.54**2,
        (24.13, 49.53, 26.67, 52.07),
    )
    check(
        "%FSLIX23Y23*%\n%MOIN*%\n%ADD10R,1X1*%\nD10*\nX1000D02*\nX1000D03*\nM02*",
        25.4**2,
        (38.1, -12.7, 63.5, 12.7),
    )


def test_tolerance_is_a_parameter() -> None:
    text = gerber("%ADD10C,10*%", "D10*", "X0Y0D03*")
    for tolerance in (0.0001, 0.0005, 0.01):
        ring = read_gerber(text, tolerance=tolerance).shape.exterior
        sagitta = 5.0 - 5.0 * math.cos(PI / (len(ring.coords) - 1))
        assert tolerance / 2 < sagitta <= tolerance * (1 + 1e-9)
