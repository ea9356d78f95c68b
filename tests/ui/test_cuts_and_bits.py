"""The newer fields of the pages Cuts and Bits, by real clicks and keys."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QLabel, QPushButton

from drypoint.bits.width_coupon import SHALLOWEST
from drypoint.cuts.model import CutKind
from drypoint.cuts.ratings import Surroundings
from drypoint.session.commands import prepare
from drypoint.session.corner import Corner
from drypoint.session.planning import Planning
from drypoint.session.plans import taught
from drypoint.session.settings import Voltage
from drypoint.session.wear_book import WearBook, Worked
from drypoint.ui import app as app_module
from drypoint.ui.app import Application
from drypoint.ui.design_side.remember import Remembered
from drypoint.ui.forms.voltages import VoltagesForm
from drypoint.ui.parts.blocks import Note
from drypoint.ui.parts.fields import Choice, NumberField
from drypoint.ui.theme.theme import Theme

PATIENCE = 30_000


@pytest.fixture(scope="module")
def prepared_job(hive_scale: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    made = tmp_path_factory.mktemp("cuts-and-bits") / "hive.drypoint"
    prepare([hive_scale], made)
    return made


@pytest.fixture
def window(
    light: Theme,
    qtbot,
    prepared_job: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    planning: Planning,
) -> Iterator[Application]:
    monkeypatch.setattr(app_module, "MACHINE_SIDE", "drypoint.ui.no_machine")
    book = WearBook(tmp_path / "wear.json")
    book.add("V-bit 0.1 mm 30°", Worked(19_500.0))
    book.add("Drill 0.8 mm", Worked(holes=300))
    book.add("Somebody else's bit", Worked(5_000.0))
    made = Application(light, Remembered(tmp_path / "window.json"), book, planning)
    made.bridge.recovery = tmp_path / "recovery"
    qtbot.addWidget(made.window)
    made.window.show()
    copy = tmp_path / "hive.drypoint"
    shutil.copyfile(prepared_job, copy)
    assert made.design.documents.open(copy)
    _planned(made, qtbot)
    yield made
    made.window.close()
    made.close()


def _planned(made: Application, qtbot) -> None:
    planner = made.design.planner
    qtbot.waitUntil(lambda: planner.cuts is not None and not made.bridge.busy, timeout=PATIENCE)


def _settings(made: Application):
    session = made.bridge.session
    assert session is not None
    return session.settings


def _spots(made: Application) -> bool:
    found = made.design.planner.cuts
    return found is None or any(cut.kind is CutKind.SPOT for cut in found.cuts.holes)


def _crosses(form: VoltagesForm) -> list[QPushButton]:
    shown = [each for each in form.findChildren(QPushButton) if each.isVisibleTo(form)]
    return [each for each in shown if each.text() == "×"]


def _close(made: Application) -> bool:
    found = made.design.planner.cuts
    return found is not None and bool(found.cuts.close)


def test_spot_marks_and_the_dust_pause_are_switches(window: Application, qtbot) -> None:
    window.window.choose_step(3)
    pages = window.design.pages
    assert _spots(window)
    for name, section in (("spots", "holes"), ("dust_pause", "cuts")):
        switch = pages.switches.switch(name)
        assert switch.isChecked()
        assert switch.accessibleDescription()
        qtbot.mouseClick(switch, Qt.MouseButton.LeftButton)
        assert getattr(getattr(_settings(window), section), name) is False
    qtbot.waitUntil(lambda: not _spots(window), timeout=PATIENCE)
    window.design.editing.undo()
    window.design.editing.undo()
    qtbot.waitUntil(lambda: pages.switches.switch("spots").isChecked(), timeout=PATIENCE)


def test_a_voltage_is_entered_and_what_is_too_close_is_listed_and_shown(window: Application, qtbot) -> None:
    window.window.choose_step(3)
    electrical, page = window.design.pages.electrical, window.design.pages.cuts
    form = electrical.form
    qtbot.mouseClick(form.add_button, Qt.MouseButton.LeftButton)
    (one,) = _settings(window).electrical.voltages
    volts = form.findChild(NumberField)
    volts.line_edit().selectAll()
    qtbot.keyClicks(volts.line_edit(), "120")
    qtbot.keyClick(volts.line_edit(), Qt.Key.Key_Return)
    assert _settings(window).electrical.voltages == (Voltage(one.net, "", 120.0),)
    qtbot.waitUntil(lambda: _close(window), timeout=PATIENCE)
    _planned(window, qtbot)
    notes = [
        note
        for note in page.findChildren(Note)
        if note.isVisibleTo(page) and one.net in note.accessibleName()
    ]
    assert notes
    chosen = []
    page.place_chosen.connect(chosen.append)
    link = next(each for each in notes[0].findChildren(QPushButton) if "mm" in each.text())
    qtbot.mouseClick(link, Qt.MouseButton.LeftButton)
    assert chosen == [window.design.planner.cuts.cuts.close[0].at]
    electrical.surroundings.setCurrentIndex(2)
    electrical.surroundings.activated.emit(2)
    assert _settings(window).electrical.surroundings is Surroundings.COATED
    net = next(box for box in form.findChildren(Choice) if box.isVisibleTo(form))
    net.setCurrentIndex(1)
    net.activated.emit(1)
    assert _settings(window).electrical.voltages[0].net == net.itemData(1)
    qtbot.waitUntil(lambda: bool(_crosses(form)))
    (remove,) = _crosses(form)
    qtbot.mouseClick(remove, Qt.MouseButton.LeftButton)
    assert _settings(window).electrical.voltages == ()


def test_the_islands_are_checked_at_a_depth_of_ones_choice(window: Application, qtbot) -> None:
    """Copper is 35 µm thick: 0.03 mm parts nothing, 0.06 mm everything."""
    window.window.choose_step(3)
    checks, page = window.design.depth_checks, window.design.pages.cuts
    assert not checks.paths.isVisibleTo(page)
    for text, what in (("0.03", "stay joined"), ("0.06", "every net is an island")):
        _enter(checks.depth, text, qtbot)
        with qtbot.waitSignal(window.bridge.computed, timeout=PATIENCE):
            qtbot.mouseClick(checks.button, Qt.MouseButton.LeftButton)
        (note,) = [checks.results.itemAt(row).widget() for row in range(checks.results.count())]
        assert any(what in label.text() for label in note.findChildren(QLabel))
    _enter(page_field(window), "0.12", qtbot)
    assert _settings(window).cuts.least_trace == 0.12
    qtbot.waitUntil(lambda: checks.results.count() == 0)


def page_field(window: Application) -> NumberField:
    """The field of the least trace."""
    page = window.design.pages.cuts
    return next(one for one in page.findChildren(NumberField) if "trace keeps" in one.accessibleName())


def test_wear_is_told_and_a_new_bit_counts_from_nothing(window: Application, qtbot) -> None:
    window.window.choose_step(2)
    wear = window.design.pages.bits.wear
    assert set(wear.buttons) == {"V-bit 0.1 mm 30°", "Drill 0.8 mm"}
    qtbot.mouseClick(wear.buttons["V-bit 0.1 mm 30°"], Qt.MouseButton.LeftButton)
    assert window.bridge.book is not None
    assert window.bridge.book.read().of("V-bit 0.1 mm 30°").length == 0.0
    assert window.bridge.book.read().of("Drill 0.8 mm").holes == 300


def test_the_limits_of_a_bit_are_entered_and_kept(window: Application, qtbot) -> None:
    window.window.choose_step(2)
    wear = window.design.pages.bits.wear
    (metres,) = wear.limits["V-bit 0.1 mm 30°"]
    (holes,) = wear.limits["Drill 0.8 mm"]
    _enter(metres, "35", qtbot)
    _enter(holes, "200", qtbot)
    book = window.bridge.book.read()
    assert book.of("V-bit 0.1 mm 30°").replace_at_mm == 35_000.0
    assert book.of("Drill 0.8 mm").replace_at_holes == 200
    assert book.hints() == (next(hint for hint in book.hints() if "Drill 0.8 mm" in str(hint)),)


@pytest.mark.parametrize(
    ("field", "text", "read"),
    [
        ("runout", "0.03", lambda bits: bits.vbit.runout == 0.03),
        ("mill_step", "0.25", lambda bits: bits.mill.step == 0.25),
        ("mill_plunge", "45", lambda bits: bits.mill.speeds.plunge == 45.0),
        ("drill_peck", "0.5", lambda bits: {one.peck for one in bits.drills} == {0.5}),
        ("drill_plunge", "90", lambda bits: {one.speeds.plunge for one in bits.drills} == {90.0}),
    ],
)
def test_how_bits_are_run_is_set_and_undone(window: Application, qtbot, field: str, text: str, read) -> None:
    window.window.choose_step(2)
    before = _settings(window).bits
    _enter(window.design.pages.bits.form.fields[field], text, qtbot)
    assert read(_settings(window).bits)
    window.window.commands["undo"].trigger()
    assert _settings(window).bits == before


def test_a_spindle_that_is_too_slow_is_told_beside_the_bits(window: Application, qtbot) -> None:
    window.window.choose_step(2)
    form = window.design.pages.bits.form
    assert not form.findChildren(Note)
    _enter(form.fields["spindle"], "30000", qtbot)
    qtbot.waitUntil(lambda: len(form.findChildren(Note)) == 1)


def _enter(field, text: str, qtbot) -> None:
    line = field.focusProxy()
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, text)
    qtbot.keyClick(line, Qt.Key.Key_Return)


def test_the_test_pattern_is_written_for_the_corner_chosen(
    window: Application, qtbot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window.window.choose_step(2)
    pattern = window.design.pages.coupon
    folder = tmp_path / "pattern"
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(folder))
    pattern.corner.setFocus()
    qtbot.keyClick(pattern.corner, Qt.Key.Key_End)
    assert pattern.corner.currentData() == Corner.UPPER_RIGHT
    qtbot.mouseClick(pattern.write_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: (folder / "coupon.txt").is_file() and not window.bridge.busy, timeout=PATIENCE)
    assert list(folder.glob("coupon-*.nc"))


def test_what_the_test_pattern_shows_is_entered_used_and_undone(window: Application, qtbot) -> None:
    window.window.choose_step(2)
    reading, before = window.design.pages.coupon_reading, _settings(window).bits.vbit
    sheet = reading.sheet
    qtbot.mouseClick(window.design.pages.coupon.read_button, Qt.MouseButton.LeftButton)
    assert sheet.isVisible()
    assert not sheet.use_button.isEnabled()
    for depth, field in sheet.widths.items():
        field.line_edit().selectAll()
        qtbot.keyClicks(field.line_edit(), f"{before.width(depth) + 0.03:.3f}")
        qtbot.keyClick(field.line_edit(), Qt.Key.Key_Return)
    for depth, choice in sheet.squares.items():
        qtbot.mouseClick(choice.buttons()[2 if depth >= 0.03 else 1], Qt.MouseButton.LeftButton)
    qtbot.mouseClick(sheet.ridges[0.3].buttons()[2], Qt.MouseButton.LeftButton)
    assert sheet.read.squares[0.02] is False
    assert sheet.read.squares[0.03] is True
    assert sheet.read.ridges == {0.3: True}
    assert len(sheet.read.widths) == 5
    qtbot.waitUntil(lambda: sheet.use_button.isEnabled() and not window.bridge.busy, timeout=PATIENCE)
    assert not sheet.picture.grab().isNull()
    plain = window.design.planner.cuts
    qtbot.mouseClick(sheet.use_button, Qt.MouseButton.LeftButton)
    after = _settings(window).bits.vbit
    assert after.tip + after.runout > before.tip + before.runout + 0.01
    session = window.bridge.session
    assert session is not None
    belief = taught(session.snapshot)
    assert belief is not None
    assert 0.003 < belief.offset - SHALLOWEST * _settings(window).passes.play < 0.017
    assert not sheet.read.any
    assert not sheet.use_button.isEnabled()
    qtbot.waitUntil(lambda: window.design.planner.cuts not in (None, plain), timeout=PATIENCE)
    assert plain is not None
    found = window.design.planner.cuts
    assert found is not None
    assert found.cuts.width > plain.cuts.width + 0.01
    window.design.editing.undo()
    assert _settings(window).bits.vbit == before
    assert taught(session.snapshot) is None
    sheet.close()
