"""Fields, switches, the traveller, the run strip and the jog panel."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QWidget

from drypoint.ui.jog.panel import JogPanel
from drypoint.ui.jog.position import Position
from drypoint.ui.jog.reference import FitFacts, HoleLine
from drypoint.ui.parts.fields import NumberField, read_number
from drypoint.ui.parts.glyph import Mark
from drypoint.ui.parts.segments import Segments
from drypoint.ui.run_strip import RunState, RunStrip
from drypoint.ui.theme.theme import Theme
from drypoint.ui.traveller import NARROW, Step, Traveller


@pytest.mark.parametrize(
    ("text", "unit", "value"),
    [
        ("1.5", "mm", 1.5),
        ("1,5 mm", "mm", 1.5),
        ("35 µm", "mm", 0.035),
        ("1 in", "mm", 25.4),
        ('0.5"', "mm", 12.7),
        ("10 mil", "mm", 0.254),
        ("−2", "mm", -2.0),
        ("95", "%", 95.0),
        ("95 %", "%", 95.0),
        (".5", "mm", 0.5),
        ("two", "mm", None),
        ("3 kg", "mm", None),
        ("1.2.3", "mm", None),
        ("", "mm", None),
    ],
)
def test_numbers_as_people_type_them(text: str, unit: str, value: float | None) -> None:
    read = read_number(text, unit)
    assert read == (None if value is None else pytest.approx(value))


def test_field_settles_steps_and_takes_back(light: Theme, qtbot) -> None:
    field = NumberField("Depth", "mm", value=0.1, decimals=2, least=0.0, most=0.3)
    qtbot.addWidget(field)
    field.show()
    line = field.line_edit()
    got: list[float] = []
    field.edited.connect(got.append)
    line.selectAll()
    qtbot.keyClicks(line, "0.2")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert got == [pytest.approx(0.2)]
    qtbot.keyClick(line, Qt.Key.Key_Up)
    assert field.value == pytest.approx(0.21)
    line.selectAll()
    qtbot.keyClicks(line, "9")
    assert line.property("wrong")
    assert "0.3" in line.toolTip()
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert field.value == pytest.approx(0.21)
    qtbot.keyClick(line, Qt.Key.Key_Escape)
    assert line.text() == "0.21"
    assert not line.property("wrong")


def test_segments_choose_one(light: Theme, qtbot) -> None:
    segments = Segments(["a", "b", "c"], "Letters")
    qtbot.addWidget(segments)
    with qtbot.waitSignal(segments.chosen) as caught:
        qtbot.mouseClick(segments.buttons()[2], Qt.MouseButton.LeftButton)
    assert caught.args == [2]
    assert [b.isChecked() for b in segments.buttons()] == [False, False, True]


def test_traveller_says_state_and_reason(theme: Theme, qtbot) -> None:
    traveller = Traveller(theme, 3)
    qtbot.addWidget(traveller)
    traveller.show()
    traveller.show_job("tag", "bottom", "saved")
    stale = Step("Surface", Mark.STALE, "48 touches", "The board was re-clamped at 19:42.")
    traveller.show_steps([Step("Board", Mark.DONE, "26 nets"), stale, Step("Run")])
    assert traveller.line(1).accessibleName() == "Surface, stale"
    assert "re-clamped" in traveller.line(1).toolTip()
    with qtbot.waitSignal(traveller.chosen) as caught:
        qtbot.mouseClick(traveller.line(2), Qt.MouseButton.LeftButton)
    assert caught.args == [2]
    traveller.set_narrow(True)
    assert traveller.width() == NARROW
    assert not traveller.grab().isNull()


@pytest.mark.parametrize("state", list(RunState))
def test_strip_offers_what_the_state_allows(theme: Theme, qtbot, state: RunState) -> None:
    strip = RunStrip(theme)
    qtbot.addWidget(strip)
    strip.resize(1024, 100)
    strip.show()
    strip.show_state(state, "port")
    moving = state in (RunState.MOVING, RunState.TOUCHING, RunState.CUTTING)
    assert strip.hold_button.isEnabled() is moving
    assert strip.resume_button.isEnabled() is (state is RunState.HELD)
    assert strip.stop_button.isEnabled()
    filled = [b for b in (strip.hold_button, strip.resume_button) if b.property("filled")]
    assert len(filled) == (1 if moving or state is RunState.HELD else 0)


def test_stop_is_no_emergency_stop_and_never_shrinks(light: Theme, qtbot) -> None:
    strip = RunStrip(light)
    qtbot.addWidget(strip)
    light.dress(strip)
    strip.show()
    assert "no emergency stop" in strip.stop_button.toolTip()
    sizes = []
    for compact, width in ((False, 1600), (True, 1024)):
        strip.set_compact(compact)
        strip.resize(width, 100)
        strip.grab()
        sizes.append(strip.stop_button.size())
        assert strip.stop_button.isVisible()
        assert strip.stop_button.geometry().right() < width
    assert sizes[0].height() == sizes[1].height() >= 44
    with qtbot.waitSignal(strip.stop):
        qtbot.mouseClick(strip.stop_button, Qt.MouseButton.LeftButton)


def test_feed_goes_into_a_menu_in_small_windows(light: Theme, qtbot) -> None:
    strip = RunStrip(light)
    qtbot.addWidget(strip)
    strip.show()
    strip.set_compact(True)
    asked: list[int] = []
    strip.feed_changed.connect(asked.append)
    for action in strip.feed_menu_button.menu().actions():
        action.trigger()
    assert asked == [1, -1, 0]
    assert not strip.slower.isVisible()


@pytest.fixture
def jog(light: Theme, qtbot) -> JogPanel:
    panel = JogPanel(light)
    qtbot.addWidget(panel)
    panel.resize(388, 520)
    panel.show()
    panel.position.show_position(Position((1.0, -2.0, 3.0), (-10.0, -20.0, -30.0)))
    return panel


def test_buttons_jog_by_the_step(jog: JogPanel, qtbot) -> None:
    moves: list[tuple[str, float]] = []
    jog.position.jogged.connect(lambda axis, far: moves.append((axis, far)))
    jog.position.steps.choose(2)
    qtbot.mouseClick(jog.position._buttons["y", -1], Qt.MouseButton.LeftButton)
    assert moves == [("y", -1.0)]


def test_keys_move_only_while_armed(jog: JogPanel, qtbot) -> None:
    moves: list[tuple[str, float]] = []
    jog.position.jogged.connect(lambda axis, far: moves.append((axis, far)))
    target = jog.position
    qtbot.keyClick(target, Qt.Key.Key_Right)
    assert not moves
    target.switch.setChecked(True)
    qtbot.keyClick(target, Qt.Key.Key_1)
    qtbot.keyClick(target, Qt.Key.Key_Right)
    qtbot.keyClick(target, Qt.Key.Key_PageDown)
    assert moves == [("x", pytest.approx(0.01)), ("z", pytest.approx(-0.01))]
    qtbot.keyClick(target, Qt.Key.Key_Escape)
    assert not target.switch.isChecked()
    qtbot.keyClick(target, Qt.Key.Key_Right)
    assert len(moves) == 2


def test_armed_keys_leave_fields_alone_and_give_up_when_idle(jog: JogPanel, qtbot) -> None:
    moves: list[object] = []
    jog.position.jogged.connect(lambda *args: moves.append(args))
    window = QWidget()
    qtbot.addWidget(window)
    field = QLineEdit("12", window)
    window.show()
    window.activateWindow()
    field.setFocus()
    qtbot.waitUntil(field.hasFocus)
    jog.position.switch.setChecked(True)
    qtbot.keyClick(field, Qt.Key.Key_Left)
    qtbot.keyClick(field, Qt.Key.Key_3)
    assert not moves
    assert field.text() == "132"
    jog.position.keys._idle.timeout.emit()
    assert not jog.position.switch.isChecked()


def test_locked_panel_disarms_and_says_why(jog: JogPanel) -> None:
    jog.position.switch.setChecked(True)
    jog.position.set_usable(False, "Jog is locked while a program runs.")
    assert not jog.position.keys.armed
    assert jog.position._hint.text() == "Jog is locked while a program runs."


def test_touch_off_by_paper_gives_its_thickness(jog: JogPanel, qtbot) -> None:
    for way, expected in ((0, ["paper", pytest.approx(0.1)]), (1, ["contact", 0.0])):
        jog.position.ways.choose(way)
        with qtbot.waitSignal(jog.position.touched_off) as caught:
            qtbot.mouseClick(jog.position.touch_off, Qt.MouseButton.LeftButton)
        assert caught.args == expected


def test_bit_is_over_the_hole_that_comes_next(jog: JogPanel, qtbot) -> None:
    holes = (HoleLine("R1", (0, 0), 0.03, Mark.DONE), HoleLine("R4", (5, 5), None, Mark.READY))
    jog.reference.show_holes(holes, FitFacts(0.03, 0.2), "R4")
    with qtbot.waitSignal(jog.reference.over_hole) as caught:
        jog.reference.confirm()
    assert caught.args == ["R4"]
    jog.reference.show_holes(holes, FitFacts(), None)
    assert not jog.reference.over.isVisible()


def test_a_complaint_keeps_what_is_said_of_the_field(light: Theme, qtbot) -> None:
    field = NumberField("Depth", "mm", value=0.1, least=0.0, most=1.0)
    qtbot.addWidget(field)
    field.set_help("How deep the bit goes.")
    line = field.line_edit()
    line.setText("7")
    line.textEdited.emit("7")
    said = line.accessibleDescription()
    assert said.startswith("Depth: from 0 to 1 mm")
    assert said.endswith("How deep the bit goes.")
    field.set_value(0.2)
    assert line.accessibleDescription() == "How deep the bit goes."
