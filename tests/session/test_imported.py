"""Ready-made programs in a job: listed, placed, run; what cannot be used is told, and nothing fails."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
import shapely

from drypoint.errors import InputError, PlanError
from drypoint.program.check import check_lines
from drypoint.session.commands import prepare, show_job
from drypoint.session.derive import Derived
from drypoint.session.programs import programs
from drypoint.session.session import Session
from drypoint.session.settings import CopySettings, FileUse, ImportedSettings, ProgramUse, ToolChoice
from drypoint.session.work import WorkKind, later_work

_HOLES = "G21 G90\nT1 M6\nF60\n" + "".join(f"G0 X{x} Y5 Z1\nG1 Z-1.8\nG0 Z1\n" for x in (5, 10, 15)) + "M2\n"
_GROOVES = "G21 G90\nF200\nG0 X12.5 Y-2 Z1\nG1 Z-0.08\nY12\nG0 Z1\nX3 Y3\nG1 Z-.08\nX7\nG0 Z1\nM2\n"
_OUTLINE = "G21 G90\nT3 M6\nF100\nG0 X-1 Y-1 Z1\nG1 Z-1.8\nX21\nY11\nX-1\nY-1\nG0 Z1\nM2\n"


def _used(name: str, use: ProgramUse) -> ImportedSettings:
    return ImportedSettings(uses=(FileUse(name, use),))


def _job(folder: Path, design: Path, **files: str) -> Session:
    for name, text in files.items():
        (design / f"{name}.nc").write_text(text)
    prepare([design], folder / "ready.drypoint")
    return Session.open(folder / "ready.drypoint")


def test_show_lists_every_program(small_design: Path, tmp_path: Path) -> None:
    session = _job(tmp_path, small_design, holes=_HOLES, odd="G21\nG10 L2 P1 X0\nM2\n", grooves=_GROOVES)
    session.close()
    listed = {one["name"]: one for one in show_job(tmp_path / "ready.drypoint")["ready_made"]}
    assert listed["holes.nc"]["tools"] == [
        {"tool": 1, "use": "drilling", "depth_mm": 1.8, "bit": "Drill 0.8 mm"}
    ]
    assert listed["grooves.nc"]["tools"][0]["bit"].startswith("V-bit")
    assert listed["odd.nc"]["used_as"] == "not run"


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("G10 L2 P1 X0", "G10 changes"),
        ("$100=250", ""),
        ("G53 X0", "G53 moves in machine"),
        ("G41 D1", "compensation"),
        ("G18", "XY plane"),
    ],
)
def test_refused_lines_are_told_and_the_job_is_planned(
    small_design: Path, tmp_path: Path, line: str, words: str
) -> None:
    (small_design / "odd.nc").write_text(f"G21 G90\nG0 X1 Y1 Z1\n{line}\nM2\n")
    facts = prepare([small_design], tmp_path / "j")
    told = [text for text in facts["warnings"] if text.startswith("odd.nc, line 3: This program is not used")]
    assert len(told) == 1
    assert words in told[0]
    assert facts["cuts"]["loops"] > 0


def test_holes_are_drilled_where_the_fit_puts_them(small_design: Path, tmp_path: Path) -> None:
    session = _job(tmp_path, small_design, holes=_HOLES)
    snap = session.snapshot
    items = later_work(session.derived, snap)
    (ready,) = [item for item in items if item.kind is WorkKind.READY]
    assert [item.kind for item in items][-1] is WorkKind.OUTLINE
    moves = ready.program.moves
    bottoms = moves.end[moves.end[:, 2] < -1.7][:, :2]
    wanted = session.derived.fit(snap).apply([(5, 5), (10, 5), (15, 5)])
    assert np.allclose(np.unique(bottoms, axis=0), wanted, atol=1e-3)
    for program in programs(session):
        check_lines(program.lines, session.settings.machine.clearance)
    session.close()


def test_every_copy_gets_the_program(small_design: Path, tmp_path: Path) -> None:
    session = _job(tmp_path, small_design, holes=_HOLES)
    session.change("Two", copies=CopySettings(1, 2, 6.0))
    items = [item for item in later_work(session.derived, session.snapshot) if item.kind is WorkKind.READY]
    assert len(items) == len({item.program.name for item in items}) == 2
    low, high = (item.program.moves.end for item in items)
    shift = high[high[:, 2] < -1.7][0, :2] - low[low[:, 2] < -1.7][0, :2]
    assert shift == pytest.approx((0.0, 16.0), abs=1e-3)
    session.close()


def test_places_of_the_design_are_recognised(small_design: Path, tmp_path: Path) -> None:
    """The design lies at x 100 to 120, y 50 to 60 and is seen from below: x is mirrored."""
    moved = "G21 G90\nT1 M6\nF60\nG0 X105 Y55 Z1\nG1 Z-1.8\nG0 Z1\nM2\n"
    session = _job(tmp_path, small_design, moved=moved)
    (one,) = session.derived.ready(session.snapshot)
    assert "design files" in one.why
    assert one.place.apply([(105, 55)])[0] == pytest.approx((15.0, 5.0))
    session.close()


def test_a_tool_nobody_can_know_is_asked_for(small_design: Path, tmp_path: Path) -> None:
    """Holes where the board has none: the drill cannot be told, so the program waits for a choice."""
    text = _HOLES.replace("Y5", "Y8")
    session = _job(tmp_path, small_design, holes=text)
    cuts = session.derived.cuts(session.snapshot)
    assert any("No bit is chosen for tool 1 (drilling)" in finding.what for finding in cuts.findings)
    assert not _ready(session)
    session.change("Choose", imported=ImportedSettings(bits=(ToolChoice("holes.nc", 1, "Drill 1.0 mm"),)))
    assert [program.bit.name for program in _ready(session)] == ["Drill 1.0 mm"]
    session.change("Leave out", imported=_used("holes.nc", ProgramUse.LEFT_OUT))
    assert not _ready(session)
    session.close()


def _ready(session: Session) -> list[object]:
    items = later_work(session.derived, session.snapshot)
    return [item.program for item in items if item.kind is WorkKind.READY]


def test_grooves_of_a_program_take_the_place_of_ours(small_design: Path, tmp_path: Path) -> None:
    """One cut between the two nets, one through a track: the island check judges the program's grooves."""
    session = _job(tmp_path, small_design, grooves=_GROOVES)
    session.change("Use", imported=_used("grooves.nc", ProgramUse.GROOVES))
    cuts = session.derived.cuts(session.snapshot)
    drawn = shapely.union_all([shapely.LineString(line) for line in cuts.grooves.lines])
    wanted = shapely.MultiLineString([[(12.5, -2), (12.5, 12)], [(3, 3), (7, 3)]])
    assert drawn.hausdorff_distance(wanted) < 1e-9
    assert not _ready(session)
    session.close()


def test_an_outline_of_a_program_comes_last_and_alone(small_design: Path, tmp_path: Path) -> None:
    session = _job(tmp_path, small_design, out=_OUTLINE)
    session.change("Use", imported=_used("out.nc", ProgramUse.OUTLINE))
    items = later_work(session.derived, session.snapshot)
    assert items[-1].kind is WorkKind.READY
    assert not [item for item in items if item.kind is WorkKind.OUTLINE]
    session.change("Use another", imported=_used("gone.nc", ProgramUse.OUTLINE))
    with pytest.raises(PlanError, match="outline cannot be run"):
        later_work(session.derived, session.snapshot)
    session.close()


def test_chosen_grooves_that_are_not_there(small_design: Path, tmp_path: Path) -> None:
    session = _job(tmp_path, small_design, holes=_HOLES, bad="G21\nG1 X\nM2\n")
    for name, kind in (("gone.nc", InputError), ("bad.nc", InputError), ("holes.nc", PlanError)):
        session.change("Use", imported=_used(name, ProgramUse.GROOVES))
        with pytest.raises(kind):
            Derived().cuts(session.snapshot)
    session.close()
