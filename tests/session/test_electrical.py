"""Voltages of a job: which pairs they concern, and the clearance they ask for."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from drypoint.cuts.ratings import Surroundings
from drypoint.errors import InputError
from drypoint.session.commands import prepare
from drypoint.session.electrical import volts_between
from drypoint.session.facts import cut_facts
from drypoint.session.report import report
from drypoint.session.session import Session
from drypoint.session.settings import ElectricalSettings, Voltage


def test_a_pair_goes_before_what_holds_for_all() -> None:
    set_ = ElectricalSettings((Voltage("L", "", 325.0), Voltage("N", "L", 320.0), Voltage("V+", "", 24.0)))
    assert volts_between(set_, "L", "GND") == 325.0
    assert volts_between(set_, "L", "N") == volts_between(set_, "N", "L") == 320.0
    assert volts_between(set_, "V+", "GND") == 24.0
    assert volts_between(set_, "V+", "L") == 325.0
    assert volts_between(set_, "GND", "N") == 0.0


@pytest.mark.parametrize(("volts", "close"), [(12.0, False), (60.0, True)])
def test_clearance_after_milling_is_checked(session: Session, volts: float, close: bool) -> None:
    """IPC-2221 table 6-1, bare copper up to 3050 m: 0.1 mm up to 30 V, 0.6 mm up to 150 V; grooves of
    this plan are 0.13 mm wide at the copper's underside, two of them are 0.25 mm."""
    session.change("none", electrical=ElectricalSettings())
    assert session.derived.cuts(session.snapshot).close == ()
    net = max(session.derived.board(session.snapshot).nets.items(), key=lambda one: one[1].area)[0]
    session.change("volts", electrical=ElectricalSettings((Voltage(net, "", volts),)))
    facts = cut_facts(session.derived.cuts(session.snapshot))
    assert bool(facts["too_close"]) is close
    assert all(net in one["nets"] for one in facts["too_close"])
    coated = replace(session.settings.electrical, surroundings=Surroundings.COATED)
    session.change("coated", electrical=coated)
    fewer = cut_facts(session.derived.cuts(session.snapshot))["too_close"]
    assert len(fewer) <= len(facts["too_close"])


def test_voltages_from_the_command_line_are_checked_and_told(hive_scale: Path, tmp_path: Path) -> None:
    found = prepare([hive_scale], tmp_path / "j", voltages=["BAT*=60"], surroundings=Surroundings.BARE)
    assert found["cuts"]["too_close"]
    told = report("prepare", found)
    assert f"Too close for their voltage: {len(found['cuts']['too_close'])}" in told
    assert "0.60 mm are asked for" in told
    with pytest.raises(InputError):
        prepare([hive_scale], tmp_path / "k", voltages=["NOBODY=60"])
    assert not (tmp_path / "k.drypoint").exists()
