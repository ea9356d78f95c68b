"""Keys that move the machine; only while armed, and never for long unattended."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractSpinBox, QApplication, QLineEdit, QPlainTextEdit

IDLE = 60_000
"""ms without a key after which the keys disarm themselves."""

LONG = 400
"""ms after which a button or key that stays pressed goes on moving until it is let go."""

STEPS = (0.01, 0.1, 1.0, 10.0)
"""Jog steps, mm; keys 1 to 4."""

_WAYS = {
    Qt.Key.Key_Left: ("x", -1.0),
    Qt.Key.Key_Right: ("x", 1.0),
    Qt.Key.Key_Up: ("y", 1.0),
    Qt.Key.Key_Down: ("y", -1.0),
    Qt.Key.Key_PageUp: ("z", 1.0),
    Qt.Key.Key_PageDown: ("z", -1.0),
}


class JogKeys(QObject):
    """Listens to all keys while armed; any window losing the focus disarms.

    Signals
    -------
    jogged(str, float) : axis and direction (±1)
    held(str, float), let_go() : a key stays pressed; let go again, or the keys are disarmed
    step_chosen(int) : 0 to 3
    disarmed() : by Esc, by 60 s without a key, or because the window lost the focus
    """

    jogged = Signal(str, float)
    held = Signal(str, float)
    let_go = Signal()
    step_chosen = Signal(int)
    disarmed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._armed = False
        self._idle = QTimer(self, singleShot=True, interval=IDLE)
        self._idle.timeout.connect(self._give_up)
        self._pressed: Qt.Key | None = None
        self._holding = False
        self._long = QTimer(self, singleShot=True, interval=LONG)
        self._long.timeout.connect(self._hold)

    @property
    def armed(self) -> bool:
        """Whether keys move the machine."""
        return self._armed

    def arm(self, armed: bool) -> None:
        """Arm or disarm. While armed, keys are seen before any widget of the program gets them."""
        application = QApplication.instance()
        if application is not None and armed != self._armed:
            if armed:
                application.installEventFilter(self)
            else:
                application.removeEventFilter(self)
        self._armed = armed
        if armed:
            self._idle.start()
        else:
            self._idle.stop()
            self._release()

    def take(self, event: QKeyEvent) -> bool:
        """Use a key press if it is one of ours; True if it was."""
        if not self._armed or isinstance(
            QApplication.focusWidget(), QLineEdit | QPlainTextEdit | QAbstractSpinBox
        ):
            return False
        key = Qt.Key(event.key())
        if key == Qt.Key.Key_Escape:
            self._give_up()
            return True
        if key in _WAYS:
            self._idle.start()
            if not event.isAutoRepeat():  # one press, one step; then on only until it is let go
                self._release()
                self.jogged.emit(*_WAYS[key])
                self._pressed = key
                self._long.start()
            return True
        number = key - Qt.Key.Key_1
        if 0 <= number < len(STEPS) and event.modifiers() == Qt.KeyboardModifier.NoModifier:
            self._idle.start()
            self.step_chosen.emit(number)
            return True
        return False

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if self._armed and event.type() == QEvent.Type.WindowDeactivate:
            self._give_up()
        elif self._armed and event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            return self.take(event)
        elif event.type() == QEvent.Type.KeyRelease and isinstance(event, QKeyEvent):
            self._let_up(event)
        return super().eventFilter(watched, event)

    def _let_up(self, event: QKeyEvent) -> None:
        if event.key() == self._pressed and not event.isAutoRepeat():
            self._release()

    def _hold(self) -> None:
        if self._pressed is not None:
            self._holding = True
            self.held.emit(*_WAYS[self._pressed])

    def _release(self) -> None:
        self._long.stop()
        self._pressed = None
        if self._holding:
            self._holding = False
            self.let_go.emit()

    def _give_up(self) -> None:
        if self._armed:
            self.arm(False)
            self.disarmed.emit()
