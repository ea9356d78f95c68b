"""Contours and profiles of a height field."""

from __future__ import annotations

import numpy as np
import pytest

from drypoint.ui.heat.contours import contour
from drypoint.ui.heat.picture import draw_heat
from drypoint.ui.heat.view import Aspect, HeatView
from drypoint.ui.theme.theme import Theme


def test_contour_of_a_plane_is_a_straight_line() -> None:
    x, y = np.linspace(0, 10, 21), np.linspace(0, 5, 11)
    z = np.add.outer(0.0 * y, 2.0 * x)
    found = contour(x, y, z, 7.0)
    assert np.allclose(found[..., 0], 3.5)
    assert np.hypot(*(found[:, 1] - found[:, 0]).T).sum() == pytest.approx(5.0)


def test_contour_of_a_cone_is_a_circle() -> None:
    x = y = np.linspace(-2, 2, 161)
    z = np.hypot(*np.meshgrid(x, y))
    found = contour(x, y, z, 1.0)
    assert np.abs(np.hypot(found[..., 0], found[..., 1]) - 1.0).max() < 1e-3
    length = np.hypot(*(found[:, 1] - found[:, 0]).T).sum()
    assert length == pytest.approx(2 * np.pi, rel=1e-3)


def test_saddle_gives_two_lines() -> None:
    found = contour(np.array([0.0, 1.0]), np.array([0.0, 1.0]), np.array([[1.0, 0.0], [0.0, 1.0]]), 0.5)
    assert len(found) == 2


def tilted(points: np.ndarray) -> np.ndarray:
    return 0.001 * np.asarray(points)[:, 0] - 0.02


def steady(points: np.ndarray) -> np.ndarray:
    return np.full(len(points), 0.005)


def test_profile_of_a_tilted_plane() -> None:
    picture = draw_heat(tilted, steady, (0, 0, 60, 40))
    along, mean, spread = picture.along(((10, 5), (50, 35)))
    assert along[-1] == pytest.approx(50.0)
    assert mean[0] == pytest.approx(-10.0)
    assert mean[-1] == pytest.approx(30.0)
    assert spread == pytest.approx(np.full(len(spread), 5.0))


def test_contours_are_ten_micrometres_apart() -> None:
    picture = draw_heat(tilted, steady, (0, 0, 60, 40))
    assert {10, 30, 40, 50} <= {round(v) for v in picture.contours[..., 0].ravel()} <= set(range(0, 61, 10))
    assert not np.isclose(picture.contours[..., 0], 20.0).any()
    assert np.allclose(picture.zero[..., 0], 20.0)


def test_view_shows_all_aspects_and_says_stale(theme: Theme, qtbot) -> None:
    view = HeatView(theme)
    qtbot.addWidget(view)
    view.resize(388, 400)
    view.show()
    touches = [(5, 5), (55, 5), (5, 35), (55, 35), (30, 20)]
    view.set_picture(draw_heat(tilted, steady, (0, 0, 60, 40), touches, [0.0, 0.01, 0.0, 0.03, 0.005]))
    for aspect in Aspect:
        view.set_aspect(aspect)
        assert not view.grab().isNull()
    view.set_stale("re-clamped")
    assert view._veil.isVisible()
    view.set_stale("")
    assert not view._veil.isVisible()
    with qtbot.waitSignal(view.profile_moved):
        view.set_profile(((5, 5), (50, 30)))
    assert view.section[0] == pytest.approx((5, 5))
    view.set_picture(None)
    assert not view.aspects.isEnabled()
