"""The traveller: the tag that goes with a job through the shop, one line for each step."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QEnterEvent,
    QFontMetricsF,
    QKeyEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QAbstractButton, QSizePolicy, QVBoxLayout, QWidget

from drypoint.ui.language.words import told
from drypoint.ui.parts.glyph import Mark, paint_mark, word_colour
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.type import Text, font

WIDE, NARROW = 240, 80
HEAD, CUT, GAP = 66, 18, 10
"""Height of the tag's head, size of its cut corner, space round the tag, px."""


@dataclass(frozen=True, slots=True)
class Step:
    """A line of the traveller: name, state, and one fact ("48 touches, spread 6 µm").

    ``reason`` says why it is stale or waits; it is the tooltip.
    """

    name: str
    mark: Mark = Mark.TO_DO
    fact: str = ""
    reason: str = ""
    word: str = ""
    """Another word than the state's own."""


class StepLine(QAbstractButton):
    """One line, painted: glyph, name, word, fact."""

    stepped = Signal(int)

    def __init__(self, theme: Theme, number: int) -> None:
        super().__init__()
        self._theme = theme
        self._step = Step("")
        self._number = number
        self._narrow = False
        self._ends = (False, False)
        self.setCheckable(True)
        self.setMinimumHeight(44)
        self.setMaximumHeight(68)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        theme.changed.connect(self.update)

    def show_step(self, step: Step, *, first: bool, last: bool) -> None:
        """Show another state of the step."""
        step = replace(step, fact=told(step.fact), reason=told(step.reason))
        self._step, self._ends = step, (first, last)
        word = step.word or step.mark.word()
        self.setAccessibleName(f"{step.name}, {word}")
        self.setAccessibleDescription(step.reason or step.fact)
        tip = f"{step.name}: {word}. {step.fact}"
        self.setToolTip(f"{tip}\n{step.reason}" if step.reason else tip)
        self.update()

    def set_narrow(self, narrow: bool) -> None:
        """Glyph and first letters only."""
        self._narrow = narrow
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(NARROW if self._narrow else WIDE, 68)

    def enterEvent(self, event: QEnterEvent) -> None:
        self.update()
        super().enterEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        self.update()
        super().leaveEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        ways = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}
        key = Qt.Key(event.key())
        if key in ways:
            self.stepped.emit(self._number + ways[key])
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        tokens = self._theme.tokens
        place = QRectF(self.rect())
        if self.isChecked():
            painter.fillRect(place, QColor(tokens.soft))
            painter.fillRect(QRectF(0, 0, 3, place.height()), QColor(tokens.copper))
        elif self.underMouse():
            painter.fillRect(place, QColor(tokens.window))
        middle = QPointF(place.width() / 2 if self._narrow else 26.0, min(22.0, place.height() * 0.36))
        self._paint_thread(painter, middle, place)
        if not self.isChecked() and not self._ends[1] and not self._narrow:
            painter.setPen(QPen(QColor(tokens.line), 1.0))
            painter.drawLine(QPointF(46, place.bottom()), QPointF(place.right(), place.bottom()))
        paint_mark(painter, self._step.mark, tokens, middle)
        if self._narrow:
            small = font(Text.CAPTION)
            painter.setFont(small)
            painter.setPen(QColor(tokens.ink))
            low = QRectF(0, middle.y() + 9, place.width(), 18)
            name = QFontMetricsF(small).elidedText(self._step.name, Qt.TextElideMode.ElideRight, low.width())
            painter.drawText(low, Qt.AlignmentFlag.AlignCenter, name)
        else:
            self._paint_words(painter, middle.y(), place)
        if self.hasFocus():
            painter.setPen(QPen(QColor(tokens.copper), 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(place.adjusted(1, 1, -1, -1))
        painter.end()

    def _paint_thread(self, painter: QPainter, middle: QPointF, place: QRectF) -> None:
        """The thread that joins the glyphs."""
        painter.setPen(QPen(QColor(self._theme.tokens.line), 1.4))
        first, last = self._ends
        if not first:
            painter.drawLine(QPointF(middle.x(), 0), QPointF(middle.x(), middle.y() - 10))
        if not last and not self._narrow:
            painter.drawLine(QPointF(middle.x(), middle.y() + 10), QPointF(middle.x(), place.bottom()))

    def _paint_words(self, painter: QPainter, y: float, place: QRectF) -> None:
        tokens, step = self._theme.tokens, self._step
        right = place.width() - 10
        strong, small = font(Text.BODY_BOLD), font(Text.CAPTION)
        word_font = font(Text.CAPTION)
        if step.mark not in (Mark.TO_DO, Mark.DONE):
            word_font.setWeight(strong.weight())
        painter.setFont(strong)
        painter.setPen(QColor(tokens.ink))
        upper = QRectF(46, y - 11, right - 46, 22)
        painter.drawText(upper, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, step.name)
        painter.setFont(word_font)
        painter.setPen(QColor(word_colour(step.mark, tokens)))
        word = step.word or step.mark.word()
        painter.drawText(upper, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, word)
        painter.setFont(small)
        painter.setPen(QColor(tokens.ink2))
        fact = QFontMetricsF(small).elidedText(step.fact, Qt.TextElideMode.ElideRight, right - 46)
        lower = QRectF(46, y + 9, right - 46, 20)
        painter.drawText(lower, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, fact)


class Traveller(QWidget):
    """The tag with its lines.

    Signals
    -------
    chosen(int) : number of the step, from 0
    """

    chosen = Signal(int)

    def __init__(self, theme: Theme, steps: int = 9, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._title, self._fact, self._foot = "", "", ""
        self._narrow = False
        self.setAccessibleName(self.tr("Traveller"))
        self._lines = [StepLine(theme, number) for number in range(steps)]
        column = QVBoxLayout(self)
        column.setContentsMargins(GAP + 1, GAP + HEAD, GAP + 1, GAP + 56)
        column.setSpacing(0)
        for number, line in enumerate(self._lines):
            line.clicked.connect(lambda _=False, number=number: self._take(number))
            line.stepped.connect(self._move_focus)
            column.addWidget(line)
        column.addStretch(1)
        self.set_narrow(False)
        theme.changed.connect(self.update)

    def show_job(self, title: str, fact: str, foot: str) -> None:
        """Name of the job, a fact about its board, and the small print below."""
        self._title, self._fact, self._foot = title, told(fact), told(foot)
        self.update()

    def show_steps(self, steps: Sequence[Step]) -> None:
        """Show the states of all steps."""
        for number, (line, step) in enumerate(zip(self._lines, steps, strict=True)):
            line.show_step(step, first=number == 0, last=number == len(self._lines) - 1)

    def choose(self, number: int) -> None:
        """Mark a step as the one whose page is shown; no signal."""
        for each, line in enumerate(self._lines):
            line.setChecked(each == number)

    def set_narrow(self, narrow: bool) -> None:
        """Shrink to glyphs and first letters."""
        self._narrow = narrow
        self.setFixedWidth(NARROW if narrow else WIDE)
        side = 1 if narrow else GAP + 1
        head = CUT + 26 if narrow else GAP + HEAD
        layout = self.layout()
        if layout is not None:
            layout.setContentsMargins(side, head, side, GAP if narrow else GAP + 56)
        for line in self._lines:
            line.set_narrow(narrow)
        self.update()

    def line(self, number: int) -> StepLine:
        """The line of a step."""
        return self._lines[number]

    def _take(self, number: int) -> None:
        self.choose(number)
        self.chosen.emit(number)

    def _move_focus(self, number: int) -> None:
        if 0 <= number < len(self._lines):
            self._lines[number].setFocus(Qt.FocusReason.TabFocusReason)

    def paintEvent(self, _event: QPaintEvent) -> None:
        tokens = self._theme.tokens
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(tokens.sunken))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        gap = 2 if self._narrow else GAP
        tag = QRectF(self.rect()).adjusted(gap + 0.5, gap + 0.5, -gap - 0.5, -gap - 0.5)
        shape = QPainterPath(QPointF(tag.left() + CUT, tag.top()))
        for corner in (tag.topRight(), tag.bottomRight(), tag.bottomLeft()):
            shape.lineTo(corner)
        shape.lineTo(tag.left(), tag.top() + CUT)
        shape.closeSubpath()
        painter.setPen(QPen(QColor(tokens.line), 1.0))
        painter.setBrush(QColor(tokens.panel))
        painter.drawPath(shape)
        painter.setBrush(QColor(tokens.sunken))
        painter.setPen(QPen(QColor(tokens.edge), 1.2))
        hole = (
            QPointF(tag.center().x() + 4, tag.top() + 20)
            if self._narrow
            else QPointF(tag.left() + 26, tag.top() + 30)
        )
        painter.drawEllipse(hole, 6.0, 6.0)
        if not self._narrow:
            self._paint_head_and_foot(painter, tag)
        painter.end()

    def _paint_head_and_foot(self, painter: QPainter, tag: QRectF) -> None:
        tokens = self._theme.tokens
        width = tag.width() - 46 - 8
        title, small = font(Text.SECTION), font(Text.CAPTION)
        left = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        painter.setFont(title)
        painter.setPen(QColor(tokens.ink))
        name = QFontMetricsF(title).elidedText(self._title, Qt.TextElideMode.ElideMiddle, width)
        painter.drawText(QRectF(tag.left() + 46, tag.top() + 12, width, 22), left, name)
        painter.setFont(small)
        painter.setPen(QColor(tokens.ink2))
        painter.drawText(QRectF(tag.left() + 46, tag.top() + 34, width, 20), left, self._fact)
        painter.setPen(QPen(QColor(tokens.line), 1.0))
        painter.drawLine(
            QPointF(tag.left(), tag.top() + HEAD - 1), QPointF(tag.right(), tag.top() + HEAD - 1)
        )
        painter.setPen(QColor(tokens.ink2))
        foot = QRectF(tag.left() + 14, tag.bottom() - 52, tag.width() - 24, 44)
        painter.drawText(foot, int(left) | int(Qt.TextFlag.TextWordWrap), self._foot)
