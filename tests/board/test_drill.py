"""Drill files of every dialect."""

from __future__ import annotations

import json
import math
from pathlib import Path

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from drypoint.board.drill import read_drill
from drypoint.errors import InputError
from drypoint.geometry.points import Points


def holes_of(text: str) -> list[tuple[float, float, float]]:
    return [(hole.x, hole.y, hole.diameter) for hole in read_drill(text).holes]


@pytest.mark.corpus
def test_cases_beside_the_checkout(corpus: Path) -> None:
    file = corpus.parent / "cases" / "excellon.json"
    if not file.is_file():
        pytest.skip("no case file here")
    for case in json.loads(file.read_text()):
        expected = case["expect"]
        if expected == "error":
            with pytest.raises(InputError):
                read_drill(case["text"])
            continue
        drill = read_drill(case["text"])
        if expected == "warn":
            assert drill.warnings, case["name"]
        elif expected[0][0] == "Arc":
            _, x0, y0, x1, y1, turn, i, j, diameter = expected[0]
            path = drill.slots[0].path
            assert path[0] == pytest.approx((x0, y0))
            assert path[-1] == pytest.approx((x1, y1))
            radii = np.hypot(path[:, 0] - x0 - i, path[:, 1] - y0 - j)
            assert radii == pytest.approx(np.full(len(path), math.hypot(i, j)))
            area = float((path[:-1, 0] * path[1:, 1] - path[1:, 0] * path[:-1, 1]).sum())
            assert (area > 0) == (turn == "ccw"), case["name"]
            assert drill.slots[0].diameter == pytest.approx(diameter)
        else:
            got = [(hole.x, hole.y, hole.diameter) for hole in drill.holes]
            assert np.array(got) == pytest.approx(np.array(expected)), case["name"]


# the same place, 25.4 and 12.7 mm, in the ways drilling machines write it
@pytest.mark.parametrize(
    ("header", "body"),
    [
        ("INCH", "X1.0Y0.5"),
        ("INCH,TZ", "X10000Y5000"),
        ("INCH,LZ", "X01Y005"),
        ("INCH,TZ,00.0000", "X10000Y5000"),
        (";FILE_FORMAT=2:5\nINCH,TZ", "X100000Y50000"),
        ("; FORMAT={2:4/ absolute / inch / suppress leading zeros}\nINCH", "X10000Y5000"),
        ("; FORMAT={3:3/ absolute / metric / suppress trailing zeros}\nMETRIC", "X0254Y0127"),
        ("METRIC,TZ,000.000", "X25400Y12700"),
        ("METRIC,LZ,000.000", "X0254Y0127"),
        ("METRIC,TZ,0000.00", "X2540Y1270"),
        ("METRIC", "X25.4 Y12.7"),
    ],
)
def test_number_formats(header: str, body: str) -> None:
    size = "0.04" if "INCH" in header else "1.016"
    text = f"M48\n{header}\nT1C{size}\n%\nT1\n{body}\nM30\n"
    assert holes_of(text) == [pytest.approx((25.4, 12.7, 1.016))]


def test_slots_of_all_forms() -> None:
    text = (
        "M48\nMETRIC\nT1C0.8\n%\nG05\nT1\nX1.0Y1.0G85X3.0Y1.0\nG00X5.0Y5.0\nM15\nG01X5.0Y8.0\nX6.0\nM16\n"
        "G05\nX9.0Y9.0\nM30\n"
    )
    drill = read_drill(text)
    assert [slot.path.tolist() for slot in drill.slots] == [
        [[1.0, 1.0], [3.0, 1.0]],
        [[5.0, 5.0], [5.0, 8.0], [6.0, 8.0]],
    ]
    assert [(hole.x, hole.y) for hole in drill.holes] == [(9.0, 9.0)]


def test_arcs_keep_within_half_a_micrometre_of_the_circle() -> None:
    text = "M48\nMETRIC\nT1C0.8\n%\nT1\nG00X50.0Y0.0\nM15\nG03X-50.0Y0.0A50.0\nM16\nM30\n"
    path = read_drill(text).slots[0].path
    middles = (path[1:] + path[:-1]) / 2
    assert 50.0 - np.hypot(*middles.T).min() < 0.0005
    assert path[:, 1].min() > -1e-9, "anticlockwise from the right goes over the top"


def test_units_may_change_where_only_the_body_states_them() -> None:
    assert holes_of("M48\nT1C0.04\n%\nM72\nT1\nX1.0Y1.0\nM30\n") == [pytest.approx((25.4, 25.4, 1.016))]
    assert holes_of("M48\nT1C0.8\n%\nM71\nT1\nX1.0Y1.0\nM30\n") == [pytest.approx((1.0, 1.0, 0.8))]


def test_absurd_tool_diameters_are_read_in_the_other_unit_and_said() -> None:
    drill = read_drill("M48\nINCH\nT1C0.8\n%\nM71\nT1\nX1.0Y1.0\nM30\n")
    assert drill.holes[0].diameter == pytest.approx(20.32), "0.8 inch is large but possible"
    drill = read_drill("M48\nMETRIC\nT1C0.031\n%\nT1\nX1.0Y1.0\nM30\n")
    assert drill.holes[0].diameter == pytest.approx(0.7874)
    assert any("inches" in text for text in drill.warnings)


def test_incremental_and_repeats() -> None:
    text = "M48\nMETRIC\nT1C0.8\n%\nG91\nT1\nX1.0Y1.0\nX1.0\nR2Y2.0\nG90\nX0.0Y0.0\nM30\n"
    assert [(x, y) for x, y, _ in holes_of(text)] == [(1, 1), (2, 1), (2, 3), (2, 5), (0, 0)]


def test_patterns_repeat_from_the_last_one() -> None:
    text = "M48\nMETRIC\nT1C0.8\n%\nT1\nM25\nX1.0Y1.0\nX2.0\nM01\nM02X5.0\nM02X5.0Y1.0\nM08\nM30\n"
    assert [(x, y) for x, y, _ in holes_of(text)] == [(1, 1), (2, 1), (6, 1), (7, 1), (11, 2), (12, 2)]


@pytest.mark.parametrize(
    ("mark", "name", "plated"),
    [
        ("; #@! TF.FileFunction,Plated,1,2,PTH", "x.drl", True),
        ("; #@! TF.FileFunction,NonPlated,1,2,NPTH", "plated.drl", False),
        (";TYPE=NON_PLATED", "x.drl", False),
        (";TYPE=PLATED", "npth.drl", True),
        ("; Contents: Thru / Drill / Non-Plated", "x.drl", False),
        ("", "board-NPTH.drl", False),
        ("", "board-PTH.drl", True),
        ("", "board.unplated-drill.cnc", False),
        ("", "board.drl", None),
    ],
)
def test_plating_by_attribute_comment_or_name(mark: str, name: str, plated: bool | None) -> None:
    text = f"M48\n{mark}\nMETRIC\nT1C0.8\n%\nT1\nX1.0Y1.0\nM30\n"
    assert read_drill(text, name=name).holes[0].plated is plated


def test_attributes_of_tools_reach_the_holes() -> None:
    text = (
        "M48\n; #@! TF.FileFunction,MixedPlating,1,2\nMETRIC\n"
        "; #@! TA.AperFunction,Plated,PTH,ViaDrill\nT1C0.4\n"
        "; #@! TA.AperFunction,NonPlated,NPTH,ComponentDrill\nT2C3.2\n%\nT1\nX1.0Y1.0\nT2\nX2.0Y2.0\nM30\n"
    )
    drill = read_drill(text)
    assert [(hole.plated, hole.function) for hole in drill.holes] == [
        (True, "ViaDrill"),
        (False, "ComponentDrill"),
    ]
    assert drill.attributes[".FileFunction"] == ("MixedPlating", "1", "2")


def hits_at(*places: tuple[float, float]) -> object:
    known = np.array(places)

    def share(points: Points) -> float:
        near = np.hypot(*(points[:, None, :] - known[None, :, :]).transpose(2, 0, 1)) < 0.05
        return float(near.any(axis=1).mean())

    return share


UNSTATED = "M48\nINCH\nT1C0.04\n%\nT1\nX0100Y0050\nX0200Y0050\nX0150Y0075\nM30\n"


def test_evidence_overrules_custom_and_is_said() -> None:
    by_custom = read_drill(UNSTATED)
    assert (by_custom.holes[0].x, by_custom.holes[0].y) == pytest.approx((0.254, 0.127))
    assert any("not stated" in text for text in by_custom.warnings)
    pads = [(25.4, 12.7), (50.8, 12.7), (38.1, 19.05)]  # trailing zeros left out: 1.00, 2.00, 1.50 inch
    drill = read_drill(UNSTATED, layer_hits=hits_at(*pads))  # type: ignore[arg-type]
    assert [(hole.x, hole.y) for hole in drill.holes] == [pytest.approx(pad) for pad in pads]
    assert "proved by the pads" in drill.format_from
    assert any("trailing zeros left out" in text for text in drill.warnings)


def test_missing_units_need_the_pads() -> None:
    text = UNSTATED.replace("INCH\n", "")
    with pytest.raises(InputError, match="units"):
        read_drill(text)
    pads = [(0.254, 0.127), (0.508, 0.127), (0.381, 0.1905)]
    drill = read_drill(text, layer_hits=hits_at(*pads))  # type: ignore[arg-type]
    assert drill.holes[0].x == pytest.approx(0.254)
    assert any("units not stated" in text for text in drill.warnings)


@pytest.mark.parametrize(
    ("text", "line"),
    [
        ("M48\nMETRIC\nT1C0.8\n%\nT5\nX1.0Y1.0\nM30\n", 5),
        ("M48\nMETRIC\nT1C0.8\n%\nX1.0Y1.0\nM30\n", 5),
        ("M48\nMETRIC\nT1C0.8\n%\nT1\nX1.0.0Y1.0\nM30\n", 6),
        ("M48\nMETRIC\nT1C0.8\n%\nT1\nX1.0Y\nM30\n", 6),
        ("M48\nMETRIC\nT1C0.8\n%\nT1\nM15\nG02X1.0Y1.0\nM16\nM30\n", 7),
        ("M48\nMETRIC\nT1C0.8\n%\nT1\nX1.0Y1.0\nR9999999X1.0\nM30\n", 7),
        ("M48\nMETRIC\nT1C0.8\n%\nT1\nX999999999.0Y1.0\nM30\n", 6),
    ],
)
def test_errors_name_the_line(text: str, line: int) -> None:
    with pytest.raises(InputError) as caught:
        read_drill(text, name="plate.drl")
    assert caught.value.where == f"plate.drl, line {line}"


@pytest.mark.parametrize("data", [b"", b"\n\n", b"\x00\x01\x02M48", b"PK\x03\x04\x00\x00", b"hello\nworld\n"])
def test_what_is_no_drill_file_is_refused(data: bytes) -> None:
    with pytest.raises(InputError):
        read_drill(data, name="x.drl")


def test_a_missing_file_is_a_clear_error(tmp_path: Path) -> None:
    with pytest.raises(InputError, match="cannot be read"):
        read_drill(tmp_path / "none.drl")


def test_a_truncated_file_is_said() -> None:
    assert any("M30" in text for text in read_drill("M48\nMETRIC\nT1C0.8\n%\nT1\nX1.0Y1.0\n").warnings)


_TOKENS = (
    "M48 METRIC INCH,LZ T1C0.8 T1 T2 % X1.0Y1.0 X0100 Y-5 G85X2.0Y2.0 M15 M16 G00X1Y1 G01X2Y2 "
    "G03X0Y0A1.0 G02X1Y1I1J0 R3X1 M25 M01 M02X1 M08 M30 G91 G90 G93X1Y1 ICI,ON M71 M72 "
    ";FILE_FORMAT=2:5 X Y G T99 R G84X9 M97,AB 1.2.3 G05 T0 FMAT,2 X1e9 M02X1M70"
)
TOKENS = st.sampled_from(_TOKENS.split())


@given(st.lists(st.lists(TOKENS, max_size=3).map("".join), max_size=30).map("\n".join))
@example("M48\nMETRIC\nT1C0\n%\nT1\nX1Y1\nM30")
def test_only_input_errors_leave_the_reader(text: str) -> None:
    try:
        drill = read_drill(text + "\n")
    except InputError:
        return
    for hole in drill.holes:
        assert math.isfinite(hole.x)
        assert hole.diameter > 0.0


@given(st.binary(max_size=400))
def test_any_bytes_end_in_an_input_error_or_a_result(data: bytes) -> None:
    try:
        read_drill(data, name="x")
    except InputError as error:
        said = error.what
    else:
        said = "read"
    assert said


@given(st.floats(0.0, 1.0), st.integers(0, 40), st.text(alphabet="XYTGM0123456789.-;%\n\x01é", max_size=12))
def test_a_damaged_demo_file_ends_in_an_input_error_or_a_result(
    hive_scale: Path, at: float, cut: int, junk: str
) -> None:
    text = (hive_scale / "hive-scale-plated.drl").read_text()
    start = int(at * len(text))
    stop = start + cut
    try:
        read_drill(text[:start] + junk + text[stop:] + "\n", name="x")
    except InputError as error:
        said = error.where
    else:
        said = "read"
    assert said


@given(
    st.lists(
        st.tuples(st.integers(-9999, 9999), st.integers(-9999, 9999)).map(lambda p: (p[0] / 100, p[1] / 100)),
        min_size=1,
        max_size=30,
    ),
    st.sampled_from(["decimal", "TZ", "LZ"]),
)
def test_what_is_written_is_read(places: list[tuple[float, float]], form: str) -> None:
    def number(value: float) -> str:
        sign, micro = ("-" if value < 0 else ""), round(abs(value) * 1000)
        if form == "decimal":
            return f"{value:.2f}"
        return sign + (str(micro) if form == "TZ" else f"{micro:06d}".rstrip("0") or "0")

    header = "METRIC" if form == "decimal" else f"METRIC,{form},000.000"
    body = "\n".join(f"X{number(x)}Y{number(y)}" for x, y in places)
    text = f"M48\n{header}\nT1C0.8\n%\nT1\n{body}\nM30\n"
    assert [(h.x, h.y) for h in read_drill(text).holes] == [pytest.approx(p) for p in places]
