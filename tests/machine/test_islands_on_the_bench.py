"""A sample of the boards of tests/benchmarks/island_touch.py: bridges put in on purpose, found by touch."""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path

import pytest

FILE = Path(__file__).parents[1] / "benchmarks" / "island_touch.py"


@pytest.fixture(scope="module")
def boards():
    name = "island_touch"
    spec = importlib.util.spec_from_file_location(name, FILE)
    module = importlib.util.module_from_spec(spec)
    sys.modules[name] = module
    spec.loader.exec_module(module)
    yield module
    del sys.modules[name]


@pytest.mark.parametrize("seed", [0, 4])
def test_every_bridge_is_found_or_listed_and_all_are_found_in_the_end(boards, seed):
    found = boards.one(seed)
    assert found.kinds
    assert found.failed == 0
    assert set(found.first) <= {"joined", "unproved"}
    assert set(found.last) == {"joined"}
    assert found.lies == 0
    assert found.groups
    assert found.again


def test_the_bridges_are_real(boards):
    board = boards.Board(0)
    truth = board.together()
    assert all(truth[a] == truth[b] for a, b in (pair.nets for pair in board.bridges))
    assert len(set(truth.values())) > len(board.nets) / 2
