"""Ready-made programs: the language of NISTIR 6556 as far as it is read, and what is refused.

Worked examples are those of T. R. Kramer, F. M. Proctor, E. Messina, "The NIST RS274/NGC Interpreter,
Version 3", NISTIR 6556, 17 August 2000 (section named at each).
"""

from __future__ import annotations

import math
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.errors import InputError
from drypoint.gcode.reader import read_gcode, read_program

Vector = tuple[float, float, float]


def moves(text: str, start: Vector = (0.0, 0.0, 0.0)) -> list[tuple[str, Vector]]:
    return [(move.kind, move.end) for move in read_gcode(text, start=start)]


def value(expression: str) -> float:
    return read_gcode(f"G0 X{expression}")[0].end[0]


def test_blanks_and_case_do_not_matter() -> None:  # 3.3
    assert moves("g0x +0. 12 34y 7") == [("rapid", (pytest.approx(0.1234), 7.0, 0.0))]


def test_an_arc_by_its_centre() -> None:  # 3.5.3.2
    (arc,) = read_gcode("G17 G2 x10 y16 i3 j4 z9", start=(7.0, 7.0, 0.0))
    assert arc.kind == "arc_cw"
    assert arc.end == (10.0, 16.0, 9.0)
    assert arc.centre == (10.0, 11.0)
    assert math.dist(arc.centre, (7.0, 7.0)) == 5.0


def test_an_arc_by_its_radius() -> None:  # 3.5.3.1: at most half a circle for a positive radius
    (arc,) = read_gcode("G17 G2 x10 y15 r20 z5", start=(0.0, 0.0, 0.0))
    assert arc.centre is not None
    assert math.dist(arc.centre, (0.0, 0.0)) == pytest.approx(20.0)
    assert math.dist(arc.centre, (10.0, 15.0)) == pytest.approx(20.0)
    # clockwise and short: the centre lies right of the way from start to end
    assert 10.0 * arc.centre[1] - 15.0 * arc.centre[0] < 0.0
    (long,) = read_gcode("G17 G2 x10 y15 r-20 z5")
    assert long.centre is not None
    assert 10.0 * long.centre[1] - 15.0 * long.centre[0] > 0.0


def test_a_full_circle() -> None:
    (arc,) = read_gcode("G3 I-5", start=(5.0, 0.0, 0.0))
    assert (arc.kind, arc.end, arc.centre) == ("arc_ccw", (5.0, 0.0, 0.0), (0.0, 0.0))


def test_drilling_cycle_example_1() -> None:  # 3.5.16
    assert moves("G90 G81 G98 X4 Y5 Z1.5 R2.8", start=(1.0, 2.0, 3.0)) == [
        ("rapid", (4.0, 5.0, 3.0)),
        ("rapid", (4.0, 5.0, 2.8)),
        ("feed", (4.0, 5.0, 1.5)),
        ("rapid", (4.0, 5.0, 3.0)),
    ]


def test_drilling_cycle_example_2() -> None:  # 3.5.16
    got = moves("G91 G81 G98 X4 Y5 Z-0.6 R1.8 L3", start=(1.0, 2.0, 3.0))
    expected: list[tuple[str, Vector]] = [("rapid", (1.0, 2.0, 4.8))]
    for x, y in ((5.0, 7.0), (9.0, 12.0), (13.0, 17.0)):
        expected += [("rapid", (x, y, 4.8)), ("feed", (x, y, 4.2)), ("rapid", (x, y, 4.8))]
    assert [kind for kind, _ in got] == [kind for kind, _ in expected]
    for (_, end), (_, wanted) in zip(got, expected, strict=True):
        assert end == pytest.approx(wanted)


def test_cycles_hold_until_another_motion_and_peck() -> None:
    text = "G90 G83 G99 X1 Y1 Z-1 R1 Q0.8\nX2\nG0 X0"
    got = read_gcode(text, start=(0.0, 0.0, 5.0))
    bottoms = [move.end[2] for move in got if move.kind == "feed"]
    assert bottoms == pytest.approx([0.2, -0.6, -1.0] * 2)
    # 3.5.16: back to 0.010 inch above the last peck
    assert got[4].end == pytest.approx((1.0, 1.0, 0.454))
    assert got[-1].end == pytest.approx((0.0, 1.0, 1.0))


def test_a_dwell_at_the_bottom() -> None:
    got = read_gcode("G90 G82 X1 Y1 Z-1 R1 P0.5", start=(0.0, 0.0, 1.0))
    assert [(move.kind, move.seconds) for move in got if move.kind == "dwell"] == [("dwell", 0.5)]


def test_shifted_axes() -> None:  # 3.5.18: X at 4, G92 X7 shifts by -3; then G92 X9 by -5
    ends = [end[0] for _, end in moves("G92 X7\nG1 X8\nX7\nG92 X9\nG1 X10", start=(4.0, 0.0, 0.0))]
    assert ends == pytest.approx([5.0, 4.0, 5.0])


@pytest.mark.parametrize(
    ("expression", "result"),
    [  # sample program C.2 and 3.3.2.3
        ("[1+2*3-4/5]", 6.2),
        ("[2/5]", 0.4),
        ("[15 MOD 4.0]", 3.0),
        ("sin[30]", 0.5),
        ("round[-0.5001]", -1.0),
        ("fix[-0.499]", -1.0),
        ("fup[-0.499]", 0.0),
        ("sqrt[3**2+4**2]", 5.0),
        ("[2.0/3*1.5-5.5/11.0]", 0.5),
    ],
)
def test_expressions(expression: str, result: float) -> None:
    assert value(expression) == pytest.approx(result)
    assert value("atan[1.7321]/[1.0]") == pytest.approx(60.0, abs=0.001)


def test_parameters_are_set_after_the_line() -> None:  # 3.3.2.2
    assert moves("#3=15\n#3=6 G1 x#3\nx#3") == [("feed", (15.0, 0.0, 0.0)), ("feed", (6.0, 0.0, 0.0))]


def test_units_feeds_spindle_and_tools() -> None:
    text = "G20 G90\nT2 M6 S10000 M3\nG1 X1 F10\nG21 G91\nX1 F100\nM5\nG4 P1.5\nM30\nX99"
    first, second, dwell = read_gcode(text)
    assert (first.end[0], first.feed) == (25.4, 254.0)
    assert (second.end[0], second.feed, second.line) == (pytest.approx(26.4), 100.0, 5)
    assert (first.spindle, first.speed, first.tool) == ("cw", 10000.0, 2)
    assert (dwell.kind, dwell.seconds, dwell.spindle) == ("dwell", 1.5, "off")


def test_inverse_time_feed() -> None:
    (line, arc) = read_gcode("G93 G1 X10 F2\nG3 I-5 F2")
    assert line.feed == pytest.approx(20.0)
    assert arc.feed == pytest.approx(2 * 2 * math.pi * 5)


def test_what_is_left_unsaid_is_said() -> None:
    warnings = read_program("G1 X1\n").warnings
    assert any("units" in text for text in warnings)
    assert any("line 1" in text for text in warnings)
    assert read_program("G21 G1 X1 F9\n").warnings == ()


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ("$100=250", "settings"),
        ("$H", "settings"),
        ("G18 G2 X1 Z1 I1", "XY plane"),
        ("G19", "XY plane"),
        ("G38.2 Z-1 F10", "touch"),
        ("G53 G0 X1", "machine coordinates"),
        ("G55", "work coordinates"),
        ("G10 L2 P1 X3.5 Y17.2", "coordinates"),
        ("G28", "place"),
        ("G41 D1", "compensation"),
        ("G43 H1", "tool length"),
        ("G84 X1 Z-1 R1", "cycle"),
        ("G1 X1 A5", "axis"),
        ("G5 X1", "not known"),
        ("M62", "not known"),
        ("G1 X1 !", "real-time"),
        ("G1 G2 X1", "contradict"),
        ("M3 M5", "contradict"),
        ("G1 X1 X2", "twice"),
        ("X1 Y1", "no motion"),
        ("G1 X1e3", "no word"),
        ("G1 X", "number is expected"),
        ("G1 X[1+", "number is expected"),
        ("G1 X[1/0]", "cannot be computed"),
        ("G1 X1 (a (nested) one)", "nested"),
        ("G1 X1 (open", "not closed"),
        ("G2 X1 Y1", "neither"),
        ("G2 X0 Y0 R5", "No arc"),
        ("G2 X30 Y0 R5", "No arc"),
        ("G2 X10 Y0 I5.003", "from its centre"),
        ("G81 X1 Y1", "R and Z"),
        ("G4", "dwell needs P"),
        ("#9999=1", "parameter"),
        ("G1 X#", "number"),
    ],
)
def test_refused_with_file_and_line(line: str, says: str) -> None:
    with pytest.raises(InputError, match=says) as caught:
        read_gcode(f"G21\n{line}\n", name="plate.nc")
    assert caught.value.where == "plate.nc, line 2"


@pytest.mark.parametrize("text", ["", " \n\n", "\x00\x01", "%\n%\n"])
def test_what_is_no_program_is_refused(text: str) -> None:
    with pytest.raises(InputError):
        read_gcode(text)


def test_rounding_of_arcs_is_allowed_to_the_published_limit() -> None:  # 3.5.3: 0.002 mm, 0.0002 inch
    assert read_gcode("G21 G2 X10 Y0 I5.0009")
    with pytest.raises(InputError):
        read_gcode("G21 G2 X10 Y0 I5.0011")
    assert read_gcode("G20 G2 X1 Y0 I0.50009")


_WORDS = (
    "G0 G1 G2 G3 G4 G20 G21 G81 G83 G90 G91 G92 G93 G98 X1 Y-2 Z.5 I1 J-1 R2 R-1 F100 S5 M3 M5 M6 T1 "
    "P1 Q0.1 L2 #1=2 X#1 X[1+2] N10 (c) ; / % M30 X1e9 G2X1Y1I.5J.5"
)
WORDS = st.sampled_from(_WORDS.split())


@given(st.lists(st.lists(WORDS, max_size=5).map(" ".join), max_size=12).map("\n".join))
def test_only_input_errors_leave_the_reader(text: str) -> None:
    try:
        got = read_gcode(text)
    except InputError as error:
        assert str(error)  # noqa: PT017
        return
    for move in got:
        assert all(math.isfinite(number) for number in (*move.end, move.feed))


@given(st.text(max_size=120))
def test_any_text_ends_in_an_input_error_or_moves(text: str) -> None:
    try:
        read_gcode(text)
    except InputError as error:
        said = error.what
    else:
        said = "read"
    assert said


@given(st.text(alphabet="[]#+-*/0123456789.SINCOTAXP ", max_size=300))
def test_expressions_are_bounded(text: str) -> None:
    try:
        read_gcode("G1 X" + text)
    except InputError as error:
        said = error.what
    else:
        said = "read"
    assert said


def test_a_program_of_a_file(tmp_path: Path) -> None:
    path = tmp_path / "a.nc"
    path.write_text("%\nN10 G21 (mm)\nN20 G0 Z5\nN30 G1 Z-0.1 F50 ; down\nN40 X10\nM2\n%\n")
    assert moves(path.read_text()) == [
        ("rapid", (0.0, 0.0, 5.0)), ("feed", (0.0, 0.0, -0.1)), ("feed", (10.0, 0.0, -0.1)),
    ]  # fmt: skip
