"""The path canvas: what it paints, finds and lets be done."""

from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter
from shapely import box

from drypoint.bits.model import EndMill, Speeds
from drypoint.board.model import Board, Hole, Side
from drypoint.cuts.model import Cut, CutKind
from drypoint.passes.model import ReachMap
from drypoint.ui.canvas.base import BasePainter
from drypoint.ui.canvas.canvas import PathCanvas
from drypoint.ui.canvas.content import Clamp, Content, ReferenceHole, View, draw_board, find_tabs
from drypoint.ui.canvas.hover import Card, quarter
from drypoint.ui.canvas.panel import CanvasPanel
from drypoint.ui.canvas.pass_drawing import draw_reach
from drypoint.ui.canvas.paths import path_set
from drypoint.ui.canvas.pick import pick
from drypoint.ui.canvas.rulers import figure, step_of
from drypoint.ui.canvas.strokes import Frame
from drypoint.ui.canvas.tiles import TileCache
from drypoint.ui.canvas.viewport import Viewport
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.tokens import LIGHT


@pytest.fixture
def content() -> Content:
    nets = {"A": box(5, 5, 20, 10), "B": box(25, 5, 35, 25)}
    board = Board("two", Side.BOTTOM, box(0, 0, 40, 30), nets, "touching", (Hole(8, 7.5, 1.0),))
    lines = [np.asarray(net.buffer(0.2).exterior.coords) for net in nets.values()]
    chance = tuple(np.linspace(0.1, 1.0, len(line)) for line in lines)
    reach = ReachMap(tuple(lines), chance, tuple(np.full(len(line), 0.2) for line in lines))
    paths = path_set(lines, labels=["A", "B"])
    return Content(
        board=draw_board(board),
        blank=(-5, -5, 45, 35),
        grooves=paths,
        current=paths,
        order=paths,
        reach=draw_reach(reach, (("A",), ("B",))),
        clamps=(Clamp(1, (-8, 10, -2, 16), 2.0),),
        references=(ReferenceHole("R1", (42, 2), (42.05, 2.0)),),
    )


@pytest.fixture
def canvas(light: Theme, content: Content, qtbot) -> PathCanvas:
    made = PathCanvas(light)
    qtbot.addWidget(made)
    made.resize(800, 600)
    made.show()
    made.set_content(content)
    made.grab()
    return made


def test_viewport_maps_there_and_back() -> None:
    view = Viewport(800, 600, 12.0, -3.0, 7.0)
    assert view.to_mm(*view.spot(20.0, 5.0)) == pytest.approx((20.0, 5.0))
    assert view.to_px([(20.0, 5.0)])[0] == pytest.approx(view.spot(20.0, 5.0))


def test_zoom_keeps_the_place_under_the_cursor() -> None:
    view = Viewport(800, 600, 12.0, -3.0, 7.0)
    before = view.to_mm(123, 456)
    assert view.zoomed(1.7, 123, 456).to_mm(123, 456) == pytest.approx(before)


@pytest.mark.parametrize(
    ("scale", "step"), [(8.0, 10.0), (64.0, 1.0), (100.0, 1.0), (1000.0, 0.1), (1.0, 100.0)]
)
def test_rulers_count_in_ones_twos_and_fives(scale: float, step: float) -> None:
    assert step_of(scale) == pytest.approx(step)


def test_ruler_figures() -> None:
    assert figure(-10.0, 10.0) == "−10"
    assert figure(0.30000000000000004, 0.1) == "0.3"
    assert figure(-0.0, 1.0) == "0"


@pytest.mark.parametrize("view", list(View))
def test_tiles_give_the_same_picture_as_painting_at_once(content: Content, view: View, qapp) -> None:
    base = BasePainter(LIGHT)
    base.show(content)
    base.view = view
    base.travelled = 40.0
    seen = Viewport(512, 384, 20.0, 15.0, 10.0)  # whole pixels: no rounding between the two
    tiled, whole = (QImage(512, 384, QImage.Format.Format_ARGB32_Premultiplied) for _ in range(2))
    for picture in (tiled, whole):
        picture.fill(QColor(LIGHT.canvas))
    painter = QPainter(tiled)
    assert TileCache(base.paint, lambda: LIGHT.canvas).draw(painter, seen, 1.0, QPointF(), budget=60.0)
    painter.end()
    painter = QPainter(whole)
    origin = (seen.x * seen.scale - 256, -seen.y * seen.scale - 192)
    base.paint(painter, Frame(seen.scale, origin, seen.bounds))
    painter.end()
    a, b = (np.frombuffer(p.constBits(), np.uint8).reshape(384, 512, 4).astype(int) for p in (tiled, whole))
    assert (np.abs(a - b).max(axis=2) > 48).mean() < 0.004  # antialiased edges may differ by a step


def test_progress_is_painted_anew_only_where_it_changed(canvas: PathCanvas, qtbot) -> None:
    canvas.set_view(View.ORDER)
    canvas.grab()
    qtbot.waitUntil(lambda: not canvas._more.isActive())  # all tiles are there
    canvas.set_travelled(30.0)
    assert canvas._tiles._old
    assert len(canvas._tiles._old) < len(canvas._tiles._tiles)


def test_grey_picture_still_tells_the_three_states(content: Content, qapp) -> None:
    """Each state has its own pattern of light and dark along a groove."""
    from drypoint.ui.canvas.base import paint_sample_reach

    spans = []
    for state in range(3):
        picture = QImage(120, 24, QImage.Format.Format_Grayscale8)
        picture.fill(QColor(LIGHT.blank))
        painter = QPainter(picture)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_sample_reach(painter, LIGHT, state, np.array([[4.0, 12.0], [116.0, 12.0]]))
        painter.end()
        grey = np.frombuffer(picture.constBits(), np.uint8).reshape(24, picture.bytesPerLine())[:, 10:110]
        along = grey[12].astype(int)
        thick = int((grey.astype(int) < 150).any(axis=1).sum())
        spans.append((np.ptp(along) > 60, thick))
    assert not spans[0][0]
    assert spans[1][0]  # dashes change along the line, the plain line does not
    assert spans[0][1] < spans[1][1] < spans[2][1]  # and the third is the thickest by its ticks


def test_picking_finds_what_is_there(content: Content, qapp) -> None:
    base = BasePainter(LIGHT)
    base.show(content)
    base.view = View.REACH

    def kind(x: float, y: float) -> str | None:
        found = pick(base, x, y, 20.0)
        return None if found is None else found.kind

    assert kind(8, 7.5) == "hole"
    assert kind(12, 8) == "net"
    assert kind(12, 4.8) == "groove"
    assert kind(-5, 12) == "clamp"
    assert kind(42, 2) == "reference"
    assert kind(22.5, 27) is None
    groove = pick(base, 12, 4.8, 20.0)
    assert groove is not None
    assert groove.name == "A"
    assert 0.1 <= dict(groove.values)["probability"] <= 1.0


def test_card_never_covers_its_subject_nor_leaves_the_canvas(content: Content) -> None:
    view = Viewport(800, 600).fitted((-5, -5, 45, 35))
    for x in np.linspace(-4, 44, 13):
        for y in np.linspace(-4, 34, 9):
            place = quarter(view, content, (x, y), 200, 100)
            assert QRectF(0, 0, 800, 600).contains(place)
            assert not place.contains(QPointF(*view.spot(x, y)))


def test_wheel_keys_and_drag_move_the_view(canvas: PathCanvas, qtbot) -> None:
    fitted = canvas.seen
    canvas.setFocus()
    qtbot.keyClick(canvas, Qt.Key.Key_Plus)
    assert canvas.seen.scale > fitted.scale
    qtbot.keyClick(canvas, Qt.Key.Key_Right)
    assert canvas.seen.x > fitted.x
    middle = QPoint(400, 300)
    before = canvas.seen
    qtbot.mousePress(canvas, Qt.MouseButton.MiddleButton, pos=middle)
    qtbot.mouseMove(canvas, middle + QPoint(50, 0))
    qtbot.mouseRelease(canvas, Qt.MouseButton.MiddleButton, pos=middle + QPoint(50, 0))
    assert canvas.seen.x < before.x
    canvas.fit()
    assert canvas.seen == fitted


def test_click_picks_and_drag_measures(canvas: PathCanvas, qtbot) -> None:
    spot = QPoint(*(round(v) for v in canvas.seen.spot(12.0, 8.0)))
    with qtbot.waitSignal(canvas.picked) as caught:
        qtbot.mouseClick(canvas, Qt.MouseButton.LeftButton, pos=spot)
    assert caught.args[0].name == "A"
    canvas.set_measuring(True)
    end = QPoint(*(round(v) for v in canvas.seen.spot(32.0, 8.0)))
    found: list[object] = []
    canvas.measured.connect(found.append)
    qtbot.mousePress(canvas, Qt.MouseButton.LeftButton, pos=spot)
    qtbot.mouseMove(canvas, end)
    qtbot.mouseRelease(canvas, Qt.MouseButton.LeftButton, pos=end)
    (ax, ay), (bx, by) = found[-1]
    assert bx - ax == pytest.approx(20.0, abs=0.2)
    assert by - ay == pytest.approx(0.0, abs=0.2)


def test_clamp_is_dragged_only_while_editing(canvas: PathCanvas, qtbot) -> None:
    spot = QPoint(*(round(v) for v in canvas.seen.spot(-5.0, 12.0)))
    moved: list[tuple[int, float, float]] = []
    start = canvas.seen
    canvas.clamp_dragged.connect(lambda n, dx, dy: moved.append((n, dx, dy)))
    for editing in (False, True):
        canvas.set_editing(editing)
        qtbot.mousePress(canvas, Qt.MouseButton.LeftButton, pos=spot)
        qtbot.mouseMove(canvas, spot + QPoint(40, 0))
        qtbot.mouseRelease(canvas, Qt.MouseButton.LeftButton, pos=spot + QPoint(40, 0))
        assert bool(moved) is editing
        scale = canvas.seen.scale
        canvas._look(start)
    assert moved[0][0] == 1
    assert sum(dx for _, dx, _ in moved) == pytest.approx(40 / scale, rel=0.05)


def test_hover_card_tells_the_reach(canvas: PathCanvas) -> None:
    canvas.set_view(View.REACH)
    canvas.show_card_at(12.0, 4.8)
    assert canvas._card is not None
    card: Card = canvas._card[1]
    assert card.state in ("through", "doubtful", "not through")
    assert len(card.rows) <= 4


def test_scrubber_replays_the_order(light: Theme, content: Content, qtbot) -> None:
    panel = CanvasPanel(light)
    qtbot.addWidget(panel)
    panel.resize(800, 600)
    panel.show()
    panel.set_content(content)
    panel.set_view(View.ORDER)
    panel.set_run_time(60.0)
    assert panel.scrubber.isVisible()
    panel.scrub(0.0)
    panel.step(1)
    assert content.order is not None
    assert panel.canvas.travelled == pytest.approx(content.order.starts_at(1))
    panel.step(5)
    assert panel.canvas.travelled == pytest.approx(content.order.starts_at(1))
    panel.step(-10)
    assert panel.canvas.travelled == 0.0
    panel.set_view(View.NETS)
    assert not panel.scrubber.isVisible()


def test_tabs_lie_along_the_cut() -> None:
    mill = EndMill("mill", 1.0, Speeds(10000, 100, 50), 0.5)
    path = np.array([(0.0, 0.0), (10.0, 0.0), (10.0, 8.0), (0.0, 8.0), (0.0, 0.0)])
    cut = Cut(CutKind.OUTLINE, mill, path, tabs=np.array([(5.0, 0.0), (10.0, 4.0)]), tab_width=3.0)
    tabs = find_tabs((cut,))
    assert [tab.direction for tab in tabs] == [pytest.approx((1.0, 0.0)), pytest.approx((0.0, 1.0))]
    assert tabs[0].length == 3.0


def test_empty_canvas_is_calm(theme: Theme, qtbot) -> None:
    canvas = PathCanvas(theme)
    qtbot.addWidget(canvas)
    canvas.show()
    assert not canvas.grab().isNull()
    assert canvas.extent() is None


def test_clamps_are_chosen_and_moved_by_keys(canvas: PathCanvas, qtbot) -> None:
    canvas.set_editing(True)
    canvas.setFocus()
    with qtbot.waitSignal(canvas.picked) as caught:
        qtbot.keyClick(canvas, Qt.Key.Key_C)
    assert (caught.args[0].kind, caught.args[0].index) == ("clamp", 1)
    with qtbot.waitSignal(canvas.clamp_dragged) as dragged:
        qtbot.keyClick(canvas, Qt.Key.Key_Up)
    assert dragged.args == [1, pytest.approx(0.0), pytest.approx(0.1)]
