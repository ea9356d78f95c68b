"""Test pattern and burn grid on the command line."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from drypoint.__main__ import main
from drypoint.program.laser_check import check_beam
from drypoint.session.laser_safety import EYES
from drypoint.session.session import Session
from drypoint.session.settings import LaserSection


@pytest.fixture
def roomy(small_job):
    session = Session.open(small_job)
    laser = LaserSection(coating="black paint", declared_safe=True)
    session.change("Room", blank=replace(session.settings.blank, margin=16.0), laser=laser)
    session.close()
    return small_job


def test_the_pattern_is_rehearsed_and_its_truth_lies_in_the_intervals(roomy, capsys):
    assert main(["coupon", str(roomy), "--rehearse", "--seed", "3", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)["rehearsed"]
    for name in ("tip_mm", "runout_mm", "tip_and_runout_mm", "deeper_than_set_mm"):
        one = found[name]
        assert abs(one["value"] - one["true"]) < 2.6 * one["sigma"], name
    assert found["mishaps"] == []
    session = Session.open(roomy)
    assert not session.snapshot.records["trial cut"], "the job stays as it is"
    session.close()


def test_the_grid_is_written_with_its_cautions_and_the_best_field_kept(roomy, tmp_path, capsys):
    made = tmp_path / "made"
    words = ["burn-grid", str(roomy), "--to", str(made), "--corner", "lower right", "--best", "2,3", "--json"]
    assert main(words) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["chosen"] == {"power": 0.2, "dwell_ms": 20.0}
    text = (made / "40-burn-grid.nc").read_text(encoding="ascii")
    remarks = " ".join(line.strip("()") for line in text.splitlines() if line.startswith("("))
    assert EYES in remarks
    beam = check_beam([line for line in text.splitlines()[:-1] if not line.startswith("(")])
    session = Session.open(roomy)
    assert [(one.name, one.power, one.dwell) for one in session.settings.laser.materials] == [
        ("black paint", 0.2, 0.02)
    ]
    layout = session.derived.layout(session.snapshot)
    x, y = beam.spots.mean(axis=0)
    assert x > layout.width / 2
    assert y < layout.height / 2
    session.close()
    fields = (made / "burn-grid.txt").read_text(encoding="utf-8")
    assert "2,3" in fields


@pytest.mark.parametrize(
    ("words", "said"), [([], "--best"), (["--best", "9,1"], "no field in row 9"), (["--best", "1"], "ROW")]
)
def test_what_makes_no_sense_is_refused(roomy, capsys, words, said):
    if words == ["--best", "1"]:
        with pytest.raises(SystemExit):
            main(["burn-grid", str(roomy), *words])
    else:
        assert main(["burn-grid", str(roomy), *words]) == 1
    assert said in capsys.readouterr().err


def test_no_grid_for_a_material_that_is_not_acknowledged(roomy, tmp_path, capsys):
    session = Session.open(roomy)
    session.change("Bare", laser=LaserSection(bare=True))
    session.close()
    assert main(["burn-grid", str(roomy), "--to", str(tmp_path / "made")]) == 1
    assert "not acknowledged" in capsys.readouterr().err
    assert not (tmp_path / "made").exists()
