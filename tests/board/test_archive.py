"""Folders and zips: what is taken, what is refused."""

from __future__ import annotations

import io
import os
import zipfile
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.board import archive
from drypoint.board.archive import gather
from drypoint.errors import InputError


def zipped(path: Path, members: dict[str, bytes]) -> Path:
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as file:
        for name, data in members.items():
            file.writestr(name, data)
    return path


def test_folders_files_and_zips_give_the_same(tmp_path: Path, hive_scale: Path) -> None:
    expected = {path.name: path.read_bytes() for path in hive_scale.iterdir()}
    assert gather([hive_scale]) == expected
    assert gather(sorted(hive_scale.iterdir())) == expected
    assert gather([zipped(tmp_path / "board.zip", expected)]) == expected


def test_members_cannot_leave_their_folder(tmp_path: Path) -> None:
    names = ["../../evil.gbr", "/etc/evil2.gbr", "a\\..\\..\\evil3.gbr", "C:/evil4.gbr"]
    found = gather([zipped(tmp_path / "x.zip", dict.fromkeys(names, b"x"))])
    assert len(found) == 4
    for name in found:
        parts = Path(name).parts
        assert ".." not in parts
        assert not Path(name).is_absolute()
        assert ":" not in name
    assert [path.name for path in tmp_path.iterdir()] == ["x.zip"], "nothing is written anywhere"


def test_a_zip_that_unpacks_to_too_much_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(archive, "MAX_FILE", 1_000_000)
    bomb = zipped(tmp_path / "bomb.zip", {"a.gbr": bytes(5_000_000)})
    assert bomb.stat().st_size < 10_000
    with pytest.raises(InputError, match="too much"):
        gather([bomb])


def test_too_many_files_are_refused(tmp_path: Path) -> None:
    many = {f"{k}.gbr": b"x" for k in range(archive.MAX_FILES + 1)}
    with pytest.raises(InputError, match="more than"):
        gather([zipped(tmp_path / "many.zip", many)])


def test_equal_names_of_two_folders_are_kept_apart(tmp_path: Path) -> None:
    for folder, data in (("a", b"1"), ("b", b"2")):
        (tmp_path / folder).mkdir()
        (tmp_path / folder / "top.gbr").write_bytes(data)
    found = gather([tmp_path / "a", tmp_path / "b"])
    assert found == {"top.gbr": b"1", "top (2).gbr": b"2"}


@pytest.mark.parametrize("make", ["empty folder", "missing", "damaged zip"])
def test_nothing_usable_is_a_clear_error(tmp_path: Path, make: str) -> None:
    path = tmp_path / "board.zip"
    if make == "empty folder":
        path.mkdir()
    elif make == "damaged zip":
        zipped(path, {"a.gbr": b"x" * 5000})
        data = bytearray(path.read_bytes())
        data[40:50] = b"\xff" * 10
        path.write_bytes(bytes(data))
    with pytest.raises(InputError) as caught:
        gather([path])
    assert caught.value.where


@given(st.integers(0, 400), st.binary(min_size=1, max_size=30))
def test_a_damaged_zip_ends_in_an_input_error_or_files(
    tmp_path_factory: pytest.TempPathFactory, at: int, junk: bytes
) -> None:
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_DEFLATED) as file:
        file.writestr("a.gbr", b"G04 x*" * 50)
        file.writestr("b.drl", b"M48\n" * 20)
    data = bytearray(buffer.getvalue())
    at = min(at, len(data) - 1)
    data[at : at + len(junk)] = junk
    path = tmp_path_factory.mktemp("zip") / "x.zip"
    path.write_bytes(bytes(data))
    try:
        assert gather([path])
    except InputError as error:
        said = error.where
    else:
        said = "read"
    assert said


def test_a_zip_cut_off_is_damaged_and_not_taken_for_a_design_file(tmp_path: Path) -> None:
    path = zipped(tmp_path / "board.zip", {"a.gbr": bytes(range(256)) * 40, "b.gbr": b"y" * 5000})
    path.write_bytes(path.read_bytes()[:-60])
    for chosen in (path, tmp_path):
        with pytest.raises(InputError, match="damaged") as caught:
            gather([chosen])
        assert caught.value.where == "board.zip"


def test_a_damaged_member_is_told_however_it_is_packed(tmp_path: Path) -> None:
    for packed in (zipfile.ZIP_DEFLATED, zipfile.ZIP_BZIP2, zipfile.ZIP_LZMA):
        path = tmp_path / f"{packed}.zip"
        with zipfile.ZipFile(path, "w", packed) as file:
            file.writestr("a.gbr", bytes(range(256)) * 40)
        data = bytearray(path.read_bytes())
        data[60:90] = b"\xa5" * 30
        path.write_bytes(bytes(data))
        with pytest.raises(InputError, match="cannot be read"):
            gather([path])


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="the system has no pipes with names")
def test_a_pipe_is_refused_before_anything_waits_for_it(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.gbr")
    with pytest.raises(InputError, match="no regular file"):
        gather([tmp_path / "pipe.gbr"])


def test_names_can_be_shown_anywhere(tmp_path: Path) -> None:
    members = dict.fromkeys(["a\x1b[31mred.gbr", "two\nlines.gbr", "ü 板.gbr"], b"x")
    assert set(gather([zipped(tmp_path / "x.zip", members)])) == {
        "a_[31mred.gbr",
        "two_lines.gbr",
        "ü 板.gbr",
    }
