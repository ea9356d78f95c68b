"""Heat view, profile and canvas by hand: one cursor in all three; ends of the profile are dragged."""

from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication, QWidget

from drypoint.ui.heat.picture import draw_heat
from drypoint.ui.heat.view import Aspect
from drypoint.ui.theme.theme import Theme
from drypoint.ui.window import MainWindow

TWITCH = 20
"""Moves that follow sooner than a hundredth of a second are dropped by the plot, ms."""

STILL = 15
"""Looks in a row, 10 ms apart, at which a view that is laid out has not changed."""


def _tilted(points: np.ndarray) -> np.ndarray:
    return 0.001 * np.asarray(points)[:, 0]


def _steady(points: np.ndarray) -> np.ndarray:
    return np.full(len(points), 0.005)


@pytest.fixture
def window(light: Theme, qtbot) -> MainWindow:
    made = MainWindow(light)
    qtbot.addWidget(made)
    made.resize(1600, 1000)
    made.show()
    made.heat.set_picture(draw_heat(_tilted, _steady, (0, 0, 60, 40)))
    made.heat.set_profile(((10, 5), (50, 35)))
    qtbot.waitUntil(lambda: made.heat.profile.height() > 60)
    seen: list[QPoint] = []

    def settled() -> bool:
        seen.append(_over(made, 50.0, 35.0))
        return len(seen) > STILL and all(one == seen[-1] for one in seen[-STILL:])

    qtbot.waitUntil(settled)
    return made


def _over(window: MainWindow, x: float, y: float) -> QPoint:
    """A place of the board in the heat view, px of its viewport."""
    heat = window.heat
    return heat._graphics.mapFromScene(heat._plot.getViewBox().mapViewToScene(QPointF(x, y)))


def _mouse(widget: QWidget, kind: QEvent.Type, at: QPoint, held: bool = False) -> None:
    left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
    button = left if kind is not QEvent.Type.MouseMove else none
    place = QPointF(at)
    event = QMouseEvent(
        kind, place, widget.mapToGlobal(place), button, left if held else none, Qt.KeyboardModifier.NoModifier
    )
    QApplication.sendEvent(widget, event)


def test_the_pointer_in_the_heat_view_is_seen_in_all_three(window: MainWindow) -> None:
    view = window.heat._graphics.viewport()
    _mouse(view, QEvent.Type.MouseMove, _over(window, 30.0, 20.0))
    across, along = window.heat._across
    assert across.isVisible()
    assert (along.value(), across.value()) == pytest.approx((30.0, 20.0), abs=0.3)
    assert window.canvas.canvas._marks.cursor == pytest.approx((30.0, 20.0), abs=0.3)
    assert window.heat.profile._cursor.isVisible()
    assert window.heat.profile._cursor.value() == pytest.approx(25.0, abs=0.4)  # half of A to B
    QApplication.sendEvent(view, QEvent(QEvent.Type.Leave))
    assert not across.isVisible()
    assert window.canvas.canvas._marks.cursor is None


def test_the_pointer_on_the_canvas_is_seen_in_the_heat_view(window: MainWindow) -> None:
    canvas = window.canvas.canvas
    _mouse(canvas, QEvent.Type.MouseMove, QPoint(canvas.width() // 2, canvas.height() // 2))
    across, along = window.heat._across
    assert across.isVisible()
    assert (along.value(), across.value()) == pytest.approx((canvas.seen.x, canvas.seen.y), abs=1.0)


def test_an_end_of_the_profile_is_dragged(window: MainWindow, qtbot) -> None:
    view, heat = window.heat._graphics.viewport(), window.heat
    heard: list[object] = []
    heat.profile_moved.connect(heard.append)
    start = _over(window, 50.0, 35.0)
    _mouse(view, QEvent.Type.MouseMove, start)
    _mouse(view, QEvent.Type.MouseButtonPress, start, held=True)
    for share in np.linspace(0.2, 1.0, 5):
        qtbot.wait(TWITCH)
        _mouse(
            view, QEvent.Type.MouseMove, _over(window, 50.0 - 20.0 * share, 35.0 - 25.0 * share), held=True
        )
    qtbot.wait(TWITCH)
    _mouse(view, QEvent.Type.MouseButtonRelease, _over(window, 30.0, 10.0))
    assert heard
    a, b = heat.section
    assert a == pytest.approx((10.0, 5.0), abs=0.1)
    assert b == pytest.approx((30.0, 10.0), abs=0.5)
    _, mean = heat.profile._mean.getData()
    assert mean[-1] - mean[0] == pytest.approx(20.0, abs=0.6)  # 1 µm a mm along x


def test_aspects_by_click_and_key_keep_line_and_contours_where_they_belong(window: MainWindow, qtbot) -> None:
    heat = window.heat
    for number, aspect in enumerate(Aspect):
        qtbot.mouseClick(heat.aspects.buttons()[number], Qt.MouseButton.LeftButton)
        assert heat._aspect is aspect
        assert heat._lines.isVisible() is (aspect is Aspect.MEAN)
        assert heat._section.isVisible()
    window.commands["surface"].trigger()
    assert heat._aspect is Aspect.MEAN
