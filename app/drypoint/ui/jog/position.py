"""Where the bit is, and the buttons that move it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from drypoint.ui.jog.keys import LONG, STEPS, JogKeys
from drypoint.ui.language.words import fill, local
from drypoint.ui.parts.blocks import button, tint, words
from drypoint.ui.parts.segments import Segments
from drypoint.ui.parts.switch import Switch
from drypoint.ui.theme.theme import Theme

AXES = ("x", "y", "z")
PAPER = 0.10
"""Thickness of common office paper, mm (common practice; measure yours)."""


@dataclass(frozen=True, slots=True)
class Position:
    """Work and machine coordinates, mm; None where they are not known."""

    work: tuple[float, float, float] | None
    machine: tuple[float, float, float] | None
    trusted: bool = True
    """False after hand wheels may have moved an axis."""


class PositionPanel(QWidget):
    """Big figures, jog buttons and steps, arming of the keys, touching off.

    Signals
    -------
    jogged(str, float) : axis, distance in mm
    held(str, float), let_go() : axis and direction of a button or key kept pressed; let go again
    armed(bool) : the user armed or disarmed the keys
    touched_off(str, float) : "paper" with its thickness in mm, or "contact" with 0
    sides_wanted() : the user wants to touch off x or y
    place_entered() : the user wants to enter a place set by hand wheel
    """

    jogged = Signal(str, float)
    held = Signal(str, float)
    let_go = Signal()
    armed = Signal(bool)
    touched_off = Signal(str, float)
    place_entered = Signal()
    sides_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._position = Position(None, None)
        self._why_not = ""
        self.keys = JogKeys(self)
        self._pressed = ("", 0)
        self._holding = False
        self._long = QTimer(self, singleShot=True, interval=LONG)
        self.switch = Switch(theme, self.tr("Jog keys"))
        self._armed_word = words("", "quiet")
        self._work = {axis: words("–", "position", right=True) for axis in AXES}
        self._machine = {axis: words("", "quiet", right=True) for axis in AXES}
        self._buttons: dict[tuple[str, int], QPushButton] = {}
        self.steps = Segments([local(f"{step:g}") for step in STEPS], self.tr("Step"), chosen=1)
        self._paper = PAPER
        self.ways = Segments(["", self.tr("Contact")], self.tr("Touch off"), chosen=1)
        self.set_paper(PAPER)
        self.touch_off = button(self.tr("Touch off Z"))
        self.sides = button(self.tr("Touch off X, Y…"), "flat")
        self.sides.setAccessibleName(self.tr("Touch off X and Y…"))
        self.sides.setToolTip(self.tr("Touch off X and Y at an edge of the blank, or by the rim of a hole."))
        self.enter_place = button(self.tr("Set by hand wheel…"), "flat")
        self._hint = words("", "caption", wrap=True)
        self._hint.setMinimumHeight(30)  # two lines, so that nothing jumps when it is said
        self._hint.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        self._build()
        self._connect()
        theme.changed.connect(self._dress)
        self._show_armed(False)

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 8, 16, 8)
        column.setSpacing(6)
        head = QHBoxLayout()
        head.addWidget(words(self.tr("Position"), "section"))
        head.addStretch(1)
        head.addWidget(words(self.tr("Jog keys"), "label"))
        head.addWidget(self._armed_word)
        head.addWidget(self.switch)
        column.addLayout(head)
        column.addLayout(self._grid())
        steps = QHBoxLayout()
        steps.addWidget(words(self.tr("Step"), "label"))
        steps.addStretch(1)
        steps.addWidget(self.steps)
        steps.addWidget(words("mm", "unit"))
        column.addLayout(steps)
        touch = QHBoxLayout()
        touch.setSpacing(8)
        touch.addWidget(self.ways)
        touch.addWidget(self.touch_off, 1)
        column.addLayout(touch)
        foot = QHBoxLayout()
        foot.addWidget(self._hint, 1)
        foot.addWidget(self.sides, 0, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop)
        column.addLayout(foot)

    def _grid(self) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(8)
        grid.setVerticalSpacing(2)
        grid.addWidget(words(self.tr("work, mm"), "caption"), 0, 1)
        grid.addWidget(self.enter_place, 0, 2, 1, 2, Qt.AlignmentFlag.AlignRight)
        grid.addWidget(words(self.tr("machine"), "caption", right=True), 0, 4)
        for row, axis in enumerate(AXES, start=1):
            grid.addWidget(words(axis.upper(), "state"), row, 0)
            for column, sign in ((1, -1), (3, 1)):
                each = button("−" if sign < 0 else "+", "axis")
                way = self.tr("minus") if sign < 0 else self.tr("plus")
                each.setAccessibleName(f"{axis.upper()} {way}")
                self._buttons[axis, sign] = each
                grid.addWidget(each, row, column)
            grid.addWidget(self._work[axis], row, 2)
            grid.addWidget(self._machine[axis], row, 4)
        grid.setColumnStretch(2, 1)
        grid.setColumnMinimumWidth(4, 74)
        return grid

    def _connect(self) -> None:
        for (axis, sign), each in self._buttons.items():
            each.pressed.connect(lambda a=axis, s=sign: self._press(a, s))
            each.released.connect(self._release)
            each.clicked.connect(lambda _=False, a=axis, s=sign: self._click(a, s))
        self._long.timeout.connect(self._hold)
        self.keys.held.connect(self.held)
        self.keys.let_go.connect(self.let_go)
        self.keys.jogged.connect(lambda axis, sign: self.jogged.emit(axis, sign * self.step))
        self.keys.step_chosen.connect(self.steps.choose)
        self.keys.disarmed.connect(self._disarmed)
        self.switch.toggled.connect(self._arm)
        self.touch_off.clicked.connect(self._touch_off)
        self.sides.clicked.connect(self.sides_wanted)
        self.enter_place.clicked.connect(self.place_entered)

    def _press(self, axis: str, sign: int) -> None:
        self._pressed, self._holding = (axis, sign), False
        self._long.start()

    def _hold(self) -> None:
        self._holding = True
        self.held.emit(self._pressed[0], float(self._pressed[1]))

    def _release(self) -> None:
        self._long.stop()
        if self._holding:
            self.let_go.emit()  # a click may follow; it must find that this was a long press

    def _click(self, axis: str, sign: int) -> None:
        if not self._holding:  # a long press has moved it already
            self.jogged.emit(axis, sign * self.step)
        self._holding = False

    @property
    def step(self) -> float:
        """Jog step, mm."""
        return STEPS[self.steps.choice]

    def show_position(self, position: Position) -> None:
        """Show where the bit is."""
        self._position = position
        for number, axis in enumerate(AXES):
            work = "–" if position.work is None else local(f"{position.work[number]:.3f}")
            machine = "" if position.machine is None else local(f"{position.machine[number]:.3f}")
            self._work[axis].setText(work.replace("-", "−"))
            self._work[axis].setAccessibleName(f"{axis.upper()} {work} mm")
            self._machine[axis].setText(machine.replace("-", "−"))
            tint(self._work[axis], self._theme.tokens.ink if position.trusted else self._theme.tokens.caution)

    @property
    def paper(self) -> float:
        """Thickness of the paper that is touched off with, mm."""
        return self._paper

    def set_paper(self, thickness: float) -> None:
        """Thickness of the paper that is touched off with, mm."""
        self._paper = thickness
        self.ways.set_label(0, fill(self.tr("Paper {thickness:.2f}"), thickness=thickness))

    def set_usable(self, usable: bool, why_not: str = "") -> None:
        """Lock everything that moves, with the reason."""
        if not usable:
            self.switch.setChecked(False)
            self._release()
        for each in (*self._buttons.values(), self.switch, self.touch_off, self.sides, self.enter_place):
            each.setEnabled(usable)
        self._why_not = why_not
        self._show_armed(self.keys.armed, why_not)

    def _arm(self, on: bool) -> None:
        self.keys.arm(on)
        self._show_armed(on)
        self.armed.emit(on)

    def _dress(self) -> None:
        self._show_armed(self.keys.armed, self._why_not)
        self.show_position(self._position)

    def _disarmed(self) -> None:
        self.switch.setChecked(False)

    def _show_armed(self, on: bool, why_not: str = "") -> None:
        self._armed_word.setText(self.tr("armed") if on else self.tr("off"))
        tint(self._armed_word, self._theme.tokens.copper if on else self._theme.tokens.ink2)
        hint = self.tr("Arrow keys move X and Y, Page Up and Page Down move Z. Esc disarms.")
        self._hint.setText(why_not or (hint if on else ""))

    def _touch_off(self) -> None:
        paper = self.ways.choice == 0
        self.touched_off.emit("paper" if paper else "contact", self._paper if paper else 0.0)
