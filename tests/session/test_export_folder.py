"""A folder that is written into again."""

from __future__ import annotations

from pathlib import Path

from drypoint.session.export import export
from drypoint.session.session import Session


def test_programs_of_an_earlier_plan_are_named_on_the_sheet(job: Path, tmp_path: Path) -> None:
    session = Session.open(job)
    out = tmp_path / "out"
    names = {Path(one.path).name for one in export(session, out)}
    sheet = out / "setup-sheet.html"
    assert "Other programs" not in sheet.read_text(encoding="utf-8")
    (out / "09-drill-1.2.nc").write_text("M2\n")
    assert {Path(one.path).name for one in export(session, out)} == names
    session.close()
    told = sheet.read_text(encoding="utf-8").partition("Other programs lie in this folder too")[2]
    said = told.partition("</")[0]
    assert "09-drill-1.2.nc" in said
    assert not any(name in said for name in names)
    assert (out / "09-drill-1.2.nc").read_text() == "M2\n", "what is not ours stays as it is"
