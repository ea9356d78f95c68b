"""A loose edge is named where it is, and a firm board is left in peace."""

from __future__ import annotations

import numpy as np

from drypoint.surface.give import give_report
from drypoint.surface.touch import Touch, Touches

BOUNDS = (0.0, 0.0, 100.0, 80.0)


def _board(give):
    rng = np.random.default_rng(0)
    grid = [(x, y) for x in np.linspace(5, 95, 7) for y in np.linspace(5, 75, 5)]
    return Touches(tuple(Touch(x, y, 0.0, -give(x, y) - abs(rng.normal(0, 0.003))) for x, y in grid))


def test_a_firm_board_gives_nothing():
    assert give_report(_board(lambda x, y: 0.0), BOUNDS) == ()


def test_a_long_edge_is_named():
    found = give_report(_board(lambda x, y: 0.12 if y < 10 and 35 < x < 65 else 0.0), BOUNDS)
    assert len(found) == 1
    assert "front long edge" in found[0].what
    assert "0.12 mm" in found[0].what
    assert "Clamp" in found[0].hint


def test_a_corner_is_named():
    found = give_report(_board(lambda x, y: 0.2 if x > 80 and y > 60 else 0.0), BOUNDS)
    assert "back right corner" in found[0].what


def test_a_short_edge_is_named():
    found = give_report(_board(lambda x, y: 0.1 if x < 10 and 30 < y < 50 else 0.0), BOUNDS)
    assert "left short edge" in found[0].what


def test_touches_made_once_say_nothing():
    assert give_report(Touches((Touch(0, 0, 0.0), Touch(1, 1, 0.1)))) == ()
