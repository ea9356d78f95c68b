"""Open-hardware boards that lie outside the project: a bit that fits parts every net of them."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
import shapely

from drypoint.board.load import load_board
from drypoint.board.model import Side
from drypoint.cuts.grooves import in_travel_order, plan_grooves
from drypoint.cuts.islands import check
from drypoint.cuts.parts import Parts, copper_parts, foreign_pairs

pytestmark = pytest.mark.corpus

BOARDS = [
    ("fd1-keyboard", Side.BOTTOM),
    ("gyw-electro", Side.BOTTOM),
    ("motorjst", Side.BOTTOM),
    ("motorjst", Side.TOP),
    ("stepper-lights-driver", Side.BOTTOM),
    ("stepper-lights-driver", Side.TOP),
]
WIDER = 1.3
"""Of the smallest gap: a cut that must bite."""


def nets_of(corpus: Path, name: str, side: Side) -> dict[str, shapely.Geometry]:
    if not (corpus / name).is_dir():
        pytest.skip(f"the board {name} is absent")
    return dict(load_board([corpus / name], side=side).nets)


def smallest_gap(parts: Parts) -> float:
    """Smallest distance between nets that do not touch, mm; looked for up to 1 mm."""
    pairs = foreign_pairs(parts, 1.0)
    apart = shapely.distance(parts.shapes[pairs[:, 0]], parts.shapes[pairs[:, 1]])
    return float(apart[apart > 1e-6].min(initial=1.0))


@pytest.mark.parametrize(("name", "side"), BOARDS)
def test_a_bit_that_fits_parts_every_net(corpus: Path, name: str, side: Side) -> None:
    nets = nets_of(corpus, name, side)
    parts = copper_parts(nets)
    width = smallest_gap(parts) * 0.98
    plan = in_travel_order(plan_grooves(nets, width))
    found = check(nets, plan.lines, width)
    assert found.clean
    assert not plan.impossible
    assert found.pieces == len(parts.shapes)


@pytest.mark.parametrize(("name", "side"), BOARDS)
def test_a_bit_too_wide_bites_no_more_than_it_must(corpus: Path, name: str, side: Side) -> None:
    nets = nets_of(corpus, name, side)
    gap = smallest_gap(copper_parts(nets))
    width = WIDER * gap
    plan = plan_grooves(nets, width, bite=width)
    found = check(nets, plan.lines, width)
    assert not found.shorts
    assert not plan.impossible
    assert plan.max_bite <= (width - gap) / 2.0 + 6e-3


def test_a_short_of_the_design_is_listed_and_nothing_else(corpus: Path) -> None:
    """The pad of one net lies inside a pour of another: no cut can part what overlaps."""
    nets = nets_of(corpus, "herovco-front", Side.BOTTOM)
    parts = copper_parts(nets)
    pairs = foreign_pairs(parts, 1e-6)
    overlapping = {frozenset(parts.names[k] for k in parts.owner[pair]) for pair in pairs}
    assert len(overlapping) == 1
    width = smallest_gap(parts) * 0.98
    plan = plan_grooves(nets, width)
    found = check(nets, plan.lines, width)
    assert {frozenset(flaw.nets) for flaw in found.shorts} == overlapping
    assert {frozenset(place.nets) for place in plan.impossible} == overlapping
    assert not found.opens
    assert not found.lost
    short = shapely.Point(found.shorts[0].at)
    assert np.max([shapely.distance(short, nets[name]) for name in found.shorts[0].nets]) < 0.1


@pytest.mark.parametrize("tile", [7.0, 10.0, 20.0])
def test_the_verdict_does_not_depend_on_tiles(corpus: Path, tile: float) -> None:
    nets = nets_of(corpus, "fd1-keyboard", Side.BOTTOM)
    lines = plan_grooves(nets, 0.25).lines
    found = check(nets, lines[:-3], 0.25, tile=tile)
    same = check(nets, lines[:-3], 0.25, tile=13.0)
    assert [flaw.nets for flaw in found.shorts] == [flaw.nets for flaw in same.shorts]
    assert found.pieces == same.pieces
