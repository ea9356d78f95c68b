"""What the traveller says below its steps of the second side and the legend."""

from __future__ import annotations

from dataclasses import replace

from drypoint.session.beside import beside
from drypoint.session.session import Session
from drypoint.session.settings import LaserSection


def told(session: Session) -> tuple[str, ...]:
    return beside(session.snapshot, session.derived.board(session.snapshot))


def test_nothing_is_said_of_what_the_job_does_not_have(session: Session) -> None:
    assert told(session) == ()
    assert beside(session.snapshot, None) == ()


def test_the_second_side_is_to_do_until_the_board_was_turned_over(session: Session) -> None:
    session.change("Both", board=replace(session.settings.board, both=True))
    assert told(session) == ("Second side: to do",)
    up = session.snapshot.face()
    session.keep("setup", {"note": "turned over", "turned": "y", "face": "top"})
    assert session.snapshot.face() is not up
    assert told(session) == ("Second side: looks up now",)


def test_the_legend_is_to_do_once_its_coating_is_named_until_it_is_marked(session: Session) -> None:
    session.change("Laser", laser=LaserSection(coating="black paint", declared_safe=True))
    assert told(session) == ("Legend by laser: other side",)
    session.keep("done", {"program": "40-burn-grid", "setup": 1})
    assert told(session) == ("Legend by laser: other side",)
    session.keep("done", {"program": "41-legend", "setup": 2})
    assert told(session) == ("Legend by laser: marked",)
