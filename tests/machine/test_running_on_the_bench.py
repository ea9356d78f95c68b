"""A sample of the broken runs of tests/benchmarks/fault_runs.py: every kind of fault, on a whole bench."""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path

import numpy as np
import pytest

from drypoint.bench.faults import SILENT, FaultKind
from drypoint.machine.faults import LineLost

FILE = Path(__file__).parents[1] / "benchmarks" / "fault_runs.py"
SEEDS = (0, 1, 2, 3, 4, 5, 6, 7, 9, 19, 24, 27, 56)
"""Every kind, both kinds of spindle, another fault during the resume (every third), Stop (9), none (19)."""


@pytest.fixture(scope="module")
def runs():
    name = "fault_runs"
    spec = importlib.util.spec_from_file_location(name, FILE)
    module = importlib.util.module_from_spec(spec)
    sys.modules[name] = module
    spec.loader.exec_module(module)
    yield module
    del sys.modules[name]


@pytest.mark.parametrize("seed", SEEDS)
def test_a_broken_run_ends_with_the_copper_of_a_whole_one(runs, seed):
    found = runs.one(seed)
    assert found.error == ""
    if found.kind in SILENT:
        assert not found.noticed
        assert found.suspect, "the checks before the next cut did not see it"
        return
    assert found.struck == found.resumed == (found.kind is not None)
    assert found.noticed == isinstance(found.kind, FaultKind)
    assert found.mishaps == ()
    assert (found.skipped, found.astray) == (0.0, 0.0)
    assert found.deeper <= runs.HEIGHT
    assert found.pieces
    assert not found.suspect


def test_the_sample_has_every_kind(runs):
    faults = [runs.fault_of(seed) for seed in SEEDS]
    assert {fault.kind for fault in faults if fault} == set(FaultKind)
    assert None in faults
    assert runs.STOP in [runs.kind_of(seed) for seed in SEEDS]


def test_the_comparison_sees_what_is_skipped_astray_and_deeper(runs):
    scene = runs.Scene(0)
    samples, pieces = runs.reference(0)
    real = scene.samples
    for changed, name in (
        (samples[samples[:, 0] < 20.0], "skipped"),
        (samples + np.array((0.4, 0.0, 0.0)), "astray"),
        (samples + np.array((0.0, 0.0, 0.05)), "deeper"),
    ):
        scene.samples, scene.pieces = lambda changed=changed: changed, lambda: pieces
        found = runs.Outcome(0, None)
        runs.compare(scene, found)
        assert getattr(found, name) > 0.04
        assert not found.copper
    scene.samples = lambda: samples
    found = runs.Outcome(0, None)
    runs.compare(scene, found)
    assert found.copper
    scene.samples = real


@pytest.mark.parametrize("line", ["X16", "Z2F600", "G0X28Y10", "X9"])
def test_no_lost_line_leads_the_bit_astray(runs, tmp_path, line):
    """Corners, lifts and ways across are sent alone: nothing follows one that is lost."""
    scene = runs.Scene(0)
    lost = []

    def arrives(piece):
        if not lost and piece == f"{line}\n".encode():
            lost.append(piece)
            return b""
        return piece

    found = runs.Outcome(1, FaultKind.DROPPED_LINE, struck=True)
    with runs.Kept(tmp_path, scene) as kept:
        scene.bench.controller.on_text = arrives
        with pytest.raises(LineLost):
            runs.run_program(scene.place, kept.program, kept.journal(), check_first=False)
        runs.take_up(scene, kept, found)
    assert lost
    runs.compare(scene, found)
    assert found.mishaps == ()
    assert found.copper


def test_lines_are_not_carried_out_where_the_check_mode_did_not_come(runs):
    scene = runs.Scene(1)
    before = scene.place.controller.place()
    scene.bench.controller.on_text = lambda piece: b"$#\n" if piece == b"$C\n" else piece
    with pytest.raises(runs.MachineError, match="check mode"):
        scene.place.controller.check(runs.program().lines)
    assert scene.place.controller.place() == before
    assert not scene.bench.body.turning
