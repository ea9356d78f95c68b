"""Contours and profiles of a height field."""

from __future__ import annotations

import numpy as np
import pytest

from drypoint.ui.heat.axes import ROOM, tick_spacing, tick_words
from drypoint.ui.heat.contours import contour
from drypoint.ui.heat.picture import draw_heat
from drypoint.ui.heat.view import Aspect, HeatView
from drypoint.ui.pages.measure import SurfacePage, SurfacePageValues
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


def test_waves_are_told_on_the_page_only_where_there_are_some(light: Theme, qtbot) -> None:
    page = SurfacePage(light)
    qtbot.addWidget(page)
    page.show()
    said = "Along X, every 2.0 mm, 14 µm from crest to trough."
    page.show_surface(SurfacePageValues(touches=48, waves=(said,)))
    assert page._waves.isVisible()
    assert said in page._waves._detail.text()
    page.show_surface(SurfacePageValues(touches=48))
    assert not page._waves.isVisible()


@pytest.mark.parametrize(
    ("low", "high", "px", "spacing"),
    [(0, 100, 520, 5), (0, 100, 100, 50), (-35, 60, 50, 50), (0, 0.9, 260, 0.1)],
)
def test_numbers_of_an_axis_never_meet(low: float, high: float, px: float, spacing: float) -> None:
    ((found, _),) = tick_spacing(low, high, px)
    assert found == pytest.approx(spacing)
    assert found / (high - low) * px >= ROOM * 0.99


def test_axes_write_a_true_minus() -> None:
    assert tick_words([-20.0, 0.0], 1.0, 20.0) == ["−20", "0"]
    assert tick_words([-0.5], 1.0, 0.5) == ["−0.5"]
