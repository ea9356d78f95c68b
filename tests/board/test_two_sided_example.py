"""The two-sided example is what its generator says, and every net is whole through both sides."""

from __future__ import annotations

from pathlib import Path
from types import ModuleType

import pytest
import shapely

from drypoint.board.copper import overlaps, pieces
from drypoint.board.load import load_board
from drypoint.board.model import Board, Side


@pytest.fixture(scope="module")
def bell(root: Path) -> Board:
    return load_board([root / "examples" / "frost-bell"])


def test_the_files_are_what_the_generator_writes(root: Path, two_sided_source: ModuleType) -> None:
    folder, made = root / "examples" / "frost-bell", two_sided_source.files()
    assert {path.name for path in folder.iterdir()} == set(made)
    for name, text in made.items():
        assert (folder / name).read_text(encoding="ascii") == text, name


def test_no_nets_touch_on_either_side(root: Path, bell: Board) -> None:
    for board in (bell, load_board([root / "examples" / "frost-bell"], side=Side.TOP)):
        assert len(board.nets) == 8
        assert not overlaps(board.nets)
        names = list(board.nets)
        for at, name in enumerate(names):
            for other in names[at + 1 :]:
                gap = shapely.distance(board.nets[name], board.nets[other])
                assert gap > 0.35, (name, other, gap)  # room for two grooves


def test_each_net_is_whole_through_its_holes_and_on_no_side_alone(bell: Board) -> None:
    alone = 0
    for net, copper in bell.nets.items():
        parts = [*pieces(copper), *pieces(bell.other_copper[net])]
        discs = [shapely.Point(h.x, h.y).buffer(h.diameter / 2) for h in bell.holes if h.net == net]
        groups = [{k} for k in range(len(parts))]
        for disc in discs:
            met = {k for k, part in enumerate(parts) if part.intersects(disc)}
            joined = [group for group in groups if group & met]
            groups = [group for group in groups if not group & met] + [set().union(*joined)]
        assert len(groups) == 1, net
        alone += len(pieces(copper)) == 1 or len(pieces(bell.other_copper[net])) == 1
    assert alone < len(bell.nets)
