"""The order scrubber: shows the run at any moment; it never moves the machine."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from drypoint.ui.canvas.strokes import pen
from drypoint.ui.parts.blocks import button, words
from drypoint.ui.theme.theme import Theme


def clock(seconds: float) -> str:
    """Minutes and seconds, hours where there are any."""
    whole = round(max(0.0, seconds))
    hours, rest = divmod(whole, 3600)
    minutes, left = divmod(rest, 60)
    return f"{hours}:{minutes:02d}:{left:02d}" if hours else f"{minutes}:{left:02d}"


ROOMY = 480
"""Width under which only the track, the times and Pause stay; px."""


class Track(QWidget):
    """A line with a handle and marks where something changes (a bit, a pass)."""

    moved = Signal(float)
    stepped = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._share = 0.0
        self._marks: tuple[float, ...] = ()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumWidth(60)
        self.setFixedHeight(30)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Order of cutting"))
        theme.changed.connect(self.update)

    def show_share(self, share: float, marks: Sequence[float]) -> None:
        """Handle at a share (0..1), marks at others."""
        self._share, self._marks = min(1.0, max(0.0, share)), tuple(marks)
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(320, 30)

    def paintEvent(self, _event: QPaintEvent) -> None:
        tokens = self._theme.tokens
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        left, right, y = 8.0, self.width() - 8.0, 15.0
        x = left + self._share * (right - left)
        painter.setPen(pen(tokens.edge, 3.0))
        painter.drawLine(QPointF(left, y), QPointF(right, y))
        painter.setPen(pen(tokens.ink2, 1.4))
        for mark in self._marks:
            at = left + mark * (right - left)
            painter.drawLine(QPointF(at, y - 9), QPointF(at, y - 4))
        painter.setPen(pen(tokens.copper, 3.0))
        painter.drawLine(QPointF(left, y), QPointF(x, y))
        painter.setBrush(QColor(tokens.panel))
        painter.setPen(pen(tokens.copper, 2.0))
        painter.drawRoundedRect(QRectF(x - 6, y - 9, 12, 18), 3, 3)
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4, 4)
        painter.end()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._follow(event.position().x())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._follow(event.position().x())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        far = 10 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1
        ways = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}
        key = Qt.Key(event.key())
        if key in ways:
            self.stepped.emit(ways[key] * far)
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End):
            self.moved.emit(0.0 if key == Qt.Key.Key_Home else 1.0)
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        self.update()
        super().focusInEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self.update()
        super().focusOutEvent(event)

    def _follow(self, x: float) -> None:
        self.moved.emit(min(1.0, max(0.0, (x - 8.0) / max(self.width() - 16.0, 1.0))))


class Scrubber(QWidget):
    """Track with words at both sides.

    Signals
    -------
    moved(float) : share 0..1 asked for
    stepped(int) : that many loops on or back
    pause_wanted() : pause before the piece that is shown
    """

    moved = Signal(float)
    stepped = Signal(int)
    pause_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setContentsMargins(12, 4, 12, 6)
        row.setSpacing(10)
        self._title = words(self.tr("Order"), "value")
        row.addWidget(self._title)
        self._what = words("", "quiet")
        self._what.setMinimumWidth(110)
        row.addWidget(self._what)
        self._track = Track(theme)
        row.addWidget(self._track, 1)
        self._time = words("", "value", right=True)
        self._time.setMinimumWidth(96)
        row.addWidget(self._time)
        self.pause_button = button(self.tr("Pause here"))
        self.pause_button.setToolTip(
            self.tr("Have the run pause before the piece shown: bit raised, spindle off, until you go on.")
        )
        self.pause_button.clicked.connect(self.pause_wanted)
        row.addWidget(self.pause_button)
        self._track.moved.connect(self.moved)
        self._track.stepped.connect(self.stepped)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        roomy = event.size().width() >= ROOMY
        self._title.setVisible(roomy)
        self._what.setVisible(roomy)
        self.pause_button.setVisible(event.size().width() >= ROOMY - 110)

    def minimumSizeHint(self) -> QSize:
        return QSize(230, super().minimumSizeHint().height())

    def show_moment(
        self, what: str, share: float, seconds: float, total: float, marks: Sequence[float] = ()
    ) -> None:
        """A moment of the run: what is cut then, how far (0..1), and the times."""
        self._what.setText(what)
        self._track.show_share(share, marks)
        self._track.setAccessibleDescription(what)
        self._time.setText(self.tr("{now} of {all}").format(now=clock(seconds), all=clock(total)))
