"""Several boards on one blank, and boards known only from ready-made programs."""

from __future__ import annotations

import shutil
import zipfile
from pathlib import Path

import pytest
import shapely

from drypoint.__main__ import main
from drypoint.board.groups import boards_in
from drypoint.board.model import Side
from drypoint.errors import InputError, PlanError
from drypoint.session.commands import prepare, rehearse_job, show_job
from drypoint.session.programs import programs
from drypoint.session.session import Session
from drypoint.session.settings import (
    CopyPlace,
    CopySettings,
    FileUse,
    ImportedSettings,
    ProgramUse,
    ToolChoice,
    ZeroOfZ,
)
from drypoint.session.two_sides import seen_from
from drypoint.session.work import WorkKind, later_work

_GROOVES = "G21 G90\nF200\nG0 X12 Y4 Z1\nG1 Z-.08\nY12\nG0 Z1\nX4 Y4\nG1 Z-.08\nX8\nY8\nG0 Z1\nM2\n"
_HOLES = "G21 G90\nT1 M6\nF60\n" + "".join(f"G0 X{x} Y5 Z1\nG1 Z-1.8\nG0 Z1\n" for x in (5, 15)) + "M2\n"
_LOOP = "G1 X21\nY16\nX1\nY1\n"
_OUT = f"G21 G90\nT3 M6\nF100\nG0 X1 Y1 Z1\nG1 Z-.9\n{_LOOP}G1 Z-1.8\n{_LOOP}G0 Z1\nM2\n"


@pytest.fixture
def programs_folder(tmp_path: Path) -> Path:
    folder = tmp_path / "programs"
    folder.mkdir()
    for name, text in (("grooves", _GROOVES), ("holes", _HOLES), ("out", _OUT)):
        (folder / f"{name}.nc").write_text(text)
    return folder


@pytest.fixture
def two_designs(small_design: Path, tmp_path: Path) -> tuple[Path, Path]:
    """The small design (20 × 10 mm) as a folder and, with one net called otherwise, as a zip."""
    other = tmp_path / "other.zip"
    with zipfile.ZipFile(other, "w") as archive:
        for path in small_design.iterdir():
            archive.writestr(path.name, path.read_bytes())
    return small_design, other


# programs alone


def test_programs_alone_make_a_job(programs_folder: Path, tmp_path: Path) -> None:
    facts = prepare([programs_folder], tmp_path / "j")
    # the edge is the loop that is milled round everything, from 1, 1 to 21, 16
    assert (facts["board"]["width_mm"], facts["board"]["height_mm"]) == (20.0, 15.0)
    assert facts["board"]["nets"] == 0
    assert facts["board"]["net_source"] == "programs"
    assert facts["island_check"]["possible"] is False
    assert any("no copper data" in text for text in facts["warnings"])
    assert facts["cuts"]["groove_length_mm"] == pytest.approx(8.0 + 4.0 + 4.0)
    used = {one["name"]: one["used_as"] for one in show_job(tmp_path / "j.drypoint")["ready_made"]}
    assert used == {"grooves.nc": "grooves", "holes.nc": "not run", "out.nc": "program of its own"}


def test_all_programs_keep_one_zero(programs_folder: Path, tmp_path: Path) -> None:
    """Grooves, holes and outline lie to each other as in the files, from the loop's lower left."""
    prepare([programs_folder], tmp_path / "j")
    session = Session.open(tmp_path / "j.drypoint")
    choice = ImportedSettings(bits=(ToolChoice("holes.nc", 1, "Drill 0.8 mm"),))
    session.change("Choose", imported=choice)
    snap = session.snapshot
    lines = shapely.union_all([shapely.LineString(line) for line in session.derived.cuts(snap).grooves.lines])
    wanted = shapely.MultiLineString([[(11, 3), (11, 11)], [(3, 3), (7, 3), (7, 7)]])
    assert lines.hausdorff_distance(wanted) < 1e-9
    items = later_work(session.derived, snap)
    assert {item.kind for item in items} == {WorkKind.READY}
    assert [item.program.bit.name for item in items] == ["Drill 0.8 mm", "End mill 2.0 mm"]
    moves = items[0].program.moves
    bottoms = moves.end[moves.end[:, 2] < -1.7][:, :2]
    wanted_holes = session.derived.fit(snap).apply([(4, 4), (14, 4)])
    assert sorted(map(tuple, bottoms.round(3).tolist())) == sorted(map(tuple, wanted_holes.round(3).tolist()))
    assert len(programs(session)) == len({program.name for program in programs(session)})
    session.close()


def test_grooves_can_be_run_as_they_are(programs_folder: Path, tmp_path: Path) -> None:
    prepare([programs_folder], tmp_path / "j")
    session = Session.open(tmp_path / "j.drypoint")
    uses = (FileUse("grooves.nc", ProgramUse.OWN), FileUse("out.nc", ProgramUse.LEFT_OUT))
    session.change("As it is", imported=ImportedSettings(uses=uses))
    snap = session.snapshot
    assert session.derived.cuts(snap).grooves.lines == ()
    (item,) = later_work(session.derived, snap)
    assert item.program.title.startswith("grooves.nc")
    session.close()


def test_zero_on_the_backing_lowers_everything(programs_folder: Path, tmp_path: Path) -> None:
    """The laminate is 1.55 mm thick: 1.47 mm above the backing is 0.08 mm below the copper."""
    raised = _GROOVES.replace("Z-.08", "Z1.47").replace("Z1\n", "Z3\n")
    (programs_folder / "grooves.nc").write_text(raised)
    (programs_folder / "holes.nc").unlink()
    (programs_folder / "out.nc").unlink()
    facts = prepare([programs_folder], tmp_path / "j")
    assert any("as if that were on the backing" in text for text in facts["warnings"])
    (programs_folder / "out.nc").write_text(_OUT)
    prepare([programs_folder], tmp_path / "j")
    session = Session.open(tmp_path / "j.drypoint")
    assert session.derived.cuts(session.snapshot).grooves.lines == ()
    session.change("Backing", imported=ImportedSettings(zero=ZeroOfZ.BACKING))
    (grooves, _) = session.derived.ready(session.snapshot)
    assert grooves.grooves[0].depth == pytest.approx(0.08)
    session.close()


def test_programs_alone_are_rehearsed(programs_folder: Path, tmp_path: Path) -> None:
    prepare([programs_folder], tmp_path / "j")
    found = rehearse_job(tmp_path / "j.drypoint", touches=20)
    assert found["passes"][-1]["actual_through"] > 0.99
    assert found["island_check"]["possible"] is False


def test_the_second_copper_is_still_asked_for(small_design: Path, programs_folder: Path) -> None:
    """Programs beside copper of the other side only: the copper that is to be milled is missing."""
    for path in programs_folder.iterdir():
        shutil.copy(path, small_design)
    with pytest.raises(InputError, match="No file is the copper of the top"):
        prepare([small_design], programs_folder / "j", side=Side.TOP)


# several boards


def test_folders_with_the_same_copper_are_boards_of_their_own(two_designs: tuple[Path, Path]) -> None:
    folder, other = two_designs
    assert list(boards_in([folder])) == [""]
    assert list(boards_in([folder, other])) == [folder.name, "other"]
    loose = folder / next(iter(folder.iterdir())).name
    with pytest.raises(InputError, match="not plain which board"):
        boards_in([folder, other, loose])


def test_a_board_spread_over_folders_stays_one(small_design: Path, tmp_path: Path) -> None:
    drills = tmp_path / "drills"
    drills.mkdir()
    for path in list(small_design.iterdir()):
        if path.suffix == ".drl":
            path.rename(drills / path.name)
    assert list(boards_in([small_design, drills])) == [""]


def test_two_boards_beside_each_other(two_designs: tuple[Path, Path], tmp_path: Path) -> None:
    once = prepare([two_designs[0]], tmp_path / "one")
    facts = prepare(two_designs, tmp_path / "two")
    assert facts["board"]["boards"] == 2
    assert facts["board"]["width_mm"] == 2 * once["board"]["width_mm"] + 4.0
    assert facts["board"]["nets"] == facts["island_check"]["pieces"] == 2 * once["board"]["nets"]
    assert [one["name"] for one in facts["board"]["placed"]] == [two_designs[0].name, "other"]
    shown = show_job(tmp_path / "two.drypoint")
    assert {file["name"].split("/")[0] for file in shown["files"]} == {two_designs[0].name, "other"}


def test_places_from_the_command_line(
    two_designs: tuple[Path, Path], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    paths = [str(path) for path in two_designs]
    job = ["--job", str(tmp_path / "j")]
    assert main(["prepare", *paths, *job, "--at", "0,0", "--at", "24,0,90"]) == 0
    assert "Board 2: other, 10.0 × 20.0 mm at 24, 0 mm, turned 90°" in capsys.readouterr().out
    session = Session.open(tmp_path / "j.drypoint")
    board = session.derived.board(session.snapshot)
    assert board.outlines[1].bounds == pytest.approx((24.0, 0.0, 34.0, 20.0))
    session.close()
    assert main(["prepare", *paths, *job, "--at", "0,0", "--at", "10,0"]) == 1
    assert "overlap" in capsys.readouterr().err
    assert main(["prepare", *paths, *job, "--at", "0,0"]) == 1
    assert "2 boards and 1 places" in capsys.readouterr().err
    with pytest.raises(SystemExit):
        main(["prepare", *paths, *job, "--at", "zero"])


def test_a_board_is_added_and_taken_away(two_designs: tuple[Path, Path], tmp_path: Path) -> None:
    folder, other = two_designs
    (folder / "holes.nc").write_text(_HOLES)
    prepare([folder], tmp_path / "j")
    session = Session.open(tmp_path / "j.drypoint")
    session.change("Leave out", imported=ImportedSettings(uses=(FileUse("holes.nc", ProgramUse.LEFT_OUT),)))
    name = session.settings.board.name
    session.add_board([other])
    assert list(session.derived.designs(session.snapshot)) == [name, "other"]
    assert session.settings.imported.uses[0].file == f"{name}/holes.nc"
    session.add_board([other])
    assert list(session.derived.designs(session.snapshot)) == [name, "other", "other 2"]
    places = tuple(CopyPlace(24.0 * k, 0.0, 0.0, board) for k, board in enumerate((name, "other", "other 2")))
    session.change("Places", copies=CopySettings(places=places))
    session.remove_board(name)
    assert list(session.derived.designs(session.snapshot)) == ["other", "other 2"]
    assert [place.board for place in session.settings.copies.places] == ["other", "other 2"]
    assert session.settings.imported.uses == ()
    assert len(session.derived.board(session.snapshot).outlines) == 2
    session.close()


def test_a_place_for_a_board_that_is_gone_is_told(small_job: Path) -> None:
    session = Session.open(small_job)
    session.change("Odd", copies=CopySettings(places=(CopyPlace(0.0, 0.0, 0.0, "gone"),)))
    with pytest.raises(PlanError, match="no board “gone”"):
        session.derived.board(session.snapshot)
    session.close()


def test_from_the_other_side_the_whole_is_mirrored(hive_scale: Path, tmp_path: Path) -> None:
    """A plated hole of board 2 lies at the same place of the blank, seen from either side."""
    prepare([hive_scale], tmp_path / "j", places=[(0.0, 0.0, 0.0), (0.0, 80.0, 90.0)])
    session = Session.open(tmp_path / "j.drypoint")
    first = session.snapshot
    session.keep("setup", {"note": "over", "turned": "y", "face": "top"})
    over = seen_from(session.snapshot, Side.TOP)
    below, above = session.derived.board(first), session.derived.board(over)
    assert above.width == pytest.approx(below.width)
    mirrored = {(round(below.width - hole.x, 3), round(hole.y, 3)) for hole in below.holes}
    assert {(round(hole.x, 3), round(hole.y, 3)) for hole in above.holes} == mirrored
    session.close()


def test_one_board_by_program_and_one_by_copper(
    small_design: Path, programs_folder: Path, tmp_path: Path
) -> None:
    """Grooves of the program on its own board, planned ones on the other; each outline as it is due."""
    shutil.copy(programs_folder / "grooves.nc", small_design / "own.nc")
    other = tmp_path / "twin"
    shutil.copytree(small_design, other)
    (other / "own.nc").unlink()
    prepare([small_design, other], tmp_path / "j")
    session = Session.open(tmp_path / "j.drypoint")
    both = session.derived.cuts(session.snapshot)
    uses = (FileUse(f"{small_design.name}/own.nc", ProgramUse.GROOVES),)
    session.change("Use", imported=ImportedSettings(uses=uses))
    cuts = session.derived.cuts(session.snapshot)
    assert cuts.length == pytest.approx(16.0 + both.length / 2, rel=0.02)
    assert len(cuts.outline) == 2
    session.close()


def test_bits_of_programs_from_the_command_line(
    programs_folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    job = ["prepare", str(programs_folder), "--job", str(tmp_path / "j")]
    assert main([*job, "--bit", "holes.nc:1=0.8"]) == 0
    assert "No bit is chosen" not in capsys.readouterr().out
    used = {one["name"]: one for one in show_job(tmp_path / "j.drypoint")["ready_made"]}
    assert used["holes.nc"]["tools"][0]["bit"] == "Drill 0.8 mm"
    assert main([*job, "--bit", "holes.nc=Drill 1.0 mm", "--bit", "out.nc=End mill 2.0 mm"]) == 0
    capsys.readouterr()
    for wrong, words in (
        ("gone.nc=0.8", "no program"),
        ("holes.nc:7=0.8", "no tool 7"),
        ("holes.nc=0.33", "no drill of 0.330 mm"),
        ("holes.nc=blunt", "no drill size"),
        ("holes.nc", "no program"),
    ):
        assert main([*job, "--bit", wrong]) == 1
        assert words in capsys.readouterr().err
