"""Drill sizes by the names people use."""

import contextlib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.bits.drill_sizes import (
    LETTER_SIZES,
    NUMBER_SIZES,
    drill_size,
    drill_sizes,
    size_words,
    trade_name,
)
from drypoint.errors import InputError


@pytest.mark.parametrize(
    ("text", "size"),
    [
        ("0.8", 0.8),
        ("0,8 mm", 0.8),
        ("1 in", 25.4),
        ('0.5"', 12.7),
        ("1/32 in", 0.79375),
        ("1/8", 3.175),
    ],
)
def test_units(text, size):
    """1 in = 25.4 mm exactly: the international inch (Federal Register 24 FR 5348, 1959)."""
    assert drill_size(text) == pytest.approx(size, abs=1e-12)


@pytest.mark.parametrize("text", ["", "x9", "#29", "#81", "letter Z", "0", "-1", "1/0", "0.8 m", "nan", "no"])
def test_what_is_no_size_is_refused(text):
    with pytest.raises(InputError):
        drill_size(text)


def test_numbers_and_letters_grow_and_come_back():
    """The values themselves are from memory: here only their order and their names are checked."""
    numbers = [NUMBER_SIZES[number] for number in range(80, 29, -1)]
    sizes = [*numbers, *LETTER_SIZES.values()]
    assert sizes == sorted(set(sizes))
    for number, size in NUMBER_SIZES.items():
        assert trade_name(size) == f"number {number}"
        assert drill_size(f"#{number}") == drill_size(f"No. {number}") == size
    for letter, size in LETTER_SIZES.items():
        assert trade_name(size) == f"letter {letter}"
        assert drill_size(letter) == drill_size(f"letter {letter.lower()}") == size


def test_both_units_are_told():
    assert size_words(0.8) == "0.8 mm (0.0315 in)"
    assert size_words(1.016) == "1.016 mm (0.0400 in, number 60)"


def test_a_list_mixes_them():
    assert drill_sizes(" 1.0 0.8mm; 1/32 in  #60 ") == (0.79375, 0.8, 1.0, 1.016)
    assert drill_sizes("number 60 0.04 in") == (1.016,)
    assert drill_sizes("") == ()


@given(st.floats(0.05, 12.0))
def test_what_is_told_is_read_again(size):
    assert drill_size(size_words(size).split(" (", maxsplit=1)[0]) == pytest.approx(size, rel=1e-3)


@given(st.text(max_size=20))
def test_any_text_is_read_or_refused(text):
    with contextlib.suppress(InputError):
        assert all(size > 0.0 for size in drill_sizes(text))
