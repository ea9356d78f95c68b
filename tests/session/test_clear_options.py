"""The wide bit and clearing from the command line, and what a second bit is said to save."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from drypoint.bits.library import default_library
from drypoint.bits.model import EndMill
from drypoint.errors import InputError
from drypoint.session.clear_options import ClearOptions, choose_clearing, wide_named
from drypoint.session.clear_settings import Clearing, ClearSettings
from drypoint.session.commands import prepare
from drypoint.session.session import Session
from drypoint.session.settings import Settings
from drypoint.session.two_bit_times import TwoBitTimes, candidates, in_words, two_bit_times


def test_the_second_bit_is_told_to_pay_only_where_it_does(small_design: Path, tmp_path: Path) -> None:
    cleared = ClearOptions(wide="0.8", clear="board")
    facts = prepare([small_design], tmp_path / "a.drypoint", clearing=cleared)["cuts"]["two_bits"]
    assert facts["bit"] == "End mill 0.8"
    assert facts["of_that_changes_s"] == 180.0
    assert facts["saved_s"] == pytest.approx(facts["one_bit_s"] - facts["two_bits_s"], abs=0.11)
    assert facts["pays"] is (facts["saved_s"] > 0)
    plain = prepare([small_design], tmp_path / "b.drypoint", clearing=ClearOptions(wide="0.8"))
    # two loops round three pads take no minute: two changes of the bit cannot pay
    assert plain["cuts"]["two_bits"]["pays"] is False
    assert "two_bits" not in prepare([small_design], tmp_path / "c.drypoint")["cuts"]


def test_a_bit_that_is_no_wider_is_told_not_refused_before_it_is_chosen(small_job: Path) -> None:
    session = Session.open(small_job)
    try:
        fine = replace(session.settings.bits.vbit, tip=0.02)
        mill = default_library().mills[0]
        bad, good = two_bit_times(session.derived, session.snapshot, bits=[fine, mill])
        assert session.settings.clearing == ClearSettings()
    finally:
        session.close()
    assert bad.trouble
    assert not bad.pays
    assert in_words(bad) == bad.trouble
    assert good.one == bad.one
    assert good.two > good.change > 0.0


def test_words_say_what_is_saved_or_that_it_does_not_pay() -> None:
    assert in_words(TwoBitTimes("B", 3600.0, 1200.0, 180.0)).startswith("40 min saved")
    assert in_words(TwoBitTimes("B", 600.0, 1200.0, 180.0)).startswith("It does not pay")


def test_only_wider_bits_are_offered_and_each_width_once() -> None:
    library = default_library()
    found = candidates(Settings(), (*library.vbits, *library.mills, *library.mills))
    assert [bit.name for bit in found if isinstance(bit, EndMill)] == [mill.name for mill in library.mills]
    assert all(bit.name != library.vbits[0].name for bit in found)


def test_options_are_kept(small_job: Path) -> None:
    session = Session.open(small_job)
    try:
        choose_clearing(session, ClearOptions("End mill 1.0", 0.12, "moat", 0.9, 2.0))
        kept = session.settings.clearing
    finally:
        session.close()
    assert kept.bit == default_library().find("End mill 1.0")
    assert (kept.depth, kept.what, kept.moat, kept.slivers) == (0.12, Clearing.MOAT, 0.9, 2.0)


@pytest.mark.parametrize(
    "given", [ClearOptions(moat=-1.0), ClearOptions(depth=float("nan")), ClearOptions(wide="spoon")]
)
def test_senseless_options_are_refused(small_job: Path, given: ClearOptions) -> None:
    session = Session.open(small_job)
    try:
        with pytest.raises(InputError):
            choose_clearing(session, given)
    finally:
        session.close()


def test_a_mill_may_be_given_by_its_diameter() -> None:
    bit = wide_named("0.6")
    assert isinstance(bit, EndMill)
    assert (bit.name, bit.diameter, bit.step) == ("End mill 0.6", 0.6, 0.15)
