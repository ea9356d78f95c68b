"""The commands for scripts: stable output, clear refusals, nothing left half made."""

from __future__ import annotations

import json
import os
import re
import signal
import subprocess
import sys
from pathlib import Path
from typing import IO

import pytest

from drypoint.__main__ import main
from drypoint.program.check import check_lines
from drypoint.session.session import Session


def _json(arguments: list[str], capsys: pytest.CaptureFixture[str]) -> tuple[int, dict[str, object]]:
    code = main([*arguments, "--json"])
    return code, json.loads(capsys.readouterr().out)


def test_prepare_tells_the_board_and_its_cuts(
    hive_scale: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    code, found = _json(["prepare", str(hive_scale), "--job", str(tmp_path / "j")], capsys)
    assert code == 0
    board, cuts, check = found["board"], found["cuts"], found["island_check"]
    assert (board["width_mm"], board["height_mm"], board["side"]) == (70.0, 50.0, "bottom")  # type: ignore[index]
    assert board["net_source"] == "attributes"  # type: ignore[index]
    assert check["nets"] == check["pieces"] == board["nets"]  # type: ignore[index]
    assert check["shorts"] == check["opens"] == check["lost"] == []  # type: ignore[index]
    assert cuts["impossible"] == []  # type: ignore[index]
    assert sum(found["holes_by_drill"].values()) == board["holes"]  # type: ignore[attr-defined, index]
    assert (tmp_path / "j.drypoint").is_file()


def test_a_wide_bit_finds_what_does_not_fit(
    hive_scale: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The board has gaps of 0.2 mm: what a cut of 0.5 mm cannot part is listed with its place."""
    arguments = ["prepare", str(hive_scale), "--job", str(tmp_path / "j"), "--tip", "0.5", "--angle", "30"]
    code, found = _json(arguments, capsys)
    assert code == 0
    impossible = found["cuts"]["impossible"]  # type: ignore[index]
    assert impossible
    assert all(one["gap_mm"] < 0.5 and len(one["nets"]) == 2 for one in impossible)
    shorted = {frozenset(flaw["nets"]) for flaw in found["island_check"]["shorts"]}  # type: ignore[index]
    assert shorted


def test_export_leaves_programs_that_pass_the_check(
    job: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    code, found = _json(["export", str(job), "--to", str(tmp_path / "out")], capsys)
    assert code == 0
    files = found["files"]
    assert len({one["bit"] for one in files}) >= 4  # type: ignore[attr-defined, index]
    for one in files:  # type: ignore[attr-defined]
        text = Path(one["path"]).read_text(encoding="ascii")
        lines = [re.sub(r"\(.*?\)|;.*", "", line).strip() for line in text.splitlines()]
        check_lines([line for line in lines if line and line != "%"], 2.0)
    page = (tmp_path / "out" / "setup-sheet.html").read_text(encoding="utf-8")
    assert "not an emergency stop" in page
    assert (tmp_path / "out" / "grooves.svg").read_text(encoding="utf-8").startswith("<svg")


def test_show_says_why_each_file_got_its_role(job: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, found = _json(["show", str(job)], capsys)
    assert code == 0
    assert all(one["why"] for one in found["files"])  # type: ignore[attr-defined]
    assert main(["show", str(job)]) == 0
    assert "hive-scale-outline.gbr: outline" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"", "empty"),
        (bytes(range(256)) * 20, ""),
        (b"%FSLAX46Y46*%\n%MOMM*%\n%ADD10C,1*%\nD10*\nX0Y0D03*\n", ""),
        (b"%FSLAX46Y46*%\n%MOMM*%\n%ADD10C,1*%\nD99*\nX0Y0D03*\nM02*\n", "99"),
        (b"%FSLAX46Y46*%\n%ADD10C,1*%\nD10*\nX0Y0D03*\nM02*\n", "unit"),
        (b"hello\n", ""),
    ],
    ids=["empty", "binary", "truncated", "undefined aperture", "no unit", "text"],
)
def test_bad_files_are_refused_with_their_name(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], content: bytes, words: str
) -> None:
    bad = tmp_path / "bad-copper-bottom.gbr"
    bad.write_bytes(content)
    code, found = _json(["prepare", str(bad), "--job", str(tmp_path / "j")], capsys)
    assert code == 1
    error = found["error"]
    assert set(error) == {"what", "where", "hint"}  # type: ignore[call-overload]
    assert "bad-copper-bottom" in error["where"] + error["what"]  # type: ignore[index]
    assert words in error["what"]  # type: ignore[index]
    assert not (tmp_path / "j.drypoint").exists()


def test_a_job_is_not_lost_to_a_failed_prepare(job: Path, tmp_path: Path) -> None:
    before = job.read_bytes()
    (tmp_path / "x.gbr").write_bytes(b"")
    assert main(["prepare", str(tmp_path / "x.gbr"), "--job", str(job)]) == 1
    assert job.read_bytes() == before


@pytest.mark.parametrize("arguments", [["prepare"], ["export", "x"], ["paint"], ["show"]])
def test_wrong_usage_is_two(arguments: list[str]) -> None:
    with pytest.raises(SystemExit) as left:
        main(arguments)
    assert left.value.code == 2


def test_a_missing_job_is_one(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, found = _json(["show", str(tmp_path / "none.drypoint")], capsys)
    assert code == 1
    assert "no such job" in found["error"]["what"]  # type: ignore[index]


def test_a_place_that_cannot_be_written_is_told(
    hive_scale: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "file").write_text("no folder", encoding="utf-8")
    for arguments in (
        ["prepare", str(hive_scale), "--job", str(tmp_path / "file" / "j")],
        ["demo", "--to", str(tmp_path / "file" / "out")],
    ):
        code, found = _json(arguments, capsys)
        assert code == 1
        assert str(tmp_path / "file") in found["error"]["where"]  # type: ignore[index]


def test_preparing_over_another_file_leaves_it_alone(hive_scale: Path, tmp_path: Path) -> None:
    other = tmp_path / "letter.drypoint"
    other.write_bytes(b"not a job" * 400)
    assert main(["prepare", str(hive_scale), "--job", str(other)]) == 1
    assert other.read_bytes() == b"not a job" * 400


def test_preparing_over_an_open_job_leaves_it_alone(
    hive_scale: Path, job: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    session = Session.open(job)
    before = session.settings
    code, found = _json(["prepare", str(hive_scale), "--job", str(job), "--tip", "0.2"], capsys)
    assert code == 1
    assert "is open" in found["error"]["what"]  # type: ignore[index]
    session.touched("settings")
    assert session.settings == before
    session.close()


def test_a_job_needs_a_name(hive_scale: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, found = _json(["prepare", str(hive_scale), "--job", ""], capsys)
    assert code == 1
    assert "name" in found["error"]["what"]  # type: ignore[index]


def _child(arguments: list[str], stdout: IO[bytes] | int, **changed: str) -> tuple[int, bytes, bytes]:
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path), **changed}
    usual = signal.signal(signal.SIGINT, signal.default_int_handler)  # what is ignored is so in a child, too
    done = subprocess.Popen(
        [sys.executable, "-m", "drypoint", *arguments], stdout=stdout, stderr=subprocess.PIPE, env=environment
    )
    signal.signal(signal.SIGINT, usual)
    out, told = done.communicate()
    return done.returncode, out or b"", told


@pytest.mark.parametrize("encoding", ["ascii", "latin-1", "utf-8"])
def test_whatever_a_terminal_cannot_show_is_replaced(job: Path, encoding: str) -> None:
    code, out, told = _child(["show", str(job)], subprocess.PIPE, PYTHONIOENCODING=encoding)
    assert (code, told) == (0, b"")
    sign = {"ascii": b"?", "latin-1": b"\xd7", "utf-8": "×".encode()}[encoding]
    assert b"70.0 " + sign + b" 50.0 mm" in out


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no device that is always full")
def test_a_full_disk_behind_stdout_is_told(job: Path) -> None:
    with Path("/dev/full").open("wb") as full:
        code, _, told = _child(["bits"], full)
    assert code == 1
    assert told.startswith(b"drypoint: ")
    assert told.count(b"\n") == 1


def test_a_reader_that_has_read_enough_is_no_fault(job: Path) -> None:
    read, write = os.pipe()
    os.close(read)
    code, _, told = _child(["bits"], write)
    os.close(write)
    assert (code, told) == (1, b"")


@pytest.mark.parametrize(
    ("arguments", "form"),
    [
        (["prepare", "x", "--job", "j", "--at", "1,2,x"], "X,Y or X,Y,DEG"),
        (["prepare", "x", "--job", "j", "--at", "nan,0"], "X,Y or X,Y,DEG"),
        (["coupon", "j", "--width", "x=y"], "DEPTH=WIDTH"),
        (["coupon", "j", "--width", "0.1"], "DEPTH=WIDTH"),
        (["burn-grid", "j", "--best", "1.5,2"], "ROW,COLUMN"),
        (["burn-grid", "j", "--best", "2"], "ROW,COLUMN"),
        (["bits", "--limit", "End mill=many"], "NAME=NUMBER"),
        (["bits", "--limit", "=3"], "NAME=NUMBER"),
    ],
)
def test_numbers_in_another_form_are_told_the_form(
    arguments: list[str], form: str, capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as left:
        main(arguments)
    assert left.value.code == 2
    assert f"does not fit: give {form}" in capsys.readouterr().err


@pytest.mark.parametrize(
    "arguments",
    [["rehearse", "--touches", "-3"], ["rehearse", "--touches", "9999"], ["coupon", "--stands", "inf"]],
)
def test_values_out_of_bounds_are_refused(
    job: Path, arguments: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    code, found = _json([arguments[0], str(job), *arguments[1:]], capsys)
    assert code == 1
    assert found["error"]["what"]  # type: ignore[index]


@pytest.mark.skipif(os.name == "nt", reason="no signal can be sent there")
def test_a_wish_to_stop_while_all_is_loading_leaves_no_trace(tmp_path: Path) -> None:
    """Numpy is replaced by one that asks to stop the very moment it is loaded."""
    (tmp_path / "numpy.py").write_text(
        "import os, signal\nos.kill(os.getpid(), signal.SIGINT)\n", encoding="utf-8"
    )
    paths = os.pathsep.join([str(tmp_path), *sys.path])
    code, _, told = _child(["bits"], subprocess.PIPE, PYTHONPATH=paths)
    assert (code, told) == (1, b"\nStopped.\n")
