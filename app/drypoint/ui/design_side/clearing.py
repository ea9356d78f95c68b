"""The second, wide bit and copper that is taken away, on the page of the cuts."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from typing import Any

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QLineEdit, QVBoxLayout

from drypoint.bits.library import default_library
from drypoint.bits.model import EndMill, VBit
from drypoint.errors import DrypointError
from drypoint.session.clear_settings import ClearArea, Clearing, ClearSettings
from drypoint.session.session import Session
from drypoint.session.settings import Settings
from drypoint.session.two_bit_times import candidates, in_words, two_bit_times
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.editing import Editing
from drypoint.ui.design_side.fields import Plain, PlainFields
from drypoint.ui.language.words import told
from drypoint.ui.parts.blocks import Row, button, empty, words
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import Choice, Setting
from drypoint.ui.parts.page import Page

COMPARE = "compare bits"
"""Name of the work that finds what a second bit saves."""
LARGEST = 1e4
"""No area lies farther off or is larger, mm."""


class ClearingFields(QObject):
    """The section about the wide bit; every change is one action that can be undone."""

    def __init__(self, page: Page, bridge: Bridge, editing: Editing) -> None:
        super().__init__(page)
        self._bridge, self._editing = bridge, editing
        page.section(self.tr("Wide bit and clearing"))
        self.bit = Choice(self.tr("Wide bit"), 172)
        self.bit.activated.connect(lambda _: self._choose_bit())
        explain(page.add(Setting(self.tr("Wide bit"), self.bit)), "clearing.bit")
        self.what = Choice(self.tr("Take copper away"), 172)
        for kind, text in (
            (Clearing.NOTHING, self.tr("grooves only")),
            (Clearing.MOAT, self.tr("moat round every net")),
            (Clearing.BOARD, self.tr("all on the board")),
            (Clearing.AREAS, self.tr("chosen areas")),
        ):
            self.what.addItem(text, kind.value)
        self.what.activated.connect(lambda _: self._choose_what())
        explain(page.add(Setting(self.tr("Take copper away"), self.what)), "clearing.what")
        self.areas = QLineEdit()
        self.areas.setAccessibleName(self.tr("Areas: x y width height; …"))
        self.areas.editingFinished.connect(self._change_areas)
        self.areas.setPlaceholderText(self.tr("x y width height; …"))
        self._areas_row = Setting(self.tr("Areas"), self.areas)
        explain(page.add(self._areas_row), "clearing.areas")
        self._fields = PlainFields(page, "", self._numbers(), bridge, editing)
        self.compare_button = button(self.tr("What does a second bit save?"))
        self.compare_button.clicked.connect(self.compare)
        page.add(self.compare_button)
        self.told = words("", "caption", wrap=True)
        self.told.hide()
        page.add(self.told)
        self._theme = page.theme
        self.results = QVBoxLayout()
        page.body.addLayout(self.results)
        bridge.job_changed.connect(self._job_changed)
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)
        self.show(Settings())

    def _numbers(self) -> tuple[Plain, ...]:
        return (
            Plain("clearing", "depth", self.tr("Depth of the wide bit"), "mm", 3, 0.01, 1.0, 0.01),
            Plain("clearing", "moat", self.tr("Width of the moat"), "mm", 2, 0.05, 50.0, 0.1),
            Plain("clearing", "overlap", self.tr("Loops overlap by"), "", 2, 0.0, 0.9, 0.05),
            Plain("clearing", "slivers", self.tr("Slivers go up to"), "mm²", 1, 0.0, 1000.0, 0.5),
            Plain("clearing", "change", self.tr("A change of the bit takes"), "s", 0, 0.0, 3600.0, 10.0),
        )

    # settings out

    def show(self, settings: Settings) -> None:
        """Show what is set."""
        clearing = settings.clearing
        self._fields.show(settings)
        chosen = None if clearing.bit is None else clearing.bit.name
        self.bit.clear()
        self.bit.addItem(self.tr("none"), None)
        for bit in self._offered(settings):
            self.bit.addItem(told(bit.name), str(bit.name))
        self.bit.setCurrentIndex(max(0, self.bit.findData(chosen)))
        self.what.setCurrentIndex(self.what.findData(clearing.what.value))
        self._show_needed(clearing)
        self.areas.setText("; ".join(_area_text(area) for area in clearing.areas))

    def _show_needed(self, clearing: ClearSettings) -> None:
        """Only what changes something by what is chosen above it."""
        takes = clearing.what is not Clearing.NOTHING
        self.areas.setEnabled(clearing.what is Clearing.AREAS)
        self._areas_row.setVisible(clearing.what is Clearing.AREAS)
        self._fields.show_row("depth", clearing.bit is not None)
        self._fields.show_row("moat", clearing.what is Clearing.MOAT)
        self._fields.show_row("overlap", takes)

    def _offered(self, settings: Settings) -> tuple[VBit | EndMill, ...]:
        """The bits that may be chosen: wider ones of the usual bits, and the one that is chosen."""
        library = default_library()
        usual = candidates(settings, (*library.mills, *library.vbits))
        chosen = settings.clearing.bit
        others = tuple(bit for bit in usual if chosen is None or bit.name != chosen.name)
        return others if chosen is None else (chosen, *others)

    def _job_changed(self, _what: str) -> None:
        session = self._bridge.session
        if not self._editing.pending:
            self.show(Settings() if session is None else session.settings)

    # settings in

    def _choose_bit(self) -> None:
        session = self._bridge.session
        if session is not None:
            name = self.bit.currentData()
            found = next((one for one in self._offered(session.settings) if one.name == name), None)
            self._change(session, self.tr("Wide bit"), bit=found)

    def _choose_what(self) -> None:
        session = self._bridge.session
        if session is not None:
            self._change(session, self.tr("Take copper away"), what=Clearing(str(self.what.currentData())))

    def _change_areas(self) -> None:
        session = self._bridge.session
        if session is None:
            return
        areas = _areas(self.areas.text())
        if areas is None:
            self.areas.setToolTip(self.tr("Four numbers for each area, in mm; a semicolon between areas."))
            self.show(session.settings)
        else:
            self._change(session, self.tr("Areas"), areas=areas)

    def _change(self, session: Session, title: str, **values: Any) -> None:
        self.told.hide()
        empty(self.results)
        self._editing.change(title, clearing=replace(session.settings.clearing, **values))

    # what it saves

    def compare(self) -> None:
        """Find what each wider bit would save, in the background; nothing is changed."""
        session = self._bridge.session
        if session is None:
            return
        snap, bits = session.snapshot, self._offered(session.settings)
        empty(self.results)
        self.told.setText(self.tr("Comparing…"))
        self.told.show()
        compare = partial(two_bit_times, bits=bits)
        self._bridge.ask(COMPARE, lambda progress: session.derived.run(compare, snap, progress))

    def _computed(self, name: str, value: object) -> None:
        if name == COMPARE and isinstance(value, tuple):
            self.told.hide()
            for times in value:
                detail = told(in_words(times))
                self.results.addWidget(Row(self._theme, times.bit, strong=True, detail=detail))

    def _failed(self, name: str, error: DrypointError) -> None:
        if name == COMPARE:
            self.told.setText(told(error.what))


def _area_text(area: ClearArea) -> str:
    return " ".join(f"{value:g}" for value in (area.x, area.y, area.width, area.height))


def _areas(text: str) -> tuple[ClearArea, ...] | None:
    """Areas as they are written; None if they make no sense."""
    found = []
    for part in filter(str.strip, text.split(";")):
        try:
            x, y, width, height = (float(word) for word in part.split())
        except ValueError:
            return None
        if not (0.0 < width < LARGEST and 0.0 < height < LARGEST and max(abs(x), abs(y)) < LARGEST):
            return None
        found.append(ClearArea(x, y, width, height))
    return tuple(found)
