"""Long contours are taken at once: the same to the last bit as point by point."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.board.gerber import read_gerber
from drypoint.board.gerber_tokens import commands

_HEAD = "%FSLAX{digits}Y{digits}*%\n%MO{unit}*%\n%ADD10C,0.1*%\nD10*\n{quadrant}G01*\n"
_WORD = st.integers(-(10**8), 10**8)
_PLACES = st.lists(st.tuples(_WORD, _WORD), min_size=10, max_size=60, unique=True)


def _text(places: list[tuple[int, int]], end: str, between: str, unit: str, region: bool) -> str:
    (x, y), *others = places
    drawn = "".join(f"X{a}{between}Y{b}{end}*\n" for a, b in others)
    head = _HEAD.format(digits="36", unit=unit, quadrant="G75*\n")
    body = f"X{x}Y{y}D02*\nX{x}Y{y}D01*\n{drawn}X{x}Y{y}D01*\n"
    return f"{head}G36*\n{body}G37*\nM02*\n" if region else f"{head}{body}M02*\n"


@given(_PLACES, st.sampled_from(["D01", "D1", ""]), st.sampled_from(["MM", "IN"]), st.booleans())
@settings(deadline=None, max_examples=40)
def test_a_run_is_what_its_commands_are(places, end, unit, region):
    at_once = _text(places, end, "", unit, region)
    one_by_one = _text(places, end, "\n", unit, region)  # a line break in a word: no run is seen
    assert any(command.kind == "run" for command in commands(at_once))
    assert not any(command.kind == "run" for command in commands(one_by_one))
    fast, slow = read_gerber(at_once), read_gerber(one_by_one)
    assert len(fast) == len(slow)
    for a, b in zip(fast.objects, slow.objects, strict=True):
        assert np.array_equal(a.path, b.path)
        assert a.kind == b.kind


@pytest.mark.parametrize(
    ("statement", "interpolation"),
    [("%FSLIX36Y36*%", "G01*"), ("%FSTAX36Y36*%", "G01*"), ("%FSLAX36Y36*%", "G02*")],
)
def test_what_is_no_plain_contour_is_followed_one_by_one(statement, interpolation):
    drawn = [f"X{k * 1000000}Y{(k % 3) * 100000}D01*" for k in range(1, 20)]
    texts = []
    for lines in (drawn, [line.replace("Y", "\nY") for line in drawn]):
        body = "\n".join(lines)
        texts.append(
            f"{statement}\n%MOMM*%\n%ADD10C,0.1*%\nD10*\nG75*\n{interpolation}\nX0Y0D02*\n{body}\nM02*\n"
        )
    fast, slow = (read_gerber(text) for text in texts)
    assert [item.kind for item in fast.objects] == [item.kind for item in slow.objects]
    assert all(np.array_equal(a.path, b.path) for a, b in zip(fast.objects, slow.objects, strict=True))
    # each object keeps the line it stands in
    assert [item.line for item in fast.objects] == list(range(8, 8 + len(fast.objects)))
