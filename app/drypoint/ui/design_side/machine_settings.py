"""The machine after the wizard: size class, travel, what it switches, heights and delays."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QCheckBox, QDialog

from drypoint.machine.preset import load_presets
from drypoint.session.settings import Settings
from drypoint.session.work import preset_of
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.editing import Editing
from drypoint.ui.design_side.fields import Plain, PlainFields
from drypoint.ui.design_side.help import Sheet
from drypoint.ui.design_side.new_job import found_ports, machine_classes
from drypoint.ui.design_side.translate import machine_settings, machine_values
from drypoint.ui.forms.machine import MachineForm
from drypoint.ui.forms.values import MachineValues
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.page import Page
from drypoint.ui.window import MainWindow

PORTS = "list the ports"


class MachineSheet(QObject):
    """The command Machine settings."""

    def __init__(self, window: MainWindow, bridge: Bridge, editing: Editing) -> None:
        super().__init__(window)
        self._window, self._bridge, self._editing = window, bridge, editing
        self._form: MachineForm | None = None
        self._fields: PlainFields | None = None
        self._single: QCheckBox | None = None
        self._one_side: QCheckBox | None = None
        window.commands["machine"].triggered.connect(self.open)
        bridge.job_changed.connect(lambda _: self._refresh())
        bridge.computed.connect(self._computed)
        self._refresh()

    def open(self) -> QDialog | None:
        """Show the sheet."""
        session = self._bridge.session
        if session is None:
            return None
        page = Page(self._window.theme, "", "")
        page.title.hide()
        form = MachineForm(self._window.theme, self._values(session.settings))
        form.show_classes(machine_classes())
        form.edited.connect(self._change)
        form.ports_wanted.connect(self.look_for_ports)
        page.add(form)
        self._form = form
        self._fields = PlainFields(
            page,
            self.tr("Moving"),
            (
                Plain(
                    "machine",
                    "clearance",
                    self.tr("Height of moves across"),
                    decimals=1,
                    least=0.5,
                    most=30.0,
                ),
                Plain("machine", "hop", self.tr("Height of hops to the next place"), "mm", 2, 0.0, 10.0),
                Plain("machine", "spindle_delay", self.tr("Spindle comes up to speed in"), "s", 1, 0.0, 60.0),
            ),
            self._bridge,
            self._editing,
        )
        self._single = QCheckBox(self.tr("Send line by line: slower, safer on a bad cable"))
        self._single.clicked.connect(self._send_singly)
        explain(page.add(self._single), "machine.line_by_line")
        self._one_side = QCheckBox(self.tr("Reach holes and marks from one side: play is taken up"))
        self._one_side.clicked.connect(self._reach_from_one_side)
        explain(page.add(self._one_side), "machine.one_side")
        self._show(session.settings)
        sheet = Sheet(self._window, self.tr("Machine"), page, width=560)
        sheet.resize(560, 760)
        sheet.finished.connect(self._closed)
        sheet.open()
        self.look_for_ports()
        return sheet

    def look_for_ports(self) -> None:
        """List serial ports, in the background."""
        self._bridge.ask(PORTS, lambda _progress: found_ports())

    def _values(self, settings: Settings) -> MachineValues:
        return machine_values(settings.machine, preset_of(settings))

    def _change(self, values: MachineValues) -> None:
        session = self._bridge.session
        if session is not None:
            changed = machine_settings(values, session.settings.machine, load_presets())
            self._editing.change(self.tr("Machine"), machine=changed)

    def _send_singly(self, single: bool) -> None:
        session = self._bridge.session
        if session is not None:
            changed = replace(session.settings.machine, line_by_line=single)
            self._editing.change(self.tr("Line by line"), machine=changed)

    def _reach_from_one_side(self, on: bool) -> None:
        session = self._bridge.session
        if session is not None:
            changed = replace(session.settings.machine, one_side=on)
            self._editing.change(self.tr("Holes from one side"), machine=changed)

    def _show(self, settings: Settings) -> None:
        if self._fields is not None and self._single is not None:
            self._fields.show(settings)
            self._single.setChecked(settings.machine.line_by_line)
        if self._one_side is not None:
            self._one_side.setChecked(settings.machine.one_side)

    def _refresh(self) -> None:
        session = self._bridge.session
        self._window.commands["machine"].setEnabled(session is not None)
        if session is not None and self._form is not None and self._fields is not None:
            self._form.set_values(self._values(session.settings))
            self._show(session.settings)

    def _computed(self, name: str, value: object) -> None:
        if name == PORTS and self._form is not None and isinstance(value, tuple):
            self._form.show_ports(value)

    def _closed(self) -> None:
        self._form = self._fields = self._single = self._one_side = None
