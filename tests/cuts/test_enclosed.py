"""What is told of enclosed parts without carving is what carving says."""

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.ops import substring

from drypoint.cuts import islands
from drypoint.cuts.carve import make_sweep
from drypoint.cuts.enclosed import Enclosed, enclosed_parts
from drypoint.cuts.grooves import plan_grooves
from drypoint.cuts.islands import check
from drypoint.cuts.parts import copper_parts
from drypoint.progress import Progress


def verdict(*given, **more):
    """All that a check says, places aside."""
    found = check(*given, **more)
    flaws = (sorted(flaw.nets for flaw in kind) for kind in (found.shorts, found.opens, found.lost))
    return found.nets, found.pieces, *flaws


def carved(*given, **more):
    """The same with everything carved."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(
            islands,
            "enclosed_parts",
            lambda parts, *_: Enclosed(np.zeros(len(parts.shapes), bool), None),
        )
        return verdict(*given, **more)


def crowd(rng, count=14, size=5.0, gap=0.1):
    """Pads and short traces at least a gap apart; some nets have two parts."""
    shapes = []
    for _ in range(count):
        at = rng.uniform(0, size, 2)
        if rng.random() < 0.5:
            shape = shapely.Point(at).buffer(rng.uniform(0.1, 0.7))
        else:
            line = shapely.LineString([at, at + rng.uniform(-1.5, 1.5, 2), at + rng.uniform(-1.5, 1.5, 2)])
            shape = line.buffer(rng.uniform(0.03, 0.2))
        if all(shape.distance(other) > gap for other in shapes):
            shapes.append(shape)
    names = [f"N{k // 2 if k < 4 else k}" for k in range(len(shapes))]
    return {
        name: shapely.union_all([s for s, n in zip(shapes, names, strict=True) if n == name])
        for name in dict.fromkeys(names)
    }


@given(seed=st.integers(0, 100_000), width=st.floats(0.08, 0.3), bite=st.floats(0.0, 0.15))
@settings(max_examples=25, deadline=None)
def test_plans_with_cut_bridges_and_strays_get_the_verdict_of_carving(seed, width, bite):
    rng = np.random.default_rng(seed)
    nets = crowd(rng)
    lines = [np.array(line) for line in plan_grooves(nets, width, bite=bite).lines]
    for k in rng.choice(len(lines), min(2, len(lines)), replace=False):  # a bridge somewhere
        whole = shapely.LineString(lines[k])
        at = rng.uniform(0.1, 0.9) * whole.length
        rest = [substring(whole, 0, at), substring(whole, at + width * 1.01, 1e9)]
        lines[k] = shapely.get_coordinates(rest[0])
        lines.append(shapely.get_coordinates(rest[1]))
    lines = [line for line in lines if len(line) > 1]
    if rng.random() < 0.5:
        lines.append(rng.uniform(0, 5, (3, 2)))
    under = np.full(len(lines), width)
    assert verdict(nets, lines, under) == carved(nets, lines, under)
    assert verdict(nets, lines, under, top_width=1.3 * under) == carved(
        nets, lines, under, top_width=1.3 * under
    )
    board = shapely.box(0.5, 0.3, 4.6, 4.4)
    assert verdict(nets, lines, under, outline=board) == carved(nets, lines, under, outline=board)


@given(seed=st.integers(0, 100_000))
@settings(max_examples=25, deadline=None)
def test_any_lines_get_the_verdict_of_carving(seed):
    rng = np.random.default_rng(seed)
    nets = crowd(rng)
    lines = [rng.uniform(-1, 6, (rng.integers(1, 6), 2)) for _ in range(12)]
    widths = rng.choice((0.0, 0.02, 0.1, 0.3), 12)
    assert verdict(nets, lines, widths) == carved(nets, lines, widths)


def test_pads_that_a_plan_isolates_are_all_told_without_carving():
    nets = {f"N{i}{j}": shapely.Point(i, j).buffer(0.43) for i in range(8) for j in range(8)}
    for width in (0.12, 0.2):  # narrower and wider than the gaps
        lines = plan_grooves(nets, width, bite=0.05).lines
        sweep = make_sweep(list(lines), np.full(len(lines), width))
        parts = copper_parts(nets, simplify=0.0)
        found = enclosed_parts(parts, sweep, sweep, shapely.box(-2, -2, 10, 10), Progress())
        assert found.alone.all()
        assert len(found.doubtful) == 0


@pytest.mark.parametrize(("neck", "whole"), [(0.104, True), (0.096, False)])
def test_a_neck_that_grooves_on_both_sides_bite_through_is_open(neck, whole):
    """Two pads and a neck between them; each of two grooves bites 0.05 mm into it."""
    nets = {
        "A": shapely.union_all([shapely.box(0, 0, 1, 1), shapely.box(2, 0, 3, 1), shapely.box(0, 0, 3, neck)])
    }
    lines = [np.array([(1.2, -0.05), (1.8, -0.05)]), np.array([(1.2, neck + 0.05), (1.8, neck + 0.05)])]
    ring = np.array([(-0.5, -0.5), (3.5, -0.5), (3.5, 1.5), (-0.5, 1.5), (-0.5, -0.5)])
    found = check(nets, [*lines, ring], 0.2, outline=nets["A"])
    assert bool(found.opens) != whole
    assert found.pieces == (1 if whole else 2)
