"""Outlines: loops from lines and arcs, cut-outs, gaps."""

from __future__ import annotations

import math
import random
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.board.gerber import read_gerber
from drypoint.board.outline import outline_of

Make = Callable[..., str]
Segment = tuple[tuple[float, float], tuple[float, float]]


def draw(segments: list[Segment]) -> list[str]:
    lines = ["D11*"]
    for (x0, y0), (x1, y1) in segments:
        lines += [
            f"X{round(x0 * 1000)}Y{round(y0 * 1000)}D02*",
            f"X{round(x1 * 1000)}Y{round(y1 * 1000)}D01*",
        ]
    return lines


def ring(corners: list[tuple[float, float]]) -> list[Segment]:
    return list(zip(corners, corners[1:] + corners[:1], strict=True))


BOX = [(0.0, 0.0), (40.0, 0.0), (40.0, 30.0), (0.0, 30.0)]


def test_the_centre_line_counts_not_the_stroke(gerber: Make) -> None:
    outline = outline_of(read_gerber(gerber(*draw(ring(BOX)))))
    assert outline is not None
    assert outline.polygon.bounds == (0.0, 0.0, 40.0, 30.0)
    assert outline.polygon.area == pytest.approx(1200.0)
    assert outline.findings == ()


@given(st.integers(3, 12), st.randoms(use_true_random=False))
def test_any_order_and_direction_of_strokes_closes(gerber: Make, count: int, rnd: random.Random) -> None:
    corners = [
        (round(20 * math.cos(2 * math.pi * k / count), 3), round(20 * math.sin(2 * math.pi * k / count), 3))
        for k in range(count)
    ]
    segments = [pair if rnd.random() < 0.5 else pair[::-1] for pair in ring(corners)]
    segments += segments[: rnd.randrange(count)]  # strokes drawn twice
    rnd.shuffle(segments)
    outline = outline_of(read_gerber(gerber(*draw(segments))))
    assert outline is not None
    area = 0.5 * count * 400 * math.sin(2 * math.pi / count)
    assert outline.polygon.area == pytest.approx(area, abs=0.1)


def test_arcs_and_cut_outs(gerber: Make) -> None:
    round_hole = ["X25000Y15000D02*", "G03*", "X25000Y15000I-5000J0D01*", "G01*"]
    outline = outline_of(read_gerber(gerber(*draw(ring(BOX)), *round_hole)))
    assert outline is not None
    assert len(outline.polygon.interiors) == 1
    assert outline.polygon.area == pytest.approx(1200 - 25 * math.pi, abs=0.02)


def test_a_region_is_an_outline_too(gerber: Make) -> None:
    body = ["G36*", "X0Y0D02*", "X40000D01*", "Y30000D01*", "X0D01*", "Y0D01*", "G37*"]
    outline = outline_of(read_gerber(gerber(*body)))
    assert outline is not None
    assert outline.polygon.area == pytest.approx(1200.0)


def test_small_gaps_are_closed_and_said(gerber: Make) -> None:
    segments = ring(BOX)
    segments[1] = ((40.0, 0.3), (40.0, 30.0))
    outline = outline_of(read_gerber(gerber(*draw(segments))))
    assert outline is not None
    assert outline.polygon.area == pytest.approx(1200.0, abs=0.1)
    assert [item.kind for item in outline.findings] == ["outline gap"]
    assert "0.30 mm" in outline.findings[0].what


def test_wide_gaps_are_not_guessed(gerber: Make) -> None:
    assert outline_of(read_gerber(gerber(*draw(ring(BOX)[:3])))) is None


def test_lines_that_cross_enclose_the_board(gerber: Make) -> None:
    over = [((-2.0, 0.0), (42.0, 0.0)), ((40.0, -2.0), (40.0, 32.0)), ((42.0, 30.0), (-2.0, 30.0)),
            ((0.0, 32.0), (0.0, -2.0))]  # fmt: skip
    outline = outline_of(read_gerber(gerber(*draw(over))))
    assert outline is not None
    assert outline.polygon.area == pytest.approx(1200.0)


def test_a_second_board_beside_it_is_said(gerber: Make) -> None:
    other = [(x + 60.0, y) for x, y in [(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)]]
    outline = outline_of(read_gerber(gerber(*draw(ring(BOX) + ring(other)))))
    assert outline is not None
    assert outline.polygon.area == pytest.approx(1200.0)
    assert [item.kind for item in outline.findings] == ["second outline"]
