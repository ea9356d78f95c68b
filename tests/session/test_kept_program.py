"""A program kept with its run is the very same program."""

from __future__ import annotations

import json

import numpy as np
import pytest

from drypoint.errors import StoreError
from drypoint.session.kept_program import pack, unpack
from drypoint.session.session import Session
from drypoint.session.work import later_work, marks_work


def test_programs_come_back_whole(session: Session) -> None:
    snap = session.snapshot
    items = (*marks_work(session.derived, snap), *later_work(session.derived, snap))
    assert {type(item.program.bit).__name__ for item in items} == {"VBit", "Drill", "EndMill"}
    for item in items:
        program = unpack(json.loads(json.dumps(pack(item.program))))
        assert program.lines == item.program.lines
        assert program.bit == item.program.bit
        for name in ("kind", "end", "feed", "centre", "tag", "dwell"):
            kept, given = getattr(program.moves, name), getattr(item.program.moves, name)
            assert kept.dtype == given.dtype
            np.testing.assert_array_equal(kept, given)
        np.testing.assert_array_equal(program.line_move, item.program.line_move)


@pytest.mark.parametrize("field", ["arrays", "bit", "lines"])
def test_a_damaged_one_is_told(session: Session, field: str) -> None:
    (item,) = marks_work(session.derived, session.snapshot)
    data = pack(item.program)
    data[field] = {"arrays": "AAAA", "bit": {"type": "Spoon"}, "lines": None}[field]
    with pytest.raises(StoreError, match="cannot be read"):
        unpack(data)
