"""The island check at a depth of one's choice, on the page Cuts: our grooves, or a ready-made program's."""

from __future__ import annotations

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QVBoxLayout

from drypoint.errors import DrypointError
from drypoint.progress import Progress
from drypoint.session.depth_check import OWN, DepthCheck, check_at, checkable
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.design_side.planner import Planner
from drypoint.ui.design_side.words import check_findings, place_and_hint
from drypoint.ui.language.words import fill, told
from drypoint.ui.pages.design import CutsPage
from drypoint.ui.parts.blocks import Note, button, empty, words
from drypoint.ui.parts.fields import Choice, Entry, NumberField

DEPTH_CHECK = "island check at a depth"
MOST = 8
"""Findings that are shown."""


class DepthChecks(QObject):
    """Asks for the check in the background, and shows what it found until the job changes."""

    def __init__(self, page: CutsPage, bridge: Bridge, planner: Planner, messages: Messages) -> None:
        super().__init__(page)
        self._page, self._bridge, self._messages = page, bridge, messages
        page.section(self.tr("Island check at any depth"))
        text = self.tr("Which nets would touch if everything were cut so deep, and no deeper.")
        page.add(words(text, "caption", wrap=True))
        self.depth = NumberField(
            self.tr("Depth"), "mm", value=0.06, decimals=3, least=0.0, most=1.0, step=0.005
        )
        page.add(Entry(self.tr("Depth"), self.depth))
        self.paths = Choice(self.tr("Paths"), 160)
        self._row = Entry(self.tr("Paths"), self.paths)
        page.add(self._row)
        self.button = button(self.tr("Check"))
        self.button.clicked.connect(self.ask)
        page.add(self.button)
        self.results = QVBoxLayout()
        self.results.setSpacing(8)
        page.body.addLayout(self.results)
        bridge.job_changed.connect(lambda _: self._changed())
        planner.changed.connect(self._show_paths)
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)
        self._changed()

    def ask(self) -> None:
        """Check what is chosen."""
        session = self._bridge.session
        if session is None:
            return
        snap, derived = session.snapshot, session.derived
        depth, program = self.depth.value, str(self.paths.currentData() or OWN)

        def work(progress: Progress) -> DepthCheck:
            return check_at(derived, snap, depth=depth, program=program, progress=progress)

        self._bridge.ask(DEPTH_CHECK, work)

    def _changed(self) -> None:
        empty(self.results)
        session = self._bridge.session
        self.button.setEnabled(session is not None)
        self._show_paths()

    def _show_paths(self) -> None:
        session = self._bridge.session
        ready = None if session is None else session.derived.peek(session.snapshot).ready
        names = (OWN, *checkable(ready or ()))
        if [self.paths.itemData(row) for row in range(self.paths.count())] != list(names):
            self.paths.clear()
            for name in names:
                self.paths.addItem(name or self.tr("our grooves"), name)
        self._row.setVisible(len(names) > 1)

    def _computed(self, name: str, value: object) -> None:
        if name != DEPTH_CHECK or not isinstance(value, DepthCheck):
            return
        empty(self.results)
        deep = 0.0 if value.depth is None else value.depth
        findings = check_findings(value.check)
        if not findings:
            text = fill(self.tr("At {depth:.3f} mm every net is an island."), depth=deep)
            self.results.addWidget(Note("plain", text))
        for one in findings[:MOST]:
            what = fill(self.tr("At {depth:.3f} mm deep: {what}"), depth=deep, what=told(one.what))
            note = Note("caution", what, told(one.hint), where=one.where)
            note.where_clicked.connect(lambda at=one.at: self._page.place_chosen.emit(at))
            self.results.addWidget(note)
        if len(findings) > MOST:
            more = self.tr("and {count} more").format(count=len(findings) - MOST)
            self.results.addWidget(words(more, "caption"))

    def _failed(self, name: str, error: DrypointError) -> None:
        if name == DEPTH_CHECK:
            empty(self.results)
            self.results.addWidget(Note("caution", told(error.what), place_and_hint(error)))
            self._messages.error(error)
