"""What is written is whole, whatever happens meanwhile."""

from __future__ import annotations

import errno
from pathlib import Path

import pytest

from drypoint.errors import StoreError
from drypoint.session.export import export
from drypoint.session.session import Session
from drypoint.session.whole_file import write_whole


def _full_after(signs: int, monkeypatch: pytest.MonkeyPatch) -> None:
    """A disk that takes so many signs of a file and no more."""
    whole = Path.write_text

    def short(self: Path, data: str, *rest: object, **named: object) -> int:
        if len(data) <= signs:
            return whole(self, data, *rest, **named)  # type: ignore[arg-type]
        whole(self, data[:signs], *rest, **named)  # type: ignore[arg-type]
        raise OSError(errno.ENOSPC, "No space left on device", str(self))

    monkeypatch.setattr(Path, "write_text", short)


def test_a_file_that_cannot_be_written_leaves_the_old_one(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "a.nc"
    write_whole(path, "old", "ascii")
    _full_after(3, monkeypatch)
    with pytest.raises(OSError, match="space"):
        write_whole(path, "new and long", "ascii")
    assert path.read_text() == "old"
    assert [one.name for one in tmp_path.iterdir()] == ["a.nc"]


def test_a_full_disk_leaves_no_half_of_a_program(
    job: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A program cut off would end with the spindle on and the bit in the copper."""
    session = Session.open(job)
    _full_after(2000, monkeypatch)
    with pytest.raises(StoreError, match="could not be written"):
        export(session, tmp_path / "out")
    session.close()
    left = [one.read_text(encoding="ascii") for one in (tmp_path / "out").iterdir()]
    assert all(text.rstrip().endswith(("M2", "M30", "%")) for text in left)
