"""Voltages and currents on the page of the cuts."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import QObject

from drypoint.cuts.ratings import Surroundings
from drypoint.session.settings import Settings, Voltage
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.editing import Editing
from drypoint.ui.design_side.fields import Plain, PlainFields
from drypoint.ui.forms.voltages import VoltagesForm
from drypoint.ui.parts.blocks import words
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import Choice, Setting
from drypoint.ui.parts.page import Page


class Electrical(QObject):
    """The section about voltages; every change is one action that can be undone."""

    def __init__(self, page: Page, bridge: Bridge, editing: Editing) -> None:
        super().__init__(page)
        self._bridge, self._editing = bridge, editing
        rise = Plain("electrical", "rise", self.tr("Traces may warm by"), "K", 0, 1.0, 100.0, 5.0)
        lose = self.tr("Share of width a trace may lose")
        drop = Plain("electrical", "drop", lose, "", 2, 0.0, 1.0, 0.05)
        least = Plain("cuts", "least_trace", self.tr("Width every trace keeps"), "mm", 2, 0.0, 2.0, 0.01)
        self._fields = PlainFields(page, self.tr("Voltage and current"), (rise, drop, least), bridge, editing)
        self.surroundings = Choice(self.tr("Copper in use"), 150)
        for kind, text in (
            (Surroundings.BARE, self.tr("bare")),
            (Surroundings.BARE_HIGH, self.tr("bare, above 3050 m")),
            (Surroundings.COATED, self.tr("solder mask")),
            (Surroundings.CONFORMAL, self.tr("conformal coating")),
        ):
            self.surroundings.addItem(text, kind.value)
        self.surroundings.activated.connect(lambda _: self._choose())
        explain(page.add(Setting(self.tr("Copper in use"), self.surroundings)), "electrical.surroundings")
        self.form = VoltagesForm()
        self.form.edited.connect(self._change)
        page.add(self.form)
        told = self.tr("An estimate by IPC-2221. For mains the safety standard of the device rules.")
        page.add(words(told, "caption", wrap=True))

    def show(self, settings: Settings, nets: Sequence[str]) -> None:
        """Show what is set for a board with these nets."""
        self._fields.show(settings)
        self.surroundings.setCurrentIndex(self.surroundings.findData(settings.electrical.surroundings.value))
        self.form.show_voltages(settings.electrical.voltages, nets)

    def _choose(self) -> None:
        session = self._bridge.session
        if session is not None:
            chosen = Surroundings(str(self.surroundings.currentData()))
            electrical = replace(session.settings.electrical, surroundings=chosen)
            self._editing.change(self.tr("Copper in use"), electrical=electrical)

    def _change(self, voltages: tuple[Voltage, ...]) -> None:
        session = self._bridge.session
        if session is not None:
            electrical = replace(session.settings.electrical, voltages=voltages)
            self._editing.change(self.tr("Voltages"), electrical=electrical)
