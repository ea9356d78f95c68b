"""Pauses: kept by place, found again in a program planned anew."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np
import pytest

from drypoint.bits.model import Speeds, VBit
from drypoint.geometry.rigid import Rigid
from drypoint.passes.depth import uniform_pass
from drypoint.program.model import Program
from drypoint.program.place import place
from drypoint.program.settings import ProgramSettings
from drypoint.session.pauses import (
    Pause,
    add_pause,
    pauses_in,
    piece_at,
    pieces_of,
    pieces_to_pause_before,
    remove_pause,
)
from drypoint.session.session import Session

BIT = VBit("V 0.1 30°", 0.1, math.radians(30.0), Speeds(8000.0, 300.0, 100.0))
RINGS = [np.array([(x, 0.0), (x + 4.0, 0.0), (x + 4.0, 4.0), (x, 4.0), (x, 0.0)]) for x in (0.0, 10.0, 20.0)]


def rings(fit: Rigid = Rigid(), depth: float = 0.06) -> Program:
    (program,) = place([uniform_pass(RINGS, BIT, depth)], fit, None, settings=ProgramSettings())
    return program


def test_pieces_begin_where_the_bit_goes_down_and_hold_all_that_is_cut() -> None:
    program = rings()
    pieces = pieces_of(program)
    assert [piece.number for piece in pieces] == [1, 2, 3]
    top = program.moves.end[:, 2].max()
    for piece in pieces:
        before = program.moves.end[program.line_move[piece.line] - 1]
        assert before[2] == pytest.approx(top)
        assert program.moves.end[program.line_move[piece.line], 2] < top
        around = np.hypot(*np.diff(piece.path, axis=0).T).sum()
        assert 16.0 <= around < 17.0, "the whole ring, and the little it overlaps itself at its end"


def test_a_place_finds_its_piece_and_no_other() -> None:
    pieces = pieces_of(rings())
    by_place = {piece_at(pieces, (x + 4.0, 2.0)).number for x in (0.0, 10.0, 20.0)}  # type: ignore[union-attr]
    assert by_place == {1, 2, 3}
    assert piece_at(pieces, (7.0, 2.0)) is None


def test_pieces_over_each_other_are_told_apart_by_their_number() -> None:
    program = rings()
    (one,) = [piece for piece in pieces_of(program) if piece.number == 1]
    twice = (one, replace(one, number=2, line=one.line + 40))
    assert [piece_at(twice, (4.0, 2.0), number).number for number in (1, 2)] == [1, 2]  # type: ignore[union-attr]


@dataclass
class _Placing:
    """Stands for what is derived: only the fit is asked for."""

    turned: Rigid

    def fit(self, _snap: object) -> Rigid:
        return self.turned


def test_pauses_are_kept_in_the_job_and_follow_the_fit(tmp_path: Path) -> None:
    session = Session.create(tmp_path / "pauses")
    pause = Pause(rings().name, (14.0, 2.0), 2)
    add_pause(session, pause)
    add_pause(session, pause)
    add_pause(session, Pause("another-program", (14.0, 2.0), 2))
    path = session.job.path
    session.close()
    session = Session.open(path)
    assert len(pauses_in(session.snapshot)) == 2
    fit = Rigid(math.radians(12.0), (3.0, -5.0))
    session.derived = _Placing(fit)  # type: ignore[assignment]
    program = rings(fit, depth=0.09)  # deeper, turned and moved: other lines, the same piece
    found = pieces_to_pause_before(session, program)
    assert len(found) == 1
    assert np.allclose(fit.inverse().apply(found[0].path[:, :2])[:, 0].min(), 10.0, atol=1e-2)
    remove_pause(session, pause)
    assert [one.program for one in pauses_in(session.snapshot)] == ["another-program"]
    session.close()
