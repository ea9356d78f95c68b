"""Wear is counted for what was really executed at a real machine; dust is removed when some lies there."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from drypoint.bench.bench import Bench
from drypoint.bits.wear import Wear
from drypoint.errors import InputError
from drypoint.machine.operator import RequestKind
from drypoint.program.model import MoveKind
from drypoint.session.actions import run
from drypoint.session.actions.dust import dust_lies, remove_dust
from drypoint.session.actions.measure import find_corner, put_in, zero_height
from drypoint.session.commands import worn
from drypoint.session.export import sheet_facts, worn_bits
from drypoint.session.programs import programs
from drypoint.session.report import report
from drypoint.session.session import Session
from drypoint.session.station import Station, connect, make_bench
from drypoint.session.wear_book import WearBook, Worked, worked
from drypoint.session.work import later_work, marks_work


@pytest.fixture
def bench(session: Session) -> Bench:
    return make_bench(session.derived.layout(session.snapshot), session.settings, 0)


def _station(session: Session, bench: Bench, book: WearBook) -> Station:
    """The bench taken for a real machine: what it cuts counts."""
    return connect(bench.link, bench.operator, session.settings, book=book)


def test_what_programs_do_to_their_bits(session: Session) -> None:
    items = later_work(session.derived, session.snapshot)
    holes = session.derived.cuts(session.snapshot).drills()
    for item in items:
        done, bit = worked(item.program), item.program.bit
        if bit in session.settings.bits.drills:
            assert done == Worked(holes=holes[bit.name])
        half = worked(item.program, 0, len(item.program.lines) // 2)
        rest = worked(item.program, len(item.program.lines) // 2)
        assert half.length + rest.length == pytest.approx(done.length)
        assert half.holes + rest.holes == done.holes
    outline = items[-1].program
    moves = outline.moves
    straight = moves.kind == MoveKind.FEED
    ways = np.hypot(*np.diff(moves.end[:, :2], axis=0).T)[straight[1:] & (moves.tag[1:] >= 0)].sum()
    assert worked(outline).length == pytest.approx(ways)


def test_a_run_counts_and_the_bench_does_not(session: Session, bench: Bench, tmp_path: Path) -> None:
    book = WearBook(tmp_path / "deep" / "wear.json")
    assert connect(bench.link, bench.operator, session.settings, bench=bench, book=book).book is None
    station = _station(session, bench, book)
    put_in(station, session.settings.bits.vbit)
    find_corner(session, station)
    zero_height(session, station)
    (item,) = marks_work(session.derived, session.snapshot)
    run.run_item(session, station, item)
    name = item.program.bit.name
    assert WearBook(book.path).read().of(name).holes == session.settings.cuts.marks
    book.add(name, Worked(length=19_500.0))
    assert "19.5 m" in book.read().hints()[0]
    book.limit(name, length=50_000.0)
    assert book.read().hints() == ()
    book.renew(name)
    assert book.read().of(name).length == 0.0
    assert book.read().of(name).replace_at_mm == 50_000.0


@pytest.mark.parametrize("text", ["", "[1]", '{"a": 3, "b": {"length": "x"}, "c": {"length": -1}}', "\udc80"])
def test_a_damaged_book_is_an_empty_one(tmp_path: Path, text: str) -> None:
    path = tmp_path / "wear.json"
    path.write_bytes(text.encode("utf-8", "surrogateescape"))
    assert WearBook(path).read().uses == {}
    WearBook(path).add("V", Worked(length=5.0))
    assert WearBook(path).read().of("V").length == 5.0


def test_dust_is_removed_once_after_grooves(session: Session, bench: Bench, tmp_path: Path) -> None:
    station = _station(session, bench, WearBook(tmp_path / "wear.json"))

    def asked() -> int:
        return sum(one.kind is RequestKind.REMOVE_DUST for one in bench.operator.requests)

    remove_dust(session, station)
    session.keep("done", {"program": "31-hole-drill", "setup": 1})
    remove_dust(session, station)
    assert asked() == 0
    for number in (1, 2):
        session.keep("done", {"program": f"1{number}-grooves-pass-{number}", "setup": 1})
        assert dust_lies(session.snapshot)
        remove_dust(session, station)
        remove_dust(session, station)
        assert asked() == number
    request = next(one for one in bench.operator.requests if one.kind is RequestKind.REMOVE_DUST)
    assert any("irritates" in caution for caution in request.cautions)
    session.keep("done", {"program": "13-grooves-pass-3", "setup": 1})
    session.change("No pause", cuts=replace(session.settings.cuts, dust_pause=False))
    remove_dust(session, station)
    assert asked() == 2


def test_the_command_tells_and_renews(tmp_path: Path) -> None:
    book = WearBook(tmp_path / "wear.json")
    assert worn(book)["bits"] == {}
    book.add("Drill 0.8 mm", Worked(holes=1400))
    told = worn(book)
    assert told["bits"]["Drill 0.8 mm"]["holes"] == 1400
    assert "Drill 0.8 mm" in report("bits", told)
    assert len(told["hints"]) == 1
    assert worn(book, renew="Drill 0.8 mm")["hints"] == []
    with pytest.raises(InputError, match="V-bit"):
        worn(book, renew="V-bit")


def test_the_setup_sheet_says_which_bit_to_look_at(session: Session, tmp_path: Path) -> None:
    made = programs(session)
    wear = Wear().after(made[0].bit.name, length=19_900.0).after("another", length=1e6)
    facts = sheet_facts(session, made, (), wear)
    assert [text for text in facts.findings if "look at it" in text] == list(worn_bits(made, wear))
    assert len(worn_bits(made, wear)) == 1
