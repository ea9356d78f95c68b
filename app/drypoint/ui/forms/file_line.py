"""A design file in a list: its name, the role it got and why; another role can be chosen."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from drypoint.board.model import LayerFile, Role
from drypoint.ui.language.words import breakable, told
from drypoint.ui.parts.blocks import Elided, words
from drypoint.ui.parts.fields import Choice

ROLE_WIDTH = 176
"""Room for the longest role, px."""


class FileLine(QWidget):
    """Name above; below it the reason at the left and the role at the right, or below where it is narrow.

    Signals
    -------
    role_changed(str, object) : file name and the `Role` chosen for it
    """

    role_changed = Signal(str, object)

    def __init__(self, file: LayerFile, look: str = "label", *, narrow: bool = False) -> None:
        super().__init__()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 3, 0, 3)
        column.setSpacing(2)
        name = Elided(look)
        name.setText(file.name)
        column.addWidget(name)
        roles = Choice(self.tr("Role of {file}").format(file=file.name), ROLE_WIDTH)
        for role, word in self._words().items():
            roles.addItem(word, role)
        roles.setCurrentIndex(list(Role).index(file.role))
        roles.activated.connect(lambda _: self.role_changed.emit(file.name, Role(roles.currentData())))
        self.roles = roles
        row = QVBoxLayout() if narrow else QHBoxLayout()
        row.setSpacing(4 if narrow else 8)
        row.addWidget(words(breakable(told(file.reason)), "caption", wrap=True), 1)
        row.addWidget(roles, 0, Qt.AlignmentFlag.AlignTop)
        column.addLayout(row)

    def _words(self) -> Mapping[Role, str]:
        return {
            Role.COPPER_TOP: self.tr("copper top"),
            Role.COPPER_BOTTOM: self.tr("copper bottom"),
            Role.COPPER_INNER: self.tr("copper inner"),
            Role.OUTLINE: self.tr("outline"),
            Role.LEGEND_TOP: self.tr("legend top"),
            Role.LEGEND_BOTTOM: self.tr("legend bottom"),
            Role.DRILL_PLATED: self.tr("drill plated"),
            Role.DRILL_UNPLATED: self.tr("drill unplated"),
            Role.DRILL: self.tr("drill"),
            Role.NETLIST: self.tr("netlist"),
            Role.JOB: self.tr("job"),
            Role.GCODE: self.tr("g-code"),
            Role.OTHER: self.tr("not used"),
        }
