"""The run strip: what the machine does, how far it is, and the hand on it. Always in sight."""

from __future__ import annotations

from enum import Enum

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QMenu,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from drypoint.ui.language.words import told
from drypoint.ui.parts.blocks import Elided, button, tint, words
from drypoint.ui.theme.icons import icon, paint_icon
from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.type import Text, font


class RunState(Enum):
    """What the machine is doing, in the words of the window."""

    AT_REST = "at rest"
    MOVING = "moving"
    TOUCHING = "touching"
    CUTTING = "cutting"
    HELD = "held"
    NEEDS_YOU = "needs you"
    NOT_CONNECTED = "not connected"


STATE_WIDE, STATE_NARROW = 250, 190
"""Least width of the state's place, px."""

_ICONS = {
    RunState.AT_REST: "at-rest",
    RunState.MOVING: "moving",
    RunState.TOUCHING: "touch",
    RunState.CUTTING: "groove",
    RunState.HELD: "hold",
    RunState.NEEDS_YOU: "needs-you",
    RunState.NOT_CONNECTED: "not-connected",
}


class StateIcon(QWidget):
    """The drawing beside the word of the state."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme, self._state = theme, RunState.NOT_CONNECTED
        self.setFixedSize(24, 24)
        theme.changed.connect(self.update)

    def show_state(self, state: RunState) -> None:
        """Another state."""
        self._state = state
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(24, 24)

    def paintEvent(self, _event: QPaintEvent) -> None:
        tokens = self._theme.tokens
        colour = {
            RunState.NEEDS_YOU: tokens.error,
            RunState.HELD: tokens.caution,
            RunState.CUTTING: tokens.copper,
            RunState.NOT_CONNECTED: tokens.off,
        }.get(self._state, tokens.ink)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_icon(painter, _ICONS[self._state], colour, QRectF(1, 1, 22, 22))
        painter.end()


class ProgressBar(QWidget):
    """How far a program is, filled in copper."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme, self._share = theme, 0.0
        self.setFixedHeight(14)
        self.setMinimumWidth(120)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Progress"))
        theme.changed.connect(self.update)

    def show_share(self, share: float) -> None:
        """0..1."""
        self._share = min(1.0, max(0.0, share))
        self.setAccessibleDescription(f"{100 * self._share:.0f} %")
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(300, 14)

    def paintEvent(self, _event: QPaintEvent) -> None:
        tokens = self._theme.tokens
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        body = QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5)
        painter.setPen(QColor(tokens.edge))
        painter.setBrush(QColor(tokens.panel))
        painter.drawRoundedRect(body, 4, 4)
        if self._share > 0.0:
            painter.setClipRect(QRectF(0, 0, self.width() * self._share, self.height()))
            painter.setBrush(QColor(tokens.copper))
            painter.drawRoundedRect(body, 4, 4)
        painter.end()


class RunStrip(QWidget):
    """State, progress, feed, Hold, Resume, Stop; a line of messages below.

    Signals
    -------
    hold(), resume(), stop()
    feed_changed(int) : steps of 10 % asked for (+1, −1); 0 asks for 100 %
    spindle_changed(int) : the same for the spindle's speed
    rapid_changed(int) : 25, 50 or 100 % of the speed of rapid moves
    """

    hold = Signal()
    resume = Signal()
    stop = Signal()
    feed_changed = Signal(int)
    spindle_changed = Signal(int)
    rapid_changed = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._state = RunState.NOT_CONNECTED
        give_look(self, "strip")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(self.tr("Run"))
        self._icon = StateIcon(theme)
        self._word = words("", "state")
        self._where = Elided("quiet")
        self._what = Elided("value")
        self._detail = Elided("quiet")
        self._left = words("", "state", right=True)
        self._bar = ProgressBar(theme)
        self.speeds_button = button("100 %", "flat")
        self.speeds_button.setAccessibleName(self.tr("Feed, rapid moves and spindle"))
        self.slower = button("−", "axis")
        self.faster = button("+", "axis")
        self.hold_button = button(self.tr("Hold"), "run")
        self.resume_button = button(self.tr("Resume"), "run")
        self.stop_button = button(self.tr("Stop"), "stop")
        self.feed_menu_button = button(self.tr("Feed"), "run")
        self._time = words("", "value")
        self._message = Elided("label")
        self._saved = words("", "caption", right=True)
        self._feed_box = QWidget()
        self._compact: bool | None = None
        self._build()
        self.set_compact(False)
        self._explain()
        theme.changed.connect(self._dress)
        self.show_state(RunState.NOT_CONNECTED, "", usable=False)

    def _build(self) -> None:
        state = QGridLayout()
        state.setContentsMargins(0, 0, 0, 0)
        state.setHorizontalSpacing(8)
        state.setVerticalSpacing(0)
        state.addWidget(self._icon, 0, 0)
        state.addWidget(self._word, 0, 1)
        state.addWidget(self._where, 1, 0, 1, 2)
        state.setColumnStretch(1, 1)
        left = QWidget()
        left.setLayout(state)
        self._state_box = left
        self._top = QHBoxLayout()
        self._top.setSpacing(10)
        self._top.addWidget(self._what)
        self._top.addWidget(self._detail, 1)
        self._below = QHBoxLayout()
        self._below.setSpacing(10)
        self._below.addWidget(self._bar, 1)
        middle = QVBoxLayout()
        middle.setSpacing(4)
        middle.addLayout(self._top)
        middle.addLayout(self._below)
        row = QHBoxLayout()
        row.setContentsMargins(16, 8, 16, 4)
        row.setSpacing(10)
        row.addWidget(left)
        row.addLayout(middle, 1)
        row.addSpacing(6)
        row.addWidget(self._feed_widget())
        row.addWidget(self.feed_menu_button)
        for each in (self.hold_button, self.resume_button, self.stop_button):
            each.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
            row.addWidget(each)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 1, 0, 0)
        column.setSpacing(0)
        column.addLayout(row)
        column.addLayout(self._message_line())
        self.feed_menu_button.setMenu(self._feed_menu())
        self.feed_menu_button.hide()

    def _message_line(self) -> QHBoxLayout:
        line = QHBoxLayout()
        line.setContentsMargins(16, 0, 16, 6)
        line.setSpacing(10)
        line.addWidget(self._time)
        line.addWidget(self._message, 1)
        line.addWidget(self._saved)
        return line

    def _feed_widget(self) -> QWidget:
        middle = QVBoxLayout()
        middle.setSpacing(0)
        caption = self._caption = words(self.tr("Feed"), "caption")
        caption.setAlignment(Qt.AlignmentFlag.AlignCenter)
        middle.addWidget(caption)
        middle.addWidget(self.speeds_button)
        row = QHBoxLayout(self._feed_box)
        row.setContentsMargins(0, 0, 6, 0)
        row.setSpacing(8)
        row.addWidget(self.slower)
        row.addLayout(middle)
        row.addWidget(self.faster)
        self.speeds_button.setMinimumWidth(64)
        self.speeds_button.setMenu(self._feed_menu())
        return self._feed_box

    def _feed_menu(self) -> QMenu:
        menu = QMenu(self)
        for text, steps in (
            (self.tr("Faster by 10 %"), 1),
            (self.tr("Slower by 10 %"), -1),
            (self.tr("Back to 100 %"), 0),
        ):
            menu.addAction(text).triggered.connect(lambda _=False, steps=steps: self.feed_changed.emit(steps))
        menu.addSeparator()
        for percent in (100, 50, 25):
            text = self.tr("Rapid moves at {percent} %").format(percent=percent)
            menu.addAction(text).triggered.connect(lambda _=False, p=percent: self.rapid_changed.emit(p))
        menu.addSeparator()
        for text, steps in (
            (self.tr("Spindle faster by 10 %"), 1),
            (self.tr("Spindle slower by 10 %"), -1),
            (self.tr("Spindle back to 100 %"), 0),
        ):
            menu.addAction(text).triggered.connect(
                lambda _=False, steps=steps: self.spindle_changed.emit(steps)
            )
        return menu

    def _explain(self) -> None:
        self.slower.setAccessibleName(self.tr("Slower by 10 %"))
        self.faster.setAccessibleName(self.tr("Faster by 10 %"))
        self.slower.setToolTip(self.tr("Slower by 10 %"))
        self.faster.setToolTip(self.tr("Faster by 10 %"))
        self.hold_button.setToolTip(
            self.tr("Halt the axes where they are; nothing is lost (Pause or Ctrl+H)")
        )
        self.resume_button.setToolTip(self.tr("Go on from here (Ctrl+R)"))
        self.stop_button.setToolTip(
            self.tr(
                "Halt and end the program (Ctrl+.). This is no emergency stop: it works only while the "
                "program, the cable and the controller do. Keep the power switch within reach."
            )
        )
        self.hold_button.clicked.connect(self.hold)
        self.resume_button.clicked.connect(self.resume)
        self.stop_button.clicked.connect(self.stop)
        self.slower.clicked.connect(lambda: self.feed_changed.emit(-1))
        self.faster.clicked.connect(lambda: self.feed_changed.emit(1))

    # what is shown

    def show_state(self, state: RunState, where: str, *, usable: bool = True) -> None:
        """The machine's state, where it is connected, and whether it can be stopped at all."""
        self._state = state
        self._word.setText(_state_word(self, state))
        self._where.setText(where)
        self._icon.show_state(state)
        running = state in (RunState.MOVING, RunState.TOUCHING, RunState.CUTTING)
        self.hold_button.setEnabled(running)
        self.resume_button.setEnabled(state is RunState.HELD)
        self.stop_button.setEnabled(True)
        for each in (self.slower, self.faster, self.speeds_button, self.feed_menu_button):
            each.setEnabled(usable)
        _fill(self.hold_button, running)
        _fill(self.resume_button, state is RunState.HELD)
        self.setAccessibleDescription(f"{self._word.text()} {told(where)}")
        self._dress()

    def show_where(self, where: str) -> None:
        """Only where it is connected and how fast it goes; this changes many times a second."""
        self._where.setText(where)

    def show_run(self, what: str, detail: str, share: float, left: str) -> None:
        """What is run or comes next, how far it is (0..1) and how long it still takes."""
        self._what.setText(what)
        self._detail.setText(detail)
        self._left.setText(told(left))
        self._bar.show_share(share)

    def show_feed(self, percent: int, rapid: int = 100, spindle: int = 100) -> None:
        """The overrides; those of rapid moves and spindle are named where they are not 100 %."""
        self.speeds_button.setText(f"{percent} %")
        self.feed_menu_button.setText(self.tr("Feed\n{percent} %").format(percent=percent))
        others = []
        if rapid != 100:
            others.append(self.tr("rapid {percent} %").format(percent=rapid))
        if spindle != 100:
            others.append(self.tr("spindle {percent} %").format(percent=spindle))
        self._caption.setText(", ".join(others) if others else self.tr("Feed"))

    def show_message(self, time: str, text: str, saved: str = "") -> None:
        """The newest message and whether the job is saved."""
        self._time.setText(time)
        self._message.setText(text)
        self._saved.setText(saved)

    def set_compact(self, compact: bool) -> None:
        """Small windows: the feed goes into a menu, the time left beside the bar, and words get smaller;
        Hold, Resume and Stop stay as they are."""
        if compact is self._compact:
            return
        self._compact = compact
        self._feed_box.setVisible(not compact)
        self.feed_menu_button.setVisible(compact)
        (self._top if compact else self._below).removeWidget(self._left)
        (self._below if compact else self._top).addWidget(self._left)
        self._bar.setMinimumWidth(50 if compact else 120)
        for label in (self._word, self._left):
            give_look(label, "state-small" if compact else "state")
        self._state_box.setFixedWidth(self._state_width())

    def _state_width(self) -> int:
        """Room for the longest state in the language spoken, so that nothing moves when it changes."""
        letters = QFontMetrics(font(Text.SMALL_STATE if self._compact else Text.STATE))
        longest = max(letters.horizontalAdvance(_state_word(self, state)) for state in RunState)
        return max(STATE_NARROW if self._compact else STATE_WIDE, longest + 24 + 8 + 4)

    @property
    def state(self) -> RunState:
        """The state shown."""
        return self._state

    def _dress(self) -> None:
        tokens = self._theme.tokens
        colour = {
            RunState.NEEDS_YOU: tokens.error,
            RunState.HELD: tokens.caution,
            RunState.NOT_CONNECTED: tokens.ink2,
        }.get(self._state, tokens.ink)
        tint(self._word, colour)
        for each, name, filled in (
            (self.hold_button, "hold", self.hold_button.property("filled")),
            (self.resume_button, "resume", self.resume_button.property("filled")),
            (self.stop_button, "stop", None),
        ):
            shade = tokens.on_copper if filled else tokens.ink
            if each is self.stop_button:
                shade = tokens.panel
            each.setIcon(icon(name, shade if each.isEnabled() else tokens.off))


def _fill(which: QWidget, filled: bool) -> None:
    which.setProperty("filled", filled)
    which.style().unpolish(which)
    which.style().polish(which)


def _state_word(strip: QWidget, state: RunState) -> str:
    return {
        RunState.AT_REST: strip.tr("At rest"),
        RunState.MOVING: strip.tr("Moving"),
        RunState.TOUCHING: strip.tr("Touching"),
        RunState.CUTTING: strip.tr("Cutting"),
        RunState.HELD: strip.tr("Held"),
        RunState.NEEDS_YOU: strip.tr("Needs you"),
        RunState.NOT_CONNECTED: strip.tr("Not connected"),
    }[state]
