"""The demo board in the window: everything it has is drawn."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPointF

from drypoint.board.load import load_board
from drypoint.board.model import Board
from drypoint.cuts.grooves import plan_grooves
from drypoint.ui.canvas.content import Content, Layer, View, draw_board
from drypoint.ui.canvas.panel import CanvasPanel
from drypoint.ui.canvas.paths import path_set
from drypoint.ui.theme.theme import Theme

EXAMPLE = Path(__file__).parents[2] / "examples" / "hive-scale"


@pytest.fixture(scope="module")
def board() -> Board:
    return load_board([EXAMPLE])


def test_drawing_keeps_what_the_board_has(board: Board) -> None:
    drawn = draw_board(board)
    assert [net.name for net in drawn.nets] == list(board.nets)
    assert sum(net.area for net in drawn.nets) == pytest.approx(sum(n.area for n in board.nets.values()))
    assert len(drawn.holes) == len(board.holes)
    assert len(drawn.links) == len(board.links)
    assert drawn.bounds[2] - drawn.bounds[0] == pytest.approx(board.width)


def test_every_view_and_layer_of_the_demo_is_painted(theme: Theme, board: Board, qtbot) -> None:
    plan = plan_grooves(board.nets, 0.2, bite=0.03)
    paths = path_set(plan.lines, labels=[", ".join(names) for names in plan.line_nets])
    panel = CanvasPanel(theme)
    qtbot.addWidget(panel)
    panel.resize(900, 700)
    panel.show()
    panel.set_content(Content(board=draw_board(board), grooves=paths, current=paths, order=paths))
    for view in View:
        panel.set_view(view)
        panel.scrub(0.5)
        assert not panel.grab().isNull()
    for layer in Layer:
        panel.show_layer(layer, on=True)
    panel.canvas.set_by_net(True)
    shown = panel.canvas.grab().toImage()
    panel.show_layer(Layer.COPPER, on=False)
    panel.set_view(View.NETS)
    assert panel.canvas.grab().toImage() != shown


def test_a_net_is_found_under_every_one_of_its_pads(light: Theme, board: Board, qtbot) -> None:
    panel = CanvasPanel(light)
    qtbot.addWidget(panel)
    panel.set_content(Content(board=draw_board(board)))
    base = panel.canvas._base
    for name, copper in board.nets.items():
        spot = copper.representative_point()
        found = base.net_at(spot.x, spot.y)
        assert found is not None
        assert found.name == name
        path = base.net_path(name)
        assert path is not None
        assert path.contains(QPointF(spot.x, spot.y))
