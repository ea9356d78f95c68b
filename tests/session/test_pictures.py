"""Pictures and setup sheet: well-formed, complete, and told apart without colour."""

from __future__ import annotations

import xml.etree.ElementTree as ET

import numpy as np

from drypoint.geometry.points import as_points
from drypoint.passes.model import ReachMap
from drypoint.session.export import sheet_facts
from drypoint.session.pictures import board_picture, reach_picture, surface_picture
from drypoint.session.session import Session
from drypoint.session.sheet import CAUTIONS, SheetFacts, WorkStep, clock, setup_sheet
from drypoint.surface.touch import Touch, Touches
from drypoint.wording import say, told

SVG = "{http://www.w3.org/2000/svg}"


def test_every_net_and_hole_is_drawn(session: Session) -> None:
    snap = session.snapshot
    board, layout = session.derived.board(snap), session.derived.layout(snap)
    root = ET.fromstring(board_picture(board, layout))
    copper = [path for path in root.iter(f"{SVG}path") if path.get("fill") == "#DFC3AC"]
    assert len(copper) == len(board.nets)
    assert len(list(root.iter(f"{SVG}circle"))) == len(board.holes)


def test_the_three_states_differ_by_line_not_only_by_colour(session: Session) -> None:
    snap = session.snapshot
    path = as_points([(5.0, 5.0), (10.0, 5.0), (15.0, 5.0), (20.0, 5.0), (25.0, 5.0), (30.0, 5.0)])
    probability = np.array([0.99, 0.99, 0.7, 0.7, 0.1, 0.1])
    reach = ReachMap((path,), (probability,), (np.full(6, 0.15),))
    root = ET.fromstring(
        reach_picture(session.derived.board(snap), session.derived.layout(snap), reach, "reach")
    )
    pens = {
        path.get("stroke"): (path.get("stroke-dasharray"), path.get("stroke-width"))
        for path in root.iter(f"{SVG}path")
        if path.get("stroke") in {"#0072B2", "#F0E442", "#D55E00"}
    }
    assert len(pens) == 3
    assert len(set(pens.values())) == 3


def test_the_height_map_has_a_legend_in_micrometres(session: Session) -> None:
    snap = session.snapshot
    picture = surface_picture(
        session.derived.board(snap),
        session.derived.layout(snap),
        lambda at: np.asarray(at[:, 0] * 0.001),
        as_points([(10.0, 10.0)]),
    )
    words = "".join(text.text or "" for text in ET.fromstring(picture).iter(f"{SVG}text"))
    assert "µm" in words


def test_the_sheet_carries_cautions_and_escapes_names() -> None:
    page = setup_sheet(
        SheetFacts("Sheet: <board> & co", "now", (("a", "b"),), (WorkStep("x", "bit", "1", "2", "3"),))
    )
    assert "<board>" not in page
    for caution in CAUTIONS:
        assert caution.split(".")[0].split("'")[0] in page.replace("&#x27;", "'")


def test_times_read_like_times() -> None:
    assert [clock(seconds) for seconds in (0, 31, 370.4, 3723)] == ["0:00", "0:31", "6:10", "1:02:03"]


def test_the_sheet_speaks_the_language_it_is_given() -> None:
    heads = {"Order of work": "Arbeitsfolge", "{size:.1f} mm": "{size:.1f} Millimeter"}

    def speak(text: str) -> str:
        return told(text, lambda template: heads.get(template, template), ",")

    facts = SheetFacts("Sheet", "now", (("a", say("{size:.1f} mm", size=2.5)),), ())
    page = setup_sheet(facts, speak)
    assert "Arbeitsfolge" in page
    assert "2,5 Millimeter" in page
    assert "Order of work" not in page
    assert "Order of work" in setup_sheet(facts)


def test_pictures_speak_the_language_they_are_given(session: Session) -> None:
    snap = session.snapshot
    board, layout = session.derived.board(snap), session.derived.layout(snap)
    assert ">COPPER OF A NET<" in board_picture(board, layout, str.upper)
    assert ">copper of a net<" in board_picture(board, layout)


def test_the_sheet_tells_the_surface_that_was_touched(session: Session) -> None:
    assert sheet_facts(session, (), ()).surface == ()
    rng = np.random.default_rng(2)
    spots = rng.random((30, 2)) * (60.0, 40.0) + 5.0
    touches = Touches(tuple(Touch(float(x), float(y), 0.001 * float(x) - 0.03) for x, y in spots))
    session.keep("touches", {"setup": 1, "touches": touches})
    rows = dict(sheet_facts(session, (), ()).surface)
    heights = 1e3 * touches.points[:, 2]
    assert rows["Touched"] == "30 places"
    assert rows["Height where touched"] == f"{heights.min():+.0f} to {heights.max():+.0f} µm"
    html = setup_sheet(sheet_facts(session, (), ()))
    assert f"−{-heights.min():.0f} to +{heights.max():.0f} µm" in html
    session.keep("setup", {"reason": "clamped anew"})
    assert "Stale" in dict(sheet_facts(session, (), ()).surface)
