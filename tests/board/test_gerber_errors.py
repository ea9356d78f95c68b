"""What is no readable Gerber file is refused with a file, a line and a hint; nothing else leaves."""
# ruff: noqa: E501 - tables of one case a line

from __future__ import annotations

import time
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from drypoint.board.gerber import read_gerber
from drypoint.errors import InputError
from drypoint.progress import Cancelled, Progress

HEAD = "%FSLAX46Y46*%\n%MOMM*%\n%ADD10C,1*%\nD10*\n"

WRONG: dict[str, tuple[str | bytes, str, int]] = {
    "empty": (b"", "empty", 1),
    "blank": ("\n \n", "empty", 1),
    "zip": (b"PK\x03\x04rest", "zip", 1),
    "binary": (b"%FSLAX46Y46*%\n\x00\x01\x02", "binary", 2),
    "drill": ("M48\nMETRIC,TZ\nT1C0.8\n%\nT1\nX1Y1\nM30\n", "drill file", 1),
    "g-code": ("G21\nG90\nG1 X1 Y2 F100\nM2\n", "G-code", 1),
    "netlist": ("C  comment\nP  UNITS CUST 0\n327GND              VIA   -     D0100PA00X+000000Y+000000\n", "netlist", 1),
    "prose": ("Dear maker,\nhere are the files.\n", "no Gerber", 1),
    "no format": ("%MOMM*%\n%ADD10C,1*%\nD10*\nX0Y0D03*\nM02*\n", "format", 4),
    "bad format": ("%FSLAX4Y*%\n%MOMM*%\nM02*\n", "format statement", 1),
    "no end": (HEAD + "X0Y0D03*\n", "no end", 5),
    "cut in a word": (HEAD + "X0Y0D03*\nX100", "no end", 6),
    "cut in a command": (HEAD + "%ADD11C,", "no end", 5),
    "undefined aperture": (HEAD + "D11*\nX0Y0D03*\nM02*", "D11", 5),
    "no aperture": ("%FSLAX46Y46*%\n%MOMM*%\nX0Y0D03*\nM02*", "before an aperture", 3),
    "undefined macro": (HEAD + "%ADD11ROUNDED,1*%\nM02*", "ROUNDED", 5),
    "impossible aperture": (HEAD + "%ADD11C,-1*%\nM02*", "impossible", 5),
    "polygon of two corners": (HEAD + "%ADD11P,1X2*%\nD11*\nX0Y0D03*\nM02*", "2 corners", 7),
    "division by zero": (HEAD + "%AMA*1,1,1/0,0,0*%\n%ADD11A*%\nD11*\nX0Y0D03*\nM02*", "divides", 8),
    "unknown primitive": (HEAD + "%AMA*9,1,1*%\n%ADD11A*%\nD11*\nX0Y0D03*\nM02*", "primitive", 8),
    "deep parentheses": (HEAD + "%AMA*1,1," + "(" * 9999 + "1" + ")" * 9999 + ",0,0*%\nM02*", "expression", 5),
    "block without end": (HEAD + "%ABD20*%\nX0Y0D03*\nM02*", "block", 7),
    "end without block": (HEAD + "%AB*%\nM02*", "never began", 5),
    "a billion copies": (HEAD + "%SRX30000Y30000I1J1*%\nX0Y0D03*\n%SR*%\nM02*", "more than", 7),
    "digits without end": (HEAD + "X" + "9" * 5000 + "Y0D03*\nM02*", "digits", 5),
    "far away": (HEAD + "X0Y0D03*\nX999999999999999Y0D03*\nM02*", "kilometre", 6),
    "scale zero": (HEAD + "%LS0*%\nM02*", "scale", 5),
    "include": (HEAD + "%IFother.gbr*%\nM02*", "include", 5),
}  # fmt: skip


@pytest.mark.parametrize("case", WRONG)
def test_wrong_input_is_refused(case: str, tmp_path: Path) -> None:
    content, what, line = WRONG[case]
    path = tmp_path / "layer.gbr"
    path.write_bytes(content if isinstance(content, bytes) else content.encode())
    with pytest.raises(InputError, match=what) as caught:
        read_gerber(path)
    assert caught.value.where == f"layer.gbr, line {line}"
    assert caught.value.hint


@pytest.mark.parametrize("path", ["missing.gbr", ".", "nul\0byte"])
def test_unreadable_path(path: str) -> None:
    with pytest.raises(InputError, match="cannot be read"):
        read_gerber(path)


def nested_blocks(levels: int) -> str:
    lines = [HEAD, "%ABD100*%\nX0Y0D03*\n%AB*%"]
    for level in range(levels):
        lines.append(f"%ABD{101 + level}*%\nD{100 + level}*\n" + "X0Y0D03*\n" * 10 + "%AB*%")
    return "\n".join([*lines, f"D{100 + levels}*\nX0Y0D03*\nM02*"])


def test_blocks_that_multiply_are_bounded() -> None:
    with pytest.raises(InputError, match="more than"):
        read_gerber(nested_blocks(30))


def test_cancelling() -> None:
    progress = Progress()
    progress.cancel()
    with pytest.raises(Cancelled):
        read_gerber(HEAD + "X0Y0D03*\nM02*", progress=progress)


def answer(text: str | bytes) -> None:
    """Read and compose; an InputError is an answer, anything else is a fault."""
    try:
        layer = read_gerber(text, tolerance=0.01)
        assert layer.shape.is_valid
        layer.nets()
        assert all(len(item.path) for item in layer.objects)
    except InputError as error:
        if not (error.what and error.where):
            raise


NUMBERS = st.one_of(
    st.integers(-60, 60), st.integers(-(10**16), 10**16), st.sampled_from(["", "+", "1.5", "-.", "00"])
)
WORDS = st.builds("{}{}".format, st.sampled_from("XYIJDGMNZ"), NUMBERS)
DATA = st.lists(WORDS, max_size=5).map(lambda words: "".join(words) + "*")
USUAL = st.builds("X{}Y{}I{}J{}D0{}*".format, *[st.integers(-3000000, 3000000)] * 4, st.integers(1, 3))
STATE = st.sampled_from(
    [
        "G01*",
        "G02*",
        "G03*",
        "G36*",
        "G37*",
        "G74*",
        "G75*",
        "G90*",
        "G91*",
        "G70*",
        "D10*",
        "D11*",
        "D12*",
        "D13*",
        "D20*",
        "M02*",
        "%LPC*%",
        "%LPD*%",
        "%LMXY*%",
        "%LR30*%",
        "%LS0.5*%",
        "%ABD20*%",
        "%AB*%",
        "%SRX3Y2I1J1*%",
        "%SR*%",
        "%TO.N,A*%",
        "%TD*%",
        "%IPNEG*%",
        "%ASAYBX*%",
        "%IR90*%",
        "%SFA2B1*%",
        "%MIA1B1*%",
    ]
)
EXTENDED = st.builds(
    "%{}{}*%".format,
    st.sampled_from(
        ["FS", "MO", "AD", "AM", "AB", "SR", "LP", "LM", "LR", "LS", "TF", "TO", "TA", "TD", "IP", "OF"]
    ),
    st.text("LAXYIJDC0123456789.,-+x/()$*NMPT \n", max_size=30),
)
BODY = st.lists(st.one_of(USUAL, USUAL, STATE, STATE, DATA, EXTENDED), max_size=40).map("\n".join)
APERTURES = "%ADD11R,0.5X1*%\n%AMM*1,1,1,0,0*21,0,0.5,2,0,0,30*%\n%ADD12M*%\n%ADD13P,1X5X10X0.3*%\n"


@settings(max_examples=250, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(BODY)
def test_any_commands_give_a_layer_or_an_input_error(body: str) -> None:
    answer(HEAD + APERTURES + body + "\nM02*")


@settings(max_examples=150, deadline=None)
@given(st.text("0123456789.,-+x/()$*1245672XY ", max_size=120), st.lists(st.floats(-9, 9), max_size=3))
def test_any_macro_gives_a_layer_or_an_input_error(body: str, values: list[float]) -> None:
    parameters = "X".join(f"{value:.4f}" for value in values)
    answer(HEAD + f"%AMA*{body}*%\n%ADD11A,{parameters}*%\nD11*\nX0Y0D03*\nX2000000D01*\nM02*")


@settings(max_examples=150, deadline=None)
@given(st.binary(max_size=300))
def test_any_bytes_give_a_layer_or_an_input_error(content: bytes) -> None:
    answer(content)


@settings(max_examples=100, deadline=None)
@given(st.data())
def test_a_cut_or_damaged_file_gives_a_layer_or_an_input_error(data: st.DataObject) -> None:
    text = (
        HEAD
        + APERTURES
        + "G75*\nX0Y0D02*\nG03X1000000Y0I500000J0D01*\n%LPC*%\nD12*\nX0Y0D03*\nG36*\nG37*\nM02*\n"
    )
    start = data.draw(st.integers(0, len(text)))
    end = data.draw(st.integers(start, min(len(text), start + 12)))
    answer(text[:start] + data.draw(st.text("XY%*0D$G\0é", max_size=4)) + text[end:])


@settings(max_examples=60, deadline=None)
@given(st.integers(0, len(HEAD + "X0Y0D03*\nM02*")))
def test_a_truncated_file_is_never_taken_for_a_whole_one(cut: int) -> None:
    text = (HEAD + "X0Y0D03*\nM02*")[:cut]
    if not text.endswith("M02*"):
        with pytest.raises(InputError):
            read_gerber(text.encode())


def test_hostile_files_end_soon() -> None:
    """Bounded work: each of these is small and asks for very much."""
    hostile = [
        HEAD + "%AMA*" + "6,0,0,9000,1,1,99,1,9000,0*" * 300 + "%\n%ADD11A*%\nD11*\nX0Y0D03*\nM02*",
        HEAD + "%ADD11C,9000*%\nD11*\n" + "X0Y0D03*\n" * 400 + "M02*",
        HEAD + "G75*\nG02*\nX0Y0D02*\n" + "X1Y0I900000000000J0D01*\n" * 3000 + "M02*",
    ]
    for text in hostile:
        start = time.process_time()
        answer(text)
        assert time.process_time() - start < 60.0  # a hang, not a speed
