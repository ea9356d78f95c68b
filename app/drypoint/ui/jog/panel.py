"""The jog and reference panel."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from drypoint.ui.jog.position import PositionPanel
from drypoint.ui.jog.reference import ReferencePanel
from drypoint.ui.parts.blocks import rule
from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.theme import Theme


class JogPanel(QScrollArea):
    """Position above, reference below; scrolls where the window is low.

    Signals
    -------
    wants_changed() : ``wanted_height`` or ``wanted_width`` may be another now
    """

    wants_changed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.position = PositionPanel(theme)
        self.reference = ReferencePanel(theme)
        inner = QWidget()
        give_look(inner, "panel")
        column = QVBoxLayout(inner)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.position)
        column.addWidget(rule())
        column.addWidget(self.reference, 1)
        self._inner = inner
        inner.installEventFilter(self)
        self.setWidget(inner)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self._inner and event.type() == QEvent.Type.LayoutRequest:
            self.wants_changed.emit()
        return super().eventFilter(watched, event)

    def wanted_height(self) -> int:
        """Height at which nothing needs to scroll, px."""
        return self._inner.minimumSizeHint().height()

    def wanted_width(self) -> int:
        """Width at which nothing is cut off, px."""
        return self._inner.minimumSizeHint().width()
