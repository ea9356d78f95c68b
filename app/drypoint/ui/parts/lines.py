"""Lines of a list as Qt's views want them: the line itself under the user role, its words beside it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtWidgets import QWidget

Index = QModelIndex | QPersistentModelIndex


class Lines(QAbstractListModel):
    """Any lines.

    Parameters
    ----------
    said : callable
        A line in words, for the list and for a screen reader.
    told : callable
        What more there is to tell, for its tooltip.
    """

    def __init__(
        self, said: Callable[[Any], str], told: Callable[[Any], str], parent: QWidget | None
    ) -> None:
        super().__init__(parent)
        self._said, self._told = said, told
        self._lines: tuple[Any, ...] = ()

    def show_lines(self, lines: Sequence[Any]) -> None:
        """Other lines."""
        self.beginResetModel()
        self._lines = tuple(lines)
        self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._lines)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        line = self._lines[index.row()]
        if role == Qt.ItemDataRole.UserRole:
            return line
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return self._said(line)
        return self._told(line) if role == Qt.ItemDataRole.ToolTipRole else None
