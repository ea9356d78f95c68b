"""Reference holes through the panel, on the bench, with clicks: every way, turning over, edges and play."""

from __future__ import annotations

import math
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from bystander import COPPER, OUTLINE, Bystander
from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import QApplication

from drypoint.bench.bench import Bench
from drypoint.bits.model import Drill, Speeds
from drypoint.geometry.rigid import Rigid
from drypoint.machine.operator import RequestKind
from drypoint.machine.state import Activity
from drypoint.progress import Progress
from drypoint.reference.fit import Fit
from drypoint.session.actions import find, measure, run
from drypoint.session.holes import candidates
from drypoint.session.settings import Clamp
from drypoint.session.snapshot import Snapshot
from drypoint.session.work import WorkKind, later_work, marks_work
from drypoint.ui.canvas.pick import Picked
from drypoint.ui.jog.reference import Way
from drypoint.ui.machine_side.found import lines
from drypoint.ui.machine_side.remapping import remap
from drypoint.ui.parts.glyph import Mark

CORNERS = [(0.0, 0.0), (16.0, 0.0), (16.0, 12.0), (0.0, 12.0)]
HOLES = "M48\nMETRIC\nT1C0.8\n%\nT1\nX3.0Y3.0\nX3.0Y9.0\nX12.0Y9.0\nX14.0Y2.0\nM30\n"
PIN = Drill("Drill 0.5 mm", 0.5, Speeds(10000, 150, 150))


@pytest.fixture(scope="module")
def design(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The small board with holes in its pads and one at a corner."""
    folder = tmp_path_factory.mktemp("drilled")
    (folder / "top.gbr").write_text(COPPER)
    (folder / "outline.gbr").write_text(OUTLINE)
    (folder / "holes.drl").write_text(HOLES)
    return folder


def marked(who: Bystander, *, drill: bool = False) -> None:
    """Connected, zero found, reference holes pricked, holes drilled where asked for.

    The bench's hands do what is asked.
    """
    who.connect()
    who.desk.operator.shown = 0.0
    who.desk.bar.automatic.setChecked(True)
    session = who.session

    def work(_progress: object) -> None:
        station = who.desk.station
        assert station is not None
        measure.put_in(station, session.settings.bits.vbit)
        measure.find_corner(session, station)
        measure.zero_height(session, station)
        measure.end_contact(station)
        (item,) = marks_work(session.derived, session.snapshot)
        run.run_item(session, station, item)
        for item in later_work(session.derived, session.snapshot) if drill else ():
            if item.kind is WorkKind.HOLES:
                measure.put_in(station, item.program.bit)
                measure.zero_height(session, station, at=(3.0, 3.0))
                measure.end_contact(station)
                run.run_item(session, station, item)

    who.desk.start("reference holes", work)
    who.rest()
    assert who.session.snapshot.records["done"]


def clamped_anew(who: Bystander, bench: Bench, motion: Rigid) -> np.ndarray:
    """The board is laid down elsewhere; where its corners were on the sheet before."""
    before = bench.board_to_sheet(CORNERS, who.session.derived.fit(who.session.snapshot))
    bench.operator.reclamped_by = motion
    who.window.choose_step(6)
    who.click(who.side.referencing.page.moved_button)
    who.rest()
    return before


def about_middle(bench: Bench, angle: float, shift: tuple[float, float] = (0.0, 0.0)) -> Rigid:
    """A motion of space that turns the sheet about its middle."""
    x, y = bench.sheet.to_space([(bench.sheet.width / 2, bench.sheet.height / 2)])[0]
    home = Rigid(0.0, (-float(x), -float(y)))
    return home.then(Rigid(angle)).then(Rigid(0.0, (float(x) + shift[0], float(y) + shift[1])))


def jog_over(who: Bystander, bench: Bench, name: str) -> None:
    """A person jogs the bit over a hole they see, by answering nothing else, and presses the button."""
    at = bench.sheet.to_space([drilled_place(who, bench, name)])[0]
    tip = bench.tip()
    station = who.desk.station
    assert station is not None

    def move(_progress: object) -> None:
        station.place.raise_to(2.0)
        # come from the left and from below at the end
        for dx, dy in ((at[0] - tip[0] - 0.3, at[1] - tip[1] - 0.3), (0.3, 0.3)):
            station.controller.jog(float(dx), float(dy), 0.0, 800.0)
            station.controller.settle()

    who.desk.start("a person jogs", move)
    who.rest()
    panel = who.window.jog.reference
    panel.holes.setCurrentIndex(panel.holes.findData(name))
    panel.holes.activated.emit(panel.holes.currentIndex())
    assert panel.over.text().endswith(name)
    who.click(panel.over)
    who.rest()


def drilled_place(who: Bystander, bench: Bench, name: str) -> np.ndarray:
    """Where on the sheet a hole really is: the one nearest to where its program sent the bit."""
    session = who.session
    known = {one.label: one.at for one in candidates(session.derived, first_set_up(session.snapshot))}
    sent = sent_to(session.derived.fit_of(session.snapshot, 1).apply([known[name]])[0], bench)
    seen = np.array([hole[:2] for hole in bench.holes()])
    away = np.hypot(*(seen - sent).T)
    assert away.min() < 0.2
    return seen[int(away.argmin())]


def first_set_up(snap: Snapshot) -> Snapshot:
    """The job as it was before the board was moved."""
    return replace(snap, records={**snap.records, "setup": ()})


def sent_to(work: np.ndarray, bench: Bench) -> np.ndarray:
    """Sheet place of work coordinates as the blank lay at first, its corner where the bench laid it."""
    first = Rigid(bench.setup.angle, (18.0, 14.0))
    space = bench.work_to_space((float(work[0]), float(work[1])))
    return first.inverse().apply([space])[0]


@pytest.mark.parametrize(("angle_deg", "count"), [(-9.5, 2), (180.0, 3)])
def test_a_board_clamped_askew_is_found_by_jogging(
    who: Bystander, bench: Bench, angle_deg: float, count: int
) -> None:
    marked(who)
    before = clamped_anew(who, bench, about_middle(bench, math.radians(angle_deg), (0.6, -0.4)))
    assert who.side.running.following is None, "nothing is run while the board's place is not known"
    for number in range(1, count + 1):
        jog_over(who, bench, f"R{number}")
    fit = who.session.derived.fit(who.session.snapshot)
    assert isinstance(fit, Fit)
    assert len(fit.design) == count
    turned = math.degrees(fit.angle) - angle_deg
    assert (turned + 180.0) % 360.0 - 180.0 == pytest.approx(0.0, abs=1.0)
    after = bench.board_to_sheet(CORNERS, fit)
    error = after - before
    covariance = fit.covariance_at(CORNERS) + np.eye(2) * 0.02**2
    distance = np.einsum("ni,nij,nj->n", error, np.linalg.inv(covariance), error)
    assert distance.max() < 13.8, "within what the fit says at 99.9 %"
    assert np.hypot(*error.T).max() < (0.1 if count == 3 else 0.15)
    assert who.window.jog.reference._residual._value.text() != "–"


@pytest.mark.parametrize(("axis", "count"), [(0, 3), (1, 2)])
def test_turned_over_through_the_dialog_and_found_mirrored(
    who: Bystander, bench: Bench, axis: int, count: int
) -> None:
    marked(who, drill=True)
    before = bench.board_to_sheet(CORNERS, who.session.derived.fit(who.session.snapshot))
    who.window.choose_step(6)
    referencing = who.side.referencing
    who.click(referencing.page.turn_button)
    who.rest()
    dialog = referencing.moving.dialog
    assert dialog is not None
    assert not dialog.mill.isEnabled(), "the board has one copper side"
    dialog.axes.buttons()[axis].click()
    who.click(dialog.turn_button)
    who.rest()
    snap = who.session.snapshot
    assert snap.setup == 2
    assert snap.records["setup"][-1].data["turned"] == ("y", "x")[axis]
    assert bench.sheet.clamping.turned
    found = referencing.found
    assert found is not None
    assert not any(one.mark for one in found.all_holes), "marks of the other side are not seen"
    assert "not known" in referencing.page._stale.accessibleName()
    set_corner(who)
    for number, name in enumerate(("H1", "H3", "H4")[:count], start=1):
        jog_over(who, bench, name)
        assert referencing.found is not None
        assert len(referencing.found.touched) == number
    fit = who.session.derived.fit(who.session.snapshot)
    assert isinstance(fit, Fit)
    assert fit.mirror
    assert "mirrored" in referencing.page._facts.itemAt(3).widget()._value.text()
    error = bench.board_to_sheet(CORNERS, fit) - before
    assert np.hypot(*error.T).max() < (0.1 if count == 3 else 0.15)


def test_by_wheel_by_typing_and_by_shifting(who: Bystander, bench: Bench) -> None:
    marked(who)
    before = clamped_anew(who, bench, about_middle(bench, 0.01, (0.4, 0.3)))
    panel, bar = who.window.jog.reference, who.desk.bar
    moved = who.desk.state.machine
    panel.ways.buttons()[Way.WHEEL].click()
    assert "Set x, y" in panel.over.text()
    first = panel.holes.currentData()
    who.click(panel.over)
    who.rest()
    assert who.desk.state.machine == moved, "the position is set, nothing moves"
    record = who.session.snapshot.records["reference"][-1].data
    assert (record["label"], record["way"]) == (first, "wheel")
    who.click(panel.another_button)
    dialog = who.side.referencing.dialog
    assert dialog is not None
    wanted = [dialog.fields["x"].value + 0.05, dialog.fields["y"].value - 0.04]
    for axis, value in zip("xy", wanted, strict=True):
        dialog.fields[axis].set_value(value)
    second = panel.holes.currentData()
    who.click(dialog.set_button)
    who.rest()
    record = who.session.snapshot.records["reference"][-1].data
    assert (record["label"], record["touched"]) == (second, pytest.approx(wanted))
    assert who.desk.state.work is not None
    assert who.desk.state.work[:2] == pytest.approx(wanted, abs=0.01)

    measure_anew(who)
    clamped_anew(who, bench, Rigid(0.0, (0.3, 0.2)))
    panel.ways.buttons()[Way.SHIFT].click()
    bar.automatic.setChecked(False)
    for _ in range(2):
        who.click(panel.over)
        who.asked(RequestKind.SHIFT)
        assert bar.done_button.text() == "It sits"
        assert who.window.jog.position.switch.isEnabled(), "the bit may be lowered meanwhile"
        who.click(bar.done_button)
        who.rest()
    fit = who.session.derived.fit(who.session.snapshot)
    assert isinstance(fit, Fit)
    assert np.hypot(*(bench.board_to_sheet(CORNERS, fit) - before).T).max() < 0.15


def set_corner(who: Bystander) -> None:
    """After the turn: the same zero of x and y holds, nobody moved an axis; z is set on what is there."""

    def work(_progress: object) -> None:
        station = who.desk.station
        assert station is not None
        station.controller.trust("xyz")

    who.desk.start("zero", work)
    who.rest()


def measure_anew(who: Bystander) -> None:
    """After wheels were turned: zero at the corner and on the copper again."""
    session = who.session

    def work(_progress: object) -> None:
        station = who.desk.station
        assert station is not None
        measure.find_corner(session, station)
        measure.zero_height(session, station)
        measure.end_contact(station)

    who.desk.start("zero", work)
    who.rest()


def test_holes_are_chosen_on_the_canvas_and_left_out(who: Bystander, bench: Bench) -> None:
    marked(who)
    clamped_anew(who, bench, about_middle(bench, 0.01))
    panel, referencing = who.window.jog.reference, who.side.referencing
    marks = [one for one in candidates(who.session.derived, who.session.snapshot) if one.mark]
    canvas = who.window.canvas.canvas
    canvas.picked.emit(Picked("reference", 2, marks[2].at, marks[2].label))
    assert referencing.coming == marks[2].label
    assert panel.over.text() == f"Bit is over {marks[2].label}"
    assert canvas._marks.spot is not None
    assert canvas._marks.spot.at == pytest.approx(marks[2].at)
    for name in ("R1", "R2", "R3"):
        jog_over(who, bench, name)
    assert len(who.session.derived.fit(who.session.snapshot).design) == 3
    referencing.choose("R2")
    assert referencing.page.out_button.text() == "Leave R2 out"
    who.click(referencing.page.out_button)
    who.rest()
    assert len(who.session.derived.fit(who.session.snapshot).design) == 2


def test_re_mapping_shows_both_places(who: Bystander, bench: Bench) -> None:
    marked(who)
    clamped_anew(who, bench, about_middle(bench, math.radians(3.0), (1.0, 0.0)))
    for name in ("R1", "R2", "R3"):
        jog_over(who, bench, name)
    who.click(who.window.jog.reference.remap_button)
    who.rest()
    remapped = who.side.remapping.found
    assert remapped is not None
    assert abs(remapped.turned_deg) == pytest.approx(3.0, abs=0.6)
    assert who.window.canvas.canvas.content.before
    who.window.commands["before"].setChecked(False)
    assert not who.window.canvas.canvas.content.before


def test_how_sure_and_scale_are_a_persons_choice(who: Bystander) -> None:
    who.window.choose_step(6)
    who.rest()
    referencing = who.side.referencing
    page = referencing.page
    assert page.stretch.isHidden()
    referencing.sighted.setCurrentIndex(referencing.sighted.findData("rim"))
    referencing.sighted.activated.emit(referencing.sighted.currentIndex())
    who.rest()
    assert who.session.settings.reference.touch_sigma == 0.015
    line = referencing.fields["hole_sigma"].line_edit()
    line.setFocus()
    line.selectAll()
    who.qtbot.keyClicks(line, "0.04")
    who.qtbot.keyClick(line, Qt.Key.Key_Return)
    who.rest()
    assert who.session.settings.reference.hole_sigma == 0.04
    who.session.undo()
    assert who.session.settings.reference.hole_sigma == 0.05


def test_sides_and_play_through_their_dialogs(who: Bystander, bench: Bench) -> None:
    who.connect()
    who.desk.operator.shown = 0.0
    who.desk.bar.automatic.setChecked(True)
    session = who.session

    def ready(_progress: object) -> None:
        station = who.desk.station
        assert station is not None
        measure.put_in(station, PIN)
        measure.find_corner(session, station)
        measure.zero_height(session, station)
        measure.end_contact(station)
        station.place.raise_to(6.0)
        station.controller.move((-2.0, 9.0, None))

    who.desk.start("ready", ready)
    who.rest()
    who.window.choose_step(6)
    who.click(who.window.jog.position.sides)
    who.rest()
    sides = who.side.touching_off.dialog
    assert sides is not None
    sides.ways.buttons()[1].click()
    assert sides._rows["paper"].isHidden()
    sides.bit.set_value(PIN.diameter)
    who.click(sides.go_button)
    who.rest()
    assert who.desk.error is None
    corner = bench.sheet.to_space([(0.0, 9.0)])[0] - np.array(bench.work_to_space((0.0, 0.0)))
    assert corner[0] == pytest.approx(0.0, abs=0.08)

    who.click(who.side.referencing.page.play_button)
    who.rest()
    dialog = who.side.play.dialog
    assert dialog is not None
    dialog.ways.buttons()[1].click()
    dialog.axes.buttons()[1].click()
    who.click(dialog.measure_button)
    who.rest()
    assert who.desk.error is None
    assert "±" in dialog._rows["y"]._value.text()
    who.click(dialog.keep_button)
    who.rest()
    assert who.session.settings.machine.play[1] == pytest.approx(bench.body.faults.play[1], abs=0.006)
    dialog.close()


def test_a_held_jog_ends_when_the_window_loses_the_focus(who: Bystander, bench: Bench) -> None:
    who.connect()
    who.rest()
    position = who.window.jog.position
    bench.clock.pace = 1.0
    start = bench.tip()[0]
    who.qtbot.mousePress(position._buttons["x", 1], Qt.MouseButton.LeftButton)
    who.wait(lambda: bench.tip()[0] - start > 1.0)
    QApplication.sendEvent(who.window, QEvent(QEvent.Type.WindowDeactivate))
    who.wait(lambda: who.desk.state.activity is Activity.AT_REST)
    gone = bench.tip()[0] - start
    assert gone < 30.0, "the jog was cancelled, not run to its end"
    who.qtbot.mouseRelease(position._buttons["x", 1], Qt.MouseButton.LeftButton)


def test_a_held_key_moves_until_it_is_let_go(who: Bystander, bench: Bench) -> None:
    who.connect()
    who.rest()
    position = who.window.jog.position
    bench.clock.pace = 1.0
    who.window.commands["arm"].setChecked(True)
    who.window.canvas.setFocus()
    start = bench.tip()[1]
    who.qtbot.keyPress(who.window, Qt.Key.Key_Up)
    who.wait(lambda: bench.tip()[1] - start > 2.0)
    who.qtbot.keyRelease(who.window, Qt.Key.Key_Up)
    who.wait(lambda: who.desk.state.activity is Activity.AT_REST)
    assert bench.tip()[1] - start < 30.0
    who.qtbot.keyClick(who.window, Qt.Key.Key_Escape)
    assert not position.keys.armed


def test_jogs_are_slow_near_the_copper_and_stay_within_the_travel(who: Bystander) -> None:
    who.connect()
    who.rest()
    jogging, desk = who.side.jogging, who.desk
    station = desk.station
    assert station is not None
    rates = station.place.preset.max_rate
    assert jogging._feed("x") < rates[0], "the height is not known"
    who.desk.start("high", lambda _: station.controller.set_work(x=0.0, y=0.0, z=8.0))
    who.rest()
    assert jogging._feed("x") == rates[0]
    assert jogging._feed("z") == rates[2]
    who.desk.start("low", lambda _: station.controller.set_work(z=1.0))
    who.rest()
    assert jogging._feed("x") < rates[0]
    assert jogging._feed("z") < rates[2]
    station.controller._facts = replace(station.controller._facts, settings={22: 1.0})
    if station.controller.facts.homing:
        assert desk.state.machine is not None
        room = -desk.state.machine[0]
        assert jogging._within("x", 500.0) == pytest.approx(room)
        assert jogging._within("x", -5000.0) == pytest.approx(-station.place.preset.travel[0] + room)


def test_a_hole_that_is_wrong_is_named_on_the_page(who: Bystander) -> None:
    who.connect()
    who.rest()
    marks = [one for one in candidates(who.session.derived, who.session.snapshot) if one.mark]

    for k, one in enumerate(marks):
        off = 0.4 if k == 2 else 0.0
        find.keep_hole(who.session, one.label, one.at, (one.at[0] + off, one.at[1]), mark=True, sigma=0.02)
    who.window.choose_step(6)
    who.rest()
    page = who.side.referencing.page
    who.wait(lambda: who.side.referencing.found is not None and len(who.side.referencing.found.touched) == 4)
    assert marks[2].label in page._stale.accessibleName()
    found = who.side.referencing.found
    assert found is not None
    line = next(x for x in lines(found, all_of_them=False, coming=None) if x.name == marks[2].label)
    assert line.mark is Mark.ERROR
    assert page.out_button.text() == f"Leave {marks[2].label} out"
    assert not page.stretch.isHidden()
    who.click(page.stretch)
    who.rest()
    assert who.session.derived.fit(who.session.snapshot).stretch is not None


def test_the_panel_says_when_the_bit_came_the_other_way(who: Bystander) -> None:
    who.connect()
    who.rest()
    panel, position = who.window.jog.reference, who.window.jog.position
    who.click(position._buttons["x", -1])
    who.wait(lambda: "come again" in panel._hint.text())
    who.click(position._buttons["x", 1])
    who.wait(lambda: "come again" not in panel._hint.text())


def test_a_hole_says_what_the_fit_means_for_it(who: Bystander) -> None:
    marks = [one for one in candidates(who.session.derived, who.session.snapshot) if one.mark]
    for one in marks[:3]:
        find.keep_hole(who.session, one.label, one.at, one.at, mark=True)
    who.wait(lambda: who.side.referencing.found is not None and bool(who.side.referencing.found.rings))
    card = who.window.canvas.canvas._describe(Picked("hole", 0, (3.0, 3.0), "A", (("diameter", 0.8),)))
    assert [name for name, _ in card.rows][-2:] == ["Expected error", "Ring left, 95 %"]
    assert card.rows[-1][1].endswith("mm")


def test_re_mapping_looks_at_travel_and_clamps(who: Bystander) -> None:
    session = who.session
    marks = [one for one in candidates(session.derived, session.snapshot) if one.mark]
    clamp = Clamp(10.0, 10.0, 4.0, 4.0)
    session.change("A clamp", blank=replace(session.settings.blank, clamps=(clamp,)))
    who.rest()
    session.keep("setup", {"note": "clamped again"})
    laid = session.derived.fit_of(session.snapshot, 1)
    for one in marks[:3]:
        x, y = laid.then(Rigid(0.0, (60.0, 60.0))).apply([one.at])[0]
        find.keep_hole(session, one.label, one.at, (float(x), float(y)), mark=True)
    session.change("Small", machine=replace(session.settings.machine, travel=(20.0, 15.0, 30.0)))
    assert "needs" in remap(session, Progress()).refused
    session.change("Wide", machine=replace(session.settings.machine, travel=(300.0, 200.0, 30.0)))
    assert remap(session, Progress()).refused == ""


def test_a_hole_is_felt_by_its_rim_through_the_panel(who: Bystander, bench: Bench) -> None:
    marked(who, drill=True)
    session = who.session

    def thinner(_progress: object) -> None:
        station = who.desk.station
        assert station is not None
        measure.put_in(station, PIN)
        measure.zero_height(session, station, at=(3.0, 3.0))
        measure.end_contact(station)

    who.window.choose_step(6)
    panel = who.window.jog.reference
    who.side.referencing.choose("H1")
    panel.ways.buttons()[Way.RIM].click()
    assert panel.over.text() == "Feel the rim of H1"
    who.click(panel.over)
    who.rest()
    assert who.desk.error is not None
    assert "drill or an end mill" in who.desk.error.what
    who.desk.start("a thinner drill", thinner)
    who.rest()
    who.desk.bit_in = PIN.name
    who.side.referencing.choose("H1")
    who.click(panel.over)
    who.rest()
    assert who.desk.error is None
    record = session.snapshot.records["reference"][-1].data
    assert (record["label"], record["way"]) == ("H1", "rim")
    true = bench.sheet.to_space([drilled_place(who, bench, "H1")])[0] - np.array(
        bench.work_to_space((0.0, 0.0))
    )
    assert np.hypot(*(true - record["touched"])) < 0.03
    assert not [one for one in bench.mishaps if "clip" not in one.what]
