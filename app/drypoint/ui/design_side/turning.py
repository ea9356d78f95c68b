"""How the second side is found, on the page of the board: tooling holes, and what they gain."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QVBoxLayout, QWidget

from drypoint.session.settings import Settings
from drypoint.session.tooling import Foreseen
from drypoint.session.turn_settings import ToolingUse
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.editing import Editing
from drypoint.ui.design_side.planner import Planner
from drypoint.ui.language.words import fill
from drypoint.ui.pages.design import BoardPage
from drypoint.ui.parts.blocks import words
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import Choice, NumberField, Setting


class TurnFields(QObject):
    """Shown where both sides are milled; every change is one action that can be undone."""

    def __init__(self, page: BoardPage, bridge: Bridge, planner: Planner, editing: Editing) -> None:
        super().__init__(page)
        self._bridge, self._planner, self._editing = bridge, planner, editing
        self._whole = QWidget()
        inside = QVBoxLayout(self._whole)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(8)
        self.tooling = Choice(self.tr("Tooling holes"), 150)
        for use, text in (
            (ToolingUse.NEEDED, self.tr("where needed")),
            (ToolingUse.ALWAYS, self.tr("always")),
            (ToolingUse.NEVER, self.tr("never")),
        ):
            self.tooling.addItem(text, use.value)
        self.tooling.activated.connect(
            lambda _: self._change(tooling=ToolingUse(str(self.tooling.currentData())))
        )
        self.count = NumberField(self.tr("Number of them"), "", decimals=0, least=2, most=6)
        self.count.edited.connect(lambda value: self._change(count=round(value)))
        self.drill = Choice(self.tr("Drill for them"), 150)
        self.drill.activated.connect(lambda _: self._change(drill=str(self.drill.currentData())))
        for label, field, name in (
            (self.tr("Tooling holes"), self.tooling, "tooling"),
            (self.tr("Number of them"), self.count, "count"),
            (self.tr("Drill for them"), self.drill, "drill"),
        ):
            row = Setting(label, field)
            explain(row, f"turn.{name}")
            inside.addWidget(row)
        self.told = words("", "caption", wrap=True)
        inside.addWidget(self.told)
        page.turning.addWidget(self._whole)
        bridge.job_changed.connect(self._job_changed)
        planner.changed.connect(self._tell)
        self.show(Settings())

    def show(self, settings: Settings) -> None:
        """Show what is set."""
        turn = settings.turn
        self._whole.setVisible(settings.board.both)
        self.tooling.setCurrentIndex(self.tooling.findData(turn.tooling.value))
        self.count.set_value(float(turn.count))
        self.drill.clear()
        self.drill.addItem(self.tr("chosen by itself"), "")
        for drill in settings.bits.drills:
            self.drill.addItem(drill.name, drill.name)
        self.drill.setCurrentIndex(max(0, self.drill.findData(turn.drill)))
        for field in (self.count, self.drill):
            field.setEnabled(turn.tooling is not ToolingUse.NEVER)
        self._tell()

    def _job_changed(self, _what: str) -> None:
        session = self._bridge.session
        if not self._editing.pending:
            self.show(Settings() if session is None else session.settings)

    def _change(self, **values: Any) -> None:
        session = self._bridge.session
        if session is not None:
            self._editing.change(self.tr("Tooling holes"), turn=replace(session.settings.turn, **values))

    def _tell(self) -> None:
        cuts = self._planner.cuts
        expected = None if cuts is None else cuts.foreseen
        self.told.setText("" if expected is None else self._said(expected))
        self.told.setVisible(expected is not None)

    def _said(self, expected: Foreseen) -> str:
        """The expected error of the second side, with tooling holes and without."""
        own, tooling = expected.own, expected.tooling
        if own is None and tooling is None:
            return self.tr("The second side cannot be found: the board has fewer than two holes.")
        if own is None:
            text = self.tr(
                "The board has fewer than two holes. Expected at the far corner of the second side: "
                "{tooling:.2f} mm off (95 %) by tooling holes."
            )
        elif tooling is None:
            text = self.tr(
                "Expected at the far corner of the second side: {own:.2f} mm off (95 %) by holes of the "
                "board; the margin has no room for tooling holes."
            )
        else:
            text = self.tr(
                "Expected at the far corner of the second side: {own:.2f} mm off (95 %) by holes of the "
                "board, {tooling:.2f} mm with tooling holes."
            )
        said = fill(text, own=own or 0.0, tooling=tooling or 0.0)
        if expected.pays and not expected.drilled:
            return " ".join((said, self.tr("Here they pay.")))
        return said
